"""A rule's figures as one cell of a table, for people to read and correct, and back."""

from __future__ import annotations

from typing import Any

from calc.data_file import Data
from calc.editing.tree import RefusedError
from calc.rulebook import Rule

BETWEEN, IS = "; ", " = "


def figures_cell(stated: Rule) -> str:
    """Return the figures of a rule: its value, or one line a row as "copper = 8; aluminum = 6"; "" without figures."""
    if stated.value is not None:
        return _cell(stated.value)
    return "\n".join(BETWEEN.join(f"{name}{IS}{_cell(value)}" for name, value in row.items()) for row in stated.rows)


def read_figures(cell: str, stated: Rule) -> object:
    """Return the figures that a cell holds, of the kinds that the rule has now. Raises: RefusedError.

    A text stays text and a number a number: a size "2" is no 2, and a word in a column of numbers is refused.
    """
    if stated.value is not None:
        return _read(cell.strip(), [stated.value], stated.key)
    columns: dict[str, list[Any]] = {}
    for row in stated.rows:
        for name, value in row.items():
            columns.setdefault(name, []).append(value)
    return [_row(line, columns, stated.key) for line in cell.splitlines() if line.strip()]


def _row(line: str, columns: dict[str, list[Any]], key: str) -> Data:
    row: Data = {}
    for part in line.split(BETWEEN.strip()):
        name, equals, text = (each.strip() for each in part.partition(IS.strip()))
        if not equals or name not in columns:
            raise RefusedError(
                f"{key}: {part.strip()!r} is no figure of {', '.join(columns)}. Write it as name = figure."
            )
        row[name] = _read(text, columns[name], key)
    return row


def _cell(value: object) -> str:
    return str(value).lower() if isinstance(value, bool) else str(value)


def _read(text: str, alike: list[Any], key: str) -> object:
    """Return the text as what stands beside it is: truth, number or text."""
    kinds: set[type] = {type(value) for value in alike}
    if kinds == {bool} and text in ("true", "false"):
        return text == "true"
    for kind in (int, float):
        if kinds & {int, float}:
            try:
                return kind(text)
            except ValueError:
                continue
    if str in kinds and text:
        return text
    raise RefusedError(f"{key}: {text!r} is no figure like {_cell(alike[0])!r}, which stands here now.")
