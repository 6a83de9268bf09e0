"""The size by the table of supply-side jumpers, no larger than the edition asks of a bond to piping or steel."""

from __future__ import annotations

from calc.calculator import NotCovered
from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.editions import EDITIONS
from calc.jumpers.supply_side_size import supply_side_size
from calc.messages import message
from calc.rulebook import rule
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace


def capped_supply_side_size(
    conductor: str, sets: int, conductor_metal: str, metal: str, trace: Trace, cap_rule: str
) -> str:
    """Return the smallest size label of `metal` for a bond that need not be larger than rule `cap_rule` says.

    Raises: NotCovered when no listed size is large enough and the edition states no cap. Source: `cap_rule`.
    """
    cap = trace.cite(cap_rule).rows[0][TABLE_COLUMN[metal]]
    if cap == "none":
        size = supply_side_size(conductor, sets, conductor_metal, metal, trace)
        _note_later_cap(size, metal, trace, cap_rule)
        return size
    try:
        size = supply_side_size(conductor, sets, conductor_metal, metal, trace)
    except NotCovered:
        size = None
    if size and area(size, trace.edition) <= area(cap, trace.edition):
        return size
    trace.step(
        message(
            "This bonding jumper is not required to be larger than {cap} {metal}.",
            cap=shown_size(cap),
            metal=METAL_WORDS[metal],
        ),
        shown_size(cap),
        "",
        (cap_rule,),
    )
    return cap


def _note_later_cap(size: str, metal: str, trace: Trace, cap_rule: str) -> None:
    """Note the first edition that states a cap, where `size` is larger than that."""
    later = next(edition for edition in EDITIONS if rule(cap_rule, edition).rows[0][TABLE_COLUMN[metal]] != "none")
    cap = rule(cap_rule, later).rows[0][TABLE_COLUMN[metal]]
    if area(size, trace.edition) > area(cap, trace.edition):
        trace.reading(
            message(
                "where the authority having jurisdiction accepts the limit of the {later} edition",
                later=later,
            ),
            cap,
        )
        trace.note(
            message(
                "The {edition} edition states no maximum size. From {later} on, no more than {cap} {metal} is "
                "required; ask the authority having jurisdiction whether that is accepted.",
                edition=trace.edition,
                later=later,
                cap=shown_size(cap),
                metal=METAL_WORDS[metal],
            )
        )
