"""The service disconnect enclosure with its main bonding jumper, and a fault's way round."""

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
    label,
    path_step,
    step_mark,
    winding,
)

SLUG = "main-bonding-jumper"
CAPTION = message(
    "Where the main bonding jumper is, and how a fault gets back to its source. A drawing only: never open a real "
    "bond to see."
)
TEXT_ALTERNATIVE = (
    message("Source: the utility transformer pushes current out on the ungrounded conductor."),
    message("Phase: it goes through the service disconnect and the branch breaker to the machine."),
    message("Fault: inside the machine the conductor touches the metal case."),
    message("Return: the equipment grounding conductor carries it back to the equipment grounding bar."),
    message(
        "The main bonding jumper carries it over to the neutral bar. Without the jumper it stops here, the breaker "
        "stays closed and every metal part stays live."
    ),
    message(
        "Source again: the grounded service conductor, the neutral, takes it back to the transformer. Now the "
        "current is large, and the breaker trips."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        474,
        message("Main bonding jumper in a service disconnect enclosure"),
        message(
            "The jumper connects the neutral bar and the equipment grounding bar inside the enclosure. The numbered "
            "fault path runs from the source through the machine and back over the jumper."
        ),
    )
    parts = [
        label(message("utility\ntransformer"), 22, 36),
        winding("source-winding", 128, 14, 4),
        conductor("ungrounded-service-conductor", "ungrounded", (128, 14), (200, 14), (200, 150)),
        conductor("grounded-service-conductor", "grounded", (128, 78), (96, 78), (96, 236)),
        label(message("ungrounded\nconductor"), 212, 56),
        label(message("grounded\nconductor\n(neutral)"), 84, 90, "end"),
        enclosure("service-enclosure", 24, 134, 244, 204),
        label(message("service\ndisconnect\nenclosure"), 276, 150),
        breaker("service-disconnect", 200, 150),
        conductor("line-bus", "ungrounded", (200, 190), (200, 208), (250, 208), (250, 214)),
        breaker("branch-breaker", 250, 214),
        label(message("breaker"), 276, 238),
        conductor("branch-ungrounded-conductor", "ungrounded", (250, 254), (250, 364), (300, 364), (300, 402)),
        bar("neutral-bar", "grounded", 38, 236, 104),
        label(message("neutral bar"), 150, 248),
        conductor("grounding-electrode-conductor", "electrode", (48, 250), (48, 430)),
        earth("grounding-electrode", 48, 430),
        label(message("to the grounding\nelectrode"), 72, 434),
        bar("equipment-grounding-bar", "equipment-grounding", 70, 302, 72),
        conductor("enclosure-bond", "equipment-grounding", (84, 316), (84, 338)),
        label(message("equipment\ngrounding bar"), 150, 308),
        conductor("main-bonding-jumper", "bonding", (112, 250), (112, 302)),
        label(message("main bonding\njumper"), 126, 272, kind="strong"),
        enclosure("machine", 262, 392, 86, 60),
        label(message("machine"), 272, 466),
        fault("fault", 300, 406, 48),
        conductor(
            "equipment-grounding-conductor",
            "equipment-grounding",
            (128, 316),
            (128, 364),
            (218, 364),
            (218, 424),
            (262, 424),
        ),
        label(message("equipment grounding\nconductor"), 58, 384),
        path_step(1, (128, 78), (128, 14), (200, 14), (200, 150)),
        path_step(2, (200, 150), (200, 208), (250, 208), (250, 364), (300, 364), (300, 406)),
        path_step(3, (300, 406), (348, 400), (348, 452), (262, 452), (262, 424)),
        path_step(4, (262, 424), (218, 424), (218, 364), (128, 364), (128, 309)),
        path_step(5, (128, 309), (112, 309), (112, 243)),
        path_step(6, (112, 243), (96, 243), (96, 78), (128, 78)),
        step_mark(1, 164, 14),
        step_mark(2, 275, 364),
        step_mark(3, 322, 430),
        step_mark(4, 218, 404),
        step_mark(5, 92, 276),
        step_mark(6, 96, 178),
    ]
    picture.extend(parts)
    return finished(picture, SLUG)
