"""The warning that goes with every aluminum conductor of a bond or an equipment ground."""

from __future__ import annotations

from calc.conductors.ampacity import ALUMINUM_COLUMN
from calc.words import say
from calc.working import Working

OF_EQUIPMENT_CONDUCTORS = "grounding/aluminum_near_earth"
OF_BONDS = "grounding/electrode_conductor_aluminum_height"


def warn_of_aluminum_near_earth(metal: str, height_rule: str, working: Working) -> None:
    """Warn where `metal` is aluminum or copper-clad aluminum; copper needs no warning.

    height_rule: the rule that states the height above earth, inches: `OF_EQUIPMENT_CONDUCTORS` or `OF_BONDS`.
    """
    if ALUMINUM_COLUMN[metal] == "copper":
        return
    height = working.cite(height_rule)
    working.warn(
        say(
            "Aluminum and copper-clad aluminum: no bare wire against earth or masonry or where it corrodes, and "
            "outdoors no end within {height} in of earth ({section}). The edition names exceptions.",
            height=height.value,
            section=height.section,
        )
    )
