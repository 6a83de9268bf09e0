"""A whole service: mast, meter, disconnect, and what is bonded to it."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.equipment import meter
from site_assets.diagrams.scenery import clamp, ground_line, pointer, rod
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

SLUG = "service"
CAPTION = message(
    "One service from the mast to the electrodes. Neutral and metal meet at the main bonding jumper; water pipe, rod "
    "and cable systems are tied to the same point."
)
TEXT_ALTERNATIVE = (
    message(
        "A metal mast brings the ungrounded (hot) conductor and the neutral to the meter. One hot is drawn for both."
    ),
    message("The hot conductor goes through the meter. The neutral goes past it and is bonded to the meter enclosure."),
    message("Both go on to the service disconnect. The neutral terminates on its neutral bar."),
    message("The main bonding jumper connects the neutral bar to the grounding bar and the enclosure."),
    message(
        "The hot conductor leaves through the breaker, and the equipment grounding conductor from the grounding bar."
    ),
    message(
        "From the neutral bar a grounding electrode conductor goes to the ground rod, and one to the metal water pipe."
    ),
    message(
        "The intersystem bonding termination is connected to the electrode conductor. Phone, cable and antenna bond "
        "there."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        594,
        message("A whole service with its bonding and grounding"),
        message(
            "From top to bottom: mast, meter, service disconnect with main bonding jumper, grounding electrode "
            "conductors to a rod and a water pipe, and the intersystem bonding termination."
        ),
    )
    picture.extend([*mast_and_meter(), *disconnect(), *electrodes(), *other_systems()])
    return finished(picture, SLUG)


def mast_and_meter():
    """Return the mast and the meter."""
    return [
        raceway("mast", "metal", 44, (84, 24), (84, 92)),
        enclosure("meter-enclosure", 40, 92, 112, 86),
        raceway("meter-nipple", "metal", 44, (84, 178), (84, 222)),
        label(message("mast"), 116, 52),
        conductor("service-hot", "ungrounded", (96, 8), (96, 120), (124, 120)),
        conductor("metered-hot", "ungrounded", (124, 148), (124, 160), (96, 160), (96, 250), (172, 250), (172, 262)),
        meter("meter", 124, 134),
        conductor("service-neutral", "grounded", (72, 8), (72, 300)),
        conductor("meter-bond", "equipment-grounding", (70, 150), (40, 150)),
        joint("meter-neutral-joint", 72, 150),
        joint("meter-joint", 40, 150),
        label(message("meter"), 160, 140),
        label(message("hot"), 102, 20),
        label(message("neutral"), 60, 20, "end"),
    ]


def disconnect():
    """Return the service disconnect with its main bonding jumper."""
    return [
        enclosure("service-disconnect", 24, 222, 184, 190),
        label(message("service\ndisconnect"), 216, 240),
        breaker("service-breaker", 172, 262),
        bar("neutral-bar", "grounded", 38, 300, 96),
        label(message("neutral\nbar"), 82, 278),
        conductor("main-bonding-jumper", "bonding", (112, 314), (112, 362)),
        label(message("main bonding\njumper"), 240, 314),
        pointer("jumper-leader", (236, 324), (120, 324)),
        bar("grounding-bar", "equipment-grounding", 96, 362, 60),
        conductor("enclosure-bond", "equipment-grounding", (108, 376), (108, 412)),
        joint("enclosure-joint", 108, 412),
        conductor("load-hot", "ungrounded", (172, 302), (172, 430)),
        conductor("equipment-grounding-conductor", "equipment-grounding", (140, 376), (140, 430)),
        *(arrow(f"to-loads-{x}", x, 442, "down") for x in (140, 172)),
        label(message("to the loads"), 112, 458),
    ]


def electrodes():
    """Return the rod, the water pipe and the conductors to them."""
    return [
        conductor("conductor-to-rod", "electrode", (48, 314), (48, 526)),
        ground_line("earth-surface", 6, 354, 534),
        rod("ground-rod", 48, 524, 578),
        label(message("ground rod"), 60, 562),
        raceway("water-pipe", "metal", 22, (164, 574), (324, 574), (324, 492)),
        conductor("conductor-to-pipe", "electrode", (64, 314), (64, 486), (292, 486), (292, 510), (313, 510)),
        clamp("pipe-clamp", 312, 510),
        label(message("metal water pipe"), 166, 557),
        label(message("grounding electrode\nconductors"), 74, 506),
    ]


def other_systems():
    """Return the intersystem bonding termination."""
    return [
        bar("intersystem-termination", "equipment-grounding", 246, 408, 62),
        conductor("termination-conductor", "equipment-grounding", (256, 422), (256, 486)),
        joint("termination-joint", 256, 486),
        conductor("phone-bond", "equipment-grounding", (276, 408), (276, 384), (340, 384)),
        conductor("cable-bond", "equipment-grounding", (298, 408), (298, 396), (340, 396)),
        label(message("to phone and\ncable systems"), 250, 358),
        label(message("intersystem\nbonding\ntermination"), 268, 440),
    ]
