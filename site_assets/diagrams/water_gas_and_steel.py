"""Water pipe, gas pipe and steel column of a building, each with its bond."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import clamp, ground_line, hole, metal, outline, pipe
from site_assets.diagrams.symbols import bar, canvas, conductor, dot, enclosure, finished, label

SLUG = "water-gas-and-steel"
CAPTION = message(
    "Water and steel are bonded from the service, the gas pipe by the circuit of the furnace. A drawing only: never "
    "take a real bond off."
)
TEXT_ALTERNATIVE = (
    message("The main bonding jumper connects the neutral bar of the service to the grounding bar and the enclosure."),
    message("Water: a bonding jumper runs from the neutral bar to the metal water pipe, near where the pipe comes in."),
    message("Another jumper goes around the water meter, so the bond stays when the meter is taken out."),
    message("Steel: a bonding jumper runs from the neutral bar to the steel column."),
    message(
        "Gas: the equipment grounding conductor of the circuit that feeds the furnace bonds the furnace, and with it "
        "the gas pipe."
    ),
    message("No gas pipe is used as an electrode."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        430,
        message("Bonding of water pipe, gas pipe and steel"),
        message(
            "The service has jumpers to the water pipe and to a steel column. A jumper goes around the water meter. "
            "The gas pipe is bonded by the equipment grounding conductor of the furnace circuit."
        ),
    )
    picture.extend([*building(), *service(), *water_pipe(), *gas_pipe(), *column()])
    return finished(picture, SLUG)


def building():
    """Return the wall, the floor and the earth outside."""
    return [
        outline("wall", (56, 26), (56, 334), kind="faint"),
        outline("floor", (56, 334), (356, 334), kind="faint"),
        ground_line("earth", 4, 56, 334),
    ]


def service():
    """Return the service enclosure with its bars."""
    return [
        conductor("service-neutral", "grounded", (96, 10), (96, 66)),
        label(message("neutral"), 104, 24),
        enclosure("service-enclosure", 64, 50, 178, 104),
        label(message("service"), 182, 44),
        conductor("main-bonding-jumper", "bonding", (112, 74), (112, 128)),
        bar("neutral-bar", "grounded", 70, 66, 92),
        bar("grounding-bar", "equipment-grounding", 102, 128, 128),
        conductor("enclosure-bond", "equipment-grounding", (112, 142), (112, 154)),
        label(message("main bonding\njumper"), 124, 100, kind="strong"),
    ]


def water_pipe():
    """Return the water pipe with its meter, its bond and the jumper around the meter."""
    return [
        pipe("water-pipe", "plain", 14, (6, 388), (104, 388), (104, 270), (242, 270)),
        hole("meter", 176, 270, 19),
        label(message("water meter"), 176, 308, "middle"),
        conductor("meter-jumper", "equipment-grounding", (136, 262), (136, 240), (216, 240), (216, 262)),
        clamp("meter-clamp-in", 136, 270, 12),
        clamp("meter-clamp-out", 216, 270, 12),
        label(message("jumper around\nthe meter"), 122, 217, kind="strong"),
        conductor("water-bond", "equipment-grounding", (80, 80), (80, 308), (96, 308)),
        clamp("water-clamp", 104, 308, 20),
        label(message("water pipe"), 120, 404),
        label(message("bonding\njumper"), 88, 188),
    ]


def gas_pipe():
    """Return the furnace with its gas pipe, and the equipment grounding conductor of its circuit."""
    return [
        enclosure("furnace", 254, 214, 62, 56),
        label(message("furnace"), 285, 247, "middle"),
        pipe("gas-pipe", "plain", 12, (285, 270), (285, 396), (354, 396)),
        label(message("gas pipe"), 276, 366, "end"),
        conductor("circuit-grounding", "equipment-grounding", (230, 135), (285, 135), (285, 214)),
        dot(285, 214),
        dot(285, 270),
        label(message("equipment grounding\nconductor of the\nfurnace circuit"), 276, 169, "end"),
    ]


def column():
    """Return the steel column with its bond."""
    return [
        metal("column", 330, 40, 14, 294),
        conductor("column-bond", "equipment-grounding", (162, 73), (327, 73)),
        clamp("column-clamp", 337, 73, 20),
        label(message("steel\ncolumn"), 324, 98, "end"),
        label(message("bonding jumper"), 352, 24, "end"),
    ]
