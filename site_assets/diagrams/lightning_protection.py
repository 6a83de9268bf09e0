"""Lightning protection with an electrode of its own, joined to the electrodes of the building."""

from __future__ import annotations

import drawsvg

from calc.messages import message
from site_assets.diagrams.scenery import clamp, ground_line, outline, pipe, pointer, rod, swept
from site_assets.diagrams.symbols import bar, canvas, conductor, enclosure, finished, label

SLUG = "lightning-protection"
GROUND = 356
CAPTION = message(
    "Lightning has its own way down and its own electrode. An underground bond ties it to the building's electrodes, "
    "so both rise together. A drawing only: never take a real bond off."
)
TEXT_ALTERNATIVE = (
    message("A strike terminal, also called air terminal, stands on top of the roof."),
    message("A down conductor runs from it over the roof and down the outside of the wall. One is drawn."),
    message("It terminates underground on an electrode of the lightning system."),
    message(
        "Inside the house is the service. Its main bonding jumper connects the neutral bar to the metal enclosure."
    ),
    message(
        "A grounding electrode conductor runs from the neutral bar to the electrodes of the building: here two rods."
    ),
    message("Low and outdoors, a bond runs from those rods to the electrode of the lightning system."),
    message("The electrode of the lightning system does not take the place of the rods that the building must have."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        490,
        message("Lightning protection bonded to the electrodes of a building"),
        message(
            "A strike terminal, a down conductor and its electrode are at the right of a house. The service inside "
            "has its own rods. An underground bond ties both together."
        ),
    )
    picture.extend([*house(), *lightning(), *service(), *bond()])
    return finished(picture, SLUG)


def house():
    """Return the house and the earth."""
    return [
        outline("house", (34, GROUND), (34, 164), (166, 92), (298, 164), (298, GROUND), kind="faint"),
        ground_line("earth", 4, 356, GROUND),
    ]


def lightning():
    """Return the stroke, the strike terminal, the down conductor and its electrode."""
    bend = swept((292, 153), (308, 162), (308, 182))
    tip = drawsvg.Group(id="strike-terminal", class_="surrounding rod")
    tip.append(drawsvg.Lines(163, 84, 163, 48, 166, 36, 169, 48, 169, 84, close=True, class_="edge"))
    return [
        outline("stroke", (196, 4), (180, 18), (190, 18), (172, 34)),
        pipe("down-conductor", "plain", 7, (166, 84), *bend, (308, GROUND + 16)),
        tip,
        label(message("strike\nterminal"), 154, 44, "end"),
        label(message("down\nconductor"), 252, 98),
        rod("lightning-electrode", 308, GROUND + 10, 448),
        clamp("lightning-clamp", 308, GROUND + 20, 18),
        label(message("its own\nelectrode"), 296, 434, "end"),
    ]


def service():
    """Return the service and the electrodes of the building."""
    return [
        conductor("service-neutral", "grounded", (6, 196), (130, 196), (130, 218)),
        label(message("neutral"), 42, 186),
        enclosure("service-enclosure", 54, 206, 150, 104),
        label(message("service"), 212, 222),
        bar("neutral-bar", "grounded", 64, 218, 94),
        conductor("main-bonding-jumper", "bonding", (138, 232), (138, 310)),
        label(message("main\nbonding\njumper"), 148, 262),
        conductor("grounding-electrode-conductor", "electrode", (90, 232), (90, GROUND + 16)),
        label(message("grounding\nelectrode conductor"), 102, 330),
        *(rod(f"building-rod-{x}", x, GROUND + 8, 448) for x in (50, 90)),
        label(message("electrodes of\nthe building"), 20, 468),
    ]


def bond():
    """Return the bond between both sets of electrodes."""
    level = GROUND + 20
    return [
        conductor("rod-jumper", "electrode", (50, level), (90, level)),
        conductor("lightning-bond", "electrode", (90, level), (308, level)),
        *(clamp(f"building-clamp-{x}", x, level) for x in (50, 90)),
        clamp("bond-clamp", 308, level, 18),
        label(message("bond between both"), 200, level + 20, "middle", "strong"),
        label(message("never in place of\nthe building's own"), 236, 468, "middle", "warning"),
        pointer("never-leader", (302, 462), (308, 450)),
    ]
