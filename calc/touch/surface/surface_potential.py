"""The voltage that buried metal at one voltage gives the surface of even soil: a solution in small pieces.

Straight level wires lie mirror-wise about both middle lines of a rectangle, and the surface of the earth mirrors them
once more: only one quarter is solved (method of moments, thin wires). Wires side by side that carry nearly the same
share one unknown; from afar they act as one strip. Lengths in any one unit; voltages as parts of the metal's own.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import inf, log, pi, sqrt, sumprod

ALONG_X, ALONG_Y = "x", "y"
LARGE = 1e100  # far from the largest number there is
RESIDUAL = 1e-9  # of a voltage of 1, at most
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

    @cached_property
    def terms(self) -> tuple[float, float, tuple[float, ...], float, float, float]:
        """What `_voltage` needs at every point; last the square of what is far, which nothing is from a single wire."""
        reach = max(self.end - self.start, (self.high - self.low) / len(self.places))
        far = (NEAR * reach) ** 2 if len(self.places) > 1 else inf
        return self.start, self.end, self.places, self.low, self.high, far


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
    """Return the voltage at a point, of one unit of current in each unit of length, with all mirror images.

    This is where nearly all the time goes: so no call for each wire, and one logarithm of a product.
    """
    start, end, places, low, high, far = bundle.terms
    along, across = (x, y) if bundle.axis == ALONG_X else (y, x)
    above, below = (bundle.depth - depth) ** 2, (bundle.depth + depth) ** 2
    least = bundle.radius**2
    if far == inf:
        one_side, other_side = (across - places[0]) ** 2, (across + places[0]) ** 2
        owns = max(one_side + above, least), max(other_side + above, least)
        return _of_images(along, start, end, (*owns, one_side + below, other_side + below))
    total, product = 0.0, 1.0
    for forward in (along, -along):
        from_start, from_end = forward - start, forward - end
        one, other = from_start * from_start, from_end * from_end
        ahead = one if from_start < 0.0 else other if from_end > 0.0 else 0.0
        for beside in (across, -across):
            aside = low - beside if beside < low else beside - high if beside > high else 0.0
            if aside * aside + ahead > far:
                middle = ((from_start + from_end) / 2) ** 2
                strip = _of_line(beside - low, beside - high, max(middle + above, least), middle + below)
                total += len(places) * (end - start) / (high - low) * strip
                continue
            for place in places:
                away = (beside - place) ** 2
                own, mirrored = away + above, away + below
                if own < least:  # noqa: PLR1730 - a call here is felt: this runs half a million times
                    own = least
                up = (from_start + sqrt(one + own)) * (from_start + sqrt(one + mirrored))
                product *= up / ((from_end + sqrt(other + own)) * (from_end + sqrt(other + mirrored)))
                if product > LARGE:
                    total += log(product)
                    product = 1.0
    return total + log(product)


def _of_images(along: float, start: float, end: float, squares: tuple[float, float, float, float]) -> float:
    """Return the voltage of one wire with its images; `squares`: of how far each of four lies across and below."""
    a, b, c, d = squares
    product = 1.0
    for from_start, from_end in ((along - start, along - end), (-along - start, -along - end)):
        one, other = from_start * from_start, from_end * from_end
        up = (from_start + sqrt(one + a)) * (from_start + sqrt(one + b))
        up *= (from_start + sqrt(one + c)) * (from_start + sqrt(one + d))
        down = (from_end + sqrt(other + a)) * (from_end + sqrt(other + b))
        product *= up / (down * (from_end + sqrt(other + c)) * (from_end + sqrt(other + d)))
    return log(product)


def _of_line(from_start: float, from_end: float, own: float, mirrored: float) -> float:
    """Return the voltage of one line and of its mirror image; `own` and `mirrored` are squares of how far they are."""
    one, other = from_start * from_start, from_end * from_end
    return log(
        (from_start + sqrt(one + own))
        * (from_start + sqrt(one + mirrored))
        / ((from_end + sqrt(other + own)) * (from_end + sqrt(other + mirrored)))
    )


def solved(rows: list[list[float]], right: list[float]) -> list[float]:
    """Solve full real equations; where that leaves a residual without pivots, once more with the largest pivots.

    >>> solved([[0.0, 2.0], [4.0, 0.0]], [2.0, 4.0])
    [1.0, 1.0]
    """
    try:
        found = _by_triangles(rows, right)
    except (ZeroDivisionError, OverflowError):
        return _with_pivots(rows, right)
    off = max(abs(value - sumprod(row, found)) for row, value in zip(rows, right, strict=True))
    return found if off <= RESIDUAL else _with_pivots(rows, right)


def _by_triangles(rows: list[list[float]], right: list[float]) -> list[float]:
    """Return what solves the equations by LU decomposition, row by row (Doolittle), with no row changing its place."""
    size = len(rows)
    columns: list[list[float]] = [[] for _ in rows]
    forward: list[float] = []
    for step, row in enumerate(rows):
        left: list[float] = []
        for place in range(step):
            column = columns[place]
            left.append((row[place] - sumprod(left, column[:place])) / column[place])
        for place in range(step, size):
            columns[place].append(row[place] - sumprod(left, columns[place]))
        forward.append(right[step] - sumprod(left, forward))
    found = [0.0] * size
    for step in reversed(range(size)):
        known = sum(columns[place][step] * found[place] for place in range(step + 1, size))
        found[step] = (forward[step] - known) / columns[step][step]
    return found


def _with_pivots(rows: list[list[float]], right: list[float]) -> list[float]:
    """Return what solves the equations by elimination with the largest pivots."""
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
