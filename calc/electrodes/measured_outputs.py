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
from calc.messages import message
from calc.output import Output, series

VERDICTS = (PLATEAU, NO_PLATEAU, TOO_FLAT, TOO_LOW, DISTURBED, TOO_NEAR, NOT_ISOLATED)

OUTPUTS = (
    Output("verdict", message("What the readings prove"), "choice", choices=VERDICTS),
    Output(
        "ohm",
        message("Resistance of the electrode"),
        "number",
        "ohm",
        when=message("where the readings hold level"),
    ),
    Output("ohm_at_place", message("Reading at about 62 percent of the way"), "number", "ohm"),
    Output("place_ft", message("Where that is, from the electrode"), "number", "ft"),
    Output("spread_percent", message("How far the readings around it differ"), "number", "%"),
    series("series", message("Lines of the chart"), "ft", "ohm"),
)
