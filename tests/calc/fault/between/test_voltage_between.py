"""Two metal parts: worked cases, a circuit simulator, arithmetic, every boundary, and what must be said first."""

import itertools
import random
import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import shock_limits, voltage_between
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.circuit_simulator import simulated_voltages

CASES = "fault/between/voltage_between"
LEAK = {"leak_ohm": "12000", "one_earth_ohm": "10000", "two_neutral_ohm": "0.1"}
STRAY = {"cause": "utility", "neutral_volt": "4", "one_neutral_ohm": "0.1", "two_earth_ohm": "50"}
PAIRS = {"between": ("one", "two"), "one": ("one", "E"), "two": ("two", "E")}
CHANCES = 40
ALLOWED = 1e-6  # what the simulator writes has more digits; nine decimals of a volt are kept


def between(base=LEAK, edition="2023", **changed):
    return voltage_between(edition=edition, **(base | changed))


def values(base=LEAK, **changed):
    return between(base, **changed).answer.values


def spoken(result):
    return " ".join(map(str, [*result.trace.warnings, *result.trace.notes]))


def to_mend(base=LEAK, **changed):
    result = between(base, **changed)
    assert result.outcome == "fix"
    return [each.field for each in result.fix]


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_have_the_readings_of_their_source(pair):
    edition, case = pair
    found = voltage_between(edition=edition, **case["inputs"]).answer.values
    for name, expected in case["values"].items():
        assert found[name] == pytest.approx(expected, rel=case["within"]), case["reason"]


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "computed")


def by_chance(seed):
    """The inputs of a circuit, each path there or not, from a tenth of an ohm to a hundred kilohm."""
    chance = random.Random(seed)

    def ohm():
        return float(f"{10 ** chance.uniform(-1, 5):.4g}")

    inputs = {name: ohm() for name in ("one_neutral_ohm", "one_earth_ohm", "two_neutral_ohm", "two_earth_ohm")
              if chance.random() < 0.7}  # fmt: skip
    if not {"two_neutral_ohm", "two_earth_ohm"} & set(inputs):
        inputs["two_earth_ohm"] = ohm()
    inputs["bond_ohm"] = 0.05
    if chance.random() < 0.5:
        return {"one_neutral_ohm": ohm()} | inputs | {"cause": "utility", "neutral_volt": 7}
    return inputs | {"leak_ohm": ohm(), "neutral_ohm": ohm(), "voltage": 277}


def simulated_circuit(inputs, bonded, body=None):
    """The same two parts as a netlist of this test's own; body: (from, to, ohm)."""
    wires = [
        ("an", "one", "neutral", "one_neutral_ohm"), ("ae", "one", "E", "one_earth_ohm"),
        ("bn", "two", "neutral", "two_neutral_ohm"), ("be", "two", "E", "two_earth_ohm"),
    ]  # fmt: skip
    branches = [(name, start, end, inputs[key]) for name, start, end, key in wires if key in inputs]
    if bonded:
        branches.append(("bond", "one", "two", inputs["bond_ohm"]))
    if body:
        branches.append(("body", *body))
    if "leak_ohm" in inputs:
        branches += [("leak", "hot", "one", inputs["leak_ohm"]), ("ne", "neutral", "E", inputs["neutral_ohm"])]
        return branches, [("supply", "hot", "neutral", inputs["voltage"], 0)], []
    return branches, [("stray", "neutral", "E", inputs["neutral_volt"], 0)], []


def test_readings_and_body_currents_are_those_of_a_circuit_simulator():
    """Forty circuits by chance, apart and bonded, with no body and with 1000 and 500 ohm across each pair."""
    asked = []
    for seed in range(CHANCES):
        inputs = by_chance(seed)
        found = voltage_between(edition="2023", **inputs).answer.values
        for how in ("apart", "bonded"):
            for name, (start, end) in PAIRS.items():
                asked.append((found[f"{how}_{name}_volt"], simulated_circuit(inputs, how == "bonded"), start, end, 1))
                for key, ohm in (("body", 1000), ("body_wet", 500)):
                    circuit = simulated_circuit(inputs, how == "bonded", (start, end, ohm))
                    asked.append((found[f"{how}_{name}_{key}"], circuit, start, end, 1000 / ohm))
    simulated = simulated_voltages([circuit for _, circuit, *_ in asked])
    for (got, _, start, end, factor), volts in zip(asked, simulated, strict=True):
        assert got == pytest.approx(abs(volts[start] - volts[end]) * factor, rel=ALLOWED, abs=1e-7)


def test_a_stray_voltage_divides_between_a_parts_two_paths():
    """4 V over 100 and 300 ohm: 3 V on part one; part two with 50 ohm to earth alone has none, so 3 V between."""
    found = values(STRAY, one_neutral_ohm="100", one_earth_ohm="300")
    assert (found["apart_one_volt"], found["apart_between_volt"]) == pytest.approx((3, 3))
    # Bonded: 300 and 50 ohm side by side are 42.857; 4 × 42.857 ÷ 142.857 = 1.2 V.
    bonded = values(STRAY, one_neutral_ohm="100", one_earth_ohm="300", bond_ohm="0.0001")
    assert bonded["bonded_two_volt"] == pytest.approx(1.2, rel=1e-4)


def test_a_leak_in_ampere_is_that_of_solid_metal():
    """10 mA at 120 V is 12,000 ohm."""
    assert values(leak_ohm=None, leak_ampere="10 mA") == values()


def test_a_weak_leak_falls_under_load_and_a_stiff_one_does_not():
    """8.45 V left of 54.6; behind 0.1 ohm nearly all is left."""
    weak, stiff = values(), values(leak_ohm="0.1")
    assert weak["apart_between_body"] / weak["apart_between_volt"] == pytest.approx(0.155, abs=0.001)
    assert stiff["apart_between_body"] / stiff["apart_between_volt"] > 0.95


@pytest.mark.parametrize(("neutral_volt", "told"), [("2.9990", False), ("3", False), ("3.0010", True)])
def test_more_than_6_milliampere_is_said_to_hold_some(neutral_volt, told):
    """Wet, 500 ohm: 3 V straight from a stiff neutral are 6 mA."""
    result = between(STRAY, neutral_volt=neutral_volt, one_neutral_ohm="0.0001")
    assert ("cannot let go" in spoken(result)) == told


@pytest.mark.parametrize("base", [LEAK, STRAY])
def test_every_answer_says_first_what_a_tingle_means_and_what_the_bond_leaves(base):
    result = between(base)
    assert str(result.trace.warnings[0]).startswith("If anyone feels a tingle")
    assert "does not remove their voltage to earth" in spoken(result)


def test_a_bond_that_lifts_part_two_is_warned_of():
    assert "raises part two from less than 1 mV to 4 V" in spoken(between(STRAY, one_neutral_ohm="0.0001"))
    assert "raises part two" not in spoken(between())


def test_a_bond_without_a_metal_way_back_is_said_to_open_nothing():
    assert "trips no breaker" in spoken(between(two_neutral_ohm=None, two_earth_ohm="25"))
    assert "trips no breaker" not in spoken(between())


@pytest.mark.parametrize("base", [LEAK, STRAY])
def test_nothing_is_called_safe_or_zero(base):
    result = between(base, two_earth_ohm="1", bond_ohm="0.0001")
    cells = [str(cell) for row in result.answer.table.rows for cell in row.cells.values()]
    told = " ".join([str(result.answer.headline), str(result.answer.detail), spoken(result), *cells])
    assert not re.search(r"\bsafe\b|(?<![\d.,])0 m?[VA]\b", told)
    (chart,) = result.answer.charts
    assert all(volt > 0 for _, volt in chart.lines[0].points)


@pytest.mark.parametrize(
    ("base", "changed", "field"),
    [
        (LEAK, {"cause": "moon"}, "cause"), (LEAK, {"leak_ohm": None}, "leak_ampere"),
        (LEAK, {"leak_ampere": "0.01"}, "leak_ohm"), (LEAK, {"leak_ohm": "0"}, "leak_ohm"),
        (LEAK, {"leak_ohm": "-5"}, "leak_ohm"), (LEAK, {"voltage": "0"}, "voltage"),
        (LEAK, {"voltage": "1001"}, "voltage"), (LEAK, {"two_neutral_ohm": None}, "two_earth_ohm"),
        (LEAK, {"one_earth_ohm": "1e12"}, "one_earth_ohm"), (LEAK, {"bond_ohm": "0"}, "bond_ohm"),
        (LEAK, {"neutral_ohm": "-1"}, "neutral_ohm"), (LEAK, {"leak_ohm": None, "leak_ampere": "0"}, "leak_ampere"),
        (STRAY, {"neutral_volt": None}, "neutral_volt"), (STRAY, {"neutral_volt": "0"}, "neutral_volt"),
        (STRAY, {"one_neutral_ohm": None}, "one_earth_ohm"), (STRAY, {"two_earth_ohm": None}, "two_earth_ohm"),
        (STRAY, {"one_neutral_ohm": None, "one_earth_ohm": "50"}, "one_neutral_ohm"),
    ],
)  # fmt: skip
def test_what_cannot_be_is_named(base, changed, field):
    assert to_mend(base, **changed) == [field]


def test_a_part_with_a_leak_alone_has_all_of_the_voltage():
    assert values(one_earth_ohm=None)["apart_one_volt"] == pytest.approx(120, rel=1e-6)


def test_a_link_restores_the_answer():
    result = between()
    again = voltage_between.run(read(write(result).partition("?")[2]))
    assert again.answer == result.answer and result.answer_code == "54.6V-0.0001V"


OHM = draw.floats(-1, 5).map(lambda power: f"{10**power:.5f}")
PATHS = draw.fixed_dictionaries(
    {"leak_ohm": OHM, "two_earth_ohm": OHM, "neutral_ohm": OHM},
    optional={"one_neutral_ohm": OHM, "one_earth_ohm": OHM, "two_neutral_ohm": OHM},
)


@settings(deadline=None, derandomize=True, max_examples=60)
@given(PATHS)
def test_a_bond_never_makes_more_between_the_parts_nor_more_through_a_body_there(paths):
    found = values({}, **paths)
    slack = 1 + 1e-9
    assert found["bonded_between_volt"] <= found["apart_between_volt"] * slack + 1e-8
    assert found["bonded_between_body_wet"] <= found["apart_between_body_wet"] * slack + 1e-8


@settings(deadline=None, derandomize=True, max_examples=60)
@given(PATHS, draw.lists(OHM, min_size=2, max_size=4))
def test_more_ohms_in_the_bond_never_leave_less_between_the_parts(paths, bonds):
    ordered = sorted({each for each in bonds if float(each) <= 1000}, key=float)
    left = [values({}, **paths, bond_ohm=each)["bonded_between_volt"] for each in ordered]
    assert all(one <= other * (1 + 1e-9) + 1e-8 for one, other in itertools.pairwise(left))


@settings(deadline=None, derandomize=True, max_examples=60)
@given(PATHS)
def test_a_wet_body_takes_more_but_never_twice_and_none_more_than_ohms_law_allows(paths):
    found = values({}, **paths)
    for how in ("apart", "bonded"):
        for name in PAIRS:
            usual, wet, volt = (found[f"{how}_{name}_{key}"] for key in ("body", "body_wet", "volt"))
            assert usual <= wet * (1 + 1e-9) + 1e-8 and wet <= 2 * usual * (1 + 1e-9) + 1e-8
            assert usual <= volt * (1 + 1e-9) + 1e-8


@pytest.mark.parametrize(("neutral_volt", "kills"), [("9.99", False), ("10.01", True)])
def test_from_20_milliampere_breathing_may_stop(neutral_volt, kills):
    """Wet, 500 ohm: 10 V straight from a stiff neutral are 20 mA."""
    said = spoken(between(STRAY, neutral_volt=neutral_volt, one_neutral_ohm="0.0001"))
    assert ("breathing may stop" in said) == kills and "can kill" in said


@pytest.mark.parametrize("base", [LEAK, STRAY])
def test_water_and_livestock_are_warned_of(base):
    assert any("livestock" in str(each) for each in between(base).trace.warnings)


@pytest.mark.parametrize("neutral_volt", ["0.9", "4.49", "60", "277"])
def test_across_a_stiff_source_a_body_takes_what_shock_limits_gives(neutral_volt):
    found = values(STRAY, neutral_volt=neutral_volt, one_neutral_ohm="0.0001", two_earth_ohm="0.0001")
    for who, condition in (("wet", "water-wet"), ("bare", "dry")):
        shock = shock_limits(edition="2023", voltage=neutral_volt, path="hand-feet", condition=condition).answer.values
        for share in ("few", "most"):
            expected = shock[f"milliampere_{share}"]
            assert found[f"apart_between_milliampere_{who}_{share}"] == pytest.approx(expected, rel=2e-4)


def test_behind_a_weak_leak_a_body_takes_what_is_left_by_hand():
    """54.57 V behind 12 and 10 kilohm side by side; under 25 V a body has 0.5 of 4100 wet, 0.75 of 6100 dry."""
    found = values(neutral_ohm="0")
    volt, before = 120 * 10 / 22, 12e3 * 10e3 / 22e3
    by_hand = {
        "wet_few": 0.5 * 4100, "wet_most": 500, "bare_few": 0.75 * 6100, "bare_most": 0.75 * 1750,
        "shod_few": 0.75 * 6100 + 1000, "shod_most": 0.75 * 1750,
    }  # fmt: skip
    for who, ohm in by_hand.items():
        assert found[f"apart_between_milliampere_{who}"] == pytest.approx(1000 * volt / (before + ohm), rel=1e-4)


@pytest.mark.parametrize(
    ("neutral_volt", "meaning"),
    [("0.2", "Hardly felt"), ("2.9", "It is felt"), ("4.49", "Some cannot let go"), ("12", "It can kill")],
)
def test_a_small_voltage_is_told_with_what_it_does_to_a_body(neutral_volt, meaning):
    """Over 500 ohm: 0.4, 5.8, 9 and 24 mA, against 0.5 (felt), 6 (let go) and 20 mA (breathing)."""
    answer = between(STRAY, neutral_volt=neutral_volt, one_neutral_ohm="0.0001", two_earth_ohm="0.0001").answer
    assert str(answer.detail).startswith(meaning) and "mA if wet" in str(answer.detail)


def test_parts_that_are_alike_and_both_live_are_not_told_as_harmless():
    """4 V through 500 ohm is 8 mA from either part to the earth, though nothing stands between the parts."""
    both = dict(cause="utility", neutral_volt="4", one_neutral_ohm="0.1", two_neutral_ohm="0.1")
    answer = between(both).answer
    assert "up to 4 V to earth" in str(answer.headline)
    assert str(answer.detail).startswith("Some cannot let go: up to 8 mA if wet.")


def test_a_poor_bond_is_told_with_what_it_leaves():
    # 120 V over 12,000 ohm, into 10,000 and 1,000 ohm side by side: 0.01 / (1/12000 + 1/10000 + 1/1000) = 8.45 V.
    poor = [str(words) for words in between(bond_ohm="1000").trace.warnings]
    sound = [str(words) for words in between().trace.warnings]
    assert any(words.startswith("With a bond of 1,000 ohm, 8.4") for words in poor)
    assert any(words.startswith("With a bond of 0.01 ohm, less than 1 mV is left between the parts") for words in sound)


def test_the_answer_is_read_at_a_glance():
    for made in (between(), between(STRAY)):
        assert len(f"{made.answer.headline} {made.answer.detail}".split()) <= 40


def test_what_was_not_entered_is_named_in_the_answer():
    assert "120 V to neutral drives the leak, and the neutral has 10 ohm" in str(between().trace.notes[0])
    assert any("bond of 0.01 ohm" in str(words) for words in between(STRAY).trace.warnings)
    assert between(voltage="277").answer.values["milliampere_worst"] > values()["milliampere_worst"]


@settings(deadline=None, derandomize=True, max_examples=15)
@given(PATHS)
def test_the_wet_take_the_most_and_shoes_never_add(paths):
    found = values({}, **paths)
    for share in ("few", "most"):
        shod, bare, wet = (found[f"apart_between_milliampere_{who}_{share}"] for who in ("shod", "bare", "wet"))
        assert shod <= bare * (1 + 1e-6) + 1e-7 and bare <= wet * (1 + 1e-6) + 1e-7
