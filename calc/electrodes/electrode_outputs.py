"""What the answer about an electrode's resistance holds."""

from __future__ import annotations

from calc.output import Output
from calc.words import say

OUTPUTS = (
    Output("ohm_low", say("Resistance to remote earth, least"), "number", "ohm"),
    Output("ohm_likely", say("Resistance to remote earth, likely"), "number", "ohm"),
    Output("ohm_high", say("Resistance to remote earth, most"), "number", "ohm"),
    Output("soil_ohm_metre", say("Resistivity of the soil, likely"), "number", "ohmm"),
    Output("shape_per_metre", say("Resistance for each ohm-meter of soil, by the metal's shape"), "number", "1/m"),
)
