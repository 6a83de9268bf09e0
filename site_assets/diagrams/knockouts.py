"""A concentric knockout with rings left in the wall, and the jumper that goes around them."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import clamp, hole, metal, pipe, pointer, slit, solid
from site_assets.diagrams.symbols import canvas, conductor, enclosure, finished, label

SLUG = "knockouts"
CAPTION = message(
    "The rings left around the hole hang on small tabs. Where that is not enough, a jumper goes around them. A "
    "drawing only: never take a real bond off to see."
)
TEXT_ALTERNATIVE = (
    message("Seen face-on: in the middle is the hole for the raceway. Around it two rings are left in the wall."),
    message("A slit runs around each ring. Only two small tabs hold each ring to the next metal."),
    message("Cut through: the locknuts squeeze the inner ring, not the wall itself."),
    message("A bonding bushing sits on the end of the raceway."),
    message("A jumper runs from the lug of the bushing to the solid wall beyond the rings, and so around them."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        480,
        message("Knockout with rings left, and the jumper around them"),
        message("Above, the rings seen face-on. Below, the wall cut through, with a bonding bushing and its jumper."),
    )
    picture.extend([*face_on(), *cut_through()])
    return finished(picture, SLUG)


def face_on():
    """Return the wall seen face-on, with the hole and the rings left."""
    x, y = 128, 124
    return [
        enclosure("wall-face", 16, 24, 224, 200),
        slit("outer-slit", x, y, 84, 0),
        slit("inner-slit", x, y, 60, 90),
        hole("hole", x, y, 38),
        label(message("Face-on"), 16, 16, kind="strong"),
        label(message("hole"), x, y + 4, "middle"),
        pointer("to-ring", (262, 70), (176, 76)),
        label(message("rings left"), 256, 66),
        pointer("to-tie", (262, 128), (213, 124)),
        label(message("small tab"), 266, 132),
        pointer("to-wall", (262, 196), (232, 196)),
        label(message("solid wall"), 266, 200),
    ]


def cut_through():
    """Return the wall cut through, with the raceway, its nuts, the bushing and the jumper."""
    middle, top = 128, 392
    edges = (16, 43, 46, 67, 70, 92, 164, 186, 189, 210, 213, 240)
    pieces = zip(edges[::2], edges[1::2], strict=True)
    made = [metal(f"piece-{number}", left, top, right - left, 10) for number, (left, right) in enumerate(pieces)]
    for name, kind, height, y, across in (
        ("outside-nut", metal, 12, top + 10, 17),
        ("inside-nut", metal, 11, top - 11, 17),
        ("bushing", solid, 20, top - 31, 22),
    ):
        made += [kind(f"{name}-left", middle - 36 - across, y, across, height)]
        made += [kind(f"{name}-right", middle + 36, y, across, height)]
    return [
        *made,
        pipe("raceway", "steel", 72, (middle, top - 42), (middle, 470)),
        conductor("jumper", "equipment-grounding", (184, 371), (184, 312), (227, 312), (227, 384)),
        clamp("bushing-lug", 180, 371),
        clamp("wall-lug", 227, 387),
        label(message("Cut through"), 16, 280, kind="strong"),
        label(message("raceway"), middle, 452, "middle"),
        label(message("jumper around\nthe rings"), 238, 322, kind="strong"),
        pointer("to-bushing", (66, 342), (80, 366)),
        label(message("bonding\nbushing"), 16, 320),
        pointer("to-nut", (62, 432), (82, 410)),
        label(message("locknuts"), 16, 446),
        pointer("to-rings", (214, 430), (177, 400)),
        label(message("rings left"), 218, 438),
        pointer("to-solid-wall", (262, 386), (236, 397)),
        label(message("solid wall"), 266, 386),
    ]
