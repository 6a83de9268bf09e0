"""What the stray neutral current's answer holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output("metal_ampere", message("Current on metal"), "number", "A"),
    Output("neutral_ampere", message("Current on the neutral"), "number", "A"),
    Output("grounding_ampere", message("Of the current on metal, what the grounding conductor carries"), "number", "A"),
    Output("pipe_ampere", message("Of the current on metal, what the pipe or raceway carries"), "number", "A"),
    Output("metal_volt", message("Voltage of the metal to the neutral at the source"), "number", "V"),
    Output("load_volt", message("Voltage at the load"), "number", "V"),
    Output("break_volt", message("Voltage across the break in an open neutral"), "number", "V"),
    Output("gap_volt", message("Voltage across the second bond, or the water main, once it is opened"), "number", "V"),
    Output("other_leg_volt", message("Voltage of the other 120 V leg, its loads light"), "number", "V"),
)
