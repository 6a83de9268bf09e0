"""What the answer about a clamp reading holds."""

from __future__ import annotations

from calc.measure.clamp_causes import CAUSES
from calc.messages import message
from calc.output import Output

REAL, CANNOT_TELL = "real", "cannot-tell"

OUTPUTS = (
    Output("verdict", message("Whether the current is real"), "choice", choices=(REAL, CANNOT_TELL)),
    Output("ampere_low", message("Current, least"), "number", "A"),
    Output("ampere_high", message("Current, most"), "number", "A"),
    Output(
        "causes", message("Likely causes, the first to look at first"), "choice", choices=tuple(CAUSES), shape="list"
    ),
    Output(
        "stays",
        message("Whether current stays with the device off"),
        "yes-no",
        when=message("where it was read with the device off"),
    ),
    Output(
        "appliances_for_filters",
        message("Fewest appliances whose filters together may leak this much"),
        "whole-number",
        when=message("where filters can be the cause"),
    ),
)
