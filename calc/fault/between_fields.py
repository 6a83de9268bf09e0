"""What is asked about two metal parts that someone may touch together, and what makes them unlike."""

from __future__ import annotations

from calc.declare import Choice
from calc.vocabulary import SMALLEST, one_of, quantity
from calc.words import say

LEAK, UTILITY = "leak", "utility"
MOST_OHM = 10_000_000

CAUSE = one_of(
    say("What makes them unlike"),
    say(""),
    (
        Choice(LEAK, say("A hot conductor leaks to part one")),
        Choice(UTILITY, say("The utility's neutral has a voltage to earth, with no fault here")),
    ),
)
VOLTAGE = quantity(say("Hot conductor to neutral"), say("For a leak."), "V", 1, 1000, example="120")
LEAK_AMPERE = quantity(
    say("Current of the leak"),
    say("What flows when part one is solidly bonded. Or enter the ohms of the leak."),
    "A",
    0.0001,
    1000,
    example="10 mA",
)
LEAK_OHM = quantity(
    say("Resistance of the leak"),
    say("From the hot conductor to part one, instead of its current."),
    "ohm",
    0.0001,
    MOST_OHM,
    example="12000",
)
NEUTRAL_VOLT = quantity(
    say("Neutral to remote earth"),
    say("For a utility's voltage: from the neutral to a rod far away, as measured."),
    "V",
    0.001,
    1000,
    example="4",
)
NEUTRAL_OHM = quantity(
    say("Neutral to earth"),
    say("All electrodes of the source together. It counts for a leak."),
    "ohm",
    0,
    MOST_OHM,
    example="10",
    finest=SMALLEST,
    rare=True,
)
TO_NEUTRAL = say("Over bonds and wires. Leave it empty where there is no such path.")
TO_EARTH = say("To remote earth, through rods, footing or floor. Leave it empty where there is no such path.")
ONE_NEUTRAL = quantity(say("Part one to the neutral"), TO_NEUTRAL, "ohm", 0.0001, MOST_OHM, example="0.1")
ONE_EARTH = quantity(say("Part one to earth"), TO_EARTH, "ohm", 0.0001, MOST_OHM, example="10000")
TWO_NEUTRAL = quantity(say("Part two to the neutral"), TO_NEUTRAL, "ohm", 0.0001, MOST_OHM, example="0.1")
TWO_EARTH = quantity(say("Part two to earth"), TO_EARTH, "ohm", 0.0001, MOST_OHM, example="25")
BOND = quantity(
    say("The bond between them"),
    say("Its resistance, once it is there."),
    "ohm",
    0.0001,
    1000,
    example="0.01",
    rare=True,
)
