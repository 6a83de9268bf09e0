"""Conductors heated so fast that no heat gets out: how much current for how long, by three published formulas.

Each takes area and energy, the square of the current times the time (A²·s). They differ a little,
because their constants do; which one is used is always said.
"""

from __future__ import annotations

from math import exp, log, log10, pi, sqrt

from calc.data_file import Data
from calc.fault.device.device_limits import HERTZ, rows
from calc.units import convert

HEATING = "fault/conductor_heating"
DAMAGE_CURVES = {"copper": "fault/damage_curve_copper", "aluminum": "fault/damage_curve_aluminum"}
FUSING = "fault/fusing_formula"
ROOM = 20  # °C, the temperature at which the resistivity is stated


def offset_factor(second: float, x_over_r: float) -> float:
    """Return how much more energy a fault has when its first cycles are fully offset, as a factor on I²t.

    second: how long the fault lasts. x_over_r: reactance over resistance of the whole loop, 0 or more; the offset dies
    away with the time constant X/R over the angular frequency. Source: the square of that offset, integrated.

    >>> round(offset_factor(0.1, 10), 2), round(offset_factor(0.1, 20), 2), offset_factor(0.1, 0)
    (1.27, 1.52, 1.0)
    """
    if not x_over_r:
        return 1.0
    constant = x_over_r / (2 * pi * HERTZ)
    return 1 + constant / second * (1 - exp(-2 * second / constant))


def factor_k(metal: str, start_celsius: float, end_celsius: float) -> float:
    """Return the factor k of IEC 60364-5-54, A·√s/mm², of "copper", "aluminum" or "steel" between two temperatures.

    Raises: KeyError for another metal. Source: rule fault/conductor_heating.

    >>> round(factor_k("copper", 70, 160)), round(factor_k("steel", 30, 250))
    (115, 64)
    """
    row = _of_metal(metal)
    heat = row["heat"] * (row["inferred_zero"] + ROOM) / row["resistivity"]
    return sqrt(heat * log((row["inferred_zero"] + end_celsius) / (row["inferred_zero"] + start_celsius)))


def area_by_factor_k(energy: float, metal: str, start_celsius: float, end_celsius: float) -> float:
    """Return the smallest area, cmil, that takes an energy, A²·s, by the factor k."""
    return convert(sqrt(energy) / factor_k(metal, start_celsius, end_celsius), "mm2", "cmil")


def energy_by_damage_curve(area_cmil: float, metal: str, start_celsius: float, end_celsius: float) -> float:
    """Return the energy, A²·s, that heats a conductor from one temperature to another, by ICEA P-32-382.

    metal: "copper" or "aluminum"; KeyError for another. Source: rules fault/damage_curve_copper and _aluminum.

    >>> round(energy_by_damage_curve(10380, "copper", 75, 150), -2)
    302000.0
    """
    row = rows(DAMAGE_CURVES[metal])[0]
    ratio = (end_celsius + row["inferred_zero"]) / (start_celsius + row["inferred_zero"])
    return area_cmil**2 * row["constant"] * log10(ratio)


def area_by_damage_curve(energy: float, metal: str, start_celsius: float, end_celsius: float) -> float:
    """Return the smallest area, cmil, that takes an energy, A²·s, by ICEA P-32-382.

    >>> round(area_by_damage_curve(1 * 5, "copper", 75, 150), 2)
    42.24
    """
    return sqrt(energy / energy_by_damage_curve(1, metal, start_celsius, end_celsius))


def end_by_damage_curve(energy: float, area_cmil: float, metal: str, start_celsius: float) -> float:
    """Return the temperature, °C, that an energy, A²·s, heats a conductor to, by ICEA P-32-382."""
    row = rows(DAMAGE_CURVES[metal])[0]
    grown = exp(energy / area_cmil**2 / row["constant"] * log(10))
    return (start_celsius + row["inferred_zero"]) * grown - row["inferred_zero"]


def end_by_factor_k(energy: float, area_cmil: float, metal: str, start_celsius: float) -> float:
    """Return the temperature, °C, that an energy, A²·s, heats a conductor to, by the factor k."""
    row = _of_metal(metal)
    heat = row["heat"] * (row["inferred_zero"] + ROOM) / row["resistivity"]
    square = convert(area_cmil, "cmil", "mm2") ** 2
    return (start_celsius + row["inferred_zero"]) * exp(energy / square / heat) - row["inferred_zero"]


def fusing_energy(area_cmil: float, start_celsius: float) -> float:
    """Return the energy, A²·s, that melts a copper wire, by Onderdonk.

    The starting temperature is added to the inferred zero; a worked example in print subtracts it, which
    promises too much. Source: rule fault/fusing_formula.

    >>> round((fusing_energy(2581, 25) / 5) ** 0.5, 1)
    168.9
    """
    row = rows(FUSING)[0]
    ratio = 1 + (row["melting"] - start_celsius) / (row["inferred_zero"] + start_celsius)
    return area_cmil**2 * log10(ratio) / row["divisor"]


def _of_metal(metal: str) -> Data:
    for row in rows(HEATING):
        if row["metal"] == metal:
            return row
    raise KeyError(metal)
