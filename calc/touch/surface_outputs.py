"""What the answer about the voltage on the ground holds."""

from __future__ import annotations

from calc.output import Output
from calc.words import say

OUTPUTS = (
    Output("volt_over_low", say("Voltage of the ground over the metal to remote earth, least"), "number", "V"),
    Output("volt_over_high", say("Voltage of the ground over the metal to remote earth, most"), "number", "V"),
    Output("volt_there_low", say("Voltage hand to feet where the person stands, least"), "number", "V"),
    Output("volt_there_high", say("Voltage hand to feet where the person stands, most"), "number", "V"),
    Output("step_volt", say("Step voltage where the person stands"), "number", "V"),
    Output("worst_step_volt", say("Highest step voltage anywhere"), "number", "V"),
    Output("ohm_low", say("Resistance of the metal to remote earth, least"), "number", "ohm"),
    Output("ohm_high", say("Resistance of the metal to remote earth, most"), "number", "ohm"),
    Output("leak_ampere_low", say("Leakage current to earth, least"), "number", "A"),
    Output("leak_ampere_likely", say("Leakage current to earth, likely"), "number", "A"),
    Output("leak_ampere_high", say("Leakage current to earth, most"), "number", "A"),
    Output("milliampere_usual", say("Current hand to feet, as a body is usually counted"), "number", "mA"),
    Output("milliampere_most", say("Most current hand to feet"), "number", "mA"),
)
