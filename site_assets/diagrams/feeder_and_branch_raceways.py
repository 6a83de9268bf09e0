"""Steel raceways from the service panel to a second panel and on to a box, as a fault's way back."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import never, pipe, pointer, sleeve
from site_assets.diagrams.symbols import (
    bar,
    breaker,
    canvas,
    conductor,
    enclosure,
    fault,
    finished,
    label,
    path_step,
    step_mark,
    winding,
)

SLUG = "feeder-and-branch-raceways"
CAPTION = message(
    "Every coupling and every connector is a link in the return path; one loose one breaks it. A drawing only: never "
    "loosen a real fitting to see."
)
TEXT_ALTERNATIVE = (
    message("Source: the current goes out on the hot conductor, through the feeder breaker in the service panel."),
    message("Hot conductor: it goes on to the second panel, through the branch breaker there, and to the box."),
    message("Fault: inside the box the hot conductor touches the metal."),
    message(
        "Return: the branch raceway carries the current over its connectors and its coupling to the second panel. "
        "There the neutral bar is not bonded to the metal."
    ),
    message("Return: the feeder raceway carries it over its coupling and connectors to the service panel."),
    message("The main bonding jumper carries it over to the neutral bar."),
    message("Source again: the neutral takes it back. The current is large, and the branch breaker trips."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        520,
        message("Steel raceways from panel to panel to box"),
        message(
            "A feeder raceway connects the service panel to a second panel, and a branch raceway connects that panel "
            "to a box. A fault in the box goes back over the raceways and their fittings to the main bonding jumper."
        ),
    )
    picture.extend([*service_panel(), *second_panel(), *branch(), *steps()])
    return finished(picture, SLUG)


def service_panel():
    """Return the source and the service panel."""
    return [
        winding("source-winding", 84, 14, 4),
        label(message("source"), 102, 50),
        conductor("service-hot", "ungrounded", (84, 14), (172, 14), (172, 116)),
        conductor("service-neutral", "grounded", (84, 78), (40, 78), (40, 124)),
        label(message("neutral"), 54, 98),
        enclosure("service-panel", 14, 104, 178, 146),
        label(message("service panel"), 200, 118),
        breaker("feeder-breaker", 172, 116),
        bar("service-neutral-bar", "grounded", 22, 124, 76),
        bar("service-grounding-bar", "equipment-grounding", 22, 212, 60),
        conductor("main-bonding-jumper", "bonding", (48, 138), (48, 212)),
        label(message("main\nbonding\njumper"), 60, 162, kind="strong"),
        conductor("service-panel-bond", "equipment-grounding", (32, 226), (32, 250)),
    ]


def second_panel():
    """Return the feeder raceway and the second panel, where neutral and metal stay apart."""
    return [
        pipe("feeder-raceway", "steel", 44, (164, 250), (164, 330)),
        *sleeve("feeder-coupling", 164, 290, 44),
        *sleeve("feeder-top-connector", 164, 256, 44),
        *sleeve("feeder-bottom-connector", 164, 324, 44),
        label(message("feeder\nraceway"), 128, 284, "end"),
        pointer("to-coupling", (206, 290), (194, 290)),
        label(message("coupling"), 210, 294),
        enclosure("second-panel", 14, 330, 178, 156),
        label(message("second panel"), 14, 502),
        conductor("feeder-hot", "ungrounded", (172, 156), (172, 346)),
        conductor("feeder-neutral", "grounded", (98, 131), (152, 131), (152, 356), (98, 356)),
        breaker("branch-breaker", 172, 346),
        bar("second-neutral-bar", "grounded", 22, 349, 76),
        bar("second-grounding-bar", "equipment-grounding", 22, 448, 60),
        conductor("second-panel-bond", "equipment-grounding", (32, 462), (32, 486)),
        never("no-joint", 48, 405, (48, 367), (48, 444)),
        label(message("not bonded\nhere"), 64, 400, kind="warning"),
    ]


def branch():
    """Return the branch raceway and the box with the fault."""
    return [
        pipe("branch-raceway", "steel", 30, (192, 420), (286, 420)),
        *sleeve("branch-coupling", 240, 420, 30, level=True),
        *sleeve("branch-left-connector", 201, 420, 30, level=True),
        *sleeve("branch-right-connector", 277, 420, 30, level=True),
        pointer("to-connector", (206, 378), (203, 398)),
        label(message("connector"), 202, 372),
        label(message("branch\nraceway"), 240, 458, "middle"),
        enclosure("box", 286, 384, 64, 68),
        label(message("box"), 318, 376, "middle"),
        conductor("branch-hot", "ungrounded", (172, 386), (172, 420), (310, 420)),
        fault("fault", 310, 420, 39),
    ]


def steps():
    """Return the marks and stretches of the way round."""
    return [
        path_step(1, (84, 14), (172, 14), (172, 156)),
        path_step(2, (172, 156), (172, 420), (310, 420)),
        path_step(3, (310, 420), (350, 414)),
        path_step(4, (350, 414), (350, 452), (286, 452), (286, 434), (192, 434), (192, 330)),
        path_step(5, (192, 330), (185, 330), (185, 250), (32, 250), (32, 226)),
        path_step(6, (48, 212), (48, 138)),
        path_step(7, (40, 124), (40, 78), (84, 78)),
        step_mark(1, 136, 14),
        step_mark(2, 172, 310),
        step_mark(3, 328, 440),
        step_mark(4, 222, 434),
        step_mark(5, 186, 272),
        step_mark(6, 48, 196),
        step_mark(7, 40, 92),
    ]
