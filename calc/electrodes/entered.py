"""A field for a measured amount: a length in any unit, with fractions of an inch, ohms, or the resistivity of soil."""

from __future__ import annotations

import math
import re

from calc.declare import Field
from calc.units import read_quantity
from calc.vocabulary import FINEST, whole
from calc.words import Sentence, say
from calc.working import shown_number

SMALLEST = 1e-4  # above 0; a smaller one would not read back as it is written in a link
FIGURES = 3
OHM_METRE = "ohmm"
SHOWN_UNITS = {OHM_METRE: "ohm·m"}
_FRACTION = re.compile(r"(?:(\d{1,3})[ -])?(\d{1,3})/(\d{1,3})(.*)")
_BETWEEN_UNITS = re.compile(r"(?<=[mΩ])[\s·.*-]+(?=c?m$)")


def entered(
    label: Sentence, hint: Sentence, unit: str, low: float, high: float, example: str, *, rare: bool = False
) -> Field:
    """Give a field for an amount from `low` to `high` in `unit`: "8", "96 in", "5/8 in", "100 ohm·m"."""
    shown_unit = SHOWN_UNITS.get(unit, unit)

    def read(text: str) -> float:
        value = round(read_amount(text, unit), FINEST)
        if not low <= value <= high or 0 < value < SMALLEST:
            raise ValueError(text)
        return whole(value)

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
    )


def read_amount(text: str, unit: str) -> float:
    """Give a written amount in `unit`; a fraction may stand for the number. Raises: ValueError.

    >>> read_amount("5/8", "in"), read_amount('1 1/4"', "in"), read_amount("7662 ohm-cm", OHM_METRE)
    (0.625, 1.25, 76.62)
    """
    text = text.strip()
    if fraction := _FRACTION.fullmatch(text):
        whole_part, above, below, rest = fraction.groups()
        if int(below) == 0:
            raise ValueError(text)
        text = f"{int(whole_part or 0) + int(above) / int(below):.{FINEST}f}{rest}"
    return read_quantity(_BETWEEN_UNITS.sub("", text), unit)


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
