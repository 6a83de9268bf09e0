"""The voltage that buried metal at one voltage gives the surface of even soil: a solution in small pieces.

Straight level wires lie mirror-wise about both middle lines of a rectangle, and the surface of the earth mirrors them
once more: only one quarter is solved (method of moments, thin wires). Wires side by side that carry nearly the same
share one unknown; from afar they act as one strip. Lengths in any one unit; voltages as parts of the metal's own.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import log, pi, sqrt

ALONG_X, ALONG_Y = "x", "y"
NEAR = 2.0  # a bundle is looked at wire by wire from nearer than this many times its wires' length or spacing


@dataclass(frozen=True)
class Bundle:
    """Level wires in one quarter, each from `start` to `end` along one axis, alike in current for each unit of length.

    places: where they lie across that axis. low, high: the stretch across that they stand for. match: the point
    (x, y), on one of them, where the voltage is set.
    """

    axis: str
    start: float
    end: float
    places: tuple[float, ...]
    low: float
    high: float
    depth: float
    radius: float
    match: tuple[float, float]


def bundle_currents(bundles: Sequence[Bundle]) -> list[float]:
    """Return the current of each bundle for each unit of length, where every match point has the voltage 1.

    The unit is chosen so that the voltage of a wire is its current times the logarithm in `_of_line`.
    """
    rows = [[_voltage(source, *at.match, at.depth) for source in bundles] for at in bundles]
    return solved(rows, [1.0] * len(bundles))


def surface_voltage(bundles: Sequence[Bundle], currents: Iterable[float], x: float, y: float) -> float:
    """Return the voltage of the surface at (x, y), as a part of the metal's."""
    return sum(current * _voltage(bundle, x, y, 0.0) for bundle, current in zip(bundles, currents, strict=True))


def resistance_shape(bundles: Sequence[Bundle], currents: Iterable[float]) -> float:
    """Return the resistance to remote earth in soil of 1 ohm·m, as 1 divided by the unit of length."""
    quarter = sum(
        current * len(bundle.places) * (bundle.end - bundle.start)
        for bundle, current in zip(bundles, currents, strict=True)
    )
    return 1 / (16 * pi * quarter)


def _voltage(bundle: Bundle, x: float, y: float, depth: float) -> float:
    """Return the voltage at a point, of one unit of current in each unit of length, with all mirror images."""
    along, across = (x, y) if bundle.axis == ALONG_X else (y, x)
    above, below = (bundle.depth - depth) ** 2, (bundle.depth + depth) ** 2
    return (
        _of_quarter(bundle, along, across, above, below)
        + _of_quarter(bundle, -along, across, above, below)
        + _of_quarter(bundle, along, -across, above, below)
        + _of_quarter(bundle, -along, -across, above, below)
    )


def _of_quarter(bundle: Bundle, along: float, across: float, above: float, below: float) -> float:
    start, end, places, least = bundle.start, bundle.end, bundle.places, bundle.radius**2
    if len(places) > 1:
        low, high = bundle.low, bundle.high
        aside = max(low - across, across - high, 0.0)
        ahead = max(start - along, along - end, 0.0)
        reach = NEAR * max(end - start, (high - low) / len(places))
        if aside * aside + ahead * ahead > reach * reach:
            share = len(places) * (end - start) / (high - low)
            middle = (along - (start + end) / 2) ** 2
            return share * _of_line(across - low, across - high, max(middle + above, least), middle + below)
    from_start, from_end = along - start, along - end
    total = 0.0
    for place in places:
        beside = (across - place) ** 2
        total += _of_line(from_start, from_end, max(beside + above, least), beside + below)
    return total


def _of_line(from_start: float, from_end: float, own: float, mirrored: float) -> float:
    """Return the voltage of one line and of its mirror image; `own` and `mirrored` are squares of how far they are."""
    one, other = from_start * from_start, from_end * from_end
    return log(
        (from_start + sqrt(one + own))
        * (from_start + sqrt(one + mirrored))
        / ((from_end + sqrt(other + own)) * (from_end + sqrt(other + mirrored)))
    )


def solved(rows: list[list[float]], right: list[float]) -> list[float]:
    """Solve full real equations by elimination with the largest pivots.

    >>> solved([[0.0, 2.0], [4.0, 0.0]], [2.0, 4.0])
    [1.0, 1.0]
    """
    rows = [[*row, value] for row, value in zip(rows, right, strict=True)]
    size = len(rows)
    for step in range(size):
        best = max(range(step, size), key=lambda row: abs(rows[row][step]))
        rows[step], rows[best] = rows[best], rows[step]
        top = rows[step][step:]
        for row in rows[step + 1 :]:
            factor = row[step] / top[0]
            row[step:] = [value - factor * above for value, above in zip(row[step:], top, strict=True)]
    found = [0.0] * size
    for step in reversed(range(size)):
        known = sum(rows[step][place] * found[place] for place in range(step + 1, size))
        found[step] = (rows[step][size] - known) / rows[step][step]
    return found
