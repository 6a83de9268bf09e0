"""Current on metal: worked cases, circuits whose cause is known, every boundary, and what it must say first."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import EDITIONS, clamp_reading
from calc.measure.clamp_causes import CAUSES, USUAL_ORDER
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.circuit_simulator import simulated_voltages

CASES = "measure/clamp_reading"
PLACES = tuple(USUAL_ORDER)
KNOWN = ("yes", "no", "unknown")
BROKEN, OFF, BOND = 1e7, 1e9, 0.001
SERVICE = {"where": "water-pipe-bond", "ampere": "5"}
CIRCUIT = {"where": "equipment-grounding-conductor", "ampere": "0.01"}


def told(base=SERVICE, edition="2023", **changed):
    return clamp_reading(edition=edition, **(base | changed))


def causes(base=SERVICE, **changed):
    return told(base, **changed).answer.values["causes"]


def spoken(result):
    return " ".join(map(str, [*result.trace.warnings, *result.trace.notes]))


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    assert clamp_reading(edition=edition, **case["inputs"]).answer_code == case["said"], case["reason"]


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


def two_houses(own_load, own_neutral, neighbor_load, neighbor_neutral):
    """A transformer, two houses and a metal water main of 10 milliohm between them."""
    branches = [
        ("ownload", "hot", "na", own_load), ("ownneutral", "na", "E", own_neutral), ("ownbond", "na", "ga", BOND),
        ("main", "ga", "gb", 0.01), ("bondb", "gb", "nb", BOND), ("neutralb", "nb", "E", neighbor_neutral),
        ("loadb", "hot", "nb", neighbor_load),
    ]  # fmt: skip
    return branches, [("supply", "hot", "E", 120, 0.01)], []


def simulated_readings(own_neutral, neighbor_load, neighbor_neutral):
    """Ampere on the own water pipe bond, with the own 20 A load on and off."""
    circuits = [two_houses(load, own_neutral, neighbor_load, neighbor_neutral) for load in (6, OFF)]
    return [abs(volts["na"] - volts["ga"]) / BOND for volts in simulated_voltages(circuits)]


def clamped(on, off):
    return causes(SERVICE, ampere=f"{on:.4f}", off_ampere=f"{off:.4f}", empty="0.02", water_main="yes")


def test_a_circuit_with_the_own_neutral_broken_is_told_as_such():
    on, off = simulated_readings(BROKEN, 6, 0.012)
    assert on > 19 and off < 0.001
    assert clamped(on, off)[0] == "neutral-loss"


def test_a_circuit_with_the_neighbors_neutral_broken_is_told_as_such():
    on, off = simulated_readings(0.012, 6, BROKEN)
    assert on > 19 and off > 19
    assert clamped(on, off)[0] == "neighbor"


def test_a_circuit_with_sound_neutrals_and_a_shared_main_names_it_after_the_neutral():
    """The bench network of two houses: 6.76 A of 19.94 A go over the main."""
    on, off = simulated_readings(0.012 + 0.003j, OFF, 0.012 + 0.003j)
    assert on == pytest.approx(6.76, rel=0.01)
    assert clamped(on, off)[:2] == ["neutral-loss", "shared-main"]


def test_a_circuit_whose_houses_cancel_reads_nothing_and_that_is_said():
    on, _ = simulated_readings(0.012, 6, 0.012)
    assert on < 1e-6
    assert "may cancel" in spoken(told(ampere="0.001"))


def test_in_a_circuit_with_a_second_bond_feeder_and_grounding_conductor_show_the_same():
    """The bench network, 4 and 8 AWG over 100 ft: the grounding conductor takes 5.62 A of 19.8 A."""
    wire, bare = 0.031 + 0.0048j, 0.078 + 0.0052j
    branches = [
        ("feed", "l1", "l2", wire), ("load", "l2", "n2", 6), ("neutral", "n2", "E", wire),
        ("egc", "g2", "E", bare), ("bond", "g2", "n2", BOND),
    ]  # fmt: skip
    (volts,) = simulated_voltages([(branches, [("supply", "l1", "E", 120, 0.01 + 0.01j)], [])])
    hot, neutral, grounding = (volts["l1"] - volts["l2"]) / wire, volts["n2"] / wire, volts["g2"] / bare
    assert abs(grounding) == pytest.approx(5.62, rel=0.002)
    assert abs(hot - neutral) == pytest.approx(abs(grounding), rel=1e-6)
    for where, ampere in (("feeder-together", hot - neutral), ("equipment-grounding-conductor", grounding)):
        assert told(
            where=where, ampere=f"{abs(ampere):.4f}", follows_load="yes", off_ampere="0"
        ).answer_code.startswith(
            "second-bond-5.6"
        )


def test_a_circuit_that_leaks_does_not_follow_its_load():
    """12 kilohm from hot to a sound grounding conductor: 10 mA with the load on and off."""
    found = []
    for load in (6, OFF):
        branches = [("load", "hot", "E", load), ("leak", "hot", "case", 12_000), ("egc", "case", "E", 0.078)]
        (volts,) = simulated_voltages([(branches, [("supply", "hot", "E", 120, 0.01)], [])])
        found.append(abs(volts["case"]) / 0.078)
    assert found[0] == pytest.approx(found[1], rel=0.01)
    assert causes(CIRCUIT, ampere=f"{found[0]:.6f}", follows_load="no", appliances="0")[0] == "leak"


@pytest.mark.parametrize("where", PLACES)
def test_without_a_further_reading_the_usual_order_stands(where):
    assert tuple(causes(where=where)) == USUAL_ORDER[where]


@pytest.mark.parametrize("where", PLACES)
def test_every_cause_says_what_to_measure_and_what_that_tells(where):
    rows = told(where=where).answer.table.rows
    assert len(rows) == len(USUAL_ORDER[where])
    assert all(str(row.cells[each]) for row in rows for each in ("cause", "measure", "tells"))
    assert set(CAUSES) == {key for keys in USUAL_ORDER.values() for key in keys}


@pytest.mark.parametrize(
    ("ampere", "verdict"), [("0.0499", "cannot-tell"), ("0.05", "cannot-tell"), ("0.0501", "real")]
)
def test_what_the_jaws_show_on_nothing_is_no_current_of_this_conductor(ampere, verdict):
    for edition in EDITIONS:
        values = told(edition=edition, ampere=ampere, empty="0.05").answer.values
        assert values["verdict"] == verdict
        assert (values["causes"][0] == "meter") == (verdict == "cannot-tell")


def test_the_range_takes_in_digit_and_percent():
    """2 percent of 1 A, a digit of 0.01 and 0.02 on nothing: 0.95 to 1.05."""
    values = told(ampere="1", empty="0.02", digit="0.01", meter_percent="2").answer.values
    assert (values["ampere_low"], values["ampere_high"]) == pytest.approx((0.95, 1.05))


@pytest.mark.parametrize(
    ("ampere", "first"), [("0.00699", "filters"), ("0.007", "filters"), ("0.00701", "leak")]
)
def test_two_appliances_explain_7_milliampere_and_no_more(ampere, first):
    assert causes(CIRCUIT, ampere=ampere, appliances="2")[0] == first


@pytest.mark.parametrize(("ampere", "count"), [("0.0035", 1), ("0.0036", 2), ("0.007", 2), ("1", 286)])
def test_it_tells_how_many_appliances_it_would_take(ampere, count):
    """Each may have 3.5 mA."""
    assert told(CIRCUIT, ampere=ampere).answer.values["appliances_for_filters"] == count


def test_filters_explain_nothing_that_stays_with_the_circuit_off():
    assert causes(CIRCUIT, ampere="0.003", appliances="10")[0] == "filters"
    assert causes(CIRCUIT, ampere="0.003", appliances="10", off_ampere="0.003")[-2] == "filters"


@pytest.mark.parametrize("where", ["feeder-together", "equipment-grounding-conductor"])
@pytest.mark.parametrize(
    ("ampere", "first"),
    [("0.001", "filters"), ("0.035", "filters"), ("0.0351", "second-bond"), ("4", "second-bond")],
)
def test_a_few_milliampere_send_nobody_to_look_for_a_second_bond_first(where, ampere, first):
    """Ten appliances of 3.5 mA bring 35 mA with nothing wrong; amperes they do not bring."""
    for follows in ("unknown", "no") if first == "filters" else ("unknown",):
        found = causes(where=where, ampere=ampere, follows_load=follows)
        assert found[0] == first
    assert causes(where=where, ampere=ampere, follows_load="yes")[0] == first


@pytest.mark.parametrize("where", ["electrode-conductor", "water-pipe-bond"])
def test_what_stays_with_the_main_off_is_reported_and_nothing_is_opened(where):
    for off, reported in (("5", True), ("3", True), ("0", False), (None, False)):
        detail = str(told(where=where, off_ampere=off).answer.detail)
        assert ("report it to the utility, and open nothing" in detail) == reported


@pytest.mark.parametrize("where", ["feeder-together", "equipment-grounding-conductor"])
def test_what_stays_with_its_own_device_off_is_told_as_live(where):
    """Switched off is not dead where other circuits or sources put current on this metal."""
    for off, live in (("5", True), ("3", True), ("0", False), (None, False)):
        detail = str(told(where=where, off_ampere=off).answer.detail)
        assert ("treat this metal and its neutral as live" in detail) == live


def test_a_part_that_stays_does_not_make_all_of_it_come_from_outside():
    part, whole = (str(told(where="water-pipe-bond", off_ampere=off).answer.detail) for off in ("1", "5"))
    assert "Part of it stays with the main off, from outside" in part and "so it comes from outside" in whole


def test_a_little_that_stays_does_not_turn_the_eye_from_the_own_neutral():
    """20 mA of 2.6 A may be the meter: the larger part is of this building."""
    for off, first in (("0.02", "neutral-loss"), ("1.29", "neutral-loss"), ("1.3", "neighbor"), ("2.6", "neighbor")):
        assert causes(ampere="2.6", off_ampere=off)[0] == first


@pytest.mark.parametrize("where", PLACES)
def test_a_joint_is_taken_out_only_after_the_neutral_is_seen_whole_and_with_the_supply_off(where):
    said = [str(row.cells["tells"]) for row in told(where=where).answer.table.rows]
    advice = next(words for words in said if "second bond" in words)
    assert advice.index("neutral and grounding path are intact") < advice.index("Take it out only de-energized")
    assert "only de-energized, locked out and tested for absence of voltage" in advice


def test_without_a_shared_main_no_neighbor_is_named():
    found = causes(water_main="no", off_ampere="5")
    assert "neighbor" not in found and "shared-main" not in found and found[0] == "utility"


def test_part_of_it_from_outside_leaves_the_own_neutral_next():
    found = causes(off_ampere="3")
    assert found[:3] == ["neighbor", "utility", "neutral-loss"]


def test_what_stays_with_a_feeder_off_is_put_there_by_others():
    assert causes(where="feeder-together", off_ampere="5")[:2] == ["second-bond", "borrowed-neutral"]
    assert causes(where="equipment-grounding-conductor", off_ampere="5")[:2] == ["second-bond", "induction"]


@pytest.mark.parametrize("where", PLACES)
@pytest.mark.parametrize("off", [None, "0", "5"])
def test_every_answer_says_first_never_to_open_it_and_what_a_tingle_means(where, off):
    first = str(told(where=where, off_ampere=off).trace.warnings[0])
    assert first.startswith("Never open this conductor") and "tingle" in first and "call the utility" in first
    assert "power off from a dry place" in first


@pytest.mark.parametrize("where", PLACES)
def test_a_neutral_that_may_be_lost_and_a_pipe_are_warned_of(where):
    said = spoken(told(where=where))
    at_the_service = where in ("electrode-conductor", "water-pipe-bond")
    assert ("Check the voltages first" in said) == ("cuts or opens the water pipe" in said) == at_the_service


@pytest.mark.parametrize(
    ("changed", "field"),
    [
        ({"where": "roof"}, "where"), ({"ampere": "0"}, "ampere"), ({"ampere": "-1"}, "ampere"),
        ({"ampere": "1e9"}, "ampere"), ({"ampere": "5 V"}, "ampere"), ({"ampere": None}, "ampere"),
        ({"empty": "-1"}, "empty"), ({"off_ampere": "x"}, "off_ampere"), ({"follows_load": "no idea"}, "follows_load"),
        ({"water_main": "maybe"}, "water_main"), ({"appliances": "2.5"}, "appliances"), ({"digit": "-1"}, "digit"),
        ({"meter_percent": "51"}, "meter_percent"),
    ],
)  # fmt: skip
def test_what_cannot_be_is_named(changed, field):
    result = told(**changed)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def test_a_link_restores_the_answer_of_a_small_current():
    result = told(CIRCUIT, ampere="12 mA", empty="50 uA", off_ampere="0")
    again = clamp_reading.run(read(write(result).partition("?")[2]))
    assert again.answer == result.answer and result.answer_code.endswith("-0.012-ampere")


@settings(deadline=None, derandomize=True)
@given(
    draw.sampled_from(PLACES), draw.floats(0.001, 50), draw.none() | draw.floats(0, 50),
    draw.none() | draw.floats(0, 1), draw.sampled_from(KNOWN), draw.sampled_from(KNOWN),
)  # fmt: skip
def test_no_reading_drops_a_cause_but_those_of_a_main_that_is_not_there(where, ampere, off, empty, follows, main):
    written = {
        name: None if value is None else f"{value:.6f}" for name, value in (("off_ampere", off), ("empty", empty))
    }
    found = causes(where=where, ampere=f"{ampere:.6f}", follows_load=follows, water_main=main, **written)
    gone = {"neighbor", "shared-main"} if main == "no" else set()
    assert set(found) == set(USUAL_ORDER[where]) - gone and found.index("meter") in (0, len(found) - 1)


@pytest.mark.parametrize("main", KNOWN)
def test_what_goes_with_the_main_off_is_no_neighbors_and_not_the_utilitys(main):
    found = causes(off_ampere="0", follows_load="no", water_main=main)
    assert found[0] == "leak" and found.index("neutral-loss") < found.index("utility")
    assert main == "no" or found.index("neutral-loss") < found.index("neighbor")


@pytest.mark.parametrize("where", PLACES)
def test_every_answer_tells_the_signs_at_which_the_power_is_shut_off_at_once(where):
    assert "Lights that brighten and dim" in spoken(told(where=where))
