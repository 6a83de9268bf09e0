"""The fields that describe what feeds a fault and the run to it."""

from __future__ import annotations

from calc.conductors.impedance import RESISTANCE_RULE
from calc.conductors.size import read_size, shown_size
from calc.declare import Choice, Field
from calc.rulebook import undated
from calc.vocabulary import one_of, temperature
from calc.words import Sentence, say
from calc.working import shown_number
from calc.written import read_within

TOLERANCE_RULE = "fault/transformer_tolerance"
COLD_RULE = "fault/cold_conductor"
TOLERANCE_TAKEN = undated(TOLERANCE_RULE).value
COLD = undated(COLD_RULE).value


def number(label: Sentence, hint: Sentence, enter: Sentence, unit: str = "", *, rare: bool = True) -> Field:
    """Give a field for a number in `unit`, "" for a ratio, from the `low` to the `high` that `enter` names."""
    low, high = enter.values["low"], enter.values["high"]

    def read(text: str) -> float:
        return read_within(text, unit, low, high)

    shown_unit = unit.removesuffix("%")  # the label has it
    return Field(
        label,
        hint,
        enter,
        read,
        show=lambda value: f"{shown_number(value)} {shown_unit}".strip(),
        rare=rare,
        unit=unit,
        minimum=low,
        maximum=high,
    )


def _conductor(label: Sentence, hint: Sentence, *, rare: bool = False) -> Field:
    listed = dict.fromkeys(row["size"] for row in undated(RESISTANCE_RULE).rows)
    enter = say(
        "Enter a size from 14 AWG copper or 12 AWG aluminum to 1000 kcmil, for example 3/0 or 500 kcmil. Other sizes "
        "have no listed impedance."
    )
    suggestions = tuple(shown_size(size) for size in listed)
    return Field(label, hint, enter, read_size, show=shown_size, suggestions=suggestions, rare=rare)


SYSTEM = one_of(
    say("System"),
    say("At the place where the fault is."),
    (
        Choice("120/240", say("120/240 V, single phase")),
        Choice("208Y/120", say("208Y/120 V, three phase")),
        Choice("480Y/277", say("480Y/277 V, three phase")),
        Choice("240/120-high-leg", say("240/120 V, three-phase delta with a high leg")),
        Choice("240-corner", say("240 V delta, one corner grounded")),
        Choice("240-ungrounded", say("240 V delta, ungrounded")),
        Choice("480-ungrounded", say("480 V delta, ungrounded")),
        Choice("impedance-grounded", say("Grounded through an impedance")),
        Choice("over-1000", say("Over 1000 V")),
        Choice("direct-current", say("Direct current")),
    ),
)
SOURCE = one_of(
    say("What feeds it"),
    say(""),
    (
        Choice("transformer", say("A transformer: from its plate")),
        Choice("given-current", say("A current that is known, for example from the utility")),
        Choice("generator", say("A generator: from its data sheet")),
    ),
)
KVA = number(
    say("Rating of the transformer or generator"),
    say("From its plate, kVA. A bank of like units: all together."),
    say("Enter a rating from {low} to {high} kVA, for example 75.", low=0.5, high=10_000),
    "kVA",
    rare=False,
)
PERCENT_Z = number(
    say("Impedance of the transformer, %"),
    say("From its plate, often marked %Z or %IZ."),
    say(
        "Enter an impedance from {low} to {high} %, for example 2.3. Or enter resistance and reactance instead.",
        low=0.1,
        high=30,
    ),
    "%",
    rare=False,
)
PERCENT_R = number(
    say("Resistance of the transformer, %"),
    say("With the reactance, instead of the impedance."),
    say(
        "Enter a resistance from {low} to {high} %, for example 1.2, and the reactance. Leave the impedance empty.",
        low=0,
        high=30,
    ),
    "%",
)
PERCENT_X = number(
    say("Reactance of the transformer, %"),
    say("With the resistance, instead of the impedance."),
    say(
        "Enter a reactance from {low} to {high} %, for example 1.6, and the resistance. Leave the impedance empty.",
        low=0,
        high=30,
    ),
    "%",
)
X_OVER_R = number(
    say("Reactance over resistance (X/R) of the source"),
    say("Left out: the ratio that lets the most current through."),
    say("Enter a ratio from {low} to {high}, for example 1.5.", low=0, high=100),
)
TOLERANCE = number(
    say("Lower limit of that impedance, % below the plate"),
    say("0 where the plate shows what was measured on this very unit."),
    say("Enter a tolerance from {low} to {high} %, for example 7.5.", low=0, high=20),
    "%",
)
UTILITY_KVA = number(
    say("Short-circuit power of the utility at the primary"),
    say("Ask the utility. Left out: unlimited, which gives the most."),
    say("Enter a power from {low} to {high} kVA, for example 100000, or 100 MVA.", low=10, high=100_000_000),
    "kVA",
)
UTILITY_CURRENT = number(
    say("Or its short-circuit current at the primary"),
    say("In ampere, with the primary voltage."),
    say(
        "Enter a current from {low} to {high} A, for example 5000. Leave the short-circuit power empty.",
        low=10,
        high=200_000,
    ),
    "A",
)
PRIMARY_VOLTAGE = number(
    say("Primary voltage of the transformer"),
    say("Line to line; single phase: across the primary winding."),
    say("Enter a voltage from {low} to {high} V, for example 12470.", low=100, high=50_000),
    "V",
)
UTILITY_X_OVER_R = number(
    say("Reactance over resistance (X/R) of the utility"),
    say("Ask the utility. Left out: the ratio that lets the most current through."),
    say("Enter a ratio from {low} to {high}, for example 8.", low=0, high=100),
)
THREE_PHASE_CURRENT = number(
    say("Current that is known between the lines"),
    say("Three phase: of all phases. Single phase: from line to line."),
    say("Enter a current from {low} to {high} A, for example 22000.", low=10, high=500_000),
    "A",
    rare=False,
)
LINE_TO_GROUND_CURRENT = number(
    say("Current that is known from line to ground or neutral"),
    say("Left out: found from the one between the lines."),
    say(
        "Enter a current from {low} to {high} A, for example 10000. A source gives at most one and a half times the "
        "three-phase current to ground, and at most twice the line-to-line current on 120/240 V.",
        low=10,
        high=500_000,
    ),
    "A",
)
SUBTRANSIENT = number(
    say("Subtransient reactance of the generator, %"),
    say("From its data sheet, often X''d; 0.12 per unit is 12 %."),
    say("Enter a reactance from {low} to {high} %, for example 12.", low=1, high=100),
    "%",
    rare=False,
)
ZERO_SEQUENCE = number(
    say("Zero-sequence reactance of the generator, %"),
    say("From its data sheet, often X0. Left out: none, which gives the most."),
    say("Enter a reactance from {low} to {high} %, for example 4.", low=0, high=100),
    "%",
)
CONDUCTOR = _conductor(
    say("Conductor of the run"), say("One line conductor of one set. Left out: the answer is for the terminals.")
)
RETURN_CONDUCTOR = _conductor(
    say("Conductor that carries a ground fault back"),
    say("Neutral or equipment grounding conductor of the same metal, one in each set. Left out: as large as a line."),
    rare=True,
)
CONDUCTOR_METAL = one_of(
    say("Metal of the conductors"),
    say(""),
    (Choice("copper", say("Copper")), Choice("aluminum", say("Aluminum"))),
)
RACEWAY = one_of(
    say("Raceway of the run"),
    say("Steel raises the impedance, so choose it only where it is."),
    (
        Choice("nonmetallic", say("Nonmetallic, or a cable")),
        Choice("aluminum", say("Aluminum")),
        Choice("steel", say("Steel")),
    ),
)
LENGTH = number(
    say("Length of the run"),
    say("One way, shortest. ft unless another unit is written."),
    say("Enter a length from {low} to {high} ft, for example 75 or 23 m.", low=0, high=10_000),
    "ft",
    rare=False,
)
MOTOR_CURRENT = number(
    say("Full-load current of the motors that run together, A"),
    say("All that the place feeds; 0 when there are none."),
    say("Enter a current from {low} to {high} A, for example 120.", low=0, high=10_000),
    "A",
)
VOLTAGE_FACTOR = number(
    say("Voltage, as a multiple of the nominal one"),
    say("1 is common in North America; international practice takes 1.05 or 1.1."),
    say("Enter a multiple from {low} to {high}, for example 1.05.", low=0.9, high=1.15),
)


COLDEST, HOTTEST = -40, 90
TEMPERATURE = temperature(
    say("Temperature of the conductors"),
    say("Cold gives the most current."),
    say("Enter a temperature from {low} to {high} °C, for example 20.", low=COLDEST, high=HOTTEST),
    COLDEST,
    HOTTEST,
    rare=True,
)
