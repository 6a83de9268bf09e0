"""Resistance of a wire from its area, its metal and its temperature."""

from __future__ import annotations

import math

from calc.data_file import Data
from calc.rulebook import undated

# The annealed copper standard of 1913: 1/58 ohm for one metre of one square millimetre, at 20 °C.
COPPER_STANDARD_OHM_METRE = 1e-6 / 58
STANDARD_CELSIUS = 20
METRE_PER_FOOT = 0.3048
METRE_PER_MIL = 25.4e-6
HERTZ = 60
MIN_TERM = 1e-17


def gauge_area(size: str) -> float:
    """Return the area of a size label, cmil, as the definition of the American wire gauge has it, unrounded.

    36 AWG is 5 mil across, 4/0 AWG 460 mil, in 39 equal ratios. Raises: ValueError for a label that is no size.
    Source: ASTM B258.

    >>> round(gauge_area("14"), 2), gauge_area("250kcmil")
    (4106.72, 250000.0)
    """
    if size.endswith("kcmil"):
        return 1000.0 * int(size.removesuffix("kcmil"))
    number = 1 - int(size.removesuffix("/0")) if size.endswith("/0") else int(size)
    return (5 * 92 ** ((36 - number) / 39)) ** 2


def temperature_factor(metal: str, from_celsius: float, to_celsius: float) -> float:
    """Return how many times the resistance at one temperature is that at another.

    metal: "copper" or "aluminum". Raises: KeyError for another metal. Source: rule conductors/conductivity.

    >>> round(temperature_factor("copper", 20, 75), 5)
    1.21615
    """
    per_kelvin = _metal(metal)["per_kelvin"]
    ends = (1 + per_kelvin * (celsius - STANDARD_CELSIUS) for celsius in (from_celsius, to_celsius))
    before, after = ends
    return after / before


def dc_resistance(size: str, metal: str, celsius: float, *, stranded: bool = True) -> float:
    """Return the direct-current resistance of one wire, ohm per foot.

    size: a label such as "12", "4/0", "500kcmil"; metal: "copper" or "aluminum"; celsius: of the wire;
    stranded: strands wind and are longer than the wire. Raises: KeyError for another metal, ValueError for no size.
    Source: area by ASTM B258; rules conductors/conductivity and conductors/lay_of_strands.

    >>> round(1000 * dc_resistance("14", "copper", 20, stranded=False), 3)
    2.525
    """
    ohm_metre = COPPER_STANDARD_OHM_METRE * 100 / _metal(metal)["percent"]
    square_metre = math.pi / 4 * gauge_area(size) * METRE_PER_MIL**2
    lay = undated("conductors/lay_of_strands").value if stranded else 1
    return ohm_metre / square_metre * METRE_PER_FOOT * lay * temperature_factor(metal, STANDARD_CELSIUS, celsius)


def skin_effect(ohm_per_foot: float) -> float:
    """Return how many times the direct-current resistance a round wire has at 60 Hz, far from other wires.

    ohm_per_foot: its direct-current resistance. The exact series of the two Bessel functions; no steel near.

    >>> round(skin_effect(dc_resistance("1000kcmil", "copper", 75, stranded=False)), 4)
    1.0656
    """
    square = 2j * math.pi * HERTZ * 1e-7 * METRE_PER_FOOT / ohm_per_foot
    term, order_zero, order_one, power = 1 + 0j, 1 + 0j, 1 + 0j, 0
    while abs(term) > MIN_TERM:
        power += 1
        term *= square / power**2
        order_zero += term
        order_one += term / (power + 1)
    return (order_zero / order_one).real


def _metal(metal: str) -> Data:
    rows = undated("conductors/conductivity").rows
    return {row["metal"]: row for row in rows}[metal]
