"""What the answer about a jumper in a fault holds."""

from __future__ import annotations

from calc.fault.withstand_fields import METAL
from calc.output import YES_OR_NO, Output, values_of
from calc.shared_outputs import wire
from calc.words import say

_CHECKED = say("where a size was entered to check")

OUTPUTS = (
    *wire(say("Smallest jumper that survives the fault"), metals=values_of(METAL)),
    Output("needed_cmil", say("Least area that survives"), "number", "cmil"),
    Output("other_size", say("Smallest size by the other formula"), "size"),
    Output("energy", say("Energy of the fault"), "number", "A2s"),
    Output(
        "time_second",
        say("How long the fault lasts"),
        "number",
        "s",
        when=say("where no let-through energy was entered"),
    ),
    Output("checked_size", say("Size that was checked"), "size", when=_CHECKED),
    Output("survives", say("Whether it survives"), "choice", choices=YES_OR_NO, when=_CHECKED),
    Output(
        "end_celsius",
        say("Temperature that it reaches"),
        "number",
        "°C",
        when=say("where the size checked survives"),
    ),
    Output(
        "melts_second",
        say("Time in which this current would melt it, if no heat got out"),
        "number",
        "s",
        when=say("where a copper size was checked"),
    ),
)
