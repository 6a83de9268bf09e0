"""A result as HTML. The build renders worked examples with it, the page's worker renders answers with it."""

from __future__ import annotations

from html import escape
from typing import Any
from urllib.parse import urlencode

from calc import permalink
from calc.calculator import Result
from calc.editions import EDITIONS
from calc.found.verdict import Verdict
from calc.json_output import linked_answer
from calc.known import known
from calc.linked_words import words_of_code
from calc.messages import message
from calc.registry import CALCULATORS
from calc.rulebook import rule
from calc.trace import MARK_WORDS
from calc.unknown.edition import outcome_of
from site_assets.render.chart import charts_html
from site_assets.render.margin_rows import margins_html
from site_assets.render.marks import key_html, ring_html
from site_assets.render.note import note_html
from site_assets.render.open_inputs import assumed_html, depends_html, edition_html, head_html
from site_assets.render.part_table import table_html
from site_assets.render.text import linked, text, unbroken
from site_assets.render.unfinished import unfinished_html
from site_assets.render.unknown_name import nearest_html
from site_assets.render.working import citations_html, working_html

SHORT_HEADLINE = 14  # characters: a size, a number; longer ones are words, and no word breaks on a phone
NOTES_SHOWN = 3


def result_html(result: Result, *, actions: bool = True) -> str:
    """Return the HTML of a result: an answer, what it depends on, the fields to fix, or why the case is not covered.

    `actions`: with the buttons that copy its link or a note of it and print it.
    """
    if result.outcome == "fix":
        return _said_earlier(result) + _fix(result)
    buttons = _actions(result) if actions else ""
    if result.depends:
        below = f"{_entered(result)}{_warnings(result)}{_notes(result)}{buttons}"
        body = depends_html(result, f"{below}{working_html(result)}{citations_html(result)}")
    else:
        body = _answer(result, buttons) if result.outcome == "answer" else _not_covered(result, buttons)
    return _said_earlier(result) + body


def _answer(result: Result, buttons: str) -> str:
    answer = result.answered
    kind = "size" if len(str(answer.headline)) <= SHORT_HEADLINE else "size words"
    heading = text(answer.name if buttons else message("Example: {name}", name=answer.name))
    return (
        '<section class="answer" data-outcome="answer" tabindex="-1">'
        f"{head_html(result, heading)}{_found(result.found)}"
        f'<p class="answer-size"><span class="{kind}">{unbroken(text(answer.headline))}</span> '
        f'<span class="metal">{unbroken(text(answer.detail))}</span></p>'
        f"{unfinished_html(answer)}{_basis(result)}{edition_html(result)}{_warnings_and_table(result)}"
        f"{_entered(result)}{assumed_html(result) if buttons else ''}"
        f"{charts_html(answer.charts)}{margins_html(result)}{_notes(result)}{buttons}"
        f"{working_html(result)}{citations_html(result)}</section>"
    )


def _found(verdict: Verdict | None) -> str:
    """Return the verdict on what was found on site, before the size that it was held against."""
    if verdict is None:
        return ""
    beside = " ".join(map(str, verdict.more))
    more = f'<p class="found-more">{unbroken(text(beside))}</p>' if beside else ""
    return f'<p class="found" data-verdict="{verdict.verdict}">{unbroken(text(verdict.headline))}</p>{more}'


def _basis(result: Result) -> str:
    """Return where the edition states the answer and how that was checked; "" for a list, whose rows name their own."""
    if result.answered.basis is None:
        return ""
    basis = rule(result.answered.basis, result.edition)
    note = f". {text(basis.note)}" if str(basis.note) else ""
    words = f'<span class="mark-words">{text(MARK_WORDS[basis.mark])}</span>'
    return f'<p class="answer-basis">{ring_html(basis.mark)} {text(basis.section)}, {words}{note}</p>'


def _warnings_and_table(result: Result) -> str:
    """Return the list of an answer, what the rings in it mean, and the warnings: above it only where one is grave."""
    table = table_html(result.answered.table)
    table += key_html(mark for mark in MARK_WORDS if f'data-mark="{mark}"' in table)
    grave = any(words in result.trace.grave for words in result.warnings)
    return _warnings(result) + table if grave else table + _warnings(result)


def _fix(result: Result) -> str:
    rows = "".join(
        f'<li><a href="#field-{text(each.field)}">{text(each.label)}: {text(each.words)}</a></li>'
        if each.field in result.calculator.fields
        else f"<li>{text(each.label)}: {text(each.words)}{nearest_html(result, each)}</li>"
        for each in result.fix
    )
    heading = text(message("Fix this first") if len(result.fix) == 1 else message("Fix these first"))
    return f'<section class="fix" data-outcome="fix" tabindex="-1"><h2>{heading}</h2><ul>{rows}</ul></section>'


def _not_covered(result: Result, buttons: str) -> str:
    outside = known(result.not_covered)
    return (
        '<section class="not-covered" data-outcome="not_covered" tabindex="-1">'
        f"<h2>{text(message('Not covered here'))}</h2>"
        f'<p class="why">{text(outside.why)}</p><p class="look-in">{linked(outside.look_in)}</p>{_other_pages(result)}'
        f"{edition_html(result)}{_entered(result)}{_warnings(result)}{buttons}{working_html(result)}{citations_html(result)}"
        "</section>"
    )


def _other_pages(result: Result) -> str:
    """Return links to the calculators that answer instead, but the one whose page this is."""
    named = [slug for slug in known(result.not_covered).calculators if slug != result.calculator.slug]
    links = "".join(f'<a class="button quiet" href="{slug}.html">{text(CALCULATORS[slug].name)}</a>' for slug in named)
    return f'<p class="answer-actions">{links}</p>' if links else ""


def _said_earlier(result: Result) -> str:
    earlier = linked_answer(result)
    if not earlier:
        return ""
    then = words_of_code(earlier["then"])
    told = message("The link was made with: {answer}", answer=then) if then else message(
        "The link was made with another answer."
    )  # fmt: skip
    now, unexplained = (
        message("The answer now: {answer}", answer=outcome_of(result)),
        message(
            "No recorded change of our rules explains it. Check what is entered, then the working below against the "
            "book."
        ),
    )
    if result.outcome == "fix":
        now = message("There is no answer until you fix what is below. Do not rely on the one in the link.")
        unexplained = message("No recorded change of our rules explains it. Check that the link is complete.")
    reasons = [f"{row['date']}: {row['why']}" for row in earlier["changes"]] or [unexplained]
    return (
        '<section class="said-earlier" tabindex="-1">'
        f"<h2>{text(message('This answer is different from the one in the link'))}</h2>"
        f"<p>{text(told)}</p><p>{text(now)}</p>{_list('reasons', reasons)}</section>"
    )


def _entered(result: Result) -> str:
    """Return what was entered; above a list in one line that unfolds."""
    words = text(message("For {entered}.", entered=result.entered)) if result.entered else ""
    if not words:
        return ""
    if result.answer and result.answer.table:
        return f'<details class="answer-inputs"><summary><span>{words}</span></summary></details>'
    return f'<p class="answer-inputs">{words}</p>'


def _warnings(result: Result) -> str:
    """Return the warnings as one stack, the gravest first."""
    rows = "".join(f'<p class="warning">{unbroken(text(words))}</p>' for words in result.gravest_warnings)
    return f'<div class="warnings">{rows}</div>' if rows else ""


def _notes(result: Result) -> str:
    """Return the first notes, the gravest before the others; the rest is folded."""
    notes = result.trace.gravest_first(result.trace.notes)
    shown, more = _list("answer-notes", notes[:NOTES_SHOWN]), notes[NOTES_SHOWN:]
    if not more:
        return shown
    words = message("One more note") if len(more) == 1 else message("{count} more notes", count=len(more))
    return f'{shown}<details class="more-notes"><summary>{text(words)}</summary>{_list("answer-notes", more)}</details>'


def _actions(result: Result) -> str:
    copy, note, printed = text(message("Copy link")), text(message("Copy note")), text(message("Print"))
    copied = text(message("Note copied"))
    return (
        '<div class="answer-actions">'
        f'<button type="button" class="quiet" data-action="copy-link">{copy}</button>'
        f'<button type="button" class="quiet" data-action="copy-note" data-copied="{copied}">{note}</button>'
        f'<button type="button" class="quiet" data-action="print">{printed}</button>{_compare(result)}</div>'
        f"{note_html(result)}"
    )


def _compare(result: Result) -> str:
    """Return the link that opens the same case in two editions."""
    if result.depends or "case" in result.calculator.fields:
        return ""
    place = EDITIONS.index(result.edition)
    against = EDITIONS[place - 1 if place else 1]
    query = urlencode({"edition": result.edition, "against": against, "case": permalink.case(result)})
    return (
        f'<a class="button quiet" href="compare-editions.html?{escape(query)}">{text(message("Compare editions"))}</a>'
    )


def _list(name: str, sentences: list[Any]) -> str:
    rows = "".join(f"<li>{unbroken(linked(words))}</li>" for words in sentences)
    return f'<ul class="{name}">{rows}</ul>' if rows else ""
