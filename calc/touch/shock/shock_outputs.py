"""What the answer about a shock holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output
from calc.touch.shock.shock_words import WORST_FIRST
from calc.touch.shock.time_zones import UNFELT, WORST, ZONE_NAMES

_ENDS = message("where a device ends the shock in a known time")

OUTPUTS = (
    Output("milliampere_few", message("Current through the body: 19 of 20 people get more"), "number", "mA"),
    Output("milliampere_half", message("Current through the body: half of people get more"), "number", "mA"),
    Output("milliampere_most", message("Current through the body: 19 of 20 people get less"), "number", "mA"),
    Output("verdict", message("What the most current does"), "choice", choices=WORST_FIRST),
    Output(
        "zone",
        message("Time-current zone of the most current"),
        "choice",
        choices=(UNFELT, *ZONE_NAMES.values(), WORST),
        when=_ENDS,
    ),
    Output(
        "limit_milliampere",
        message("Fibrillation limit for that time"),
        "number",
        "mA",
        when=message("where the time is within the limit's range"),
    ),
    Output("let_go_milliampere", message("Current above which some people cannot let go"), "number", "mA"),
    Output(
        "interrupter_second",
        message("Longest opening time of a Class A GFCI at the most current"),
        "number",
        "s",
        when=message("where that current trips it"),
    ),
    Output(
        "interrupter_second_longest",
        message("Longest opening time of a Class A GFCI at the least current"),
        "number",
        "s",
        when=message("where that current trips it"),
    ),
)
