"""A field for a measured amount: a length in any unit, with fractions of an inch, ohms, or the resistivity of soil."""

from __future__ import annotations

import math

from calc.declare import Field
from calc.unit_names import SHOWN
from calc.words import Sentence, say
from calc.working import shown_number
from calc.written import read_within

SMALLEST = 1e-4  # above 0; nothing here is measured finer
FIGURES = 3
OHM_METRE = "ohmm"


def entered(
    label: Sentence, hint: Sentence, unit: str, low: float, high: float, example: str, *, rare: bool = False
) -> Field:
    """Give a field for an amount from `low` to `high` in `unit`: "8", "96 in", "5/8 in", "100 ohm·m"."""
    shown_unit = SHOWN.get(unit, unit)

    def read(text: str) -> float:
        value = read_within(text, unit, low, high)
        if 0 < value < SMALLEST:
            raise ValueError(text)
        return value

    enter = say(
        "Enter a value from {low} to {high} {unit}, for example {example}.",
        low=shown_number(low),
        high=shown_number(high),
        unit=shown_unit,
        example=example,
    )
    return Field(
        label,
        hint,
        enter,
        read,
        show=lambda value: f"{shown_number(value)} {shown_unit}",
        rare=rare,
        number=unit != "in",  # inches come as fractions, and number keys have no stroke
        unit=unit,
        minimum=low,
        maximum=high,
    )


def shown(value: float) -> str:
    """Give a computed value with three figures: no electrode is known better.

    >>> shown(39.915), shown(1.0), shown(64231.0), shown(0.0000234)
    ('39.9', '1', '64,200', '0.0000234')
    """
    rounded = float(f"{value:.{FIGURES}g}")
    if not 0 < rounded < 1:
        return shown_number(rounded)
    return f"{rounded:.{FIGURES - 1 - math.floor(math.log10(rounded))}f}".rstrip("0")


def said_number(value: float) -> str:
    """Give a computed value with three figures as links carry it."""
    return shown(value).replace(",", "")
