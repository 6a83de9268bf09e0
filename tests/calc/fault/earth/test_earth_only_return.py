"""The earth as the only return: worked cases, what a whole circuit gives, every boundary, and what it must say."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import EDITIONS, earth_only_return
from calc.fault.circuit.network import solve
from calc.permalink import read, write
from tests.cases.read import cases, named

CASES = "fault/earth/earth_only_return"


def earth(edition="2023", **inputs):
    return earth_only_return(edition=edition, **({"device": "20"} | inputs))


def words(result):
    return " ".join(map(str, [*result.trace.notes, *result.trace.warnings]))


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    result = earth_only_return(edition=edition, **case["inputs"])
    assert result.answer_code == case["said"], case["reason"]
    for name in ("ampere", "metal_volt"):
        if name in case:
            assert result.answer.values[name] == pytest.approx(case[name], rel=case["relative"])


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


@pytest.mark.parametrize("volt", [120, 277, 347])
@pytest.mark.parametrize("device", [15, 20, 30, 60, 100, 200])
def test_through_25_ohm_no_ordinary_device_opens_at_any_usual_voltage(volt, device):
    values = earth(voltage_to_ground=volt, device=device).answer.values
    assert values["verdict"] == "does-not-open"
    assert values["ampere"] == pytest.approx(volt / 25) and values["metal_volt"] == pytest.approx(volt)


@pytest.mark.parametrize(
    ("ohm", "verdict"),
    [("6.01", "does-not-open"), ("6", "does-not-open"), ("5.99", "not-assured"), ("0.5", "not-assured")],
)
def test_at_its_rating_a_device_may_hold_and_above_it_nothing_is_assured(ohm, verdict):
    """120 V through 6 ohm is 20 A."""
    for edition in EDITIONS:
        assert earth(edition, electrode_ohm=ohm).answer.values["verdict"] == verdict


def test_no_answer_ever_says_that_the_device_opens():
    for ohm in ("0.01", "0.1", "1", "10"):
        answer = earth(electrode_ohm=ohm, device="15").answer
        assert answer.values["verdict"] in ("does-not-open", "not-assured")
        assert str(answer.headline) in ("Does not open", "Do not count on it")


def test_100_ampere_at_120_volt_need_a_loop_of_1_2_ohm():
    assert earth(device="100").answer.values["loop_ohm_for_rating"] == pytest.approx(1.2)


def test_a_whole_circuit_with_wires_has_a_little_less_current():
    """The bench circuit of 25 kVA, 75 ft of 2/0 aluminum and 100 ft of 12 AWG, its impedances from ngspice's input."""
    branches = [
        ("line", "L0", "L1", 0.011925 + 0.003225j),
        ("branch", "L1", "G2", 0.2 + 0.0054j),
        ("grounding", "G2", "G1", 0.2 + 0.0054j),
        ("source-electrode", "N0", "E", 10),
        ("metal-electrode", "G1", "E", 25),
    ]
    solved = solve(branches, [("source", "L0", "N0", 120, 0.010368 + 0.0110592j)])
    values = earth(source_ohm="10").answer.values
    current, metal = abs(solved.currents["metal-electrode"]), abs(solved.voltages["G2"])
    assert current == pytest.approx(3.39, abs=0.005) and metal == pytest.approx(85.4, abs=0.05)
    assert current < values["ampere"] < current * 1.015
    assert metal < values["metal_volt"] < metal * 1.015


def test_metal_and_source_share_the_whole_voltage():
    values = earth(source_ohm="10").answer.values
    assert values["metal_volt"] + values["source_volt"] == pytest.approx(120)
    assert "rises too: 34.3 V" in words(earth(source_ohm="10"))
    assert "rises too" not in words(earth())


def test_every_answer_says_that_25_ohm_proves_nothing_of_clearing():
    for edition in EDITIONS:
        for ohm in ("0.5", "25", "100"):
            spoken = words(earth(edition, electrode_ohm=ohm))
            assert "25 ohm" in spoken and "proves nothing about clearing" in spoken
            assert "The earth is not an effective fault path (250.54" in spoken and "model for teaching" in spoken
            assert "qualified person" in spoken


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_shared_water_main_is_another_matter(edition):
    result = earth(edition, return_path="water-main")
    assert result.outcome == "not_covered"
    assert "metal path" in str(result.not_covered.why) and "250.6(A)" in str(result.not_covered.look_in)


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        ({"device": "0"}, "device"),
        ({"device": "toaster"}, "device"),
        ({"electrode_ohm": "0"}, "electrode_ohm"),
        ({"electrode_ohm": "-25"}, "electrode_ohm"),
        ({"source_ohm": "-1"}, "source_ohm"),
        ({"voltage_to_ground": "0"}, "voltage_to_ground"),
        ({"voltage_to_ground": "7200"}, "voltage_to_ground"),
        ({"voltage_to_ground": "120 ft"}, "voltage_to_ground"),
        ({"return_path": "air"}, "return_path"),
    ],
)
def test_what_cannot_be_is_named(inputs, field):
    assert [each.field for each in earth(**inputs).fix] == [field]


def test_the_volts_and_ohms_that_an_answer_is_for_stand_beside_it():
    """The same rod with 10 ohm at the source and without: 4.8 A and 3.43 A are two cases, and are told apart."""
    assert "120 V, 25 ohm at the metal, 0 ohm at the source." in str(earth().answer.detail)
    named = earth(voltage_to_ground="277", electrode_ohm="50", source_ohm="10").answer.detail
    assert "277 V, 50 ohm at the metal, 10 ohm at the source." in str(named)


def test_the_device_is_needed():
    assert [each.field for each in earth_only_return(edition="2023").fix] == ["device"]


def test_a_link_restores_the_answer():
    result = earth(source_ohm="10")
    again = earth_only_return.run(read(write(result).partition("?")[2]))
    assert again.answer_code == result.answer_code == again.linked_answer


OHM = draw.floats(0.01, 1e5).map(lambda value: f"{value:.4f}")


@settings(deadline=None)
@given(OHM, OHM, draw.integers(1, 1000), draw.integers(1, 10_000))
def test_more_ohms_never_bring_more_current_and_no_input_crashes(electrode, source, volt, device):
    one = earth(electrode_ohm=electrode, source_ohm=source, voltage_to_ground=volt, device=device).answer.values
    more = earth(electrode_ohm=electrode, source_ohm=f"{float(source) + 1}", voltage_to_ground=volt, device=device)
    assert more.answer.values["ampere"] < one["ampere"]
    assert one["metal_volt"] <= volt * (1 + 1e-9)


@pytest.mark.parametrize(("source", "outcome"), [("0", "answer"), ("0.00009", "fix"), ("0.0001", "answer")])
def test_the_smallest_resistance_still_reads_back_from_its_link(source, outcome):
    result = earth(source_ohm=source)
    assert result.outcome == outcome
    if outcome == "answer":
        assert earth_only_return.run(read(write(result).partition("?")[2])).answer == result.answer


def test_a_current_of_microamperes_is_shown_as_a_number():
    answer = earth(voltage_to_ground="1", electrode_ohm="1000000").answer
    assert "can carry 0.000001 A indefinitely" in str(answer.detail)
