"""The intersystem bonding termination at the service, and the systems that are joined to it."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import clamp, ground_line, never, rod
from site_assets.diagrams.symbols import bar, breaker, canvas, conductor, dot, enclosure, finished, label

SLUG = "intersystem-bonding-termination"
CAPTION = message(
    "One terminal block at the service takes the bonding conductors of telephone, cable and antenna. It is bonded "
    "to the grounding electrode conductor. A drawing only: never open a real bond to see."
)
TEXT_ALTERNATIVE = (
    message("In the service enclosure, the main bonding jumper bonds the neutral bar to the enclosure."),
    message("The grounding electrode conductor runs from the neutral bar down to the rod."),
    message(
        "The intersystem bonding termination is a small terminal block, outside the enclosures where people can "
        "reach it. A bonding conductor connects it to the grounding electrode conductor."
    ),
    message("Telephone, cable and antenna each have their own bonding conductor to this block."),
    message(
        "None of them is left on its own rod: then lightning or a fault would put a voltage between it and "
        "the power system."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        400,
        message("Intersystem bonding termination at a service"),
        message(
            "Telephone, cable and antenna are bonded to one terminal block, and the block is bonded to the "
            "grounding electrode conductor of the service. A separate rod alone is crossed out."
        ),
    )
    picture.extend([ground_line("earth", 4, 356, 330), *service(), *systems()])
    return finished(picture, SLUG)


def service():
    """Return the service enclosure and its electrode."""
    return [
        enclosure("service-enclosure", 14, 62, 150, 112),
        label(message("service"), 22, 54),
        conductor("service-neutral", "grounded", (90, 10), (90, 84)),
        label(message("neutral"), 100, 28),
        conductor("service-hot", "ungrounded", (150, 10), (150, 76)),
        breaker("service-disconnect", 150, 76),
        conductor("after-disconnect", "ungrounded", (150, 116), (150, 196)),
        conductor("main-bonding-jumper", "bonding", (62, 92), (62, 174)),
        bar("neutral-bar", "grounded", 24, 84, 78),
        label(message("main\nbonding\njumper"), 72, 122, kind="strong"),
        conductor("grounding-electrode-conductor", "electrode", (34, 98), (34, 340)),
        label(message("grounding\nelectrode\nconductor"), 44, 196),
        rod("rod", 34, 334, 394),
        clamp("rod-clamp", 34, 344),
        label(message("rod"), 48, 364),
    ]


def systems():
    """Return the termination, and the systems joined to it."""
    names = {"telephone": message("telephone"), "cable": message("cable"), "antenna": message("antenna")}
    made = [
        bar("termination", "equipment-grounding", 182, 256, 74),
        conductor("termination-bond", "equipment-grounding", (34, 263), (182, 263)),
        dot(34, 263),
        label(message("bonding conductor"), 44, 282),
        label(message("intersystem\nbonding termination"), 182, 288, kind="strong"),
    ]
    for number, (name, words) in enumerate(names.items()):
        x, y = 192 + 16 * number, 62 + 62 * number
        made += [
            enclosure(f"{name}-box", 252, y, 96, 38),
            label(words, 300, y + 24, "middle"),
            conductor(f"{name}-bond", "equipment-grounding", (252, y + 19), (x, y + 19), (x, 256)),
        ]
    return [
        *made,
        never("rod-alone", 338, 262, (338, 224), (338, 334)),
        rod("other-rod", 338, 334, 394),
        label(message("never only\nits own rod"), 326, 358, "end", "warning"),
    ]
