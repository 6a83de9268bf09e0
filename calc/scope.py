"""What calculators leave out, as tables: the input that leads outside, why, where to look, what answers it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from calc.calculator import NotCovered
from calc.messages import Message
from calc.trace import Trace


@dataclass(frozen=True)
class SectionOf:
    """In a message of a table: the section of a rule. Where an input picks the rule, `by` is its name."""

    rule: str | Mapping[str, str]
    by: str = ""


@dataclass(frozen=True)
class FigureOf:
    """In a message of a table: the figure of a rule, and its unit."""

    rule: str
    unit: str


@dataclass(frozen=True)
class OutOfScope:
    """One case left out: the value of a field, why, under which name to look, and calculators that answer it."""

    field: str
    value: str
    why: Message
    look_in: Message
    calculators: tuple[str, ...] = ()


def require_scope(table: tuple[OutOfScope, ...], trace: Trace, **inputs: str | None) -> None:
    """Raise NotCovered by the first row that the inputs meet; the rules that its words name are cited."""
    for row in table:
        if inputs[row.field] == row.value:
            why, look_in = (_filled(each, trace, inputs) for each in (row.why, row.look_in))
            raise NotCovered(why, look_in, *row.calculators)


def _filled(words: Message, trace: Trace, inputs: Mapping[str, str | None]) -> Message:
    """Return a message of a table with its sections and figures, as the edition of the case states them."""
    return Message(words.template, {name: _stated(value, trace, inputs) for name, value in words.values.items()})


def _stated(value: object, trace: Trace, inputs: Mapping[str, str | None]) -> object:
    if isinstance(value, SectionOf):
        return trace.section(value.rule if isinstance(value.rule, str) else value.rule[inputs[value.by]])
    if isinstance(value, FigureOf):
        return f"{trace.cite(value.rule).value} {value.unit}"
    return value
