"""The current through a body: by the voltage across it, the path and the skin, in few people, half and most."""

from __future__ import annotations

from dataclasses import dataclass

from calc.electrodes.entered import shown
from calc.touch.shock_fields import DRY, HAND_FEET, HANDS_FEET, WATER_WET
from calc.words import say
from calc.working import Working

IMPEDANCE = "touch/body_impedance"
PATHS = "touch/path_factor"
BODY = "touch/body_resistance"
MILLI = 1000
HALVINGS = 40
SHARES = {"few": "ninety_five", "half": "fifty", "most": "five"}


@dataclass(frozen=True)
class Currents:
    """Through a body, mA: 95 of 100 people get more than `few`, half more than `half`; `most` is the upper bound."""

    few: float
    half: float
    most: float


def body_currents(volt: float, path: str, condition: str, working: Working) -> Currents:
    """Give the currents through a body at a voltage across it, V, and record how.

    path: one of the rule touch/path_factor. condition: "dry", "water-wet" or "salt-water-wet". Wet skin is never
    counted with more than the 500 ohm that broken or wet skin may have, a second hand beside it with less.
    """
    ohms = hand_to_hand(volt, condition, working)
    part = path_part(path, condition, working)
    found = currents_behind(volt, path, condition, working)
    working.compute(
        say("Along this path it has {part} of that from hand to hand. Half of people get more than:", part=shown(part)),
        "milli * volt / (part * ohm)",
        "mA",
        (IMPEDANCE, PATHS),
        milli=MILLI,
        volt=volt,
        part=part,
        ohm=ohms["fifty"],
    )
    if condition != DRY:
        floor = _floor(path, working)
        words = say("Wet or broken skin counts with no more than {floor} ohm.", floor=shown(floor))
        working.step(words, min(part * ohms["five"], floor), "ohm", (BODY,))
    working.compute(
        say("Counted as the most: 19 of 20 people get less."),
        "milli * volt / ohm",
        "mA",
        milli=MILLI,
        volt=volt,
        ohm=MILLI * volt / found.most,
    )
    return found


def currents_behind(volt: float, path: str, condition: str, working: Working, behind: float = 0.0) -> Currents:
    """Give the same currents where `behind` ohms of source, soil or shoes stand before the body.

    volt: with no one there. Records no steps. A body has fewer ohms at more volts, so its share is sought by halving.
    """

    def ohm(share: str, across: float) -> float:
        found = path_part(path, condition, working) * _ohms(across, condition, working)[SHARES[share]]
        return min(found, _floor(path, working)) if share == "most" and condition != DRY else found

    def current(share: str) -> float:
        low, high = (0.0, volt) if behind else (volt, volt)
        for _ in range(HALVINGS if behind else 0):
            middle = (low + high) / 2
            if middle * (1 + behind / ohm(share, middle)) < volt:
                low = middle
            else:
                high = middle
        return MILLI * high / ohm(share, high)

    return Currents(*(current(share) for share in SHARES))


def path_part(path: str, condition: str, working: Working) -> float:
    """Give the impedance along a path as a part of that from hand to hand."""
    row = next(row for row in working.cite(PATHS).rows if row["path"] == path)
    return row["dry" if condition == DRY else "wet"]


def _floor(path: str, working: Working) -> float:
    """Give the ohms that wet or broken skin never passes: 500 along one way, less with a second hand beside it."""
    floor = working.cite(BODY).rows[0]["low"]
    if path != HANDS_FEET:
        return floor
    one, both = (path_part(each, WATER_WET, working) for each in (HAND_FEET, HANDS_FEET))
    return floor * both / one


def hand_to_hand(volt: float, condition: str, working: Working) -> dict[str, float]:
    """Give the impedance from hand to hand, ohm, that 5, 50 and 95 percent of people do not exceed, and record it."""
    ohms = _ohms(volt, condition, working)
    working.step(
        say(
            "Hand to hand at {volt} V, 5, 50 and 95 percent of people have no more than {five}, {fifty} and "
            "{ninety_five} ohm.",
            volt=shown(volt),
            **{name: shown(ohm) for name, ohm in ohms.items()},
        ),
        cites=(IMPEDANCE,),
    )
    return ohms


def _ohms(volt: float, condition: str, working: Working) -> dict[str, float]:
    """Between two voltages of the table on a straight line; below the first as there, which gives more than flows."""
    rows = [row for row in working.cite(IMPEDANCE).rows if row["condition"] == condition]
    above = next(row for row in rows if row["volt"] >= volt)
    below = rows[max(0, rows.index(above) - 1)]
    part = (volt - below["volt"]) / (above["volt"] - below["volt"]) if above is not below else 0.0
    return {name: below[name] + part * (above[name] - below[name]) for name in ("five", "fifty", "ninety_five")}
