"""The current through a body: by the voltage across it, the path and the skin, in few people, half and most."""

from __future__ import annotations

from dataclasses import dataclass

from calc.electrodes.entered import shown
from calc.touch.shock_fields import DRY
from calc.words import say
from calc.working import Working

IMPEDANCE = "touch/body_impedance"
PATHS = "touch/path_factor"
BODY = "touch/body_resistance"
MILLI = 1000


@dataclass(frozen=True)
class Currents:
    """Through a body, mA: 95 of 100 people get more than `few`, half more than `half`; `most` is the upper bound."""

    few: float
    half: float
    most: float


def body_currents(volt: float, path: str, condition: str, working: Working) -> Currents:
    """Give the currents through a body at a voltage across it, V, and record how.

    path: one of the rule touch/path_factor. condition: "dry", "water-wet" or "salt-water-wet". Wet skin is never
    counted with more than the 500 ohm that broken or wet skin may have.
    """
    ohms = hand_to_hand(volt, condition, working)
    wet = condition != DRY
    part = next(row["wet" if wet else "dry"] for row in working.cite(PATHS).rows if row["path"] == path)
    half = working.compute(
        say("Along this path it has {part} of that from hand to hand. Half of people get more than:", part=part),
        "milli * volt / (part * ohm)",
        "mA",
        (IMPEDANCE, PATHS),
        milli=MILLI,
        volt=volt,
        part=part,
        ohm=ohms["fifty"],
    )
    few = MILLI * volt / (part * ohms["ninety_five"])
    least = part * ohms["five"]
    if wet:
        floor = working.cite(BODY).rows[0]["low"]
        least = min(least, floor)
        words = say("Wet or broken skin counts with no more than {floor} ohm.", floor=floor)
        working.step(words, least, "ohm", (BODY,))
    most = working.compute(
        say("Counted as the most: 19 of 20 people get less."),
        "milli * volt / ohm",
        "mA",
        milli=MILLI,
        volt=volt,
        ohm=least,
    )
    return Currents(few, half, most)


def hand_to_hand(volt: float, condition: str, working: Working) -> dict[str, float]:
    """Give the impedance from hand to hand, ohm, that 5, 50 and 95 percent of people do not exceed.

    Between two voltages of the table it is taken on a straight line; below the first one it is taken as there,
    which gives more current than flows.
    """
    rows = [row for row in working.cite(IMPEDANCE).rows if row["condition"] == condition]
    above = next(row for row in rows if row["volt"] >= volt)
    below = rows[max(0, rows.index(above) - 1)]
    part = (volt - below["volt"]) / (above["volt"] - below["volt"]) if above is not below else 0.0
    ohms = {name: below[name] + part * (above[name] - below[name]) for name in ("five", "fifty", "ninety_five")}
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
