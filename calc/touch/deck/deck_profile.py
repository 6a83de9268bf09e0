"""Touch and step voltages on a pool deck, as parts of the rise, out from a side and out from a corner."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from calc.touch.deck.deck import Deck
from calc.touch.surface.surface_potential import Bundle, bundle_currents, surface_voltage

SIDE, CORNER = "side", "corner"
EVERY = 0.25  # ft between places looked at
FARTHEST = 6.0
Places = tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Step:
    """The largest difference between two feet, and where they stand: ft from the wall, near and far foot."""

    part: float
    line: str
    near: float
    far: float


@dataclass(frozen=True)
class Profile:
    """(ft from the wall, touch) out from the middle of a long side and out from a corner, and what is worst in them.

    worst: the highest touch within the strip looked at, its line and place: at a corner the strip is square, and its
    tip is where the touch is highest of all. inside, across: the largest step with both feet no farther out than the
    strip is wide, and with one foot on its edge or in its tip and the other farther out.
    """

    lines: dict[str, Places]
    worst: tuple[float, str, float]
    inside: Step
    across: Step
    at: dict[str, float]

    def touch(self, line: str, distance: float) -> float:
        """Return the touch voltage at one of the places looked at."""
        return dict(self.lines[line])[distance]


@lru_cache(maxsize=64)  # another rise needs nothing solved again
def profile_of(bundles: tuple[Bundle, ...], deck: Deck, step: float, distance: float) -> Profile:
    """Return the profile of metal; `step`: the longest step, ft; `distance`: ft from the wall, one more place.

    Source: the voltage between metal and surface is the rise less that of the surface.
    """
    currents = _currents(bundles)

    def touch(line: str, away: float) -> float:
        return 1 - surface_voltage(bundles, currents, *_place(line, away, deck))

    # The strip has square corners, as a mesh has, so its edge lies farther out there.
    lines: dict[str, Places] = {}
    worst: list[tuple[float, str, float]] = []
    inside: list[Step] = []
    across: list[Step] = []
    for line, edge in ((SIDE, deck.strip), (CORNER, deck.strip * math.sqrt(2))):
        points = lines[line] = tuple((away, touch(line, away)) for away in _looked_at(edge, step, deck.strip))
        worst += [(part, line, away) for away, part in points if away <= edge]
        inside.append(_largest(line, points, step, lambda _, far: far <= deck.strip))
        across.append(_largest(line, points, step, lambda near, far, edge=edge: near <= edge and far > deck.strip))
    at = {line: touch(line, distance) for line in lines}
    return Profile(lines, max(worst), max(inside, key=_part), max(across, key=_part), at)


def _part(step: Step) -> float:
    return step.part


@lru_cache(maxsize=64)
def _currents(bundles: tuple[Bundle, ...]) -> tuple[float, ...]:
    return tuple(bundle_currents(bundles))


def _place(line: str, away: float, deck: Deck) -> tuple[float, float]:
    if line == SIDE:
        return deck.half_width + away, 0.0
    return deck.half_width + away / math.sqrt(2), deck.half_length + away / math.sqrt(2)


def _looked_at(edge: float, step: float, strip: float) -> list[float]:
    count = math.ceil(max(FARTHEST, edge + step) / EVERY)
    return sorted({EVERY * place for place in range(count + 1)} | {edge, strip})


def _largest(line: str, points: Places, step: float, belongs: Callable[[float, float], bool]) -> Step:
    """Return the largest difference of any two places at most `step` apart that belong."""
    found = Step(0.0, line, points[0][0], points[0][0])
    for place, (near, one) in enumerate(points):
        for far, other in points[place + 1 :]:
            if far - near > step:
                break
            if abs(other - one) > found.part and belongs(near, far):
                found = Step(abs(other - one), line, near, far)
    return found
