"""What the answer about an electrode's resistance holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output("ohm_low", message("Resistance to remote earth, least"), "number", "ohm"),
    Output("ohm_likely", message("Resistance to remote earth, likely"), "number", "ohm"),
    Output("ohm_high", message("Resistance to remote earth, most"), "number", "ohm"),
    Output("soil_ohm_metre", message("Resistivity of the soil, likely"), "number", "ohmm"),
    Output("shape_per_metre", message("Resistance for each ohm-meter of soil, by the metal's shape"), "number", "1/m"),
)
