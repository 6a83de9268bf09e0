"""The service disconnect as the line between supply side and load side, and which names stand on which side."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import pointer
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    border,
    breaker,
    bushing,
    canvas,
    conductor,
    enclosure,
    finished,
    joint,
    label,
    raceway,
)

SLUG = "service-disconnect"
CAPTION = message(
    "The line runs at the first overcurrent device. Above it, parts are sized from the supply conductors. Below it, "
    "they are sized from the breaker ahead. Neutral and metal are bonded only above."
)
TEXT_ALTERNATIVE = (
    message("From above come the service conductors, ungrounded (hot) and neutral, in a metal raceway."),
    message("On the supply side a supply-side bonding jumper connects the bushing of that raceway to the enclosure."),
    message(
        "In the enclosure the neutral terminates on the neutral bar. The main bonding jumper connects it to the "
        "grounding bar."
    ),
    message("The hot conductor goes through the service disconnect, here a breaker: the first overcurrent device."),
    message("The line is just below the breaker. From here down is the load side."),
    message("The feeder leaves with a hot conductor, a neutral and an equipment grounding conductor."),
    message("From here on, neutral and metal stay isolated."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        470,
        message("Service disconnect: the line between supply side and load side"),
        message(
            "An imaginary line crosses the enclosure just below the breaker. The supply-side bonding jumper and the "
            "main bonding jumper are above it. The equipment grounding conductor leaves below it."
        ),
    )
    picture.extend([*supply_side(), *load_side()])
    return finished(picture, SLUG)


def supply_side():
    """Return the service raceway, the enclosure and what stands ahead of the breaker."""
    return [
        label(message("supply side"), 236, 24, kind="strong"),
        label(message("sized from the\nsupply conductors"), 236, 44),
        raceway("service-raceway", "metal", 110, (80, 32), (80, 128)),
        enclosure("service-disconnect", 14, 128, 212, 238),
        bushing("bonding-bushing", 20, 124, 120),
        conductor("service-hot", "ungrounded", (50, 14), (50, 226)),
        conductor("service-neutral", "grounded", (110, 14), (110, 196)),
        conductor("supply-side-bonding-jumper", "bonding", (140, 146), (226, 146)),
        conductor("bushing-lug", "bonding", (135, 132), (135, 151)),
        joint("enclosure-lug", 226, 146),
        label(message("service\nconductors"), 236, 92),
        pointer("service-leader", (232, 92), (114, 92)),
        label(message("supply-side\nbonding jumper"), 236, 148),
        bar("neutral-bar", "grounded", 88, 196, 128),
        label(message("neutral bar"), 116, 186),
        conductor("main-bonding-jumper", "bonding", (194, 210), (194, 246)),
        label(message("main bonding\njumper"), 236, 222),
        pointer("jumper-leader", (232, 226), (202, 226)),
        label(message("first\novercurrent\ndevice"), 60, 232),
        breaker("service-breaker", 50, 220),
    ]


def load_side():
    """Return the line, and what leaves beyond the breaker."""
    return [
        border("line-between", (4, 278), (356, 278)),
        bar("grounding-bar", "equipment-grounding", 160, 246, 56),
        conductor("enclosure-bond", "equipment-grounding", (170, 260), (170, 366)),
        joint("enclosure-joint", 170, 366),
        conductor("feeder-hot", "ungrounded", (50, 260), (50, 410)),
        conductor("feeder-neutral", "grounded", (150, 210), (150, 410)),
        conductor("equipment-grounding-conductor", "equipment-grounding", (204, 260), (204, 410)),
        *(arrow(f"feeder-{x}", x, 424, "down") for x in (50, 150, 204)),
        label(message("hot"), 50, 446, "middle"),
        label(message("neutral"), 150, 446, "middle"),
        label(message("to the loads"), 56, 464),
        label(message("service\ndisconnect"), 62, 302),
        label(message("load side"), 236, 302, kind="strong"),
        label(message("sized from the\nbreaker ahead"), 236, 322),
        label(message("equipment\ngrounding\nconductor"), 236, 372),
        pointer("grounding-leader", (232, 384), (208, 384)),
    ]
