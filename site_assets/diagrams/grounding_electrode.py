"""The grounding electrodes of a building, joined to one another and to the neutral bar of the service."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import (
    buried_wire,
    clamp,
    concrete,
    ground_line,
    metal,
    outline,
    pipe,
    ring,
    rod,
)
from site_assets.diagrams.symbols import bar, canvas, conductor, dot, enclosure, finished, label

SLUG = "grounding-electrode"
CAPTION = message(
    "Every electrode present is bonded to the others, and one conductor runs from them to the service. A drawing "
    "only: never take a real electrode conductor off."
)
TEXT_ALTERNATIVE = (
    message("The service neutral comes from the utility and terminates on the neutral bar."),
    message("The main bonding jumper connects the neutral bar to the enclosure."),
    message("The grounding electrode conductor runs from the neutral bar down to the electrodes."),
    message(
        "Bonding jumpers connect all the electrodes: two rods, the bar in the concrete footing, the steel column "
        "that goes deep into the earth, the buried metal water pipe, and the ring of bare wire."
    ),
    message("None of them is left out, and none has its own separate path to the service."),
    message("They hold the neutral near the voltage of the earth. They are not a ground-fault return path."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        420,
        message("Grounding electrodes of a building"),
        message(
            "Rods, a bar in the concrete footing, a steel column, a water pipe and a ring are bonded together. One "
            "grounding electrode conductor runs from them to the neutral bar in the service enclosure."
        ),
    )
    picture.extend(
        [
            outline("house", (84, 212), (84, 66), (206, 20), (340, 66), (340, 212), kind="faint"),
            ground_line("earth-left", 4, 84, 212),
            ground_line("earth-right", 340, 356, 212),
            *service(),
            *electrodes(),
            *joints(),
        ]
    )
    return finished(picture, SLUG)


def service():
    """Return the service enclosure with its neutral bar and main bonding jumper."""
    return [
        enclosure("service-enclosure", 94, 84, 162, 76),
        label(message("service"), 206, 78, "middle"),
        conductor("service-neutral", "grounded", (6, 60), (168, 60), (168, 92)),
        label(message("neutral of\nthe service"), 6, 32),
        conductor("main-bonding-jumper", "bonding", (142, 100), (142, 160)),
        bar("neutral-bar", "grounded", 100, 92, 78),
        label(message("neutral\nbar"), 184, 100),
        label(message("main bonding\njumper"), 153, 134, kind="strong"),
    ]


def electrodes():
    """Return the electrodes."""
    return [
        concrete("footing", 92, 246, 108, 44),
        buried_wire("footing-bar", (98, 268), (194, 268)),
        label(message("rebar in the\nconcrete footing"), 96, 306),
        rod("first-rod", 38, 206, 318),
        rod("second-rod", 64, 206, 318),
        label(message("rods"), 51, 334, "middle"),
        metal("column", 276, 116, 14, 214),
        label(message("steel\ncolumn"), 284, 92, "middle"),
        label(message("steel in\nthe earth"), 270, 262, "end"),
        pipe("water-pipe", "plain", 14, (316, 124), (316, 284), (354, 284)),
        label(message("water\npipe"), 328, 308, "middle"),
        ring("ring", 182, 366, 168),
        label(message("ring of bare wire"), 182, 371, "middle"),
    ]


def joints():
    """Return the grounding electrode conductor and the jumpers between the electrodes."""
    return [
        conductor("grounding-electrode-conductor", "electrode", (110, 106), (110, 196)),
        conductor("jumpers", "electrode", (14, 196), (316, 196)),
        conductor("to-ring", "electrode", (14, 196), (14, 366)),
        conductor("to-first-rod", "electrode", (38, 196), (38, 214)),
        conductor("to-second-rod", "electrode", (64, 196), (64, 214)),
        conductor("to-footing", "electrode", (124, 196), (124, 268)),
        *(dot(x, 196) for x in (38, 64, 110, 124)),
        dot(124, 268),
        dot(14, 366),
        clamp("first-rod-clamp", 38, 218),
        clamp("second-rod-clamp", 64, 218),
        clamp("column-clamp", 283, 196, 20),
        clamp("pipe-clamp", 316, 196, 20),
        label(message("grounding electrode\nconductor"), 118, 176),
        label(message("bonding jumpers\nconnect them all"), 134, 216),
    ]
