"""A table in, a table out: each row is one run of a calculator, answered in columns after its own.

The first row names the columns: fields of the calculator, `edition`, and one free column, `label`. Rows are
read, answered and written one by one, so a table may be of any length.
"""

from __future__ import annotations

import csv
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import BinaryIO

from calc import permalink
from calc.address import page_address
from calc.calculator import MAX_UNKNOWN, Calculator, Correction, Result, truncate
from calc.csv_reader import CsvRow, Sheet, read_sheet
from calc.data_file import Value
from calc.formula_escape import UNREADABLE, escape_formula, without_escape
from calc.found.declared import FOUND
from calc.found.shown import COLUMNS, found_cells
from calc.messages import Message, message
from calc.rulebook import MARKS
from calc.trace import MARK_WORDS, shown_number

LABEL = "label"
BEFORE_VALUES = ("line", "outcome", "answer")
AFTER_VALUES = ("not_covered", "sections", "mark", "mark_words", "warnings", "fix", "link")
# A table with all of these was answered before, by whatever version: every answered table has them.
ANSWERED = ("line", "outcome", "answer", "sections", "mark", "warnings", "fix", "link")
OPEN_COLUMNS = ("depends_on", "safe", "ask", "assumed")  # after all others, so that these stay where they were
MAX_REMEMBERED = 200
# Around a name: blanks, and what copying and joining of files leave there without width.
UNSEEN = " \t\r\n\N{NO-BREAK SPACE}\N{ZERO WIDTH NO-BREAK SPACE}\N{ZERO WIDTH SPACE}\N{LEFT-TO-RIGHT MARK}"


Texts = Mapping[str, str]
_remembered: dict[tuple[str, str, tuple[str, ...], str], str] = {}


class TableError(Exception):
    """A table whose first row cannot be used: the columns to correct."""

    def __init__(self, fix: tuple[Correction, ...]):
        super().__init__("; ".join(str(each.words) for each in fix))
        self.fix = fix


class _Echo:
    """A file whose write() returns what the csv module writes."""

    def write(self, text: str) -> str:
        return text


@dataclass(frozen=True)
class BatchResult:
    """A table being answered: `columns` are those read and those added, `rows` give the text of each, in order."""

    columns: tuple[str, ...]
    rows: Iterator[dict[str, str]]
    separator: str
    has_bom: bool

    def first_line(self) -> str:
        """Return the columns as a line of the written table, after the mark of UTF-8 when the table read had a mark."""
        return ("\N{ZERO WIDTH NO-BREAK SPACE}" if self.has_bom else "") + self.line(self.columns)

    def line(self, cells: Iterable[str]) -> str:
        """Return cells as one line of the written table."""
        return csv.writer(_Echo(), delimiter=self.separator).writerow(cells)


def answer_table(calculator: Calculator, stream: BinaryIO, given: Iterable[tuple[str, str]] = ()) -> BatchResult:
    r"""Return the table in a stream of bytes with every row answered.

    given: names and texts of inputs for every row that leaves them blank. Raises: TableError, before any row, for a
    first row with a column that is unknown, repeated or missing. Rows that cannot be answered
    end as `fix`, with the column and what to enter; a table that was answered before is answered anew.

    >>> from io import BytesIO
    >>> from calc import main_bonding_jumper
    >>> rows = answer_table(main_bonding_jumper, BytesIO(b"label,conductor\nPanel A,500kcmil\nB,5/0\n")).rows
    >>> [(row["line"], row["label"], row["outcome"], row["size"]) for row in rows]
    [('2', 'Panel A', 'answer', '1/0'), ('3', 'B', 'fix', '')]
    """
    given = [(calculator.name_now(name), text) for name, text in given]
    values = value_columns(calculator)
    added = (*BEFORE_VALUES, *values.values(), *AFTER_VALUES, *OPEN_COLUMNS)
    sheet = read_sheet(stream)
    header = _header(calculator, sheet, added, [name for name, _ in given])
    checked = COLUMNS if FOUND in (*header, *(name for name, _ in given)) else ()
    columns = tuple(name for name in header if name not in (*added, *COLUMNS))
    answered = (_answered(calculator, header, columns, values, row, dict(given)) for row in sheet.rows)
    return BatchResult(
        columns=(*columns, *added, *checked),
        rows=(row if checked else _without(COLUMNS, row) for row in answered),
        separator=";" if sheet.separator == ";" else ",",
        has_bom=sheet.has_bom,
    )


def counted(outcomes: Mapping[str, int]) -> Message:
    """Return how many rows ended in which outcome, in words.

    >>> print(counted({"answer": 2, "fix": 1}))
    Answered: 2. To fix: 1. Not covered: 0.
    """
    answers, fix, outside = (shown_number(outcomes.get(name, 0)) for name in ("answer", "fix", "not_covered"))
    told = message(
        "Answered: {answers}. To fix: {fix}. Not covered: {outside}.", answers=answers, fix=fix, outside=outside
    )
    if "depends" not in outcomes:
        return told
    return message("{told} Depends: {depends}.", told=told, depends=shown_number(outcomes["depends"]))


def example_table(calculator: Calculator) -> str:
    """Return a table to start from: the names of the columns and the calculator's own example.

    >>> from calc import main_bonding_jumper
    >>> print(example_table(main_bonding_jumper).splitlines()[0])
    label,edition,conductor,sets,conductor_metal,metal
    """
    line = csv.writer(_Echo(), lineterminator="\n").writerow
    return line([LABEL, *calculator.example]) + line([str(calculator.name), *calculator.example.values()])


def value_columns(calculator: Calculator) -> dict[str, str]:
    """Return the columns of the answer's values by the name of the value, as the calculator declares its outputs.

    A value named like another column gets `answer_` before its name.
    """
    return {each.name: column_of(calculator, each.name) for each in calculator.outputs}


def column_of(calculator: Calculator, value: str) -> str:
    """Return the column of a value of the answer; a field that was called like it once has its name taken for ever."""
    taken = {LABEL, *calculator.names, *BEFORE_VALUES, *AFTER_VALUES, *OPEN_COLUMNS}
    return f"answer_{value}" if value in taken else value


def _header(calculator: Calculator, sheet: Sheet, added: tuple[str, ...], given: list[str]) -> list[str]:
    """Return the names of the columns read. Raises: TableError."""
    known = (LABEL, "edition", *calculator.fields)
    row = next(sheet.rows, None)
    header = [cell.strip(UNSEEN) for cell in row.cells] if row else []
    while header and not header[-1]:
        header.pop()  # spreadsheets write empty columns too
    if not set(header) & {LABEL, *calculator.names}:
        raise TableError(
            (
                Correction(
                    truncate(header[0]) if header else LABEL,
                    message("First row"),
                    message(
                        "The table must be text, and its first row must name the columns. The columns are {names}.",
                        names=", ".join(known),
                    ),
                ),
            )
        )
    # A column of the reader's own must not be taken for one that an earlier answer added.
    allowed = (*known, *added, *COLUMNS) if set(ANSWERED) <= set(header) else known
    fix: dict[str, Message] = {}
    now = [calculator.name_now(name) for name in header]
    for place, name in enumerate(header):
        if now[place] in now[:place]:
            fix[name] = message("This column appears twice. Keep one.")
        elif not name:
            column = str(message("column {number}", number=place + 1))
            fix[column] = message("This column has no name in the first row.")
        elif now[place] not in allowed and len(fix) < MAX_UNKNOWN:
            fix[name] = message("There is no column with this name. The columns are {names}.", names=", ".join(known))
    for place, name in enumerate(given):
        if name in given[:place]:
            fix[name] = message("This is entered twice. Enter it once.")
        elif name not in known[1:]:
            fix[name] = message("There is no field with this name. The fields are {names}.", names=", ".join(known[1:]))
    for name in calculator.fields:
        if name not in calculator.defaults and name not in (*now, *given):
            fix[name] = message("Every row needs it. Add the column, with this name in the first row.")
    if fix:
        raise TableError(tuple(Correction(truncate(name), truncate(name), words) for name, words in fix.items()))
    return header


def _answered(
    calculator: Calculator, header: list[str], columns: tuple[str, ...], values: Texts, row: CsvRow, given: Texts
) -> dict[str, str]:
    """Return one row of the answered table."""
    typed = dict(zip(header, row.cells, strict=False))
    shown = {name: escape_formula(typed.get(name, "")) for name in columns} | {"line": str(row.line)}
    if fix := _unreadable(header, columns, row, typed):
        return shown | _result_cells(values, "fix", fix=fix)
    filled = [name for name in columns if name != LABEL and typed[name].strip()]
    inputs = dict(given) | {calculator.name_now(name): without_escape(typed[name]) for name in filled}
    return shown | _cells_of(calculator.run(inputs.items()), values)


def _without(names: Iterable[str], row: dict[str, str]) -> dict[str, str]:
    return {name: text for name, text in row.items() if name not in names}


def _unreadable(header: list[str], columns: tuple[str, ...], row: CsvRow, typed: Mapping[str, str]) -> str:
    """Return what must be mended before the row can be run, or ""."""
    counts = {"cells": len(row.cells), "names": len(header)}
    if row.fault:
        return str(message("whole row: {words}", words=row.fault))
    if len(row.cells) < len(header):
        return str(
            message(
                "{column}: The row ends before this column. It has {cells} of {names} cells. Include blank cells too.",
                column=header[len(row.cells)],
                **counts,
            )
        )
    if any(cell.strip() for cell in row.cells[len(header) :]):
        return str(
            message(
                "whole row: It has {cells} cells, and the first row has {names}. Put quotation marks around a cell "
                "that holds a separator.",
                **counts,
            )
        )
    return " ".join(
        str(
            message(
                "{column}: A character here cannot be read. Type it again, and save the table as UTF-8.", column=name
            ),
        )
        for name in columns
        if UNREADABLE in typed[name] or "\0" in typed[name]
    )


def _cells_of(result: Result, values: Mapping[str, str]) -> dict[str, str]:
    answer, outside, depends = result.answer, result.not_covered, result.depends
    cited = result.trace.citations
    if result.outcome == "fix":
        return _result_cells(values, "fix", fix=" ".join(f"{each.field}: {each.words}" for each in result.fix))
    worst = max((rule.mark for rule in cited), key=MARKS.index, default="")
    return _result_cells(
        values,
        result.outcome,
        answer=str(answer.in_one_line) if answer else "",
        **{column: _plain_text(answer.values.get(name)) for name, column in values.items() if answer},
        not_covered=f"{outside.why} {outside.look_in}" if outside else "",
        sections="; ".join(dict.fromkeys(rule.section for rule in cited)),
        mark=worst,
        mark_words=str(MARK_WORDS[worst]) if worst else "",
        warnings=" ".join(map(str, result.warnings)),
        link=page_address(permalink.write(result)),
        depends_on="; ".join(depends.fields) if depends else "",
        safe=str(depends.safe_words) if depends else "",
        ask=f"{depends.ask.field}: {depends.ask.label}. {depends.ask.why}" if depends else "",
        assumed=_assumed(result),
        **found_cells(result.found),
    )


def _assumed(result: Result) -> str:
    """Return the inputs left out that decide. Rows are often alike, and each is worked out many times for it."""
    key = (result.calculator.slug, result.edition, result.left_out, str(result.inputs))
    if key not in _remembered:
        if len(_remembered) == MAX_REMEMBERED:
            _remembered.clear()
        from calc.unknown.assumed import assumed_words

        _remembered[key] = " ".join(map(str, assumed_words(result)))
    return _remembered[key]


def _result_cells(values: Mapping[str, str], outcome: str, **cells: str) -> dict[str, str]:
    """Return the added columns in their order, but `line`; blank where nothing is said."""
    names = (*BEFORE_VALUES[1:], *values.values(), *AFTER_VALUES, *OPEN_COLUMNS, *COLUMNS)
    return dict.fromkeys(names, "") | {"outcome": outcome} | {name: _no_formula(text) for name, text in cells.items()}


def _no_formula(text: str) -> str:
    """Return a text of ours, made harmless unless it is a number: -40 is to be reckoned with."""
    return text if text.removeprefix("-").replace(".", "", 1).isdigit() else escape_formula(text)


def _plain_text(value: Value) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, dict):
        return "; ".join(f"{name} {each}" for name, each in value.items())
    if isinstance(value, list):
        return "; ".join(map(str, value))
    return "" if value is None else str(value)
