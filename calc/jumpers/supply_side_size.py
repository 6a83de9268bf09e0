"""The size of a part ahead of the first overcurrent device, by the area of the ungrounded conductors.

Main, system and supply-side bonding jumpers and the grounded conductor share it.
"""

from __future__ import annotations

from calc.calculator import NotCovered
from calc.conductors.ampacity import AMPACITY_RULE, TABLE_COLUMN, ampacity, size_of_ampacity
from calc.conductors.area import AREA_RULE, area, next_listed_size
from calc.conductors.size import shown_size
from calc.known import known
from calc.messages import message
from calc.rulebook import rule
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace, row_of_area, shown_number

TABLE = "jumpers/supply_side_size"
SHARE = "jumpers/supply_side_share_above_table"
UNLIKE = "jumpers/unlike_metals_above_table"
CAP = "jumpers/not_larger_than_ungrounded"
DERIVED_CAP = "jumpers/derived_jumper_not_larger"
PARALLEL = "conductors/parallel_minimum"


def supply_side_size(
    conductor: str, sets: int, conductor_metal: str, metal: str, trace: Trace, cap_rule: str = CAP
) -> str:
    """Return the smallest size label of `metal` for `sets` ungrounded conductors of size `conductor`.

    cap_rule: the rule that says it need not be larger than those conductors, whatever their size. `CAP` speaks of
    large ones: small ones keep the least size of the table, and the other reading is noted.
    Raises: NotCovered when no listed size is large enough. Source: rules named above.
    """
    edition = trace.edition
    one = area(conductor, edition)
    trace.step(message("Area of one {size} conductor.", size=shown_size(conductor)), one, "cmil", (AREA_RULE,))
    total: float = one
    if sets > 1:
        total = trace.compute(
            message("Total area of all conductors of one phase."),
            "sets * area_of_one",
            "cmil",
            exact=True,
            sets=sets,
            area_of_one=one,
        )
        warn_of_small_parallel_conductors(conductor, trace)
    rows = trace.cite(TABLE).rows
    column = TABLE_COLUMN[conductor_metal]
    row = next((row for row in rows if total <= area(row[f"through_{column}"], edition)), None)
    limits = [area(each[f"through_{column}"], edition) for each in rows]
    trace.table_row = row_of_area(total, sets, limits)
    if row is None:
        last = rows[-1][f"through_{column}"]
        return _share_of_area(conductor, sets, conductor_metal, metal, total, last, trace)
    size = row[TABLE_COLUMN[metal]]
    before = rows[rows.index(row) - 1][f"through_{column}"] if row is not rows[0] else None
    words = dict(
        total=shown_number(total),
        supply=METAL_WORDS[conductor_metal],
        size=shown_size(size),
        metal=METAL_WORDS[metal],
        through=shown_size(row[f"through_{column}"]),
    )
    if before:
        trace.step(
            message(
                "{total} cmil falls in the row “over {before} through {through} {supply}”: {size} {metal}.",
                before=shown_size(before),
                **words,
            ),
            shown_size(size),
            "",
            (TABLE,),
        )
    else:
        trace.step(
            message("{total} cmil falls in the row “{through} {supply} or smaller”: {size} {metal}.", **words),
            shown_size(size),
            "",
            (TABLE,),
        )
    return _not_larger_than_ungrounded(size, conductor, sets, total, conductor_metal, metal, trace, cap_rule)


def _not_larger_than_ungrounded(
    size: str,
    conductor: str,
    sets: int,
    total: float,
    conductor_metal: str,
    metal: str,
    trace: Trace,
    cap_rule: str,
) -> str:
    if area(size, trace.edition) <= total:
        return size
    if TABLE_COLUMN[metal] != "copper" and TABLE_COLUMN[conductor_metal] == "copper":
        if cap_rule != CAP:
            trace.warn(
                message(
                    "It is not required to be larger than the ungrounded conductors ({section}). Copper and aluminum "
                    "of the same size do not have the same conductance, so this answer keeps the table size.",
                    section=trace.section(cap_rule),
                )
            )
        return size
    smaller = conductor if sets == 1 else known(next_listed_size(total, trace.edition))
    if area(smaller, trace.edition) >= area(size, trace.edition):
        return size
    if cap_rule == CAP:
        trace.reading(
            message("where the authority having jurisdiction applies the hot conductor limit here too"), smaller
        )
        trace.note(
            message(
                "{size} is the smallest size in the table, though the hot conductors are smaller. The note for "
                "conductors beyond the table does not require a jumper larger than they are ({section}). Some apply it "
                "here too: {smaller} {metal}. Ask the authority having jurisdiction before you go below {size}.",
                size=shown_size(size),
                smaller=shown_size(smaller),
                metal=METAL_WORDS[metal],
                section=trace.section(cap_rule),
            )
        )
        return size
    trace.step(
        message("It is not required to be larger than the ungrounded conductors: {size}.", size=shown_size(smaller)),
        shown_size(smaller),
        "",
        (cap_rule,),
    )
    return smaller


def _share_of_area(
    conductor: str, sets: int, conductor_metal: str, metal: str, total: float, last: str, trace: Trace
) -> str:
    edition = trace.edition
    trace.step(
        message(
            "{total} cmil is over {last} {supply}, beyond the end of the table: use a share of the total area.",
            total=shown_number(total),
            last=shown_size(last),
            supply=METAL_WORDS[conductor_metal],
        ),
        cites=(TABLE,),
    )
    if TABLE_COLUMN[metal] != TABLE_COLUMN[conductor_metal]:
        total = _total_area_in_metal_of_jumper(conductor, sets, conductor_metal, metal, trace)
    share = trace.cite(SHARE).value
    needed = trace.compute(
        message("Minimum area, not rounded."),
        "share * total_area",
        "cmil",
        (SHARE,),
        exact=True,
        share=share,
        total_area=total,
    )
    size = next_listed_size(needed, edition)
    if size is None:
        raise NotCovered(
            message(
                "{needed} cmil is required. No single listed conductor is that large.", needed=shown_number(needed)
            ),
            message("Use the busbar jumper that comes with the listed equipment, or ask the manufacturer."),
        )
    trace.step(
        message(
            "Next listed size up: {size}, {cmil} cmil.", size=shown_size(size), cmil=shown_number(area(size, edition))
        ),
        shown_size(size),
        "",
        (SHARE, AREA_RULE),
    )
    return size


def _total_area_in_metal_of_jumper(
    conductor: str, sets: int, conductor_metal: str, metal: str, trace: Trace
) -> float:
    """Take the ungrounded conductors as conductors of the jumper's metal with equivalent ampacity."""
    edition = trace.edition
    carried = ampacity(conductor, conductor_metal, edition)
    equal = carried and size_of_ampacity(carried, metal, edition)
    if not equal:
        raise NotCovered(
            message(
                "The conductor materials differ, and no listed {metal} size has the ampacity of {size} {supply}.",
                metal=METAL_WORDS[metal],
                size=shown_size(conductor),
                supply=METAL_WORDS[conductor_metal],
            ),
            message(
                "Choose the same material as the ungrounded conductors ({section}).",
                section=trace.section(UNLIKE),
            ),
        )
    trace.step(
        message(
            "The conductor materials differ, so take the ungrounded conductors as {metal} of equivalent ampacity: "
            "{size} {supply} is good for {carried} A at 75 °C; the smallest {metal} size good for that is {equal} "
            "({ampere} A).",
            metal=METAL_WORDS[metal],
            size=shown_size(conductor),
            supply=METAL_WORDS[conductor_metal],
            carried=carried,
            equal=shown_size(equal),
            ampere=ampacity(equal, metal, edition),
        ),
        shown_size(equal),
        "",
        (UNLIKE, AMPACITY_RULE),
    )
    return trace.compute(
        message("Total area of those conductors."),
        "sets * area_of_one",
        "cmil",
        (AREA_RULE,),
        exact=True,
        sets=sets,
        area_of_one=area(equal, edition),
    )


def warn_of_small_parallel_conductors(conductor: str, trace: Trace) -> None:
    """Warn where conductors of size label `conductor` are too small to run in parallel."""
    smallest = rule(PARALLEL, trace.edition).value
    if area(conductor, trace.edition) < area(smallest, trace.edition):
        trace.warn(
            message(
                "Conductors in parallel must be {smallest} or larger ({section}). Check the size and the number of "
                "sets.",
                smallest=shown_size(smallest),
                section=trace.section(PARALLEL),
            )
        )
