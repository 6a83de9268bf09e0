"""How many equipment grounding conductors parallel sets need, and what a cable tray asks of one."""

from __future__ import annotations

from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.messages import message
from calc.trace import Trace

TRAY = "raceways/tray_single_conductor_smallest"


def count_of_conductors(sets: int, raceways: int, raceway: str, trace: Trace) -> int:
    """Return how many equipment grounding conductors the parallel sets need; record why."""
    if sets == 1:
        return 1
    if raceway == "cable":
        trace.step(
            message(
                "Each parallel cable must have one of this size; its conductors are connected together at both ends."
            ),
            cites=("grounding/parallel_cables",),
        )
        trace.note(
            message(
                "Instead, cables in one raceway or tray may share one additional conductor of this size, connected to "
                "theirs ({section}).",
                section=trace.section("grounding/parallel_cables"),
            )
        )
        return raceways
    if raceways == 1:
        trace.step(
            message("All sets are run together: one conductor serves them."), cites=(
                "grounding/parallel_in_one_raceway",
            )
        )
        return 1
    trace.step(
        message("{raceways} raceways: install one of this full size in each.", raceways=raceways),
        cites=("grounding/parallel_in_several_raceways",),
    )
    return raceways


def size_in_tray(size: str, trace: Trace) -> str:
    """Return `size`, or the least size of a single wire in a cable tray.

    Source: rule raceways/tray_single_conductor_smallest.
    """
    least = trace.cite(TRAY).value
    if area(size, trace.edition) >= area(least, trace.edition):
        return size
    trace.step(
        message(
            "A single conductor in cable tray must be {least} or larger, and is permitted only in industrial "
            "establishments serviced by qualified persons.",
            least=shown_size(least),
        ),
        shown_size(least),
        "",
        (TRAY,),
    )
    return least
