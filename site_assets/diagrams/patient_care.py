"""A branch circuit at a patient's bed with two fault paths: metal raceway and an insulated wire inside."""

from __future__ import annotations

import drawsvg

from calc.messages import message
from site_assets.diagrams.scenery import clamp, outline, pipe, pointer, receptacle, sleeve
from site_assets.diagrams.symbols import (
    bar,
    breaker,
    canvas,
    conductor,
    dot,
    enclosure,
    fault,
    finished,
    insulator,
    joint,
    label,
    path_step,
    step_mark,
)

SLUG = "patient-care"
CAPTION = message(
    "Two return paths at once: the metal around the wires, and the green wire inside it. If one works loose, the "
    "other still carries the fault. A drawing only: never open a real path to see."
)
TEXT_ALTERNATIVE = (
    message(
        "Source: the feeder brings the current to the breaker. From there the ungrounded (hot) conductor runs to the "
        "receptacle."
    ),
    message("Fault: in the box behind the receptacle, the hot conductor touches metal."),
    message(
        "First path: the box, the metal raceway and its fittings carry the current back to the metal of the panel."
    ),
    message(
        "Second path, at the same time: the insulated green wire, tied to the box and the receptacle, carries it to "
        "the grounding bar. Lose one path, and the other still works."
    ),
    message(
        "The feeder's equipment grounding conductor takes it on to the service. There the main bonding jumper "
        "carries it to the neutral and so to its source. The breaker trips."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        490,
        message("Two fault paths at a patient's bed"),
        message(
            "A metal raceway runs from a branch panel to a metal box with a receptacle at a bed. An insulated green "
            "wire inside runs with the circuit. A fault in the box has both return paths."
        ),
    )
    picture.extend([*panel(), *run(), *bed(), *steps()])
    return finished(picture, SLUG)


def panel():
    """Return the feeder and the branch panel, its neutral bar apart from the metal."""
    return [
        label(message("feeder from the service"), 196, 20),
        conductor("feeder-grounding-conductor", "equipment-grounding", (82, 8), (82, 182)),
        label(message("equipment\ngrounding\nconductor"), 75, 22, "end"),
        conductor("feeder-neutral", "grounded", (108, 8), (108, 108)),
        conductor("feeder-hot", "ungrounded", (184, 8), (184, 76)),
        enclosure("branch-panel", 14, 64, 196, 174),
        label(message("branch panel"), 218, 78),
        breaker("breaker", 184, 76),
        insulator("insulator-1", 110, 122),
        insulator("insulator-2", 138, 122),
        bar("neutral-bar", "grounded", 98, 108, 52),
        label(message("neutral"), 116, 100),
        bar("grounding-bar", "equipment-grounding", 40, 182, 104),
        label(message("grounding\nbar"), 58, 212),
        conductor("panel-bond", "equipment-grounding", (50, 196), (50, 238)),
        joint("panel-joint", 50, 238),
    ]


def run():
    """Return the raceway with its wires, the box and the receptacle."""
    return [
        pipe("metal-raceway", "steel", 82, (154, 238), (154, 330)),
        *sleeve("upper-connector", 154, 246, 82),
        *sleeve("lower-connector", 154, 322, 82),
        enclosure("box", 84, 330, 140, 140),
        conductor("hot", "ungrounded", (184, 116), (184, 340), (206, 340), (206, 374), (190, 374)),
        conductor("neutral", "grounded", (150, 115), (158, 115), (158, 340), (142, 340), (142, 374), (150, 374)),
        conductor("green-wire", "equipment-grounding", (130, 196), (130, 456), (170, 456), (170, 438)),
        receptacle("receptacle", 150, 354),
        conductor("box-wire", "equipment-grounding", (130, 424), (102, 424)),
        dot(130, 424),
        clamp("box-screw", 98, 424, 12),
        fault("fault", 206, 374, 17),
        label(message("first path:\nmetal raceway,\nor armor that\nqualifies"), 210, 262, kind="strong"),
        label(message("second path:\ninsulated\ngreen wire"), 8, 276, kind="strong"),
        pointer("to-green-wire", (84, 288), (128, 288)),
        label(message("bonded to the\nbox too"), 8, 420),
        label(message("metal box"), 84, 486),
    ]


def bed():
    """Return the bed with a patient in it."""
    frame = drawsvg.Group(id="bed", class_="surrounding")
    for line in ((252, 388, 252, 470), (346, 420, 346, 470), (252, 446, 346, 446)):
        frame.append(drawsvg.Line(*line, class_="edge"))
    frame.append(drawsvg.Rectangle(254, 434, 90, 12, rx=4, class_="edge face"))
    patient = drawsvg.Group(id="patient", class_="standing")
    patient.append(drawsvg.Lines(274, 426, 308, 428, 336, 428, close=False, class_="limb"))
    patient.append(drawsvg.Circle(265, 422, 8))
    return [
        outline("floor", (234, 470), (356, 470), kind="faint"),
        frame,
        patient,
        label(message("bed"), 299, 464, "middle"),
        label(message("receptacle\nat the bed"), 240, 346),
        pointer("to-receptacle", (236, 352), (194, 362)),
    ]


def steps():
    """Return the marks and stretches of the way round."""
    return [
        path_step(1, (184, 8), (184, 340), (206, 340), (206, 374)),
        path_step(2, (206, 374), (224, 368)),
        path_step(3, (224, 368), (224, 330), (194, 330), (194, 238), (50, 238), (50, 189)),
        path_step(4, (224, 368), (224, 470), (84, 470), (84, 424), (130, 424), (130, 189)),
        path_step(5, (130, 189), (82, 189), (82, 8)),
        step_mark(1, 184, 150),
        step_mark(2, 238, 376),
        step_mark(3, 195, 284),
        step_mark(4, 130, 310),
        step_mark(5, 82, 84),
    ]
