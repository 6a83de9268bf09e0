"""The available fault current: worked cases, the safe side of every default, traps, and what is asked for."""

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import EDITIONS, available_fault_current
from tests.cases.read import cases, named

CASES = "fault/available/available_fault_current"
PLATE = dict(system="208Y/120", kva=75, percent_r=1.2, percent_x=2)
RUN = dict(conductor="3/0", length="60ft")
SOLID = ["120/240", "208Y/120", "480Y/277", "240/120-high-leg", "240-corner"]
UNGROUNDED = ["240-ungrounded", "480-ungrounded"]


def find(edition="2023", **inputs):
    return available_fault_current(edition=edition, **inputs)


def values(**inputs):
    result = find(**inputs)
    assert result.outcome == "answer", [str(each.words) for each in result.fix]
    return result.answer.values


def fixed(**inputs):
    result = find(**inputs)
    assert result.outcome == "fix"
    return {each.field: str(each.words) for each in result.fix}


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_currents_of_their_source(pair):
    edition, case = pair
    result = find(edition, **case["inputs"])
    if "not_covered" in case:
        assert case["not_covered"] in str(result.not_covered.look_in)
        return
    for name, expected in case["expected"].items():
        assert result.answer.values[name] == pytest.approx(expected, rel=case["relative"], abs=0.01), name


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("computed", "practice", "published")


@pytest.mark.parametrize("edition", EDITIONS)
def test_every_edition_gives_the_same_current(edition):
    assert find(edition, **PLATE, **RUN).answer_code == find("2023", **PLATE, **RUN).answer_code


def test_the_answer_is_the_largest_of_the_kinds_rounded_up_to_three_figures():
    """75 kVA, 208 V, 2 %: 208.18 A / 0.02 = 10 409 A of all kinds but line to line."""
    result = find(system="208Y/120", kva=75, percent_z=2, tolerance=0)
    assert result.answer.values["three_phase"] == pytest.approx(10408.9, abs=0.1)
    assert result.answer_code == "10500A"
    assert result.answer.values["available_ampere"] == 10500


def test_what_nobody_entered_is_named_beside_the_answer():
    """One set of the conductor; a wye with only the three-phase current known may give 1.5 times it to ground."""
    run = find(**PLATE, conductor="3/0", length="60ft")
    assert "at the end of the run of 1 × 3/0 AWG copper; no motors counted" in str(run.answer.detail)
    known = dict(system="480Y/277", source="given-current", three_phase_current="20kA")
    assert "up to 30,000 A" in str(find(**known).answer.detail)
    assert "known" not in str(find(**known, line_to_ground_current="20kA").answer.detail)
    assert "known" not in str(find(**(known | dict(system="120/240"))).answer.detail)


def test_a_multiple_for_line_to_neutral_is_never_put_on_the_end_of_a_run():
    """1.5 times the 3567 A from line to line would be 5350 A; 3122 A flow."""
    plate = dict(system="120/240", kva=25, percent_r=1.2, percent_x=1.6, tolerance=0)
    seen = values(**plate, conductor="2/0", conductor_metal="aluminum", length="75ft", temperature="75")
    assert seen["line_to_ground"] > 1.5 * seen["line_to_line"]
    assert seen["line_to_ground_at_end"] < seen["line_to_line_at_end"] < seen["available_ampere"] < 3600
    notes = " ".join(map(str, find(**plate, **RUN).trace.notes))
    assert "ahead of the run" in notes


def test_impedances_are_added_as_phasors_not_as_magnitudes():
    """Magnitudes add up to at least the true impedance, so they give less current; here over 5 % less."""
    plate = dict(system="480Y/277", kva=500, percent_r=0, percent_x=5, tolerance=0)
    seen = values(**plate, conductor="1/0", length="100ft", temperature="75")
    source, run = 23.04e-3, abs(0.12 + 0.044j) / 10
    by_magnitudes = 277.128 / (source + run)
    assert seen["three_phase_at_end"] > 1.05 * by_magnitudes


@pytest.mark.parametrize("system", SOLID)
@pytest.mark.parametrize(
    ("name", "less", "more"),
    [
        ("tolerance", "0", None),
        ("temperature", "75", None),
        ("temperature", "20", "-20"),
        ("raceway", "steel", None),
        ("utility_kva", "20000", None),
        ("motor_current", None, "100"),
        ("voltage_factor", None, "1.05"),
        ("length", "61ft", "60ft"),
        ("sets", "1", "2"),
        ("return_conductor", "4", None),
    ],
)
def test_each_default_and_each_step_toward_cold_and_near_gives_no_less(system, name, less, more):
    plate = PLATE | RUN | {"system": system}
    if name == "utility_kva":
        plate["utility_x_over_r"] = "8"
    low, high = (values(**plate | ({} if value is None else {name: value})) for value in (less, more))
    for kind in ("line_to_line", "line_to_ground_at_end", "available_ampere"):
        assert high[kind] >= low[kind]
    assert high["line_to_ground_at_end"] > low["line_to_ground_at_end"] or name == "motor_current"


@pytest.mark.parametrize("system", SOLID + UNGROUNDED)
def test_a_ratio_left_out_is_never_less_than_any_ratio_entered(system):
    plate = dict(
        system=system, kva=75, percent_z=3, utility_kva=50_000, conductor="500kcmil", raceway="steel", length=90
    )
    worst = values(**plate)
    for ratio, of_utility in itertools.product(("0", "0.7", "1.5", "5", "100"), ("0", "2", "20")):
        seen = values(**plate, x_over_r=ratio, utility_x_over_r=of_utility)
        assert all(worst[kind] >= seen[kind] for kind in seen if "line" in kind or kind == "three_phase")


@pytest.mark.parametrize("system", UNGROUNDED)
def test_an_ungrounded_system_says_that_the_first_fault_opens_nothing(system):
    result = find(system=system, kva=75, percent_z=3)
    warnings = " ".join(map(str, result.trace.warnings))
    assert "first ground fault opens nothing" in warnings and "second fault" in warnings
    assert result.answer.values["line_to_ground"] == 0


@pytest.mark.parametrize("system", SOLID)
def test_a_grounded_system_does_not_say_so(system):
    warnings = " ".join(map(str, find(**PLATE | {"system": system}).trace.warnings))
    assert "opens nothing" not in warnings


@pytest.mark.parametrize("system", SOLID + UNGROUNDED)
def test_every_answer_is_for_ratings_only_and_states_its_model(system):
    result = find(**PLATE | {"system": system})
    assert any("Never use it to prove" in str(each) for each in result.trace.warnings)
    notes = [str(each) for each in result.trace.notes]
    assert any("teaching and checking" in each for each in notes)
    assert any("qualified person" in each for each in notes)
    assert sum(each.startswith("Assumed:") for each in notes) >= 3


def test_motors_are_an_allowance_marked_as_practice():
    """Six times 100 A, on top of the largest."""
    without, result = values(**PLATE), find(**PLATE, motor_current="100")
    assert result.answer.values["motors"] == 600
    most = max(without[kind] for kind in ("three_phase", "line_to_line", "line_to_ground") if kind in without)
    assert 0 <= result.answer.values["available_ampere"] - (most + 600) < 100
    assert "no motors counted" in str(find(**PLATE).answer.detail) and "motors" not in str(result.answer.detail)
    marks = {each.key: each.mark for each in result.trace.citations}
    assert marks["fault/motor_contribution"] == "practice"


def test_the_tolerance_takes_a_tenth_off_the_plate_unless_told_otherwise():
    plate = dict(system="208Y/120", kva=75, percent_z=2)
    assert values(**plate)["three_phase"] == pytest.approx(values(**plate, tolerance=0)["three_phase"] / 0.9, rel=1e-6)
    assert values(**plate, tolerance=10) == values(**plate)


def test_a_generator_warns_that_its_current_falls():
    result = find(system="120/240", source="generator", kva=20, subtransient=12)
    assert any("few cycles" in str(each) for each in result.trace.warnings)


def test_a_metal_raceway_warns_where_the_current_beside_the_wire_could_exceed_the_answer():
    """On 120/240 V a good way back beside the wire lets more to neutral than flows from line to line."""
    plate = PLATE | RUN | {"system": "120/240"}
    steel = find(**plate, raceway="steel")
    assert any("Metal raceway also carries" in str(each) for each in steel.trace.warnings)
    assert steel.answer.values["line_to_ground_limit_at_end"] > steel.answer.values["line_to_line_at_end"]
    assert not any("Metal raceway also carries" in str(each) for each in find(**plate).trace.warnings)


@pytest.mark.parametrize("system", SOLID)
def test_no_way_back_lets_more_than_the_limit_through(system):
    plate = PLATE | RUN | {"system": system}
    for size in ("14", "4", "500kcmil", "1000kcmil"):
        seen = values(**plate, return_conductor=size)
        assert seen["line_to_ground_at_end"] < seen["line_to_ground_limit_at_end"]


def test_the_utility_is_read_as_power_or_as_current_with_voltage():
    """12.47 kV and 4630 A are 100 MVA three phase; 7200 V and 2778 A are 20 MVA single phase."""
    wye = dict(PLATE, utility_x_over_r=8)
    by_current = values(**wye, utility_current="4629.9", primary_voltage="12.47kV")
    assert by_current["three_phase"] == pytest.approx(values(**wye, utility_kva="100MVA")["three_phase"], rel=1e-4)
    single = dict(wye, system="120/240")
    by_current = values(**single, utility_current="2777.8A", primary_voltage="7200")
    assert by_current["line_to_line"] == pytest.approx(values(**single, utility_kva="20 mva")["line_to_line"], rel=1e-4)


def test_a_known_current_comes_back_at_the_terminals():
    seen = values(system="208Y/120", source="given-current", three_phase_current="22kA", line_to_ground_current=20000)
    assert (seen["three_phase"], seen["line_to_ground"]) == pytest.approx((22000, 20000), abs=0.1)
    only = values(system="208Y/120", source="given-current", three_phase_current=22000)
    assert only["line_to_ground"] == pytest.approx(22000, abs=0.1)


def test_what_a_source_needs_is_asked_for_by_its_field():
    assert list(fixed(system="208Y/120")) == ["kva"]
    assert list(fixed(system="208Y/120", kva=75)) == ["percent_z"]
    assert list(fixed(system="208Y/120", kva=75, percent_r=1)) == ["percent_x"]
    assert list(fixed(system="208Y/120", kva=75, percent_x=1)) == ["percent_r"]
    assert list(fixed(system="208Y/120", kva=75, percent_r=0, percent_x=0)) == ["percent_x"]
    assert list(fixed(**PLATE, percent_z=2)) == ["percent_z"]
    assert list(fixed(**PLATE, utility_current=5000)) == ["primary_voltage"]
    assert list(fixed(**PLATE, utility_current=5000, utility_kva=5000)) == ["utility_current"]
    assert list(fixed(system="208Y/120", source="given-current")) == ["three_phase_current"]
    assert list(fixed(system="208Y/120", source="generator", kva=75)) == ["subtransient"]
    assert list(fixed(**PLATE, conductor="3/0")) == ["length"]
    assert list(fixed(**PLATE, length=50)) == ["conductor"]
    assert list(fixed(**PLATE, length=50, conductor="1250kcmil")) == ["conductor"]
    assert list(fixed(**PLATE, length=50, conductor="3/0", return_conductor="18")) == ["return_conductor"]


def test_currents_that_no_source_has_together_are_asked_for_again():
    for system, most in (("208Y/120", 15_000), ("120/240", 20_000), ("240-corner", 8_660)):
        given_current = dict(system=system, source="given-current", three_phase_current=10_000)
        assert values(**given_current, line_to_ground_current=most)
        assert list(fixed(**given_current, line_to_ground_current=most * 1.02)) == ["line_to_ground_current"]
    floating = dict(system="480-ungrounded", source="given-current", three_phase_current=10_000)
    assert list(fixed(**floating, line_to_ground_current=100)) == ["line_to_ground_current"]


@pytest.mark.parametrize(
    ("name", "good", "bad"),
    [
        ("kva", ["0.5", "10000", "75 kVA", "1.5MVA"], ["0", "-75", "10001", "75 V", "seventy"]),
        ("percent_z", ["0.1", "5.75%", "30"], ["0", "30.1", "-2", "2 ohm"]),
        ("tolerance", ["0", "20"], ["20.1", "-1"]),
        ("x_over_r", ["0", "100"], ["101", "-1"]),
        ("length", ["1", "10000ft", "3m"], ["-5", "1e9", "1000000000ft", "5 A"]),
        ("temperature", ["-40", "90", "20 °C", "−10C"], ["-41", "91", "hot"]),
        ("motor_current", ["0", "10000"], ["-1", "10001"]),
        ("voltage_factor", ["0.9", "1.15"], ["0.89", "1.16", "0"]),
        ("sets", ["1", "30"], ["0", "31", "1.5"]),
    ],
)
def test_each_number_is_read_to_its_limits_and_no_further(name, good, bad):
    plate = dict(system="208Y/120", kva="75", percent_z="3", conductor="3/0", length="60ft")
    for text in good:
        assert find(**plate | {name: text}).outcome == "answer", text
    for text in bad:
        assert name in fixed(**plate | {name: text}), text


@pytest.mark.parametrize("system", ["over-1000", "direct-current", "impedance-grounded"])
def test_systems_outside_the_rules_end_as_not_covered_with_a_section(system):
    result = find(system=system)
    assert result.outcome == "not_covered" and "250" in str(result.not_covered.look_in)


def test_a_generator_with_a_high_leg_is_not_covered():
    result = find(system="240/120-high-leg", source="generator", kva=100, subtransient=12)
    assert result.outcome == "not_covered" and "manufacturer" in str(result.not_covered.look_in)


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from(SOLID + UNGROUNDED),
    st.floats(5, 2000),
    st.floats(0.5, 8),
    st.sampled_from(["14", "8", "2", "4/0", "500kcmil"]),
    st.sampled_from(["copper", "aluminum"]),
    st.integers(1, 500),
)
def test_a_longer_run_never_gives_more_and_never_more_than_the_terminals(system, kva, percent, size, metal, feet):
    size = "12" if (size, metal) == ("14", "aluminum") else size
    plate = dict(system=system, kva=f"{kva:.3f}", percent_z=f"{percent:.3f}", conductor=size, conductor_metal=metal)
    near, far = values(**plate, length=feet), values(**plate, length=feet + 50)
    for kind in ("three_phase", "line_to_line", "line_to_ground"):
        if kind in near:
            assert near[kind] >= near[f"{kind}_at_end"] >= far[f"{kind}_at_end"]
