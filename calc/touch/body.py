"""The current through a body: by the voltage across it, the path and the skin, in few people, half and most."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.electrodes.entered import shown
from calc.touch.shock_fields import DRY, HAND_FEET, HANDS_FEET, WATER_WET
from calc.words import say
from calc.working import Working

IMPEDANCE = "touch/body_impedance"
PATHS = "touch/path_factor"
BODY = "touch/body_resistance"
MILLI = 1000
FINE_ENOUGH = 1e-9
SHARES_OF_PEOPLE = ("five", "fifty", "ninety_five")
SHARES = {"few": 2, "half": 1, "most": 0}  # of Currents, by place in those of people


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
    table = _table(condition, working)
    part, floor = path_part(path, condition, working), math.inf if condition == DRY else _floor(path, working)

    def current(share: str) -> float:
        most_ohm = floor if share == "most" else math.inf

        def ohm(across: float) -> float:
            return min(most_ohm, part * _between(table, across)[SHARES[share]])

        low, high = (0.0, volt) if behind else (volt, volt)
        while high - low > FINE_ENOUGH * volt:
            middle = (low + high) / 2
            if middle * (1 + behind / ohm(middle)) < volt:
                low = middle
            else:
                high = middle
        return MILLI * volt / (behind + ohm(high))

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
    ohms = dict(zip(SHARES_OF_PEOPLE, _between(_table(condition, working), volt), strict=True))
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


def _table(condition: str, working: Working) -> list[tuple[float, tuple[float, ...]]]:
    """Give the ohms of 5, 50 and 95 percent of people from hand to hand by voltage."""
    rows = (row for row in working.cite(IMPEDANCE).rows if row["condition"] == condition)
    return [(row["volt"], tuple(row[share] for share in SHARES_OF_PEOPLE)) for row in rows]


def _between(table: list[tuple[float, tuple[float, ...]]], volt: float) -> tuple[float, ...]:
    """Between two voltages on a straight line; below the first as there, which gives more current than flows."""
    volt = min(volt, table[-1][0])  # a circuit's last bit above it
    above = next(place for place, (at, _) in enumerate(table) if at >= volt)
    if not above:
        return table[0][1]
    (low, one), (high, other) = table[above - 1 : above + 1]
    part = (volt - low) / (high - low)
    return tuple(near + part * (far - near) for near, far in zip(one, other, strict=True))
