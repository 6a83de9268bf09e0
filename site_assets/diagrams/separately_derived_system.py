"""A transformer as a source of its own: two systems, and only bonding and grounding between them."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.equipment import transformer
from site_assets.diagrams.scenery import never, pointer
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    border,
    breaker,
    canvas,
    conductor,
    earth,
    enclosure,
    finished,
    joint,
    label,
)

SLUG = "separately-derived-system"
CAPTION = message(
    "No circuit conductor of the first system goes on into the second. Only bonding and grounding link them, so the "
    "new neutral needs its own system bonding jumper."
)
TEXT_ALTERNATIVE = (
    message("Left, the first system: the service, where the main bonding jumper bonds its neutral to metal."),
    message("Two ungrounded (hot) conductors feed the primary winding of the transformer. No neutral comes with them."),
    message("The equipment grounding conductor of this feeder terminates on the transformer enclosure."),
    message("Between the windings is only the iron core. No conductor passes through it: here the first system ends."),
    message(
        "Right, the second system: it starts at the secondary winding, with a hot conductor and a new neutral. One hot "
        "is drawn for all."
    ),
    message("The system bonding jumper bonds the new neutral bar to metal, at this one place."),
    message("From the same neutral bar a grounding electrode conductor goes to the electrode."),
    message(
        "The supply-side bonding jumper connects the first disconnect to the transformer. There the neutral stays "
        "isolated from metal."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        594,
        message("A transformer as a separately derived system"),
        message(
            "An imaginary line runs between the windings. On the left are the service and the primary winding. On "
            "the right are the secondary winding, its neutral, the system bonding jumper and the first disconnect."
        ),
    )
    picture.extend([*first_system(), *second_system(), *first_disconnect()])
    return finished(picture, SLUG)


def first_system():
    """Return the service and the feeder to the primary winding."""
    return [
        label(message("first system"), 8, 20, kind="strong"),
        label(message("separately derived"), 186, 20, kind="strong"),
        border("between-systems", (171, 6), (171, 584)),
        enclosure("service", 10, 64, 150, 140),
        label(message("service"), 18, 220),
        conductor("service-neutral", "grounded", (40, 36), (40, 112)),
        *(conductor(f"service-hot-{x}", "ungrounded", (x, 36), (x, 76)) for x in (116, 146)),
        *(breaker(f"service-breaker-{x}", x, 76) for x in (116, 146)),
        bar("service-neutral-bar", "grounded", 20, 112, 56),
        conductor("main-bonding-jumper", "bonding", (34, 126), (34, 176)),
        label(message("main\nbonding\njumper"), 44, 142),
        bar("service-grounding-bar", "equipment-grounding", 20, 176, 60),
        conductor("service-bond", "equipment-grounding", (30, 190), (30, 204)),
        joint("service-joint", 30, 204),
        conductor("primary-1", "ungrounded", (116, 116), (116, 312), (154, 312)),
        conductor("primary-2", "ungrounded", (146, 116), (146, 248), (154, 248)),
        conductor("feeder-grounding-conductor", "equipment-grounding", (70, 190), (70, 350), (96, 350)),
        joint("feeder-joint", 96, 350),
        label(message("equipment\ngrounding\nconductor"), 8, 374),
    ]


def second_system():
    """Return the transformer with the secondary winding, its neutral and its jumper."""
    return [
        enclosure("transformer-enclosure", 96, 224, 250, 204),
        label(message("transformer"), 250, 218),
        transformer("transformer", 154, 248, 4),
        label(message("No conductor\ngoes through."), 200, 178),
        pointer("core-leader", (214, 200), (174, 262)),
        conductor("hot-conductor", "ungrounded", (188, 248), (326, 248), (326, 470)),
        conductor("neutral-from-winding", "grounded", (188, 312), (188, 326)),
        bar("neutral-bar", "grounded", 180, 326, 60),
        label(message("neutral bar"), 198, 318),
        conductor("neutral", "grounded", (240, 333), (296, 333), (296, 520)),
        conductor("system-bonding-jumper", "bonding", (196, 340), (196, 392)),
        label(message("system\nbonding\njumper"), 208, 356, kind="strong"),
        bar("grounding-bar", "equipment-grounding", 180, 392, 60),
        conductor("enclosure-bond", "equipment-grounding", (190, 406), (190, 428)),
        joint("enclosure-joint", 190, 428),
        conductor("grounding-electrode-conductor", "electrode", (180, 333), (136, 333), (136, 470)),
        earth("grounding-electrode", 136, 470),
        label(message("grounding\nelectrode"), 92, 504),
    ]


def first_disconnect():
    """Return the first disconnect, where the neutral stays apart from metal."""
    return [
        conductor("supply-side-bonding-jumper", "bonding", (224, 406), (224, 520)),
        label(message("supply-side\nbonding jumper"), 8, 556),
        pointer("supply-side-leader", (114, 552), (219, 500)),
        enclosure("first-disconnect", 184, 456, 162, 106),
        breaker("first-breaker", 326, 470),
        conductor("load-hot", "ungrounded", (326, 510), (326, 572)),
        arrow("load-arrow", 326, 584, "down"),
        bar("disconnect-neutral-bar", "grounded", 276, 520, 42),
        bar("disconnect-grounding-bar", "equipment-grounding", 194, 520, 42),
        conductor("disconnect-bond", "equipment-grounding", (204, 534), (204, 562)),
        joint("disconnect-joint", 204, 562),
        never("neutral-link-not-made", 257, 527, (238, 527), (276, 527)),
        label(message("first disconnect"), 186, 580),
    ]
