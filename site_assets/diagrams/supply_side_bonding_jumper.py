"""A metal wireway ahead of two service disconnects, bonded by supply-side bonding jumpers, and a fault's way round."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    breaker,
    bushing,
    canvas,
    conductor,
    enclosure,
    fault,
    finished,
    joint,
    label,
    path_step,
    raceway,
    step_mark,
    winding,
)

SLUG = "supply-side-bonding-jumper"
CAPTION = message(
    "The metal wireway is ahead of every breaker. Thick jumpers bond it and its raceway to the disconnect. The "
    "electrode is left out. A drawing only: never lift a real jumper to see."
)
TEXT_ALTERNATIVE = (
    message("Source: the utility transformer pushes current out on the ungrounded (hot) service conductor."),
    message("The hot conductor enters the wireway. No breaker in the building is ahead of it."),
    message("Fault: in the wireway the hot conductor touches the metal wall."),
    message(
        "The supply-side bonding jumper carries the current from the wireway to the grounding bar of a disconnect. "
        "It is sized from the supply conductors, since no breaker here limits the current."
    ),
    message("The main bonding jumper carries it over to the neutral bar."),
    message("Source again: the neutral takes it back to the transformer. Only the utility's device can open."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        474,
        message("Supply-side bonding jumpers at a metal wireway"),
        message(
            "One jumper connects the bushing of the metal raceway to the wireway. One connects the wireway to the "
            "grounding bar of the first service disconnect. Each disconnect has its own main bonding jumper."
        ),
    )
    picture.extend([*supply(), *disconnects(), *fault_way()])
    return finished(picture, SLUG)


def supply():
    """Return the source, the raceway and the wireway with its jumpers."""
    return [
        label(message("utility\ntransformer"), 18, 34),
        winding("source-winding", 116, 12, 3),
        raceway("service-raceway", "metal", 76, (206, 84), (206, 146)),
        label(message("metal\nraceway"), 252, 106),
        enclosure("wireway", 14, 146, 332, 72),
        conductor("service-hot", "ungrounded", (116, 12), (224, 12), (224, 198)),
        conductor("service-neutral", "grounded", (116, 60), (188, 60), (188, 178)),
        label(message("hot conductor"), 232, 36),
        label(message("neutral"), 124, 80),
        conductor("hot-bus", "ungrounded", (172, 198), (318, 198)),
        joint("hot-joint", 224, 198),
        joint("neutral-joint", 188, 178),
        conductor("neutral-bus", "grounded", (140, 178), (244, 178)),
        label(message("wireway"), 252, 168),
        bushing("bonding-bushing", 164, 142, 84),
        conductor("bushing-jumper", "bonding", (164, 156), (112, 156), (112, 218)),
        label(message("supply-side\nbonding\njumper"), 12, 238, kind="strong"),
        joint("wireway-joint", 112, 218),
    ]


def disconnects():
    """Return both service disconnects, each with its main bonding jumper."""
    return [
        enclosure("disconnect-1", 14, 284, 178, 150),
        enclosure("disconnect-2", 204, 284, 142, 150),
        label(message("service\ndisconnect"), 8, 454),
        label(message("service\ndisconnect"), 210, 454),
        *tap(1, 172, 140),
        *tap(2, 312, 244),
        conductor("supply-side-bonding-jumper", "bonding", (112, 218), (112, 392)),
        bar("grounding-bar-1", "equipment-grounding", 88, 392, 64),
        bar("grounding-bar-2", "equipment-grounding", 218, 392, 27),
        label(message("grounding\nbar"), 22, 384),
        label(message("main\nbonding\njumper"), 251, 361),
    ]


def tap(number: int, hot: float, neutral: float):
    """Return what enters one disconnect, its main bonding jumper and what leaves to the loads."""
    jumper = neutral - 10
    return [
        conductor(f"tap-hot-{number}", "ungrounded", (hot, 198), (hot, 300)),
        breaker(f"service-breaker-{number}", hot, 300),
        conductor(f"load-hot-{number}", "ungrounded", (hot, 340), (hot, 452)),
        arrow(f"load-{number}", hot, 464, "down"),
        conductor(f"tap-neutral-{number}", "grounded", (neutral, 178), (neutral, 334)),
        bar(f"neutral-bar-{number}", "grounded", neutral - 18, 334, 36),
        conductor(f"main-bonding-jumper-{number}", "bonding", (jumper, 348), (jumper, 392)),
        conductor(f"enclosure-bond-{number}", "equipment-grounding", (jumper, 406), (jumper, 434)),
        joint(f"enclosure-joint-{number}", jumper, 434),
        joint(f"hot-tap-{number}", hot, 198),
        joint(f"neutral-tap-{number}", neutral, 178),
    ]


def fault_way():
    """Return the fault and its numbered way."""
    return [
        fault("fault", 316, 198, 30),
        path_step(1, (116, 60), (116, 12), (224, 12), (224, 84)),
        path_step(2, (224, 84), (224, 198), (318, 198)),
        path_step(3, (318, 198), (346, 192), (346, 218), (112, 218)),
        path_step(4, (112, 218), (112, 399)),
        path_step(5, (112, 399), (130, 399), (130, 341)),
        path_step(6, (130, 341), (140, 341), (140, 178), (188, 178), (188, 60), (116, 60)),
        step_mark(1, 170, 12),
        step_mark(2, 224, 124),
        step_mark(3, 332, 172),
        step_mark(4, 112, 306),
        step_mark(5, 148, 370),
        step_mark(6, 188, 116),
    ]
