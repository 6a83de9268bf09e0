"""How many equipment grounding conductors parallel sets need, and what a cable tray asks of one."""

from __future__ import annotations

from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.words import say
from calc.working import Working

TRAY = "raceways/tray_single_conductor_smallest"


def count_of_conductors(sets: int, raceways: int, raceway: str, working: Working) -> int:
    """Give how many equipment grounding conductors the parallel sets need; record why."""
    if sets == 1:
        return 1
    if raceway == "cable":
        working.step(
            say("Each parallel cable has one of this size; its conductors are joined at both ends."),
            cites=("grounding/parallel_cables",),
        )
        working.note(
            say(
                "Cables in one raceway or tray may share one more conductor of this size instead, joined to theirs "
                "({section}).",
                section=working.section("grounding/parallel_cables"),
            )
        )
        return raceways
    if raceways == 1:
        working.step(
            say("All sets run together: one conductor serves them."), cites=("grounding/parallel_in_one_raceway",)
        )
        return 1
    working.step(
        say("{raceways} raceways: one of this size in each, not a share of it.", raceways=raceways),
        cites=("grounding/parallel_in_several_raceways",),
    )
    return raceways


def size_in_tray(size: str, working: Working) -> str:
    """Give `size`, or the least size of a single wire in a cable tray.

    Source: rule raceways/tray_single_conductor_smallest.
    """
    least = working.cite(TRAY).value
    if area(size, working.edition) >= area(least, working.edition):
        return size
    working.step(
        say(
            "A single wire in a cable tray is {least} or larger, and only for industrial premises that qualified "
            "persons service.",
            least=shown_size(least),
        ),
        shown_size(least),
        "",
        (TRAY,),
    )
    return least
