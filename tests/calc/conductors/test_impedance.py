"""Impedance in a raceway: the listed figures, against geometry and skin effect, and at other temperatures."""

import cmath
import itertools
import math

import pytest

from calc.conductors.impedance import impedance
from calc.conductors.resistance import dc_resistance, skin_effect
from tests.rules.test_figures_impedance import SIZES

ALL = SIZES.split()
# Radius that counts for reactance over the outer one: 19, 37 and 61 strands, from any text on line inductance.
SELF_RADIUS = {"4/0": 0.758, "250kcmil": 0.768, "500kcmil": 0.768, "1000kcmil": 0.772}


@pytest.mark.parametrize(
    ("size", "metal", "raceway", "ohm"),
    [
        ("14", "copper", "nonmetallic", 3.1 + 0.058j),
        ("12", "copper", "steel", 2.0 + 0.068j),
        ("2/0", "aluminum", "nonmetallic", 0.16 + 0.043j),
        ("500kcmil", "copper", "steel", 0.029 + 0.048j),
        ("1000kcmil", "aluminum", "aluminum", 0.027 + 0.037j),
    ],
)
def test_at_75_degrees_it_is_the_listed_figure(size, metal, raceway, ohm):
    """Chapter 9, Table 9, read in the 2017 edition."""
    assert cmath.isclose(1000 * impedance(size, metal, raceway, 75), ohm, rel_tol=1e-12)


def test_resistance_outside_steel_is_that_of_geometry_and_skin_effect_within_stated_tolerance():
    """4 percent to 500 kcmil, mostly the rounding of the print; 10 above, where neighbours crowd the current."""
    for metal, size in itertools.product(("copper", "aluminum"), ALL):
        if (metal, size) != ("aluminum", "14"):
            ohm = dc_resistance(size, metal, 75)
            tolerance = 0.1 if ALL.index(size) > ALL.index("500kcmil") else 0.04
            listed = impedance(size, metal, "nonmetallic", 75).real
            assert listed == pytest.approx(ohm * skin_effect(ohm), rel=tolerance), (metal, size)


def test_a_metal_raceway_never_lowers_resistance_and_adds_at_most_forty_percent():
    for metal, size in itertools.product(("copper", "aluminum"), ALL[1:]):
        plain = impedance(size, metal, "nonmetallic", 75).real
        for raceway in ("aluminum", "steel"):
            assert plain <= impedance(size, metal, raceway, 75).real <= 1.4 * plain


def test_steel_raises_reactance_by_a_quarter():
    for size in ALL:
        ratio = impedance(size, "copper", "steel", 75).imag / impedance(size, "copper", "nonmetallic", 75).imag
        assert ratio == pytest.approx(1.25, abs=0.03)


@pytest.mark.parametrize("size", SELF_RADIUS)
def test_reactance_lies_between_bare_wires_that_touch_and_wires_three_diameters_apart(size):
    """X = 2 pi f × 2e-7 × ln(distance / self radius) per metre: the shape of the figures, not a second source."""
    per_foot = 2 * math.pi * 60 * 2e-7 * 0.3048
    touching = per_foot * math.log(2 / SELF_RADIUS[size])
    apart = per_foot * math.log(6 / SELF_RADIUS[size])
    assert touching < impedance(size, "copper", "nonmetallic", 75).imag < apart


def test_another_temperature_changes_resistance_as_the_metal_does_and_leaves_reactance():
    cold, hot = impedance("12", "copper", "nonmetallic", 25), impedance("12", "copper", "nonmetallic", 75)
    assert hot.real / cold.real == pytest.approx((1 + 0.00393 * 55) / (1 + 0.00393 * 5), rel=2e-5)
    assert hot.imag == cold.imag


def test_in_a_large_wire_the_skin_effect_takes_back_some_of_the_cold():
    ratio = impedance("1000kcmil", "copper", "steel", 75).real / impedance("1000kcmil", "copper", "steel", 25).real
    assert 1.15 < ratio < (1 + 0.00393 * 55) / (1 + 0.00393 * 5)


@pytest.mark.parametrize(
    ("size", "metal", "raceway"),
    [
        ("18", "copper", "steel"),
        ("14", "aluminum", "steel"),
        ("700kcmil", "copper", "steel"),
        ("2000kcmil", "copper", "steel"),
        ("4", "copper-clad-aluminum", "steel"),
        ("4", "copper", "brass"),
    ],
)
def test_what_is_not_listed_is_refused(size, metal, raceway):
    with pytest.raises(KeyError):
        impedance(size, metal, raceway, 75)
