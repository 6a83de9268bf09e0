"""What the longest ground-fault return path's answer holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output(
        "shortest_ft", message("Length to plan with, one way: the wires hot and the voltage low"), "whole-number", "ft"
    ),
    Output("likely_ft", message("Likely length, one way"), "whole-number", "ft"),
    Output("longest_ft", message("Length at the very best, one way"), "whole-number", "ft"),
    Output("current_ampere", message("Current that the fault must bring"), "number", "A"),
    Output(
        "within",
        message("Whether the run entered is within the length to plan with"),
        "choice",
        choices=("yes", "not-sure", "no", "not-asked"),
    ),
    Output(
        "shortest_with_source_ft",
        message("Length to plan with when the source is weak"),
        "whole-number",
        "ft",
        when=message("where no available fault current was entered"),
    ),
    Output(
        "shortest_with_arc_ft",
        message("Length to plan with when the fault arcs"),
        "whole-number",
        "ft",
        when=message("where no arc was entered"),
    ),
)
