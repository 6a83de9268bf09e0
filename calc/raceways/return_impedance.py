"""Impedance of a steel conduit or tubing that carries a fault back around its own conductors.

The field of the wires inside ends in the wall, so the current that comes back crowds to the inner face. The
model is a round tube of constant permeability, solved exactly. Only what is inside counts: when all that goes
out in the wires comes back in wires and raceway, the voltage along the inner face takes the place of the
raceway's own, and the wires keep the impedance of their group. Between them no further coupling is left over
(the field between the wires and the wall is taken as in the wires' listed reactance, which in steel covers it
unless a small wire lies in a large raceway).
A current that leaves the raceway for another path (water pipe, earth) is not in this model.
"""

from __future__ import annotations

import math
from functools import cache

from calc.rulebook import undated

DIMENSIONS_RULE = "raceways/tube_dimensions"
STEEL_RULE = "raceways/steel_as_return"
PIECE_RULE = "raceways/length_of_pipe"
METRE_PER_FOOT = 0.3048
METRE_PER_INCH = 0.0254
HERTZ = 60
MIN_TERM = 1e-17
MAX_TERMS = 1000


def return_impedance(kind: str, trade_size: str) -> tuple[complex, complex, complex]:
    """Return the impedance of a steel raceway as the way back, ohm per foot at 60 Hz: low, likely, high.

    kind: "electrical-metallic-tubing", "intermediate-metal-conduit" or "rigid-metal-conduit"; trade_size: "1/2"
    to "4". Every joint is tight; a loose one has no limit. Raises: KeyError for another kind or trade size.
    Source: rules raceways/tube_dimensions, raceways/steel_as_return, raceways/length_of_pipe.

    >>> [f"{100 * ohm:.3f}" for ohm in return_impedance("electrical-metallic-tubing", "1/2")]
    ['0.076+0.010j', '0.104+0.031j', '0.169+0.080j']
    """
    low, likely, high = (steel + joints for steel, joints in return_parts(kind, trade_size))
    return low, likely, high


def between(three: tuple[complex, complex, complex], place: float) -> complex:
    """Return what lies between low (place 0), likely (1) and high (2).

    >>> between((1, 2, 4), 0.5), between((1, 2, 4), 1.5)
    (1.5, 3.0)
    """
    low, likely, high = three
    return low + (likely - low) * place if place <= 1 else likely + (high - likely) * (place - 1)


def return_parts(kind: str, trade_size: str) -> tuple[tuple[complex, float], ...]:
    """Return `return_impedance` in its parts: steel and joints, each low, likely, high. Raises: KeyError."""
    rows = undated(DIMENSIONS_RULE).rows
    tube = {(row["raceway"], row["trade_size"]): row for row in rows}[kind, trade_size]
    piece = undated(PIECE_RULE).value
    return tuple(
        (
            tube_impedance(tube["inside"], tube["outside"], steel["microohm_metre"], steel["permeability"]),
            steel["joint_milliohm"] / 1000 / piece,
        )
        for steel in undated(STEEL_RULE).rows
    )


@cache
def tube_impedance(inside: float, outside: float, microohm_metre: float, permeability: float) -> complex:
    """Return the impedance of a tube for a current that came out inside it and comes back in its wall, ohm per foot.

    inside, outside: diameters, in; microohm_metre: resistivity; permeability: relative, constant; 60 Hz.
    It is voltage along the inner face for each ampere, from the Bessel equation of the wall as a Taylor series
    about the inner face: nothing large cancels, as it would with functions that start from the axis.
    Raises: ValueError when the wall is no thinner than the inner radius, where the series ends.

    >>> f"{100 * tube_impedance(0.622, 0.706, 0.17, 300):.4f}"
    '0.0936+0.0308j'
    """
    wall = outside / inside - 1
    if not 0 < wall < 1:
        raise ValueError(f"{inside} in inside, {outside} in outside")
    angular_permeability = 2j * math.pi * HERTZ * permeability * 4e-7 * math.pi
    square = angular_permeability / (microohm_metre * 1e-6) * (inside / 2 * METRE_PER_INCH) ** 2
    slope_of_value, slope_of_slope = (_slope_outside(square, wall, *start) for start in ((1, 0), (0, 1)))
    return angular_permeability / (2 * math.pi) * slope_of_slope / slope_of_value * METRE_PER_FOOT


def _slope_outside(square: complex, wall: float, value: complex, slope: complex) -> complex:
    """Return the slope at the outer face of the field that has `value` and `slope` at the inner one.

    With radius inner × (1 + s): (1 + s) E'' + E' = (1 + s) × square × E, coefficient by coefficient.
    """
    before, now, after = 0j, complex(value), complex(slope)
    total, power = after, 1.0
    for order in range(MAX_TERMS):
        following = (square * (now + before) - (order + 1) ** 2 * after) / ((order + 2) * (order + 1))
        before, now, after = now, after, following
        power *= wall
        term = (order + 2) * following * power
        total += term
        if abs(term) <= MIN_TERM * abs(total):
            return total
    raise ValueError(f"no end after {MAX_TERMS} terms")
