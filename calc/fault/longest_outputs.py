"""What the longest ground-fault return path's answer holds."""

from __future__ import annotations

from calc.output import Output
from calc.words import say

OUTPUTS = (
    Output("shortest_ft", say("Length to plan with, one way: the wires hot and the voltage low"), "whole-number", "ft"),
    Output("likely_ft", say("Likely length, one way"), "whole-number", "ft"),
    Output("longest_ft", say("Length at the very best, one way"), "whole-number", "ft"),
    Output("current_ampere", say("Current that the fault must bring"), "number", "A"),
    Output(
        "within",
        say("Whether the run entered is within the length to plan with"),
        "choice",
        choices=("yes", "not-sure", "no", "not-asked"),
    ),
    Output(
        "shortest_with_source_ft",
        say("Length to plan with when the source is weak"),
        "whole-number",
        "ft",
        when=say("where no available fault current was entered"),
    ),
    Output(
        "shortest_with_arc_ft",
        say("Length to plan with when the fault arcs"),
        "whole-number",
        "ft",
        when=say("where no arc was entered"),
    ),
)
