"""One output of a calculator: a value of its answer, under the name that programs and tables know it by."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from calc.field import Field
from calc.messages import Message, message
from calc.unit_names import SHOWN

Kind = Literal["text", "choice", "size", "number", "whole-number", "yes-no", "point", "record"]
Shape = Literal["one", "list", "by-name"]
YES_OR_NO = ("yes", "no")
_BESIDE_WORDS = SHOWN | {"A2s": "A²s", "in2": "in²", "x": ""}  # words name a multiple themselves


@dataclass(frozen=True)
class Output:
    """A value of an answer: what it is called, what it means, and of which type it is.

    `name` is its key in the JSON and its column in a table, for ever. `kind`: "size" is a conductor size as links
    carry it ("3/0", "500kcmil"); "choice" is one of `choices`; "yes-no" is true or false; "point" is two numbers,
    across and up; "record" has `parts` of its own. `shape`: one value, a list of them, or values by the names of
    parts. `unit` is that of a number, "" for a ratio or a count. `when`: for which answers the value is there;
    None: for every one. In the others it is null or left out.
    """

    name: str
    meaning: Message
    kind: Kind
    unit: str = ""
    choices: tuple[str, ...] = ()
    shape: Shape = "one"
    when: Message | None = None
    parts: tuple[Output, ...] = ()


def as_entered(name: str, field: Field, *, when: Message | None = None) -> Output:
    """Return the output that gives an input back as it was read."""
    if field.choices:
        return Output(name, field.label, "choice", choices=values_of(field), when=when)
    kind = "whole-number" if field.whole_numbers else "number"
    return Output(name, field.label, kind, unit=field.unit, when=when)


def shown_unit(unit: str) -> str:
    """Return a unit as it stands beside words.

    >>> shown_unit("ohmm"), shown_unit("A"), shown_unit("x")
    ('ohm·m', 'A', '')
    """
    return _BESIDE_WORDS.get(unit, unit)


def values_of(field: Field) -> tuple[str, ...]:
    """Return the values of a field's choices."""
    return tuple(choice.value for choice in field.choices)


def series(name: str, meaning: Message, across: str, up: str) -> Output:
    """Return the output for the lines of a chart: each a key, its words, and points [across, up] in these units."""
    points = message("Points of the line, each [{across}, {up}]", across=across, up=up)
    parts = (
        Output("key", message("Which line"), "text"),
        Output("words", message("What the line shows"), "text"),
        Output("points", points, "point", shape="list"),
    )
    return Output(name, meaning, "record", shape="list", parts=parts)
