"""A pool cut through: every metal part around it joined to the others."""

from __future__ import annotations

import drawsvg

from calc.messages import message
from calc.rulebook import undated
from site_assets.diagrams.scenery import buried_wire, concrete, mesh, metal, outline, pipe, pointer, water
from site_assets.diagrams.symbols import canvas, conductor, dot, enclosure, finished, label

SLUG = "pool"
SIZE = undated("places/pool_bonding_conductor").value
CAPTION = message(
    "Shell steel, deck, ladder, light, pump and water are all at one voltage. A drawing only: never open a real bond "
    "at a pool."
)
TEXT_ALTERNATIVE = (
    message("The pool is cut through. Steel bars in the concrete shell run up both sides and along the bottom."),
    message(
        "The mesh in the deck on both sides of the pool is bonded to the steel of the shell, at four points around "
        "the pool."
    ),
    message("The ladder, the metal post and the pump are bonded to the mesh in the deck."),
    message("The metal niche of the underwater light is bonded to them too."),
    message("The water touches the metal ladder, and so it is bonded."),
    message(
        "Solid copper of {size} AWG or larger connects the parts. It is not required to run to the panel.", size=SIZE
    ),
    message("Apart from that, an equipment grounding conductor runs from the panel to the pump."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        440,
        message("Bonding at a pool"),
        message(
            "A pool cut through. The steel of the shell, the mesh in the deck, a ladder, the niche of a light, a "
            "pump, a metal post and the water are all bonded."
        ),
    )
    picture.extend([*basin(), *deck(), *metal_parts(), *bonds(), *names()])
    return finished(picture, SLUG)


def basin():
    """Return the shell with its steel, and the water in it."""
    shell = drawsvg.Group(id="shell", class_="surrounding concrete")
    corners = (80, 172, 80, 352, 280, 352, 280, 172, 264, 172, 264, 336, 96, 336, 96, 172)
    shell.append(drawsvg.Lines(*corners, close=True, class_="edge"))
    return [
        shell,
        buried_wire("shell-steel", (88, 180), (88, 344), (272, 344), (272, 180)),
        water("water", 97, 264, 206, 312),
    ]


def deck():
    """Return the deck on both sides of the pool, with the mesh in it."""
    return [
        concrete("deck-left", 4, 172, 76, 28),
        concrete("deck-right", 280, 172, 76, 28),
        mesh("mesh-left", 12, 72, 187),
        mesh("mesh-right", 290, 348, 187),
    ]


def metal_parts():
    """Return the ladder, the light niche, the pump, the post and the panel."""
    return [
        pipe("ladder", "plain", 8, (292, 172), (292, 132), (246, 132), (246, 276)),
        *(outline(f"rung-{number}", (250, y), (262, y)) for number, y in enumerate((228, 248, 268))),
        metal("light-niche", 82, 244, 16, 32),
        enclosure("pump", 306, 128, 46, 44),
        metal("post", 30, 84, 9, 88),
        enclosure("panel", 300, 16, 52, 40),
    ]


def bonds():
    """Return the conductors that join the parts, and the equipment grounding conductor of the pump."""
    return [
        conductor("shell-to-left-mesh", "equipment-grounding", (88, 187), (72, 187)),
        conductor("shell-to-right-mesh", "equipment-grounding", (272, 187), (290, 187)),
        conductor("post-bond", "equipment-grounding", (34, 172), (34, 187)),
        conductor("ladder-bond", "equipment-grounding", (292, 172), (292, 187)),
        conductor("pump-bond", "equipment-grounding", (334, 172), (334, 187)),
        conductor("niche-bond", "equipment-grounding", (82, 260), (54, 260), (54, 187)),
        conductor("pump-grounding", "equipment-grounding", (330, 56), (330, 128)),
        *(dot(x, y) for x, y in ((88, 187), (272, 187), (34, 187), (292, 187), (334, 187), (54, 187), (330, 128))),
    ]


def names():
    """Return the words."""
    return [
        label(message("metal\npost"), 46, 100),
        label(message("ladder"), 240, 130, "end"),
        label(message("pump"), 329, 154, "middle"),
        label(message("panel"), 292, 34, "end"),
        label(message("equipment\ngrounding\nconductor"), 322, 74, "end"),
        label(message("water"), 168, 236, "middle"),
        label(message("light niche"), 106, 266),
        pointer("to-deck", (110, 146), (66, 184)),
        label(message("mesh in\nthe deck"), 114, 140),
        pointer("to-steel", (295, 318), (274, 318)),
        label(message("steel of\nthe shell"), 298, 316),
        label(message("solid copper, {size} AWG or larger,\nbonds them all", size=SIZE), 180, 388, "middle", "strong"),
        label(message("not required to run to the panel"), 180, 424, "middle"),
    ]
