"""The drawn circuit: what another program computes, arithmetic by hand, what each bond is for, and bad input."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import EDITIONS, take_a_bond_away
from calc.fault.scene.scene import PARTS, Scene, solved_scene
from calc.fault.scene.scene_words import ADDED_WORDS, BOND_WORDS
from calc.permalink import read, write
from tests.cases.read import cases, named

CASES = "fault/scene/take_a_bond_away"


def watched(edition="2023", **inputs):
    result = take_a_bond_away(edition=edition, **inputs)
    assert result.outcome == "answer", result.fix
    return result


def values(**inputs):
    return watched(**inputs).answer.values


def warnings(**inputs):
    return " ".join(str(words) for words in watched(**inputs).trace.warnings)


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_voltages_and_currents_are_those_of_another_program(pair):
    edition, case = pair
    found = watched(edition, **case["inputs"]).answer.values
    assert found["verdict"] == case["verdict"]
    assert set(found["volts"]) == set(case["volt"]) == set(PARTS)
    for part, volt in case["volt"].items():
        assert found["volts"][part] == pytest.approx(volt, rel=1e-3, abs=2e-3), part
    for branch, ampere in case["ampere"].items():
        assert found["currents"].get(branch, 0) == pytest.approx(ampere, rel=1e-3, abs=2e-3), branch


def test_the_current_of_a_bonded_machine_is_the_source_over_the_loop_added_up_by_hand():
    """Source, supply, feeder and branch out; 12, 10 AWG and the jumper back; supply neutral home. Table 9 by hand."""
    resistance = 0.010368 + 0.012 + 0.0245 + 0.1 + 0.001 + 0.1 + 0.06 + 0.0005 + 0.012
    reactance = 0.0110592 + 0.003225 + 0.00255 + 0.0027 + 0.0027 + 0.0025 + 0.003225
    assert values()["fault_ampere"] == pytest.approx(120 / abs(complex(resistance, reactance)), rel=1e-3)


def bench(**changes):
    """The circuit of the reference list: 75 ft of supply, 100 ft of 12 AWG, no feeder; rod 25 ohm, pole 10 ohm."""
    runs = {"supply-hot-a": 0.011925 + 0.003225j, "supply-neutral": 0.011925 + 0.003225j, "branch-hot": 0.2 + 0.0054j}
    runs |= {"supply-hot-b": 0.011925 + 0.003225j, "feeder-hot-a": 0, "feeder-hot-b": 0, "feeder-neutral": 0}
    bonds = {"main-bonding-jumper": 0.0005, "supply-side-bonding-jumper": 0.0005}
    bonds |= {"feeder-grounding-conductor": 0, "branch-grounding-conductor": 0.2 + 0.0054j}
    electrodes = {"source-electrode": 10, "service-electrode": 25}
    given = dict(volt=120, source=0.010368 + 0.0110592j, degrees=180, runs=runs, bonds=bonds, electrodes=electrodes)
    given |= dict(loads={}, fault="machine")
    for name, value in changes.items():
        place, key = name.split("__") if "__" in name else (name, None)
        given[place] = given[place] | {key.replace("_", "-"): value} if key else value
    return solved_scene(Scene(**given))


@pytest.mark.parametrize(
    ("changes", "ampere", "volt"),
    [
        ({}, 275.5, 57.6),
        ({"touched": "machine", "person": 1000}, 275.5, 57.2),
        (
            {
                "bonds__main_bonding_jumper": None,
                "electrodes__service_electrode": None,
                "electrodes__electrode_on_enclosure": 25,
            },
            3.39,
            85.4,
        ),
        ({"bonds__main_bonding_jumper": None}, 0, 120),
        ({"bonds__branch_grounding_conductor": None, "electrodes__machine_electrode": 25}, 3.71, 92.7),
        ({"bonds__flexible_raceway": 0.05 + 0.03j}, 428.7, 23.7),
    ],
    ids=["bonded", "touched", "electrode on the enclosure", "nothing", "rod at the machine", "wire and raceway"],
)
def test_the_bench_network_of_the_reference_list(changes, ampere, volt):
    """Figures of the list in the comparison of ngspice and nodal analysis, rounded there."""
    solved = bench(**changes)
    assert abs(solved.currents["fault"]) == pytest.approx(ampere, rel=0.006, abs=0.01)
    assert abs(solved.voltages["machine"]) == pytest.approx(volt, rel=0.02)


def test_parallel_currents_add_as_phasors_and_not_as_magnitudes():
    solved = bench(bonds__flexible_raceway=0.05 + 0.03j)
    wire, raceway = solved.currents["branch-grounding-conductor"], solved.currents["flexible-raceway"]
    assert abs(wire + raceway) == pytest.approx(abs(solved.currents["fault"]), rel=1e-3)
    assert abs(wire) + abs(raceway) > 1.01 * abs(solved.currents["fault"])


def test_a_bonded_machine_still_has_about_half_the_voltage_whatever_the_length():
    for feet in (50, 200, 1000, 2000):
        found = values(branch_length=feet, feeder_length=1, supply_length=1)
        assert 0.42 * 120 < found["volts"]["machine"] < 0.55 * 120


def test_without_the_main_bonding_jumper_all_metal_takes_the_source_voltage_and_nothing_opens():
    result = watched(missing="main-bonding-jumper")
    assert str(result.answer.headline) == "No breaker opens"
    for part in ("supply-raceway", "service", "panel", "machine"):
        assert result.answer.values["volts"][part] == pytest.approx(120, abs=0.1)
    assert "The metal stays live: 120 V to earth" in warnings(missing="main-bonding-jumper")


def test_a_rod_instead_of_the_grounding_path_opens_nothing_and_the_person_is_told():
    inputs = dict(missing="branch-return", added="machine-electrode", touched="machine")
    assert values(**inputs)["verdict"] == "does-not-open"
    assert "92.4 mA through the person: it can kill" in warnings(**inputs)


def test_metal_that_rises_by_less_than_is_shown_is_never_told_at_nothing():
    """With the feeder neutral open nothing joins the loads to metal; only the neutral ahead of the service lifts it."""
    lost = str(watched(fault="none", missing="feeder-neutral", loads="on").answer.detail)
    assert "under 0.01 V to earth" in lost and " 0 V" not in lost


def test_a_current_through_a_person_is_told_with_what_it_does():
    """119 V over 1000 ohm against 0.131 V over 1000 ohm: 0.13 mA is under the 0.5 mA that people feel."""
    assert "119 mA through the person: it can kill" in warnings(missing="branch-return", touched="machine")
    assert "mA through the person: it is hardly felt" in warnings(fault="none", loads="on", touched="machine")


def test_a_second_neutral_bond_puts_neutral_current_on_metal_without_any_fault():
    assert "4.25 A of neutral current flows on metal" in warnings(
        fault="none", added="neutral-bond-at-panel", loads="on"
    )
    assert "neutral current" not in warnings(fault="none", loads="on")


def test_an_open_neutral_lifts_the_metal_without_any_fault():
    told = warnings(fault="none", missing="supply-neutral", loads="on")
    assert "Even with no fault, there is 45 V to earth on" in told


def test_a_lost_neutral_tells_the_voltage_of_both_legs_and_what_comes_first():
    """ngspice, case open-neutral: 7.61319 A through 24 ohm is 182.7 V, 9.41422 A through 6 ohm 56.5 V."""
    for loads in ("on", "off"):
        result = watched(fault="none", missing="supply-neutral", loads=loads)
        legs = result.answer.values["leg_volts"]
        assert legs["lighter"] == pytest.approx(182.72, abs=0.05) and legs["heavier"] == pytest.approx(56.49, abs=0.05)
        assert str(result.answer.headline) == "No fault, but a lost neutral"
        assert "183 V on the lighter leg and 56.5 V on the heavier" in str(result.answer.detail)
        assert "45 V" in str(result.answer.detail)
        said = " ".join(map(str, result.trace.warnings))
        assert "Turn the power off first, then repair the neutral. Open no bond before that" in said
    loose = watched(fault="none", loose="feeder-neutral", loose_ohm=1)
    assert str(loose.answer.headline) == "No fault, but a loose neutral"
    assert 125 < loose.answer.values["leg_volts"]["lighter"] < 183
    assert "lighter leg" in str(watched(missing="feeder-neutral").answer.detail), "with a fault as well"


def test_with_a_sound_neutral_nothing_is_said_of_the_legs():
    sound = ({}, {"fault": "none", "loads": "on"}, {"missing": "main-bonding-jumper"}, {"loose": "branch-return"})
    for inputs in sound:
        result = watched(**inputs)
        assert result.answer.values["leg_volts"] is None and "leg" not in str(result.answer.detail)


def test_a_person_who_is_the_path_is_named_beside_the_current():
    """119.1 V through 1000 ohm and both electrodes is 0.12 A; without a touch next to nothing flows, at 120 V."""
    touched = str(watched(missing="main-bonding-jumper", touched="machine").answer.detail)
    assert touched == (
        "0.12 A of fault current; highest: 119 V to earth on the machine; a person of 1,000 ohm is in the circuit"
    )
    alone = str(watched(missing="main-bonding-jumper").answer.detail)
    assert alone == "Fault current under 0.01 A; highest: 120 V to earth on the machine"


def test_the_electrodes_of_the_scene_are_named():
    notes = " ".join(str(words) for words in watched(electrode_ohm=40).trace.notes)
    assert "the one at the first disconnect 40 ohm" in notes


def test_a_probable_opening_gives_the_time_that_its_standard_allows():
    assert "the breaker's standard allows 2 min" in str(watched().answer.detail)


@pytest.mark.parametrize("fault", ["service", "supply-raceway"])
def test_ahead_of_the_first_device_nothing_here_opens(fault):
    result = watched(fault=fault)
    assert str(result.answer.headline) == "No breaker here opens"
    assert "Ahead of the first device, nothing in the building opens this fault" in warnings(fault=fault)


def test_a_loose_raceway_leaves_the_wire_beside_it_tight():
    both = values(feeder_path="both")
    loose = values(feeder_path="both", loose="feeder-return", loose_ohm=1000)
    wire = values(feeder_path="wire")
    assert loose["fault_ampere"] == pytest.approx(wire["fault_ampere"], rel=1e-3)
    assert loose["fault_ampere"] < both["fault_ampere"]


def test_what_is_missing_is_gone_even_if_it_is_called_loose_too():
    gone = values(missing="main-bonding-jumper")
    assert values(missing="main-bonding-jumper", loose="main-bonding-jumper") == gone


@settings(max_examples=60, deadline=None)
@given(
    draw.sampled_from(["machine", "panel", "buried-elbow", "service", "supply-raceway"]),
    draw.sets(draw.sampled_from(list(BOND_WORDS))),
    draw.sets(draw.sampled_from([name for name in ADDED_WORDS if name != "electrode-on-enclosure"])),
    draw.integers(1, 2000),
)
def test_taking_the_main_bonding_jumper_away_never_raises_the_fault_current(fault, missing, added, feet):
    inputs = dict(fault=fault, added=",".join(sorted(added)) or None, branch_length=feet)
    without = values(**inputs, missing=",".join(sorted(missing | {"main-bonding-jumper"})))
    with_it = values(**inputs, missing=",".join(sorted(missing - {"main-bonding-jumper"})) or None)
    assert without["fault_ampere"] <= with_it["fault_ampere"] * (1 + 1e-6) + 1e-9


@settings(max_examples=40, deadline=None)
@given(draw.integers(1, 1999), draw.integers(1, 1999), draw.integers(1, 1999))
def test_a_longer_run_never_gives_more_fault_current(supply, feeder, branch):
    here = values(supply_length=supply, feeder_length=feeder, branch_length=branch)["fault_ampere"]
    for longer in ("supply_length", "feeder_length", "branch_length"):
        lengths = dict(supply_length=supply, feeder_length=feeder, branch_length=branch)
        assert values(**(lengths | {longer: lengths[longer] + 1}))["fault_ampere"] < here


@pytest.mark.parametrize("fault", ["none", *PARTS])
@pytest.mark.parametrize("source", ["utility", "transformer"])
def test_every_bond_taken_away_at_once_still_has_an_answer(fault, source):
    every = dict(missing=",".join(BOND_WORDS), added=",".join(ADDED_WORDS), loads="on", touched="machine")
    assert values(fault=fault, source=source, **every)["verdict"] in ("no-fault", "does-not-open")


@pytest.mark.parametrize(
    ("field", "typed"),
    [
        ("loose_ohm", "0"),
        ("loose_ohm", "-1"),
        ("loose_ohm", "1001"),
        ("person_ohm", "99"),
        ("electrode_ohm", "0.09"),
        ("branch_length", "0"),
        ("feeder_length", "1e9 ft"),
        ("supply_length", "long"),
        ("fault", "neighbour"),
        ("touched", "buried-elbow"),
        ("missing", "main-bonding-jumper,main-bonding-jumper"),
        ("added", "luck"),
        ("source", "battery"),
    ],
)
def test_bad_input_names_its_field(field, typed):
    result = take_a_bond_away(edition="2023", **{field: typed})
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize(("field", "ends"), [("loose_ohm", (0.001, 1000)), ("branch_length", (1, 2000))])
def test_the_ends_of_a_range_are_still_in_it(field, ends):
    for value in ends:
        assert watched(loose="feeder-return", **{field: value}).inputs[field] == value


def test_metres_are_read_as_feet():
    assert values(branch_length="15.24 m") == values(branch_length="50 ft")


@pytest.mark.parametrize("edition", EDITIONS)
def test_every_answer_is_called_a_model_and_sends_device_decisions_to_the_curve(edition):
    notes = " ".join(str(words) for words in watched(edition).trace.notes)
    for words in ("model for teaching and checking", "Assumed:", "published curve", "qualified person", "75 °C"):
        assert words in notes


def test_the_working_names_every_impedance_with_the_rule_it_comes_from():
    result = watched(feeder_path="both", branch_path="both")
    cited = {rule.key for rule in result.trace.citations}
    assert {
        "conductors/resistance_in_raceway",
        "raceways/steel_as_return",
        "fault/flexible_raceway_resistance",
        "fault/half_winding",
        "fault/breaker_holds",
    } <= cited


def test_the_charts_show_what_the_values_hold():
    answer = watched(missing="branch-return", added="machine-electrode").answer
    bars, time_current = answer.charts
    assert [up for _, up in bars.lines[0].points] == pytest.approx(list(answer.values["volts"].values()), abs=0.01)
    fault = next(line for line in time_current.lines if str(line.words) == "The fault current")
    assert [across for across, _ in fault.points] == pytest.approx([answer.values["fault_ampere"]] * 2, rel=1e-4)


def test_a_current_too_small_for_the_picture_is_left_out_of_it_and_told_in_its_title():
    _, time_current = watched(missing="main-bonding-jumper", touched="machine").answer.charts
    assert "The fault current" not in [str(line.words) for line in time_current.lines]
    assert str(time_current.title) == "20 A breaker of the branch circuit, 0.12 A through it"


def test_a_link_gives_the_same_scene_again():
    first = watched(
        "2020", fault="panel", missing="feeder-return", added="neutral-bond-at-panel,machine-electrode", loose_ohm="2.5"
    )
    again = take_a_bond_away.run(read(write(first).partition("?")[2]))
    assert again.inputs == first.inputs and again.answer == first.answer and again.answer_code == first.answer_code
