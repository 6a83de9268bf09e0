"""What the answer about earth as the only return holds."""

from __future__ import annotations

from calc.fault.device.device import DOES_NOT_OPEN, NOT_ASSURED
from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output("verdict", message("Whether the device opens"), "choice", choices=(DOES_NOT_OPEN, NOT_ASSURED)),
    Output("ampere", message("Fault current through the electrodes"), "number", "A"),
    Output("multiple", message("Fault current as a multiple of the rating"), "number", "x"),
    Output("metal_volt", message("Voltage of the metal to remote earth"), "number", "V"),
    Output("source_volt", message("Voltage of the source's electrodes to remote earth"), "number", "V"),
    Output("loop_ohm", message("Resistance of all electrodes in the loop"), "number", "ohm"),
    Output("loop_ohm_for_rating", message("Resistance at which the fault only reaches the rating"), "number", "ohm"),
)
