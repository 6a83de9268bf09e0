"""A fall-of-potential test judged: worked cases, the physics of it, every boundary, and what it must say first."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import EDITIONS, measured_electrode
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.electrode_pieces import three_point_reading

CASES = "electrodes/measured_electrode"
LEVEL = {"isolated": "yes", "dimension": "8", "probe": "100", "distances": "50,61.8,70", "readings": "20,20.5,21"}


def measured(edition="2023", **changed):
    return measured_electrode(edition=edition, **(LEVEL | changed))


def rod(probe, shares=(0.2, 0.4, 0.5, 0.618, 0.7, 0.8)):
    """The readings of a rod of 8 ft and 39.9 ohm in 100 ohm·m, its current probe at `probe` ft."""
    readings = [three_point_reading(39.9, 100, 2.4384, probe * 0.3048, share) for share in shares]
    return {
        "probe": str(probe),
        "distances": ",".join(f"{share * probe:.4f}" for share in shares),
        "readings": ",".join(f"{ohm:.6f}" for ohm in readings),
    }


def to_mend(**changed):
    result = measured(**changed)
    assert result.outcome == "fix"
    return [each.field for each in result.fix]


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    assert measured_electrode(edition=edition, **case["inputs"]).answer_code == case["said"], case["reason"]


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


def test_the_second_route_has_the_figures_of_the_method_of_moments():
    """8 ft rod, current probe at 50 ft: 1.0005 of the true value at 61.8 percent, 0.975 half way."""
    at = [three_point_reading(39.9, 100, 2.4384, 15.24, share) / 39.9 for share in (0.618, 0.5)]
    assert at == pytest.approx([1.0005, 0.975], abs=0.0005)


@pytest.mark.parametrize("probe", [50, 80, 200])
def test_a_rod_read_far_enough_gives_its_true_resistance(probe):
    values = measured(**rod(probe)).answer.values
    assert values["verdict"] == "plateau" and values["ohm"] == pytest.approx(39.9, rel=0.002)


def test_a_rod_read_with_the_probe_at_25_ft_proves_nothing():
    assert measured(**rod(25)).answer.values["verdict"] == "too-near"
    # Told that the electrode is smaller than it is, the slope still gives it away.
    assert measured(**rod(15), dimension="1").answer.values["verdict"] == "no-plateau"


@pytest.mark.parametrize("probe", [25, 50, 200])
def test_the_place_does_not_depend_on_the_resistance(probe):
    assert measured(**rod(probe)).answer.values["place_ft"] == pytest.approx(0.618 * probe)


@pytest.mark.parametrize(("last", "verdict"), [("20.99", "plateau"), ("21", "plateau"), ("21.01", "no-plateau")])
def test_a_plateau_may_differ_by_5_percent_and_no_more(last, verdict):
    for edition in EDITIONS:
        assert measured(edition, readings=f"20,20,{last}").answer.values["verdict"] == verdict


@pytest.mark.parametrize(("last", "verdict"), [("19", "plateau"), ("18.99", "disturbed")])
def test_a_reading_5_percent_under_a_nearer_one_is_disturbed_below_that(last, verdict):
    assert measured(readings=f"20,20,{last}").answer.values["verdict"] == verdict


@pytest.mark.parametrize(("dimension", "verdict"), [("20.1", "too-near"), ("20", "plateau"), ("19.9", "plateau")])
def test_the_current_probe_stands_at_least_5_times_the_electrode_away(dimension, verdict):
    assert measured(dimension=dimension).answer.values["verdict"] == verdict


@pytest.mark.parametrize(("dimension", "told"), [("10.1", True), ("10", False), ("9.9", False)])
def test_below_10_times_it_says_to_move_the_probe_and_look_again(dimension, told):
    spoken = " ".join(map(str, measured(dimension=dimension).trace.notes))
    assert ("Move it out" in spoken) == told


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(
    ("ohm", "words"), [("24.99", "may be used alone"), ("25", "may be used alone"), ("25.01", "add a second")]
)
def test_25_ohm_decides_whether_a_single_rod_stands_alone(edition, ohm, words):
    """250.53(A)(2) Exception."""
    answer = measured(edition, readings=f"{ohm},{ohm},{ohm}").answer
    assert words in str(answer.detail) and answer.basis == "grounding/rod_needs_second"
    other = measured(edition, kind="other", readings=f"{ohm},{ohm},{ohm}").answer
    assert words not in str(other.detail)


@pytest.mark.parametrize(
    ("ohm", "headline", "words"),
    [
        ("24.96", "25 ohm", "At most 25 ohm"),
        ("25", "25 ohm", "At most 25 ohm"),
        ("25.0001", "25.0001 ohm", "Over 25 ohm"),
        ("25.04", "25.04 ohm", "Over 25 ohm"),
        ("25.06", "25.1 ohm", "Over 25 ohm"),
    ],
)
def test_no_reading_over_25_ohm_is_rounded_to_25(ohm, headline, words):
    result = measured(readings=f"{ohm},{ohm},{ohm}")
    assert str(result.answer.headline) == headline and str(result.answer.detail).startswith(words)
    assert result.answer_code == f"plateau-{headline.removesuffix(' ohm')}-ohm"
    assert measured_electrode.run(read(write(result).partition("?")[2])).linked_answer == result.answer_code


@pytest.mark.parametrize(
    ("distances", "outcome"),
    [
        ("60,61.8,63.5", "fix"),  # a few feet apart all readings look alike
        ("55.9,61.8,70", "fix"),
        ("55.8,61.8,70", "answer"),
        ("50,61.8,67.7", "fix"),
        ("50,61.8,67.8", "answer"),
        ("52,62,72", "answer"),
    ],
)
def test_readings_reach_6_percent_of_the_way_to_each_side(distances, outcome):
    result = measured(distances=distances)
    assert result.outcome == outcome
    assert outcome == "answer" or "look level anywhere" in str(result.fix[0].words)


FLAT = {"dimension": "8", "probe": "60", "distances": "30,37.08,42"}


@pytest.mark.parametrize(
    ("last", "verdict"), [("20", "too-flat"), ("20.25", "too-flat"), ("20.26", "plateau"), ("20.9", "plateau")]
)
def test_level_readings_with_the_current_probe_near_are_no_plateau(last, verdict):
    """Even soil: 20 ohm × 8 ÷ 60 ÷ 20 × (1 - (1 + 1/0.7 - 1/0.3)) = 0.254 ohm from 50 to 70 percent, at the least."""
    answer = measured(**FLAT, readings=f"20,20,{last}").answer
    assert answer.values["verdict"] == verdict
    assert (answer.values["ohm"] is None) == (verdict == "too-flat")
    # From 10 times the electrode on, a level curve is what is looked for.
    assert measured(**(FLAT | {"dimension": "6"}), readings="20,20,20").answer.values["verdict"] == "plateau"


@pytest.mark.parametrize("probe", [41, 50, 60, 79])
@pytest.mark.parametrize("shares", [(0.5, 0.618, 0.7), (0.52, 0.62, 0.72), (0.555, 0.618, 0.68)])
def test_no_true_reading_of_a_rod_is_called_too_flat(probe, shares):
    assert measured(**rod(probe, shares)).answer.values["verdict"] in ("plateau", "no-plateau")


@settings(deadline=None)
@given(draw.floats(1, 17.4), draw.floats(5, 10), draw.floats(0.5, 0.55), draw.floats(0.68, 0.73))
def test_no_electrode_in_even_soil_is_called_too_flat(ohms, multiple, near, far):
    """ohms: of an electrode by resistivity, times 2 pi times its dimension. A point that draws on even soil."""
    drawn = [1 + 1 / p - 1 / (1 - p) for p in (near, 0.618, far)]
    readings = ",".join(f"{20 * (1 - each / multiple / ohms):.9f}" for each in drawn)
    distances = ",".join(f"{100 * p:.9f}" for p in (near, 0.618, far))
    result = measured(dimension=f"{100 / multiple:.9f}", distances=distances, readings=readings)
    assert result.outcome == "answer" and result.answer.values["verdict"] != "too-flat"


def test_an_electrode_still_connected_is_never_proven_however_level():
    answer = measured(isolated="no", readings="0.4,0.4,0.4").answer
    assert answer.answer_code == "not-isolated" and answer.values["ohm"] is None
    assert str(answer.headline) == "Not proven" and "utility" in str(answer.detail)
    assert (
        measured_electrode(
            **{key: value for key, value in LEVEL.items() if key != "isolated"}
        ).answer_code == "not-isolated"
    )


@pytest.mark.parametrize("changed", [{}, {"isolated": "no"}, {"dimension": "60"}, {"readings": "1,20,40"}])
def test_every_answer_says_first_how_an_electrode_may_be_isolated(changed):
    first = str(measured(**changed).trace.warnings[0])
    assert "only with the service de-energized" in first and "free of current" in first
    assert "de-energized" in str(measured_electrode.purpose)


@pytest.mark.parametrize(
    ("changed", "field"),
    [
        ({"readings": "20,21"}, "readings"),
        ({"readings": "20,21,22,23"}, "readings"),
        ({"readings": "20,-1,22"}, "readings"),
        ({"readings": "20,0,22"}, "readings"),
        ({"readings": "20,,22"}, "readings"),
        ({"readings": "20,twenty,22"}, "readings"),
        ({"distances": "50,61.8,100"}, "distances"),
        ({"distances": "50,61.8,120"}, "distances"),
        ({"distances": "50,61.8,61.8"}, "distances"),
        ({"distances": "10,20,30"}, "distances"),
        ({"distances": "62,63,64"}, "distances"),
        ({"distances": "10,61.8,90"}, "distances"),
        ({"distances": "50,61.8,70s"}, "distances"),
        ({"probe": "0"}, "probe"),
        ({"probe": "1000000000ft"}, "probe"),
        ({"dimension": "0"}, "dimension"),
        ({"isolated": "perhaps"}, "isolated"),
    ],
)
def test_what_cannot_be_is_named(changed, field):
    assert to_mend(**changed) == [field]


def test_too_few_readings_say_where_to_take_more():
    said = str(measured(distances="10,20,30").fix[0].words)
    assert "between 49.8 and 73.8 ft" in said and "61.8 ft" in said


def test_probes_at_50_60_70_and_at_52_62_72_percent_are_enough():
    for distances in ("50,60,70", "52,62,72"):
        assert measured(distances=distances).outcome == "answer"


def test_readings_in_any_order_and_unit_are_the_same_test():
    assert measured(distances="70,50,61.8", readings="21,20,20.5").answer_code == "plateau-20.5-ohm"
    metric = measured(distances="15.24m,18.83664m,21.336m", probe="30.48m", dimension="2.4384m")
    assert metric.answer_code == "plateau-20.5-ohm"
    assert measured(distances="50; 61.8; 70", readings="20 ohm, 20.5 ohm, 21 ohm").answer_code == "plateau-20.5-ohm"


def test_the_series_hold_the_readings_the_level_and_the_place():
    series = {each["key"]: each for each in measured().answer.values["series"]}
    assert series["readings"]["points"] == [[50, 20], [61.8, 20.5], [70, 21]]
    assert series["compared"]["points"] == [[49.8, 20.5], [73.8, 20.5]]
    assert series["middle"]["points"] == [[61.8, 0], [61.8, 20.5]]
    assert all(each["words"] for each in series.values())


def test_a_good_reading_is_said_to_prove_nothing_of_clearing():
    assert "says nothing about clearing a fault" in " ".join(map(str, measured().trace.notes))


def test_a_link_restores_the_answer():
    result = measured()
    again = measured_electrode.run(read(write(result).partition("?")[2]))
    assert again.answer_code == result.answer_code == again.linked_answer


AMOUNT = draw.floats(0.001, 9999).map(lambda value: f"{value:.3f}")


@settings(deadline=None)
@given(draw.lists(AMOUNT, min_size=1, max_size=60), draw.lists(AMOUNT, min_size=1, max_size=60), AMOUNT, AMOUNT)
def test_no_readings_crash(distances, readings, probe, dimension):
    result = measured(distances=",".join(distances), readings=",".join(readings), probe=probe, dimension=dimension)
    assert result.outcome in ("answer", "fix")


@settings(deadline=None)
@given(draw.lists(draw.floats(3, 1000), min_size=3, max_size=3), draw.floats(0.1, 50))
def test_the_verdict_does_not_change_when_every_reading_is_multiplied(readings, factor):
    """Above the ohms that an electrode of 8 ft has in the wettest soil, 0.222."""
    one, many = (measured(readings=",".join(f"{ohm * each:.9f}" for ohm in readings)).answer for each in (1, factor))
    clear_of_the_limit = abs(one.values["spread_percent"] - 5) > 1e-3
    if clear_of_the_limit and one.values["verdict"] != "disturbed" != many.values["verdict"]:
        assert one.values["verdict"] == many.values["verdict"]


@pytest.mark.parametrize(("reading", "outcome"), [("0.00009", "fix"), ("0.0001", "answer"), ("0.00012", "answer")])
def test_the_smallest_reading_still_reads_back_from_its_link(reading, outcome):
    result = measured(readings=f"{reading},{reading},{reading}")
    assert result.outcome == outcome
    if outcome == "answer":
        again = measured_electrode.run(read(write(result).partition("?")[2]))
        assert again.answer == result.answer
        assert again.answer.values["ohm_at_place"] == pytest.approx(float(reading), rel=1e-9)


def test_the_picture_has_every_reading_at_its_distance():
    result = measured_electrode(isolated="yes", dimension=8, probe=80, distances="40,49.44,58", readings="20,20.5,21")
    (chart,) = result.answer.charts
    assert chart.kind == "straight"
    assert chart.lines[0].points == ((40, 20), (49.44, 20.5), (58, 21))


@pytest.mark.parametrize(
    ("ohm", "room"), [("20.5", True), ("23.8", True), ("23.81", False), ("25", False), ("25.01", True)]
)
def test_a_reading_so_near_25_ohm_that_a_meter_decides_says_so(ohm, room):
    """23.8 times 1.05 is 24.99, 23.81 times 1.05 is over 25. Over 25 a second electrode is added anyway."""
    detail = str(measured(readings=",".join([ohm] * 3)).answer.detail)
    assert ("if the meter is 5 percent off" in detail) == (not room)


@pytest.mark.parametrize(
    ("ohm", "dimension", "verdict"),
    [("0.221", "8", "too-low"), ("0.223", "8", "plateau"), ("0.89", "2", "plateau"), ("0.88", "2", "too-low")],
)
def test_fewer_ohms_than_any_soil_gives_mean_that_something_is_still_joined(ohm, dimension, verdict):
    """A half ball of 8 ft in 3.4 ohm·m: 3.4 / (2 pi 2.4384) = 0.2219 ohm; of 2 ft 0.8877."""
    answer = measured(dimension=dimension, readings=",".join([ohm] * 3)).answer
    assert answer.values["verdict"] == verdict and (answer.values["ohm"] is None) == (verdict == "too-low")
    assert ("still connected to it" in str(answer.detail)) == (verdict == "too-low")
