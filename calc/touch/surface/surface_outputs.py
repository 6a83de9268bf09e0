"""What the answer about the voltage on the ground holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output("volt_over_low", message("Voltage of the soil over the metal to remote earth, least"), "number", "V"),
    Output("volt_over_high", message("Voltage of the soil over the metal to remote earth, most"), "number", "V"),
    Output("volt_there_low", message("Voltage hand to feet where the person stands, least"), "number", "V"),
    Output("volt_there_high", message("Voltage hand to feet where the person stands, most"), "number", "V"),
    Output("step_volt", message("Step voltage where the person stands"), "number", "V"),
    Output("worst_step_volt", message("Highest step voltage anywhere"), "number", "V"),
    Output("ohm_low", message("Resistance of the metal to remote earth, least"), "number", "ohm"),
    Output("ohm_high", message("Resistance of the metal to remote earth, most"), "number", "ohm"),
    Output("leak_ampere_low", message("Leakage current to earth, least"), "number", "A"),
    Output("leak_ampere_likely", message("Leakage current to earth, likely"), "number", "A"),
    Output("leak_ampere_high", message("Leakage current to earth, most"), "number", "A"),
    Output("milliampere_usual", message("Current hand to feet, for a body of the usual resistance"), "number", "mA"),
    Output("milliampere_most", message("Most current hand to feet"), "number", "mA"),
)
