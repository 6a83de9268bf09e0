"""Five forms of a bonding jumper: wire, busbar, strap, screw and fitting, each joining two parts."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import clamp, metal, pipe, solid, strap
from site_assets.diagrams.symbols import canvas, conductor, enclosure, finished, label

SLUG = "bonding-jumper"
CAPTION = message(
    "Five kinds of bonding jumper: each connects two metal parts. Hatched is the metal, green is the jumper. A "
    "drawing only: never open a real jumper to see."
)
TEXT_ALTERNATIVE = (
    message("Wire: it runs from a lug on one metal part to a lug on the other."),
    message("Busbar: a flat solid bar is bolted to one part at one end and to the other part at the other end."),
    message("Strap: a flat braid is bolted across the gap between two parts. It can bend."),
    message("Screw: it is driven down through a bar and into the metal of the enclosure behind it."),
    message("Fitting: a raceway ends in a hub or bushing that grips both the raceway and the wall of the enclosure."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        350,
        message("Five kinds of bonding jumper"),
        message("A wire, a busbar, a strap, a screw and a fitting. Each connects two metal parts."),
    )
    picture.extend([*wire(62), *busbar(180), *braid(298), *screw(96), *fitting(262)])
    return finished(picture, SLUG)


def two_parts(name: str, middle: float):
    """Return the two metal parts that a jumper of the upper row joins."""
    return [metal(f"{name}-left", middle - 48, 64, 40, 60), metal(f"{name}-right", middle + 8, 64, 40, 60)]


def wire(middle: float):
    """Return a wire with a lug on each part."""
    left, right = middle - 28, middle + 28
    return [
        *two_parts("wire", middle),
        conductor("wire", "equipment-grounding", (left, 88), (left, 46), (right, 46), (right, 88)),
        clamp("wire-left-lug", left, 90),
        clamp("wire-right-lug", right, 90),
        label(message("wire"), middle, 28, "middle", "strong"),
        label(message("a lug at\neach end"), middle, 142, "middle"),
    ]


def busbar(middle: float):
    """Return a busbar bolted to both parts."""
    return [
        *two_parts("busbar", middle),
        solid("busbar", middle - 42, 81, 84, 18),
        clamp("busbar-left-bolt", middle - 29, 90),
        clamp("busbar-right-bolt", middle + 29, 90),
        label(message("busbar"), middle, 28, "middle", "strong"),
        label(message("bolted to\nboth"), middle, 142, "middle"),
    ]


def braid(middle: float):
    """Return a braided strap across both parts."""
    return [
        *two_parts("strap", middle),
        strap("strap", middle - 34, middle + 34, 90),
        clamp("strap-left-bolt", middle - 34, 90),
        clamp("strap-right-bolt", middle + 34, 90),
        label(message("strap"), middle, 28, "middle", "strong"),
        label(message("flat, and\nit flexes"), middle, 142, "middle"),
    ]


def screw(middle: float):
    """Return a screw through a bar into the metal behind it."""
    return [
        metal("screw-bar", middle - 48, 226, 96, 18),
        metal("screw-wall", middle - 72, 264, 144, 16),
        solid("screw-shank", middle - 5, 218, 10, 70),
        solid("screw-head", middle - 14, 210, 28, 11),
        label(message("screw"), middle, 196, "middle", "strong"),
        label(message("bar"), middle + 54, 240),
        label(message("through the bar,\ninto the enclosure"), middle, 308, "middle"),
    ]


def fitting(middle: float):
    """Return a fitting that joins a raceway to the wall of an enclosure."""
    return [
        enclosure("fitting-enclosure", middle - 72, 212, 144, 34),
        metal("fitting-wall-left", middle - 72, 240, 55, 10),
        metal("fitting-wall-right", middle + 17, 240, 55, 10),
        solid("fitting-nut-left", middle - 32, 229, 17, 11),
        solid("fitting-nut-right", middle + 15, 229, 17, 11),
        solid("fitting-hub-left", middle - 32, 250, 17, 22),
        solid("fitting-hub-right", middle + 15, 250, 17, 22),
        pipe("fitting-raceway", "plain", 32, (middle, 230), (middle, 286)),
        label(message("fitting"), middle, 196, "middle", "strong"),
        label(message("raceway\nto enclosure"), middle, 308, "middle"),
    ]
