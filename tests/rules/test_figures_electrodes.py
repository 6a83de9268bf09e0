"""The figures of electrodes against texts and second routes read or run apart from the rules.

Soil: US Bureau of Standards Report 108 as a booklet quotes it. Rods: IEEE 142 as an engineers' list quotes it. The
limits of the formulas: method of moments and Love's equation (tests/independent/electrode_pieces.py).
"""

import math

import pytest

from calc.editions import EDITIONS
from calc.electrodes import shape
from calc.rulebook import rule
from tests.independent.electrode_pieces import buried_disc, rod_in_pieces


def rows(name):
    """The rows of a rule, the same in every edition: physics has none."""
    found = [rule(f"electrodes/{name}", edition).rows for edition in EDITIONS]
    assert found[1:] == found[:-1]
    return found[0]


def value(name):
    found = {rule(f"electrodes/{name}", edition).value for edition in EDITIONS}
    assert len(found) == 1
    return found.pop()


def test_soils_are_those_of_the_public_report_in_ohm_centimeters():
    expected = {
        "fill": (2370, 590, 7000),
        "clay": (4060, 340, 16300),
        "clay-with-gravel": (15800, 1020, 135000),
        "gravel": (94000, 59000, 458000),
    }
    assert {row["soil"]: (row["likely"], row["low"], row["high"]) for row in rows("soil_resistivity")} == expected


def test_several_rods_one_length_apart_have_the_published_factors():
    expected = [(2, 1.16), (3, 1.29), (4, 1.36), (8, 1.68), (12, 1.80), (16, 1.92), (20, 2.00), (24, 2.16)]
    assert [(row["rods"], row["factor"]) for row in rows("rods_together")] == expected


def test_concrete_spans_40_to_1000_with_our_own_middle_and_says_it_is_unverified():
    assert rows("concrete_resistivity") == ({"low": 40, "likely": 100, "high": 1000},)
    assert {rule("electrodes/concrete_resistivity", edition).mark for edition in EDITIONS} == {"memory"}


def test_season_moves_a_site_2_to_10_times_and_says_it_is_unverified():
    assert rows("season") == ({"least": 2, "most": 10},)
    assert {rule("electrodes/season", edition).mark for edition in EDITIONS} == {"memory"}


def test_at_their_limits_the_formulas_are_6_percent_high_for_a_rod_and_1_for_a_plate():
    limits = {row["limit"]: row["least"] for row in rows("formula_limits")}
    assert limits == {
        "length-by-diameter": 10,
        "spacing-by-diameter": 10,
        "depth-by-radius": 1,
        "strip-length-by-width": 2,
    }
    assert shape.rod(10, 0.5) / rod_in_pieces(10, 0.5) == pytest.approx(1.058, abs=0.003)
    side = math.sqrt(math.pi)
    assert shape.plate(side, side, 1) / buried_disc(1, 1) == pytest.approx(1.007, abs=0.002)


def test_a_rod_is_usually_no_longer_than_100_ft_and_no_text_fixes_it():
    assert value("longest_rod") == 100
    assert {rule("electrodes/longest_rod", edition).mark for edition in EDITIONS} == {"practice"}


def test_pins_a_twentieth_of_their_spacing_deep_cost_less_than_1_percent():
    deep = value("pin_depth")
    assert deep == 0.05
    assert 2 / (1 + 2 / math.hypot(1, 2 * deep) - 1 / math.hypot(1, deep)) == pytest.approx(1.004, abs=0.001)


def test_the_potential_probe_stands_at_the_root_of_p_squared_and_p_is_one():
    assert value("potential_probe") == round((math.sqrt(5) - 1) / 2, 3)


def test_a_plateau_takes_in_probes_at_50_to_72_percent_and_holds_within_5_percent():
    assert value("plateau_window") == 0.12
    assert 0.618 - 0.12 < 0.50 and 0.618 + 0.12 > 0.72
    assert value("plateau_spread") == 5


def test_readings_reach_6_percent_to_each_side_which_probes_at_52_and_72_percent_do():
    assert value("plateau_reach") == 0.06
    assert 0.618 - 0.06 > 0.52 and 0.618 + 0.06 < 0.72
    assert {rule("electrodes/plateau_reach", edition).mark for edition in EDITIONS} == {"practice"}


def test_no_electrode_has_more_ohms_for_its_dimension_than_the_slope_counts():
    """Dwight: a rod has ln(4 L / a) - 1, 6.1 at 8 ft of 5/8 in; a wire in a trench and its image 17.4 at 1,000 ft."""
    most = value("plateau_slope")
    assert most == 20
    assert math.log(4 * 2.4384 / 0.0079375) - 1 == pytest.approx(6.1, abs=0.05)
    thin, shallow, long = 0.0016, 0.45, 305.0
    trench = math.log(2 * long / thin) - 1 + math.log(long / shallow) - 1
    assert 0.8 * most < trench < most


def test_the_current_probe_stands_5_and_better_10_times_the_electrode_away():
    assert rows("probe_distance") == ({"least": 5, "enough": 10},)
