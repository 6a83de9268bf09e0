"""What is asked about a fall-of-potential test of an electrode."""

from __future__ import annotations

from calc.declare import Choice
from calc.field import Field
from calc.vocabulary import SMALLEST, one_of, quantity, yes_or_no
from calc.words import Sentence, say
from calc.written import plain_number, read_list

FEWEST, MOST = 3, 50
LONGEST_LIST = 1000
MOST_FEET = 10_000
MOST_OHM = 1_000_000


def list_of(label: Sentence, hint: Sentence, enter: Sentence, unit: str, most: float) -> Field:
    """Give a field for a list of amounts above 0 in `unit`, with commas between; it is read as their list in text."""

    def read(text: str) -> str:
        values = read_list(text, unit)
        if not FEWEST <= len(values) <= MOST or not all(SMALLEST <= value <= most for value in values):
            raise ValueError(text)
        return ",".join(map(plain_number, values))

    return Field(
        label,
        hint,
        enter,
        read,
        show=lambda text: f"{text.replace(',', ', ')} {unit}",
        longest=LONGEST_LIST,
        unit=unit,
        minimum=SMALLEST,
        maximum=most,
        items=(FEWEST, MOST),
    )


def amounts(text: str) -> list[float]:
    """Give the amounts of a list that a field of `list_of` has read.

    >>> amounts("10,20.5")
    [10.0, 20.5]
    """
    return [float(each) for each in text.split(",")]


ISOLATED = yes_or_no(
    say("Was the electrode disconnected from everything else"),
    say("Only with the service de-energized and the conductor proven free of current."),
    rare=False,
)
KIND = one_of(
    say("What was measured"),
    say(""),
    (
        Choice("single", say("A single rod, pipe or plate")),
        Choice("other", say("Several rods, a ring, a footing or another electrode")),
    ),
)
DIMENSION = quantity(
    say("Longest dimension of the electrode"),
    say("The length of a rod. The diagonal of a ring, a footing or a group of rods."),
    "ft",
    0.1,
    MOST_FEET,
    example="8",
)
PROBE = quantity(
    say("Distance to the current probe"), say("From the electrode to the far probe."), "ft", 1, MOST_FEET, example="80"
)
DISTANCES = list_of(
    say("Distances of the potential probe"),
    say("From the electrode, in line with the current probe. At least three of them around 62 percent of the way."),
    say("Enter 3 to {most} distances with commas between, for example 40, 50, 58 ft.", most=MOST),
    "ft",
    MOST_FEET,
)
READINGS = list_of(
    say("Readings"),
    say("One for each distance, in the same order."),
    say("Enter as many readings as distances with commas between, for example 20.1, 20.6, 21.0 ohm."),
    "ohm",
    MOST_OHM,
)
