"""What stands around the conductors: earth, water, concrete, pipes, metal parts and whoever touches them.

Every symbol is a group with an id and classes; its lines are told apart by surroundings.css.
"""

from __future__ import annotations

from math import copysign, cos, degrees, hypot, radians, sin

import drawsvg

Point = tuple[float, float]


def _line(*points: Point, kind: str = "edge") -> drawsvg.DrawingElement:
    line = [coordinate for point in points for coordinate in point]
    return drawsvg.Lines(*line, close=False, class_=kind)


def outline(name: str, *points: Point, kind: str = "") -> drawsvg.DrawingElement:
    """Return a plain line through `points`: a building, a wall, a deck. kind: "" or "faint"."""
    group = drawsvg.Group(id=name, class_=f"surrounding {kind}".strip())
    group.append(_line(*points))
    return group


def ground_line(name: str, left: float, right: float, y: float) -> drawsvg.DrawingElement:
    """Return the surface of the earth, with short strokes below it."""
    group = drawsvg.Group(id=name, class_="surrounding")
    group.append(_line((left, y), (right, y)))
    for x in range(int(left) + 8, int(right), 14):
        group.append(_line((x, y), (x - 6, y + 7), kind="thin"))
    return group


def water(name: str, left: float, right: float, *levels: float) -> drawsvg.DrawingElement:
    """Return water: a wave at each of `levels`, the first one its surface."""
    group = drawsvg.Group(id=name, class_="surrounding water")
    for number, y in enumerate(levels):
        wave = drawsvg.Path(class_="thin" if number else "edge").M(left, y)
        x, up = left, 1
        while x + 14 <= right:
            wave.Q(x + 7, y - 6 * up, x + 14, y)
            x, up = x + 14, -up
        group.append(wave)
    return group


def concrete(name: str, x: float, y: float, width: float, height: float) -> drawsvg.DrawingElement:
    """Return concrete cut through: an outline with a few stones in it."""
    group = drawsvg.Group(id=name, class_="surrounding concrete")
    group.append(drawsvg.Rectangle(x, y, width, height, class_="edge"))
    for row in range(int(height) // 13):
        for column in range(int(width - 12) // 26):
            left, top = x + 9 + 26 * column + 13 * (row % 2), y + 6 + 13 * row
            if left + 5 < x + width and top + 5 < y + height:
                group.append(drawsvg.Lines(left, top + 4, left + 5, top + 4, left + 2, top, close=True, class_="stone"))
    return group


def metal(name: str, x: float, y: float, width: float, height: float) -> drawsvg.DrawingElement:
    """Return a solid piece of metal: a box with slanting strokes across it."""
    group = drawsvg.Group(id=name, class_="surrounding metal-part")
    group.append(drawsvg.Rectangle(x, y, width, height, class_="edge"))
    for start in range(8, int(width + height), 9):
        first = (x + min(start, width), y + max(0, start - width))
        last = (x + max(0, start - height), y + min(start, height))
        group.append(_line(first, last, kind="thin"))
    return group


def mesh(name: str, left: float, right: float, y: float) -> drawsvg.DrawingElement:
    """Return wire mesh cut through: one long bar, and the ends of the bars across it tied to it."""
    group = drawsvg.Group(id=name, class_="mesh")
    group.append(_line((left, y), (right, y), kind="bar-along"))
    count = max(1, round((right - left) / 18))
    for number in range(count + 1):
        group.append(drawsvg.Circle(left + (right - left) * number / count, y - 3, 3, class_="bar-across"))
    return group


def mesh_from_above(
    name: str, x: float, y: float, width: float, height: float, spacing: float
) -> drawsvg.DrawingElement:
    """Return wire mesh seen from above, tied at every crossing."""
    group = drawsvg.Group(id=name, class_="mesh")
    columns = [x + spacing * number for number in range(int(width / spacing) + 1)]
    rows = [y + spacing * number for number in range(int(height / spacing) + 1)]
    for column in columns:
        group.append(_line((column, y), (column, y + height), kind="bar-along"))
    for row in rows:
        group.append(_line((x, row), (x + width, row), kind="bar-along"))
    for column in columns:
        for row in rows:
            group.append(drawsvg.Circle(column, row, 2.5, class_="bar-across"))
    return group


def pipe(name: str, kind: str, width: float, *points: Point) -> drawsvg.DrawingElement:
    """Return a pipe or raceway around the line through `points`, open at its ends.

    kind: steel or flexible (a metal raceway), nonmetallic, or plain (a metal pipe for water or gas).
    """
    wall = {"steel": 3, "flexible": 3, "nonmetallic": 1.5, "plain": 2.5}[kind]
    line = [coordinate for point in points for coordinate in point]
    group = drawsvg.Group(id=name, class_=f"pipe {kind}")
    group.append(drawsvg.Lines(*line, close=False, class_="wall", stroke_width=width))
    group.append(drawsvg.Lines(*line, close=False, class_="bore", stroke_width=width - 2 * wall))
    return group


def swept(start: Point, corner: Point, end: Point) -> list[Point]:
    """Return the points of a line that sweeps from `start` round `corner` to `end`."""
    shares = [step / 16 for step in range(17)]

    def on_the_way(t: float, a: float, b: float, c: float) -> float:
        return round((1 - t) ** 2 * a + 2 * t * (1 - t) * b + t * t * c, 2)

    return [
        (on_the_way(t, start[0], corner[0], end[0]), on_the_way(t, start[1], corner[1], end[1])) for t in shares
    ]


def clamp(name: str, x: float, y: float, width: float = 14) -> drawsvg.DrawingElement:
    """Return a clamp or lug around a point: a small plate with its screw."""
    group = drawsvg.Group(id=name, class_="clamp")
    group.append(drawsvg.Rectangle(x - width / 2, y - 6, width, 12, rx=2, class_="plate"))
    group.append(drawsvg.Circle(x, y, 2.5, class_="screw"))
    return group


def rod(name: str, x: float, top: float, bottom: float) -> drawsvg.DrawingElement:
    """Return a driven rod, pointed at the bottom."""
    group = drawsvg.Group(id=name, class_="surrounding rod")
    points = (x - 3, top, x + 3, top, x + 3, bottom - 8, x, bottom, x - 3, bottom - 8)
    group.append(drawsvg.Lines(*points, close=True, class_="edge"))
    return group


def standing(name: str, x: float, foot: float, *hands: Point, kind: str = "") -> drawsvg.DrawingElement:
    """Return a person 76 tall whose feet are at (x, foot), a hand on each of `hands`. kind: "" or "hurt"."""
    group = drawsvg.Group(id=name, class_=f"standing {kind}".strip())
    group.append(drawsvg.Circle(x, foot - 68, 8))
    group.append(_line((x, foot - 60), (x, foot - 30), kind="limb"))
    for side in (-8, 8):
        group.append(_line((x, foot - 30), (x + side, foot), kind="limb"))
    for hand in hands or ((x - 12, foot - 30), (x + 12, foot - 30)):
        group.append(_line((x, foot - 53), hand, kind="limb"))
        group.append(drawsvg.Circle(*hand, 3, class_="hand"))
    return group


def dimension(name: str, first: Point, second: Point) -> drawsvg.DrawingElement:
    """Return a measured distance: a thin line with an arrow head at both ends."""
    (left, top), (right, bottom) = first, second
    length = hypot(right - left, bottom - top)
    along = ((right - left) / length, (bottom - top) / length)
    group = drawsvg.Group(id=name, class_="dimension")
    group.append(_line(first, second, kind="thin"))
    for (x, y), way in ((first, 1), (second, -1)):
        back = (x + 7 * way * along[0], y + 7 * way * along[1])
        sides = [(back[0] - 3.5 * side * along[1], back[1] + 3.5 * side * along[0]) for side in (1, -1)]
        group.append(drawsvg.Lines(x, y, *sides[0], *sides[1], close=True, class_="head"))
    return group


def pointer(name: str, *points: Point) -> drawsvg.DrawingElement:
    """Return a thin line from words to what they name, with a small dot where it ends."""
    group = drawsvg.Group(id=name, class_="dimension")
    group.append(_line(*points, kind="thin"))
    group.append(drawsvg.Circle(*points[-1], 2, class_="head"))
    return group


def movement(name: str, first: Point, second: Point) -> drawsvg.DrawingElement:
    """Return a bent double arrow between two points: this part moves."""
    (left, top), (right, bottom) = first, second
    group = drawsvg.Group(id=name, class_="dimension movement")
    group.append(drawsvg.Path(class_="thin").M(*first).Q((left + right) / 2, min(top, bottom) - 14, *second))
    for (x, y), other in ((first, right), (second, left)):
        inward = copysign(8, other - x)
        group.append(drawsvg.Lines(x, y, x + inward, y - 7, x + inward * 0.4, y - 10, close=True, class_="head"))
    return group


def never(name: str, x: float, y: float, *points: Point) -> drawsvg.DrawingElement:
    """Return a joint that must not be: a dotted line through `points`, crossed out at (x, y)."""
    group = drawsvg.Group(id=name, class_="never")
    if points:
        group.append(_line(*points, kind="dotted"))
    for slope in (-1, 1):
        group.append(_line((x - 8, y - 8 * slope), (x + 8, y + 8 * slope), kind="cross"))
    return group


def solid(name: str, x: float, y: float, width: float, height: float) -> drawsvg.DrawingElement:
    """Return a bonding part cut through: a screw, a nut, a bushing, a busbar."""
    return drawsvg.Rectangle(x, y, width, height, rx=1.5, id=name, class_="solid")


def strap(name: str, left: float, right: float, y: float) -> drawsvg.DrawingElement:
    """Return a flat braided strap, 12 across, between two points at one level."""
    group = drawsvg.Group(id=name, class_="strap")
    group.append(drawsvg.Rectangle(left, y - 6, right - left, 12, class_="plait"))
    count = round((right - left) / 6)
    step = (right - left) / count
    for way in (1, -1):
        points = [(left + step * number, y + 6 * way * (-1) ** number) for number in range(count + 1)]
        group.append(_line(*points, kind="plait"))
    return group


def buried_wire(name: str, *points: Point) -> drawsvg.DrawingElement:
    """Return a bare wire or bar in earth or concrete, through `points`."""
    group = drawsvg.Group(id=name, class_="mesh")
    group.append(_line(*points, kind="bar-along"))
    return group


def ring(name: str, x: float, y: float, half: float) -> drawsvg.DrawingElement:
    """Return a bare wire all round a building in the earth, seen from the side and a little from above."""
    group = drawsvg.Group(id=name, class_="mesh")
    group.append(drawsvg.Ellipse(x, y, half, 24, class_="bar-along"))
    return group


def sleeve(name: str, x: float, y: float, width: float, *, level: bool = False) -> list[drawsvg.DrawingElement]:
    """Return a coupling or connector around a raceway `width` across at (x, y). level: the raceway runs level."""
    near, far = -width / 2 - 6.5, width / 2 - 0.5
    if level:
        return [solid(f"{name}-above", x - 8, y + near, 16, 7), solid(f"{name}-below", x - 8, y + far, 16, 7)]
    return [solid(f"{name}-left", x + near, y - 8, 7, 16), solid(f"{name}-right", x + far, y - 8, 7, 16)]


def receptacle(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return a receptacle on its yoke, 40 by 84, its left top corner at (x, y)."""
    group = drawsvg.Group(id=name, class_="surrounding receptacle")
    group.append(drawsvg.Rectangle(x, y, 40, 84, rx=6, class_="edge"))
    for top in (y + 24, y + 60):
        group.append(drawsvg.Circle(x + 20, top, 14, class_="edge"))
        group.append(_line((x + 15, top - 8), (x + 15, top - 1)))
        group.append(_line((x + 25, top - 7), (x + 25, top - 2)))
        group.append(drawsvg.Circle(x + 20, top + 6, 2, class_="edge"))
    return group


def slit(name: str, x: float, y: float, radius: float, turned: float) -> drawsvg.DrawingElement:
    """Return the slit of a knockout around (x, y), seen face-on, with two small ties, `turned` degrees round."""
    group = drawsvg.Group(id=name, class_="surrounding")
    tie = degrees(7 / radius)
    for half in (0, 180):
        ends = [radians(turned + half + at) for at in (tie, 180 - tie)]
        first, last = [(x + radius * cos(angle), y + radius * sin(angle)) for angle in ends]
        group.append(drawsvg.Path(class_="edge").M(*first).A(radius, radius, 0, 0, 1, *last))
    return group


def motor(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return a motor, a circle of radius 24 around (x, y) with its letter."""
    group = drawsvg.Group(id=name, class_="surrounding")
    group.append(drawsvg.Circle(x, y, 24, class_="edge"))
    group.append(drawsvg.Text("M", 16, x, y + 6, text_anchor="middle"))
    return group


def hole(name: str, x: float, y: float, radius: float) -> drawsvg.DrawingElement:
    """Return a round hole, seen face-on."""
    group = drawsvg.Group(id=name, class_="surrounding")
    group.append(drawsvg.Circle(x, y, radius, class_="edge face"))
    return group
