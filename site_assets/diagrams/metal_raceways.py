"""A fault's way back over metal raceways: through the flexible piece, the box and the steel to the panel."""

from __future__ import annotations

from calc.words import say
from site_assets.diagrams.surroundings import clamp, pipe
from site_assets.diagrams.symbols import (
    bar,
    breaker,
    canvas,
    conductor,
    dot,
    enclosure,
    fault,
    finished,
    label,
    path_step,
    step_mark,
    winding,
)

SLUG = "metal-raceways"
CAPTION = say(
    "The steel raceway itself is the way back. Where it turns flexible, a wire inside or a jumper outside takes over. "
    "A drawing only: never pull a real raceway apart to see."
)
TWIN = (
    say("Source: the current goes out on the hot conductor and through the breaker in the service panel."),
    say("Hot conductor: it runs inside the steel raceway, the box and the flexible raceway to the machine."),
    say("Fault: inside the machine the hot conductor touches the metal case."),
    say(
        "Return: the wire inside the flexible raceway carries the current from the machine to the box. A jumper outside "
        "can do it instead."
    ),
    say("Return: the steel raceway and its fittings carry it from the box to the metal of the service panel."),
    say("The main bonding jumper carries it over to the neutral bar."),
    say("Source again: the neutral takes it back. The current is large, and the breaker opens."),
)


def svg() -> str:
    """Give the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        500,
        say("Metal raceways from a panel to a machine"),
        say(
            "A steel raceway runs from the service panel to a box, and a flexible raceway from the box to a machine. A "
            "fault in the machine goes back over a wire inside the flexible raceway and over the steel."
        ),
    )
    picture.extend([*panel(), *run(), *steps()])
    return finished(picture, SLUG)


def panel():
    """Give the source and the service panel."""
    return [
        winding("source-winding", 80, 16, 4),
        label(say("source"), 98, 52),
        conductor("service-hot", "ungrounded", (80, 16), (152, 16), (152, 128)),
        conductor("service-neutral", "grounded", (80, 80), (40, 80), (40, 146)),
        label(say("neutral"), 52, 100),
        enclosure("service-panel", 14, 112, 166, 168),
        label(say("service panel"), 186, 124),
        breaker("breaker", 152, 128),
        bar("neutral-bar", "grounded", 22, 146, 60),
        bar("grounding-bar", "equipment-grounding", 22, 226, 60),
        conductor("main-bonding-jumper", "bonding", (48, 160), (48, 226)),
        label(say("main\nbonding\njumper"), 62, 182, kind="strong"),
        conductor("panel-bond", "equipment-grounding", (32, 240), (32, 280)),
        label(say("grounding\nbar"), 90, 236),
    ]


def run():
    """Give the raceways, the box and the machine."""
    return [
        pipe("steel-raceway", "steel", 28, (180, 210), (268, 210)),
        label(say("steel\nraceway"), 224, 244, "middle"),
        enclosure("box", 268, 176, 66, 70),
        label(say("box"), 300, 168, "middle"),
        pipe("flexible-raceway", "flexible", 34, (300, 246), (300, 400)),
        label(say("flexible\nraceway"), 272, 300, "end"),
        conductor("hot", "ungrounded", (152, 168), (152, 210), (292, 210), (292, 424), (260, 424)),
        fault("fault", 260, 424, -38),
        enclosure("machine", 222, 400, 112, 72),
        label(say("machine"), 246, 490),
        conductor("wire-inside", "equipment-grounding", (318, 234), (307, 234), (307, 430), (334, 430)),
        dot(334, 430),
        clamp("box-screw", 318, 234, 12),
        label(say("wire inside"), 272, 348, "end"),
        conductor("jumper-outside", "bonding", (334, 220), (346, 220), (346, 450), (334, 450)),
        label(say("or jumper outside"), 272, 378, "end"),
    ]


def steps():
    """Give the marks and stretches of the way round."""
    return [
        path_step(1, (80, 16), (152, 16), (152, 168)),
        path_step(2, (152, 168), (152, 210), (292, 210), (292, 424), (260, 424)),
        path_step(3, (260, 424), (222, 418)),
        path_step(4, (222, 418), (222, 472), (334, 472), (334, 430), (307, 430), (307, 234), (318, 234)),
        path_step(5, (318, 234), (318, 246), (268, 246), (268, 223), (180, 223), (180, 280), (32, 280), (32, 240)),
        path_step(6, (48, 226), (48, 160)),
        path_step(7, (40, 146), (40, 80), (80, 80)),
        step_mark(1, 118, 16),
        step_mark(2, 214, 210),
        step_mark(3, 246, 450),
        step_mark(4, 307, 330),
        step_mark(5, 112, 280),
        step_mark(6, 48, 194),
        step_mark(7, 40, 96),
    ]
