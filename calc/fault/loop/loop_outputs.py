"""What the ground-fault loop's answer holds."""

from __future__ import annotations

from calc.fault.device.device import VERDICTS
from calc.messages import message
from calc.output import Output
from calc.shared_outputs import slowest_second

_NO_ARC = message("where no arc was entered")

OUTPUTS = (
    Output("lowest_ampere", message("Least fault current: what the device must open on"), "number", "A"),
    Output("likely_ampere", message("Likely fault current"), "number", "A"),
    Output("highest_ampere", message("Most fault current"), "number", "A"),
    Output("multiple", message("Least fault current as a multiple of the rating"), "number", "x"),
    Output("verdict", message("Whether the device opens on the least fault current"), "choice", choices=VERDICTS),
    slowest_second(),
    Output("touch_volt", message("Highest voltage from the metal to the panel during the fault"), "number", "V"),
    Output("wire_share", message("Part of the likely current that returns on the wire, 0 to 1"), "number"),
    Output("raceway_share", message("Part of the likely current that returns on the raceway, 0 to 1"), "number"),
    Output(
        "least_available_ampere",
        message("Least fault current that must be available ahead of the run for this to hold"),
        "number",
        "A",
        when=message("where the device opens and some current is enough"),
    ),
    Output("arc_ampere", message("Least fault current through an arc"), "number", "A", when=_NO_ARC),
    Output(
        "arc_verdict",
        message("Whether the device opens on the least current through an arc"),
        "choice",
        choices=VERDICTS,
        when=_NO_ARC,
    ),
)
