"""A way back that runs apart from its hot conductor: the field between the two adds reactance to each of them."""

from __future__ import annotations

import math

from calc.conductors.area import undated_area
from calc.conductors.impedance import impedance

HERTZ = 60
METRE_PER_FOOT = 0.3048
MIL_PER_FOOT = 12_000
INSIDE = math.exp(-1 / 4)  # of the radius: where the current of a round wire seems to flow, its own field counted


def impedance_apart(size: str, metal: str, celsius: float, spacing_feet: float) -> complex:
    """Return the impedance of one wire of a loop whose two wires are parallel and apart, ohm per foot at 60 Hz.

    Out and back are two wires: add both. spacing_feet: between their centers. A stranded wire is taken as solid,
    which gives a little more; never less than the listed reactance of a close group. Raises: KeyError for a size or
    metal that is not listed. Source: self inductance of parallel round wires; resistance as calc.conductors.impedance.

    >>> close, apart = (impedance_apart("6", "copper", 75, feet).imag for feet in (0.1, 10))
    >>> round(1000 * close, 4), round(1000 * apart, 4)
    (0.0677, 0.1735)
    """
    together = impedance(size, metal, "nonmetallic", celsius)
    radius = math.sqrt(undated_area(size)) / 2 / MIL_PER_FOOT
    henry_per_metre = 2e-7 * math.log(spacing_feet / (INSIDE * radius))
    return complex(together.real, max(together.imag, 2 * math.pi * HERTZ * henry_per_metre * METRE_PER_FOOT))
