"""What the answer about a bond's resistance holds."""

from __future__ import annotations

from calc.measure.bond_verdict import BESIDE, CANNOT_TELL, INVESTIGATE, JOINED, PASS, STOP
from calc.messages import message
from calc.output import Output

VERDICTS = (PASS, JOINED, INVESTIGATE, CANNOT_TELL, BESIDE, STOP)

OUTPUTS = (
    Output("verdict", message("What the reading proves"), "choice", choices=VERDICTS),
    Output("milliohm_low", message("Resistance measured, least"), "number", "milliohm"),
    Output("milliohm", message("Resistance measured"), "number", "milliohm"),
    Output("milliohm_high", message("Resistance measured, most"), "number", "milliohm"),
    Output("expected_low", message("Resistance of a sound bond, least"), "number", "milliohm"),
    Output("expected_high", message("Resistance of a sound bond, most"), "number", "milliohm"),
    Output("limit_milliohm", message("Limit chosen"), "number", "milliohm", when=message("where a limit was chosen")),
)
