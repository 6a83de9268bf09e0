"""What the answer about a fall-of-potential test holds."""

from __future__ import annotations

from calc.electrodes.fall_of_potential import (
    DISTURBED,
    NO_PLATEAU,
    NOT_ISOLATED,
    PLATEAU,
    TOO_FLAT,
    TOO_LOW,
    TOO_NEAR,
)
from calc.output import Output, series
from calc.words import say

VERDICTS = (PLATEAU, NO_PLATEAU, TOO_FLAT, TOO_LOW, DISTURBED, TOO_NEAR, NOT_ISOLATED)

OUTPUTS = (
    Output("verdict", say("What the readings prove"), "choice", choices=VERDICTS),
    Output(
        "ohm",
        say("Resistance of the electrode"),
        "number",
        "ohm",
        when=say("where the readings hold level"),
    ),
    Output("ohm_at_place", say("Reading at about 62 percent of the way"), "number", "ohm"),
    Output("place_ft", say("Where that is, from the electrode"), "number", "ft"),
    Output("spread_percent", say("How far the readings around it differ"), "number", "%"),
    series("series", say("Lines of the chart"), "ft", "ohm"),
)
