"""Figures of people, soil and models: two digits, and never on the wrong side of “at most” or “more than”."""

from __future__ import annotations

import math

from calc.working import shown_number

FIGURES = 2
ROUNDING = 1e-9


def at_most(value: float) -> str:
    """Give a number that what is meant does not pass, in two digits.

    >>> at_most(262.3), at_most(9.0), at_most(6.01), at_most(0.0123)
    ('270', '9', '6.1', '0.013')
    """
    return _to(value, lambda parts: math.ceil(parts - ROUNDING))


def at_least(value: float) -> str:
    """Give a number that what is meant reaches, in two digits.

    >>> at_least(152.38), at_least(9.0), at_least(0.0129)
    ('150', '9', '0.012')
    """
    return _to(value, lambda parts: math.floor(parts + ROUNDING))


def about(value: float) -> str:
    """Give the nearest number in two digits.

    >>> about(39.915), about(1450.0), about(0.01239)
    ('40', '1,400', '0.012')
    """
    return _to(value, round)


def _to(value: float, whole) -> str:
    if value <= 0:
        return "0"
    place = math.floor(math.log10(value)) - FIGURES + 1
    rounded = whole(value / 10.0**place) * 10.0**place
    return shown_number(round(rounded)) if place >= 0 else f"{rounded:,.{-place}f}".rstrip("0").rstrip(".")
