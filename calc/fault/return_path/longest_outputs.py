"""What the longest ground-fault return path's answer holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output("shortest_ft", message("Length to plan on, one way: warm wires and low voltage"), "whole-number", "ft"),
    Output("likely_ft", message("Likely length, one way"), "whole-number", "ft"),
    Output("longest_ft", message("Best-case length, one way"), "whole-number", "ft"),
    Output("current_ampere", message("Fault current wanted"), "number", "A"),
    Output(
        "within",
        message("Whether the run entered is within the length to plan on"),
        "choice",
        choices=("yes", "not-sure", "no", "not-asked"),
    ),
    Output(
        "shortest_with_source_ft",
        message("Length to plan on when the source is weak"),
        "whole-number",
        "ft",
        when=message("where no available fault current was entered"),
    ),
    Output(
        "shortest_with_arc_ft",
        message("Length to plan on when the fault arcs"),
        "whole-number",
        "ft",
        when=message("where no arc was entered"),
    ),
)
