"""The figures of live ground and of bodies against texts and second routes read or run apart from the rules."""

import pytest

from calc.editions import EDITIONS
from calc.rulebook import rule
from tests.oracles import buried_metal as skin


def rows(name):
    """The rows of a rule, the same in every edition: bodies and physics have none."""
    found = [rule(f"touch/{name}", edition).rows for edition in EDITIONS]
    assert found[1:] == found[:-1]
    return found[0]


def value(name):
    found = {rule(f"touch/{name}", edition).value for edition in EDITIONS}
    assert len(found) == 1
    return found.pop()


def marks(name):
    return {rule(f"touch/{name}", edition).mark for edition in EDITIONS}


def test_metal_may_be_0_6_of_its_depth_thick_where_one_image_is_still_1_percent_right():
    limits = {row["limit"]: row["value"] for row in rows("buried_limits")}
    assert limits == {"radius-by-depth": 0.6, "length-by-diameter": 4}
    one_image = (1 / 0.6 + 1 / 2) / 12.566370614
    assert one_image == pytest.approx(skin.ball(0.6, 1)[0], rel=0.01)


def test_bends_have_the_radii_of_a_bending_chart_that_gives_them_from_millimeters():
    chart = {
        "1/2": 4.016, "3/4": 4.489, "1": 5.748, "1-1/4": 7.244, "1-1/2": 8.268, "2": 9.488, "2-1/2": 10.512,
        "3": 12.992, "4": 15.984,
    }  # fmt: skip
    found = {row["trade_size"]: row["radius"] for row in rows("elbow_bend")}
    assert found.keys() == chart.keys()
    for size, radius in found.items():
        # Quarter inches, as makers give them; the chart turned them into whole millimeters and back.
        assert radius == round(4 * chart[size]) / 4


def test_a_foot_has_3_ohms_for_each_ohm_metre_and_says_it_is_unverified():
    assert value("foot_resistance") == 3
    assert marks("foot_resistance") == {"memory"}
    # A round plate of 8 cm on the soil: 1 / (4 × 0.08).
    assert value("foot_resistance") == pytest.approx(1 / (4 * 0.08), rel=0.05)


def test_a_shoe_has_nothing_or_the_2000_ohm_of_one_utility():
    assert rows("shoe_resistance") == ({"low": 0, "high": 2000},)


def test_a_body_has_500_to_3000_ohm_and_is_counted_with_1000():
    assert rows("body_resistance") == ({"low": 500, "usual": 1000, "high": 3000},)


def test_nearly_all_women_let_go_at_6_and_men_at_9_milliampere():
    expected = ({"who": "women", "nearly_all": 6, "half": 10.5}, {"who": "men", "nearly_all": 9, "half": 15.5})
    assert rows("let_go") == expected


def test_a_step_is_a_metre():
    assert value("step_length") == 1
    assert marks("step_length") == {"practice"}
