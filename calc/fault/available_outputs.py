"""What the available fault current's answer holds."""

from __future__ import annotations

from calc.output import Output
from calc.words import say

_THREE_PHASE = say("in a three-phase system")
_RUN = say("where a run was entered")
_RUN_THREE_PHASE = say("where a run was entered, in a three-phase system")

OUTPUTS = (
    Output("available_ampere", say("Most fault current, with motors, rounded up to three figures"), "number", "A"),
    Output("place", say("Where that is: terminals, or end of the run"), "choice", choices=("terminals", "end")),
    Output("motors", say("Current that running motors add to it"), "number", "A"),
    Output("three_phase", say("Three-phase fault at the terminals"), "number", "A", when=_THREE_PHASE),
    Output("line_to_line", say("Line-to-line fault at the terminals"), "number", "A"),
    Output("line_to_ground", say("Line-to-ground fault at the terminals"), "number", "A"),
    Output("three_phase_at_end", say("Three-phase fault at the end of the run"), "number", "A", when=_RUN_THREE_PHASE),
    Output("line_to_line_at_end", say("Line-to-line fault at the end of the run"), "number", "A", when=_RUN),
    Output("line_to_ground_at_end", say("Line-to-ground fault at the end of the run"), "number", "A", when=_RUN),
    Output(
        "line_to_ground_limit_at_end",
        say("The most that a line-to-ground fault can be at the end of the run"),
        "number",
        "A",
        when=_RUN,
    ),
)
