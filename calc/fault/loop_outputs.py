"""What the ground-fault loop's answer holds."""

from __future__ import annotations

from calc.fault.device import VERDICTS
from calc.output import Output
from calc.words import say

_NO_ARC = say("where no arc was entered")

OUTPUTS = (
    Output("lowest_ampere", say("Least fault current: what the device must open on"), "number", "A"),
    Output("likely_ampere", say("Likely fault current"), "number", "A"),
    Output("highest_ampere", say("Most fault current"), "number", "A"),
    Output("multiple", say("Least fault current as a multiple of the rating"), "number", "x"),
    Output("verdict", say("Whether the device opens on the least fault current"), "choice", choices=VERDICTS),
    Output(
        "slowest_second",
        say("Longest time that the device may take"),
        "number",
        "s",
        when=say("where a published standard or curve sets one"),
    ),
    Output("touch_volt", say("Highest voltage from the metal to the panel during the fault"), "number", "V"),
    Output("wire_share", say("Part of the likely current that returns on the wire, 0 to 1"), "number"),
    Output("raceway_share", say("Part of the likely current that returns on the raceway, 0 to 1"), "number"),
    Output(
        "least_available_ampere",
        say("Least fault current that must be available ahead of the run for this to hold"),
        "number",
        "A",
        when=say("where the device opens and some current is enough"),
    ),
    Output("arc_ampere", say("Least fault current through an arc"), "number", "A", when=_NO_ARC),
    Output(
        "arc_verdict",
        say("Whether the device opens on the least current through an arc"),
        "choice",
        choices=VERDICTS,
        when=_NO_ARC,
    ),
)
