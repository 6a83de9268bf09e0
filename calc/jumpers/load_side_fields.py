"""What is asked about a bonding jumper on the load side of an overcurrent device."""

from __future__ import annotations

import re
from dataclasses import replace

from calc import places
from calc.calculator import Choice, Field
from calc.field import UnclearError
from calc.grounding import circuit_fields
from calc.messages import message
from calc.shared_fields import MAX_AMPERE, device_rating, metal_of, one_of, quantity, yes_or_no
from calc.shared_fields import SETS as PARALLEL_SETS
from calc.written import plain_number, read_list

MAX_OTHERS = 20
MAX_FEET = 1000
_THOUSANDS = re.compile(r"(?<![\d.])\d,\d{3}(?!\d)")

DEVICE = device_rating(
    message("Breaker or fuse ahead"),
    message("Its rating, for example 200 A. An adjustable one counts at its highest."),
)


def _read_others(text: str) -> str:
    written = "".join(text.split())
    if _THOUSANDS.search(written):
        raise UnclearError(message("Commas stand between the ratings here."))  # 1,200 would be read as 1 A and 200 A
    ratings = read_list(text, "A")
    if len(ratings) > MAX_OTHERS or not all(1 <= each <= MAX_AMPERE for each in ratings):
        raise ValueError(text)
    return ",".join(f"{plain_number(each)}A" for each in ratings)


def ratings_of(listed: str | None) -> list[float]:
    """Return the ratings, ampere, that a list names.

    >>> ratings_of("100A,225A"), ratings_of(None)
    ([100, 225], [])
    """
    return [] if listed is None else [DEVICE.read(each) for each in listed.split(",")]


OTHERS = Field(
    message("Breakers or fuses of other raceways on this jumper"),
    message("Where one jumper joins several raceways or cables without a break. Leave it empty for one raceway."),
    enter=message(
        "Enter up to {most} ratings with commas between, for example 100,225. Write 1200 without a comma.",
        most=MAX_OTHERS,
    ),
    read=_read_others,
    rare=True,
    unit="A",
    minimum=1,
    maximum=MAX_AMPERE,
    items=(1, MAX_OTHERS),
)
METAL = metal_of(message("Metal of the jumper"))
SIDE = one_of(
    message("Where the jumper is"),
    message("The wires to a transformer are past a breaker or fuse. The wires from it, up to its first, are ahead."),
    (places.LOAD_SIDE, places.SUPPLY_SIDE),
)
JOINS = one_of(
    message("What it joins"),
    message("The size is the same; the rest of the rules is not."),
    (
        Choice("raceway", message("Metal raceways or enclosures")),
        Choice("flexible-raceway", message("Ends of a flexible metal raceway")),
        Choice("expansion-fitting", message("Ends of an expansion fitting or telescoping section")),
        Choice("receptacle", message("A receptacle and its metal box")),
    ),
)
ROUTING = one_of(
    message("How it runs"),
    message("At a pole: to an isolated piece of metal raceway, or an elbow, on an exposed riser."),
    (places.INSIDE, places.OUTSIDE, places.OUTSIDE_AT_POLE),
)
LENGTH = quantity(
    message("Length of the jumper outside"),
    message("Needed only where it runs outside and not at a pole, for example 4 ft."),
    "ft",
    0,
    MAX_FEET,
    example=message("4 ft or 1.2 m"),
)
ALONG = yes_or_no(message("It follows the raceway"), message("It matters only outside, and not at a pole."), rare=False)
INSTALLED = replace(circuit_fields.INSTALLED, rare=True)
MINIMUM = replace(circuit_fields.MINIMUM, rare=True)
CONDUCTOR_METAL = replace(circuit_fields.CONDUCTOR_METAL, rare=True)
SETS = replace(PARALLEL_SETS, rare=True)
INCREASE = circuit_fields.INCREASE
