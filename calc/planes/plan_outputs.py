"""What the answers of plans hold: how many parts, what each part asks for, and what a floor or a reading shows."""

from __future__ import annotations

from calc.output import YES_OR_NO, Output
from calc.planes.plan import ACT, BELOW, DECISION_WORDS, LOOK
from calc.words import say

DECISIONS = Output(
    "decisions", say("What to do with each part"), "choice", choices=tuple(DECISION_WORDS), shape="by-name"
)
PLANE_NEEDED = Output("plane_needed", say("Whether an equipotential plane is required"), "choice", choices=YES_OR_NO)
_PLANE = say("where a plane is required")

POOL = (
    Output("bond", say("Parts to bond"), "whole-number"),
    Output("parts", say("Parts in the list"), "whole-number"),
    Output(
        "wire_feet",
        say("Length of bare wire to bring"),
        "number",
        "ft",
        when=say("where length and width of the pool were entered and a wire goes around it"),
    ),
    DECISIONS,
)
LIVESTOCK = (
    PLANE_NEEDED,
    Output("verdict", say("What the reading asks for"), "choice", choices=(ACT, BELOW, LOOK, "none")),
    Output(
        "milliampere",
        say("Current through the resistor"),
        "number",
        "mA",
        when=say("where the voltage was read across a resistor of about 500 ohm"),
    ),
    Output(
        "mean_cow_milliampere",
        say("Most current through an average cow"),
        "number",
        "mA",
        when=say("where a voltage was entered"),
    ),
    Output(
        "lowest_cow_milliampere",
        say("Most current through the cow of least resistance"),
        "number",
        "mA",
        when=say("where a voltage was entered"),
    ),
    DECISIONS,
)
WATERSIDE = (
    PLANE_NEEDED,
    Output("reach_inch", say("How far the plane must reach from the equipment"), "number", "in", when=_PLANE),
    Output("bond_size", say("Smallest conductor of the bond"), "size", when=_PLANE),
    DECISIONS,
)
