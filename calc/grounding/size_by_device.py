"""The size that the overcurrent device ahead asks for: equipment grounding conductors, load-side jumpers."""

from __future__ import annotations

from calc.calculator import NotCovered
from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import AREA_RULE, area, listed_sizes, next_listed_size
from calc.conductors.size import shown_size
from calc.known import known
from calc.messages import message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace, shown_number

TABLE = "grounding/equipment_grounding_size"


def size_by_device(device: float, metal: str, trace: Trace) -> str:
    """Return the smallest size label of `metal` behind an overcurrent device of `device` ampere.

    A row that prints a size nobody lists gives the next listed one.
    Raises: NotCovered above the last row. Source: rule grounding/equipment_grounding_size.
    """
    rows = trace.cite(TABLE).rows
    row = next((row for row in rows if device <= row["through_ampere"]), None)
    if row is None:
        raise NotCovered(
            message("The table ends at {last} A.", last=shown_number(rows[-1]["through_ampere"])),
            message("Ask the equipment manufacturer or an engineer."),
        )
    size: str = row[TABLE_COLUMN[metal]]
    trace.step(
        message(
            "A {device} A device falls in the row “not over {through} A”: {size} {metal}.",
            device=shown_number(device),
            through=shown_number(row["through_ampere"]),
            size=shown_size(size),
            metal=METAL_WORDS[metal],
        ),
        shown_size(size),
        "",
        (TABLE,),
    )
    if size not in listed_sizes(trace.edition):
        size = known(next_listed_size(area(size, trace.edition), trace.edition))
        trace.step(
            message("That is not a listed size. Next listed size up: {size}.", size=shown_size(size)),
            shown_size(size),
            "",
            (AREA_RULE,),
        )
    return size
