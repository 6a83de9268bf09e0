"""The table that comes back from an owner of a book: what was ticked, what was corrected, and from which text."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from calc.editing.figures_cell import figures_cell, read_figures
from calc.editing.review import Reading
from calc.editing.review_shown import COLUMNS, FIGURE_WORD, FIGURES, NOTE, SECTION, SECTION_WORD, TICK
from calc.editing.tree import RefusedError
from calc.editing.weight import Weight
from calc.rulebook import DATED, Rule, document, rule, rule_keys, sources

TICKED, LEFT = ("yes", "y", "x", "✓"), ("", "no", "n")
_ASKED = {*COLUMNS[:3], NOTE, "key", "stamp"}
_KEY = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")


@dataclass(frozen=True)
class BookSource:
    """A text that was read: its key in sources.toml, title, kind and what was seen; `new` where it is not there yet."""

    key: str
    title: str
    kind: str
    seen: str
    new: bool


@dataclass(frozen=True)
class Read:
    """One statement that was read in its book: what it says there, and the text. `figures` None where they stand."""

    stated: Rule
    section: str
    figures: object
    note: str
    source: BookSource

    @property
    def corrected(self) -> bool:
        """Whether the book says otherwise than we did."""
        return self.figures is not None or self.section != self.stated.section


def read_table(data: bytes, edition: str, default: Mapping[str, str]) -> list[Read]:
    """Return every ticked statement of a table. default: the source of rows that name none, by column.

    Raises: RefusedError, naming every row that cannot be taken in, one a line: for a tick without a source, a
    correction without a tick, a statement that is another one since the table was printed, a figure that cannot be
    read, a source that does not name the edition.
    """
    read: list[Read] = []
    faults: list[str] = []
    keys = set(rule_keys())
    for line, row in _rows(data):
        try:
            stated = _stated(row["key"], row["stamp"], edition, keys)
            if _is_ticked(row, stated):
                read.append(_read(row, stated, default))
        except RefusedError as fault:
            faults.append(f"Row {line}: {fault}")
    if faults:
        raise RefusedError("\n".join(faults))
    return read


def _rows(data: bytes) -> Iterator[tuple[int, dict[str, str]]]:
    try:
        text = data.decode("utf-16" if data[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig")
    except UnicodeDecodeError:
        raise RefusedError("The table is no text in UTF-8 or UTF-16. Save it again as CSV UTF-8.") from None
    first = text.partition("\n")[0]
    table = csv.DictReader(io.StringIO(text, newline=""), delimiter=max(",;\t", key=first.count))
    missing = _ASKED - set(table.fieldnames or ())
    if missing:
        raise RefusedError(f"The table lacks the columns {', '.join(sorted(missing))}. Keep those it was printed with.")
    for number, row in enumerate(table, 2):
        cells = {name: (cell or "").replace("\r\n", "\n").strip() for name, cell in row.items() if name}
        if any(cells.values()):
            yield number, cells


def _stated(key: str, stamp: str, edition: str, keys: set[str]) -> Rule:
    if key not in keys:
        raise RefusedError(f"there is no rule {key!r}.")
    if DATED not in document(key):
        raise RefusedError(f"{key} is stated by no edition.")
    stated = rule(key, edition)
    if stamp != Reading(stated, Weight()).stamp:
        raise RefusedError(f"{key} says something else since this table was printed. Print it anew and read it again.")
    return stated


def _is_ticked(row: Mapping[str, str], stated: Rule) -> bool:
    tick = row[TICK].lower()
    if tick not in TICKED + LEFT:
        raise RefusedError(f"{stated.key}: write yes in the column {TICK}, or leave it empty.")
    edited = _section(row) != stated.section or _figures(row, stated) is not None or row[NOTE] != str(stated.note)
    if edited and tick in LEFT:
        raise RefusedError(
            f"{stated.key} is corrected and not ticked. Write yes in the column {TICK} where it was read."
        )
    return tick in TICKED


def _read(row: Mapping[str, str], stated: Rule, default: Mapping[str, str]) -> Read:
    section = _section(row)
    if not section:
        raise RefusedError(f"{stated.key} names no section.")
    return Read(stated, section, _figures(row, stated), row[NOTE], _source(row, stated, default))


def _section(row: Mapping[str, str]) -> str:
    return row[SECTION].removeprefix(SECTION_WORD).strip()


def _figures(row: Mapping[str, str], stated: Rule) -> object:
    """Return the figures where they are not those that we state, else None."""
    cell = row[FIGURES].removeprefix(FIGURE_WORD).strip()
    if cell == figures_cell(stated):
        return None
    if not figures_cell(stated):
        raise RefusedError(f"{stated.key} has no figures, only a section.")
    figures = read_figures(cell, stated)
    if not figures and figures != 0:
        raise RefusedError(f"{stated.key} has no figures left.")
    return None if figures in (stated.value, list(stated.rows)) else figures


def _source(row: Mapping[str, str], stated: Rule, default: Mapping[str, str]) -> BookSource:
    told = {name: row.get(name, "") for name in COLUMNS if name.startswith("source")}
    if not told["source"]:
        told = {name: default.get(name, "") for name in told}
    key, title = told["source"], told["source_title"]
    if not key:
        raise RefusedError(f"{stated.key} is ticked and names no source. Say which text was read.")
    known = sources().get(key)
    if known:
        if title and title != known["title"]:
            raise RefusedError(f"the source {key} is {known['title']!r} already. Take another key for {title!r}.")
        source = BookSource(key, known["title"], known["kind"], known["seen"], new=False)
    else:
        source = _new_source(key, told)
    if stated.edition not in source.title:
        raise RefusedError(f"the source {key} is {source.title!r}, which does not name the {stated.edition} edition.")
    return source


def _new_source(key: str, told: Mapping[str, str]) -> BookSource:
    if not _KEY.fullmatch(key):
        raise RefusedError(f"the source {key!r} needs a key of small letters, digits and hyphens.")
    needed = {"source_title": "title", "source_seen": "words for what was seen", "source_date": "date"}
    for name, words in needed.items():
        if not told[name]:
            raise RefusedError(f"the source {key} is new and has no {words}.")
    try:
        day = date.fromisoformat(told["source_date"]).isoformat()
    except ValueError:
        raise RefusedError(f"the source {key} needs the date it was read, as 2029-01-31.") from None
    seen = f"{told['source_seen']}; {day}"
    return BookSource(key, told["source_title"], told["source_kind"] or "standard", seen, new=True)
