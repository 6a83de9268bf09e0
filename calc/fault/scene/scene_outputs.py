"""What the drawn circuit's answer holds."""

from __future__ import annotations

from calc.fault.device.device import VERDICTS
from calc.fault.scene.scene_opening import HOT_OF
from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output("fault_ampere", message("Fault current"), "number", "A"),
    Output("verdict", message("Whether a breaker opens"), "choice", choices=(*VERDICTS, "no-fault")),
    Output("device", message("Breaker that opens most surely, or none"), "choice", choices=(*HOT_OF, "none")),
    Output("volts", message("Voltage of each metal part to remote earth"), "number", "V", shape="by-name"),
    Output("currents", message("Current in each part of the drawing"), "number", "A", shape="by-name"),
    Output(
        "leg_volts",
        message("Voltage of the lighter and the heavier loaded 120 V leg"),
        "number",
        "V",
        shape="by-name",
        when=message("where the loads are on and the neutral is missing or loose"),
    ),
)
