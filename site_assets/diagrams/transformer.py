"""A transformer indoors: system bonding jumper, electrode conductor to building steel, and the panel it feeds."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.equipment import steel_column, transformer
from site_assets.diagrams.scenery import never
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    breaker,
    canvas,
    conductor,
    earth,
    enclosure,
    finished,
    joint,
    label,
    raceway,
)

SLUG = "transformer"
CAPTION = message(
    "Neutral and metal are bonded once, in the transformer. From the same place the grounding electrode conductor "
    "goes to building steel, and the supply-side bonding jumper to the panel."
)
TEXT_ALTERNATIVE = (
    message("A feeder brings two ungrounded (hot) conductors to the primary winding of the transformer."),
    message("The equipment grounding conductor of this feeder terminates on the transformer enclosure."),
    message(
        "The secondary winding has a hot conductor at its top and the new neutral at its bottom. One hot is drawn "
        "for all."
    ),
    message("The system bonding jumper connects the neutral bar to the grounding bar and so to the enclosure."),
    message("From the neutral bar the grounding electrode conductor goes to the steel of the building."),
    message("The metal water pipe of the area served is bonded to the same steel."),
    message("The supply-side bonding jumper goes with the conductors to the grounding bar of the panel."),
    message(
        "In the panel the neutral bar stays isolated from metal. Its main breaker is the first overcurrent device."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        580,
        message("A transformer indoors with its bonding and grounding"),
        message(
            "The transformer is to the right of a steel column of the building, the panel it feeds is below. The "
            "system bonding jumper is in the transformer. The panel keeps neutral and metal isolated."
        ),
    )
    picture.extend([*transformer_parts(), *electrodes(), *panel()])
    return finished(picture, SLUG)


def transformer_parts():
    """Return the transformer with its bars and jumper."""
    return [
        label(message("feeder"), 176, 24),
        enclosure("transformer-enclosure", 112, 48, 234, 214),
        label(message("transformer"), 214, 68),
        transformer("transformer", 166, 80, 4),
        conductor("primary-1", "ungrounded", (166, 8), (166, 80)),
        conductor("primary-2", "ungrounded", (142, 8), (142, 144), (166, 144)),
        conductor("feeder-grounding-conductor", "equipment-grounding", (122, 8), (122, 48)),
        joint("feeder-joint", 122, 48),
        label(message("equipment\ngrounding\nconductor"), 106, 18, "end"),
        conductor("hot-conductor", "ungrounded", (200, 80), (324, 80), (324, 346)),
        conductor("neutral-from-winding", "grounded", (200, 144), (200, 160)),
        bar("neutral-bar", "grounded", 186, 160, 70),
        label(message("neutral bar"), 212, 152),
        conductor("neutral", "grounded", (256, 167), (302, 167), (302, 424)),
        conductor("system-bonding-jumper", "bonding", (206, 174), (206, 226)),
        label(message("system\nbonding\njumper"), 218, 190, kind="strong"),
        bar("grounding-bar", "equipment-grounding", 180, 226, 76),
        conductor("enclosure-bond", "equipment-grounding", (190, 240), (190, 262)),
        joint("enclosure-joint", 190, 262),
    ]


def electrodes():
    """Return the building steel, the conductor to it and the bonded water pipe."""
    return [
        steel_column("building-steel", 22, 90, 552),
        earth("steel-earth", 22, 552),
        label(message("building\nsteel"), 40, 112),
        conductor("grounding-electrode-conductor", "electrode", (186, 167), (34, 167)),
        joint("steel-joint", 34, 167),
        label(message("grounding\nelectrode\nconductor"), 38, 190),
        raceway("water-pipe", "metal", 24, (58, 540), (346, 540)),
        conductor("water-pipe-bond", "equipment-grounding", (34, 494), (84, 494), (84, 528)),
        joint("water-steel-joint", 34, 494),
        joint("water-pipe-joint", 84, 528),
        label(message("metal water pipe"), 96, 572),
        label(message("pipe bond"), 42, 486),
    ]


def panel():
    """Return the panel fed by the transformer."""
    return [
        conductor("supply-side-bonding-jumper", "bonding", (236, 240), (236, 424)),
        label(message("supply-side\nbonding jumper"), 226, 288, "end"),
        enclosure("panel", 150, 332, 196, 142),
        label(message("panel"), 160, 352),
        breaker("main-breaker", 324, 346),
        label(message("main\nbreaker"), 296, 366, "end"),
        bar("panel-neutral-bar", "grounded", 276, 424, 36),
        bar("panel-grounding-bar", "equipment-grounding", 168, 424, 76),
        never("neutral-link-not-made", 261, 431, (246, 431), (276, 431)),
        label(message("not bonded"), 234, 462),
        conductor("panel-bond", "equipment-grounding", (180, 438), (180, 474)),
        joint("panel-joint", 180, 474),
        conductor("load-grounding-conductor", "equipment-grounding", (216, 438), (216, 494)),
        conductor("load-hot", "ungrounded", (324, 386), (324, 494)),
        *(arrow(f"to-loads-{x}", x, 506, "down") for x in (216, 324)),
        label(message("to the loads"), 226, 506),
    ]
