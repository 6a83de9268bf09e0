"""Impedance of one conductor of a group in a raceway, at 60 Hz."""

from __future__ import annotations

from calc.conductors.resistance import dc_resistance, skin_effect
from calc.rulebook import undated

RESISTANCE_RULE = "conductors/resistance_in_raceway"
REACTANCE_RULE = "conductors/reactance_in_raceway"
LISTED_CELSIUS = 75
FEET = 1000  # that the listed figures are for


def impedance(size: str, metal: str, raceway: str, celsius: float = LISTED_CELSIUS) -> complex:
    """Return the impedance of one conductor of a closely spaced group, ohm per foot at 60 Hz.

    Out and back are two conductors: add both. size: a listed label, "14" to "1000kcmil"; metal: "copper" or
    "aluminum"; raceway around the group: "nonmetallic", "aluminum" or "steel"; celsius: of the wire. Raises:
    KeyError for a size, metal or raceway that is not listed. Source: rules conductors/resistance_in_raceway and
    conductors/reactance_in_raceway, at 75 °C; another temperature as the metal's resistance and skin effect change.

    >>> 1000 * impedance("12", "copper", "steel")
    (2+0.068j)
    """
    resistances = undated(RESISTANCE_RULE).rows
    reactances = undated(REACTANCE_RULE).rows
    resistance = {(row["metal"], row["size"]): row for row in resistances}[metal, size][raceway]
    reactance = {row["size"]: row for row in reactances}[size][raceway]
    return complex(resistance * _warmer(size, metal, celsius), reactance) / FEET


def _warmer(size: str, metal: str, celsius: float) -> float:
    if celsius == LISTED_CELSIUS:
        return 1.0
    now, listed = (dc_resistance(size, metal, each) for each in (celsius, LISTED_CELSIUS))
    return now * skin_effect(now) / (listed * skin_effect(listed))
