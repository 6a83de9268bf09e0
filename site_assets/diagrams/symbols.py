"""The few symbols the drawings are made of, after IEC 60617; every element has an id and classes, no styles.

Lengths are in the units of the drawing, 360 across on the smallest phone.
"""

from __future__ import annotations

import re
from html import escape
from math import hypot

import drawsvg

from calc.messages import Message


def canvas(
    slug: str, width: int, height: int, title: Message, description: Message, *, pressed: bool = False
) -> drawsvg.Drawing:
    """Return an empty drawing that screen readers announce by its title and description.

    pressed: it has parts to press, which a mere picture would hide from screen readers.
    """
    title_id, description_id = f"{slug}-drawing-title", f"{slug}-drawing-description"
    role = "group" if pressed else "img"
    drawing = drawsvg.Drawing(width, height, role=role, aria_labelledby=f"{title_id} {description_id}")
    drawing.append(
        drawsvg.Raw(f'<title id="{title_id}">{title}</title><desc id="{description_id}">{description}</desc>')
    )
    return drawing


def finished(drawing: drawsvg.Drawing, slug: str) -> str:
    """Return the SVG of a drawing, every id led by the drawing's own, so that a page can hold several."""
    svg = drawing.as_svg(header="").replace("\n", "")
    return re.sub(rf' id="(?!{slug}-drawing-)', f' id="{slug}-drawing-', svg)


def conductor(name: str, kind: str, *points: tuple[float, float]) -> drawsvg.DrawingElement:
    """Return a conductor through `points`.

    kind: ungrounded, grounded, equipment-grounding, bonding, electrode; "wrong" is a link that should not be there,
    "poor" a way through the earth.
    """
    line = [coordinate for point in points for coordinate in point]
    group = drawsvg.Group(id=name, class_=f"conductor {kind}")
    if kind == "grounded":
        group.append(drawsvg.Lines(*line, close=False, class_="outline"))
    group.append(drawsvg.Lines(*line, close=False, class_="core"))
    return group


def bar(name: str, kind: str, x: float, y: float, width: float) -> drawsvg.DrawingElement:
    """Return a terminal bar with screws."""
    group = drawsvg.Group(id=name, class_=f"bar {kind}")
    group.append(drawsvg.Rectangle(x, y, width, 14, rx=2, class_="metal"))
    for offset in range(10, int(width) - 6, 16):
        group.append(drawsvg.Circle(x + offset, y + 7, 3, class_="screw"))
    return group


def enclosure(name: str, x: float, y: float, width: float, height: float) -> drawsvg.DrawingElement:
    """Return a metal enclosure."""
    return drawsvg.Rectangle(x, y, width, height, rx=4, id=name, class_="enclosure")


def breaker(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return a circuit breaker in a vertical conductor, 40 long from (x, y) down: contact blade and cross."""
    group = drawsvg.Group(id=name, class_="breaker")
    group.append(drawsvg.Line(x, y, x, y + 8, class_="blade"))
    group.append(drawsvg.Line(x - 4, y + 4, x + 4, y + 12, class_="blade"))
    group.append(drawsvg.Line(x + 4, y + 4, x - 4, y + 12, class_="blade"))
    group.append(drawsvg.Line(x - 13, y + 12, x, y + 32, class_="blade"))
    group.append(drawsvg.Line(x, y + 32, x, y + 40, class_="blade"))
    return group


def winding(name: str, x: float, y: float, turns: int, *, level: bool = False) -> drawsvg.DrawingElement:
    """Return a transformer winding of `turns` half circles, 16 long each, from (x, y) down, or to the right."""
    path = drawsvg.Path(id=name, class_="winding")
    path.M(x, y)
    for turn in range(turns):
        along = 16 * (turn + 1)
        path.A(8, 8, 0, 0, 1, *((x + along, y) if level else (x, y + along)))
    return path


def earth(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return the earth symbol below (x, y)."""
    group = drawsvg.Group(id=name, class_="earth")
    for step, half in enumerate((16, 10, 4)):
        group.append(drawsvg.Line(x - half, y + 7 * step, x + half, y + 7 * step))
    return group


def fault(name: str, x: float, y: float, reach: float = 20) -> drawsvg.DrawingElement:
    """Return a fault from (x, y) to the right: a zigzag with a point, told by shape as well as colour."""
    points = (x, y, x + reach * 0.5, y - 8, x + reach * 0.4, y + 2, x + reach, y - 6)
    return drawsvg.Lines(*points, close=False, id=name, class_="fault")


def tube(name: str, x: float, top: float, bottom: float, width: float, kind: str) -> drawsvg.DrawingElement:
    """Return the walls of a metal raceway around what stands at `x`. kind: steel or flexible."""
    group = drawsvg.Group(id=name, class_=f"tube {kind}")
    for wall in (x - width / 2, x + width / 2):
        group.append(drawsvg.Line(wall, top, wall, bottom, class_="core"))
    return group


def load(name: str, *points: tuple[float, float]) -> drawsvg.DrawingElement:
    """Return a load, a box in the middle of the level line between two points."""
    (left, y), (right, _) = points
    middle = (left + right) / 2
    group = drawsvg.Group(id=name, class_="load")
    group.append(drawsvg.Line(left, y, right, y))
    group.append(drawsvg.Rectangle(middle - 9, y - 6, 18, 12))
    return group


def person(name: str, x: float, y: float, reach: float) -> drawsvg.DrawingElement:
    """Return a person, head at (x, y), 56 tall with the earth underfoot, one hand reaching left to `reach`."""
    group = drawsvg.Group(id=name, class_="person")
    group.append(drawsvg.Circle(x, y, 6))
    for line in (
        (x, y + 6, x, y + 28),
        (x, y + 12, reach, y + 16),
        (x, y + 28, x - 7, y + 46),
        (x, y + 28, x + 7, y + 46),
    ):
        group.append(drawsvg.Line(*line))
    group.append(drawsvg.Line(x - 13, y + 48, x + 13, y + 48, class_="ground"))
    return group


def dot(x: float, y: float) -> drawsvg.DrawingElement:
    """Return the dot that says that lines meet here."""
    return drawsvg.Circle(x, y, 3.5, class_="dot")


def joint(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return the dot that says that a conductor ends on metal here, or that conductors are joined."""
    return drawsvg.Circle(x, y, 4, id=name, class_="joint")


def raceway(name: str, kind: str, width: float, *points: tuple[float, float]) -> drawsvg.DrawingElement:
    """Return a raceway along `points`; what it holds is drawn after it. kind: metal, flexible, nonmetallic."""
    inside = width - (3 if kind == "nonmetallic" else 5)
    group = drawsvg.Group(id=name, class_=f"raceway {kind}")
    for ends, across, part in ((points, width, "wall"), (_lengthened(points), inside, "inside")):
        line = [coordinate for point in ends for coordinate in point]
        group.append(drawsvg.Lines(*line, close=False, stroke_width=across, class_=part))
    return group


def _lengthened(points: tuple[tuple[float, float], ...]) -> list[tuple[float, float]]:
    """Return a polyline one unit longer at both ends, so that what it covers leaves no trace."""
    longer = list(points)
    for end, before in ((0, 1), (-1, -2)):
        (x, y), (other_x, other_y) = points[end], points[before]
        length = hypot(x - other_x, y - other_y)
        longer[end] = (x + (x - other_x) / length, y + (y - other_y) / length)
    return longer


def arrow(name: str, x: float, y: float, way: str, size: float = 8) -> drawsvg.DrawingElement:
    """Return an arrowhead with its point at (x, y). way: up, down, left, right."""
    along, across = {"up": (0, -1), "down": (0, 1), "left": (-1, 0), "right": (1, 0)}[way], size * 0.7
    back = (x - along[0] * size * 1.5, y - along[1] * size * 1.5)
    side = (along[1] * across, along[0] * across)
    points = (x, y, back[0] + side[0], back[1] + side[1], back[0] - side[0], back[1] - side[1])
    return drawsvg.Lines(*points, close=True, id=name, class_="arrow")


def border(name: str, *points: tuple[float, float]) -> drawsvg.DrawingElement:
    """Return the thought line that parts one side from another."""
    return drawsvg.Lines(*[number for point in points for number in point], close=False, id=name, class_="border")


def bushing(name: str, x: float, y: float, width: float) -> drawsvg.DrawingElement:
    """Return a bonding bushing on the end of an upright raceway, its left edge at `x`."""
    return drawsvg.Rectangle(x, y, width, 9, rx=3, id=name, class_="bushing")


def fitting(name: str, x: float, y: float, width: float) -> drawsvg.DrawingElement:
    """Return a connector or coupling around an upright raceway, its left edge at `x`."""
    return drawsvg.Rectangle(x, y, width, 14, rx=2, id=name, class_="fitting")


def insulator(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return the insulator that holds a bar away from metal, below (x, y)."""
    points = (x - 8, y, x + 8, y, x + 5, y + 6, x + 8, y + 12, x - 8, y + 12, x - 5, y + 6)
    return drawsvg.Lines(*points, close=True, id=name, class_="insulator")


def screw(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return a bonding screw seen from the front."""
    group = drawsvg.Group(id=name, class_="bonding-screw")
    group.append(drawsvg.Circle(x, y, 7))
    group.append(drawsvg.Line(x - 4, y - 4, x + 4, y + 4))
    return group


def pressed(
    kind: str, name: str, words: Message | str, x: float, y: float, width: float, height: float
) -> drawsvg.DrawingElement:
    """Return the unseen area to press for a bond or a part, with its name for screen readers.

    kind: "bond", "added" or "part"; a press asks the page's script for another state of `name`.
    """
    marked = {"data-press": kind, "data-name": name, "aria-label": escape(str(words))}
    return drawsvg.Rectangle(x, y, width, height, rx=6, class_="press", role="button", tabindex=0, **marked)


def path_step(number: int, *points: tuple[float, float]) -> drawsvg.DrawingElement:
    """Return the stretch of the current's way that step `number` of the text twin tells; seen only while stepped to."""
    line = [coordinate for point in points for coordinate in point]
    return drawsvg.Lines(*line, close=False, id=f"path-{number}", class_="path-step")


def step_mark(number: int, x: float, y: float) -> drawsvg.DrawingElement:
    """Return the numbered mark of one step of the fault's way round."""
    group = drawsvg.Group(id=f"step-{number}", class_="step-mark")
    group.append(drawsvg.Circle(x, y, 9))
    group.append(drawsvg.Text(str(number), 12, x, y + 4.2, text_anchor="middle"))
    return group


def label(
    words: Message | str, x: float, y: float, anchor: str = "start", kind: str = "", name: str = ""
) -> drawsvg.DrawingElement:
    """Return words at (x, y); a line break in the words starts a new line. name: of words that a script may change."""
    lines = str(words) if name else str(words).split("\n")
    named = {"id": name} if name else {}
    return drawsvg.Text(lines, 13, x, y, text_anchor=anchor, class_=f"label {kind}".strip(), line_height=1.15, **named)
