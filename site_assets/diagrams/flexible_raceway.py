"""A flexible raceway to a motor that moves: the wire inside is the way back."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import clamp, motor, movement, outline, pipe, pointer, swept
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

SLUG = "flexible-raceway"
CAPTION = message(
    "The motor moves and works the flexible raceway loose, so a wire inside is the return path. A drawing only: "
    "never open a real raceway to see."
)
TEXT_ALTERNATIVE = (
    message("Source: the current goes out on the hot conductor and through the breaker in the service panel."),
    message("Hot conductor: it runs through the steel raceway, the box and the flexible raceway to the motor."),
    message("Fault: in the motor the hot conductor touches the metal case."),
    message(
        "Return: the equipment grounding wire inside the flexible raceway carries the current to the box. The "
        "flexible raceway itself is not the path, since it moves."
    ),
    message("Return: the wire goes on through the steel raceway to the grounding bar in the service panel."),
    message("The main bonding jumper carries the current over to the neutral bar."),
    message("Source again: the neutral takes it back. The current is large, and the breaker trips."),
)
HOT_SWEEP = swept((301, 250), (301, 425), (178, 425))
WIRE_SWEEP = swept((285, 250), (285, 409), (178, 409))


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        510,
        message("Flexible raceway to a motor that moves"),
        message(
            "A flexible raceway hangs in a curve between a box and a motor that moves. A wire inside it connects the "
            "motor to the box and to the grounding bar of the service panel."
        ),
    )
    picture.extend([*panel(), *run(), *moving_motor(), *steps()])
    return finished(picture, SLUG)


def panel():
    """Return the source and the service panel."""
    return [
        winding("source-winding", 80, 16, 4),
        label(message("source"), 98, 52),
        conductor("service-hot", "ungrounded", (80, 16), (152, 16), (152, 120)),
        conductor("service-neutral", "grounded", (80, 80), (40, 80), (40, 128)),
        label(message("neutral"), 52, 100),
        enclosure("service-panel", 14, 108, 166, 156),
        label(message("service panel"), 186, 120),
        breaker("breaker", 152, 120),
        bar("neutral-bar", "grounded", 22, 128, 60),
        bar("grounding-bar", "equipment-grounding", 22, 216, 60),
        conductor("main-bonding-jumper", "bonding", (48, 142), (48, 216)),
        label(message("main\nbonding\njumper"), 62, 164, kind="strong"),
        conductor("panel-bond", "equipment-grounding", (32, 230), (32, 264)),
        label(message("grounding bar"), 42, 250),
    ]


def run():
    """Return the raceways, the box, and the conductors in them."""
    return [
        pipe("steel-raceway", "steel", 36, (180, 202), (262, 202)),
        label(message("steel\nraceway"), 221, 236, "middle"),
        enclosure("box", 262, 176, 78, 74),
        label(message("box"), 302, 168, "middle"),
        pipe("flexible-raceway", "flexible", 42, *swept((293, 250), (293, 417), (178, 417))),
        conductor("hot", "ungrounded", (152, 160), (152, 194), (301, 194), *HOT_SWEEP, (140, 425)),
        conductor(
            "equipment-grounding-wire",
            "equipment-grounding",
            (82, 223),
            (120, 223),
            (120, 210),
            (285, 210),
            *WIRE_SWEEP,
            (162, 409),
            (162, 372),
        ),
        conductor("box-bond", "equipment-grounding", (285, 232), (273, 232)),
        dot(285, 232),
        clamp("box-screw", 272, 234, 12),
        label(message("flexible\nraceway"), 350, 400, "end"),
        pointer("to-wire", (242, 316), (280, 316)),
        label(message("the wire inside\nis the path"), 238, 312, "end", "strong"),
    ]


def moving_motor():
    """Return the motor on its rail, with the fault in it."""
    return [
        enclosure("motor-case", 58, 372, 120, 90),
        motor("motor", 112, 420),
        conductor("fault-wire", "ungrounded", (152, 425), (152, 447)),
        fault("fault", 152, 447, 26),
        dot(162, 372),
        outline("rail", (30, 474), (212, 474)),
        outline("left-foot", (74, 462), (74, 474)),
        outline("right-foot", (162, 462), (162, 474)),
        movement("movement", (70, 364), (148, 364)),
        label(message("the motor moves"), 46, 346),
        label(message("motor"), 118, 494, "middle"),
    ]


def steps():
    """Return the marks and stretches of the way round."""
    return [
        path_step(1, (80, 16), (152, 16), (152, 160)),
        path_step(2, (152, 160), (152, 194), (301, 194), *HOT_SWEEP, (152, 425)),
        path_step(3, (152, 425), (152, 447), (178, 441)),
        path_step(4, (178, 441), (178, 372), (162, 372), (162, 409), *reversed(WIRE_SWEEP)),
        path_step(5, (285, 250), (285, 210), (120, 210), (120, 223), (82, 223)),
        path_step(6, (48, 216), (48, 142)),
        path_step(7, (40, 128), (40, 80), (80, 80)),
        step_mark(1, 118, 16),
        step_mark(2, 220, 194),
        step_mark(3, 196, 452),
        step_mark(4, 254, 364),
        step_mark(5, 134, 210),
        step_mark(6, 48, 184),
        step_mark(7, 40, 98),
    ]
