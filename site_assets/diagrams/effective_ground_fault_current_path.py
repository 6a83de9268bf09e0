"""The whole loop of a fault through metal, and the earth beside it as a poor way."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import ground_line, rod
from site_assets.diagrams.symbols import (
    bar,
    breaker,
    canvas,
    conductor,
    enclosure,
    fault,
    finished,
    joint,
    label,
    path_step,
    step_mark,
    winding,
)

SLUG = "effective-ground-fault-current-path"
CAPTION = message(
    "The metal path carries a large current, and the breaker trips. The earth connects the same two ends but carries "
    "almost nothing. A drawing only: never open a real bond to see."
)
TEXT_ALTERNATIVE = (
    message("Source: the utility transformer pushes current out on the ungrounded (hot) conductor."),
    message("It goes through the breaker to the machine."),
    message("Fault: inside the machine the hot conductor touches the metal case."),
    message("The equipment grounding conductor carries the current back to the service."),
    message("The main bonding jumper carries it over to the neutral bar."),
    message(
        "Source again: the neutral takes it back to the transformer. Every part of this loop is metal: the breaker "
        "trips."
    ),
    message(
        "The earth: from the electrode of the building through soil to the electrode of the transformer. Soil is a "
        "poor conductor. Almost nothing flows here, and it trips no breaker."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        566,
        message("Effective ground-fault current path, and the earth beside it"),
        message(
            "A loop of metal runs from the transformer through the breaker, the fault, the equipment grounding "
            "conductor, the main bonding jumper and the neutral. A dotted path through the earth is outside the loop."
        ),
    )
    picture.extend([*loop(), *earth_way(), *fault_way()])
    return finished(picture, SLUG)


def loop():
    """Return the source, the service and the machine."""
    return [
        label(message("source:\nutility\ntransformer"), 150, 60),
        winding("source-winding", 130, 22, 4),
        conductor("service-hot", "ungrounded", (130, 22), (276, 22), (276, 178)),
        label(message("hot\nconductor"), 284, 74),
        conductor("service-neutral", "grounded", (130, 86), (104, 86), (104, 222)),
        label(message("neutral"), 114, 132),
        enclosure("service-panel", 72, 156, 226, 148),
        label(message("service"), 114, 176),
        breaker("breaker", 276, 178),
        label(message("breaker"), 302, 202),
        bar("neutral-bar", "grounded", 84, 222, 68),
        conductor("main-bonding-jumper", "bonding", (132, 236), (132, 274)),
        label(message("main bonding\njumper"), 144, 254),
        bar("grounding-bar", "equipment-grounding", 116, 274, 68),
        conductor("panel-bond", "equipment-grounding", (176, 288), (176, 304)),
        joint("panel-joint", 176, 304),
        conductor("branch-hot", "ungrounded", (276, 218), (276, 404)),
        conductor("equipment-grounding-conductor", "equipment-grounding", (144, 288), (144, 406), (166, 406)),
        label(message("equipment\ngrounding\nconductor"), 154, 334),
        enclosure("machine", 166, 374, 146, 64),
        joint("machine-joint", 166, 406),
        fault("fault", 276, 406, 36),
        label(message("machine"), 180, 428),
    ]


def earth_way():
    """Return both electrodes and the poor way through the soil between them."""
    return [
        conductor("source-electrode-conductor", "electrode", (104, 86), (28, 86), (28, 462)),
        joint("source-electrode-joint", 104, 86),
        conductor("service-electrode-conductor", "electrode", (92, 236), (92, 462)),
        ground_line("earth-surface", 6, 354, 466),
        rod("source-electrode", 28, 458, 510),
        rod("service-electrode", 92, 458, 510),
        conductor("earth-way", "poor", (92, 510), (84, 526), (60, 532), (36, 526), (28, 510)),
        label(message("earth: a poor path,\nalmost no current"), 108, 520),
        label(message("electrodes"), 108, 494),
    ]


def fault_way():
    """Return the numbered way of the fault, and the way through the earth."""
    return [
        path_step(1, (130, 86), (130, 22), (276, 22), (276, 178)),
        path_step(2, (276, 178), (276, 406)),
        path_step(3, (276, 406), (312, 400), (312, 438), (166, 438), (166, 406)),
        path_step(4, (166, 406), (144, 406), (144, 281)),
        path_step(5, (144, 281), (132, 281), (132, 229)),
        path_step(6, (132, 229), (104, 229), (104, 86), (130, 86)),
        path_step(7, (92, 229), (92, 510), (84, 526), (60, 532), (36, 526), (28, 510), (28, 86), (104, 86)),
        step_mark(1, 204, 22),
        step_mark(2, 276, 340),
        step_mark(3, 328, 412),
        step_mark(4, 144, 386),
        step_mark(5, 114, 256),
        step_mark(6, 104, 190),
        step_mark(7, 60, 548),
    ]
