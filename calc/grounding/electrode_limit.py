"""What an electrode can ask for at most: rods, concrete-encased electrodes and ground rings have a limit."""

from __future__ import annotations

from collections.abc import Iterable

from calc.conductors.ampacity import ALUMINUM_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.declare import Choice, NotCovered
from calc.vocabulary import METAL_WORDS
from calc.words import say
from calc.working import Working

ROD = "grounding/electrode_conductor_to_rod"
CONCRETE = "grounding/electrode_conductor_to_concrete_encased"
RING = "grounding/electrode_conductor_to_ring"
SMALLEST_RING = "grounding/ground_ring_smallest"
SEVERAL = "grounding/electrode_conductor_to_several_electrodes"
ELECTRODES = {
    "water-pipe": say("Metal underground water pipe"),
    "structural-metal": say("Building steel or metal in-ground support"),
    "concrete-encased": say("Concrete-encased electrode"),
    "ring": say("Ground ring"),
    "rod": say("Rod"),
    "pipe": say("Pipe"),
    "plate": say("Plate"),
    "other": say("Another electrode"),
}
ELECTRODE_CHOICES = tuple(Choice(value, words) for value, words in ELECTRODES.items())
DRIVEN = ("rod", "pipe", "plate")


def electrode_limit(electrode: str, ring: str | None, metal: str, working: Working) -> tuple[str, str] | None:
    """Give the largest size that `electrode` asks for and the rule that says so, or None where nothing limits it.

    `ring` is the size of the ring's copper conductor, None without one. Raises: NotCovered for a ring that is too
    small to count.
    """
    if electrode in DRIVEN:
        return working.cite(ROD).rows[0][ALUMINUM_COLUMN[metal]], ROD
    if electrode == "ring":
        _refuse_a_small_ring(ring, working)
    if electrode not in ("ring", "concrete-encased"):
        return None
    key = RING if electrode == "ring" else CONCRETE
    if ALUMINUM_COLUMN[metal] != "copper":
        working.warn(
            say(
                "The limit for this electrode ({section}) is read here for copper only, so this answer keeps the "
                "{metal} size of the table.",
                section=working.section(key),
                metal=METAL_WORDS[metal],
            )
        )
        return None
    return (ring if electrode == "ring" else working.cite(CONCRETE).value), key


def size_for_electrodes(
    table_size: str, electrodes: Iterable[str], ring: str | None, metal: str, working: Working
) -> str:
    """Give the size that the electrodes on this conductor ask for: each at most its limit, together the largest."""
    needed = [_size_for_one(table_size, electrode, ring, metal, working) for electrode in electrodes]
    size = max(needed, key=lambda each: area(each, working.edition))
    if len(needed) > 1:
        working.step(
            say("One conductor for several electrodes has the largest size asked for: {size}.", size=shown_size(size)),
            shown_size(size),
            "",
            (SEVERAL,),
        )
    return size


def _size_for_one(table_size: str, electrode: str, ring: str | None, metal: str, working: Working) -> str:
    limit = electrode_limit(electrode, ring, metal, working)
    if limit is None or area(limit[0], working.edition) >= area(table_size, working.edition):
        return table_size
    size, key = limit
    working.step(
        say(
            "{electrode}: the conductor need not be larger than {size} {metal}.",
            electrode=ELECTRODES[electrode],
            size=shown_size(size),
            metal=METAL_WORDS[metal],
        ),
        shown_size(size),
        "",
        (key,),
    )
    return size


def _refuse_a_small_ring(ring: str, working: Working) -> None:
    smallest = working.cite(SMALLEST_RING).value
    if area(ring, working.edition) < area(smallest, working.edition):
        raise NotCovered(
            say("A ring of {ring} is too small to count as a ground ring.", ring=shown_size(ring)),
            say(
                "Look under ground ring ({section}): {smallest} copper or larger.",
                section=working.section(SMALLEST_RING),
                smallest=shown_size(smallest),
            ),
        )
