"""What the answer about a device's opening holds."""

from __future__ import annotations

from calc.fault.device.device import BEYOND, VERDICTS
from calc.messages import message
from calc.output import Output, series
from calc.shared_outputs import slowest_second

OUTPUTS = (
    Output("verdict", message("Whether the device opens"), "choice", choices=(*VERDICTS, BEYOND)),
    Output("multiple", message("Fault current as a multiple of the rating or setting"), "number", "x"),
    slowest_second(),
    series("series", message("Lines of the time-current chart"), "A", "s"),
    Output(
        "largest_loop_ohm",
        message("Largest impedance of the fault loop that still opens the device at once"),
        "number",
        "ohm",
        when=message("where a voltage was entered and the device opens at once from a known current"),
    ),
    Output(
        "estimate_second",
        message("Opening time by engineering inference, not a rating"),
        "number",
        "s",
        when=message("where an estimate was requested and there is one"),
    ),
)
