"""Neutral current on metal: the worked networks, and what a broken neutral hides."""

import pytest

from calc.fault.stray.stray_neutral_current import stray_neutral_current
from tests.cases.read import cases, named

BASE = dict(edition="2023", load=20, neutral="4", length=100, grounding_conductor="8")


@pytest.mark.parametrize("pair", cases("fault/stray/stray_neutral_current"), ids=named)
def test_a_worked_network_has_the_currents_of_the_other_program(pair):
    edition, case = pair
    values = stray_neutral_current(edition=edition, **case["inputs"]).answer.values
    for name, ampere in case["ampere"].items():
        assert values[name] == pytest.approx(ampere, rel=0.02, abs=1e-6)
    if "volt" in case:
        assert values["metal_volt"] == pytest.approx(case["volt"], rel=0.02)


def test_two_houses_share_the_neutral_current_by_their_ways_back():
    """Neutrals z each, main r, two bonds b: the neighbor's way has z + r + 2b, so it carries z / (2z + r + 2b)."""
    values = stray_neutral_current(
        edition="2023", where="shared-water-main", load=20, neutral="2/0", metal="aluminum", length=75, pipe=0.01
    ).answer.values
    z = 75 * complex(0.159, 0.043) / 1000  # 2/0 aluminum in nonmetallic conduit, 0.16 and 0.043 ohm to 1000 ft
    share = abs(z / (2 * z + 0.012))
    assert values["pipe_ampere"] == pytest.approx(share * 20, rel=0.02)


def test_with_the_neutral_broken_all_of_it_is_on_metal():
    values = stray_neutral_current(**BASE, neutral_open="yes").answer.values
    assert values["neutral_ampere"] == 0
    assert values["metal_ampere"] == pytest.approx(20, rel=0.02)


def test_a_better_metal_path_never_takes_less_current():
    taken = [stray_neutral_current(**BASE, pipe=ohm).answer.values["metal_ampere"] for ohm in (10, 1, 0.1, 0.01, 0.001)]
    assert taken == sorted(taken)


def test_the_magnitudes_of_the_paths_add_to_no_less_than_the_load():
    values = stray_neutral_current(**BASE, pipe=0.05).answer.values
    assert values["neutral_ampere"] + values["metal_ampere"] >= 19.7


@pytest.mark.parametrize(
    ("inputs", "field"),
    [(dict(load=0), "load"), (dict(length=0), "length"), (dict(length="1e9"), "length"), (dict(pipe=-1), "pipe"),
     (dict(neutral="5/0"), "neutral"), (dict(where="moon"), "where")],
)  # fmt: skip
def test_bad_input_is_named_to_be_fixed(inputs, field):
    result = stray_neutral_current(**(BASE | inputs))
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize(
    "inputs", [dict(grounding_conductor=None), dict(where="shared-water-main"), dict(neutral="2000kcmil")]
)
def test_a_case_without_a_way_over_metal_says_so(inputs):
    assert stray_neutral_current(**(BASE | inputs)).outcome == "not_covered"


def told(**inputs):
    result = stray_neutral_current(**inputs)
    answer = result.answer
    lists = [answer.headline, answer.detail, *result.trace.warnings, *result.trace.notes]
    return " ".join(map(str, lists))


def test_a_broken_neutral_says_supply_off_and_the_neutral_first_and_a_sound_one_takes_the_bond_out_dead():
    broken, sound = (told(**BASE, neutral_open=each) for each in ("yes", "no"))
    assert "Power off first, then repair the neutral" in broken and "Do not open the second bond" in broken
    assert broken.index("repair the neutral") < broken.index("Take the second bond out")
    assert "only with the neutral repaired and the power still off" in broken
    assert "Power off first" not in sound and "Do not open" not in sound
    dead = "with the power off, locked out and tested for absence of voltage"
    assert f"Take the second bond out {dead}: it carries 5.66 A" in sound
    for words in (broken, sound):
        assert "twice the voltage in a fault" in words


def test_a_broken_neutral_with_a_poor_path_names_every_voltage_and_never_calls_it_little():
    """4 ohm of load and 10 ohm of pipe on 120 V: 8.57 A, 85.7 V on the metal; 120 + 85.7 V on the other leg."""
    poor = dict(edition="2023", load=30, neutral="4", length=100, pipe=10, neutral_open="yes")
    words, values = told(**poor), stray_neutral_current(**poor).answer.values
    assert values["metal_volt"] == pytest.approx(120 * 10 / 14, rel=1e-3)
    assert values["break_volt"] == pytest.approx(120 * 10 / 14, rel=1e-3)
    assert values["load_volt"] == pytest.approx(120 * 4 / 14, rel=1e-3)
    assert values["other_leg_volt"] == pytest.approx(120 + 120 * 10 / 14, rel=1e-3)
    assert "85.7 V on the metal, 85.7 V across the break; up to 206 V on the other leg of a 120/240 V supply" in words
    for wrong in ("only 85.7 V", "everything still works", "check misses"):
        assert wrong not in words


def test_the_gap_of_an_opened_bond_has_the_whole_voltage_with_the_neutral_broken_and_its_drop_without():
    """Open bond, sound neutral: 20 A in 100 ft of 4 AWG, 0.31 ohm in 1000 ft: 120 V x 0.0314 / 6.031 = 0.624 V."""
    assert stray_neutral_current(**BASE, neutral_open="yes").answer.values["gap_volt"] == 120
    sound = stray_neutral_current(**BASE).answer.values
    assert sound["gap_volt"] == pytest.approx(120 * abs(0.031 + 0.0048j) / abs(6.031 + 0.0048j), rel=0.003)
    assert sound["break_volt"] == 0
    assert "Opened live, it puts 120 V" in told(**BASE, where="shared-water-main", pipe=0.01, neutral_open="yes")


def test_a_water_main_that_carries_a_broken_neutral_is_never_opened_and_one_beside_a_sound_neutral_is_bridged_first():
    broken, sound = (told(**BASE, where="shared-water-main", pipe=0.2, neutral_open=each) for each in ("yes", "no"))
    assert "Do not open the water main" in broken and "pipe is cut" not in broken
    assert "put a jumper across before the pipe is cut" in sound and "Do not open" not in sound


def test_a_voltage_too_small_to_show_is_never_told_as_nothing():
    """0.1 A through a share of a few hundred microohm is microvolts; 30 A through 60 ft of 3 AWG a third of one."""
    small = dict(edition="2023", load=0.1, neutral="3/0", length=1, grounding_conductor="6")
    ordinary = dict(edition="2023", load=30, neutral="3", length=60, grounding_conductor="8")
    assert "with under 0.001 V on the metal" in told(**small)
    assert "with 0.339 V on the metal" in told(**ordinary)


def test_a_load_beyond_its_neutral_is_remarked_and_an_ordinary_one_is_not():
    """14 AWG copper carries 20 A at 75 °C, 4 AWG 85 A (Table 310.16)."""
    assert "1,000 A is more than 14 AWG copper carries, 20 A" in told(**(BASE | dict(load=1000, neutral="14")))
    assert "carries, 85 A" in told(**(BASE | dict(load=86))) and "carries, 85 A" not in told(**(BASE | dict(load=85)))


@pytest.mark.parametrize("where", ["second-bond", "shared-water-main"])
@pytest.mark.parametrize("pipe", [0.001, 0.05, 10, 1000])
def test_the_parts_of_the_voltage_add_up_and_stay_between_none_and_both_legs(where, pipe):
    for broken in ("yes", "no"):
        found = stray_neutral_current(**BASE, where=where, pipe=pipe, neutral_open=broken).answer.values
        assert 0 <= found["metal_volt"] <= 120 and 0 <= found["load_volt"] <= 120 and found["gap_volt"] <= 120
        assert 119.9 < found["other_leg_volt"] <= 240
        if broken == "yes":
            assert found["load_volt"] + found["break_volt"] >= 120 * (1 - 1e-9)
