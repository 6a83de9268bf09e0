"""An equipment bonding jumper along a flexible raceway, and a fault's way round."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import pointer
from site_assets.diagrams.symbols import (
    bar,
    breaker,
    canvas,
    conductor,
    enclosure,
    fault,
    finished,
    fitting,
    joint,
    label,
    path_step,
    raceway,
    step_mark,
)

SLUG = "equipment-bonding-jumper"
CAPTION = message(
    "The steel raceway is the grounding path. The flexible piece interrupts it, so a jumper bridges across. A "
    "drawing only: never lift a real jumper to see."
)
TEXT_ALTERNATIVE = (
    message("From the source, current comes on the ungrounded (hot) conductor through the breaker to the machine."),
    message("Fault: inside the machine the hot conductor touches the metal case."),
    message(
        "The equipment bonding jumper carries the current from the case past the flexible raceway. Without it, the "
        "current must use the flexible metal, which may be too poor a path."
    ),
    message("The steel raceway carries it on to the panel. It gets to the panel enclosure through the tight fitting."),
    message("The enclosure and the grounding bar pass it to the equipment grounding conductor of the feeder."),
    message(
        "That conductor leads to the service, to the main bonding jumper, and so back to the source. The breaker trips."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        500,
        message("Equipment bonding jumper along a flexible raceway"),
        message(
            "A steel raceway leaves a panel and ends in a flexible piece at a machine. The jumper connects the "
            "fitting at the end of the steel to the case of the machine, outside the flexible piece."
        ),
    )
    picture.extend([*panel(), *run(), *fault_way()])
    return finished(picture, SLUG)


def panel():
    """Return the panel, fed from the service, its neutral bar apart from metal."""
    return [
        label(message("from the\nservice"), 232, 20),
        enclosure("panel", 24, 44, 224, 156),
        label(message("panel"), 258, 66),
        conductor("feeder-equipment-grounding-conductor", "equipment-grounding", (72, 6), (72, 146)),
        conductor("feeder-neutral", "grounded", (136, 6), (136, 84)),
        bar("neutral-bar", "grounded", 116, 84, 52),
        label(message("neutral bar"), 92, 116),
        conductor("feeder-hot", "ungrounded", (210, 6), (210, 66)),
        breaker("breaker", 210, 66),
        label(message("breaker"), 260, 92),
        pointer("breaker-leader", (254, 88), (214, 88)),
        bar("grounding-bar", "equipment-grounding", 40, 146, 64),
        label(message("grounding\nbar"), 110, 152),
        conductor("panel-bond", "equipment-grounding", (54, 160), (54, 200)),
        joint("panel-joint", 54, 200),
    ]


def run():
    """Return the raceway, its flexible piece with the jumper, and the machine."""
    return [
        raceway("steel-raceway", "metal", 40, (210, 200), (210, 288)),
        raceway("flexible-raceway", "flexible", 36, (210, 302), (210, 392)),
        fitting("panel-fitting", 184, 194, 52),
        fitting("upper-fitting", 184, 288, 52),
        fitting("lower-fitting", 184, 390, 52),
        label(message("steel raceway:\nthe grounding path"), 180, 238, "end"),
        label(message("flexible\nraceway"), 178, 344, "end"),
        enclosure("machine", 150, 402, 176, 74),
        conductor("hot-conductor", "ungrounded", (210, 106), (210, 440), (290, 440)),
        conductor("equipment-bonding-jumper", "bonding", (236, 295), (262, 295), (262, 402)),
        joint("jumper-joint", 262, 402),
        label(message("equipment\nbonding\njumper"), 274, 330, kind="strong"),
        fault("fault", 290, 440, 36),
        label(message("machine"), 164, 466),
        label(message("hot conductor"), 254, 232),
        pointer("hot-leader", (252, 228), (212, 228)),
    ]


def fault_way():
    """Return the numbered way of the fault."""
    return [
        path_step(1, (210, 6), (210, 440), (290, 440)),
        path_step(2, (290, 440), (326, 434), (326, 402), (262, 402)),
        path_step(3, (262, 402), (262, 295), (236, 295)),
        path_step(4, (236, 295), (232, 288), (232, 200)),
        path_step(5, (232, 200), (54, 200), (54, 153), (72, 153)),
        path_step(6, (72, 153), (72, 6)),
        step_mark(1, 210, 28),
        step_mark(2, 342, 440),
        step_mark(3, 262, 372),
        step_mark(4, 246, 262),
        step_mark(5, 130, 200),
        step_mark(6, 72, 28),
    ]
