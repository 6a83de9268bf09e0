"""Metal buried in even soil: what it takes to the earth, and the voltage it makes on the ground above.

A pipe is cut into straight pieces. Each lets out a current of its own, so that all have one voltage; the surface of
the earth mirrors them. Pieces shorter than the pipe is thick would let out too much: a line has no thickness.
Lengths in m; x across the ground, y along, z down.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

Place = tuple[float, float, float]
MAX_EVEN, FEWEST_GRADED, MAX_GRADED = 20, 10, 24
PLACES_LOOKED_AT = 6
FINE_ENOUGH = 0.01


@dataclass(frozen=True)
class Buried:
    """Buried metal at 1 V in soil of 1 ohm·m: each piece from one place to another, and the ampere it lets out."""

    pieces: tuple[tuple[Place, Place, float], ...]
    reach: tuple[float, float]  # least and greatest x under which there is metal

    @cached_property
    def shape(self) -> float:
        """Its ohms in soil of 1 ohm·m, 1/m."""
        return 1 / sum(current for _, _, current in self.pieces)

    def share(self, x: float) -> float:
        """Return the voltage of the ground at x, as a part of the voltage of the metal, 0 to 1."""
        ground = (x, 0.0, 0.0)
        total = sum(current * nearness(ground, start, end, 0.0) for start, end, current in self.pieces)
        return min(1.0, total / (2 * math.pi))  # the mirror image doubles it

    @cached_property
    def highest(self) -> float:
        """Where over the metal the ground has the most voltage, x."""
        (near, far), best = self.reach, sum(self.reach) / 2
        while far - near > FINE_ENOUGH:
            step = (far - near) / PLACES_LOOKED_AT
            best = max((near + step * count for count in range(PLACES_LOOKED_AT + 1)), key=self.share)
            near, far = max(near, best - step), min(far, best + step)
        return best


def nearness(place: Place, start: Place, end: Place, radius: float) -> float:
    """Return the average of 1 / distance from a place to a piece, 1/m, seen from no nearer than its radius.

    >>> nearness((0, 0, 2), (0, 0, 0), (0, 0, 0), 0.1), round(nearness((1, 0, 0), (0, -1, 0), (0, 1, 0), 0.1), 4)
    (0.5, 0.8814)
    """
    (across, along, down), (x, y, z) = (end[0] - start[0], end[1] - start[1], end[2] - start[2]), start
    from_x, from_y, from_z = place[0] - x, place[1] - y, place[2] - z
    squared = from_x * from_x + from_y * from_y + from_z * from_z
    length = math.sqrt(across * across + along * along + down * down)
    if not length:
        return 1 / max(math.sqrt(squared), radius)
    forward = (from_x * across + from_y * along + from_z * down) / length
    aside = math.sqrt(max(squared - forward * forward, radius * radius, 1e-18))
    return (math.asinh(forward / aside) + math.asinh((length - forward) / aside)) / length


def ball(radius: float, depth: float) -> Buried:
    """Return a round body, `depth` from the surface to its middle: its current as if from the middle, and one image.

    With a radius of 0.6 of its depth its ohms are 1 percent off an endless row of images, the voltage over it 6 high.
    """
    middle = (0.0, 0.0, depth)
    current = 4 * math.pi / (1 / radius + 1 / (2 * depth))
    return Buried(((middle, middle, current),), (0.0, 0.0))


def pipe(length: float, radius: float, depth: float) -> Buried:
    """Return a straight level pipe, `depth` from the surface to its middle; the ground is looked at across it."""
    corners = [(0.0, (part - 0.5) * length, depth) for part in parts(length, radius)]
    return _solved(corners, radius)


def level_elbow(bend: float, radius: float, depth: float) -> Buried:
    """Return a quarter bend that lies flat; the ground is looked at along the line that halves it."""
    turns = [(part - 0.5) * math.pi / 2 for part in parts(bend * math.pi / 2, radius)]
    return _solved([(bend * math.cos(turn), bend * math.sin(turn), depth) for turn in turns], radius)


def upright_elbow(bend: float, radius: float, top: float) -> Buried:
    """Return a quarter bend that turns up: its upper end lies `top` under the surface, the other a bend deeper."""
    turns = [part * math.pi / 2 for part in parts(bend * math.pi / 2, radius)]
    return _solved([(bend * (1 - math.cos(turn)), 0.0, top + bend * math.sin(turn)) for turn in turns], radius)


def parts(length: float, radius: float) -> list[float]:
    """Return where to cut, 0 to 1: a short pipe in pieces as long as half its thickness, a long one finer at its ends.

    >>> parts(0.4, 0.1), len(parts(3, 0.03))
    ([0.0, 0.25, 0.5, 0.75, 1.0], 17)
    """
    even = max(2, round(length / radius))
    if even <= MAX_EVEN:
        return [count / even for count in range(even + 1)]
    graded = min(MAX_GRADED, max(FEWEST_GRADED, round(math.pi / 2 * math.sqrt(length / radius))))
    return [(1 - math.cos(math.pi * count / graded)) / 2 for count in range(graded + 1)]


def _solved(corners: list[Place], radius: float) -> Buried:
    ends = list(pairwise(corners))
    rows: list[list[float]] = []
    for start, end in ends:
        middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2, (start[2] + end[2]) / 2)
        rows.append(
            [
                nearness(middle, one, other, radius) + nearness(middle, _mirrored(one), _mirrored(other), radius)
                for one, other in ends
            ]
        )
    currents = _shared(rows, 4 * math.pi)
    across = [x for x, _, _ in corners]
    pieces = tuple((*each, current) for each, current in zip(ends, currents, strict=True))
    return Buried(pieces, (min(across), max(across)))


def _mirrored(place: Place) -> Place:
    return (place[0], place[1], -place[2])


def _shared(rows: list[list[float]], right: float) -> list[float]:
    """Solve full equations by elimination. Each piece feels itself most, so no row need change its place."""
    rows = [[*row, right] for row in rows]
    size = len(rows)
    for step, above in enumerate(rows):
        for row in rows[step + 1 :]:
            factor = row[step] / above[step]
            for place in range(step + 1, size + 1):
                row[place] -= factor * above[place]
    found = [0.0] * size
    for step in reversed(range(size)):
        known = sum(rows[step][place] * found[place] for place in range(step + 1, size))
        found[step] = (rows[step][size] - known) / rows[step][step]
    return found
