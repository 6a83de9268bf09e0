"""The figures of pool decks against texts and second routes read or run apart from the rules.

One wire and grid: an EC&M quiz and trade forum threads. Steel: Concrete Construction. Tests: Electric Power Research
Institute. Limits of the solution: the exact field of a round wire here; small equal pieces with the calculator's tests.
"""

import math

import pytest

from calc.editions import EDITIONS
from calc.rulebook import rule


def stated(name):
    """The rule in every edition: its figures are the same in each."""
    found = [rule(f"places/{name}", edition) for edition in EDITIONS]
    assert len({(str(each.value), str(each.rows)) for each in found}) == 1
    return found[0]


def limits():
    return {row["limit"]: row["figure"] for row in stated("deck_model_limits").rows}


def test_a_deck_begins_with_the_nearest_wire_a_12_in_grid_and_6_in_steel_in_the_middle_of_a_4_in_slab():
    assert stated("deck_metal").rows == (
        {"metal": "ring", "out": 18, "depth": 4, "spacing": 0},
        {"metal": "grid", "out": 0, "depth": 4, "spacing": 12},
        {"metal": "mesh", "out": 0, "depth": 2, "spacing": 6},
    )


def test_the_light_steel_wire_has_14_thousandths_of_a_square_inch():
    assert stated("deck_steel_wire").value == pytest.approx(1.4 / 100)


def test_full_size_tests_found_over_100_milliampere():
    assert stated("deck_tests").value == 100


def test_the_limits_are_those_that_second_routes_bear_out():
    assert limits() == {
        "depth-by-radius": 3,
        "spacing-by-diameter": 10,
        "openings": 8,
        "fine-spacing-inches": 12,
        "widest-spacing-inches": 18,
        "percent-of-rise": 1,
        "percent-of-rise-wider": 2,
    }


def test_at_3_radii_a_thin_wire_and_its_image_are_2_percent_off_the_exact_field_of_a_round_wire():
    """Exact, of two equal round wires: acosh(depth / radius); thin: ln(2 depth / radius)."""
    deep = limits()["depth-by-radius"]
    assert math.log(2 * deep) / math.acosh(deep) == pytest.approx(1.017, abs=0.002)
