"""Units of our own small file agree with pint's own definitions."""

import pint
import pytest

from calc.units import convert, registry

PINT_OWN = pint.UnitRegistry()


@pytest.mark.parametrize(
    ("ours", "theirs"),
    [
        ("in", "inch"),
        ("ft", "foot"),
        ("mil", "mil_length"),
        ("cm", "centimeter"),
        ("mm", "millimeter"),
        ("cmil", "circular_mil"),
        ("kcmil", "kcmil"),
        ("in2", "inch**2"),
        ("mm2", "millimeter**2"),
        ("min", "minute"),
        ("h", "hour"),
        ("V", "volt"),
        ("ohm", "ohm"),
        ("W", "watt"),
        ("VA", "volt_ampere"),
        ("kA", "kiloampere"),
        ("mohm", "milliohm"),
        ("kV", "kilovolt"),
    ],
)
def test_every_unit_equals_pints(ours, theirs):
    try:
        reference = PINT_OWN.Quantity(1, theirs)
    except pint.errors.UndefinedUnitError:
        reference = PINT_OWN.Quantity(1, {"kcmil": "1000*circular_mil", "mil_length": "0.001*inch"}[theirs])
    given = registry().Quantity(1, ours).to_base_units().magnitude
    assert given == pytest.approx(reference.to_base_units().magnitude, rel=1e-12)


def test_an_inch_is_25_4_mm():
    assert convert(1, "in", "mm") == pytest.approx(25.4, rel=1e-15)


def test_a_circle_of_one_mil_is_a_circular_mil():
    """pi/4 x (25.4 um)² = 506.7074790975 um²."""
    assert convert(1, "cmil", "mm2") == pytest.approx(506.7074790975e-6, rel=1e-12)
