"""A meter and a metal wireway that feed three service disconnects, each with its own main bonding jumper."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.equipment import meter
from site_assets.diagrams.scenery import pointer
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    breaker,
    canvas,
    conductor,
    enclosure,
    finished,
    joint,
    label,
    raceway,
)

SLUG = "meter-and-wireway"
CAPTION = message(
    "Three disconnects in separate enclosures: each has its own main bonding jumper. Meter and wireway stand ahead "
    "of every breaker and are bonded to the neutral. Electrodes are left out."
)
TEXT_ALTERNATIVE = (
    message("From above come the ungrounded (hot) service conductor and the neutral. One hot is drawn for all."),
    message("In the meter enclosure a supply-side bonding jumper bonds the metal to the neutral."),
    message("Both conductors go on into the wireway. There they are tapped for three service disconnects."),
    message("In the wireway another supply-side bonding jumper bonds the metal to the neutral."),
    message("Each disconnect gets a hot conductor and a neutral, even when its loads need no neutral."),
    message(
        "In each disconnect a main bonding jumper connects the neutral bar to the grounding bar and the enclosure."
    ),
    message("Each feeder leaves with its hot conductor and its equipment grounding conductor."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        500,
        message("Meter, wireway and three service disconnects"),
        message(
            "The meter feeds a metal wireway. Three disconnects hang below it. Each has a neutral bar, a grounding "
            "bar and a main bonding jumper between them."
        ),
    )
    picture.extend([*meter_and_wireway(), *(part for left in (8, 128, 248) for part in disconnect(left)), *names()])
    return finished(picture, SLUG)


def meter_and_wireway():
    """Return the meter, the wireway and the jumper in each."""
    return [
        enclosure("meter-enclosure", 130, 34, 112, 92),
        raceway("nipple", "metal", 70, (180, 128), (180, 158)),
        enclosure("wireway", 8, 160, 344, 80),
        conductor("service-hot", "ungrounded", (196, 8), (196, 54), (216, 54), (216, 66)),
        conductor("metered-hot", "ungrounded", (216, 94), (216, 110), (196, 110), (196, 178)),
        meter("meter", 216, 80),
        conductor("service-neutral", "grounded", (164, 8), (164, 206)),
        conductor("hot-bus", "ungrounded", (96, 178), (336, 178)),
        conductor("neutral-bus", "grounded", (32, 206), (272, 206)),
        conductor("meter-jumper", "bonding", (164, 94), (130, 94)),
        joint("meter-neutral-joint", 164, 94),
        joint("meter-joint", 130, 94),
        conductor("wireway-jumper", "bonding", (60, 206), (60, 240)),
        joint("wireway-neutral-joint", 60, 206),
        joint("wireway-joint", 60, 240),
        joint("hot-joint", 196, 178),
        joint("neutral-joint", 164, 206),
        *(joint(f"hot-tap-{x}", x, 178) for x in (96, 216, 336)),
        *(joint(f"neutral-tap-{x}", x, 206) for x in (32, 152, 272)),
    ]


def disconnect(left: float):
    """Return one service disconnect, its left wall at `left`."""
    neutral, hot = left + 24, left + 88
    return [
        enclosure(f"disconnect-{left}", left, 282, 104, 156),
        conductor(f"neutral-{left}", "grounded", (neutral, 206), (neutral, 326)),
        conductor(f"hot-{left}", "ungrounded", (hot, 178), (hot, 316)),
        breaker(f"breaker-{left}", hot, 316),
        conductor(f"load-hot-{left}", "ungrounded", (hot, 356), (hot, 460)),
        bar(f"neutral-bar-{left}", "grounded", left + 8, 326, 42),
        conductor(f"main-bonding-jumper-{left}", "bonding", (left + 18, 340), (left + 18, 388)),
        bar(f"grounding-bar-{left}", "equipment-grounding", left + 8, 388, 58),
        conductor(f"enclosure-bond-{left}", "equipment-grounding", (left + 18, 402), (left + 18, 438)),
        joint(f"enclosure-joint-{left}", left + 18, 438),
        conductor(f"grounding-{left}", "equipment-grounding", (left + 50, 402), (left + 50, 460)),
        *(arrow(f"to-loads-{x}", x, 472, "down") for x in (hot, left + 50)),
    ]


def names():
    """Return the words."""
    return [
        label(message("neutral"), 156, 22, "end"),
        label(message("hot"), 206, 22),
        label(message("meter"), 250, 84),
        label(message("supply-side\nbonding jumper"), 8, 80),
        pointer("meter-leader", (117, 94), (140, 94)),
        pointer("wireway-leader", (60, 102), (60, 224)),
        label(message("wireway"), 222, 197),
        label(message("main\nbonding\njumper"), 35, 354),
        label(message("neutral\nbar"), 279, 299),
        label(message("grounding bar"), 8, 490),
        pointer("grounding-leader", (42, 478), (42, 402)),
        label(message("to the loads"), 128, 490),
    ]
