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
    message("At the place where the fault is."),
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
        Choice("transformer", message("A transformer: from its plate")),
        Choice("given-current", message("A current that is known, for example from the utility")),
        Choice("generator", message("A generator: from its data sheet")),
    ),
)
KVA = quantity(
    message("Rating of the transformer or generator"),
    message("From its plate, kVA. A bank of like units: all together."),
    "kVA",
    0.5,
    10_000,
    example="75",
)
PERCENT_Z = quantity(
    message("Impedance of the transformer, %"),
    message("From its plate, often marked %Z or %IZ."),
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
    message("Left out: the ratio that lets the most current through."),
    "",
    0,
    100,
    example="1.5",
    rare=True,
)
TOLERANCE = quantity(
    message("Lower limit of that impedance, % below the plate"),
    message("0 where the plate shows what was measured on this very unit."),
    "%",
    0,
    20,
    example="7.5",
    rare=True,
)
UTILITY_KVA = quantity(
    message("Short-circuit power of the utility at the primary"),
    message("Ask the utility. Left out: unlimited, which gives the most."),
    "kVA",
    10,
    100_000_000,
    example=message("100000 or 100 MVA"),
    rare=True,
)
UTILITY_CURRENT = quantity(
    message("Or its short-circuit current at the primary"),
    message("In ampere, with the primary voltage."),
    "A",
    10,
    200_000,
    example="5000",
    also=message("Leave the short-circuit power empty."),
    rare=True,
)
PRIMARY_VOLTAGE = quantity(
    message("Primary voltage of the transformer"),
    message("Line to line; single phase: across the primary winding."),
    "V",
    100,
    50_000,
    example="12470",
    rare=True,
)
UTILITY_X_OVER_R = quantity(
    message("Reactance over resistance (X/R) of the utility"),
    message("Ask the utility. Left out: the ratio that lets the most current through."),
    "",
    0,
    100,
    example="8",
    rare=True,
)
THREE_PHASE_CURRENT = quantity(
    message("Current that is known between the lines"),
    message("Three phase: of all phases. Single phase: from line to line."),
    "A",
    10,
    500_000,
    example="22000",
)
LINE_TO_GROUND_CURRENT = quantity(
    message("Current that is known from line to ground or neutral"),
    message("Left out: found from the one between the lines."),
    "A",
    10,
    500_000,
    example="10000",
    also=message(
        "A source gives at most one and a half times the three-phase current to ground, and at most twice the "
        "line-to-line current on 120/240 V."
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
    message("From its data sheet, often X0. Left out: none, which gives the most."),
    "%",
    0,
    100,
    example="4",
    rare=True,
)
CONDUCTOR = conductor_size(
    message("Conductor of the run"),
    message("One line conductor of one set. Left out: the answer is for the terminals."),
    sizes=_SIZES,
    also=_OTHER_SIZES,
)
RETURN_CONDUCTOR = conductor_size(
    message("Conductor that carries a ground fault back"),
    message(
        "Neutral or equipment grounding conductor of the same metal, one in each set. Left out: as large as a line."
    ),
    sizes=_SIZES,
    also=_OTHER_SIZES,
    rare=True,
)
CONDUCTOR_METAL = metal_of(message("Metal of the conductors"), TABLE_METALS)
RACEWAY = one_of(
    message("Raceway of the run"),
    message("Steel raises the impedance, so choose it only where it is."),
    (
        Choice("nonmetallic", message("Nonmetallic, or a cable"), also_called("nonmetallic")),
        Choice("aluminum", message("Aluminum")),
        Choice("steel", message("Steel")),
    ),
)
LENGTH = quantity(
    message("Length of the run"),
    message("One way, shortest. ft unless another unit is written."),
    "ft",
    0,
    10_000,
    example=message("75 ft or 23 m"),
)
MOTOR_CURRENT = quantity(
    message("Full-load current of the motors that run together, A"),
    message("All that the place feeds; 0 when there are none."),
    "A",
    0,
    10_000,
    example="120",
    rare=True,
)
VOLTAGE_FACTOR = quantity(
    message("Voltage, as a multiple of the nominal one"),
    message("1 is common in North America; international practice takes 1.05 or 1.1."),
    "",
    0.9,
    1.15,
    example="1.05",
    rare=True,
)


COLDEST, HOTTEST = -40, 90
TEMPERATURE = quantity(
    message("Temperature of the conductors"),
    message("Cold gives the most current."),
    "°C",
    COLDEST,
    HOTTEST,
    example="20 °C",
    rare=True,
)
