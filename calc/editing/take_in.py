"""What was read in a book becomes part of the rules: marks rise, corrections stand, the text is named."""

from __future__ import annotations

import json
import re
import tomllib
from collections.abc import Iterable
from pathlib import Path

from calc.editing.answer_record import Changed, changed, record_of, recorded
from calc.editing.domain import DOMAIN
from calc.editing.readings_table import BookSource, Read
from calc.editing.statements import with_figures, with_statement, written
from calc.editing.tree import ROOT, RULES, SECTIONS, RefusedError, copy_with, run_in, text_of
from calc.rulebook import DATED, file_of

SOURCES = RULES / "sources.toml"
CHECKS = Path("tests/rules")


def taken_in(read: list[Read]) -> dict[Path, str]:
    """Return every file that changes when what was read is taken in, with its text then. Raises: RefusedError."""
    texts: dict[Path, str] = {}
    for each in read:
        path = RULES / f"{file_of(each.stated.key)}.toml"
        texts[path] = _rule_text(text_of(path), each)
        room, name = each.stated.key.split("/")
        expected = SECTIONS / f"{room}.toml"
        before = texts.get(expected) or text_of(expected)
        texts[expected] = with_section(before, each.stated.edition, name, each.section)
    new = {each.source.key: each.source for each in read if each.source.new}
    for source in {each.source for each in read if each.source.new}:
        if new[source.key] != source:
            raise RefusedError(f"The source {source.key} is told in two ways.")
    if new:
        texts[SOURCES] = text_of(SOURCES).rstrip() + "\n\n" + "\n".join(map(_source_text, new.values()))
    return texts


def changed_by(texts: dict[Path, str]) -> list[Changed]:
    """Return every answer of the domain that is another one with `texts` in place, in all editions.

    Raises: RefusedError where the rules do not hold together then, or nothing can be computed with them.
    """
    before = record_of()
    with copy_with(texts) as copy:
        run_in(copy, "edition", "check")
        after = json.loads(run_in(copy, "changes", "--answers"))
    return [
        each
        for slug in DOMAIN
        for year in before["answers"][slug]["editions"]
        for each in changed(slug, year, recorded(before, slug, year), recorded(after, slug, year))
    ]


def checks_that_name(keys: Iterable[str]) -> list[str]:
    """Return the files of checks that expect figures of these rules: a person puts the book's there."""
    names = {part for key in keys for part in (f'"{key}"', f'"{key.split("/")[1]}"')}
    files = sorted((ROOT / CHECKS).glob("test_figures*.py"))
    return [file.name for file in files if any(name in file.read_text(encoding="utf-8") for name in names)]


def with_section(text: str, edition: str, name: str, section: str) -> str:
    r"""Return the text of expected sections with that of one rule in an edition.

    >>> print(with_section('[2026]\ntaken_as = "2023"\n\n[2029]\ntaken_as = "2026"\n', "2026", "area", "Table 8"))
    [2026]
    taken_as = "2023"
    area = "Table 8"
    <BLANKLINE>
    [2029]
    taken_as = "2026"
    <BLANKLINE>
    """
    begins = re.search(rf"(?m)^\[{edition}\]\n", text)
    if not begins:
        text = f"{text.rstrip()}\n\n[{edition}]\n"
    start = begins.end() if begins else len(text)
    ends = re.compile(r"(?m)^\[").search(text, start)
    table = text[start : ends.start() if ends else len(text)]
    lines = [line for line in table.splitlines() if line.strip() and not line.startswith(f"{name} = ")]
    block = "\n".join([*lines, f"{name} = {written(section)}"]) + "\n"
    rest = "\n" + text[ends.start() :] if ends else ""
    return text[:start] + block + rest


def _rule_text(text: str, read: Read) -> str:
    document = tomllib.loads(text)
    edition = read.stated.edition
    stated = document[DATED] if read.figures is None else with_figures(document, edition, read.figures)
    now = stated[edition] | {
        "section": read.section,
        "mark": "confirmed",
        "sources": [read.source.key, *(key for key in stated[edition]["sources"] if key != read.source.key)],
        "note": _note(read.note, edition),
    }
    stated[edition] = {name: value for name, value in now.items() if name != "note" or value}
    for each in sorted(stated):
        if each == edition or stated[each] != tomllib.loads(text)[DATED][each]:
            text = with_statement(text, each, stated[each])
    return text


def _note(note: str, edition: str) -> str:
    """Return a note without the sentence that the edition was not seen."""
    return re.sub(rf"\s*No text of the {edition} edition was seen[^.]*\.", "", note).strip()


def _source_text(source: BookSource) -> str:
    fields = {"title": source.title, "kind": source.kind, "seen": source.seen}
    return "\n".join([f"[{source.key}]", *(f"{name} = {written(value)}" for name, value in fields.items())]) + "\n"
