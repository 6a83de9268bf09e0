"""A panel, its breaker and a machine with the equipment grounding conductor between, and a fault's way round."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.symbols import (
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
    path_step,
    raceway,
    step_mark,
    winding,
)

SLUG = "equipment-grounding-conductor"
CAPTION = message(
    "The equipment grounding conductor runs with the hot conductor, from the machine to the grounding bar. It is "
    "sized from the breaker ahead. A drawing only: never open a real one to see."
)
TEXT_ALTERNATIVE = (
    message("Source: the utility transformer pushes current out on the ungrounded (hot) conductor."),
    message("It goes through the breaker and the raceway to the machine."),
    message("Fault: inside the machine the hot conductor touches the metal case."),
    message(
        "The equipment grounding conductor, in the same raceway, carries the current back to the grounding bar. "
        "Without it, the case stays live and the breaker stays closed."
    ),
    message("The main bonding jumper, in the service disconnect, carries it over to the neutral bar."),
    message("Source again: the neutral takes it back to the transformer. The breaker trips."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        480,
        message("Equipment grounding conductor from a machine to its panel"),
        message(
            "The conductor connects the metal case of the machine to the grounding bar in the service panel. It "
            "shares a plastic raceway with the hot conductor of the circuit."
        ),
    )
    picture.extend([*panel(), *circuit(), *fault_way()])
    return finished(picture, SLUG)


def panel():
    """Return the source and the service panel with its bars and main bonding jumper."""
    return [
        label(message("utility\ntransformer"), 20, 26),
        winding("source-winding", 148, 14, 4),
        conductor("service-hot", "ungrounded", (148, 14), (240, 14), (240, 132)),
        conductor("service-neutral", "grounded", (148, 78), (70, 78), (70, 148)),
        label(message("neutral"), 80, 96),
        label(message("hot conductor"), 250, 40),
        enclosure("service-panel", 24, 106, 240, 188),
        label(message("service panel"), 82, 126),
        breaker("breaker", 240, 132),
        label(message("This breaker\nsets the size."), 268, 150),
        bar("neutral-bar", "grounded", 40, 148, 84),
        label(message("neutral bar"), 130, 160),
        conductor("main-bonding-jumper", "bonding", (104, 162), (104, 226)),
        label(message("main bonding\njumper"), 116, 192),
        bar("grounding-bar", "equipment-grounding", 84, 226, 112),
        label(message("grounding\nbar"), 102, 258),
        conductor("panel-bond", "equipment-grounding", (94, 240), (94, 294)),
        joint("panel-joint", 94, 294),
        conductor("grounding-electrode-conductor", "electrode", (50, 162), (50, 380)),
        earth("grounding-electrode", 50, 380),
        label(message("grounding\nelectrode"), 18, 414),
    ]


def circuit():
    """Return the raceway with both conductors, and the machine."""
    return [
        raceway("plastic-raceway", "nonmetallic", 80, (212, 296), (212, 391)),
        conductor("branch-hot", "ungrounded", (240, 172), (240, 426), (296, 426)),
        conductor("equipment-grounding-conductor", "equipment-grounding", (186, 233), (186, 426), (150, 426)),
        label(message("equipment\ngrounding\nconductor"), 162, 328, "end", kind="strong"),
        label(message("plastic\nraceway"), 262, 330),
        enclosure("machine", 150, 392, 182, 70),
        joint("machine-joint", 150, 426),
        fault("fault", 296, 426, 36),
        label(message("machine"), 186, 450),
    ]


def fault_way():
    """Return the numbered way of the fault."""
    return [
        path_step(1, (148, 78), (148, 14), (240, 14), (240, 132)),
        path_step(2, (240, 132), (240, 426), (296, 426)),
        path_step(3, (296, 426), (332, 420), (332, 462), (150, 462), (150, 426)),
        path_step(4, (150, 426), (186, 426), (186, 233)),
        path_step(5, (186, 233), (104, 233), (104, 155)),
        path_step(6, (104, 155), (70, 155), (70, 78), (148, 78)),
        step_mark(1, 194, 14),
        step_mark(2, 240, 350),
        step_mark(3, 344, 440),
        step_mark(4, 186, 350),
        step_mark(5, 84, 196),
        step_mark(6, 70, 106),
    ]
