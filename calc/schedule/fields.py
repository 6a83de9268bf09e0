"""What every schedule asks: conductors, raceways, electrodes, metal that must be bonded. Nothing here is presumed."""

from __future__ import annotations

from calc.calculator import Choice, require
from calc.grounding.electrode_limit import ELECTRODE_CHOICES
from calc.messages import message
from calc.places import also_called
from calc.shared_fields import (
    MAX_SETS,
    conductor_size,
    device_rating,
    metal_of,
    one_of,
    several_of,
    whole_number,
    yes_or_no,
)

METAL_RACEWAY = "metal"
NO_OTHER = "no-other"

SETS = whole_number(message("Sets in parallel"), message("Number of conductors in parallel per phase."), 1, MAX_SETS)
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
METAL = metal_of(message("Bonding and grounding conductor material"))
RACEWAYS = whole_number(
    message("Raceways or cables for the sets in parallel"),
    message("Number of raceways or cables the sets are run in. Required for two or more sets."),
    1,
    MAX_SETS,
)
RACEWAY = one_of(
    message("Service raceway type"),
    message(
        "Metal raceways are bonded on the supply side. A flexible one needs a wire-type jumper, as a nonmetallic one "
        "does."
    ),
    (
        Choice(METAL_RACEWAY, message("Metal")),
        Choice("nonmetallic", message("Nonmetallic, or a cable without metal armor"), also_called("nonmetallic")),
    ),
)
ELECTRODES = several_of(
    message("Electrodes"),
    message("All electrodes present at the building must be used and bonded together."),
    (*ELECTRODE_CHOICES, Choice(NO_OTHER, message("No others: I looked for them"))),
)
RING = conductor_size(
    message("Ground ring conductor size"),
    message("Its bare copper conductor. Applies only if you choose a ground ring."),
    rare=True,
)
METAL_PARTS = several_of(
    message("Metal to be bonded"),
    message("Metal in or on the building fed by these conductors."),
    (
        Choice("water-pipe", message("Metal water piping")),
        Choice("structural-metal", message("Exposed structural metal, interconnected to form a frame")),
        Choice("other-metal", message("Gas or other metal piping")),
        Choice(NO_OTHER, message("No others: I looked for it")),
    ),
)
PIPING_DEVICE = device_rating(
    message("Breaker of the circuit likely to energize the other piping"),
    message("For example 15 A for a gas appliance igniter. Required only for gas or other metal piping."),
    rare=True,
)
MINIMUM = conductor_size(
    message("Minimum hot conductor size (before upsizing)"),
    message(
        "Required where a larger one was run, for example for voltage drop: the equipment grounding conductor "
        "increases with it."
    ),
    rare=True,
)
COMMON = yes_or_no(
    message("Common grounding electrode conductor with other transformers or generators"),
    message("A common conductor through the building, with a tap from each."),
)


def chosen(listed: str | None) -> tuple[str, ...]:
    """Return the values of a field of several that name something there: "rod,no-other" gives ("rod",)."""
    return tuple(each for each in listed.split(",") if each != NO_OTHER) if listed else ()


def looked_for_others(listed: str | None) -> bool:
    """Tell whether the reader says that nothing of the kind is there but what is chosen."""
    return bool(listed) and NO_OTHER in listed.split(",")


def raceways_of(sets: int, raceways: int | None) -> int:
    """Return the number of raceways: one for a single set, else as entered. Raises: FieldError when it was not."""
    return raceways or (1 if sets == 1 else require(raceways, "raceways"))
