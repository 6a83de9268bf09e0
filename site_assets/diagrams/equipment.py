"""Transformers, generators, meters and transfer switches, after IEC 60617, and the steel they stand by."""

from __future__ import annotations

import drawsvg

from site_assets.diagrams.symbols import winding


def transformer(name: str, x: float, y: float, turns: int) -> drawsvg.DrawingElement:
    """Return two windings with a core between: the first at `x`, the second at x + 34, both from `y` down."""
    group = drawsvg.Group(id=name, class_="transformer")
    group.append(winding(f"{name}-primary", x, y, turns))
    second = drawsvg.Path(id=f"{name}-secondary", class_="winding").M(x + 34, y)
    for turn in range(turns):
        second.A(8, 8, 0, 0, 0, x + 34, y + 16 * (turn + 1))
    group.append(second)
    for core in (x + 14, x + 20):
        group.append(drawsvg.Line(core, y - 2, core, y + 16 * turns + 2, class_="winding"))
    return group


def delta(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return three windings in delta: corners at (x, y), (x - 22, y + 38) and (x + 22, y + 38)."""
    return drawsvg.Lines(x, y, x - 22, y + 38, x + 22, y + 38, close=True, id=name, class_="winding")


def wye(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return three level windings in wye: joined at the left on `x`, ends at x + 48, 22 apart from `y` down."""
    group = drawsvg.Group(id=name, class_="wye")
    for phase in range(3):
        group.append(winding(f"{name}-{phase + 1}", x, y + 22 * phase, 3, level=True))
    group.append(drawsvg.Line(x, y, x, y + 44, class_="winding"))
    return group


def meter(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return an energy meter, 32 wide and 36 tall, around (x, y)."""
    group = drawsvg.Group(id=name, class_="instrument")
    group.append(drawsvg.Rectangle(x - 16, y - 18, 32, 36))
    group.append(drawsvg.Line(x - 16, y - 9, x + 16, y - 9))
    group.append(drawsvg.Text("Wh", 13, x, y + 9, text_anchor="middle", class_="label"))
    return group


def generator(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return a generator for alternating current, a circle 40 wide around (x, y)."""
    group = drawsvg.Group(id=name, class_="instrument")
    group.append(drawsvg.Circle(x, y, 20))
    group.append(drawsvg.Text("G", 15, x, y + 1, text_anchor="middle", class_="label strong"))
    group.append(drawsvg.Path().M(x - 9, y + 9).Q(x - 4.5, y + 2, x, y + 9).T(x + 9, y + 9))
    return group


def changeover(name: str, x: float, y: float, reach: float = 16) -> drawsvg.DrawingElement:
    """Return one pole of a transfer switch: out at (x, y + 30), in at x - reach, where it stands, or at x + reach."""
    group = drawsvg.Group(id=name, class_="breaker")
    group.append(drawsvg.Line(x, y + 30, x, y + 24))
    group.append(drawsvg.Line(x, y + 24, x - reach, y + 2))
    for contact in (x - reach, x + reach):
        group.append(drawsvg.Circle(contact, y, 3, class_="contact"))
    return group


def steel_column(name: str, x: float, top: float, bottom: float) -> drawsvg.DrawingElement:
    """Return a column of building steel, seen from the side, its web on `x`."""
    group = drawsvg.Group(id=name, class_="steel-column")
    group.append(drawsvg.Rectangle(x - 12, top, 24, bottom - top))
    for flange in (x - 7, x + 7):
        group.append(drawsvg.Line(flange, top, flange, bottom))
    return group


def building(name: str, x: float, y: float, width: float, height: float) -> drawsvg.DrawingElement:
    """Return the outline of a building, its floor on the surface of the earth."""
    return drawsvg.Rectangle(x, y, width, height, id=name, class_="building")
