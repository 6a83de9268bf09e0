"""The figures of bond tests and clamp readings against the texts seen: see each rule's sources."""

from calc.editions import EDITIONS
from calc.rulebook import rule


def value(name):
    """The figure of a rule, the same in every edition: meters know none."""
    found = {rule(f"measure/{name}", edition).value for edition in EDITIONS}
    assert len(found) == 1
    return found.pop()


def test_published_limits_of_bonds_are_those_of_their_texts_in_ohm():
    """Forum summary of NETA; a state's list under NFPA 99; a magazine on NFPA 99 2005; FAA AC 43.13-1B 11-188."""
    expected = {"ground_path": 0.5, "patient_receptacle": 0.1, "appliance_cord": 0.5, "aircraft_bond": 2.5e-3}
    assert {name: value(f"limit_of_{name}") for name in expected} == expected


def test_the_military_goal_is_one_milliohm_and_says_it_is_unverified():
    assert value("limit_of_military_bond") == 0.001
    assert {rule("measure/limit_of_military_bond", edition).mark for edition in EDITIONS} == {"memory"}


def test_limits_seen_only_in_forums_say_they_are_unverified():
    for name in ("limit_of_ground_path", "limit_of_patient_receptacle"):
        assert {rule(f"measure/{name}", edition).mark for edition in EDITIONS} == {"memory"}


def test_practice_begins_high_current_at_10_ampere_and_lets_reversed_readings_be_10_percent_off():
    assert value("high_current") == 10
    assert value("reversal_difference") == 10
    for name in ("high_current", "reversal_difference", "strand_example"):
        assert {rule(f"measure/{name}", edition).mark for edition in EDITIONS} == {"practice"}


def test_the_example_of_damage_is_one_strand_of_seven_over_an_inch():
    """After three the next number of strands is seven: a naval manual's list 3, 7, 19, 37, 61."""
    for edition in EDITIONS:
        assert rule("measure/strand_example", edition).rows == ({"strands": 7, "left": 1, "inches": 1},)


def test_a_stationary_appliance_may_leak_3_5_milliampere():
    """A mailing list on IEC 335-1 and a maker of power supplies on IEC 60950, both quoted."""
    assert value("filter_leakage") == 3.5
