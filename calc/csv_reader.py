"""Reads a table of separated text as spreadsheets write it, row by row, never more than one row in memory.

Comma, semicolon or tab; quoted cells with line breaks in them; any line ending; UTF-8, or UTF-16 with its byte-order
mark. A row that cannot be read is told by its line, and the rows after it are read.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, BinaryIO

from calc.messages import Message, message

SEPARATORS = ",;\t"
# One cell of a row this large still fits what the csv module reads.
MAX_CHARACTERS = 6_000
MAX_LINES = 20
MARKS = {b"\xef\xbb\xbf": "utf-8-sig", b"\xff\xfe": "utf-16", b"\xfe\xff": "utf-16"}

_OPEN = message("A quotation mark opens a cell in this row and is never closed.")


@dataclass(frozen=True)
class CsvRow:
    """One row: the line of the file it begins in, counted from 1, its cells, and why it cannot be read, if so."""

    line: int
    cells: tuple[str, ...]
    fault: Message | None = None


@dataclass(frozen=True)
class Sheet:
    """A table being read: its separator, whether a byte-order mark begins it, and its rows that are not blank."""

    separator: str
    has_bom: bool
    rows: Iterator[CsvRow]


def read_sheet(stream: BinaryIO) -> Sheet:
    r"""Return the table in a stream of bytes; the separator is the one found most in the first line that is not blank.

    Bytes that are no text are read as U+FFFD.

    >>> sheet = read_sheet(io.BytesIO(b'label;conductor\r\n"Panel; east";3/0\r\n'))
    >>> sheet.separator, [row.cells for row in sheet.rows]
    (';', [('label', 'conductor'), ('Panel; east', '3/0')])
    """
    raw: Any = stream  # it has `readinto`, which its type does not name
    buffered = io.BufferedReader(raw)
    encoding = next((name for mark, name in MARKS.items() if buffered.peek(3).startswith(mark)), None)
    # An empty newline keeps the line endings, as the csv module wants them.
    lines = _Lines(io.TextIOWrapper(buffered, encoding or "utf-8", errors="replace", newline=""))
    first = lines.first()
    separator = max(SEPARATORS, key=first.count)
    return Sheet(separator, encoding is not None, _rows(lines, separator))


def _rows(lines: _Lines, separator: str) -> Iterator[CsvRow]:
    reader = csv.reader(lines, delimiter=separator)
    while True:
        begins = lines.begin_row()
        try:
            cells = tuple(next(reader))
            lines.end_row(separator)
        except StopIteration:
            return
        except _UnreadableRowError as fault:
            yield CsvRow(begins, (), fault.words)
        else:
            if any(cell.strip() for cell in cells):
                yield CsvRow(begins, cells)


class _UnreadableRowError(Exception):
    """A row that cannot be read: why, and what to do."""

    def __init__(self, words: Message):
        super().__init__(str(words))
        self.words = words


class _Lines:
    """The lines of a text for the csv module, which asks for another one only while a quotation mark is open."""

    def __init__(self, text: io.TextIOWrapper):
        self._text = text
        self._given_back: list[str] = []
        self._row: list[str] = []
        self._number = 0

    def __iter__(self) -> _Lines:
        return self

    def __next__(self) -> str:
        line = self._given_back.pop() if self._given_back else self._text.readline(MAX_CHARACTERS + 1)
        if self._row and (not line or len(self._row) == MAX_LINES):
            self._read_again_after_the_first(line)
            raise _UnreadableRowError(_OPEN)
        if not line:
            raise StopIteration
        self._number += 1
        if len(line) > MAX_CHARACTERS:
            self._skip_the_rest_of(line)
            raise _UnreadableRowError(message("This line is longer than {most} characters.", most=MAX_CHARACTERS))
        self._row.append(line)
        return line

    def first(self) -> str:
        """Return the first line that is not blank, without taking it; "" when there is none."""
        line = self._text.readline(MAX_CHARACTERS + 1)
        while line and not line.strip():
            self._number += 1
            line = self._text.readline(MAX_CHARACTERS + 1)
        if line:
            self._given_back.append(line)
        return line

    def begin_row(self) -> int:
        """Forget the lines of the row before and give the number of the next line."""
        self._row.clear()
        return self._number + 1

    def end_row(self, separator: str) -> None:
        """Take several lines as one row only where the mark that closes a cell ends it: else rows between are lost."""
        if len(self._row) < 2:
            return
        try:
            list(csv.reader(self._row, delimiter=separator, strict=True))
        except csv.Error:
            self._read_again_after_the_first("")
            raise _UnreadableRowError(_OPEN) from None

    def _read_again_after_the_first(self, line: str) -> None:
        again = [*self._row[1:], line] if line else self._row[1:]
        self._number -= len(self._row) - 1
        self._given_back += reversed(again)

    def _skip_the_rest_of(self, line: str) -> None:
        while line and not line.endswith(("\n", "\r")):
            line = self._text.readline(MAX_CHARACTERS)
