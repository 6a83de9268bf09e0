"""Ampacity at 75 °C, only as far as sizing a jumper of another metal needs it."""

from __future__ import annotations

from calc.rulebook import rule

AMPACITY_RULE = "conductors/ampacity_75c"
TABLE_COLUMN = {"copper": "copper", "aluminum": "aluminum", "copper-clad-aluminum": "aluminum"}


def ampacity(label: str, metal: str, edition: str) -> int | None:
    """Return the ampacity, ampere, of one conductor at 75 °C, or None where none is listed.

    Raises: KeyError for a metal that is none of copper, aluminum, copper-clad-aluminum.
    Source: rule conductors/ampacity_75c.

    >>> ampacity("600kcmil", "aluminum", "2023")
    340
    """
    column = TABLE_COLUMN[metal]
    return next((row.get(column) for row in rule(AMPACITY_RULE, edition).rows if row["size"] == label), None)


def size_of_ampacity(least_ampere: float, metal: str, edition: str) -> str | None:
    """Return the smallest size of `metal` that carries `least_ampere` at 75 °C, or None above the last one.

    >>> size_of_ampacity(340, "copper", "2023")
    '500kcmil'
    """
    column = TABLE_COLUMN[metal]
    rows = rule(AMPACITY_RULE, edition).rows
    return next((row["size"] for row in rows if row.get(column, 0) >= least_ampere), None)
