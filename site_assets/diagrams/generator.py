"""A generator with switched neutral and a system bonding jumper, and one with solid neutral and none."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.equipment import changeover, generator
from site_assets.diagrams.scenery import never, pointer
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    border,
    breaker,
    canvas,
    conductor,
    enclosure,
    finished,
    joint,
    label,
)

SLUG = "generator"
CAPTION = message(
    "Above: the transfer switch switches the neutral too, so the generator has its own jumper. Below: the neutral "
    "runs straight through, so there is none. Electrodes are left out."
)
TEXT_ALTERNATIVE = (
    message("Above, left: the service has its main bonding jumper between neutral bar and grounding bar."),
    message(
        "Above, middle: the transfer switch switches both the ungrounded (hot) conductor and the neutral to one source."
    ),
    message(
        "Above, right: on the generator, the service neutral is cut off. So a system bonding jumper in the generator "
        "bonds its neutral to metal."
    ),
    message(
        "Below, middle: the transfer switch switches only the hot conductor. The neutrals of both sources stay "
        "connected."
    ),
    message(
        "Below, right: the generator has no jumper. Its fault current returns over the main bonding jumper at the "
        "service. A jumper here would be a second bond, and put neutral current on metal."
    ),
    message("In both, equipment grounding conductors connect the metal of service, transfer switch and generator."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        672,
        message("Generator with switched neutral and with solid neutral"),
        message(
            "Two pictures, one above the other. Above, the transfer switch has a pole for the neutral and the "
            "generator has a system bonding jumper. Below, the neutral is not switched and the jumper is crossed out."
        ),
    )
    picture.extend([*switched(), border("between", (4, 340), (356, 340)), *solid()])
    return finished(picture, SLUG)


def sources(kind: str, top: float):
    """Return a service and a generator whose tops are at `top`."""
    return [
        enclosure(f"{kind}-service", 8, top, 150, 132),
        label(message("service"), 52, top - 7),
        conductor(f"{kind}-supply-hot", "ungrounded", (140, top - 16), (140, top + 14)),
        conductor(f"{kind}-supply-neutral", "grounded", (40, top - 16), (40, top + 34)),
        breaker(f"{kind}-service-breaker", 140, top + 14),
        bar(f"{kind}-service-neutral-bar", "grounded", 16, top + 34, 48),
        conductor(f"{kind}-main-bonding-jumper", "bonding", (28, top + 48), (28, top + 100)),
        label(message("main\nbonding\njumper"), 39, top + 63),
        bar(f"{kind}-service-grounding-bar", "equipment-grounding", 16, top + 100, 60),
        conductor(f"{kind}-service-bond", "equipment-grounding", (28, top + 114), (28, top + 132)),
        joint(f"{kind}-service-joint", 28, top + 132),
        enclosure(f"{kind}-generator", 216, top, 136, 132),
        label(message("generator"), 256, top - 7),
        generator(f"{kind}-machine", 318, top + 28),
        conductor(f"{kind}-generator-hot", "ungrounded", (298, top + 28), (240, top + 28), (240, top + 44)),
        breaker(f"{kind}-generator-breaker", 240, top + 44),
        conductor(f"{kind}-backup-hot", "ungrounded", (240, top + 84), (240, top + 193)),
        bar(f"{kind}-generator-neutral-bar", "grounded", 272, top + 58, 72),
        conductor(f"{kind}-generator-neutral", "grounded", (318, top + 48), (318, top + 58)),
        bar(f"{kind}-generator-grounding-bar", "equipment-grounding", 272, top + 102, 72),
        conductor(f"{kind}-generator-bond", "equipment-grounding", (306, top + 116), (306, top + 132)),
        joint(f"{kind}-generator-joint", 306, top + 132),
    ]


def transfer_switch(kind: str, top: float):
    """Return the transfer switch, its hot pole and what leaves it."""
    return [
        enclosure(f"{kind}-transfer-switch", 88, top + 174, 174, 68),
        label(message("transfer\nswitch"), 24, top + 238),
        conductor(f"{kind}-grounding-1", "equipment-grounding", (60, top + 114), (60, top + 212), (88, top + 212)),
        conductor(f"{kind}-grounding-2", "equipment-grounding", (334, top + 116), (334, top + 212), (262, top + 212)),
        joint(f"{kind}-transfer-joint-1", 88, top + 212),
        joint(f"{kind}-transfer-joint-2", 262, top + 212),
        changeover(f"{kind}-hot-pole", 224, top + 196),
        conductor(
            f"{kind}-service-hot", "ungrounded", (140, top + 54), (140, top + 154), (208, top + 154), (208, top + 193)
        ),
        conductor(f"{kind}-load-hot", "ungrounded", (224, top + 226), (224, top + 258)),
        conductor(f"{kind}-load-grounding", "equipment-grounding", (110, top + 242), (110, top + 258)),
        joint(f"{kind}-load-joint", 110, top + 242),
        *(arrow(f"{kind}-to-loads-{x}", x, top + 270, "down") for x in (110, 150, 224)),
        label(message("to the loads"), 236, top + 264),
    ]


def switched():
    """Return the picture with a pole for the neutral and a system bonding jumper."""
    top = 56
    return [
        label(message("Neutral switched: jumper at generator"), 8, 20, kind="strong"),
        *sources("switched", top),
        *transfer_switch("switched", top),
        changeover("neutral-pole", 150, top + 196),
        conductor(
            "neutral-1",
            "grounded",
            (64, top + 41),
            (104, top + 41),
            (104, top + 164),
            (134, top + 164),
            (134, top + 193),
        ),
        conductor(
            "neutral-2",
            "grounded",
            (272, top + 65),
            (254, top + 65),
            (254, top + 166),
            (166, top + 166),
            (166, top + 193),
        ),
        conductor("load-neutral", "grounded", (150, top + 226), (150, top + 258)),
        conductor("system-bonding-jumper", "bonding", (286, top + 72), (286, top + 102)),
        label(message("system\nbonding\njumper"), 267, top + 152, kind="strong"),
        pointer("jumper-leader", (265, top + 142), (265, top + 88), (284, top + 88)),
    ]


def solid():
    """Return the picture with a solid neutral and no jumper at the generator."""
    top = 394
    return [
        label(message("Neutral solid: no jumper at generator"), 8, top - 36, kind="strong"),
        *sources("solid", top),
        *transfer_switch("solid", top),
        conductor(
            "solid-neutral-1",
            "grounded",
            (64, top + 41),
            (104, top + 41),
            (104, top + 164),
            (150, top + 164),
            (150, top + 258),
        ),
        conductor("solid-neutral-2", "grounded", (272, top + 65), (254, top + 65), (254, top + 182), (150, top + 182)),
        joint("neutral-joint", 150, top + 182),
        never("jumper-not-made", 286, top + 87, (286, top + 74), (286, top + 102)),
        label(message("no\njumper"), 268, top + 154, kind="strong"),
    ]
