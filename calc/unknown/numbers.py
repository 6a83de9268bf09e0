"""The values at which a number is looked at: three figures each, as finely as anyone reads an instrument."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from functools import cache
from math import floor, log10

from calc.written import DECIMALS, whole

_STEPS = 1000


def between(low: float, high: float, *, integers: bool = False) -> Sequence[float]:
    """Return the values from `low` to `high`, both among them, at three figures; whole numbers only with `integers`.

    From zero on they stand ever closer.

    >>> between(98.9, 101), between(0.998, 1.01)
    ((98.9, 99, 99.1, 99.2, 99.3, 99.4, 99.5, 99.6, 99.7, 99.8, 99.9, 100, 101), (0.998, 0.999, 1, 1.01))
    """
    if low == high:
        return (low,)
    inner = _even(low, high) if low < 0 else _three_figures()
    inside = inner[bisect_right(inner, low) : bisect_left(inner, high)]
    if integers:
        inside = tuple(each for each in inside if each == int(each))
    return (low, *inside, high)


def _even(low: float, high: float) -> tuple[float, ...]:
    step = 10.0 ** (floor(log10(high - low)) - 2)
    first = floor(low / step)
    return tuple(whole(round((first + each) * step, DECIMALS)) for each in range(int((high - low) / step) + 2))


@cache
def _three_figures() -> tuple[float, ...]:
    return tuple(
        whole(round(figures * 10.0**power, DECIMALS)) for power in range(-8, 11) for figures in range(100, _STEPS)
    )
