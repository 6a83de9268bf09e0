"""What a calculator answers: one part, or a list of them, with pictures of its numbers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from calc.data_file import Value
from calc.messages import Message, message


@dataclass(frozen=True)
class Row:
    """One row of a list: words by column, and the link to the working of its own (see `permalink.write`).

    `status`: for programs, what the row of a list of parts asks for; "" in other lists.
    """

    cells: Mapping[str, Message | str]
    link: str = ""
    status: str = ""


@dataclass(frozen=True)
class Table:
    """An answer that is a list: the heading of each column by key, and the rows in order."""

    headings: Mapping[str, Message]
    rows: tuple[Row, ...]


@dataclass(frozen=True)
class Line:
    """One line of a chart: what it shows, and its points (across, up)."""

    words: Message | str
    points: tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Chart:
    """A picture of numbers.

    kind: "bars", one line of one point for each name; "logarithmic", both ways; or "straight", both ways from zero.
    `across` and `up` name the axes with their units; `names` stand beside the bars. `point` tells one point, as
    {across} and {up}.
    """

    key: str
    kind: str
    title: Message
    across: Message
    up: Message
    point: Message
    lines: tuple[Line, ...]
    names: tuple[Message, ...] = ()


def round_to_12_digits(value: Value) -> Value:
    """Return numbers to twelve digits, inside lists and mappings too: the last ones differ from machine to machine.

    >>> round_to_12_digits({"ampere": 247.7578107520641, "points": [0.1 + 0.2, 3]})
    {'ampere': 247.757810752, 'points': [0.3, 3]}
    """
    if isinstance(value, float):
        return float(f"{value:.12g}")
    if isinstance(value, Mapping):
        return {name: round_to_12_digits(each) for name, each in value.items()}
    if isinstance(value, list | tuple):
        return [round_to_12_digits(each) for each in value]
    return value


@dataclass(frozen=True)
class Unfinished:
    """What an answer lacks that is still worked out: how much of it is there, in words, and `done` of `total` parts."""

    words: Message
    done: int
    total: int


@dataclass(frozen=True)
class Answer:
    """What the reader came for. `said` is the answer as links carry it; `values` are for programs.

    `basis`: the rule that gave it, None for a list, whose rows name their own. `table`: the rows of a list.
    `charts`: pictures of what `values` hold. `unfinished`: what is still to come, None in a whole one.
    """

    name: Message
    headline: Message
    detail: Message
    basis: str | None
    answer_code: str
    values: Mapping[str, Any]
    table: Table | None = None

    @property
    def in_one_line(self) -> Message:
        """The headline and what stands beside it; a colon goes between where that is a sentence of its own."""
        if str(self.detail)[:1].isupper():
            return message("{headline}: {detail}", headline=self.headline, detail=self.detail)
        return message("{headline} {detail}", headline=self.headline, detail=self.detail)

    charts: tuple[Chart, ...] = ()
    unfinished: Unfinished | None = None
