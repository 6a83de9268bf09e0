"""A feeder to a second building: equipment grounding conductor along, neutral apart, an electrode of its own."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.equipment import building
from site_assets.diagrams.scenery import ground_line, never, rod
from site_assets.diagrams.symbols import arrow, bar, breaker, canvas, conductor, enclosure, finished, joint, label

SLUG = "separate-building"
CAPTION = message(
    "Neutral and metal are bonded in the first building only. The feeder includes an equipment grounding conductor. "
    "The second building has its own electrode, connected to its grounding bar."
)
TEXT_ALTERNATIVE = (
    message(
        "The service is in the first building. Its main bonding jumper connects the neutral bar to the grounding bar."
    ),
    message("The neutral bar there is connected to the electrode of the first building."),
    message(
        "A feeder runs underground to the second building. It has an ungrounded (hot) conductor, a neutral and an "
        "equipment grounding conductor."
    ),
    message("In the second building the hot conductor goes to the breaker that disconnects the building."),
    message(
        "The neutral terminates on a neutral bar that is isolated from metal. No jumper connects it to the grounding "
        "bar."
    ),
    message("The equipment grounding conductor terminates on the grounding bar, which is bonded to the enclosure."),
    message("The electrode of the second building is connected to that grounding bar, not to the neutral bar."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        420,
        message("A feeder to a separate building"),
        message(
            "Two buildings with an underground feeder between them. The first has the main bonding jumper. In the "
            "second, a crossed-out link shows that neutral and metal stay isolated."
        ),
    )
    picture.extend([*first_building(), *feeder(), *second_building()])
    return finished(picture, SLUG)


def first_building():
    """Return the first building with the service."""
    return [
        label(message("first building"), 10, 22),
        building("first-building", 8, 34, 158, 278),
        conductor("supply-hot", "ungrounded", (142, 28), (142, 96)),
        conductor("supply-neutral", "grounded", (64, 28), (64, 122)),
        enclosure("service", 18, 60, 138, 192),
        label(message("service"), 74, 80),
        breaker("service-breaker", 142, 96),
        bar("service-neutral-bar", "grounded", 26, 122, 68),
        conductor("main-bonding-jumper", "bonding", (52, 136), (52, 196)),
        label(message("main\nbonding\njumper"), 62, 156),
        bar("service-grounding-bar", "equipment-grounding", 42, 196, 66),
        conductor("service-bond", "equipment-grounding", (56, 210), (56, 252)),
        joint("service-joint", 56, 252),
        conductor("first-electrode-conductor", "electrode", (36, 136), (36, 316)),
        rod("first-electrode", 36, 306, 372),
        label(message("electrode"), 8, 392),
    ]


def feeder():
    """Return the feeder under the earth."""
    return [
        ground_line("earth-surface", 4, 356, 312),
        conductor("feeder-hot", "ungrounded", (142, 136), (142, 336), (212, 336), (212, 82), (334, 82), (334, 96)),
        conductor("feeder-neutral", "grounded", (94, 129), (122, 129), (122, 350), (232, 350), (232, 136)),
        conductor("feeder-grounding", "equipment-grounding", (98, 210), (98, 364), (252, 364), (252, 210)),
        label(message("feeder with equipment\ngrounding conductor"), 92, 388),
    ]


def second_building():
    """Return the second building, its bars apart."""
    return [
        label(message("second building"), 196, 22),
        building("second-building", 194, 34, 160, 278),
        enclosure("second-disconnect", 202, 60, 144, 192),
        label(message("disconnect"), 222, 76),
        breaker("second-breaker", 334, 96),
        conductor("load-hot", "ungrounded", (334, 136), (334, 266)),
        arrow("to-loads", 334, 278, "down"),
        label(message("loads"), 333, 296, "middle"),
        bar("second-neutral-bar", "grounded", 222, 122, 60),
        label(message("neutral bar"), 226, 114),
        never("neutral-link-not-made", 266, 166, (266, 138), (266, 196)),
        label(message("not\njoined"), 282, 162, kind="strong"),
        bar("second-grounding-bar", "equipment-grounding", 242, 196, 76),
        conductor("second-bond", "equipment-grounding", (274, 210), (274, 252)),
        joint("second-joint", 274, 252),
        conductor("second-electrode-conductor", "electrode", (306, 210), (306, 316)),
        rod("second-electrode", 306, 306, 372),
        label(message("its own\nelectrode"), 274, 392),
    ]
