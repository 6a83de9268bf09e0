"""What a lost or loose neutral does to the two legs of the drawn scene: one gets too much, the other too little."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from calc.data_file import Data
from calc.fault.circuit.network import Solution
from calc.fault.scene.scene import PARTS, solved_scene
from calc.fault.scene.scene_of import VOLT, scene_of
from calc.fault.scene.scene_opening import shown
from calc.messages import Message, message
from calc.trace import Trace

NEUTRALS = ("supply-neutral", "feeder-neutral")


@dataclass(frozen=True)
class Legs:
    """Volt from each hot conductor to the neutral in the panel, and on the worst metal, with the loads on.

    missing: the neutral, not just loose. metal: None where the scene itself has the loads on, and shows it.
    """

    lighter: float
    heavier: float
    metal: float | None
    missing: bool


def legs_of(fields: Mapping[str, Any], solved: Solution) -> Legs | None:
    """Return the legs where a neutral is missing or loose, None where both are sound.

    fields: of `scene_of`; solved: that scene. With the loads off, and so nothing to see, the scene is solved once more
    with them on and without a fault.
    """
    missing, loose = (set(str(fields[name] or "").split(",")) & set(NEUTRALS) for name in ("missing", "loose"))
    if not missing | loose:
        return None
    metal = None
    if fields["loads"] == "off":
        loaded: Data = {**fields, "loads": "on", "fault": "none"}
        solved = solved_scene(scene_of(**loaded))
        metal = max(abs(solved.voltages[part]) for part in PARTS)
    neutral = solved.voltages["panel-neutral"]
    heavier, lighter = sorted(abs(solved.voltages[name] - neutral) for name in ("panel-hot-a", "panel-hot-b"))
    return Legs(lighter, heavier, metal, bool(missing))


def legs_words(legs: Legs) -> Message:
    """Return both legs in one clause."""
    words = message(
        "with the loads on, {high} V on the lighter leg and {low} V on the heavier, not {volt} V",
        high=shown(legs.lighter),
        low=shown(legs.heavier),
        volt=VOLT,
    )
    if legs.metal is None:
        return words
    return message("{words}, and up to {metal} V on metal", words=words, metal=shown(legs.metal))


def warn_of_the_legs(legs: Legs, trace: Trace) -> None:
    """Warn of the voltages, and say what comes first."""
    trace.warn(
        message(
            "{what}: {legs}. Turn the power off first, then repair the neutral. Open no bond before that: it may "
            "carry the neutral current.",
            what=message("Lost neutral") if legs.missing else message("Loose neutral"),
            legs=legs_words(legs),
        ),
        grave=True,
    )
