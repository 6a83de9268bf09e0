"""What every schedule asks: conductors, raceways, electrodes, metal that must be bonded. Nothing here is presumed."""

from __future__ import annotations

from calc.declare import Choice, needed
from calc.grounding.electrode_limit import ELECTRODE_CHOICES
from calc.places import also_called
from calc.vocabulary import (
    MOST_SETS,
    conductor_size,
    device_rating,
    metal_of,
    one_of,
    several_of,
    whole_number,
    yes_or_no,
)
from calc.words import say

METAL_RACEWAY = "metal"
NO_OTHER = "no-other"

SETS = whole_number(say("Parallel sets"), say("Conductors side by side in each phase."), 1, MOST_SETS)
CONDUCTOR_METAL = metal_of(say("Metal of those conductors"))
METAL = metal_of(say("Metal of the bonding and grounding conductors"))
RACEWAYS = whole_number(
    say("Raceways or cables for those sets"),
    say("In how many raceways or cables the sets run. Needed for two or more sets."),
    1,
    MOST_SETS,
)
RACEWAY = one_of(
    say("Those raceways are"),
    say("Metal ones are bonded on the supply side. A flexible one needs a wire beside it as a nonmetallic one does."),
    (
        Choice(METAL_RACEWAY, say("Metal")),
        Choice("nonmetallic", say("Nonmetallic, or a cable without metal"), also_called("nonmetallic")),
    ),
)
ELECTRODES = several_of(
    say("Electrodes"),
    say("All that are present at the building are used and joined together."),
    (*ELECTRODE_CHOICES, Choice(NO_OTHER, say("No other: I looked for them"))),
)
RING = conductor_size(
    say("Size of the ground ring"),
    say("Its bare copper conductor. It counts only if you choose a ground ring."),
    rare=True,
)
METAL_PARTS = several_of(
    say("Metal to be bonded"),
    say("What metal there is in or on the building, fed by these conductors."),
    (
        Choice("water-pipe", say("Metal water piping")),
        Choice("structural-metal", say("Exposed structural metal, joined into a frame")),
        Choice("other-metal", say("Gas or other metal piping")),
        Choice(NO_OTHER, say("No other: I looked for it")),
    ),
)
PIPING_DEVICE = device_rating(
    say("Device of the circuit likely to reach the other piping"),
    say("For example 15 A for the igniter of a gas appliance. Needed for gas or other metal piping only."),
    rare=True,
)
MINIMUM = conductor_size(
    say("Smallest hot conductor that would do"),
    say("Needed where a larger one was run, as for voltage drop: the equipment grounding conductor grows with it."),
    rare=True,
)
COMMON = yes_or_no(
    say("Shares one grounding electrode conductor with other transformers or generators"),
    say("A common conductor through the building, with a tap from each."),
)


def chosen(listed: str | None) -> tuple[str, ...]:
    """Give the values of a field of several that name something there: "rod,no-other" gives ("rod",)."""
    return tuple(each for each in listed.split(",") if each != NO_OTHER) if listed else ()


def looked_for_others(listed: str | None) -> bool:
    """Tell whether the reader says that nothing of the kind is there but what is chosen."""
    return bool(listed) and NO_OTHER in listed.split(",")


def raceways_of(sets: int, raceways: int | None) -> int:
    """Give the number of raceways: one for a single set, else what was entered. Raises: Mend when it was not."""
    return raceways or (1 if sets == 1 else needed(raceways, "raceways"))
