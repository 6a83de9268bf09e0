"""A computed resistance or voltage as it is shown and as links carry it: with three figures."""

from __future__ import annotations

import math

from calc.trace import shown_number

FIGURES = 3
OHM_METRE = "ohmm"


def shown(value: float) -> str:
    """Return a computed value with three figures: no electrode is known better.

    >>> shown(39.915), shown(1.0), shown(64231.0), shown(0.0000234)
    ('39.9', '1', '64,200', '0.0000234')
    """
    rounded = float(f"{value:.{FIGURES}g}")
    if not 0 < rounded < 1:
        return shown_number(rounded)
    return f"{rounded:.{FIGURES - 1 - math.floor(math.log10(rounded))}f}".rstrip("0")


def number_for_code(value: float) -> str:
    """Return a computed value with three figures as links carry it."""
    return shown(value).replace(",", "")
