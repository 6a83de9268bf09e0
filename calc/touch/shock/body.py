"""The current through a body: by the voltage across it, the path and the skin, in few people, half and most."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.electrodes.entered import shown
from calc.messages import message
from calc.touch.shock.shock_fields import DRY, HAND_FEET, HANDS_FEET, WATER_WET
from calc.trace import Trace

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


def body_currents(volt: float, path: str, condition: str, trace: Trace) -> Currents:
    """Return the currents through a body at a voltage across it, V, and record how.

    path: one of the rule touch/path_factor. condition: "dry", "water-wet" or "salt-water-wet". Wet skin is never
    counted with more than the 500 ohm that broken or wet skin may have, a second hand beside it with less.
    """
    ohms = hand_to_hand(volt, condition, trace)
    part = path_part(path, condition, trace)
    found = currents_behind(volt, path, condition, trace)
    trace.compute(
        message(
            "Along this path the body has {part} of its hand-to-hand impedance. Half of people get more than:",
            part=shown(part),
        ),
        "milli * volt / (part * ohm)",
        "mA",
        (IMPEDANCE, PATHS),
        milli=MILLI,
        volt=volt,
        part=part,
        ohm=ohms["fifty"],
    )
    if condition != DRY:
        floor = _floor(path, trace)
        words = message("Wet or broken skin is taken as no more than {floor} ohm.", floor=shown(floor))
        trace.step(words, min(part * ohms["five"], floor), "ohm", (BODY,))
    trace.compute(
        message("Taken as the most: 19 of 20 people get less."),
        "milli * volt / ohm",
        "mA",
        milli=MILLI,
        volt=volt,
        ohm=MILLI * volt / found.most,
    )
    return found


def currents_behind(volt: float, path: str, condition: str, trace: Trace, behind: float = 0.0) -> Currents:
    """Return the same currents where `behind` ohms of source, soil or shoes stand before the body.

    volt: with no one there. Records no steps. A body has fewer ohms at more volts, so its share is sought by halving.
    """
    table = _table(condition, trace)
    part, floor = path_part(path, condition, trace), math.inf if condition == DRY else _floor(path, trace)

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


def path_part(path: str, condition: str, trace: Trace) -> float:
    """Return the impedance along a path as a part of that from hand to hand."""
    row = next(row for row in trace.cite(PATHS).rows if row["path"] == path)
    return row["dry" if condition == DRY else "wet"]


def _floor(path: str, trace: Trace) -> float:
    """Return the ohms that wet or broken skin never passes: 500 along one way, less with a second hand beside it."""
    floor = trace.cite(BODY).rows[0]["low"]
    if path != HANDS_FEET:
        return floor
    one, both = (path_part(each, WATER_WET, trace) for each in (HAND_FEET, HANDS_FEET))
    return floor * both / one


def hand_to_hand(volt: float, condition: str, trace: Trace) -> dict[str, float]:
    """Return the impedance from hand to hand, ohm, that 5, 50 and 95 percent of people do not exceed, and record it."""
    ohms: dict[str, float] = dict(zip(SHARES_OF_PEOPLE, _between(_table(condition, trace), volt), strict=True))
    trace.step(
        message(
            "Hand to hand at {volt} V, 5, 50 and 95 percent of people have no more than {five}, {fifty} and "
            "{ninety_five} ohm.",
            volt=shown(volt),
            **{name: shown(ohm) for name, ohm in ohms.items()},
        ),
        cites=(IMPEDANCE,),
    )
    return ohms


def _table(condition: str, trace: Trace) -> list[tuple[float, tuple[float, ...]]]:
    """Return the ohms of 5, 50 and 95 percent of people from hand to hand by voltage."""
    rows = (row for row in trace.cite(IMPEDANCE).rows if row["condition"] == condition)
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
