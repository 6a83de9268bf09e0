"""The page of hazards: for each calculator, check list and drawing what could go wrong, and what stops it."""

from __future__ import annotations

from collections import Counter
from itertools import groupby
from operator import attrgetter

from calc.messages import Message, message
from calc.registry import CALCULATORS
from site_assets.build.hazard_data import (
    CALCULATOR,
    CHECKS,
    DEATH,
    DRAWING,
    GRAVITY,
    INJURY,
    WORK,
    Hazard,
    hazards,
    hazards_of,
)
from site_assets.build.page_data import ROOMS, pages, title_of
from site_assets.diagrams import drawing_slugs
from site_assets.render.answer import text

GRAVITY_WORDS = {
    DEATH: message("Death or serious injury"),
    INJURY: message("Injury or fire"),
    WORK: message("Work done wrong"),
}


def hazards_html(kind: str) -> str:
    """Return the hazards of one kind, folded by what they belong to. Raises: HazardError, where some are missing."""
    return "".join(_subject(kind, of) for of in subjects(kind))


def subjects(kind: str) -> list[str]:
    """Return what of this kind must have hazards, in the order of the handbook."""
    if kind == CALCULATOR:
        return list(CALCULATORS)
    if kind == CHECKS:
        return pages(*ROOMS)
    if kind == DRAWING:
        return drawing_slugs()
    return list(dict.fromkeys(each.of for each in hazards() if each.kind == kind))


def hazards_count() -> str:
    """Return how many hazards there are, of each gravity."""
    counts = Counter(each.grave for each in hazards())
    listed = [message("{grave}: {count}", grave=GRAVITY_WORDS[grave], count=counts[grave]) for grave in GRAVITY]
    rows = "".join(f"<li>{text(words)}</li>" for words in listed)
    words = message("{count} hazards are listed, each with a test of what stops it:", count=len(hazards()))
    return f"<p>{text(words)}</p><ul>{rows}</ul>"


def _subject(kind: str, of: str) -> str:
    found = hazards_of(kind, of)
    count = message("1 hazard") if len(found) == 1 else message("{count} hazards", count=len(found))
    by_gravity = sorted(found, key=lambda each: GRAVITY.index(each.grave))
    told = "".join(
        f"<p><strong>{text(GRAVITY_WORDS[grave])}</strong></p><ul>{''.join(map(_hazard, rows))}</ul>"
        for grave, rows in groupby(by_gravity, attrgetter("grave"))
    )
    anchor = f"{kind}-{of.replace('/', '-').replace(' ', '-')}"
    return (
        f'<details class="rule"><summary><h3 id="{anchor}">{text(_name(kind, of))}</h3><small>{text(count)}</small>'
        f"</summary><div data-search-exclude>{told}</div></details>"
    )


def _name(kind: str, of: str) -> Message:
    if kind == CALCULATOR:
        return message("{title}", title=title_of(f"calculators/{of}"))
    if kind == CHECKS:
        return message("{title}", title=title_of(of))
    if kind == DRAWING:
        page = next((f"{room}/{of}" for room in ROOMS if f"{room}/{of}" in pages(room)), f"calculators/{of}")
        return message("{title}", title=title_of(page))
    return message("{title}", title=of.capitalize())


def _hazard(hazard: Hazard) -> str:
    proof = f"{text(message('Proved by:'))} <code>{text(hazard.test)}</code>"
    return (
        f"<li><p>{text(hazard.harm)}</p><p>{text(message('What stops it: {stop}', stop=hazard.stop))}</p>"
        f"<p><small>{proof}</small></p></li>"
    )
