"""What the answer about a jumper in a fault holds."""

from __future__ import annotations

from calc.fault.withstand.withstand_fields import METAL
from calc.messages import message
from calc.output import YES_OR_NO, Output, values_of
from calc.shared_outputs import wire

_CHECKED = message("where a size was entered to check")

OUTPUTS = (
    *wire(message("Smallest jumper that survives the fault"), metals=values_of(METAL)),
    Output("needed_cmil", message("Smallest area that survives"), "number", "cmil"),
    Output("other_size", message("Smallest size by the other formula"), "size"),
    Output("energy", message("Energy of the fault"), "number", "A2s"),
    Output(
        "time_second",
        message("How long the fault lasts"),
        "number",
        "s",
        when=message("where no let-through energy was entered"),
    ),
    Output("checked_size", message("Size that was checked"), "size", when=_CHECKED),
    Output("survives", message("Whether it survives"), "choice", choices=YES_OR_NO, when=_CHECKED),
    Output(
        "end_celsius",
        message("Temperature that it reaches"),
        "number",
        "°C",
        when=message("where the size checked survives"),
    ),
    Output(
        "melts_second",
        message("Time in which this current would melt it, if no heat escaped"),
        "number",
        "s",
        when=message("where a copper size was checked"),
    ),
)
