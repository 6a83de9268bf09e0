"""The fields that describe what feeds a fault and the run to it."""

from __future__ import annotations

from calc.calculator import Choice
from calc.conductors.impedance import RESISTANCE_RULE
from calc.messages import message
from calc.places import also_called
from calc.rulebook import undated
from calc.shared_fields import TABLE_METALS, conductor_size, metal_of, one_of, quantity
from calc.systems import system_choices

TOLERANCE_RULE = "fault/transformer_tolerance"
COLD_RULE = "fault/cold_conductor"
TOLERANCE_TAKEN = undated(TOLERANCE_RULE).value
COLD = undated(COLD_RULE).value
_SIZES = tuple(dict.fromkeys(row["size"] for row in undated(RESISTANCE_RULE).rows))
_OTHER_SIZES = message("Aluminum from 12 AWG. Other sizes have no listed impedance.")


SYSTEM = one_of(
    message("System"),
    message("Where the fault is."),
    system_choices(
        "120/240",
        "208Y/120",
        "480Y/277",
        "240/120-high-leg",
        "240-corner",
        "240-ungrounded",
        "480-ungrounded",
        "impedance-grounded",
        "over-1000",
        "direct-current",
    ),
)
SOURCE = one_of(
    message("What feeds it"),
    message(""),
    (
        Choice("transformer", message("Transformer, from its nameplate")),
        Choice("given-current", message("Known available fault current, for example from the utility")),
        Choice("generator", message("Generator, from its data sheet")),
    ),
)
KVA = quantity(
    message("Rating of the transformer or generator"),
    message("kVA from the nameplate. A bank of identical units: all together."),
    "kVA",
    0.5,
    10_000,
    example="75",
)
PERCENT_Z = quantity(
    message("Impedance of the transformer, %"),
    message("From the nameplate, often marked %Z or %IZ."),
    "%",
    0.1,
    30,
    example="2.3",
    also=message("Or enter resistance and reactance instead."),
)
PERCENT_R = quantity(
    message("Resistance of the transformer, %"),
    message("With the reactance, instead of the impedance."),
    "%",
    0,
    30,
    example="1.2",
    also=message("Enter the reactance too. Leave the impedance empty."),
    rare=True,
)
PERCENT_X = quantity(
    message("Reactance of the transformer, %"),
    message("With the resistance, instead of the impedance."),
    "%",
    0,
    30,
    example="1.6",
    also=message("Enter the resistance too. Leave the impedance empty."),
    rare=True,
)
X_OVER_R = quantity(
    message("Reactance over resistance (X/R) of the source"),
    message("If left empty: the ratio that lets the most current through."),
    "",
    0,
    100,
    example="1.5",
    rare=True,
)
TOLERANCE = quantity(
    message("Impedance tolerance, % below the nameplate"),
    message("0 if the nameplate %Z is the tested value of this unit."),
    "%",
    0,
    20,
    example="7.5",
    rare=True,
)
UTILITY_KVA = quantity(
    message("Short-circuit power of the utility at the primary"),
    message("Ask the utility. If left empty: infinite, which gives the most."),
    "kVA",
    10,
    100_000_000,
    example=message("100000 or 100 MVA"),
    rare=True,
)
UTILITY_CURRENT = quantity(
    message("Or its short-circuit current at the primary"),
    message("In amps. Enter the primary voltage too."),
    "A",
    10,
    200_000,
    example="5000",
    also=message("Leave the short-circuit power empty."),
    rare=True,
)
PRIMARY_VOLTAGE = quantity(
    message("Primary voltage of the transformer"),
    message("Line to line. Single phase: across the primary winding."),
    "V",
    100,
    50_000,
    example="12470",
    rare=True,
)
UTILITY_X_OVER_R = quantity(
    message("Reactance over resistance (X/R) of the utility"),
    message("Ask the utility. If left empty: the ratio that lets the most current through."),
    "",
    0,
    100,
    example="8",
    rare=True,
)
THREE_PHASE_CURRENT = quantity(
    message("Three-phase (or line-to-line) fault current"),
    message("Three-phase system: all three phases. Single phase: line to line."),
    "A",
    10,
    500_000,
    example="22000",
)
LINE_TO_GROUND_CURRENT = quantity(
    message("Line-to-ground (or line-to-neutral) fault current"),
    message("If left empty: figured from the three-phase or line-to-line current."),
    "A",
    10,
    500_000,
    example="10000",
    also=message(
        "To ground, a source gives at most one and a half times its three-phase current, and on 120/240 V at most "
        "twice its line-to-line current."
    ),
    rare=True,
)
SUBTRANSIENT = quantity(
    message("Subtransient reactance of the generator, %"),
    message("From its data sheet, often X''d; 0.12 per unit is 12 %."),
    "%",
    1,
    100,
    example="12",
)
ZERO_SEQUENCE = quantity(
    message("Zero-sequence reactance of the generator, %"),
    message("From its data sheet, often X0. If left empty: none, which gives the most."),
    "%",
    0,
    100,
    example="4",
    rare=True,
)
CONDUCTOR = conductor_size(
    message("Conductor of the run"),
    message("One phase conductor of one set. If left empty: the answer is for the terminals."),
    sizes=_SIZES,
    also=_OTHER_SIZES,
)
RETURN_CONDUCTOR = conductor_size(
    message("Ground-fault return conductor"),
    message(
        "Neutral or equipment grounding conductor of the same material, one in each set. If left empty: as large as "
        "a phase conductor."
    ),
    sizes=_SIZES,
    also=_OTHER_SIZES,
    rare=True,
)
CONDUCTOR_METAL = metal_of(message("Conductor material"), TABLE_METALS)
RACEWAY = one_of(
    message("Raceway of the run"),
    message("Steel raises the impedance. Choose it only if the raceway is steel."),
    (
        Choice("nonmetallic", message("Nonmetallic, or a cable"), also_called("nonmetallic")),
        Choice("aluminum", message("Aluminum")),
        Choice("steel", message("Steel")),
    ),
)
LENGTH = quantity(
    message("Length of the run"),
    message("One way, the shortest it could be. In feet unless you add the unit."),
    "ft",
    0,
    10_000,
    example=message("75 ft or 23 m"),
)
MOTOR_CURRENT = quantity(
    message("Full-load current of the motors running together, A"),
    message("All motors fed from there; 0 if none."),
    "A",
    0,
    10_000,
    example="120",
    rare=True,
)
VOLTAGE_FACTOR = quantity(
    message("Voltage, as a multiple of nominal"),
    message("1 is common in North America; international practice uses 1.05 or 1.1."),
    "",
    0.9,
    1.15,
    example="1.05",
    rare=True,
)


COLDEST, HOTTEST = -40, 90
TEMPERATURE = quantity(
    message("Temperature of the conductors"),
    message("Cold conductors give the most current."),
    "°C",
    COLDEST,
    HOTTEST,
    example="20 °C",
    rare=True,
)
