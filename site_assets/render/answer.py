"""A result as HTML. The build renders worked examples with it, the page's worker renders answers with it."""

from __future__ import annotations

import re
from html import escape
from typing import Any
from urllib.parse import urlencode

from calc import permalink
from calc.address import page_address
from calc.answer import Row, Table
from calc.calculator import Result
from calc.editions import EDITIONS
from calc.found.verdict import Verdict
from calc.json_output import citation_to_dict, linked_answer
from calc.known import known
from calc.margin.words import margin_line
from calc.messages import CalculatorName, Message, message
from calc.registry import CALCULATORS
from calc.rulebook import Rule, rule
from calc.trace import MARK_WORDS, Step, shown_of_model
from site_assets.render.chart import charts_html
from site_assets.render.note import note_html
from site_assets.render.open_inputs import assumed_html, depends_html, edition_html
from site_assets.render.text import text
from site_assets.render.unfinished import unfinished_html
from site_assets.render.unknown_name import nearest_html

FEW_COLUMNS = 3
UNITS = "AWG kcmil cmil kVA kA mA A V ohm·m ohm kilohm milliohm mΩ Ω ft in mm cm m ms s min h % °C °F".split()
NUMBER_WITH_UNIT = re.compile(rf"[\d.,/]*\d (?:{'|'.join(UNITS)})(?![\w·²])")
SHORT_HEADLINE = 14  # characters: a size, a number; longer ones are words, and no word breaks on a phone
PAGE_TO_TOP = "../"  # every calculator's page stands in one folder


def result_html(result: Result, *, actions: bool = True) -> str:
    """Return the HTML of a result: an answer, what it depends on, the fields to fix, or why the case is not covered.

    `actions`: with the buttons that copy its link or a note of it and print it.
    """
    if result.outcome == "fix":
        return _said_earlier(result) + _fix(result)
    buttons = _actions(result) if actions else ""
    if result.depends:
        below = f"{_warnings(result)}{_list('answer-notes', result.trace.notes)}{buttons}"
        body = depends_html(result, f"{_entered(result)}{below}{_working(result)}{_citations(result)}")
    else:
        body = _answer(result, buttons) if result.outcome == "answer" else _not_covered(result, buttons)
    return _said_earlier(result) + body


def mark_html(mark: str) -> str:
    """Return the badge that says how a figure was checked."""
    return f'<span class="mark" data-mark="{mark}">{text(MARK_WORDS[mark])}</span>'


def linked(words: Message | str) -> str:
    """Return words as HTML text; each calculator that they name becomes a link to its page."""
    shown = text(words)
    for named in words.values.values() if isinstance(words, Message) else ():
        if isinstance(named, CalculatorName):
            shown = shown.replace(text(named), f'<a href="{named.slug}.html">{text(named)}</a>', 1)
    return shown


def _answer(result: Result, buttons: str) -> str:
    answer = result.answered
    kind = "size" if len(str(answer.headline)) <= SHORT_HEADLINE else "size words"
    heading = text(answer.name if buttons else message("Example: {name}", name=answer.name))
    return (
        '<section class="answer" data-outcome="answer" tabindex="-1">'
        f'<h2 class="answer-name">{heading}</h2>'
        f"{_found(result.found)}"
        f'<p class="answer-size"><span class="{kind}">{_unbroken(text(answer.headline))}</span> '
        f'<span class="metal">{_unbroken(text(answer.detail))}</span></p>'
        f'{unfinished_html(answer)}<p class="answer-basis">{_basis(result)}</p>{edition_html(result)}'
        f"{_entered(result)}{assumed_html(result) if buttons else ''}{_warnings(result)}{_table(answer.table)}"
        f"{charts_html(answer.charts)}{_list('answer-notes', result.trace.notes)}{_margin(result)}{buttons}"
        f"{_working(result)}{_citations(result)}</section>"
    )


def _margin(result: Result) -> str:
    """Return where the answer changes, in one line."""
    line = margin_line(result, result.margin)
    return f'<p class="answer-margin">{_unbroken(text(line))}</p>' if line else ""


def _found(verdict: Verdict | None) -> str:
    """Return the verdict on what was found on site, before the size that it was held against."""
    if verdict is None:
        return ""
    beside = " ".join(map(str, verdict.more))
    more = f'<p class="found-more">{_unbroken(text(beside))}</p>' if beside else ""
    return f'<p class="found" data-verdict="{verdict.verdict}">{_unbroken(text(verdict.headline))}</p>{more}'


def _unbroken(html: str) -> str:
    """Return words in which no number stands on one line and its unit on the next."""
    return NUMBER_WITH_UNIT.sub(r'<span class="whole">\g<0></span>', html)


def _basis(result: Result) -> str:
    edition = text(message("{edition} edition", edition=result.edition))
    if result.answered.basis is None:
        return edition
    basis = rule(result.answered.basis, result.edition)
    return f"{edition} · {text(basis.section)} · {mark_html(basis.mark)} {text(basis.note)}"


def _table(table: Table | None) -> str:
    """Return a list of parts; on a narrow screen each row becomes a card, so every cell carries its heading."""
    if table is None:
        return ""
    head = "".join(f'<th scope="col">{text(words)}</th>' for words in table.headings.values())
    rows = "".join(_row(table, row) for row in table.rows)
    kind = "list" if len(table.headings) <= FEW_COLUMNS else "list wide"
    return f'<table class="{kind}"><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>'


def _row(table: Table, row: Row) -> str:
    first, *others = table.headings
    name = text(row.cells[first])
    if row.link:
        name = f'<a href="{escape(PAGE_TO_TOP + page_address(row.link))}">{name}</a>'
    cells = "".join(
        f'<td data-heading="{text(table.headings[key])}" data-column="{key}">{_unbroken(text(row.cells[key]))}</td>'
        for key in others
    )
    return f'<tr><th scope="row">{name}</th>{cells}</tr>'


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
        f"{edition_html(result)}{_entered(result)}{_warnings(result)}{buttons}{_working(result)}{_citations(result)}"
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
    now, unexplained = (
        message("The answer now: {answer}", answer=earlier["now"]),
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
        f"<p>{text(message('The link was made with: {answer}', answer=earlier['then']))}</p>"
        f"<p>{text(now)}</p>{_list('reasons', reasons)}</section>"
    )


def _entered(result: Result) -> str:
    return f'<p class="answer-inputs">{text(result.entered)}</p>'


def _warnings(result: Result) -> str:
    rows = "".join(f'<p class="warning">{_unbroken(text(words))}</p>' for words in result.warnings)
    return f'<div class="warnings">{rows}</div>' if rows else ""


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


def _working(result: Result) -> str:
    if not result.trace.steps:
        return ""
    rows = "".join(_step(step) for step in result.trace.steps)
    return f'<section class="working"><h3>{text(message("Working"))}</h3><ol class="steps">{rows}</ol></section>'


def _step(step: Step) -> str:
    numbers = step.numbers
    if not numbers and step.value is not None:
        shown = step.value if isinstance(step.value, str) else shown_of_model(step.value)
        numbers = f"{shown} {step.unit}".strip()
    formula = f'<p class="step-formula">{text(step.formula)}</p>' if step.formula else ""
    shown_numbers = f'<p class="step-numbers">{_unbroken(text(numbers))}</p>' if numbers else ""
    # Two rules can stand in one section: its name and mark are shown once.
    places = dict.fromkeys((cited.section, cited.mark) for cited in step.citations)
    cites = "".join(f'<p class="step-cite">{text(section)} {mark_html(mark)}</p>' for section, mark in places)
    words = _unbroken(text(step.words))
    return f'<li class="step"><p class="step-words">{words}</p>{formula}{shown_numbers}{cites}</li>'


def _citations(result: Result) -> str:
    head = "".join(
        f"<th>{text(words)}</th>" for words in (
            message("Section"), message("What it states"), message("How it was checked")
        )
    )
    rows = "".join(_citation(cited) for cited in result.trace.citations)
    heading = text(message("Sections and sources, {edition} edition", edition=result.edition))
    return (
        f'<details class="citations"><summary>{heading}</summary>'
        f'<table class="facts"><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table></details>'
    )


def _citation(cited: Rule) -> str:
    seen = "; ".join(citation_to_dict(cited)["sources"])
    checked = " ".join([mark_html(cited.mark), text(seen), text(cited.note)])
    return f"<tr><td>{text(cited.section)}</td><td>{text(cited.title)}</td><td>{checked}</td></tr>"


def _list(name: str, sentences: list[Any]) -> str:
    rows = "".join(f"<li>{_unbroken(linked(words))}</li>" for words in sentences)
    return f'<ul class="{name}">{rows}</ul>' if rows else ""
