"""The warning that goes with every aluminum conductor of a bond or an equipment ground."""

from __future__ import annotations

from calc.conductors.ampacity import TABLE_COLUMN
from calc.messages import message
from calc.trace import Trace

OF_EQUIPMENT_CONDUCTORS = "grounding/aluminum_near_earth"
OF_BONDS = "grounding/electrode_conductor_aluminum_height"


def warn_of_aluminum_near_earth(metal: str, height_rule: str, trace: Trace) -> None:
    """Warn where `metal` is aluminum or copper-clad aluminum; copper needs no warning.

    height_rule: the rule that states the height above earth, inches: `OF_EQUIPMENT_CONDUCTORS` or `OF_BONDS`.
    """
    if TABLE_COLUMN[metal] == "copper":
        return
    height = trace.cite(height_rule)
    trace.warn(
        message(
            "Aluminum and copper-clad aluminum: no bare wire in contact with the earth or masonry or where it "
            "corrodes, and no termination outdoors within {height} in. of the earth ({section}). The edition names "
            "exceptions.",
            height=height.value,
            section=height.section,
        )
    )
