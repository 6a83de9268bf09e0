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


def test_the_military_goal_is_one_milliohm_and_is_what_a_joint_of_wire_may_have():
    """MIL-HDBK-419A, volume II, 1.13.4: all bonds 1 milliohm or less, others are made anew."""
    assert value("limit_of_military_bond") == 0.001
    assert value("joint_of_wire") == 1
    for name in ("limit_of_military_bond", "joint_of_wire"):
        assert {rule(f"measure/{name}", edition).mark for edition in EDITIONS} == {"confirmed"}


def test_practice_counts_5_percent_for_a_meter_and_10_appliances_where_nothing_is_known():
    assert (value("meter_error"), value("few_appliances")) == (5, 10)
    for name in ("meter_error", "few_appliances"):
        assert {rule(f"measure/{name}", edition).mark for edition in EDITIONS} == {"practice"}


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
