"""A panel fed from the service: the neutral bar apart from metal, the grounding bar on the metal."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import never
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    breaker,
    canvas,
    conductor,
    enclosure,
    finished,
    insulator,
    joint,
    label,
    load,
    screw,
)

SLUG = "panel"
CAPTION = message(
    "In a panel downstream of the service, the neutral bar is isolated from the metal. The bonding screw stays out. "
    "A drawing only: never take out a real screw on a live panel."
)
TEXT_ALTERNATIVE = (
    message(
        "The feeder from the service brings ungrounded (hot) conductors, a neutral and an equipment grounding "
        "conductor."
    ),
    message(
        "The neutral terminates on the neutral bar. The bar is on insulators, isolated from the metal of the panel."
    ),
    message("The bonding screw that came with the panel is not installed. It would bond the neutral bar to the metal."),
    message(
        "The equipment grounding conductor terminates on the grounding bar. This bar is fastened to the metal of the "
        "panel."
    ),
    message("A branch circuit leaves with its hot conductor from a breaker and its neutral from the neutral bar."),
    message("Its equipment grounding conductor starts at the grounding bar. The two kinds of bars are never mixed."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        470,
        message("A panel fed from the service"),
        message(
            "The neutral bar is on insulators and its bonding screw is crossed out. The grounding bar is connected "
            "to the enclosure and to the equipment grounding conductor of the feeder."
        ),
    )
    picture.extend([*feeder(), *bars(), *branches()])
    return finished(picture, SLUG)


def feeder():
    """Return the feeder and the panel."""
    return [
        label(message("feeder from the service"), 186, 20, "middle"),
        enclosure("panel", 20, 70, 320, 290),
        label(message("panel"), 30, 90),
        conductor("feeder-grounding-conductor", "equipment-grounding", (86, 30), (86, 250)),
        conductor("feeder-neutral", "grounded", (176, 30), (176, 134)),
        conductor("feeder-hot-a", "ungrounded", (276, 30), (276, 196)),
        conductor("feeder-hot-b", "ungrounded", (312, 30), (312, 196)),
        label(message("equipment\ngrounding\nconductor"), 78, 34, "end"),
        label(message("neutral"), 168, 50, "end"),
        label(message("hot"), 268, 50, "end"),
    ]


def bars():
    """Return both bars, the insulators of the one and the screw that stays out."""
    return [
        insulator("insulator-1", 136, 148),
        insulator("insulator-2", 216, 148),
        bar("neutral-bar", "grounded", 120, 134, 132),
        label(message("neutral bar"), 186, 126),
        screw("bonding-screw", 180, 172),
        never("no-screw", 180, 172),
        label(message("bonding screw:\nleave it out"), 124, 202, kind="strong"),
        bar("grounding-bar", "equipment-grounding", 44, 250, 120),
        label(message("grounding\nbar"), 62, 282),
        conductor("panel-bond", "equipment-grounding", (54, 264), (54, 360)),
        joint("panel-joint", 54, 360),
        label(message("bonded to\nthe metal"), 62, 334),
    ]


def branches():
    """Return the breakers and a branch circuit with a load."""
    return [
        *(breaker(f"breaker-{x}", x, 196) for x in (276, 312)),
        conductor("other-hot", "ungrounded", (312, 236), (312, 376)),
        arrow("other-arrow", 312, 388, "down"),
        conductor("branch-hot", "ungrounded", (276, 236), (276, 420)),
        conductor("branch-neutral", "grounded", (244, 148), (244, 420)),
        conductor("branch-grounding-conductor", "equipment-grounding", (152, 264), (152, 420), (180, 420)),
        enclosure("machine", 180, 392, 110, 56),
        load("load", (244, 420), (276, 420)),
        joint("machine-joint", 180, 420),
        label(message("machine"), 198, 464),
        label(message("branch\ncircuit"), 92, 392),
    ]
