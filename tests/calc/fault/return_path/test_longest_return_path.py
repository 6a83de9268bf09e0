"""The longest way back: worked cases, every boundary of its current, its limits, and what it must say."""

import itertools
import math

import pytest

from calc import EDITIONS, longest_return_path
from calc.conductors.impedance import impedance
from calc.permalink import read, write
from calc.raceways.return_impedance import return_impedance
from tests.cases.read import cases, named
from tests.rules.test_figures_impedance import SIZES

CASES = "fault/return_path/longest_return_path"
EMT, IMC, RMC = "electrical-metallic-tubing", "intermediate-metal-conduit", "rigid-metal-conduit"
TRADE_SIZES = ["1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4"]
NAMES = ("shortest_ft", "likely_ft", "longest_ft")


def run(edition="2023", **inputs):
    wire = {"voltage_to_ground": 120, "device": 20, "conductor": "12", "return_conductor": "12"}
    return longest_return_path(edition=edition, **(wire | inputs))


def lengths(**inputs):
    values = run(**inputs).answer.values
    return [values[name] for name in NAMES]


def raceway(kind, trade_size, **inputs):
    return dict(wiring=kind, trade_size=trade_size, return_conductor=None) | inputs


def notes(**inputs):
    return " ".join(str(words) for words in run(**inputs).trace.notes)


def warnings(**inputs):
    return " ".join(str(words) for words in run(**inputs).trace.warnings)


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    result = longest_return_path(edition=edition, **case["inputs"])
    if "feet" in case:
        assert [result.answer.values[name] for name in NAMES] == case["feet"], case["reason"]
    elif "range" in case:
        assert result.answer.values["shortest_ft"] < case["range"] < result.answer.values["longest_ft"]
    else:
        assert case["not_covered"] in str(result.not_covered.look_in)


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("size", SIZES.split())
def test_the_current_at_the_shortest_length_is_just_enough_and_one_foot_more_is_too_much(edition, size):
    """Ohm's law on the listed impedance of both wires at 75 °C, 95 percent of 120 V."""
    result = run(edition, device=30, conductor=size, return_conductor=size)
    feet = result.answer.values["shortest_ft"]
    loop = abs(2 * impedance(size, "copper", "nonmetallic", 75))
    assert 114 / (feet * loop) >= 150 > 114 / ((feet + 1) * loop)


@pytest.mark.parametrize("kind", [EMT, IMC, RMC])
@pytest.mark.parametrize("trade_size", TRADE_SIZES)
def test_with_a_raceway_the_shortest_length_has_the_high_impedance_and_the_longest_the_low(kind, trade_size):
    low, likely, high = return_impedance(kind, trade_size)
    found = lengths(**raceway(kind, trade_size, conductor="4", device=100))
    for feet, back, celsius, volt in zip(found, (high, likely, low), (75, 50, 25), (114, 120, 120), strict=True):
        loop = abs(impedance("4", "copper", "steel", celsius) + back)
        assert feet == math.floor(volt / 500 / loop)


def test_twice_the_multiple_or_the_rating_gives_half_the_length():
    for changed in ({"multiple": 10}, {"device": 40}):
        for half, whole in zip(lengths(**changed), lengths(), strict=True):
            assert 0 <= whole - 2 * half <= 1


def test_the_multiple_of_practice_is_five():
    assert lengths(multiple=5) == lengths() and lengths(multiple=3) != lengths()


@pytest.mark.parametrize(
    ("name", "values"),
    [
        ("device", [15, 20, 60, 400]),
        ("multiple", [1, 3, 5, 5.01, 10]),
        ("arc", [0, 20, 50, 113, 114, 200]),
        ("conductor", ["4/0", "4", "6", "12", "14"]),
        ("return_conductor", ["4/0", "4", "6", "12", "14"]),
        ("voltage_to_ground", [600, 277, 120, 24]),
        ("available", [100000, 5000, 300, 120, 50]),
    ],
)
def test_more_current_wanted_or_less_wire_or_voltage_never_gives_a_longer_run(name, values):
    for before, after in itertools.pairwise(values):
        for longer, shorter in zip(lengths(**{name: before}), lengths(**{name: after}), strict=True):
            assert shorter <= longer


def test_the_three_lengths_stand_in_order_whatever_the_way_back():
    for wiring in ("wire-in-nonmetallic", "wire-in-steel"):
        assert lengths(wiring=wiring) == sorted(lengths(wiring=wiring))
    for kind, trade_size in itertools.product((EMT, IMC, RMC), TRADE_SIZES):
        found = lengths(**raceway(kind, trade_size))
        assert found == sorted(found)


def test_aluminum_gives_a_shorter_run_than_copper_on_either_wire():
    for changed in ({"metal": "aluminum"}, {"conductor_metal": "aluminum"}):
        assert all(less < more for less, more in zip(lengths(**changed), lengths(), strict=True))


def test_steel_around_the_wires_shortens_the_run_a_little():
    large = {"conductor": "4/0", "return_conductor": "4", "device": 200}
    plain, steel = lengths(**large), lengths(**large, wiring="wire-in-steel")
    assert all(0.8 * before < after < before for before, after in zip(plain, steel, strict=True))


def test_the_arc_takes_its_voltage_off_before_anything_else():
    """(114 - 50) / 114 of the shortest length, (120 - 50) / 120 of the others."""
    shares = (64 / 114, 70 / 120, 70 / 120)
    for with_arc, without, share in zip(lengths(arc=50), lengths(), shares, strict=True):
        assert with_arc == pytest.approx(share * without, abs=1)


@pytest.mark.parametrize(
    ("arc", "headline"),
    [(113, "Up to 2 ft with an infinite source"), (114, "No length is sure"), (120, "Not at any length")],
)
def test_an_arc_that_takes_all_voltage_leaves_no_length(arc, headline):
    assert str(run(arc=arc).answer.headline) == headline


def test_without_a_source_or_an_arc_entered_the_answer_shows_what_they_take():
    """(1.14 - 0.12) / 4.0015 ohm in 1000 ft is 254 ft at 1000 A; (114 - 50) / 114 of 284.9 ft is 159 ft."""
    plain = run().answer
    assert str(plain.headline) == "Up to 284 ft with an infinite source"
    assert "With 1,000 A available, 254 ft. Through an arc, by trade practice 50 V, 159 ft." in str(plain.detail)
    entered = run(available=1000, arc=50).answer
    assert str(entered.headline) == "Up to 129 ft" and "infinite" not in str(entered.detail)
    assert entered.values["shortest_with_source_ft"] is entered.values["shortest_with_arc_ft"] is None
    assert run(available=1000).answer.values["shortest_ft"] == plain.values["shortest_with_source_ft"]
    assert run(arc=50).answer.values["shortest_ft"] == plain.values["shortest_with_arc_ft"]


def test_a_run_to_judge_is_told_how_much_must_be_available():
    """250 ft of 4.0015 ohm in 1000 ft is 1.0004 ohm of the 1.14 ohm for 100 A; 120 V over the rest is 860 A."""
    assert str(run(length=250).answer.headline) == "Your 250 ft run delivers 100 A where 860 A or more is available"
    assert run(length=250, available=860).answer.values["within"] == "yes"
    assert run(length=250, available=850).answer.values["within"] == "not-sure"


@pytest.mark.parametrize(
    ("inputs", "headline"),
    [
        (dict(length=250, available=1000), "Your 250 ft run delivers 100 A"),
        (dict(length=254, available=1000), "Your 254 ft run delivers 100 A"),
        (dict(length=255, available=1000), "Your 255 ft run might not deliver 100 A"),
        (dict(length=299), "Your 299 ft run might not deliver 100 A"),
        (dict(length=1000), "Your 1,000 ft run is too long for 100 A"),
        (dict(length=10, available=90), "Your 10 ft run is too long for 100 A"),
        (dict(), "Up to 284 ft with an infinite source"),
    ],
)
def test_a_run_to_judge_has_its_verdict_first(inputs, headline):
    """1.14 ohm less 0.12 of the source is 1.02 ohm, 254.9 ft of 4.0015 ohm in 1000 ft; 90 A never become 100."""
    answer = run(**inputs).answer
    assert str(answer.headline) == headline
    assert ("Up to" in str(answer.detail)) is ("length" in inputs and inputs.get("available") != 90)


def test_a_longer_length_than_the_shortest_stands_in_the_notes_only():
    answer = str(run().answer.in_one_line)
    assert "326" not in answer and "357" not in answer
    assert "Likely 326 ft, at best 357 ft. Plan on the shortest." in notes()


def test_a_way_back_apart_from_its_circuit_has_a_shorter_run_the_farther_the_shorter():
    large = dict(device=400, conductor="500kcmil", return_conductor="1/0", voltage_to_ground=277, available=20_000)
    together = lengths(**large)[0]
    apart = [lengths(**large, wiring="wire-apart", spacing=feet)[0] for feet in (0.1, 1, 10, 100)]
    assert together >= apart[0] and apart == sorted(apart, reverse=True) and apart[-1] < 0.6 * together
    assert [each.field for each in run(**large, wiring="wire-apart").fix] == ["spacing"]


@pytest.mark.parametrize(
    ("length", "within", "says"),
    [
        ("284ft", "yes", "within the shortest"),
        ("284.1", "not-sure", "may draw less current. Measure"),
        ("357", "not-sure", "may draw less current. Measure"),
        ("357.1", "no", "too long"),
        ("86.5m", "yes", "within the shortest"),
        ("109 m", "no", "too long"),
    ],
)
def test_a_run_is_judged_just_within_and_just_beyond_each_length(length, within, says):
    result = run(length=length)
    assert result.answer.values["within"] == within
    assert says in notes(length=length) + warnings(length=length)


def test_a_raceway_says_that_a_loose_fitting_makes_the_lengths_void():
    assert "loose, painted or rusted fitting voids all three lengths" in warnings(**raceway(EMT, "3/4"))
    assert "loose" not in warnings()


def test_what_shortens_the_run_is_ranked():
    """Two wires: hot against warm takes 8 percent, low voltage 5. A large raceway: its joints take the most."""
    assert "hot wires (26 ft), low voltage (16 ft)." in notes()
    large = notes(**raceway(RMC, "4", conductor="500kcmil", device=400, voltage_to_ground=277))
    assert "biggest effect first: every joint at its worst" in large and "the steel at its worst" in large
    assert "biggest effect first: the steel at its worst" in notes(**raceway(RMC, "1/2", conductor="4", device=60))


def test_less_than_practice_is_answered_with_a_warning():
    assert "may take minutes" in warnings(multiple=4.99)
    assert "may take minutes" not in warnings(multiple=5)


def test_every_answer_says_that_it_is_a_model_and_names_who_decides():
    for inputs in ({}, raceway(RMC, "2"), {"available": 5000}, {"arc": 50}):
        said = notes(**inputs)
        assert "a model for teaching and checking" in said and "qualified person" in said
        assert "does not say how fast the device opens" in said
    assert "infinite source" in notes() and "infinite source" not in notes(available=5000)
    assert "solid metal-to-metal contact" in notes() and "solid metal-to-metal contact" not in notes(arc=50)


def test_a_voltage_that_is_not_the_systems_counts_with_a_warning():
    assert "120 V to ground" in warnings(system="208Y/120", voltage_to_ground=110)
    assert lengths(system="208Y/120", voltage_to_ground=110) == lengths(voltage_to_ground=110)


@pytest.mark.parametrize(
    ("system", "volt"),
    [
        ("120/240", 120),
        ("208Y/120", 120),
        ("240-high-leg-delta", 120),
        ("240-corner-grounded-delta", 240),
        ("480Y/277", 277),
        ("600Y/347", 347),
        ("480-corner-grounded-delta", 480),
    ],
)
def test_each_grounded_system_drives_the_fault_with_its_voltage_to_ground(system, volt):
    assert lengths(system=system, voltage_to_ground=None) == lengths(voltage_to_ground=volt)


@pytest.mark.parametrize("system", ["240-ungrounded-delta", "480-ungrounded-delta"])
@pytest.mark.parametrize("volt", [None, 277])
def test_an_ungrounded_system_is_not_covered_whatever_voltage_is_entered(system, volt):
    result = run(system=system, voltage_to_ground=volt)
    assert result.outcome == "not_covered" and "first fault" in str(result.not_covered.why)


@pytest.mark.parametrize(
    ("inputs", "why"),
    [
        ({"conductor": "18"}, "14 AWG to 1000 kcmil"),
        ({"return_conductor": "16"}, "14 AWG to 1000 kcmil"),
        ({"conductor": "700kcmil"}, "with gaps"),
        ({"conductor": "1250kcmil"}, "14 AWG to 1000 kcmil"),
        ({"metal": "copper-clad-aluminum"}, "copper-clad aluminum"),
        ({"conductor_metal": "copper-clad-aluminum"}, "copper-clad aluminum"),
    ],
)
def test_wire_without_listed_impedance_is_not_covered(inputs, why):
    result = run(**inputs)
    assert result.outcome == "not_covered" and why in str(result.not_covered.why)
    assert "Chapter 9, Table 9" in str(result.not_covered.look_in)


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        ({"voltage_to_ground": None}, "voltage_to_ground"),
        ({"voltage_to_ground": 0}, "voltage_to_ground"),
        ({"voltage_to_ground": 1001}, "voltage_to_ground"),
        ({"voltage_to_ground": "-120"}, "voltage_to_ground"),
        ({"return_conductor": None}, "return_conductor"),
        ({"wiring": EMT}, "trade_size"),
        ({"wiring": EMT, "trade_size": "5"}, "trade_size"),
        ({"wiring": "flexible-metal-conduit"}, "wiring"),
        ({"device": 0}, "device"),
        ({"device": "20 ft"}, "device"),
        ({"multiple": 0.9}, "multiple"),
        ({"multiple": "nan"}, "multiple"),
        ({"multiple": "1e3"}, "multiple"),
        ({"multiple": 101}, "multiple"),
        ({"length": 0}, "length"),
        ({"length": "1000000000ft"}, "length"),
        ({"length": "5 A"}, "length"),
        ({"arc": "-1"}, "arc"),
        ({"arc": 1001}, "arc"),
        ({"available": 0}, "available"),
        ({"available": "1e9"}, "available"),
    ],
)
def test_bad_input_names_its_field_and_what_to_enter(inputs, field):
    result = run(**inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]
    assert str(result.fix[0].words)


def test_a_link_gives_the_same_answer_again():
    first = run(**raceway(RMC, "1-1/4", conductor="1/0", device="150A", arc="50V", length="30m", available="10kA"))
    again = longest_return_path.run(read(write(first).partition("?")[2]))
    assert again.answer_code == first.answer_code == again.linked_answer
