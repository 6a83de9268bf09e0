"""The fields of the longest way back of a fault."""

from __future__ import annotations

from calc.declare import Choice, Field
from calc.raceways.entry_fields import NOT_GIVEN, SYSTEM_WORDS, SYSTEMS
from calc.raceways.kind import KIND_WORDS
from calc.raceways.return_impedance import DIMENSIONS_RULE
from calc.rulebook import undated
from calc.vocabulary import amount, conductor_size, device_rating, metal_of, one_of
from calc.words import Sentence, say
from calc.working import shown_number

MULTIPLE_RULE = "fault/return_path_multiple"
ARC_RULE = "fault/arc_allowance"
MULTIPLE_OF_PRACTICE = undated(MULTIPLE_RULE).value
ARC_OF_PRACTICE = undated(ARC_RULE).value
APART = "wire-apart"
WIRE_IN = {"wire-in-nonmetallic": "nonmetallic", "wire-in-steel": "steel", APART: "nonmetallic"}
RACEWAYS = ("electrical-metallic-tubing", "intermediate-metal-conduit", "rigid-metal-conduit")
TRADE_SIZES = tuple(dict.fromkeys(row["trade_size"] for row in undated(DIMENSIONS_RULE).rows))
UNGROUNDED = tuple(system for system in SYSTEMS if "ungrounded" in system)


def number(label: Sentence, hint: Sentence, unit: str, low: float, high: float, *, rare: bool = False) -> Field:
    """Give a field for a number from `low` to `high` in `unit`, "x" for a multiple."""
    ends = {"low": shown_number(low), "high": shown_number(high)}
    enter = say("Enter a number from {low} to {high} {unit}.", unit=unit, **ends)
    if unit == "x":
        enter = say("Enter a number from {low} to {high}.", **ends)
    return amount(label, hint, enter, unit, low, high, number=False, rare=rare)


def spacing() -> Field:
    """Give the field for how far a way back runs from its hot conductor."""
    return number(
        say("Distance between the hot conductor and that wire"),
        say("Only for a wire apart from its circuit. Where it changes, the widest."),
        "ft",
        0.1,
        1000,
        rare=True,
    )


SYSTEM = one_of(
    say("System"),
    say("It gives the voltage to ground. Or enter the voltage below."),
    (
        Choice(NOT_GIVEN, say("Not one of these")),
        *(Choice(system, SYSTEM_WORDS.get(system, say("{system} V", system=system))) for system in SYSTEMS),
    ),
)
VOLTAGE = number(
    say("Voltage to ground"), say("What drives the fault: hot wire to metal, for example 277."), "V", 1, 1000
)
DEVICE = device_rating(say("Overcurrent device"), say("Its rating, for example 20 A."))
MULTIPLE = number(
    say("Times the rating wanted"),
    say(
        "The fault current over the rating. {usual} is trade practice, not a rule of the code.",
        usual=MULTIPLE_OF_PRACTICE,
    ),
    "x",
    1,
    100,
)
CONDUCTOR = conductor_size(say("Hot conductor"), say("The one wire that feeds the fault."))
CONDUCTOR_METAL = metal_of(say("Metal of the hot conductor"))
WIRING = one_of(
    say("The way back"),
    say("What carries the fault current back to the source."),
    (
        Choice("wire-in-nonmetallic", say("A wire, in nonmetallic raceway or cable")),
        Choice("wire-in-steel", say("A wire in steel raceway; the raceway is not counted")),
        *(Choice(kind, KIND_WORDS[kind]) for kind in RACEWAYS),
        Choice(APART, say("A wire apart from its circuit")),
    ),
)
RETURN_CONDUCTOR = conductor_size(say("Equipment grounding wire"), say("Only when a wire is the way back."))
METAL = metal_of(say("Metal of that wire"))
TRADE_SIZE = one_of(
    say("Trade size"),
    say("Only when the raceway itself is the way back. Steel."),
    (
        Choice(NOT_GIVEN, say("Not needed: a wire is the way back")),
        *(Choice(size, say("{size}", size=size)) for size in TRADE_SIZES),
    ),
)
LENGTH = number(say("Length of the run"), say("If you have one to judge. One way."), "ft", 1, 100_000)
ARC = number(
    say("Voltage lost in the arc"),
    say("0 for metal pressed to metal. Trade practice for a fault that arcs is {usual} V.", usual=ARC_OF_PRACTICE),
    "V",
    0,
    1000,
    rare=True,
)
SPACING = spacing()
AVAILABLE = number(
    say("Least fault current available where this circuit begins"),
    say("Line to ground, at the device. Left out, the answer shows what a source takes off."),
    "A",
    1,
    1_000_000,
    rare=True,
)
