"""The grounded conductor from the transformer to the service, in normal use and in a fault."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    breaker,
    canvas,
    conductor,
    earth,
    enclosure,
    fault,
    finished,
    joint,
    label,
    load,
    path_step,
    step_mark,
    winding,
)

SLUG = "grounded-conductor"
CAPTION = message(
    "The neutral has two jobs. In normal use it carries the return current of the loads. In a fault it carries the "
    "whole fault current back. A drawing only: never open a real neutral."
)
TEXT_ALTERNATIVE = (
    message("Source: the utility transformer pushes current out on an ungrounded (hot) conductor."),
    message("It goes through the service disconnect and the breaker to the machine."),
    message("Fault: inside the machine the hot conductor touches the metal case."),
    message("The equipment grounding conductor carries the current back to the grounding bar of the service."),
    message("The main bonding jumper carries it over to the neutral bar."),
    message(
        "The grounded conductor, the neutral, carries it back to the middle of the transformer. The same conductor "
        "carries the load's return current when all is well."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        500,
        message("Grounded conductor from the transformer to the service"),
        message(
            "The neutral runs from the center tap of the transformer, through the meter, to the neutral bar in the "
            "service disconnect. A load is between it and one hot conductor. A fault returns on it."
        ),
    )
    picture.extend([*supply(), *service(), *loads(), *fault_way()])
    return finished(picture, SLUG)


def supply():
    """Return the transformer with both hot conductors, and the neutral from its middle."""
    return [
        label(message("utility\ntransformer"), 12, 40),
        winding("source-winding-a", 130, 20, 3),
        winding("source-winding-b", 130, 68, 3),
        conductor("service-hot-a", "ungrounded", (130, 20), (296, 20), (296, 206)),
        conductor("service-hot-b", "ungrounded", (130, 116), (266, 116), (266, 206)),
        conductor("grounded-conductor", "grounded", (130, 68), (104, 68), (104, 250)),
        joint("winding-middle", 130, 68),
        conductor("source-electrode-conductor", "electrode", (104, 96), (36, 96), (36, 116)),
        joint("source-electrode-joint", 104, 96),
        earth("source-electrode", 36, 116),
        label(message("grounded\nconductor\n(neutral)"), 114, 137, kind="strong"),
        label(message("hot conductors"), 192, 108),
    ]


def service():
    """Return the service disconnect with its bars and main bonding jumper."""
    return [
        enclosure("service-disconnect", 24, 176, 302, 172),
        label(message("service disconnect"), 116, 196),
        breaker("breaker-a", 296, 206),
        breaker("breaker-b", 266, 206),
        bar("neutral-bar", "grounded", 60, 250, 100),
        label(message("neutral bar"), 114, 240),
        conductor("main-bonding-jumper", "bonding", (92, 264), (92, 312)),
        label(message("main bonding\njumper"), 104, 286),
        bar("grounding-bar", "equipment-grounding", 76, 312, 68),
        label(message("grounding\nbar"), 150, 318),
        conductor("enclosure-bond", "equipment-grounding", (118, 326), (118, 348)),
        joint("enclosure-joint", 118, 348),
        conductor("grounding-electrode-conductor", "electrode", (70, 257), (44, 257), (44, 372)),
        earth("grounding-electrode", 44, 372),
    ]


def loads():
    """Return a load between one hot conductor and neutral, and the machine on the other."""
    return [
        conductor("load-neutral", "grounded", (160, 257), (226, 257), (226, 378)),
        conductor("load-hot", "ungrounded", (266, 246), (266, 378)),
        load("load", (226, 378), (266, 378)),
        label(message("load: its return\nis the neutral"), 286, 400, "end"),
        arrow("load-return", 226, 316, "up"),
        arrow("neutral-return", 104, 120, "up"),
        conductor("machine-hot", "ungrounded", (296, 246), (296, 452)),
        enclosure("machine", 150, 424, 182, 60),
        conductor("equipment-grounding-conductor", "equipment-grounding", (86, 326), (86, 454), (150, 454)),
        joint("machine-joint", 150, 454),
        label(message("equipment\ngrounding\nconductor"), 96, 378),
        fault("fault", 296, 452, 36),
        label(message("machine"), 164, 474),
    ]


def fault_way():
    """Return the numbered way of the fault."""
    return [
        path_step(1, (130, 68), (130, 20), (296, 20), (296, 206)),
        path_step(2, (296, 206), (296, 452)),
        path_step(3, (296, 452), (332, 446), (332, 484), (150, 484), (150, 454)),
        path_step(4, (150, 454), (86, 454), (86, 319)),
        path_step(5, (86, 319), (92, 319), (92, 257)),
        path_step(6, (92, 257), (104, 257), (104, 68), (130, 68)),
        step_mark(1, 214, 20),
        step_mark(2, 296, 316),
        step_mark(3, 345, 462),
        step_mark(4, 86, 420),
        step_mark(5, 72, 290),
        step_mark(6, 104, 212),
    ]
