"""The fields of the longest way back of a fault."""

from __future__ import annotations

from calc import systems
from calc.declare import Choice, Field
from calc.raceways.entry_fields import NOT_GIVEN, SYSTEMS
from calc.raceways.kind import kind_choices
from calc.raceways.return_impedance import DIMENSIONS_RULE
from calc.rulebook import undated
from calc.systems import system_called, system_choices
from calc.vocabulary import conductor_size, device_rating, metal_of, one_of, quantity, trade_size
from calc.words import say

MULTIPLE_RULE = "fault/return_path_multiple"
ARC_RULE = "fault/arc_allowance"
MULTIPLE_OF_PRACTICE = undated(MULTIPLE_RULE).value
ARC_OF_PRACTICE = undated(ARC_RULE).value
APART = "wire-apart"
WIRE_IN = {"wire-in-nonmetallic": "nonmetallic", "wire-in-steel": "steel", APART: "nonmetallic"}
RACEWAYS = ("electrical-metallic-tubing", "intermediate-metal-conduit", "rigid-metal-conduit")
TRADE_SIZES = tuple(dict.fromkeys(row["trade_size"] for row in undated(DIMENSIONS_RULE).rows))
UNGROUNDED = tuple(value for value in SYSTEMS if system_called(value).kind == systems.UNGROUNDED)


def spacing() -> Field:
    """Give the field for how far a way back runs from its hot conductor."""
    return quantity(
        say("Distance between the hot conductor and that wire"),
        say("Only for a wire apart from its circuit. Where it changes, the widest."),
        "ft",
        0.1,
        1000,
        example="10 ft",
        rare=True,
    )


SYSTEM = one_of(
    say("System"),
    say("It gives the voltage to ground. Or enter the voltage below."),
    (
        Choice(NOT_GIVEN, say("Not one of these")),
        *system_choices(*SYSTEMS),
    ),
)
VOLTAGE = quantity(
    say("Voltage to ground"),
    say("What drives the fault: hot wire to metal, for example 277."),
    "V",
    1,
    1000,
    example="277",
)
DEVICE = device_rating(say("Overcurrent device"), say("Its rating, for example 20 A."))
MULTIPLE = quantity(
    say("Times the rating wanted"),
    say(
        "The fault current over the rating. {usual} is trade practice, not a rule of the code.",
        usual=MULTIPLE_OF_PRACTICE,
    ),
    "x",
    1,
    100,
    example="6",
)
CONDUCTOR = conductor_size(say("Hot conductor"), say("The one wire that feeds the fault."))
CONDUCTOR_METAL = metal_of(say("Metal of the hot conductor"))
WIRING = one_of(
    say("The way back"),
    say("What carries the fault current back to the source."),
    (
        Choice("wire-in-nonmetallic", say("A wire, in nonmetallic raceway or cable")),
        Choice("wire-in-steel", say("A wire in steel raceway; the raceway is not counted")),
        *kind_choices(*RACEWAYS),
        Choice(APART, say("A wire apart from its circuit")),
    ),
)
RETURN_CONDUCTOR = conductor_size(say("Equipment grounding wire"), say("Only when a wire is the way back."))
METAL = metal_of(say("Metal of that wire"))
TRADE_SIZE = trade_size(
    say("Trade size"),
    say("Only when the raceway itself is the way back. Steel."),
    TRADE_SIZES,
    Choice(NOT_GIVEN, say("Not needed: a wire is the way back")),
)
LENGTH = quantity(
    say("Length of the run"), say("If you have one to judge. One way."), "ft", 1, 100_000, example="150 ft"
)
ARC = quantity(
    say("Voltage lost in the arc"),
    say("0 for metal pressed to metal. Trade practice for a fault that arcs is {usual} V.", usual=ARC_OF_PRACTICE),
    "V",
    0,
    1000,
    example=str(ARC_OF_PRACTICE),
    rare=True,
)
SPACING = spacing()
AVAILABLE = quantity(
    say("Least fault current available where this circuit begins"),
    say("Line to ground, at the device. Left out, the answer shows what a source takes off."),
    "A",
    1,
    1_000_000,
    example="5000",
    rare=True,
)
