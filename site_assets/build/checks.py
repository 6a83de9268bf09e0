"""Field checks, correction notes and the exercise of a page, from the data beside it."""

from __future__ import annotations

from urllib.parse import urlencode

from calc.address import page_address
from calc.editions import DEFAULT_EDITION
from calc.known import known
from calc.messages import message
from calc.rulebook import rule
from site_assets.build.by_edition import by_edition, section
from site_assets.build.page_data import Check, PageData, check_at, title_of
from site_assets.render.answer import text


def checks_html(data: PageData, to_top: str) -> str:
    """Return the checks of a page, folded, what matters most first. `to_top` leads from the page to the top folder."""
    elsewhere = "".join(_check(check_at(address), to_top, at_home=False) for address in data.first_checks)
    own = "".join(_check(check, to_top, at_home=True) for check in data.checks)
    return f'<div class="checks">{elsewhere}{own}</div>'


def notes_html(data: PageData, to_top: str) -> str:
    """Return a correction note to copy for every check of a page."""
    listed = [*(check_at(address) for address in data.first_checks), *data.checks]
    notes = "".join(_note(check, to_top) for check in listed)
    words = message(
        "Correction notes to copy. Change what differs on site. Section and link match the edition you picked."
    )
    return f'<p class="notes-intro">{text(words)}</p><div class="notes">{notes}</div>'


def exercise_html(data: PageData, to_top: str) -> str:
    """Return the exercise of a page, its worked answer folded."""
    asked = known(data.exercise)
    numbers = ""
    if asked.calculator:
        address = to_top + page_address(f"{asked.calculator}?{urlencode(asked.to_open)}")
        words = message("Open it in the calculator: {name}", name=title_of(f"calculators/{asked.calculator}"))
        numbers = f'<p><a href="{text(address)}">{text(words)}</a></p>'
    return (
        f'<div class="exercise"><p>{text(asked.question)}</p><details>'
        f'<summary>{text(message("Show the worked answer"))}'
        f"</summary>{worked_answer_html(data)}{numbers}</details></div>"
    )


def worked_answer_html(data: PageData) -> str:
    """Return the way to the answer of a page's exercise, step by step, and the answer."""
    asked = known(data.exercise)
    steps = "".join(f"<li>{text(step)}</li>" for step in asked.steps)
    return f"<ol>{steps}</ol><p><strong>{text(asked.answer)}</strong></p>"


def _check(check: Check, to_top: str, *, at_home: bool) -> str:
    rows = [
        (message("Look for"), text(check.look_for)),
        (message("Measure"), text(check.measure)),
        (message("Passes when"), text(check.pass_when)),
        (message("Why"), text(check.why)),
        (message("Fix"), text(check.make_right)),
        (message("Section"), section(*check.sections)),
    ]
    told = "".join(f"<dt>{text(words)}</dt><dd>{told}</dd>" for words, told in rows if told)
    home = ""
    if not at_home:
        words = message("From: {page}", page=title_of(check.page))
        home = f'<p><a href="{_link(check, to_top)}">{text(words)}</a></p>'
    anchor = f' id="check-{check.id}"' if at_home else ""
    return f'<details class="check"{anchor}><summary>{text(check.name)}</summary><dl>{told}</dl>{home}</details>'


def _note(check: Check, to_top: str) -> str:
    lines = "".join(
        f"<p>{text(message('{part}: {words}', part=part, words=words))}</p>"
        for part, words in ((message("Observed"), check.observed), (message("Required"), check.required))
    )
    where = f"<p>{by_edition(lambda edition: text(_where(check, edition)))}</p>"
    not_chosen = message("No edition picked. Showing {edition}.", edition=DEFAULT_EDITION)
    copy, copied = text(message("Copy note")), text(message("Note copied"))
    return (
        f'<details class="correction"><summary>{text(check.name)}</summary><div data-note>{lines}{where}'
        f'<p class="edition-note" data-when="not-chosen">{text(not_chosen)}</p></div>'
        f'<p><button type="button" class="quiet" data-copy-note="{_link(check, to_top)}" '
        f'data-copied="{copied}">{copy}</button></p></details>'
    )


def _where(check: Check, edition: str):
    places = "; ".join(dict.fromkeys(rule(key, edition).section for key in check.sections))
    unverified = any(rule(key, edition).mark == "memory" for key in check.sections)
    if unverified:
        return message("{edition} edition: {places}. Unverified: read the book first.", edition=edition, places=places)
    return message("{edition} edition: {places}.", edition=edition, places=places)


def _link(check: Check, to_top: str) -> str:
    return f"{to_top}{check.page}.html#check-{check.id}"
