"""What is asked about two metal parts that someone may touch together, and what makes them unlike."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import SMALLEST, one_of, quantity

LEAK, UTILITY = "leak", "utility"
MAX_OHM = 10_000_000

CAUSE = one_of(
    message("Source of the voltage"),
    message(""),
    (
        Choice(LEAK, message("A hot conductor leaks to part one")),
        Choice(UTILITY, message("The utility's neutral has a voltage to earth, with no fault here")),
    ),
)
VOLTAGE = quantity(
    message("Voltage, hot conductor to neutral"), message("Only for a leak."), "V", 1, 1000, example="120"
)
LEAK_AMPERE = quantity(
    message("Leakage current"),
    message("What flows with part one solidly bonded. Or enter the leakage resistance."),
    "A",
    0.0001,
    1000,
    example="10 mA",
)
LEAK_OHM = quantity(
    message("Leakage resistance"),
    message("From the hot conductor to part one. Enter this or the current."),
    "ohm",
    0.0001,
    MAX_OHM,
    example="12000",
)
NEUTRAL_VOLT = quantity(
    message("Voltage, neutral to remote earth"),
    message("For voltage on the utility's neutral: measured from the neutral to a rod driven far away."),
    "V",
    0.001,
    1000,
    example="4",
)
NEUTRAL_OHM = quantity(
    message("Resistance, neutral to earth"),
    message("All electrodes of the source together. Only for a leak."),
    "ohm",
    0,
    MAX_OHM,
    example="10",
    finest=SMALLEST,
    rare=True,
)
TO_NEUTRAL = message("Through bonds and wires. Leave empty where there is no such path.")
TO_EARTH = message("To remote earth, through rods, footing or floor. Leave empty where there is no such path.")
ONE_NEUTRAL = quantity(message("Part one to the neutral"), TO_NEUTRAL, "ohm", 0.0001, MAX_OHM, example="0.1")
ONE_EARTH = quantity(message("Part one to earth"), TO_EARTH, "ohm", 0.0001, MAX_OHM, example="10000")
TWO_NEUTRAL = quantity(message("Part two to the neutral"), TO_NEUTRAL, "ohm", 0.0001, MAX_OHM, example="0.1")
TWO_EARTH = quantity(message("Part two to earth"), TO_EARTH, "ohm", 0.0001, MAX_OHM, example="25")
BOND = quantity(
    message("Bond between the parts"),
    message("Its resistance, once installed."),
    "ohm",
    0.0001,
    1000,
    example="0.01",
    rare=True,
)
