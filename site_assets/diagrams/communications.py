"""Telephone, cable, dish and antenna mast bonded at the service, and a rod of its own joined to the building's."""

from __future__ import annotations

import drawsvg

from calc.messages import message
from calc.rulebook import undated
from site_assets.diagrams.scenery import clamp, ground_line, outline, pipe, rod
from site_assets.diagrams.symbols import bar, canvas, conductor, dot, enclosure, finished, joint, label

SLUG = "communications"
JUMPER = undated("places/communications_electrode_jumper").value
GROUND = 428
ROOF = 112
CAPTION = message(
    "The lines are bonded to one terminal block at the service. A line too far away has a rod, and a jumper bonds it "
    "to the service's rod. A drawing only: never open a real bond to see."
)
TEXT_ALTERNATIVE = (
    message("Only the neutral, the bonding and the grounding are drawn."),
    message("In the service, the main bonding jumper connects the neutral bar to the metal enclosure."),
    message("The grounding electrode conductor runs from the neutral bar down to the ground rod."),
    message(
        "The intersystem bonding termination is a terminal block outside. A bonding conductor connects it to the "
        "grounding electrode conductor."
    ),
    message(
        "Four conductors terminate on the block: from the dish, the antenna mast, the telephone protector and the "
        "cable's ground block."
    ),
    message(
        "One more line enters far from the service. Its block is bonded to its own rod. Underground, a jumper of "
        "{size} AWG copper or larger bonds that rod to the service's rod.",
        size=JUMPER,
    ),
    message("So in a storm all of it rises together, and no line is left out."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        508,
        message("Communications lines bonded at a house"),
        message(
            "A dish, an antenna mast, a telephone protector and a cable block are each bonded to one terminal block "
            "at the service. A distant line has its own rod, bonded to the service's rod."
        ),
    )
    picture.extend([*house(), *service(), *lines(), *distant_line()])
    return finished(picture, SLUG)


def house():
    """Return the house, the dish and the antenna on its roof."""
    bowl = drawsvg.Group(id="dish", class_="surrounding")
    bowl.append(drawsvg.Path(class_="edge").M(70, 80).Q(112, 84, 106, 42).Z())
    for points in ((98, 74, 78, 54), (100, 75, 106, 84, 106, ROOF)):
        bowl.append(drawsvg.Lines(*points, close=False, class_="edge"))
    return [
        outline("walls", (12, GROUND), (12, ROOF), (328, ROOF), (328, GROUND), kind="faint"),
        ground_line("earth", 4, 356, GROUND),
        bowl,
        label(message("dish"), 66, 70, "end"),
        pipe("mast", "plain", 8, (250, ROOF), (250, 20)),
        outline("antenna-boom", (214, 42), (290, 42)),
        *(outline(f"antenna-element-{x}", (x, 32), (x, 52)) for x in (218, 236, 268, 286)),
        label(message("antenna\nmast"), 262, 78),
    ]


def service():
    """Return the service, its electrode and the termination joined to it."""
    return [
        conductor("service-neutral", "grounded", (70, 136), (70, 212)),
        label(message("neutral"), 80, 152),
        enclosure("service-enclosure", 22, 190, 132, 106),
        label(message("service"), 106, 184),
        bar("neutral-bar", "grounded", 30, 212, 78),
        conductor("main-bonding-jumper", "bonding", (66, 226), (66, 296)),
        label(message("main\nbonding\njumper"), 78, 250),
        conductor("grounding-electrode-conductor", "electrode", (40, 226), (40, 446)),
        label(message("grounding\nelectrode\nconductor"), 50, 376),
        rod("ground-rod", 40, GROUND - 6, 496),
        clamp("ground-rod-clamp", 40, 450),
        label(message("ground rod"), 54, 488),
        bar("termination", "equipment-grounding", 170, 336, 86),
        conductor("termination-bond", "equipment-grounding", (40, 343), (170, 343)),
        dot(40, 343),
        label(message("bonding conductor"), 50, 332),
        label(message("intersystem\nbonding\ntermination"), 138, 374, kind="strong"),
    ]


def lines():
    """Return the telephone and the cable, and the conductors of all four to the termination."""
    return [
        outline("telephone-line", (318, 190), (356, 190)),
        outline("cable-line", (318, 258), (356, 258)),
        enclosure("telephone-protector", 238, 170, 80, 40),
        label(message("telephone"), 279, 194, "middle"),
        enclosure("cable-block", 238, 238, 80, 40),
        label(message("cable"), 278, 262, "middle"),
        conductor("dish-bond", "equipment-grounding", (106, 100), (106, 128), (180, 128), (180, 336)),
        clamp("dish-clamp", 106, 100, 16),
        conductor("mast-bond", "equipment-grounding", (250, 98), (250, 146), (196, 146), (196, 336)),
        clamp("mast-clamp", 250, 98, 18),
        conductor("telephone-bond", "equipment-grounding", (238, 190), (212, 190), (212, 336)),
        joint("telephone-joint", 238, 190),
        conductor("cable-bond", "equipment-grounding", (238, 258), (228, 258), (228, 336)),
        joint("cable-joint", 238, 258),
    ]


def distant_line():
    """Return the line that enters too far away, with its rod and the jumper."""
    return [
        outline("distant-line", (318, 384), (356, 384)),
        enclosure("distant-block", 238, 364, 80, 40),
        label(message("a line too\nfar away"), 278, 381, "middle"),
        conductor("conductor-to-own-rod", "electrode", (300, 404), (300, 446)),
        joint("distant-joint", 300, 404),
        rod("own-rod", 300, GROUND - 6, 496),
        conductor("rod-jumper", "electrode", (40, 450), (300, 450)),
        clamp("own-rod-clamp", 300, 450),
        label(message("jumper, {size} AWG copper or larger", size=JUMPER), 170, 468, "middle"),
        label(message("its own rod"), 288, 488, "end"),
    ]
