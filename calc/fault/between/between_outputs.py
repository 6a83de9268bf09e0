"""What the answer about the voltage between two parts holds: each reading with the parts apart, and bonded."""

from __future__ import annotations

from calc.fault.between.between_circuit import ONE, TWO
from calc.messages import Message, message
from calc.output import Output
from calc.touch.shock.people_outputs import people_outputs

_HOW = {"apart": message("Not bonded"), "bonded": message("Bonded")}
_ACROSS = {
    "between": message("from part to part"),
    ONE: message("from the first part to remote earth"),
    TWO: message("from the second part to remote earth"),
}


def _readings(before: str, how: Message) -> tuple[Output, ...]:
    """Return the outputs for the readings of the parts apart or bonded."""
    return (
        Output(
            f"{before}_neutral_volt", message("{how}: voltage of the neutral to remote earth", how=how), "number", "V"
        ),
        Output(f"{before}_leak_ampere", message("{how}: leakage current", how=how), "number", "A"),
        Output(f"{before}_bond_ampere", message("{how}: current in the bond", how=how), "number", "A"),
        *(output for name, across in _ACROSS.items() for output in _across(f"{before}_{name}", how, across)),
    )


def _across(name: str, how: Message, across: Message) -> tuple[Output, ...]:
    words = {"how": how, "across": across}
    return (
        Output(f"{name}_volt", message("{how}: voltage {across}", **words), "number", "V"),
        Output(f"{name}_body", message("{how}: current through an ordinary body {across}", **words), "number", "mA"),
        Output(f"{name}_body_wet", message("{how}: current through a wet body {across}", **words), "number", "mA"),
    )


OUTPUTS = (
    *(output for before, how in _HOW.items() for output in _readings(before, how)),
    *people_outputs("apart_between_"),
    Output("milliampere_worst", message("Most current through any person, anywhere, bonded or not"), "number", "mA"),
)
