"""The circuit whose bonds can be taken away: source, first disconnect, panel, machine, and whoever touches them."""

from __future__ import annotations

import drawsvg

from calc.fault.scene.scene import PARTS
from calc.known import known
from calc.messages import message
from calc.registry import CALCULATORS
from site_assets.diagrams.symbols import (
    bar,
    breaker,
    canvas,
    conductor,
    dot,
    earth,
    enclosure,
    fault,
    finished,
    label,
    load,
    person,
    pressed,
    tube,
    winding,
)
from site_assets.render.scene import SLUG, scene_parts

CAPTION = message(
    "A drawing only: never open a real bond to see. Press a bond: in place, missing, loose. Press a dotted line to "
    "add what should not be there. Press a part to put the fault on it. A heavier line carries ten times the current; "
    "a part's outline grows from a hundredth, a tenth and a half of the source's 120 V."
)
METAL, NEUTRAL, HOT_B, HOT_A = 96, 190, 252, 290  # the four ways down
# Parts first, so that the bonds drawn over them are pressed in their stead: x, y, width, height.
PRESSED_PARTS = {
    "supply-raceway": (150, 84, 158, 104),
    "service": (70, 206, 266, 130),
    "panel": (70, 436, 266, 130),
    "machine": (70, 676, 266, 64),
    "buried-elbow": (252, 580, 104, 56),
}
PRESSED_BONDS = {
    "supply-side-bonding-jumper": (48, 134, 96, 70),
    "supply-neutral": (162, 64, 56, 140),
    "main-bonding-jumper": (112, 244, 56, 54),
    "feeder-return": (60, 338, 72, 96),
    "feeder-neutral": (162, 338, 66, 96),
    "branch-return": (60, 568, 72, 106),
}
PRESSED_ADDED = {
    "electrode-on-enclosure": (12, 266, 58, 54),
    "neutral-bond-at-panel": (112, 452, 56, 54),
    "machine-electrode": (60, 742, 60, 54),
}


def svg() -> str:
    """Return the drawing as SVG, as it stands before anything is pressed."""
    shown = known(scene_parts(CALCULATORS[SLUG]()))
    picture = canvas(
        SLUG,
        360,
        800,
        message("A source, a first disconnect, a panel and a machine with the bonds between them"),
        message("You can press each bond and each part. The list beside it says what the drawing shows."),
        pressed=True,
    )
    drawn = [*parts(), *wires(), *bonds(), *electrodes(), *faults(), *people()]
    for element in drawn:
        if isinstance(element, drawsvg.DrawingBasicElement):
            marks = shown["marks"].get(element.args.get("id"), {})
            element.args.update({f"data-{name}": value for name, value in marks.items()})
    picture.extend([*drawn, *names(), *told(shown["words"]), *areas(shown["names"])])
    return finished(picture, SLUG)


def parts():
    """Return the metal parts and the bars inside them."""
    return [
        enclosure("supply-raceway", 150, 84, 158, 104),
        enclosure("service", 70, 206, 266, 130),
        enclosure("panel", 70, 436, 266, 130),
        enclosure("machine", 70, 676, 266, 64),
        enclosure("buried-elbow", 274, 588, 32, 40),
        winding("source-winding-a", 142, 44, 3, level=True),
        winding("source-winding-b", 190, 44, 3, level=True),
        bar("service-neutral-bar", "grounded", 168, 262, 44),
        bar("service-grounding-bar", "equipment-grounding", 78, 262, 42),
        bar("panel-neutral-bar", "grounded", 168, 470, 44),
        bar("panel-grounding-bar", "equipment-grounding", 78, 470, 42),
    ]


def wires():
    """Return the conductors that carry current in use, their breakers and the loads."""
    return [
        conductor("supply-hot-a", "ungrounded", (142, 44), (142, 14), (HOT_A, 14), (HOT_A, 214)),
        conductor("supply-hot-b", "ungrounded", (238, 44), (HOT_B, 44), (HOT_B, 214)),
        conductor("supply-neutral", "grounded", (NEUTRAL, 44), (NEUTRAL, 262)),
        breaker("supply-breaker-a", HOT_A, 214),
        breaker("supply-breaker-b", HOT_B, 214),
        breaker("feeder-breaker-a", HOT_A, 284),
        breaker("feeder-breaker-b", HOT_B, 284),
        conductor("service-bus-a", "ungrounded", (HOT_A, 254), (HOT_A, 284)),
        conductor("service-bus-b", "ungrounded", (HOT_B, 254), (HOT_B, 284)),
        conductor("feeder-hot-a", "ungrounded", (HOT_A, 324), (HOT_A, 494)),
        conductor("feeder-hot-b", "ungrounded", (HOT_B, 324), (HOT_B, 456)),
        conductor("feeder-neutral", "grounded", (NEUTRAL, 276), (NEUTRAL, 470)),
        load("load-b", (NEUTRAL, 456), (HOT_B, 456)),
        load("load-a", (212, 477), (HOT_A, 477)),
        breaker("branch-breaker", HOT_A, 494),
        conductor("branch-hot", "ungrounded", (HOT_A, 534), (HOT_A, 610), (250, 610), (250, 700)),
    ]


def bonds():
    """Return the bonds that can be missing or loose, and the one too many in the panel."""
    return [
        conductor("supply-side-bonding-jumper", "bonding", (150, 146), (METAL, 146), (METAL, 206)),
        conductor("service-enclosure-bond", "equipment-grounding", (84, 276), (84, 336)),
        conductor("main-bonding-jumper", "bonding", (120, 269), (168, 269)),
        tube("feeder-raceway", METAL, 336, 436, 26, "steel"),
        conductor("feeder-grounding-conductor", "equipment-grounding", (METAL, 276), (METAL, 470)),
        conductor("panel-enclosure-bond", "equipment-grounding", (84, 484), (84, 566)),
        conductor("neutral-bond-at-panel", "bonding", (120, 477), (168, 477)),
        tube("flexible-raceway", METAL, 566, 676, 26, "flexible"),
        conductor("branch-grounding-conductor", "equipment-grounding", (METAL, 484), (METAL, 676)),
        dot(METAL, 676),
    ]


def electrodes():
    """Return the electrodes and the conductors to them."""
    return [
        conductor("source-electrode", "electrode", (NEUTRAL, 62), (34, 62)),
        earth("source-earth", 34, 62),
        conductor("service-electrode", "electrode", (178, 262), (178, 228), (34, 228), (34, 326)),
        conductor("electrode-on-enclosure", "electrode", (70, 294), (34, 294), (34, 326)),
        earth("service-earth", 34, 326),
        conductor("machine-electrode", "electrode", (90, 740), (90, 766)),
        earth("machine-earth", 90, 766),
        conductor("machine-winding", "ungrounded", (250, 700), (250, 716)),
    ]


def faults():
    """Return the place where a hot conductor touches each part."""
    return [
        fault("fault-supply-raceway", HOT_A, 130, 18),
        fault("fault-service", HOT_A, 270, 46),
        fault("fault-panel", HOT_A, 470, 46),
        fault("fault-machine", 250, 700, 86),
        fault("fault-buried-elbow", HOT_A, 606, 16),
    ]


def people():
    """Return someone who touches each part that can be reached."""
    return [
        person("person-supply-raceway", 340, 110, 310),
        person("person-service", 346, 232, 338),
        person("person-panel", 346, 462, 338),
        person("person-machine", 346, 684, 338),
    ]


def names():
    """Return the words that never change."""
    return [
        label(message("source"), 8, 20),
        label(message("metal\nraceway"), 142, 94, "end"),
        label(message("supply-side\njumper"), 8, 160),
        label(message("100 A"), 234, 240, "end"),
        label(message("60 A"), 234, 310, "end"),
        label(message("20 A"), 298, 508),
        label(message("main bonding\njumper"), 78, 243),
        label(message("disconnect"), 104, 308),
        label(message("rod"), 4, 314),
        label(message("grounding\npath"), 4, 372),
        label(message("neutral"), 199, 372),
        label(message("neutral"), 199, 152),
        label(message("neutral\nbond"), 112, 453),
        label(message("panel"), 104, 530),
        label(message("grounding\npath"), 4, 604),
        label(message("buried\nelbow"), 312, 588),
        label(message("machine"), 104, 704),
        label(message("rod"), 114, 776),
    ]


def told(words: dict[str, str]):
    """Return the words that change with the answer, as they stand first."""
    places = {
        "source-name": (8, 36, ""),
        "supply-raceway-volt": (142, 130, "volt before"),
        "service-volt": (104, 328, "volt"),
        "panel-volt": (104, 552, "volt"),
        "machine-volt": (104, 728, "volt"),
        "buried-elbow-volt": (312, 622, "volt"),
        "supply-side-bonding-jumper-state": (8, 194, "state"),
        "supply-neutral-state": (198, 168, "state"),
        "main-bonding-jumper-state": (124, 292, "state"),
        "feeder-return-state": (4, 406, "state"),
        "feeder-neutral-state": (198, 390, "state"),
        "branch-return-state": (4, 638, "state"),
        "neutral-bond-at-panel-state": (124, 500, "state"),
        "machine-electrode-state": (114, 792, "state"),
        "electrode-on-enclosure-state": (8, 288, "state"),
        "supply-raceway-ampere": (HOT_A - 8, 118, "ampere"),
        "service-ampere": (HOT_A - 8, 274, "ampere"),
        "panel-ampere": (HOT_A - 8, 440, "ampere"),
        "machine-ampere": (320, 716, "ampere"),
        "buried-elbow-ampere": (HOT_A - 10, 582, "ampere"),
        "person-supply-raceway-current": (357, 182, "current"),
        "person-service-current": (357, 304, "current"),
        "person-panel-current": (357, 534, "current"),
        "person-machine-current": (357, 757, "current"),
    }
    anchors = {"ampere": "end", "current": "end", "volt before": "end"}
    return [
        label(words[name], x, y, anchors.get(kind, "start"), f"told {kind}", name=name)
        for name, (x, y, kind) in places.items()
    ]


def areas(spoken: dict[str, str]):
    """Return what can be pressed, the larger areas below the smaller ones."""
    if set(PRESSED_PARTS) != set(PARTS):
        raise ValueError("each part of the circuit has one place to press")
    kinds = (("part", PRESSED_PARTS), ("bond", PRESSED_BONDS), ("added", PRESSED_ADDED))
    return [pressed(kind, name, spoken[name], *place) for kind, places in kinds for name, place in places.items()]
