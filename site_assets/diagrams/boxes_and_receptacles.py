"""A metal box with a receptacle, and the same box with the receptacle taken off."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import clamp, pipe, pointer, receptacle
from site_assets.diagrams.symbols import canvas, conductor, dot, enclosure, finished, label

SLUG = "boxes-and-receptacles"
CAPTION = message(
    "Only the equipment grounding wires are drawn. Taking the receptacle off leaves the path to the next box whole. A "
    "drawing only: open a real box only after testing for absence of voltage."
)
TEXT_ALTERNATIVE = (
    message("A wire comes from the panel into a metal box and meets the other wires in one splice."),
    message("From the splice one wire goes on to the next box."),
    message("A short wire, the pigtail, runs from the splice to the green screw of the receptacle."),
    message("Another short wire runs from the splice to a screw in the box that serves nothing else."),
    message(
        "Below, the receptacle is taken off. The splice, the wire to the next box and the wire to the box screw stay "
        "as they were, so the path is whole."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        480,
        message("Metal box with a receptacle, and with the receptacle taken off"),
        message(
            "The equipment grounding wires meet in a splice. Pigtails run to the receptacle and to the box. With the "
            "receptacle off, the wire from the panel to the next box is still whole."
        ),
    )
    picture.extend(
        [
            label(message("Receptacle on"), 8, 20, kind="strong"),
            *box("on", 0),
            receptacle("receptacle-on", 204, 46),
            conductor("pigtail-on", "equipment-grounding", (150, 168), (150, 112), (204, 112)),
            clamp("green-screw-on", 204, 112, 12),
            dot(150, 168),
            label(message("pigtail"), 142, 120, "end"),
            label(message("metal box"), 98, 54),
            label(message("from the\npanel"), 6, 130),
            label(message("to the\nnext box"), 290, 130),
            pointer("to-splice", (40, 216), (144, 174)),
            label(message("splice"), 8, 232),
            label(message("screw in\nthe box"), 192, 190),
            label(message("Receptacle taken off"), 8, 268, kind="strong"),
            *box("off", 248),
            receptacle("receptacle-off", 304, 276),
            conductor("pigtail-off", "equipment-grounding", (150, 416), (150, 352), (186, 352)),
            dot(150, 416),
            label(message("receptacle"), 354, 378, "end"),
            label(message("the path\nis whole"), 196, 438, kind="strong"),
        ]
    )
    return finished(picture, SLUG)


def box(name: str, top: float):
    """Return the metal box with the splice, the wires in and out, and the wire to its screw."""
    level = top + 168
    return [
        pipe(f"{name}-cable-in", "nonmetallic", 22, (6, level), (90, level)),
        pipe(f"{name}-cable-out", "nonmetallic", 22, (270, level), (354, level)),
        enclosure(f"{name}-box", 90, top + 36, 180, 182),
        conductor(f"{name}-from-panel", "equipment-grounding", (6, level), (354, level)),
        conductor(f"{name}-box-pigtail", "equipment-grounding", (150, level), (150, level + 30), (176, level + 30)),
        clamp(f"{name}-box-screw", 180, level + 30),
    ]
