"""What the answer about a bond's resistance holds."""

from __future__ import annotations

from calc.measure.bond_verdict import BESIDE, CANNOT_TELL, INVESTIGATE, JOINED, PASS, STOP
from calc.output import Output
from calc.words import say

VERDICTS = (PASS, JOINED, INVESTIGATE, CANNOT_TELL, BESIDE, STOP)

OUTPUTS = (
    Output("verdict", say("What the reading proves"), "choice", choices=VERDICTS),
    Output("milliohm_low", say("Resistance measured, least"), "number", "milliohm"),
    Output("milliohm", say("Resistance measured"), "number", "milliohm"),
    Output("milliohm_high", say("Resistance measured, most"), "number", "milliohm"),
    Output("expected_low", say("Resistance of a sound bond, least"), "number", "milliohm"),
    Output("expected_high", say("Resistance of a sound bond, most"), "number", "milliohm"),
    Output("limit_milliohm", say("Limit chosen"), "number", "milliohm", when=say("where a limit was chosen")),
)
