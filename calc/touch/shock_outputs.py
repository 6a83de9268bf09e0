"""What the answer about a shock holds."""

from __future__ import annotations

from calc.output import Output
from calc.touch.shock_words import WORST_FIRST
from calc.touch.time_zones import UNFELT, WORST, ZONE_NAMES
from calc.words import say

_ENDS = say("where a device ends the shock in a known time")

OUTPUTS = (
    Output("milliampere_few", say("Current through the body: 19 of 20 people get more"), "number", "mA"),
    Output("milliampere_half", say("Current through the body: half of people get more"), "number", "mA"),
    Output("milliampere_most", say("Current through the body: 19 of 20 people get less"), "number", "mA"),
    Output("verdict", say("What the most current does"), "choice", choices=WORST_FIRST),
    Output(
        "zone",
        say("Time-current zone of the most current"),
        "choice",
        choices=(UNFELT, *ZONE_NAMES.values(), WORST),
        when=_ENDS,
    ),
    Output(
        "limit_milliampere",
        say("Fibrillation limit for that time"),
        "number",
        "mA",
        when=say("where the time is within the limit's range"),
    ),
    Output("let_go_milliampere", say("Current above which some people cannot let go"), "number", "mA"),
    Output(
        "interrupter_second",
        say("Longest opening time of a Class A GFCI at the most current"),
        "number",
        "s",
        when=say("where that current trips it"),
    ),
    Output(
        "interrupter_second_longest",
        say("Longest opening time of a Class A GFCI at the least current"),
        "number",
        "s",
        when=say("where that current trips it"),
    ),
)
