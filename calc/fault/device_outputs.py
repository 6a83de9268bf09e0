"""What the answer about a device's opening holds."""

from __future__ import annotations

from calc.fault.device import BEYOND, VERDICTS
from calc.output import Output, series
from calc.words import say

OUTPUTS = (
    Output("verdict", say("Whether the device opens"), "choice", choices=(*VERDICTS, BEYOND)),
    Output("multiple", say("Fault current as a multiple of the rating or setting"), "number", "x"),
    Output(
        "slowest_second",
        say("Longest time that the device may take"),
        "number",
        "s",
        when=say("where a published standard or curve sets one"),
    ),
    series("series", say("Lines of the time-current chart"), "A", "s"),
    Output(
        "largest_loop_ohm",
        say("Largest impedance of the fault loop that still opens the device at once"),
        "number",
        "ohm",
        when=say("where a voltage was entered and the device opens at once from a known current"),
    ),
    Output(
        "estimate_second",
        say("Opening time by engineering inference, not a rating"),
        "number",
        "s",
        when=say("where an estimate was asked for and there is one"),
    ),
)
