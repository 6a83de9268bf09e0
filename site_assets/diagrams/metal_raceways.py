"""A fault's way back over metal raceways: through the flexible piece, the box and the steel to the panel."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import clamp, pipe, pointer
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
CAPTION = message(
    "The steel raceway itself is the return path. Where a flexible piece is not permitted to be, a wire inside or a "
    "jumper outside takes over. A drawing only: never pull a real raceway apart to see."
)
TEXT_ALTERNATIVE = (
    message("Source: the current goes out on the hot conductor and through the breaker in the service panel."),
    message("Hot conductor: it runs inside the steel raceway, the box and the flexible raceway to the machine."),
    message("Fault: inside the machine the hot conductor touches the metal case."),
    message(
        "Return: the wire inside the flexible raceway carries the current from the machine to the box. A jumper "
        "outside can do it instead."
    ),
    message("Return: the steel raceway and its fittings carry it from the box to the metal of the service panel."),
    message("The main bonding jumper carries it over to the neutral bar."),
    message("Source again: the neutral takes it back. The current is large, and the breaker trips."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        500,
        message("Metal raceways from a panel to a machine"),
        message(
            "A steel raceway runs from the service panel to a box, and a flexible raceway from the box to a machine. A "
            "fault in the machine goes back on a wire inside the flexible raceway and on the steel."
        ),
    )
    picture.extend([*panel(), *run(), *steps()])
    return finished(picture, SLUG)


def panel():
    """Return the source and the service panel."""
    return [
        winding("source-winding", 80, 16, 4),
        label(message("source"), 70, 50, "end"),
        conductor("service-hot", "ungrounded", (80, 16), (136, 16), (136, 128)),
        conductor("service-neutral", "grounded", (80, 80), (40, 80), (40, 146)),
        label(message("neutral"), 52, 100),
        enclosure("service-panel", 14, 112, 142, 168),
        label(message("service panel"), 162, 124),
        breaker("breaker", 136, 128),
        bar("neutral-bar", "grounded", 22, 146, 60),
        bar("grounding-bar", "equipment-grounding", 22, 226, 60),
        conductor("main-bonding-jumper", "bonding", (48, 160), (48, 226)),
        label(message("main\nbonding\njumper"), 62, 182, kind="strong"),
        conductor("panel-bond", "equipment-grounding", (32, 240), (32, 280)),
        label(message("grounding bar"), 42, 262),
    ]


def run():
    """Return the raceways, the box and the machine."""
    return [
        pipe("steel-raceway", "steel", 28, (156, 210), (222, 210)),
        label(message("steel\nraceway"), 189, 244, "middle"),
        enclosure("box", 222, 176, 66, 70),
        label(message("box"), 255, 168, "middle"),
        pipe("flexible-raceway", "flexible", 34, (255, 246), (255, 400)),
        label(message("flexible\nraceway"), 230, 296, "end"),
        conductor("hot", "ungrounded", (136, 168), (136, 210), (262, 210), (262, 432)),
        fault("fault", 262, 432, 26),
        enclosure("machine", 188, 400, 100, 72),
        label(message("machine"), 238, 490, "middle"),
        conductor("wire-inside", "equipment-grounding", (234, 234), (248, 234), (248, 424), (212, 424), (212, 400)),
        dot(212, 400),
        clamp("box-screw", 232, 234, 12),
        pointer("to-wire", (214, 348), (246, 348)),
        label(message("wire inside"), 210, 352, "end"),
        conductor("jumper-outside", "bonding", (288, 228), (297, 228), (297, 450), (288, 450)),
        label(message("or a\njumper\noutside"), 305, 334),
    ]


def steps():
    """Return the marks and stretches of the way round."""
    return [
        path_step(1, (80, 16), (136, 16), (136, 168)),
        path_step(2, (136, 168), (136, 210), (262, 210), (262, 432)),
        path_step(3, (262, 432), (288, 426)),
        path_step(4, (288, 426), (288, 400), (212, 400), (212, 424), (248, 424), (248, 234), (232, 234)),
        path_step(5, (232, 234), (222, 234), (222, 223), (156, 223), (156, 280), (32, 280), (32, 240)),
        path_step(6, (48, 226), (48, 160)),
        path_step(7, (40, 146), (40, 80), (80, 80)),
        step_mark(1, 112, 16),
        step_mark(2, 178, 210),
        step_mark(3, 268, 454),
        step_mark(4, 248, 378),
        step_mark(5, 104, 280),
        step_mark(6, 48, 194),
        step_mark(7, 40, 96),
    ]
