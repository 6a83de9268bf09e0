"""What an electrode can ask for at most: rods, concrete-encased electrodes and ground rings have a limit."""

from __future__ import annotations

from collections.abc import Iterable

from calc.calculator import Choice, NotCovered
from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.known import known
from calc.messages import message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace

ROD = "grounding/electrode_conductor_to_rod"
CONCRETE = "grounding/electrode_conductor_to_concrete_encased"
RING = "grounding/electrode_conductor_to_ring"
SMALLEST_RING = "grounding/ground_ring_smallest"
SEVERAL = "grounding/electrode_conductor_to_several_electrodes"
ELECTRODES = {
    "water-pipe": message("Metal underground water pipe"),
    "structural-metal": message("Building steel or metal in-ground support structure"),
    "concrete-encased": message("Concrete-encased electrode"),
    "ring": message("Ground ring"),
    "rod": message("Ground rod"),
    "pipe": message("Pipe electrode"),
    "plate": message("Plate electrode"),
    "other": message("Another electrode"),
}
ELECTRODE_CHOICES = tuple(Choice(value, words) for value, words in ELECTRODES.items())
DRIVEN = ("rod", "pipe", "plate")


def electrode_limit(electrode: str, ring: str | None, metal: str, trace: Trace) -> tuple[str, str] | None:
    """Return the largest size that `electrode` asks for and the rule that says so, or None where nothing limits it.

    `ring` is the size of the ring's copper conductor, None without one. Raises: NotCovered for a ring that is too
    small to count.
    """
    if electrode in DRIVEN:
        return trace.cite(ROD).rows[0][TABLE_COLUMN[metal]], ROD
    if electrode == "ring":
        _refuse_a_small_ring(known(ring), trace)
    if electrode not in ("ring", "concrete-encased"):
        return None
    key = RING if electrode == "ring" else CONCRETE
    if TABLE_COLUMN[metal] != "copper":
        trace.warn(
            message(
                "The size limit for this electrode ({section}) is taken here for copper only, so this answer keeps the "
                "{metal} size of the table.",
                section=trace.section(key),
                metal=METAL_WORDS[metal],
            )
        )
        return None
    return (known(ring) if electrode == "ring" else trace.cite(CONCRETE).value), key


def size_for_electrodes(
    table_size: str, electrodes: Iterable[str], ring: str | None, metal: str, trace: Trace
) -> str:
    """Return the size that the electrodes on this conductor ask for: each at most its limit, together the largest."""
    needed = [_size_for_one(table_size, electrode, ring, metal, trace) for electrode in electrodes]
    size = max(needed, key=lambda each: area(each, trace.edition))
    if len(needed) > 1:
        trace.step(
            message(
                "One conductor for several electrodes takes the largest size required: {size}.", size=shown_size(size)
            ),
            shown_size(size),
            "",
            (SEVERAL,),
        )
    return size


def _size_for_one(table_size: str, electrode: str, ring: str | None, metal: str, trace: Trace) -> str:
    limit = electrode_limit(electrode, ring, metal, trace)
    if limit is None or area(limit[0], trace.edition) >= area(table_size, trace.edition):
        return table_size
    size, key = limit
    trace.step(
        message(
            "{electrode}: the conductor is not required to be larger than {size} {metal}.",
            electrode=ELECTRODES[electrode],
            size=shown_size(size),
            metal=METAL_WORDS[metal],
        ),
        shown_size(size),
        "",
        (key,),
    )
    return size


def _refuse_a_small_ring(ring: str, trace: Trace) -> None:
    smallest = trace.cite(SMALLEST_RING).value
    if area(ring, trace.edition) < area(smallest, trace.edition):
        raise NotCovered(
            message("{ring} is too small for a ground ring.", ring=shown_size(ring)),
            message(
                "Look under ground ring ({section}): {smallest} copper or larger.",
                section=trace.section(SMALLEST_RING),
                smallest=shown_size(smallest),
            ),
        )
