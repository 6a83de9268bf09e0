"""What the answers of plans hold: how many parts, what each part asks for, and what a floor or a reading shows."""

from __future__ import annotations

from calc.equipotential.plan import ACT, BELOW, DECISION_WORDS, LOOK
from calc.messages import message
from calc.output import YES_OR_NO, Output

DECISIONS = Output(
    "decisions", message("What to do with each part"), "choice", choices=tuple(DECISION_WORDS), shape="by-name"
)
PLANE_NEEDED = Output(
    "plane_needed", message("Whether an equipotential plane is required"), "choice", choices=YES_OR_NO
)
_PLANE = message("where a plane is required")

POOL = (
    Output("bond", message("Parts to bond"), "whole-number"),
    Output("parts", message("Parts in the list"), "whole-number"),
    Output(
        "wire_feet",
        message("Length of bare wire to bring"),
        "number",
        "ft",
        when=message("where length and width of the pool were entered and a wire goes around it"),
    ),
    DECISIONS,
)
LIVESTOCK = (
    PLANE_NEEDED,
    Output("verdict", message("What the reading calls for"), "choice", choices=(ACT, BELOW, LOOK, "none")),
    Output(
        "milliampere",
        message("Current through the resistor"),
        "number",
        "mA",
        when=message("where the voltage was read across a resistor of about 500 ohm"),
    ),
    Output(
        "mean_cow_milliampere",
        message("Most current through an average cow"),
        "number",
        "mA",
        when=message("where a voltage was entered"),
    ),
    Output(
        "lowest_cow_milliampere",
        message("Most current through the cow of lowest resistance"),
        "number",
        "mA",
        when=message("where a voltage was entered"),
    ),
    DECISIONS,
)
WATERSIDE = (
    PLANE_NEEDED,
    Output("reach_inch", message("How far the plane must reach from the equipment"), "number", "in", when=_PLANE),
    Output("bond_size", message("Smallest conductor of the bond"), "size", when=_PLANE),
    DECISIONS,
)
