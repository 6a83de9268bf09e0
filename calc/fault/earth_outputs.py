"""What the answer about earth as the only return holds."""

from __future__ import annotations

from calc.fault.device import DOES_NOT_OPEN, NOT_ASSURED
from calc.output import Output
from calc.words import say

OUTPUTS = (
    Output("verdict", say("Whether the device opens"), "choice", choices=(DOES_NOT_OPEN, NOT_ASSURED)),
    Output("ampere", say("Fault current through the electrodes"), "number", "A"),
    Output("multiple", say("Fault current as a multiple of the rating"), "number", "x"),
    Output("metal_volt", say("Voltage of the metal to remote earth"), "number", "V"),
    Output("source_volt", say("Voltage of the source's electrodes to remote earth"), "number", "V"),
    Output("loop_ohm", say("Resistance of all electrodes in the loop"), "number", "ohm"),
    Output("loop_ohm_for_rating", say("Resistance at which the fault only reaches the rating"), "number", "ohm"),
)
