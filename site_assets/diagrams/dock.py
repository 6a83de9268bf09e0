"""A dock: its metal bonded to the shore panel, and a plane of mesh around the panel on shore."""

from __future__ import annotations

from calc.messages import message
from calc.rulebook import undated
from site_assets.diagrams.scenery import (
    clamp,
    dimension,
    ground_line,
    mesh,
    metal,
    outline,
    pipe,
    pointer,
    standing,
    water,
)
from site_assets.diagrams.symbols import bar, canvas, conductor, dot, enclosure, finished, label

SLUG = "dock"
REACH = undated("places/dock_plane_reach").value
CAPTION = message(
    "Only grounding and bonding are drawn. The metal of the dock is bonded to the shore panel, and so is the mesh "
    "under anyone at the panel. Never open a real bond at the water's edge."
)
TEXT_ALTERNATIVE = (
    message("The panel stands on shore, with its grounding bar."),
    message("An insulated equipment grounding conductor runs from the grounding bar to the outlet on the dock."),
    message("A bonding conductor runs from the grounding bar to the metal frame of the dock."),
    message(
        "The metal ladder and the metal piles are fastened to the frame, so the metal that touches the water is bonded."
    ),
    message(
        "Mesh is buried around the panel and goes {reach} in out from it. It is bonded to the grounding bar. Anyone "
        "who stands there with a hand on the panel has one voltage at hand and feet.",
        reach=REACH,
    ),
)
GROUND = 200


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        400,
        message("Bonding at a dock"),
        message(
            "The shore panel is connected to an outlet on the dock, to the metal frame of the dock, and to mesh in "
            "the soil around the panel. A person stands on the mesh with a hand on the panel."
        ),
    )
    picture.extend([*shore(), *dock(), *bonds(), *names()])
    return finished(picture, SLUG)


def shore():
    """Return the shore with the panel, the mesh around it and the person at it."""
    return [
        ground_line("ground", 4, 186, GROUND),
        outline("bank", (186, GROUND), (194, 352), (356, 366)),
        outline("panel-leg-left", (26, 150), (26, GROUND), kind="faint"),
        outline("panel-leg-right", (80, 150), (80, GROUND), kind="faint"),
        enclosure("shore-panel", 14, 70, 78, 80),
        bar("grounding-bar", "equipment-grounding", 22, 88, 60),
        mesh("mesh", 12, 150, GROUND + 22),
        standing("person", 126, GROUND, (92, 140)),
        dimension("reach", (92, GROUND + 36), (150, GROUND + 36)),
    ]


def dock():
    """Return the dock with its metal frame, piles, ladder and outlet, and the water."""
    return [
        pipe("near-pile", "plain", 12, (220, GROUND), (220, 354)),
        pipe("far-pile", "plain", 12, (318, GROUND), (318, 362)),
        metal("frame", 176, GROUND - 12, 176, 12),
        pipe("ladder", "plain", 7, (342, 150), (342, 320)),
        enclosure("outlet", 202, 132, 34, 56),
        water("water", 193, 352, 254, 300),
    ]


def bonds():
    """Return the conductors from the grounding bar."""
    return [
        conductor("equipment-grounding", "equipment-grounding", (82, 95), (219, 95), (219, 132)),
        dot(219, 132),
        conductor("frame-bond", "equipment-grounding", (64, 88), (64, 40), (286, 40), (286, 190)),
        clamp("frame-clamp", 286, 194),
        conductor("mesh-bond", "equipment-grounding", (32, 102), (32, GROUND + 22)),
        dot(32, GROUND + 22),
        clamp("ladder-clamp", 342, 194),
    ]


def names():
    """Return the words."""
    return [
        label(message("bonding conductor"), 72, 30),
        label(message("insulated equipment\ngrounding conductor"), 100, 62),
        label(message("shore\npanel"), 44, 122),
        label(message("outlet"), 242, 152),
        label(message("ladder"), 352, 142, "end"),
        label(message("metal\nframe"), 230, 218),
        label(message("metal pile"), 236, 330),
        label(message("water"), 250, 284),
        label(message("{reach} in", reach=REACH), 121, GROUND + 54, "middle"),
        pointer("to-mesh", (54, 268), (54, GROUND + 24)),
        label(message("mesh in the soil\naround the panel"), 8, 282),
    ]
