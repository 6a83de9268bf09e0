"""The figures of live ground and of bodies against texts and second routes read or run apart from the rules."""

import pytest

from calc.editions import EDITIONS
from calc.rulebook import rule
from tests.independent import buried_metal as skin


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


DRY = {
    25: (1750, 3250, 6100), 50: (1375, 2500, 4600), 75: (1125, 2000, 3600), 100: (990, 1725, 3125),
    125: (900, 1550, 2675), 150: (850, 1400, 2350), 175: (825, 1325, 2175), 200: (800, 1275, 2050),
    225: (775, 1225, 1900), 400: (700, 950, 1275), 500: (625, 850, 1150), 700: (575, 775, 1050),
    1000: (575, 775, 1050),
}  # fmt: skip
WATER = DRY | {25: (1175, 2175, 4100), 50: (1100, 2000, 3675), 75: (1025, 1825, 3275), 100: (975, 1675, 2950)}
SALT = DRY | {
    25: (960, 1300, 1755), 50: (940, 1275, 1720), 75: (920, 1250, 1685), 100: (880, 1225, 1655),
    125: (850, 1200, 1620), 150: (830, 1180, 1590), 175: (810, 1155, 1560), 200: (790, 1135, 1530),
    225: (770, 1115, 1505),
}  # fmt: skip


def test_bodies_have_the_impedances_remembered_of_the_newer_tables_and_say_so():
    """From memory. The 1994 table, which was seen, brackets them: tests/calc/touch/shock/test_shock_limits.py."""
    for condition, expected in (("dry", DRY), ("water-wet", WATER), ("salt-water-wet", SALT)):
        found = {
            row["volt"]: (row["five"], row["fifty"], row["ninety_five"])
            for row in rows("body_impedance")
            if row["condition"] == condition
        }
        assert found == expected and list(found) == sorted(found)
    assert {row["condition"] for row in rows("body_impedance")} == {"dry", "water-wet", "salt-water-wet"}
    assert marks("body_impedance") == {"memory"}


def test_wet_skin_has_a_tenth_to_a_third_less_at_25_and_50_volt_and_salt_about_half():
    """IEC 479-1:1994, seen, of measurements to 50 V: 10 to 25 percent less with water, down to half with salt."""
    for volt in (25, 50):
        assert 0.65 < WATER[volt][1] / DRY[volt][1] < 0.9
        assert 0.35 < SALT[volt][1] / DRY[volt][1] < 0.55


def test_paths_have_the_factors_quoted_and_wet_feet_the_half_that_was_measured():
    found = {row["path"]: (row["dry"], row["wet"]) for row in rows("path_factor")}
    assert found == {
        "hand-hand": (1.0, 1.0),
        "hand-feet": (0.75, 0.5),
        "hands-feet": (0.5, 0.333),
        "foot-foot": (1.0, 1.0),
    }
    # 1130 ohm from hand to feet, 2330 from hand to hand, both salt-wet.
    assert found["hand-feet"][1] == pytest.approx(1130 / 2330, abs=0.02)
    # EN 50522, quoted: 0.75 with one hand and 0.5 with both. A second wet hand beside the first saves as much.
    assert found["hands-feet"][1] == pytest.approx(found["hand-feet"][1] * 0.5 / 0.75, abs=0.0005)
    assert marks("path_factor") == {"computed"}


def test_zones_have_the_points_seen_and_those_remembered():
    found = {}
    for row in rows("time_zones"):
        found.setdefault(row["curve"], []).append((row["second"], row["milliampere"]))
    assert found == {
        "b": [(0.01, 200), (5, 5), (10, 5)],
        "c1": [(0.01, 500), (0.1, 500), (1, 50), (3, 40), (10, 40)],
        "c2": [(0.05, 900), (0.1, 750), (0.2, 600), (0.5, 200), (1, 80), (2, 60), (5, 51), (10, 50)],
    }
    assert marks("time_zones") == {"memory"}


def test_people_feel_half_a_milliampere():
    assert value("perception") == 0.5


def test_the_fibrillation_limit_gives_the_worked_example_of_838_volt():
    found = {row["kilogram"]: row["milliampere"] for row in rows("fibrillation_limit")}
    assert found == {50: 116, 70: 157}
    assert {(row["least_second"], row["most_second"]) for row in rows("fibrillation_limit")} == {(0.03, 3)}
    # 70 kg, 0.5 s, 2500 ohm·m of gravel that counts 0.74: 838.2 V.
    assert found[70] / 1000 / 0.5**0.5 * (1000 + 1.5 * 0.74 * 2500) == pytest.approx(838.2, abs=0.2)


def test_breathing_may_stop_from_20_to_40_milliampere():
    assert rows("breathing") == ({"low": 20, "high": 40},)


def test_the_limits_of_wet_contact_are_those_of_the_notes_read_in_2017():
    expected = {"sine": 15, "other_peak": 21.2, "steady_direct": 30, "chopped_direct_peak": 12.4}
    assert rows("wet_contact_limit") == (expected,)
    assert rule("touch/wet_contact_limit", "2017").mark == "confirmed"
    assert expected["sine"] * 2**0.5 == pytest.approx(expected["other_peak"], abs=0.05)
