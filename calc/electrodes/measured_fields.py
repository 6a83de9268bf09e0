"""What is asked about a fall-of-potential test of an electrode."""

from __future__ import annotations

from calc.calculator import Choice
from calc.field import Field
from calc.messages import Message, message
from calc.shared_fields import SMALLEST, one_of, quantity, yes_or_no
from calc.written import plain_number, read_list

FEWEST, MOST = 3, 50
LONGEST_LIST = 1000
MAX_FEET = 10_000
MAX_OHM = 1_000_000


def list_of(label: Message, hint: Message, enter: Message, unit: str, most: float) -> Field:
    """Return a field for a list of amounts above 0 in `unit`, with commas between; it is read as their list in text."""

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
    """Return the amounts of a list that a field of `list_of` has read.

    >>> amounts("10,20.5")
    [10.0, 20.5]
    """
    return [float(each) for each in text.split(",")]


ISOLATED = yes_or_no(
    message("Was the electrode disconnected from the grounding system"),
    message("Only with the service de-energized and the conductor tested free of current."),
    rare=False,
)
KIND = one_of(
    message("What was measured"),
    message(""),
    (
        Choice("single", message("A single rod, pipe or plate")),
        Choice("other", message("Several rods, a ring, a footing or another electrode")),
    ),
)
DIMENSION = quantity(
    message("Longest dimension of the electrode"),
    message("The length of a rod. The diagonal of a ring, a footing or a group of rods."),
    "ft",
    0.1,
    MAX_FEET,
    example="8",
)
PROBE = quantity(
    message("Distance to the current probe"), message(
        "From the electrode to the far probe."
    ), "ft", 1, MAX_FEET, example="80"
)
DISTANCES = list_of(
    message("Distances of the potential probe"),
    message("From the electrode, in line with the current probe. At least three of them around 62 percent of the way."),
    message("Enter 3 to {most} distances with commas between, for example 40, 50, 58 ft.", most=MOST),
    "ft",
    MAX_FEET,
)
READINGS = list_of(
    message("Readings"),
    message("One for each distance, in the same order."),
    message("Enter as many readings as distances with commas between, for example 20.1, 20.6, 21.0 ohm."),
    "ohm",
    MAX_OHM,
)
