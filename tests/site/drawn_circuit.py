"""What a drawing says is joined: conductors, bars, joints and metal read back from its picture as a circuit.

A conductor is joined to a bar, a piece of metal or another conductor where one of its ends lies on it. A joint joins
whatever passes through it, and the wall of the enclosure, raceway or pipe that it stands on. Breakers, windings and
loads join nothing: what is asked is which metal is one piece with which, whatever switches do.
"""

import re
from functools import cache, cached_property
from importlib import import_module
from itertools import combinations, pairwise
from math import hypot
from xml.etree import ElementTree

REACH = 4.5  # units of a drawing: what the eye takes for touching
CONDUCTORS = {"conductor", "buried-wire", "strap", "rod", "mesh", "ring"}
METAL_ENDS = {"equipment-grounding", "bonding", "electrode"}  # of these an end on a wall is joined to it
SOLID = {"bar", "bushing", "clamp", "fitting", "solid", "metal", "motor", "bonding-screw", "steel-column"}
WALLS = {"enclosure", "raceway", "pipe", "tube", "sleeve"}


class Piece:
    """One named part: the lines it is drawn of, its ends, and the box around it."""

    def __init__(self, name: str, kinds: set[str], lines: list[list[tuple[float, float]]]):
        self.name, self.kinds, self.lines = name, kinds, lines
        points = [point for line in lines for point in line]
        self.ends = [end for line in lines for end in (line[0], line[-1])]
        xs, ys = [x for x, _ in points], [y for _, y in points]
        self.box = (min(xs), min(ys), max(xs), max(ys))

    def reaches(self, other: "Piece") -> bool:
        """Tell whether the boxes around two parts come near one another, without which they cannot touch."""
        (left, top, right, bottom), (x1, y1, x2, y2) = self.box, other.box
        room = 2 * REACH
        return left - room <= x2 and x1 <= right + room and top - room <= y2 and y1 <= bottom + room

    @cached_property
    def along(self) -> list[tuple[float, float]]:
        """Places on its lines, close enough to one another that a clamp cannot slip between."""
        return [
            (x1 + (x2 - x1) * step / count, y1 + (y2 - y1) * step / count)
            for line in self.lines
            for (x1, y1), (x2, y2) in pairwise(line)
            for count in [max(1, round(hypot(x2 - x1, y2 - y1) / REACH))]
            for step in range(count + 1)
        ]

    def near(self, place: tuple[float, float]) -> bool:
        """Tell whether a place lies on one of its lines."""
        return any(
            distance(place, start, end) <= REACH for line in self.lines for start, end in pairwise([*line, line[-1]])
        )

    def around(self, place: tuple[float, float]) -> bool:
        """Tell whether a place lies in the box around it."""
        (x, y), (left, top, right, bottom) = place, self.box
        return left - REACH <= x <= right + REACH and top - REACH <= y <= bottom + REACH


def distance(place, start, end) -> float:
    """Return how far a place is from a stretch."""
    (x, y), (x1, y1), (x2, y2) = place, start, end
    along = (x2 - x1) ** 2 + (y2 - y1) ** 2
    share = max(0.0, min(1.0, ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / along)) if along else 0.0
    return hypot(x - x1 - share * (x2 - x1), y - y1 - share * (y2 - y1))


@cache
def pieces(slug: str) -> list[Piece]:
    """Return the named parts of a drawing."""
    svg = import_module(f"site_assets.diagrams.{slug.replace('-', '_')}").svg()
    found = []
    for element in ElementTree.fromstring(re.sub(r' xmlns(:\w+)?="[^"]*"| xlink:', " ", svg)).iter():
        name = element.get("id", "").removeprefix(f"{slug}-drawing-")
        lines = [line for each in element.iter() for line in drawn(each)]
        if name and lines:
            found.append(Piece(name, set((element.get("class") or "").split()), lines))
    return found


def drawn(element) -> list[list[tuple[float, float]]]:
    """Return the lines that one element of the picture is drawn of."""
    number = {key: float(value) for key, value in element.attrib.items() if re.fullmatch(r"-?[\d.]+", value)}
    if element.tag == "rect":
        x, y, width, height = (number.get(key, 0.0) for key in ("x", "y", "width", "height"))
        return [[(x, y), (x + width, y), (x + width, y + height), (x, y + height), (x, y)]]
    if element.tag == "circle":
        return [[(number["cx"], number["cy"])]]
    if element.tag == "line":
        return [[(number.get("x1", 0.0), number.get("y1", 0.0)), (number.get("x2", 0.0), number.get("y2", 0.0))]]
    if element.tag == "path":
        numbers = [float(each) for each in re.findall(r"-?\d+(?:\.\d+)?", element.get("d", ""))]
        if re.fullmatch(r"[MLZ\d\s,.\-]+", element.get("d", "")) and len(numbers) >= 2:
            return [list(zip(numbers[::2], numbers[1::2], strict=False))]
    return []


@cache
def contacts(slug: str) -> list[tuple[str, str]]:
    """Return the pairs of parts that touch."""
    parts = [part for part in pieces(slug) if "poor" not in part.kinds]
    return [
        (one.name, other.name)
        for one, other in combinations(parts, 2)
        if one.reaches(other) and (touches(one, other) or touches(other, one))
    ]


def circuits(slug: str, without: tuple[str, ...] = ()) -> dict[str, set[str]]:
    """Return for each part of a drawing all that is one piece of metal with it, some parts left out.

    A way through the earth, kind "poor", is no metal.
    """
    joined = {part.name: {part.name} for part in pieces(slug) if part.name not in without}

    def join(one: str, other: str) -> None:
        whole = joined[one] | joined[other]
        for name in whole:
            joined[name] = whole

    for one, other in contacts(slug):
        if one in joined and other in joined:
            join(one, other)
    return joined


def touches(one: Piece, other: Piece) -> bool:
    """Tell whether a conductor ends on another part, or a joint stands on it."""
    if one.kinds & CONDUCTORS:
        if other.kinds & CONDUCTORS or (one.kinds & METAL_ENDS and other.kinds & WALLS):
            return any(other.near(end) for end in one.ends)
        return bool(other.kinds & SOLID) and any(other.around(end) for end in one.ends)
    if "clamp" in one.kinds:
        return bool(other.kinds & (WALLS | CONDUCTORS)) and any(one.around(place) for place in other.along)
    if "joint" in one.kinds or "dot" in one.kinds:
        place = one.lines[0][0]
        if other.kinds & SOLID:
            return other.around(place)
        return bool(other.kinds & (CONDUCTORS | WALLS)) and other.near(place)
    return False
