"""A voltage measured where an animal touches: current through the test resistor, through a wet cow, and its meaning."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.planes.plan import ACT, BELOW, LOOK, Plan
from calc.words import say
from calc.working import Working, three_figures

LEVEL, RESPONSE, RESISTANCE = "planes/animal_contact_level", "planes/cow_response", "planes/cow_resistance"
NEAR = "planes/test_resistor_near"
WITH_RESISTOR, OPEN = "with-resistor", "open"


@dataclass(frozen=True)
class Contact:
    """One reading. milliampere: as an animal of the test resistor takes it, None if read across something else.

    resistor: ohm across the meter, None without one. mean_cow and lowest_cow: at most, mA.
    like_a_fault: so much that a fault is likelier than a stray voltage.
    """

    volt: float
    resistor: float | None
    milliampere: float | None
    mean_cow: float
    lowest_cow: float
    verdict: str
    like_a_fault: bool


def contact(volt: float, meter: str, resistor: float, working: Working) -> Contact:
    """Give what a reading in volt says. meter: "with-resistor" or "open"; resistor: ohm."""
    level, cow = working.cite(LEVEL).rows[0], working.cite(RESISTANCE).rows[0]
    through = 0
    if meter == WITH_RESISTOR:
        through = _milliampere(say("Current through the test resistor."), volt, resistor, LEVEL, working)
    # A resistor smaller than a cow pulls the voltage down more than she does: she may take as much as it did.
    pulled = resistor if meter == WITH_RESISTOR else math.inf
    words = say("Through a wet cow of mean resistance, at most.")
    mean = _milliampere(words, volt, min(cow["mean"], pulled), RESISTANCE, working)
    words = say("Through the cow of least resistance, at most.")
    lowest = _milliampere(words, volt, min(cow["lowest"], pulled), RESISTANCE, working)
    like_an_animal = meter == WITH_RESISTOR and _stands_for_an_animal(resistor, level["ohm"], working)
    if meter == OPEN:
        verdict = LOOK
    elif round(through, 9) >= level["milliampere"] or volt >= level["volt"]:
        verdict = ACT
    else:
        verdict = BELOW if like_an_animal else LOOK
    return Contact(
        volt,
        resistor if meter == WITH_RESISTOR else None,
        through if like_an_animal else None,
        mean,
        lowest,
        verdict,
        lowest >= working.cite(RESPONSE).rows[0]["avoid_to"],
    )


def _stands_for_an_animal(resistor: float, ohm: float, working: Working) -> bool:
    return round(abs(resistor - ohm), 9) <= round(ohm * working.cite(NEAR).value / 100, 9)


def _milliampere(words, volt: float, ohm: float, rule: str, working: Working) -> float:
    return working.compute(words, "1000 * volt / ohm", "mA", (rule,), volt=volt, ohm=ohm)


def add_contact(found: Contact, plan: Plan) -> None:
    """Add the reading to a plan, and what it means for animals and people."""
    working = plan.working
    level, response = working.cite(LEVEL).rows[0], working.cite(RESPONSE).rows[0]
    part = say("Voltage where the animal touches")
    limits = {"volt": level["volt"], "milliampere": level["milliampere"], "ohm": level["ohm"]}
    if found.verdict == LOOK and found.like_a_fault:
        why = say("Put no resistor across this. Have the power shut off and the cause found.")
    elif found.verdict == LOOK and found.resistor is not None:
        why = say(
            "Read across {across} ohm it is not the current of an animal. Put {ohm} ohm across the meter.",
            across=three_figures(found.resistor),
            **limits,
        )
    elif found.verdict == LOOK:
        why = say("Read without a resistor it tells little. Put {ohm} ohm across the meter.", ohm=level["ohm"])
    elif found.verdict == ACT:
        why = say("At or over {volt} V or {milliampere} mA: find the source and mend it.", **limits)
    else:
        why = say(
            "Under {volt} V and {milliampere} mA, if about {ohm} ohm was across the meter. It does not prove that no "
            "animal feels it.",
            **limits,
        )
    plan.add("contact", part, found.verdict, why, LEVEL)
    working.note(
        say(
            "Cows show mild signs at {five} mA (5 percent of them), {half} mA (half) and {most} mA (95 percent). Most "
            "avoid {avoid_from} to {avoid_to} mA ({source}).",
            source=working.section(RESPONSE),
            **{name: response[name] for name in ("five", "half", "most", "avoid_from", "avoid_to")},
        )
    )
    working.note(
        say(
            "A wet cow resists less than {ohm} ohm: {mean} ohm in the mean, {lowest} ohm at the lowest ({source}). "
            "So the current may be higher.",
            ohm=level["ohm"],
            source=working.section(RESISTANCE),
            **{name: working.cite(RESISTANCE).rows[0][name] for name in ("mean", "lowest")},
        )
    )
    if found.like_a_fault:
        working.warn(
            say(
                "{volt} V where an animal touches may be a fault that can kill. Keep people and animals away, and have "
                "the power shut off.",
                volt=three_figures(found.volt),
            )
        )
