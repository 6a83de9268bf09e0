"""Geometric factor of an electrode: its resistance per unit of soil resistivity, 1/m.

A rod or wire is a line that gives off an even current; its voltage is the average along it, and the surface of the
earth mirrors it. So one formula serves a rod, rods beside each other and a buried wire at any depth. Lengths in m.
"""

from __future__ import annotations

import math

from calc.fault.circuit.elimination import inverse

TOLERANCE = 1e-15  # where the two means agree


def line_share(ratio: float) -> float:
    """Return the average of the voltage along an even line: `ratio` is its length by the distance looked from.

    Looked at from its own surface and long, it is ln(2 × ratio) − 1. Source: H. B. Dwight 1936, in closed form.

    >>> round(line_share(1000), 3), round(math.log(2000) - 1, 3)
    (6.602, 6.601)
    """
    return math.asinh(ratio) - ratio / (1 + math.sqrt(1 + ratio * ratio))


def rod(length: float, radius: float) -> float:
    """Return the shape of a rod driven from the surface."""
    return line_share(2 * length / radius) / (2 * math.pi * length)


def rods(length: float, radius: float, spacing: float, count: int, layout: str) -> float:
    """Return the shape of `count` rods joined together, in a "line" or on a "circle", each `spacing` from the next.

    Each rod raises the others; they share the current so that all have the same voltage.
    """
    places = _places(spacing, count, layout)
    alone = rod(length, radius)
    between = {
        distance: line_share(2 * length / distance) / (2 * math.pi * length)
        for distance in {math.dist(one, other) for one in places for other in places if one != other}
    }
    rows = [[alone if one == other else between[math.dist(one, other)] for other in places] for one in places]
    return 1 / sum(sum(row) for row in inverse(rows)).real


def _places(spacing: float, count: int, layout: str) -> list[tuple[float, float]]:
    if layout == "line" or count == 1:
        return [(spacing * step, 0.0) for step in range(count)]
    radius = spacing / (2 * math.sin(math.pi / count))
    turns = [2 * math.pi * step / count for step in range(count)]
    return [(radius * math.cos(turn), radius * math.sin(turn)) for turn in turns]


def wire(length: float, radius: float, depth: float) -> float:
    """Return the shape of a straight level wire, `depth` from the surface to its middle."""
    return (line_share(length / radius) + line_share(length / (2 * depth))) / (2 * math.pi * length)


def ring(length: float, radius: float, depth: float) -> float:
    """Return the shape of a wire of `length` laid in a circle, `depth` from the surface to its middle."""
    across = length / math.pi
    own, mirrored = (1 / _mean(math.hypot(across, far), far) for far in (radius, 2 * depth))
    return (own + mirrored) / (4 * math.pi)


def rectangle(long: float, short: float, radius: float, depth: float) -> float:
    """Return the shape of a wire laid in a rectangle of these sides, `depth` from the surface to its middle.

    Every foot lets out the same current; the voltage is the average along all four sides.
    """

    def summed(aside: float) -> float:
        level = sum(
            4 * side * line_share(side / away)
            for side, other in ((long, short), (short, long))
            for away in (aside, math.hypot(other, aside))
        )
        return level + 8 * _corner(long, short, aside)

    around = 2 * (long + short)
    return (summed(radius) + summed(2 * depth)) / (4 * math.pi * around * around)


def _corner(one: float, other: float, aside: float) -> float:
    """Return the sum of 1 / distance over two lines that leave a corner at a right angle, `aside` from each other."""
    across = math.sqrt(one * one + other * other + aside * aside)
    return (
        one * math.asinh(other / math.hypot(one, aside))
        + other * math.asinh(one / math.hypot(other, aside))
        - aside * math.atan(one * other / (aside * across))
    )


def _mean(one: float, other: float) -> float:
    """Return the arithmetic-geometric mean: it is what the elliptic integral of a ring comes to."""
    while abs(one - other) > TOLERANCE * one:
        one, other = (one + other) / 2, math.sqrt(one * other)
    return one


def plate(long: float, short: float, depth: float) -> float:
    """Return the shape of a flat level plate as an oval disc of its area and sides, m, `depth` from the surface.

    Its own part is exact for the oval; its image is that of a round disc, which holds down to a depth of one radius.
    Source: H. B. Dwight 1936, the first terms of a series.
    """
    own = 1 / (8 * _mean(long, short) / math.sqrt(math.pi))
    mirrored = 2 * depth
    squared = long * short / math.pi / mirrored**2
    return own + (1 - 7 / 12 * squared + 33 / 40 * squared**2) / (4 * math.pi * mirrored)


def strip(long: float, short: float, depth: float) -> float:
    """Return the shape of a flat level strip: a wire whose radius is a quarter of its width."""
    return wire(long, short / 4, depth)


def encased(soil: float, concrete: float, bare: float, shell: float) -> float:
    """Return the resistance, ohm, of metal of shape `bare` in concrete whose outside has the shape `shell`.

    Concrete takes the place of the nearest soil. Resistivities in ohm·m.

    >>> encased(100, 100, 0.4, 0.3)
    40.0
    """
    return soil * shell + concrete * (bare - shell)
