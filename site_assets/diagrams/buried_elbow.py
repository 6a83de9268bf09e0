"""A steel elbow in a buried nonmetallic run: deep enough and left alone, or not deep enough and bonded."""

from __future__ import annotations

from calc.messages import message
from calc.rulebook import undated
from site_assets.diagrams.scenery import clamp, dimension, ground_line, outline, pipe, pointer, swept
from site_assets.diagrams.symbols import bar, canvas, conductor, enclosure, finished, label

SLUG = "buried-elbow"
COVER = undated("raceways/elbow_cover_other").rows[0]["inches"]
CAPTION = message(
    "What matters is the cover over the highest part of the metal elbow. A drawing only: never dig up or open a real "
    "one to see."
)
TEXT_ALTERNATIVE = (
    message("Two nonmetallic raceways run underground. Each turns up through a steel elbow to an enclosure above."),
    message("A dotted line is {cover} in below the surface.", cover=COVER),
    message(
        "Left: every part of the elbow, its upper end too, is below that line. Nobody can reach it, so no bond is "
        "required."
    ),
    message(
        "Right: the upper end of the elbow rises above that line. A bonding jumper bonds the elbow to the bar in the "
        "enclosure above, so that a fault in the elbow trips the breaker."
    ),
)
SURFACE, LINE = 92, 218  # 7 units an inch


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        420,
        message("Steel elbows in buried nonmetallic raceways"),
        message(
            "Left, an elbow deep enough at every point, not bonded. Right, an elbow whose upper end is not deep "
            "enough, with a bonding jumper to the enclosure above."
        ),
    )
    picture.extend(
        [
            ground_line("earth", 4, 356, SURFACE),
            outline("cover-line", (4, LINE), (356, LINE), kind="dotted"),
            label(message("{cover} in deep", cover=COVER), 8, LINE - 6),
            *deep(),
            *shallow(),
        ]
    )
    return finished(picture, SLUG)


def deep():
    """Return the elbow that lies deep enough."""
    return [
        enclosure("left-enclosure", 92, 24, 60, 44),
        pipe("left-riser", "nonmetallic", 20, (122, 68), (122, 262)),
        pipe("left-elbow", "plain", 24, (122, 256), *swept((122, 270), (122, 334), (58, 334)), (48, 334)),
        pipe("left-run", "nonmetallic", 20, (50, 334), (6, 334)),
        dimension("left-cover", (150, SURFACE), (150, 256)),
        label(message("{cover} in\nor more", cover=COVER), 96, 132, "end"),
        label(message("steel elbow"), 96, 292, "end"),
        label(message("no bond\nrequired"), 90, 376, "middle", "strong"),
    ]


def shallow():
    """Return the elbow that is not deep enough, with its bond."""
    return [
        enclosure("right-enclosure", 254, 14, 96, 54),
        bar("right-bar", "equipment-grounding", 262, 26, 76),
        pipe("right-riser", "nonmetallic", 20, (286, 68), (286, 172)),
        pipe("right-elbow", "plain", 24, (286, 166), *swept((286, 180), (286, 264), (222, 264)), (212, 264)),
        pipe("right-run", "nonmetallic", 20, (214, 264), (176, 264)),
        dimension("right-cover", (258, SURFACE), (258, 166)),
        label(message("less than\n{cover} in", cover=COVER), 250, 124, "end"),
        clamp("elbow-clamp", 286, 182, 32),
        conductor("bonding-jumper", "equipment-grounding", (302, 182), (330, 182), (330, 40)),
        label(message("bonding\njumper"), 352, 243, "end", "strong"),
        pointer("to-jumper", (318, 230), (318, 185)),
        label(message("steel elbow"), 352, 294, "end"),
        label(message("nonmetallic run"), 178, 326),
        pointer("to-run", (196, 314), (196, 275)),
        label(message("bonded"), 266, 376, "middle", "strong"),
    ]
