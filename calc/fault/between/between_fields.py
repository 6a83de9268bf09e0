"""What is asked about two metal parts that someone may touch together, and what makes them unlike."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import SMALLEST, one_of, quantity

LEAK, UTILITY = "leak", "utility"
MAX_OHM = 10_000_000

CAUSE = one_of(
    message("What makes them unlike"),
    message(""),
    (
        Choice(LEAK, message("A hot conductor leaks to part one")),
        Choice(UTILITY, message("The utility's neutral has a voltage to earth, with no fault here")),
    ),
)
VOLTAGE = quantity(message("Hot conductor to neutral"), message("For a leak."), "V", 1, 1000, example="120")
LEAK_AMPERE = quantity(
    message("Current of the leak"),
    message("What flows when part one is solidly bonded. Or enter the ohms of the leak."),
    "A",
    0.0001,
    1000,
    example="10 mA",
)
LEAK_OHM = quantity(
    message("Resistance of the leak"),
    message("From the hot conductor to part one, instead of its current."),
    "ohm",
    0.0001,
    MAX_OHM,
    example="12000",
)
NEUTRAL_VOLT = quantity(
    message("Neutral to remote earth"),
    message("For a utility's voltage: from the neutral to a rod far away, as measured."),
    "V",
    0.001,
    1000,
    example="4",
)
NEUTRAL_OHM = quantity(
    message("Neutral to earth"),
    message("All electrodes of the source together. It counts for a leak."),
    "ohm",
    0,
    MAX_OHM,
    example="10",
    finest=SMALLEST,
    rare=True,
)
TO_NEUTRAL = message("Over bonds and wires. Leave it empty where there is no such path.")
TO_EARTH = message("To remote earth, through rods, footing or floor. Leave it empty where there is no such path.")
ONE_NEUTRAL = quantity(message("Part one to the neutral"), TO_NEUTRAL, "ohm", 0.0001, MAX_OHM, example="0.1")
ONE_EARTH = quantity(message("Part one to earth"), TO_EARTH, "ohm", 0.0001, MAX_OHM, example="10000")
TWO_NEUTRAL = quantity(message("Part two to the neutral"), TO_NEUTRAL, "ohm", 0.0001, MAX_OHM, example="0.1")
TWO_EARTH = quantity(message("Part two to earth"), TO_EARTH, "ohm", 0.0001, MAX_OHM, example="25")
BOND = quantity(
    message("The bond between them"),
    message("Its resistance, once it is there."),
    "ohm",
    0.0001,
    1000,
    example="0.01",
    rare=True,
)
