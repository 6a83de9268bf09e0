"""The cross-section of a bus or strap that stands in for a wire."""

from __future__ import annotations

from math import ceil, pi

from calc.conductors.area import area
from calc.messages import message
from calc.trace import Trace

MIL_IN_AN_INCH, MILLIMETRES_IN_AN_INCH = 1000, 25.4  # what the units are; the registry of units takes a second to start

def bus_of_equal_area(size: str, rule_key: str, trace: Trace) -> tuple[float, int]:
    """Return the least area of a bus in place of a wire of `size`, rounded up: in² to three places, whole mm².

    rule_key: the rule that judges a bus by its area.
    """
    cmil = area(size, trace.edition)
    square_inch = cmil * pi / 4 / MIL_IN_AN_INCH**2
    square_millimetre = square_inch * MILLIMETRES_IN_AN_INCH**2
    trace.step(
        message(
            "A bus or strap with at least the cross-section of that wire: {square_inch:.4f} in², "
            "{square_millimetre:.1f} mm².",
            square_inch=square_inch,
            square_millimetre=square_millimetre,
        ),
        cites=(rule_key,),
    )
    return ceil(square_inch * 1000) / 1000, ceil(square_millimetre)
