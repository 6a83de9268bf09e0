"""What the drawn circuit's answer holds."""

from __future__ import annotations

from calc.fault.device import VERDICTS
from calc.fault.scene_opening import HOT_OF
from calc.output import Output
from calc.words import say

OUTPUTS = (
    Output("fault_ampere", say("Fault current"), "number", "A"),
    Output("verdict", say("Whether a breaker opens"), "choice", choices=(*VERDICTS, "no-fault")),
    Output("device", say("Breaker that opens most surely, or none"), "choice", choices=(*HOT_OF, "none")),
    Output("volts", say("Voltage of each metal part to remote earth"), "number", "V", shape="by-name"),
    Output("currents", say("Current in each part of the drawing"), "number", "A", shape="by-name"),
    Output(
        "leg_volts",
        say("Voltage of the lighter and the heavier loaded 120 V leg"),
        "number",
        "V",
        shape="by-name",
        when=say("where the loads are on and the neutral is missing or loose"),
    ),
)
