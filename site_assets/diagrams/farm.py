"""A stall: mesh in the floor, stall pipes and water bowl joined, and a cow that touches them."""

from __future__ import annotations

import drawsvg

from calc.messages import message
from calc.rulebook import undated
from site_assets.diagrams.scenery import clamp, concrete, mesh, pipe, pointer
from site_assets.diagrams.symbols import bar, canvas, conductor, dot, finished, label

SLUG = "farm"
SIZE = undated("places/livestock_plane_conductor").value
FLOOR = 214
CAPTION = message(
    "Mesh underfoot, stall pipes and water bowl are bonded, so hooves and mouth are at one voltage. A drawing only: "
    "never open a real bond to see."
)
TEXT_ALTERNATIVE = (
    message("A cow stands on a concrete floor with wire mesh in it, and drinks from a metal water bowl."),
    message("Metal stall pipes stand beside it. Each post is bonded to the mesh."),
    message("The water bowl stands on its metal pipe. A bonding conductor connects the pipe to the mesh."),
    message(
        "A solid copper conductor, {size} AWG or larger, connects the mesh to the grounding system of the building.",
        size=SIZE,
    ),
    message("Between hooves and mouth there is next to no voltage. Cattle notice small voltages that people do not."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        370,
        message("Equipotential plane for livestock"),
        message(
            "A cow stands on mesh in a concrete floor and drinks from a bowl. Mesh, stall pipes, water pipe and bowl "
            "are bonded to one another and to the grounding system of the building."
        ),
    )
    picture.extend([*stall(), cow("cow", 96, FLOOR), *bonds(), *names()])
    return finished(picture, SLUG)


def stall():
    """Return the floor with its mesh, the stall pipes and the water bowl."""
    bowl = drawsvg.Group(id="bowl", class_="surrounding metal-part")
    bowl.append(drawsvg.Path(class_="edge").M(316, 150).L(350, 150).Q(348, 170, 334, 170).Q(318, 170, 316, 150).Z())
    return [
        concrete("floor", 8, FLOOR, 344, 40),
        mesh("mesh", 24, 346, FLOOR + 24),
        pipe("upper-rail", "plain", 8, (44, 118), (308, 118)),
        pipe("lower-rail", "plain", 8, (44, 158), (308, 158)),
        pipe("left-post", "plain", 10, (48, 100), (48, FLOOR)),
        pipe("right-post", "plain", 10, (306, 100), (306, FLOOR)),
        pipe("bowl-pipe", "plain", 9, (334, 170), (334, FLOOR)),
        bowl,
    ]


def bonds():
    """Return the conductors that join the parts."""
    level = FLOOR + 24
    return [
        conductor("left-post-bond", "equipment-grounding", (48, FLOOR), (48, level)),
        conductor("right-post-bond", "equipment-grounding", (306, FLOOR), (306, level)),
        conductor("bowl-bond", "equipment-grounding", (334, 196), (350, 196), (350, 230), (340, level)),
        clamp("bowl-clamp", 334, 196),
        conductor("grounding-bond", "equipment-grounding", (24, level), (24, 312)),
        bar("grounding-bar", "equipment-grounding", 14, 312, 52),
        *(dot(x, level) for x in (24, 48, 306, 340)),
    ]


def names():
    """Return the words."""
    return [
        label(message("hooves and mouth: one voltage"), 180, 44, "middle", "strong"),
        label(message("metal stall pipes"), 40, 88),
        pointer("to-bowl", (334, 94), (334, 148)),
        label(message("metal water bowl"), 352, 88, "end"),
        pointer("to-mesh", (188, 276), (188, FLOOR + 28)),
        label(message("wire mesh in the concrete floor"), 134, 288),
        label(
            message("solid copper, {size} AWG or larger, to the\ngrounding system of the building", size=SIZE), 76, 318
        ),
    ]


def cow(name: str, x: float, foot: float) -> drawsvg.DrawingElement:
    """Return a cow that faces right, its rump at `x` and its hooves at `foot`."""
    group = drawsvg.Group(id=name, class_="surrounding")
    far = drawsvg.Path(class_="edge face")
    for leg in (46, 112):
        far.M(x + leg, foot - 34).L(x + leg + 2, foot).L(x + leg + 10, foot).L(x + leg + 13, foot - 34)
    body = drawsvg.Path(class_="edge face").M(x, foot - 84)
    body.C(x + 30, foot - 92, x + 90, foot - 82, x + 124, foot - 88)
    body.C(x + 142, foot - 92, x + 158, foot - 104, x + 176, foot - 102)
    body.C(x + 192, foot - 98, x + 204, foot - 84, x + 218, foot - 72)
    body.C(x + 228, foot - 64, x + 222, foot - 50, x + 208, foot - 54)
    body.C(x + 194, foot - 62, x + 182, foot - 68, x + 172, foot - 68)
    body.C(x + 162, foot - 54, x + 152, foot - 40, x + 144, foot - 34)
    body.L(x + 142, foot).L(x + 132, foot).L(x + 128, foot - 28)
    body.C(x + 100, foot - 20, x + 80, foot - 24, x + 66, foot - 28)
    body.C(x + 62, foot - 16, x + 44, foot - 16, x + 38, foot - 32)
    body.L(x + 26, foot - 24).L(x + 28, foot).L(x + 18, foot).L(x + 10, foot - 34)
    body.C(x, foot - 48, x - 4, foot - 68, x, foot - 84).Z()
    ear = drawsvg.Path(class_="edge face").M(x + 170, foot - 98).Q(x + 154, foot - 100, x + 152, foot - 90)
    ear.Q(x + 164, foot - 84, x + 172, foot - 92)
    marks = drawsvg.Path(class_="edge")
    marks.M(x + 172, foot - 102).Q(x + 178, foot - 108, x + 176, foot - 116)  # horn
    marks.M(x + 206, foot - 82).Q(x + 202, foot - 74, x + 196, foot - 63)  # muzzle
    marks.M(x + 30, foot - 87).C(x + 34, foot - 60, x + 66, foot - 60, x + 72, foot - 86)  # patch on the back
    marks.M(x + 92, foot - 24).C(x + 92, foot - 46, x + 116, foot - 50, x + 122, foot - 27)  # patch on the belly
    marks.M(x + 1, foot - 82).Q(x - 14, foot - 66, x - 8, foot - 34)  # tail
    group.extend([far, body, ear, marks, drawsvg.Circle(x + 188, foot - 88, 1.5, class_="edge")])
    return group
