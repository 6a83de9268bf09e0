"""What the answer about a clamp reading holds."""

from __future__ import annotations

from calc.measure.clamp_causes import CAUSES
from calc.output import Output
from calc.words import say

REAL, CANNOT_TELL = "real", "cannot-tell"

OUTPUTS = (
    Output("verdict", say("Whether the current is real"), "choice", choices=(REAL, CANNOT_TELL)),
    Output("ampere_low", say("Current, least"), "number", "A"),
    Output("ampere_high", say("Current, most"), "number", "A"),
    Output("causes", say("Likely causes, the first to look at first"), "choice", choices=tuple(CAUSES), shape="list"),
    Output(
        "stays",
        say("Whether current stays with the device off"),
        "yes-no",
        when=say("where it was read with the device off"),
    ),
    Output(
        "appliances_for_filters",
        say("Fewest appliances whose filters together may leak this much"),
        "whole-number",
        when=say("where filters can be the cause"),
    ),
)
