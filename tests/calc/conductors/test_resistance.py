"""Resistance of wire: the published wire table, the definition of the gauge, the 2017 table, the skin effect."""

import itertools
import math

import pytest

from calc.conductors.resistance import dc_resistance, gauge_area, skin_effect, temperature_factor
from tests.independent.wire_gauge import listed_areas

# NBS Handbook 100, ohm per 1000 ft at 20 °C, solid copper; the same on a university's wire table page.
AT_20 = {
    "18": 6.385, "16": 4.016, "14": 2.525, "12": 1.588, "10": 0.9989, "8": 0.6282, "6": 0.3951, "4": 0.2485,
    "3": 0.1970, "2": 0.1563, "1": 0.1239, "1/0": 0.0983, "2/0": 0.0779, "3/0": 0.0618, "4/0": 0.0490,
}  # fmt: skip
# NFPA 70-2017, Chapter 9, Table 8, ohm per 1000 ft at 75 °C.
SOLID_COPPER_AT_75 = {"14": 3.07, "12": 1.93, "10": 1.21, "8": 0.764}
STRANDED_COPPER_AT_75 = {
    "14": 3.14, "12": 1.98, "10": 1.24, "8": 0.778, "6": 0.491, "4": 0.308, "3": 0.245, "2": 0.194, "1": 0.154,
    "1/0": 0.122, "2/0": 0.0967, "3/0": 0.0766, "4/0": 0.0608, "250kcmil": 0.0515, "500kcmil": 0.0258,
    "1000kcmil": 0.0129, "2000kcmil": 0.00643,
}  # fmt: skip
STRANDED_ALUMINUM_AT_75 = {
    "14": 5.17, "12": 3.25, "10": 2.04, "8": 1.28, "6": 0.808, "4": 0.508, "1/0": 0.201, "4/0": 0.100,
    "250kcmil": 0.0847, "500kcmil": 0.0424, "1000kcmil": 0.0212,
}  # fmt: skip


@pytest.mark.parametrize("size", AT_20)
def test_solid_copper_at_20_degrees_is_that_of_the_wire_table(size):
    assert 1000 * dc_resistance(size, "copper", 20, stranded=False) == pytest.approx(AT_20[size], rel=6e-4)


@pytest.mark.parametrize(
    ("rows", "metal", "stranded"),
    [
        (SOLID_COPPER_AT_75, "copper", False),
        (STRANDED_COPPER_AT_75, "copper", True),
        (STRANDED_ALUMINUM_AT_75, "aluminum", True),
    ],
)
def test_resistance_at_75_degrees_is_that_of_the_2017_table(rows, metal, stranded):
    for size, printed in rows.items():
        computed = 1000 * dc_resistance(size, metal, 75, stranded=stranded)
        half_of_the_last_digit = 0.5 * 10 ** (math.floor(math.log10(printed)) - 2)
        assert abs(computed - printed) <= 0.0035 * printed + half_of_the_last_digit, size


@pytest.mark.parametrize(("size", "cmil"), [("14", 4106.72), ("4/0", 211600.0), ("1/0", 105534.5), ("36", 25.0)])
def test_areas_are_those_of_the_definition(size, cmil):
    assert gauge_area(size) == pytest.approx(cmil, rel=1e-5)


def test_areas_are_the_printed_ones_unrounded():
    for size, printed in listed_areas().items():
        assert gauge_area(size) == pytest.approx(printed, rel=3.1e-3)


def test_a_reading_at_20_degrees_is_22_percent_below_75_degrees():
    assert temperature_factor("copper", 20, 75) == pytest.approx(1.21615)
    assert temperature_factor("copper", 75, 20) == pytest.approx(1 / 1.21615)
    assert temperature_factor("aluminum", 20, 75) == pytest.approx(1.22165)


@pytest.mark.parametrize(
    ("size", "ratio", "source"),
    [
        ("4/0", 1.00309, "finite difference and Bessel functions"),
        ("500kcmil", 1.01706, "finite difference; Bessel functions agree to 4e-9"),
        ("1000kcmil", 1.06556, "finite difference; Bessel functions agree to 4e-9"),
    ],
)
def test_skin_effect_is_that_of_the_independent_runs(size, ratio, source):
    assert skin_effect(dc_resistance(size, "copper", 75, stranded=False)) == pytest.approx(ratio, rel=3e-5), source


def test_skin_effect_vanishes_in_thin_wire_and_follows_the_published_formula():
    """IEC 60287: y = x⁴ / (192 + 0.8 x⁴), x² = 8 pi f 1e-7 / R, good to x = 2.8."""
    assert skin_effect(dc_resistance("14", "copper", 75)) == pytest.approx(1, abs=2e-6)
    for size in ("1/0", "4/0", "500kcmil", "1000kcmil", "2000kcmil"):
        ohm = dc_resistance(size, "copper", 75)
        square = 8 * math.pi * 60 * 1e-7 / (ohm / 0.3048)
        assert skin_effect(ohm) == pytest.approx(1 + square**2 / (192 + 0.8 * square**2), rel=1e-3)


def test_a_larger_or_colder_wire_never_resists_more():
    for smaller, larger in itertools.pairwise(listed_areas()):
        for metal in ("copper", "aluminum"):
            assert dc_resistance(larger, metal, 75) < dc_resistance(smaller, metal, 75)
            assert dc_resistance(larger, metal, 25) < dc_resistance(larger, metal, 75)


def test_another_metal_is_refused():
    with pytest.raises(KeyError):
        dc_resistance("4", "copper-clad-aluminum", 75)
