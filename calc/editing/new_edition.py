"""A new edition: every rule states it as another one until its book is read, and its pages and checks are there."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

from calc.data_file import Data
from calc.editing.statements import carrier, with_statement, written
from calc.editing.tree import ROOT, RULES, SECTIONS, RefusedError, text_of
from calc.editions import EDITIONS
from calc.rulebook import DATED, KINDS, file_of, rule_keys

LISTED = RULES / "editions.toml"
MENU = Path("mkdocs.yml")
PAGE_OF_EDITIONS = Path("docs/editions.md")
PUBLISHED = Path("site_assets/published/handbook.toml")
_PAGE = """# From {older} to {newer}

What moved and what changed between the {older} and the {newer} edition, as far as this handbook reads them. It is \
made from the same rules that the calculators use. To see one case in both editions side by side, use \
[compare editions](../calculators/compare-editions.md).

{{{{ edition_changes("{older}", "{newer}") }}}}
"""


def new_edition(new: str, taken_from: str) -> dict[Path, str]:
    """Return every file that changes when the edition `new` is taken as `taken_from`, with its text then.

    Raises: RefusedError for a year that is none, is known already, lies between two editions or is to be taken from an
    unknown one.
    """
    if not re.fullmatch(r"(?:19|20)\d\d", new):
        raise RefusedError(f"{new} is no year of an edition. Write it as 2029.")
    if new in EDITIONS:
        raise RefusedError(f"The rules know the {new} edition already.")
    apart = tomllib.loads(text_of(LISTED))["years_apart"]
    if years := (int(new) - int(EDITIONS[-1])) % apart:
        before = int(new) - years
        raise RefusedError(
            f"There is no {new} edition: they come every {apart} years, {before} and {before + apart}. Where the cycle "
            "was changed, change `years_apart` in calc/rules/editions.toml first."
        )
    if taken_from not in EDITIONS:
        raise RefusedError(f"The rules do not know the {taken_from} edition. They know {', '.join(EDITIONS)}.")
    editions = sorted([*EDITIONS, new])
    listed = re.sub(r"(?m)^editions = .*$", f"editions = {written(editions)}", text_of(LISTED))
    return {
        LISTED: listed,
        **dict(_rules(new, taken_from)),
        **dict(_expected_sections(new, taken_from)),
        **_pages(new, editions),
    }


def stated_as(document: Data, new: str, taken_from: str) -> Data:
    """Return what a rule states for an edition that nobody has read: as another one, from memory.

    What the trade does without a source stays common practice: no book will confirm it.
    """
    before = document[DATED][taken_from]
    stated: Data = {
        "section": before["section"],
        "mark": "practice" if before["mark"] == "practice" else "memory",
        "sources": [],
        "note": f"No text of the {new} edition was seen; taken as in {taken_from}.",
    }
    if KINDS[document["kind"]]:
        stated["same_as"] = carrier(document, taken_from)
    return stated


def _rules(new: str, taken_from: str) -> Iterator[tuple[Path, str]]:
    for key in rule_keys():
        path = RULES / f"{file_of(key)}.toml"
        text = text_of(path)
        document = tomllib.loads(text)
        if DATED in document:
            yield path, with_statement(text, new, stated_as(document, new, taken_from))


def _expected_sections(new: str, taken_from: str) -> Iterator[tuple[Path, str]]:
    for file in sorted((ROOT / SECTIONS).glob("*.toml")):
        path = SECTIONS / file.name
        text = text_of(path)
        if taken_from in tomllib.loads(text):
            yield path, f'{text.rstrip()}\n\n[{new}]\ntaken_as = "{taken_from}"\n'


def _pages(new: str, editions: list[str]) -> dict[Path, str]:
    """Return the pages of what changed to and from `new`, listed wherever pages are."""
    menu, listed, published = text_of(MENU), text_of(PAGE_OF_EDITIONS), text_of(PUBLISHED)
    pages: dict[Path, str] = {}
    for older, newer in pairwise(editions):
        if new not in (older, newer):
            continue
        name = f"{older}-to-{newer}"
        pages[Path(f"docs/editions/{name}.md")] = _PAGE.format(older=older, newer=newer)
        title = f"From {older} to {newer}"
        menu = _after_last(menu, r"^ *- From \d+ to \d+: editions/.*\n", f"      - {title}: editions/{name}.md\n")
        listed = _after_last(listed, r"^- \[From \d+ to \d+\].*\n", f"- [{title}](editions/{name}.md)\n")
        published = f'{published.rstrip()}\n\n[[page]]\npath = "editions/{name}.html"\nanchors = ["safety"]\n'
    return pages | {MENU: menu, PAGE_OF_EDITIONS: listed, PUBLISHED: published}


def _after_last(text: str, line: str, more: str) -> str:
    *_, last = re.finditer(line, text, re.MULTILINE)
    return text[: last.end()] + more + text[last.end() :]
