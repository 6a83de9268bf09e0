"""The fields of the longest way back of a fault."""

from __future__ import annotations

from calc import systems
from calc.calculator import Choice, Field
from calc.messages import message
from calc.raceways.entry_fields import NOT_GIVEN, SYSTEMS
from calc.raceways.kind import kind_choices
from calc.raceways.return_impedance import DIMENSIONS_RULE
from calc.rulebook import undated
from calc.shared_fields import conductor_size, device_rating, metal_of, one_of, quantity, trade_size
from calc.systems import system_called, system_choices

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
    """Return the field for how far a way back runs from its hot conductor."""
    return quantity(
        message("Distance between the hot conductor and the grounding wire"),
        message("Only for a wire run apart from its circuit. If it varies, the widest."),
        "ft",
        0.1,
        1000,
        example="10 ft",
        rare=True,
    )


SYSTEM = one_of(
    message("System"),
    message("It gives the voltage to ground. Or enter the voltage below."),
    (
        Choice(NOT_GIVEN, message("None of these")),
        *system_choices(*SYSTEMS),
    ),
)
VOLTAGE = quantity(
    message("Voltage to ground"),
    message("What drives the fault: hot wire to metal, for example 277."),
    "V",
    1,
    1000,
    example="277",
)
DEVICE = device_rating(message("Upstream breaker or fuse"), message("Its rating, for example 20 A."))
MULTIPLE = quantity(
    message("Fault current wanted (× rating)"),
    message(
        "The fault current divided by the rating. {usual} is trade practice, not a code rule.",
        usual=MULTIPLE_OF_PRACTICE,
    ),
    "x",
    1,
    100,
    example="6",
)
CONDUCTOR = conductor_size(message("Hot conductor"), message("The one wire that feeds the fault."))
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
WIRING = one_of(
    message("Ground-fault return path"),
    message("What carries the fault current back to the source."),
    (
        Choice("wire-in-nonmetallic", message("Wire in nonmetallic raceway or cable")),
        Choice("wire-in-steel", message("Wire in steel raceway; the raceway is not counted")),
        *kind_choices(*RACEWAYS),
        Choice(APART, message("Grounding wire run apart from its circuit")),
    ),
)
RETURN_CONDUCTOR = conductor_size(
    message("Equipment grounding conductor"), message("Only when a wire is the return path.")
)
METAL = metal_of(message("Equipment grounding conductor material"))
TRADE_SIZE = trade_size(
    message("Trade size"),
    message("Only when the raceway itself is the return path. Steel."),
    TRADE_SIZES,
    Choice(NOT_GIVEN, message("Not needed: a wire is the return path")),
)
LENGTH = quantity(
    message("Length of the run"), message("One way. Only to check a run you have."), "ft", 1, 100_000, example="150 ft"
)
ARC = quantity(
    message("Voltage across the arc"),
    message(
        "0 for solid metal-to-metal contact. Trade practice for an arcing fault is {usual} V.", usual=ARC_OF_PRACTICE
    ),
    "V",
    0,
    1000,
    example=str(ARC_OF_PRACTICE),
    rare=True,
)
SPACING = spacing()
AVAILABLE = quantity(
    message("Lowest available fault current where this circuit begins"),
    message("Line to ground, at the device. If left empty, the answer shows how much a weaker source takes off."),
    "A",
    1,
    1_000_000,
    example="5000",
    rare=True,
)
