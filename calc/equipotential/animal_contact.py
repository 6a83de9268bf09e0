"""A voltage measured where an animal touches: current through the test resistor, through a wet cow, and its meaning."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.equipotential.plan import ACT, BELOW, LOOK, Plan
from calc.messages import Message, message
from calc.rounded import three_figures
from calc.trace import Trace

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


def contact(volt: float, meter: str, resistor: float, trace: Trace) -> Contact:
    """Return what a reading in volt says. meter: "with-resistor" or "open"; resistor: ohm."""
    level, cow = trace.cite(LEVEL).rows[0], trace.cite(RESISTANCE).rows[0]
    through = 0
    if meter == WITH_RESISTOR:
        through = _milliampere(message("Current through the test resistor."), volt, resistor, LEVEL, trace)
    # A resistor smaller than a cow pulls the voltage down more than she does: she may take as much as it did.
    pulled = resistor if meter == WITH_RESISTOR else math.inf
    words = message("Through a wet cow of average resistance, at most.")
    mean = _milliampere(words, volt, min(cow["mean"], pulled), RESISTANCE, trace)
    words = message("Through the cow of lowest resistance, at most.")
    lowest = _milliampere(words, volt, min(cow["lowest"], pulled), RESISTANCE, trace)
    like_an_animal = meter == WITH_RESISTOR and _stands_for_an_animal(resistor, level["ohm"], trace)
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
        lowest >= trace.cite(RESPONSE).rows[0]["avoid_to"],
    )


def _stands_for_an_animal(resistor: float, ohm: float, trace: Trace) -> bool:
    return round(abs(resistor - ohm), 9) <= round(ohm * trace.cite(NEAR).value / 100, 9)


def _milliampere(words: Message, volt: float, ohm: float, rule: str, trace: Trace) -> float:
    return trace.compute(words, "1000 * volt / ohm", "mA", (rule,), volt=volt, ohm=ohm)


def add_contact(reading: Contact, plan: Plan) -> None:
    """Add the reading to a plan, and what it means for animals and people."""
    trace = plan.trace
    level, response = trace.cite(LEVEL).rows[0], trace.cite(RESPONSE).rows[0]
    part = message("Voltage where the animal touches")
    limits = {"volt": level["volt"], "milliampere": level["milliampere"], "ohm": level["ohm"]}
    if reading.verdict == LOOK and reading.like_a_fault:
        why = message("Do not put a resistor across this. Have the power shut off and the cause found.")
    elif reading.verdict == LOOK and reading.resistor is not None:
        why = message(
            "Read across {across} ohm, this is not the current of an animal. Put {ohm} ohm across the meter.",
            across=three_figures(reading.resistor),
            **limits,
        )
    elif reading.verdict == LOOK:
        why = message("Read without a resistor, it tells little. Put {ohm} ohm across the meter.", ohm=level["ohm"])
    elif reading.verdict == ACT:
        why = message("At or over {volt} V or {milliampere} mA: find the source and fix it.", **limits)
    else:
        why = message(
            "Under {volt} V and {milliampere} mA, if about {ohm} ohm was across the meter. It does not prove that no "
            "animal feels it.",
            **limits,
        )
    plan.add("contact", part, reading.verdict, why, LEVEL)
    trace.note(
        message(
            "Cows show mild signs at {five} mA (5 percent of them), {half} mA (half) and {most} mA (95 percent). Most "
            "avoid {avoid_from} to {avoid_to} mA ({source}).",
            source=trace.section(RESPONSE),
            **{name: response[name] for name in ("five", "half", "most", "avoid_from", "avoid_to")},
        )
    )
    trace.note(
        message(
            "A wet cow has less than {ohm} ohm: {mean} ohm on average, {lowest} ohm at the lowest ({source}). So the "
            "current may be higher.",
            ohm=level["ohm"],
            source=trace.section(RESISTANCE),
            **{name: trace.cite(RESISTANCE).rows[0][name] for name in ("mean", "lowest")},
        )
    )
    if reading.like_a_fault:
        trace.warn(
            message(
                "{volt} V where an animal touches may be a fault that can kill. Keep people and animals away, and have "
                "the power shut off.",
                volt=three_figures(reading.volt),
            ),
            grave=True,
        )
