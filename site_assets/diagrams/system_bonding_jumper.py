"""A transformer with its system bonding jumper and supply-side bonding jumper, and a fault's way round."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.equipment import delta, wye
from site_assets.diagrams.scenery import never
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
    path_step,
    step_mark,
)

SLUG = "system-bonding-jumper"
CAPTION = message(
    "The system bonding jumper bonds neutral to metal once, here in the transformer. The supply-side bonding jumper "
    "ties the first disconnect to it. A drawing only: never lift a real jumper to see."
)
TEXT_ALTERNATIVE = (
    message("Source: a secondary winding of the transformer pushes current out on its ungrounded (hot) conductor."),
    message("The hot conductor runs through the breaker of the first disconnect to the machine."),
    message("Fault: inside the machine the hot conductor touches the metal case."),
    message("The equipment grounding conductor carries the current back to the grounding bar of the first disconnect."),
    message("The supply-side bonding jumper carries it on to the grounding bar in the transformer."),
    message(
        "The system bonding jumper carries it over to the neutral bar. Without it the path ends here, and the "
        "breaker stays closed."
    ),
    message("Source again: the neutral point takes the current back into the winding. The breaker trips."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        570,
        message("System bonding jumper in a transformer"),
        message(
            "The jumper connects the neutral bar and the grounding bar inside the transformer. In the first "
            "disconnect the neutral bar stays isolated from metal. Numbers follow a fault from the winding to the "
            "machine and back."
        ),
    )
    picture.extend([*transformer_parts(), *disconnect_parts(), *fault_way()])
    return finished(picture, SLUG)


def transformer_parts():
    """Return the transformer: primary in delta, secondary in wye, its bars and jumpers."""
    return [
        *(conductor(f"primary-{x}", "ungrounded", (x, 6), (x, y)) for x, y in ((54, 86), (76, 48), (98, 86))),
        conductor("primary-equipment-grounding-conductor", "equipment-grounding", (36, 6), (36, 34)),
        joint("primary-joint", 36, 34),
        label(message("feeder to the transformer"), 112, 24),
        enclosure("transformer-enclosure", 24, 34, 324, 184),
        delta("primary-winding", 76, 48),
        wye("secondary-winding", 160, 58),
        conductor("phase-c", "ungrounded", (208, 58), (328, 58), (328, 318)),
        conductor("phase-b", "ungrounded", (208, 80), (304, 80), (304, 318)),
        conductor("phase-a", "ungrounded", (208, 102), (280, 102), (280, 318)),
        conductor("neutral-point", "grounded", (160, 102), (160, 130)),
        conductor("neutral", "grounded", (172, 137), (256, 137), (256, 384)),
        bar("neutral-bar", "grounded", 96, 130, 76),
        label(message("neutral bar"), 168, 126),
        conductor("system-bonding-jumper", "bonding", (112, 144), (112, 184)),
        label(message("system bonding\njumper"), 124, 162, kind="strong"),
        bar("transformer-grounding-bar", "equipment-grounding", 64, 184, 80),
        conductor("transformer-enclosure-bond", "equipment-grounding", (74, 198), (74, 218)),
        joint("transformer-joint", 74, 218),
        label(message("transformer"), 160, 210),
        conductor("grounding-electrode-conductor", "electrode", (96, 137), (44, 137), (44, 246)),
        earth("grounding-electrode", 44, 246),
        label(message("grounding\nelectrode"), 30, 277),
        conductor("supply-side-bonding-jumper", "bonding", (132, 198), (132, 384)),
        label(message("supply-side\nbonding\njumper"), 144, 244),
    ]


def disconnect_parts():
    """Return the first disconnect, where the neutral bar stays apart from metal, and the machine."""
    return [
        enclosure("first-disconnect", 64, 304, 284, 128),
        label(message("first\ndisconnect"), 144, 324),
        *(breaker(f"pole-{x}", x, 318) for x in (280, 304, 328)),
        never("neutral-link-not-made", 172, 391, (146, 391), (198, 391)),
        bar("disconnect-neutral-bar", "grounded", 198, 384, 66),
        bar("disconnect-grounding-bar", "equipment-grounding", 76, 384, 70),
        conductor("disconnect-enclosure-bond", "equipment-grounding", (92, 398), (92, 432)),
        joint("disconnect-joint", 92, 432),
        label(message("not bonded here"), 146, 420),
        conductor("hot-conductor", "ungrounded", (280, 358), (280, 516)),
        *(conductor(f"other-phase-{x}", "ungrounded", (x, 358), (x, 452)) for x in (304, 328)),
        *(arrow(f"other-load-{x}", x, 462, "down") for x in (304, 328)),
        conductor("equipment-grounding-conductor", "equipment-grounding", (116, 398), (116, 524), (176, 524)),
        joint("machine-joint", 176, 524),
        label(message("equipment\ngrounding\nconductor"), 124, 456),
        enclosure("machine", 176, 492, 136, 64),
        fault("fault", 280, 520, 32),
        label(message("machine"), 186, 546),
    ]


def fault_way():
    """Return the numbered way of the fault."""
    return [
        path_step(1, (160, 102), (280, 102), (280, 318)),
        path_step(2, (280, 318), (280, 520)),
        path_step(3, (280, 520), (312, 514), (312, 556), (176, 556), (176, 524)),
        path_step(4, (176, 524), (116, 524), (116, 391)),
        path_step(5, (116, 391), (132, 391), (132, 191)),
        path_step(6, (132, 191), (112, 191), (112, 137)),
        path_step(7, (112, 137), (160, 137), (160, 102)),
        step_mark(1, 236, 102),
        step_mark(2, 280, 470),
        step_mark(3, 330, 520),
        step_mark(4, 116, 504),
        step_mark(5, 132, 276),
        step_mark(6, 86, 164),
        step_mark(7, 146, 112),
    ]
