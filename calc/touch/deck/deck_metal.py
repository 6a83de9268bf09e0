"""The metal in and under a pool deck, as bundles of wires in one quarter of a rectangular pool.

x runs out over the long side from the middle of the pool, y over the short side. Lengths in feet.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from calc.touch.surface.surface_potential import ALONG_X, ALONG_Y, Bundle

Match = Callable[[float], float]
BESIDE = 0.25  # of an opening from a wire that crosses, the voltage of an even current is near its mean


@dataclass(frozen=True)
class Fineness:
    """How finely metal is cut: the shortest span at a corner, by how much the next is longer, pieces of an opening."""

    shortest: float
    growth: float
    pieces: int


@dataclass(frozen=True)
class Wire:
    """Wire at a depth, and how finely it is cut."""

    depth: float
    radius: float
    fine: Fineness

    def bundle(
        self, axis: str, span: tuple[float, float], places: tuple[float, ...], reach: float, match: tuple[float, float]
    ) -> Bundle:
        """Return wires of this kind over `span`; each stands for `reach` to both sides; match: along, across."""
        at = match if axis == ALONG_X else (match[1], match[0])
        return Bundle(axis, *span, places, places[0] - reach, places[-1] + reach, self.depth, self.radius, at)


def loop(half_width: float, half_length: float, wire: Wire) -> list[Bundle]:
    """Return one wire laid around the pool in a rectangle."""
    return [
        *_line(ALONG_Y, half_width, spans(half_length, wire.fine), wire, _itself),
        *_line(ALONG_X, half_length, spans(half_width, wire.fine), wire, _itself),
    ]


def mesh(half_width: float, half_length: float, openings: int, opening: float, wire: Wire) -> list[Bundle]:
    """Return a mesh around the pool, from its wall out: lines along the sides through the corners, wires across them.

    The wires across stand so that the middle line of a side runs between two of them, where the surface is lowest.
    """
    bundles: list[Bundle] = []
    for axis, near, far in ((ALONG_Y, half_width, half_length), (ALONG_X, half_length, half_width)):
        count = max(1, round(far / opening))
        pitch = far / count
        fine = replace(wire, fine=replace(wire.fine, shortest=max(wire.fine.shortest, opening / 2, pitch / 2)))
        beside = _beside_the_crossings(far, pitch, opening)
        corner = [(far + low, far + high) for low, high in spans(openings * opening, fine.fine)]
        past_corner = [*spans(far, fine.fine), *corner]
        for line in range(openings + 1):
            bundles += _line(axis, near + line * opening, past_corner, fine, beside)
        bundles += _across(axis, near, far, count, openings, opening, fine)
    return bundles


def spans(end: float, fine: Fineness) -> list[tuple[float, float]]:
    """Cut 0 to `end` into spans that grow from the end, where the current changes most.

    >>> spans(16, Fineness(1, 2, 1))
    [(0.0, 9), (9, 13), (13, 15), (15, 16)]
    """
    cuts, length = [end], fine.shortest
    while cuts[-1] - length > length * fine.growth / 2:
        cuts.append(cuts[-1] - length)
        length *= fine.growth
    cuts.append(0.0)
    return list(zip(cuts[:0:-1], cuts[-2::-1], strict=True))


def _itself(at: float) -> float:
    return at


def _beside_the_crossings(far: float, pitch: float, opening: float) -> Match:
    """Return what moves a place to where the voltage is set. Past the pool's corner the crossings lie otherwise."""

    def beside(at: float) -> float:
        first, every = (far, opening) if at > far else (pitch / 2, pitch)
        crossing = first + every * round((at - first) / every)
        return crossing + (BESIDE if at >= crossing else -BESIDE) * every

    return beside


def _line(axis: str, place: float, cut: list[tuple[float, float]], wire: Wire, match: Match) -> list[Bundle]:
    return [wire.bundle(axis, span, (place,), 0.0, (match((span[0] + span[1]) / 2), place)) for span in cut]


def _across(along: str, near: float, far: float, count: int, openings: int, opening: float, wire: Wire) -> list[Bundle]:
    """Return `count` wires across the lines of a side; those in one span share the currents of their pieces."""
    axis = ALONG_X if along == ALONG_Y else ALONG_Y
    pitch, piece = far / count, opening / wire.fine.pieces
    bundles: list[Bundle] = []
    for low, high in spans(far, wire.fine):
        places = tuple(place for step in range(count) if low <= (place := (step + 0.5) * pitch) < high)
        if not places:
            continue
        for step in range(openings * wire.fine.pieces):
            start = near + step * piece
            match = start + (1 - BESIDE if wire.fine.pieces == 1 else 0.5) * piece
            bundles.append(
                wire.bundle(axis, (start, start + piece), places, pitch / 2, (match, places[len(places) // 2]))
            )
    return bundles
