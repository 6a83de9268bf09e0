"""Four ways a raceway meets the wall of an enclosure, cut through."""

from __future__ import annotations

from collections.abc import Callable

import drawsvg

from calc.messages import message
from site_assets.diagrams.scenery import clamp, metal, pipe, solid
from site_assets.diagrams.symbols import bar, canvas, conductor, finished, label

SLUG = "bonding-bushing"
CAPTION = message(
    "A raceway enters from below. Green is what makes the connection a bond; standard locknuts alone are not enough "
    "at a service. A drawing only: never take a real fitting apart to see."
)
TEXT_ALTERNATIVE = (
    message("Four raceways come from below through the wall of one enclosure, shown cut through."),
    message("Standard locknuts: one outside and one inside squeeze the wall. At a service they are not enough alone."),
    message("Bonding locknut: its screw bites through the paint into the wall and keeps the nut from turning."),
    message("Bonding bushing: it goes on the end of the raceway, and a jumper runs from its lug to the bar."),
    message("Hub: the raceway is threaded into it wrench-tight, and it is fastened to the wall."),
)
WALL, PLAIN, LOCKNUT, BUSHING, HUB = 184, 50, 138, 224, 312


Piece = Callable[[str, float, float, float, float], drawsvg.DrawingElement]

def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        350,
        message("A raceway entering an enclosure"),
        message(
            "Standard locknuts, a bonding locknut, a bonding bushing with its jumper to the bar, and a hub, next to "
            "each other."
        ),
    )
    picture.extend([*wall(), *fittings(), *names()])
    return finished(picture, SLUG)


def wall():
    """Return the enclosure, its bottom cut through where the raceways enter."""
    edges = [8, *(at for middle in (PLAIN, LOCKNUT, BUSHING, HUB) for at in (middle - 15, middle + 15)), 352]
    pieces = zip(edges[::2], edges[1::2], strict=True)
    return [
        metal("wall-left", 4, 30, 8, WALL - 20),
        metal("wall-right", 348, 30, 8, WALL - 20),
        *(metal(f"wall-{number}", left, WALL, right - left, 10) for number, (left, right) in enumerate(pieces)),
        bar("bar", "equipment-grounding", 150, 66, 104),
        label(message("bar"), 264, 78),
        label(message("enclosure"), 24, 60),
    ]


def fittings() -> list[drawsvg.DrawingElement]:
    """Return the raceways and the nuts, bushing and hub on them."""
    made: list[drawsvg.DrawingElement] = []
    for name, middle in (("plain", PLAIN), ("locknut", LOCKNUT), ("bushing", BUSHING)):
        made += nut(f"{name}-outside", middle, WALL + 10, metal)
    made += nut("plain-inside", PLAIN, WALL - 11, metal)
    made += nut("bushing-inside", BUSHING, WALL - 11, metal)
    made += [
        *nut("bonding-locknut", LOCKNUT, WALL - 11, solid),
        solid("locknut-ear", LOCKNUT + 27, WALL - 11, 16, 11),
        solid("locknut-screw", LOCKNUT + 33, WALL - 24, 5, 32),
        solid("locknut-screw-head", LOCKNUT + 29, WALL - 28, 13, 6),
        *nut("bonding-bushing", BUSHING, WALL - 30, solid, 15, 19),
        *nut("hub-inside", HUB, WALL - 11, solid),
        *nut("hub-outside", HUB, WALL + 10, solid, 14, 30),
    ]
    pipes = [
        pipe(f"{name}-raceway", "plain", 30, (middle, WALL - 26), (middle, 268))
        for name, middle in (("plain", PLAIN), ("locknut", LOCKNUT), ("bushing", BUSHING), ("hub", HUB))
    ]
    return [
        *made,
        *pipes,
        conductor(
            "jumper", "equipment-grounding", (250, WALL - 21), (270, WALL - 21), (270, 114), (208, 114), (208, 76)
        ),
        clamp("bushing-lug", 256, WALL - 21),
        label(message("jumper"), 278, 130),
    ]


def nut(
    name: str, middle: float, top: float, kind: Piece, across: float = 13, height: float = 11
) -> list[drawsvg.DrawingElement]:
    """Return the two cut halves of a nut, bushing or hub around a raceway."""
    return [
        kind(f"{name}-left", middle - 15 - across, top, across, height),
        kind(f"{name}-right", middle + 15, top, across, height),
    ]


def names():
    """Return the name of each way, and what it does."""
    return [
        label(message("ordinary\nlocknuts"), PLAIN, 288, "middle", "strong"),
        label(message("bonding\nlocknut"), LOCKNUT, 288, "middle", "strong"),
        label(message("bonding\nbushing"), BUSHING, 288, "middle", "strong"),
        label(message("hub"), HUB, 288, "middle", "strong"),
        label(message("not enough\nat a service"), PLAIN, 322, "middle", "warning"),
        label(message("screw bites\nthe wall"), LOCKNUT, 322, "middle"),
        label(message("jumper to\nthe bar"), BUSHING, 322, "middle"),
        label(message("threaded,\nwrench-tight"), HUB, 307, "middle"),
    ]
