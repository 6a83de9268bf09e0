"""What the available fault current's answer holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output

_THREE_PHASE = message("in a three-phase system")
_RUN = message("where a run was entered")
_RUN_THREE_PHASE = message("where a run was entered, in a three-phase system")

OUTPUTS = (
    Output("available_ampere", message("Most fault current, with motors, rounded up to three figures"), "number", "A"),
    Output("place", message("Where that is: terminals, or end of the run"), "choice", choices=("terminals", "end")),
    Output("motors", message("Current that running motors add to it"), "number", "A"),
    Output("three_phase", message("Three-phase fault at the terminals"), "number", "A", when=_THREE_PHASE),
    Output("line_to_line", message("Line-to-line fault at the terminals"), "number", "A"),
    Output("line_to_ground", message("Line-to-ground fault at the terminals"), "number", "A"),
    Output(
        "three_phase_at_end", message("Three-phase fault at the end of the run"), "number", "A", when=_RUN_THREE_PHASE
    ),
    Output("line_to_line_at_end", message("Line-to-line fault at the end of the run"), "number", "A", when=_RUN),
    Output("line_to_ground_at_end", message("Line-to-ground fault at the end of the run"), "number", "A", when=_RUN),
    Output(
        "line_to_ground_limit_at_end",
        message("The most that a line-to-ground fault can be at the end of the run"),
        "number",
        "A",
        when=_RUN,
    ),
)
