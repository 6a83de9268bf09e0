"""What the drawing of the scene shows for an answer: marks, words and names by the ids of the drawing.

The build fills the drawing with it, the page's worker sends it along with each answer.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from calc.calculator import Result
from calc.data_file import Data
from calc.fault.scene.scene import PARTS
from calc.fault.scene.scene_opening import shown
from calc.fault.scene.scene_words import ADDED_WORDS, BOND_WORDS, BRANCH_WORDS, PART_IN_SENTENCE, PART_WORDS
from calc.messages import Message, message
from site_assets.render.answer import text

SLUG = "take-a-bond-away"
# How the drawing shades, no limits of anything: a line grows with each tenfold current, a part by its share of 120 V.
MIN_AMPERE, MAX_FLOW = 0.01, 5
LEVELS_VOLT = (1.2, 12, 60)

PATHS = {
    "feeder-return": {"feeder-raceway": ("raceway", "both"), "feeder-grounding-conductor": ("wire", "both")},
    "branch-return": {"flexible-raceway": ("flexible-raceway", "both"), "branch-grounding-conductor": ("wire", "both")},
}
PATH_FIELD = {"feeder-return": "feeder_path", "branch-return": "branch_path"}
STATE_WORDS = {
    "present": message("in place"),
    "missing": message("missing"),
    "loose": message("loose"),
    "added": message("added"),
    "offered": message("not there"),
}
SAID_IN_DRAWING = ("missing", "loose", "added")
SOURCE_WORDS = {"utility": message("utility"), "transformer": message("transformer")}
NOT_TOLD = ("supply-hot-b", "feeder-hot-a", "feeder-hot-b", "branch-hot", "load-a", "load-b", "fault")


def scene_parts(result: Result) -> Data | None:
    """Return what the drawing shows: `marks` and `words` by id, `names` to press, `twin`; None where none is drawn."""
    if result.calculator.slug != SLUG or result.outcome != "answer":
        return None
    inputs, values = result.inputs, result.answered.values
    states = bond_states(inputs)
    marks = {name: {"flow": str(flow(values["currents"].get(name, 0)))} for name in BRANCHES}
    for name, state in branch_states(inputs, states).items():
        marks[name]["state"] = state
    words = {
        f"{name}-state": str(STATE_WORDS[each]) if each in SAID_IN_DRAWING else "" for name, each in states.items()
    }
    for part in PARTS:
        here = inputs["fault"] == part
        marks[part] = {"level": str(level(values["volts"][part]))}
        marks[f"fault-{part}"] = {"state": "present" if here else "absent"}
        words[f"{part}-volt"] = str(message("{volt} V", volt=shown(values["volts"][part])))
        words[f"{part}-ampere"] = str(message("{ampere} A", ampere=shown(values["fault_ampere"]))) if here else ""
    for part in PARTS[:-1]:
        here = inputs["touched"] == part
        marks[f"person-{part}"] = {"state": "present" if here else "absent"}
        words[f"person-{part}-current"] = _milliampere(values) if here else ""
    words["verdict"] = str(result.answered.headline)
    words["source-name"] = str(SOURCE_WORDS[inputs["source"]])
    return {
        "marks": marks,
        "words": words,
        "names": names(inputs, states, values),
        "twin": text_alternative_html(result, states),
    }


BRANCHES = (
    "supply-hot-a", "supply-hot-b", "supply-neutral", "feeder-hot-a", "feeder-hot-b", "feeder-neutral", "branch-hot",
    "main-bonding-jumper", "supply-side-bonding-jumper", "feeder-grounding-conductor", "feeder-raceway",
    "branch-grounding-conductor", "flexible-raceway", "neutral-bond-at-panel", "source-electrode", "service-electrode",
    "electrode-on-enclosure", "machine-electrode", "load-a", "load-b",
)  # fmt: skip


def flow(ampere: float) -> int:
    """Return the weight of a line, 0 to 5: one more with each tenfold current from a hundredth of an ampere.

    >>> flow(0), flow(0.05), flow(275), flow(1e9)
    (0, 1, 5, 5)
    """
    if ampere < MIN_AMPERE:
        return 0
    return min(MAX_FLOW, 1 + math.floor(math.log10(ampere / MIN_AMPERE)))


def level(volt: float) -> int:
    """Return how a part is outlined, 0 to 3: from a hundredth, a tenth and a half of 120 V.

    >>> level(0.5), level(1.2), level(59), level(120)
    (0, 1, 2, 3)
    """
    return sum(volt >= limit for limit in LEVELS_VOLT)


def bond_states(inputs: Mapping[str, Any]) -> dict[str, str]:
    """Return the state of each bond that can be pressed: present, missing, loose; added or offered."""
    missing, loose, added = ((inputs[name] or "").split(",") for name in ("missing", "loose", "added"))
    states = {name: "missing" if name in missing else "loose" if name in loose else "present" for name in BOND_WORDS}
    return states | {name: "added" if name in added else "offered" for name in ADDED_WORDS}


def branch_states(inputs: Mapping[str, Any], states: dict[str, str]) -> dict[str, str]:
    """Return the state of each branch of a bond; one that this circuit does not have is absent."""
    found = {name: state for name, state in states.items() if name not in PATHS}
    found["service-electrode"] = "absent" if states["electrode-on-enclosure"] == "added" else "present"
    found["source-electrode"] = "present"
    for name in ("load-a", "load-b"):
        found[name] = "present" if inputs["loads"] == "on" else "off"
    for bond, branches in PATHS.items():
        there = [branch for branch, paths in branches.items() if inputs[PATH_FIELD[bond]] in paths]
        for branch in branches:
            found[branch] = states[bond] if branch in there else "absent"
        if states[bond] == "loose":
            for branch in there[1:]:  # a loose raceway leaves the wire beside it tight
                found[branch] = "present"
    return found


def names(inputs: Mapping[str, Any], states: dict[str, str], values: Mapping[str, Any]) -> dict[str, str]:
    """Return the name of each bond and part to press, as screen readers say it."""
    words = BOND_WORDS | ADDED_WORDS
    named = {
        name: message("{bond}: {state}. Press to change it.", bond=words[name], state=STATE_WORDS[state])
        for name, state in states.items()
    }
    for part in PARTS:
        here = inputs["fault"] == part
        press = (
            message("The fault is here. Press to take it away.") if here else message("Press to put the fault here.")
        )
        volt = shown(values["volts"][part])
        named[part] = message("{part}: {volt} V to earth. {press}", part=PART_WORDS[part], volt=volt, press=press)
    return {name: str(each) for name, each in named.items()}


def text_alternative_html(result: Result, states: dict[str, str]) -> str:
    """Return the list that tells what the drawing shows."""
    rows = "".join(f"<li>{text(words)}</li>" for words in _told(result, states))
    return f"<ul>{rows}</ul>"


def _told(result: Result, states: dict[str, str]) -> list[Message]:
    inputs, values = result.inputs, result.answered.values
    fault = inputs["fault"]
    told = [
        message("No hot conductor touches metal.")
        if fault == "none"
        else message(
            "A hot conductor touches {part}: {ampere} A.",
            part=PART_IN_SENTENCE[fault],
            ampere=shown(values["fault_ampere"]),
        )
    ]
    words = BOND_WORDS | ADDED_WORDS
    told += [
        message("{bond}: {state}.", bond=words[name], state=STATE_WORDS[state])
        for name, state in states.items()
        if state in SAID_IN_DRAWING
    ]
    if len(told) == 1:
        told.append(message("Every bond is in place."))
    told += [
        message(
            "{part}: {volt} V to earth.", part=PART_WORDS[part], volt=shown(values["volts"][part])
        ) for part in PARTS
    ]
    told += [
        message("{branch}: {ampere} A.", branch=BRANCH_WORDS[name], ampere=shown(ampere))
        for name, ampere in values["currents"].items()
        if name not in (*NOT_TOLD, "person") and ampere >= MIN_AMPERE
    ]
    if values["leg_volts"]:
        legs = {name: shown(volt) for name, volt in values["leg_volts"].items()}
        told.append(
            message("With the loads on: {lighter} V on the lighter leg, {heavier} V on the heavier.", **legs)
        )
    if inputs["touched"] != "none":
        part = PART_IN_SENTENCE[inputs["touched"]]
        told.append(
            message("Through the person who touches {part}: {current}.", part=part, current=_milliampere(values))
        )
    return told


def _milliampere(values: Mapping[str, Any]) -> str:
    return str(message("{milliampere} mA", milliampere=shown(1000 * values["currents"]["person"])))
