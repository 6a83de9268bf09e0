"""A solar array on a roof: frames on rails, and the equipment grounding conductor beside its circuit to the panel."""

from __future__ import annotations

import drawsvg

from calc.messages import message
from site_assets.diagrams.scenery import clamp, ground_line, metal, outline, pointer, rod
from site_assets.diagrams.symbols import (
    bar,
    breaker,
    canvas,
    conductor,
    dot,
    enclosure,
    finished,
    joint,
    label,
    raceway,
)

SLUG = "solar"
GROUND = 522
CAPTION = message(
    "Frames are bonded to rails, rails to an equipment grounding conductor that stays with its circuit down to the "
    "panel. Sunlight keeps the array live: never take a real clamp or wire off to see."
)
TEXT_ALTERNATIVE = (
    message("Three solar panels in a row, seen from behind. Two metal rails run across their frames."),
    message("Listed clamps bond each frame to the rails. A jumper bonds one rail to the other."),
    message("From the rail an equipment grounding conductor starts. The plus and minus wires of the array go with it."),
    message("All three run to the disconnect. The equipment grounding conductor is bonded to its metal."),
    message("They run on to the inverter, and its metal is bonded too. The inverter turns DC into AC."),
    message(
        "From the inverter the ungrounded (hot) conductor goes to a breaker in the service panel. The equipment "
        "grounding conductor goes with it and terminates on the grounding bar. One hot is drawn for both."
    ),
    message("Only in the service panel does the main bonding jumper connect the neutral bar to the grounding bar."),
    message("From the neutral bar a grounding electrode conductor goes to the electrode of the building."),
    message("A dotted line shows a rod at the array. It may be added, but it does not replace the grounding wire."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        600,
        message("A solar array from frame to panel"),
        message(
            "Frames, rails, disconnect and inverter are bonded by an equipment grounding conductor that runs with "
            "the circuit to the service panel. A dotted rod at the array is an extra."
        ),
    )
    picture.extend([*array(), *extra_rod(), *way_down(), *service_panel()])
    return finished(picture, SLUG)


def array():
    """Return frames, rails, clamps and the wires between the panels."""
    made = [
        label(message("clamps bond frames to rails"), 14, 20),
        pointer("to-clamp", (106, 26), (106, 48)),
        label(message("rail"), 286, 28),
        pointer("to-rail", (296, 33), (296, 52)),
        *(metal(f"rail-{top}", 10, top, 306, 9) for top in (52, 90)),
    ]
    for number, left in enumerate((22, 110, 198), start=1):
        made += [enclosure(f"frame-{number}", left, 38, 80, 96)]
    made += [clamp(f"clamp-{x}-{y}", x, y, 16) for x in (18, 106, 194, 282) for y in (56, 94)]
    made += [
        label(message("frame"), 62, 81, "middle"),
        conductor("series", "ungrounded", (62, 120), (238, 120)),
        conductor("minus", "ungrounded", (62, 120), (62, 146), (246, 146), (246, 212)),
        conductor("plus", "ungrounded", (238, 120), (272, 120), (272, 212)),
    ]
    for number, x in enumerate((62, 150, 238), start=1):
        box = drawsvg.Group(id=f"junction-box-{number}", class_="surrounding")
        box.append(drawsvg.Rectangle(x - 10, 114, 20, 12, class_="edge face"))
        made.append(box)
    return made


def way_down():
    """Return the equipment grounding conductor and the circuit through disconnect and inverter."""
    inverter = drawsvg.Group(id="inverter-sign", class_="instrument")
    inverter.append(drawsvg.Rectangle(234, 330, 50, 46))
    inverter.append(drawsvg.Line(234, 376, 284, 330))
    inverter.append(drawsvg.Line(241, 341, 255, 341))
    inverter.append(drawsvg.Line(241, 346, 255, 346))
    inverter.append(drawsvg.Path().M(262, 365).Q(266, 358, 270, 365).T(278, 365))
    return [
        raceway("first-raceway", "nonmetallic", 84, (276, 162), (276, 192)),
        raceway("second-raceway", "nonmetallic", 84, (276, 278), (276, 308)),
        raceway("third-raceway", "nonmetallic", 66, (150, 428), (282, 428), (282, 390)),
        conductor("lead-minus", "ungrounded", (246, 146), (246, 216)),
        conductor("lead-plus", "ungrounded", (272, 146), (272, 216)),
        enclosure("disconnect", 216, 192, 122, 86),
        *(switch(f"switch-{x}", x, 216) for x in (246, 272)),
        *(conductor(f"to-inverter-{x}", "ungrounded", (x, 246), (x, 330)) for x in (246, 272)),
        label(message("disconnect"), 208, 204, "end"),
        label("−", 226, 216),
        label("+", 284, 216),
        enclosure("inverter", 216, 308, 122, 82),
        inverter,
        label(message("inverter"), 210, 352, "end"),
        conductor("rail-jumper", "equipment-grounding", (306, 56), (306, 94)),
        conductor("equipment-grounding-conductor", "equipment-grounding", (306, 94), (306, 445), (124, 445)),
        *(joint(f"rail-joint-{y}", 306, y) for y in (56, 94)),
        *(conductor(f"case-bond-{y}", "equipment-grounding", (306, y), (338, y)) for y in (236, 352)),
        *(dot(306, y) for y in (236, 352)),
        *(joint(f"case-joint-{y}", 338, y) for y in (236, 352)),
        conductor("inverter-hot", "ungrounded", (259, 376), (259, 412), (134, 412), (134, 396)),
        label(message("equipment grounding\nconductor, always\nwith its circuit"), 338, 476, "end", "strong"),
    ]


def switch(name: str, x: float, y: float) -> drawsvg.DrawingElement:
    """Return one pole of a disconnect, open, 30 long from (x, y) down."""
    group = drawsvg.Group(id=name, class_="breaker")
    group.append(drawsvg.Line(x - 11, y + 4, x, y + 24))
    group.append(drawsvg.Line(x, y + 24, x, y + 30))
    group.append(drawsvg.Circle(x, y + 3, 3, class_="contact"))
    return group


def service_panel():
    """Return the service panel with its one joint of neutral and metal."""
    return [
        conductor("utility-hot", "ungrounded", (134, 216), (134, 280)),
        conductor("utility-neutral", "grounded", (70, 216), (70, 290)),
        label(message("utility"), 102, 236, "middle"),
        enclosure("service-panel", 14, 258, 136, 212),
        breaker("main-breaker", 134, 280),
        conductor("bus", "ungrounded", (134, 320), (134, 356)),
        breaker("solar-breaker", 134, 356),
        bar("neutral-bar", "grounded", 22, 290, 70),
        label(message("neutral"), 76, 279),
        conductor("main-bonding-jumper", "bonding", (64, 304), (64, 438)),
        label(message("main\nbonding\njumper"), 75, 326),
        bar("grounding-bar", "equipment-grounding", 54, 438, 70),
        conductor("panel-bond", "equipment-grounding", (64, 452), (64, 470)),
        joint("panel-joint", 64, 470),
        label(message("service panel"), 46, 488),
        conductor("grounding-electrode-conductor", "electrode", (32, 304), (32, 534)),
        ground_line("earth", 4, 356, GROUND),
        rod("building-electrode", 32, GROUND - 6, 590),
        clamp("building-electrode-clamp", 32, 538),
        label(message("electrode of\nthe building"), 46, 562),
    ]


def extra_rod():
    """Return the rod that may be added at the array, dotted."""
    points = (345, 516, 351, 516, 351, 580, 348, 590, 345, 580)
    extra = drawsvg.Group(id="extra-rod", class_="surrounding dotted")
    extra.append(drawsvg.Lines(*points, close=True, class_="edge"))
    return [
        outline("to-extra-rod", (316, 57), (348, 57), (348, 516), kind="dotted"),
        extra,
        label(message("A rod may be added. It\nreplaces no wire."), 338, 562, "end"),
    ]
