"""The figures of a rule in words: one line for each row, with its unit, as a reader says it."""

from __future__ import annotations

import re

from calc.conductors.size import shown_size
from calc.messages import message
from calc.rulebook import Rule

# A column of a rule, and how its value is said. A column that is not here is said by its own name.
_SAID = {
    "across": message("{value} across", value="{value}"),
    "asked": message("required: {value}", value="{value}"),
    "contact": message("no contact with {value}", value="{value}"),
    "goes_by": message("sized by the {value}", value="{value}"),
    "long": message("{value} long", value="{value}"),
    "metal": message("{value}", value="{value}"),
    "over_volt": message("over {value} V to ground", value="{value}"),
    "part": message("{value}", value="{value}"),
    "reach_inch": message("out to {value} in", value="{value}"),
    "size": message("{value}", value="{value}"),
    "through_ampere": message("breaker or fuse through {value} A", value="{value}"),
    "way": message("{value}", value="{value}"),
    "within": message("within {value}", value="{value}"),
    "within_feet": message("within {value} ft", value="{value}"),
}
_SIZES = {"aluminum", "copper", "size"}
_SIZE = re.compile(r"\d+(/0)?|\d+kcmil")
_UNITS = {"A", "ft", "in", "mA", "ohm", "V"}
_WITH_UNIT = {"over_volt", "reach_inch", "through_ampere", "within_feet"}  # in their names
_ANYWHERE = ("within", 0)


def figure_lines(stated: Rule) -> list[str]:
    """Return the figures of a rule in one edition in words, a line each; none where it only names a section."""
    if stated.value is not None:
        return [_value("", stated.value, stated.unit)]
    return [
        ", ".join(_said(name, value, stated.unit) for name, value in row.items() if (name, value) != _ANYWHERE)
        for row in stated.rows
    ]


def _said(name: str, value: object, unit: str) -> str:
    words = _value(name, value, unit)
    if name in _SAID:
        return str(_SAID[name]).format(value=words)
    return str(message("{name}: {value}", name=name.replace("_", " "), value=words))


def _value(name: str, value: object, unit: str) -> str:
    written = str(value)
    if name in _SIZES and _SIZE.fullmatch(written):
        return shown_size(written)
    if unit in _UNITS and isinstance(value, int | float) and name not in _WITH_UNIT:
        return f"{written} {unit}"
    return written.replace("-", " ") if re.fullmatch(r"[a-z]+(-[a-z]+)+", written) else written
