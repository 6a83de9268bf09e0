"""A plane under livestock: where it is needed, its bond, and a reading at an animal."""

import pytest

from calc.editions import EDITIONS
from calc.equipotential.livestock_equipotential_plane import livestock_equipotential_plane
from tests.cases.read import cases, named

FLOOR = {"area": "indoor-concrete"}


def answered(edition="2017", **inputs):
    result = livestock_equipotential_plane(edition=edition, **inputs)
    assert result.outcome == "answer"
    return result.answer.values


@pytest.mark.parametrize("pair", cases("equipotential/livestock_equipotential_plane"), ids=named)
def test_a_worked_case_has_every_row_of_its_text_and_no_other(pair):
    edition, case = pair
    found = answered(edition, **case["inputs"])
    assert found["decisions"] == case["decisions"]
    for name, expected in case.get("values", {}).items():
        # Ohm's law by hand, written to four figures.
        assert found[name] == (expected if isinstance(expected, str) else pytest.approx(expected, rel=1e-3))


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(
    ("volt", "verdict"),
    [("0", "below"), ("0.99", "below"), ("0.9999", "below"), ("1", "act"), ("1000mV", "act"), ("1.01", "act")],
)
def test_one_volt_across_500_ohm_is_the_level_to_act_at(edition, volt, verdict):
    """1 V / 500 ohm = 2 mA: at the level one acts."""
    assert answered(edition, **FLOOR, volt=volt)["verdict"] == verdict


@pytest.mark.parametrize(
    ("volt", "ohm", "verdict"),
    [
        ("0.399", "200", "look"), ("0.4", "200", "act"), ("0.99", "1000", "look"), ("1", "1000", "act"),
        ("0.9", "10000", "look"), ("0.1", "449", "look"), ("0.1", "450", "below"), ("0.1", "550", "below"),
        ("0.1", "551", "look"), ("0.1", "500", "below"), ("1", "10000", "act"),
    ],
)  # fmt: skip
def test_a_resistor_far_from_500_ohm_gives_no_current_of_an_animal(volt, ohm, verdict):
    """0.4 V / 200 ohm = 2 mA; 1 V is a level too. A tenth of 500 ohm is 50."""
    result = livestock_equipotential_plane(edition="2023", **FLOOR, volt=volt, resistor=ohm)
    found, near = result.answer.values, 450 <= int(ohm) <= 550
    assert found["verdict"] == verdict
    assert found["milliampere"] == (pytest.approx(1000 * float(volt) / int(ohm)) if near else None)
    assert (" mA through" in str(result.answer.headline)) == near
    whys = " ".join(str(row.cells["why"]) for row in result.answer.table.rows)
    assert ("this is not the current of an animal" in whys) == (verdict == "look")


def test_a_bound_is_never_shown_smaller_than_it_is_nor_with_more_than_two_figures():
    """0.8 V / 141 ohm = 5.674 mA; 0.5 V / 141 ohm = 3.546 mA."""
    for volt, shown in (("0.8", "up to 5.7 mA"), ("0.5", "up to 3.6 mA"), ("1.41", "up to 10 mA")):
        assert shown in str(livestock_equipotential_plane(edition="2023", **FLOOR, volt=volt).answer.detail)


def test_a_reading_without_a_resistor_is_never_judged_below_the_level():
    for volt in ("0.01", "0.5", "3"):
        found = answered(**FLOOR, volt=volt, meter="open")
        assert found["verdict"] == "look" and found["milliampere"] is None


@pytest.mark.parametrize("volt", [0.1, 0.5, 1, 2.5, 8])
def test_a_cow_never_takes_less_than_the_resistor(volt):
    found = answered(**FLOOR, volt=volt)
    assert found["milliampere"] < found["mean_cow_milliampere"] < found["lowest_cow_milliampere"]


def test_more_voltage_is_never_less_current():
    found = [answered(**FLOOR, volt=volt)["lowest_cow_milliampere"] for volt in (0, 0.1, 0.5, 1, 5, 100)]
    assert found == sorted(found) and found[0] == 0


@pytest.mark.parametrize(
    ("size", "kind", "found"),
    [
        ("10", "solid-copper", "change"),
        ("8", "solid-copper", "in-order"),
        ("6", "solid-copper", "in-order"),
        ("8", "stranded-copper", "change"),
        ("4", "aluminum", "change"),
        (None, "solid-copper", "bond"),
    ],
)
@pytest.mark.parametrize("edition", EDITIONS)
def test_the_bond_is_solid_copper_of_8_awg_or_larger(edition, size, kind, found):
    assert answered(edition, **FLOOR, bond_conductor=size, bond_kind=kind)["decisions"]["bond"] == found


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        ({}, "area"),
        ({"area": "meadow"}, "area"),
        ({**FLOOR, "volt": "-1"}, "volt"),
        ({**FLOOR, "volt": "1001"}, "volt"),
        ({**FLOOR, "volt": "2 mA"}, "volt"),
        ({**FLOOR, "resistor": "0"}, "resistor"),
        ({**FLOOR, "resistor": "10001"}, "resistor"),
        ({**FLOOR, "bond_conductor": "5/0"}, "bond_conductor"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = livestock_equipotential_plane(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("volt", [None, 0, 0.2, 1, 50])
def test_the_first_warning_is_of_a_tingle_and_nothing_is_called_safe(edition, volt):
    result = livestock_equipotential_plane(edition=edition, **FLOOR, volt=volt)
    assert "tingle" in str(result.trace.warnings[0]) and "dry place" in str(result.trace.warnings[0])
    answer = result.answer
    words = [answer.headline, answer.detail, *result.trace.warnings, *result.trace.notes]
    words += [cell for row in answer.table.rows for cell in row.cells.values()]
    assert "safe" not in " ".join(map(str, words)).lower()


def test_a_reading_like_that_of_a_fault_is_warned_of():
    """16 mA through 141 ohm is 2.256 V."""
    for volt, warned in ((2.25, False), (2.26, True), (60, True)):
        said = livestock_equipotential_plane(edition="2017", **FLOOR, volt=volt).trace.warnings
        assert any("can kill" in str(words) for words in said) is warned


def test_2026_tells_how_a_plane_is_built_and_2023_does_not():
    said = {
        edition: str(livestock_equipotential_plane(edition=edition, **FLOOR).trace.notes[0]) for edition in EDITIONS
    }
    assert "grid of bare solid copper" in said["2026"]
    assert "grid" not in said["2017"] + said["2020"] + said["2023"]


def test_a_resistor_smaller_than_a_cow_bounds_what_she_takes_by_its_own_current():
    """0.3 V / 100 ohm = 3 mA; across 200 ohm 1.5 mA, above the mean cow's 0.3 / 254 and below 0.3 / 141."""
    for ohm, mean, lowest in (("100", 3, 3), ("200", 1.5, 2.128), ("500", 1.181, 2.128)):
        found = answered(**FLOOR, volt="0.3", resistor=ohm)
        assert found["mean_cow_milliampere"] == pytest.approx(mean, rel=1e-3)
        assert found["lowest_cow_milliampere"] == pytest.approx(lowest, rel=1e-3)


@pytest.mark.parametrize("meter", ["open", "with-resistor"])
def test_a_reading_like_that_of_a_fault_has_the_power_shut_off_first(meter):
    for volt, first in (("2.25", False), ("2.26", True), ("50", True)):
        answer = livestock_equipotential_plane(edition="2017", **FLOOR, volt=volt, meter=meter).answer
        assert ("have the power shut off" in str(answer.headline)) is first
        whys = [str(row.cells["why"]) for row in answer.table.rows]
        assert any("Do not put a resistor" in why for why in whys) is (first and meter == "open")


def test_a_meter_that_shows_nothing_is_never_told_as_no_current():
    answer = livestock_equipotential_plane(edition="2017", **FLOOR, volt="0").answer
    assert "0 mA" not in f"{answer.headline} {answer.detail}" and "last digit" in str(answer.detail)


def told(**inputs):
    answer = livestock_equipotential_plane(edition="2023", **FLOOR, **inputs).answer
    return f"{answer.headline} {answer.detail}"


BUILT = {"plane": "steel", "bond_conductor": "8", "tied": "yes"}


@pytest.mark.parametrize("volt", [None, "0.1V"])
@pytest.mark.parametrize(
    ("wrong", "part"),
    [
        ({"bond_conductor": "10"}, "“Bonding wire of the plane”"),
        ({"bond_kind": "stranded-copper"}, "“Bonding wire of the plane”"),
        ({"tied": "no"}, "“Metal above the floor”"),
    ],
)
def test_a_part_that_is_wrong_is_named_beside_the_verdict(wrong, part, volt):
    assert f"fix {part}" in told(**BUILT | wrong, volt=volt)
    assert "is OK" not in told(**BUILT | wrong, volt=volt)


@pytest.mark.parametrize("volt", [None, "0.1V"])
def test_a_plane_with_all_its_parts_is_told_as_in_order_as_entered(volt):
    assert "The plane required here is OK as entered, if its wire is solid copper" in told(**BUILT, volt=volt)


@pytest.mark.parametrize("unknown", ["plane", "bond_conductor", "tied"])
def test_what_nobody_looked_at_is_not_told_as_in_order(unknown):
    entered = {name: value for name, value in BUILT.items() if name != unknown}
    assert "is OK" not in told(**entered) and "A plane is required here" in told(**entered)
