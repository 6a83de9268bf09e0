"""Figures of people and models: two digits, and never on the wrong side of “at most” or “more than”."""

from __future__ import annotations

import math

from calc.electrodes.entered import shown

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


def _to(value: float, whole) -> str:
    if value <= 0:
        return "0"
    unit = 10.0 ** (math.floor(math.log10(value)) - FIGURES + 1)
    return shown(whole(value / unit) * unit)
