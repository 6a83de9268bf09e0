"""Figures of models: no more digits than they are good for, and never on the wrong side of “at most” or “at least”."""

from __future__ import annotations

import math
from collections.abc import Callable

from calc.trace import shown_number

TWO, THREE = 2, 3
CLEAN = 6  # decimals of a step: what is within a millionth of it is no more than it


def at_most(value: float, figures: int = TWO) -> str:
    """Return a number that what is meant does not pass: for what may be feared.

    >>> at_most(262.3), at_most(9.0), at_most(6.01), at_most(0.0123), at_most(357.6, THREE)
    ('270', '9', '6.1', '0.013', '358')
    """
    return _shown(*_rounded(value, figures, math.ceil))


def at_least(value: float, figures: int = TWO) -> str:
    """Return a number that what is meant reaches: for what is promised.

    >>> at_least(152.38), at_least(9.0), at_least(0.0129), at_least(284.896, THREE)
    ('150', '9', '0.012', '284')
    """
    return _shown(*_rounded(value, figures, math.floor))


def about(value: float, figures: int = TWO) -> str:
    """Return the nearest number.

    >>> about(39.915), about(1450.0), about(0.01239)
    ('40', '1,400', '0.012')
    """
    return _shown(*_rounded(value, figures, round))


def three_figures(value: float, least: float = 0.0005) -> str:
    """Return the nearest number to three digits and at most four decimals, as a meter shows it; 0 below `least`.

    >>> three_figures(275.46), three_figures(0.0004), three_figures(1234.5)
    ('275', '0', '1,230')
    """
    return "0" if value < least else shown_number(float(f"{value:.3g}"))


def rounded_up(value: float, figures: int = THREE) -> float:
    """Return a number rounded up to so many figures.

    >>> rounded_up(12028.13), rounded_up(357.6), rounded_up(60)
    (12100.0, 358.0, 60.0)
    """
    return _rounded(value, figures, math.ceil)[0]


def _rounded(value: float, figures: int, toward: Callable[[float], int]) -> tuple[float, int]:
    """Return the number in whole steps of its last figure, and the place of that figure; 0 for nothing or less."""
    if value <= 0:
        return 0.0, 0
    place = math.floor(math.log10(value)) - figures + 1
    steps = toward(round(value / 10.0**place, CLEAN))
    return float(round(steps * 10.0**place, max(0, -place))), place


def _shown(rounded: float, place: int) -> str:
    return shown_number(round(rounded)) if place >= 0 else f"{rounded:,.{-place}f}".rstrip("0").rstrip(".")
