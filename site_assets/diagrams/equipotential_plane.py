"""An equipotential plane: mesh in a slab and the metal parts above it, joined."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import clamp, concrete, mesh, mesh_from_above, metal, pointer, standing
from site_assets.diagrams.symbols import canvas, conductor, dot, enclosure, finished, label

SLUG = "equipotential-plane"
CAPTION = message(
    "All metal within reach and the mesh underfoot are bonded, so hands and feet are at one voltage. A drawing only: "
    "never open a real bond to see."
)
TEXT_ALTERNATIVE = (
    message("A concrete slab has wire mesh in it. The mesh is tied at every crossing."),
    message("A bonding conductor connects the metal post to the mesh."),
    message("Another bonding conductor connects the metal case of the pump to the mesh."),
    message("A person stands on the slab, one hand on the post and the other on the pump."),
    message(
        "Whatever the voltage of one part is, the others are nearly the same. Between hand and hand, and between hand "
        "and feet, there is next to none."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        430,
        message("Equipotential plane in a slab"),
        message(
            "Mesh in a concrete slab is bonded to a metal post and a metal pump on it. A person stands on the slab "
            "with a hand on each, and there is almost no voltage between hands and feet."
        ),
    )
    picture.extend(
        [
            label(message("hands and feet:\none voltage"), 172, 84, "middle", "strong"),
            concrete("slab", 8, 192, 344, 48),
            mesh("mesh", 22, 338, 220),
            metal("post", 92, 24, 14, 168),
            label(message("metal\npost"), 84, 44, "end"),
            enclosure("pump", 238, 130, 78, 61),
            label(message("pump,\nmetal case"), 240, 104),
            standing("person", 172, 192, (107, 134), (238, 148)),
            clamp("post-clamp", 99, 168, 20),
            conductor("post-bond", "equipment-grounding", (89, 168), (58, 168), (58, 220)),
            dot(58, 220),
            clamp("pump-lug", 302, 168),
            conductor("pump-bond", "equipment-grounding", (309, 168), (336, 168), (336, 220)),
            dot(336, 220),
            label(message("bonding\nconductor"), 8, 140),
            pointer("to-mesh", (86, 276), (86, 222)),
            label(message("wire mesh in the concrete slab"), 76, 290),
            mesh_from_above("mesh-above", 20, 314, 120, 96, 24),
            label(message("the mesh from above:\ntied at every crossing,\none sheet to the next"), 156, 346),
        ]
    )
    return finished(picture, SLUG)
