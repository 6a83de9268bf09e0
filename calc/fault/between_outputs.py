"""What the answer about the voltage between two parts holds: each reading with the parts apart, and bonded."""

from __future__ import annotations

from calc.fault.between_circuit import ONE, TWO
from calc.output import Output
from calc.touch.people_outputs import people_outputs
from calc.words import Sentence, say

_HOW = {"apart": say("Apart"), "bonded": say("Bonded")}
_ACROSS = {
    "between": say("from part to part"),
    ONE: say("from the first part to remote earth"),
    TWO: say("from the second part to remote earth"),
}


def _readings(before: str, how: Sentence) -> tuple[Output, ...]:
    """Return the outputs for the readings of the parts apart or bonded."""
    return (
        Output(f"{before}_neutral_volt", say("{how}: voltage of the neutral to remote earth", how=how), "number", "V"),
        Output(f"{before}_leak_ampere", say("{how}: leakage current", how=how), "number", "A"),
        Output(f"{before}_bond_ampere", say("{how}: current in the bond", how=how), "number", "A"),
        *(output for name, across in _ACROSS.items() for output in _across(f"{before}_{name}", how, across)),
    )


def _across(name: str, how: Sentence, across: Sentence) -> tuple[Output, ...]:
    words = {"how": how, "across": across}
    return (
        Output(f"{name}_volt", say("{how}: voltage {across}", **words), "number", "V"),
        Output(f"{name}_body", say("{how}: current through an ordinary body {across}", **words), "number", "mA"),
        Output(f"{name}_body_wet", say("{how}: current through a wet body {across}", **words), "number", "mA"),
    )


OUTPUTS = (
    *(output for before, how in _HOW.items() for output in _readings(before, how)),
    *people_outputs("apart_between_"),
    Output("milliampere_worst", say("Most current through any person, anywhere, apart or bonded"), "number", "mA"),
)
