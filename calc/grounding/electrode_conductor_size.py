"""The size that the area of the ungrounded conductors asks for, whatever the electrode. It ends at a fixed size."""

from __future__ import annotations

from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.messages import message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace, row_of_area, shown_number

TABLE = "grounding/electrode_conductor_size"


def electrode_conductor_size(total: float, conductor_metal: str, metal: str, trace: Trace, sets: int = 1) -> str:
    """Return the size label of `metal` for ungrounded conductors of `total` cmil of `conductor_metal` together.

    sets: how many of them are those of the field `conductor`.

    Above the last limit the size stays: no share of the area is taken. Source: rule grounding/electrode_conductor_size.
    """
    rows = trace.cite(TABLE).rows
    through = f"through_{TABLE_COLUMN[conductor_metal]}"
    limits = [row[through] for row in rows if through in row]
    trace.table_row = row_of_area(total, sets, [area(each, trace.edition) for each in limits])
    row = next((row for row in rows if through in row and total <= area(row[through], trace.edition)), rows[-1])
    size = row[TABLE_COLUMN[metal]]
    words = dict(
        total=shown_number(total),
        supply=METAL_WORDS[conductor_metal],
        size=shown_size(size),
        metal=METAL_WORDS[metal],
    )
    if row is rows[0]:
        sentence = message(
            "{total} cmil falls in the row “{through} {supply} or smaller”: {size} {metal}.",
            through=shown_size(limits[0]),
            **words,
        )
    elif through in row:
        sentence = message(
            "{total} cmil falls in the row “over {before} through {through} {supply}”: {size} {metal}.",
            before=shown_size(limits[limits.index(row[through]) - 1]),
            through=shown_size(row[through]),
            **words,
        )
    else:
        sentence = message(
            "{total} cmil is over {last} {supply}, the last row: {size} {metal}. However large the supply, nothing "
            "larger is required; the percentage rule for bonding jumpers does not apply here.",
            last=shown_size(limits[-1]),
            **words,
        )
    trace.step(sentence, shown_size(size), "", (TABLE,))
    return size
