"""A second joint of neutral and metal in a panel, and the way the normal current splits over it."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.symbols import (
    arrow,
    bar,
    breaker,
    canvas,
    conductor,
    enclosure,
    finished,
    joint,
    label,
    load,
    path_step,
    raceway,
    step_mark,
    winding,
)

SLUG = "objectionable-current"
CAPTION = message(
    "Neutral and metal are bonded a second time in the panel. In daily use, part of the load current now flows on "
    "metal. A drawing only: never open a real bond to see."
)
TEXT_ALTERNATIVE = (
    message("There is no fault. The load draws its normal current on the ungrounded (hot) conductor."),
    message("The current leaves the load and reaches the neutral bar of the panel."),
    message("One part goes on as it should, on the neutral of the feeder."),
    message("The other part crosses the second bond to the grounding bar. This bond must not be there."),
    message("That part flows on the equipment grounding conductor and the metal raceway to the service."),
    message("There the main bonding jumper carries it to the neutral bar. Both parts return to the source."),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        520,
        message("A second bond of neutral to metal puts load current on metal"),
        message(
            "The service has its main bonding jumper. The downstream panel has a second bond between neutral bar and "
            "grounding bar. The current of a load returns to the service on both the neutral and the metal."
        ),
    )
    picture.extend([*service(), *feeder(), *panel(), *current_way()])
    return finished(picture, SLUG)


def service():
    """Return the source and the service with its main bonding jumper."""
    return [
        label(message("utility\ntransformer"), 70, 28),
        winding("source-winding", 214, 14, 3),
        conductor("service-hot", "ungrounded", (214, 14), (284, 14), (284, 92)),
        conductor("service-neutral", "grounded", (214, 62), (186, 62), (186, 128)),
        enclosure("service", 24, 78, 284, 108),
        label(message("service"), 36, 98),
        breaker("service-breaker", 284, 92),
        bar("service-neutral-bar", "grounded", 166, 128, 56),
        bar("service-grounding-bar", "equipment-grounding", 66, 128, 60),
        conductor("main-bonding-jumper", "bonding", (126, 135), (166, 135)),
        label(message("main bonding\njumper"), 90, 107),
        conductor("service-bond", "equipment-grounding", (76, 142), (76, 186)),
        joint("service-joint", 76, 186),
    ]


def feeder():
    """Return the feeder in its metal raceway."""
    return [
        raceway("feeder-raceway", "metal", 40, (104, 187), (104, 315)),
        conductor("equipment-grounding-conductor", "equipment-grounding", (104, 142), (104, 366)),
        conductor("feeder-neutral", "grounded", (186, 142), (186, 366)),
        conductor("feeder-hot", "ungrounded", (284, 132), (284, 330)),
        label(message("metal\nraceway"), 24, 218),
        label(message("part of the\ncurrent,\non metal"), 78, 262, "end"),
        label(message("the rest,\non the\nneutral"), 198, 240),
        arrow("metal-current", 104, 226, "up"),
        arrow("neutral-current", 186, 226, "up", 11),
        arrow("hot-current", 284, 236, "down", 13),
    ]


def panel():
    """Return the panel with the joint that must not be there, and the load."""
    return [
        enclosure("panel", 24, 316, 284, 116),
        label(message("panel"), 36, 336),
        breaker("panel-breaker", 284, 330),
        bar("panel-neutral-bar", "grounded", 166, 366, 56),
        bar("panel-grounding-bar", "equipment-grounding", 66, 366, 60),
        conductor("second-joint", "wrong", (126, 373), (166, 373)),
        label(message("second bond:\nwrong"), 106, 402, kind="strong"),
        conductor("panel-bond", "equipment-grounding", (76, 380), (76, 432)),
        joint("panel-joint", 76, 432),
        conductor("load-neutral", "grounded", (212, 380), (212, 480)),
        conductor("load-hot", "ungrounded", (284, 370), (284, 480)),
        load("load", (212, 480), (284, 480)),
        label(message("load"), 248, 506, "middle"),
    ]


def current_way():
    """Return the numbered way of the normal current."""
    return [
        path_step(1, (214, 62), (214, 14), (284, 14), (284, 480), (248, 480)),
        path_step(2, (248, 480), (212, 480), (212, 373)),
        path_step(3, (212, 373), (186, 373), (186, 135)),
        path_step(4, (212, 373), (104, 373)),
        path_step(5, (104, 373), (104, 135)),
        path_step(6, (104, 135), (186, 135), (186, 62), (214, 62)),
        step_mark(1, 250, 14),
        step_mark(2, 212, 452),
        step_mark(3, 186, 294),
        step_mark(4, 146, 352),
        step_mark(5, 104, 294),
        step_mark(6, 146, 154),
    ]
