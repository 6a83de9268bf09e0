"""What the stray neutral current's answer holds."""

from __future__ import annotations

from calc.output import Output
from calc.words import say

OUTPUTS = (
    Output("metal_ampere", say("Current over metal"), "number", "A"),
    Output("neutral_ampere", say("Current on the neutral"), "number", "A"),
    Output("grounding_ampere", say("Of the current over metal, what the grounding conductor carries"), "number", "A"),
    Output("pipe_ampere", say("Of the current over metal, what the pipe or raceway carries"), "number", "A"),
    Output("metal_volt", say("Voltage of the metal to the neutral at the source"), "number", "V"),
    Output("load_volt", say("Voltage at the load"), "number", "V"),
    Output("break_volt", say("Voltage across the break of an open neutral"), "number", "V"),
    Output("gap_volt", say("Voltage across the second bond, or the water main, once it is opened"), "number", "V"),
    Output("other_leg_volt", say("Voltage of the other 120 V leg, its loads light"), "number", "V"),
)
