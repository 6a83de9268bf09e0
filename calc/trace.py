"""The working of one answer: steps, citations, notes and warnings in the order they came up."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from copy import copy
from dataclasses import dataclass
from functools import cache
from types import CodeType

from calc.messages import Message, message
from calc.rulebook import Rule, rule

MARK_WORDS = {
    "confirmed": message("confirmed in published texts"),
    "computed": message("computed"),
    "practice": message("common practice, no source"),
    "memory": message("unverified: read the book"),
}
_NAME = re.compile(r"[a-z_]+")


@dataclass(frozen=True)
class Step:
    """One step as it was computed: words, the formula, its numbers, the value and its unit."""

    words: Message
    formula: str
    numbers: str
    value: str | float | None
    unit: str
    citations: tuple[Rule, ...]


@dataclass(frozen=True)
class Reading:
    """Another size that holds on a condition, or None for a need that this answer does not size; and the condition."""

    condition: Message
    size: str | None = None


@dataclass(frozen=True)
class TableRow:
    """The row of a table that the area of all conductors is in: over one area through another, cmil, None at an end.

    count: how many times the area of the conductor entered counts in `total`.
    """

    total: float
    count: int
    over: int | None
    through: int | None


def row_of_area(total: float, count: int, limits: Sequence[int]) -> TableRow:
    """Return the row of a table whose rows go through `limits`, cmil, smallest first, and end with all that is larger.

    >>> row_of_area(335_600, 2, [66_360, 350_000])
    TableRow(total=335600, count=2, over=66360, through=350000)
    """
    over = max((each for each in limits if each < total), default=None)
    return TableRow(total, count, over, min((each for each in limits if each >= total), default=None))


class Trace:
    """Collects one answer's steps while they are computed, so that what is shown is what was done."""

    def __init__(self, edition: str):
        self.edition = edition
        self.steps: list[Step] = []
        self.citations: list[Rule] = []
        self._cited: set[str] = set()
        self.notes: list[Message] = []
        self.warnings: list[Message] = []
        self.grave: list[Message] = []
        self.readings: list[Reading] = []
        self.table_row: TableRow | None = None

    def so_far(self) -> Trace:
        """Return a copy of what is collected by now, which later steps do not change."""
        collected = copy(self)
        vars(collected).update({name: copy(value) for name, value in vars(self).items()})
        return collected

    def cite(self, key: str) -> Rule:
        """Return the rule of this edition and list it among the citations."""
        cited = rule(key, self.edition)
        if cited.key not in self._cited:
            self._cited.add(cited.key)
            self.citations.append(cited)
        return cited

    def section(self, key: str) -> str:
        """Return where this edition states the rule, to stand in a sentence; the rule is cited."""
        return self.cite(key).section

    def step(
        self, words: Message, value: str | float | None = None, unit: str = "", cites: tuple[str, ...] = ()
    ) -> None:
        """Record a step that looks something up or decides something."""
        self.steps.append(Step(words, "", "", value, unit, tuple(self.cite(key) for key in cites)))

    def compute(
        self,
        words: Message,
        formula: str,
        unit: str,
        cites: tuple[str, ...] = (),
        *,
        exact: bool = False,
        **values: float,
    ) -> float:
        """Evaluate `formula` with `values`, record it with its numbers, and give the result in `unit`.

        The formula is arithmetic in the names of `values`; what the reader sees is what is evaluated. `exact`: for a
        number that is held against a figure of the code; others are shown with no more digits than a model is good for.
        """
        shown = shown_number if exact else shown_of_model
        value = eval(_compiled(formula), {"__builtins__": {}}, values)  # noqa: S307 (formulas are literals)
        substituted = _NAME.sub(lambda name: shown(values[name[0]]), formula).replace("*", "×")
        numbers = f"{substituted} = {shown(value)} {unit}".strip()
        shown_formula = formula.replace("_", " ").replace("*", "×")
        self.steps.append(Step(words, shown_formula, numbers, value, unit, tuple(self.cite(key) for key in cites)))
        return value

    def note(self, words: Message, *, grave: bool = False) -> None:
        """Record what the answer implies on site; a grave note is read before the others."""
        self.notes.append(words)
        if grave:
            self.grave.append(words)

    def warn(self, words: Message, *, grave: bool = False) -> None:
        """Record what the reader must know before using the answer; grave: a life hangs on it, so it is read first."""
        self.warnings.append(words)
        if grave:
            self.grave.append(words)

    def gravest_first(self, told: Sequence[Message]) -> list[Message]:
        """Return notes or warnings with the grave ones first, each of both as they came up."""
        return sorted(told, key=lambda words: words not in self.grave)

    def reading(self, condition: Message, size: str | None = None) -> None:
        """Record a condition on which another size holds: what is found on site is held against it too."""
        self.readings.append(Reading(condition, size))

    def unverified(self) -> list[str]:
        """Return the sections cited whose figures nobody confirmed in this edition."""
        return [cited.section for cited in self.citations if cited.mark == "memory"]


@cache
def _compiled(formula: str) -> CodeType:
    return compile(formula, formula, "eval")


def marked_section(cited: Rule) -> Message:
    """Return where a rule stands, with its mark where it is not confirmed."""
    if cited.mark == "confirmed":
        return message("{section}", section=cited.section)
    return message("{section} ({mark})", section=cited.section, mark=MARK_WORDS[cited.mark])


def shown_number(value: float) -> str:
    """Return a number as it is shown: thousands separated, no more digits than it has.

    >>> shown_number(262500.0), shown_number(0.125), shown_number(2.000001)
    ('262,500', '0.125', '2')
    """
    return f"{int(value):,}" if value == int(value) else f"{value:,.4f}".rstrip("0").rstrip(".")


def shown_of_model(value: float) -> str:
    """Return a number as it is where it ends within four decimals, else to three digits, from 1000 up whole.

    >>> shown_of_model(85.714285), shown_of_model(10940.95583), shown_of_model(13.85), shown_of_model(-0.0314159)
    ('85.7', '10,941', '13.85', '-0.0314')
    """
    if math.isclose(value, round(value, 4), rel_tol=1e-9):
        return shown_number(value)
    return shown_number(round(value) if abs(value) >= 1000 else float(f"{value:.3g}"))
