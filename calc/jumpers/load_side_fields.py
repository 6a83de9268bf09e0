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
    message("Upstream breaker or fuse"),
    message("Its rating, for example 200 A. For an adjustable breaker, enter the highest setting."),
)


def _read_others(text: str) -> str:
    written = "".join(text.split())
    if _THOUSANDS.search(written):
        raise UnclearError(message("Commas separate the ratings here."))  # 1,200 would be read as 1 A and 200 A
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
    message("Breakers or fuses for other raceways on this jumper"),
    message("Where one continuous jumper bonds several raceways or cables. Leave it empty for one raceway."),
    enter=message(
        "Enter up to {most} ratings separated by commas, for example 100,225. Enter 1200 without a comma.",
        most=MAX_OTHERS,
    ),
    read=_read_others,
    rare=True,
    unit="A",
    minimum=1,
    maximum=MAX_AMPERE,
    items=(1, MAX_OTHERS),
)
METAL = metal_of(message("Jumper material"))
SIDE = one_of(
    message("Location of the jumper"),
    message(
        "Transformer primary conductors are on the load side of a breaker or fuse. Secondary conductors are ahead of "
        "one, up to the first breaker or fuse."
    ),
    (places.LOAD_SIDE, places.SUPPLY_SIDE),
)
JOINS = one_of(
    message("What it bonds"),
    message("The size is the same. Other rules differ."),
    (
        Choice("raceway", message("Metal raceways or enclosures")),
        Choice("flexible-raceway", message("Around a flexible metal raceway")),
        Choice("expansion-fitting", message("Around an expansion fitting or telescoping section")),
        Choice("receptacle", message("A receptacle and its metal box")),
    ),
)
ROUTING = one_of(
    message("Routing"),
    message("At a pole: to an isolated metal raceway section or elbow on an exposed riser."),
    (places.INSIDE, places.OUTSIDE, places.OUTSIDE_AT_POLE),
)
LENGTH = quantity(
    message("Length of the jumper outside the raceway"),
    message("Required only where it runs outside and not at a pole, for example 4 ft."),
    "ft",
    0,
    MAX_FEET,
    example=message("4 ft or 1.2 m"),
)
ALONG = yes_or_no(message("Routed with the raceway"), message("Applies only outside, and not at a pole."), rare=False)
INSTALLED = replace(circuit_fields.INSTALLED, rare=True)
MINIMUM = replace(circuit_fields.MINIMUM, rare=True)
CONDUCTOR_METAL = replace(circuit_fields.CONDUCTOR_METAL, rare=True)
SETS = replace(PARALLEL_SETS, rare=True)
INCREASE = circuit_fields.INCREASE
