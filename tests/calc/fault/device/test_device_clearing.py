"""The opening of a device: worked cases, each published point from both sides, what may not be said, bad input."""

import math
from math import inf

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from calc import EDITIONS, device_clearing
from calc.fault.device.device import VERDICTS, inferred_second, opening
from calc.fault.device.device_limits import FUSE_CLASSES, KINDS
from calc.fault.device.loop_limit import largest_loop_impedance
from calc.permalink import read, write
from tests.cases.read import cases, named

CASES = "fault/device/device_clearing"
BREAKER = "inverse-time-breaker"


def check(edition="2023", **inputs):
    return device_clearing(edition=edition, **inputs)


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    result = check(edition, **case["inputs"])
    if "not_covered" in case:
        assert case["not_covered"] in str(result.not_covered.look_in)
        return
    values = result.answer.values
    assert values["verdict"] == result.answer_code == case["verdict"], case["reason"]
    for name in ("slowest_second", "estimate_second", "largest_loop_ohm"):
        if name in case:
            assert values[name] == pytest.approx(case[name], abs=case.get("tolerance", 0), rel=1e-9), name
    if case["verdict"] in ("does-not-open", "not-assured", "beyond-rating"):
        assert values["slowest_second"] is None


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["reason"] and case["mark"] in ("published", "memory")


# Largest ratings of the rows and their times at 135 and at 200 percent, written a second time.
BREAKER_ROWS = [(30, 1, 2), (50, 1, 4), (100, 2, 6), (150, 2, 8), (225, 2, 10), (400, 2, 12), (600, 2, 14)]
FUSE_ROWS = [(30, 1, 2), (60, 1, 4), (100, 2, 6), (200, 2, 8), (400, 2, 10), (600, 2, 12)]


@pytest.mark.parametrize(("kind", "table"), [(BREAKER, BREAKER_ROWS), ("fuse", FUSE_ROWS)])
def test_ratings_just_below_at_and_just_above_each_row_have_its_times(kind, table):
    for place, (last, hours, minutes) in enumerate(table):
        for rating in (last - 1, last):
            assert opening(1.35, kind, rating).slowest_second == hours * 3600
            assert opening(2, kind, rating).slowest_second == minutes * 60
        if place + 1 < len(table):
            assert opening(2, kind, last + 1).slowest_second == table[place + 1][2] * 60


def test_over_600_a_the_two_hundred_percent_times_are_not_guessed():
    assert opening(2, BREAKER, 601).slowest_second == 7200
    assert opening(4, "fuse", 601).verdict == "not-assured"
    warned = check(device_kind="fuse", device="800", fault_current="1600").trace.warnings
    assert any("stop at 600 A" in str(words) for words in warned)


@pytest.mark.parametrize(
    ("multiple", "verdict"),
    [(1, "does-not-open"), (1.001, "not-assured"), (1.3499, "not-assured"), (1.35, "slow"), (4.999, "slow"),
     (5, "likely"), (9.99, "likely"), (10, "likely"), (1000, "likely")],
)  # fmt: skip
def test_without_its_curve_no_breaker_is_ever_called_sure(multiple, verdict):
    for rating in (15, 20, 100, 600, 4000):
        assert opening(multiple, BREAKER, rating).verdict == verdict


def test_only_above_ten_times_a_breaker_is_thought_to_open_at_once_and_its_curve_must_confirm_it():
    assert "probably opens in seconds" in str(opening(9.99, BREAKER, 20).words)
    assert "probably opens at once" in str(opening(10, BREAKER, 20).words)
    assert "must confirm" in str(opening(10, BREAKER, 20).words)
    assert "in seconds" in str(opening(15, BREAKER, 20, 20).words), "a typed curve that says later is believed"


def test_the_typed_multiple_of_the_curve_makes_it_sure_from_there_on():
    assert opening(9.99, BREAKER, 20, 10).verdict == "likely"
    assert opening(10, BREAKER, 20, 10).verdict == "assured"
    assert opening(10, BREAKER, 20, 10).slowest_second == pytest.approx(3 / 60)
    assert opening(3, BREAKER, 20, 3).verdict == "assured"


@pytest.mark.parametrize(("kind", "low", "high"), [("iec-b", 3, 5), ("iec-c", 5, 10), ("iec-d", 10, 20)])
def test_household_breakers_are_sure_from_the_upper_instantaneous_multiple_only(kind, low, high):
    for rating, minute in ((16, 60), (32, 60), (33, 120), (125, 120)):
        assert opening(1.13, kind, rating).verdict == "does-not-open"
        assert opening(1.14, kind, rating).verdict == "not-assured"
        assert opening(1.449, kind, rating).verdict == "not-assured"
        assert opening(1.45, kind, rating).slowest_second == (3600 if rating <= 63 else 7200)
        assert opening(2.55, kind, rating).slowest_second == minute
        assert opening(low, kind, rating).verdict == opening(high - 0.01, kind, rating).verdict == "slow"
        assert opening(high, kind, rating).verdict == "assured"
        assert opening(high, kind, rating).slowest_second == 0.1


def test_time_delay_fuses_hold_by_their_class():
    """Ten seconds at five times; class K to 30 A eight; class CC twelve at twice. Plain fuses hold nothing."""

    def lower_edge(**inputs):
        series = check(fault_current="100", **inputs).answer.values["series"]
        return next(each["points"] for each in series if each["key"] == "stays-closed")

    delayed = dict(device_kind="fuse-time-delay", device="30")
    assert lower_edge(**delayed)[-2:] == [[150, 10], [150, 0.01]]
    assert lower_edge(**delayed, fuse_class="k")[-2:] == [[150, 8], [150, 0.01]]
    assert lower_edge(device_kind="fuse-time-delay", device="31", fuse_class="k")[-2] == [155, 10]
    assert lower_edge(**delayed, fuse_class="cc")[-2:] == [[60, 12], [60, 0.01]]
    assert lower_edge(device_kind="fuse", device="30")[-1] == [33, 0.01]
    assert opening(5, "fuse-time-delay", 30).verdict == "slow"
    assert opening(5, "fuse", 30).verdict == "likely"


def test_no_time_is_known_for_a_small_class_c_fuse():
    assert opening(2, "fuse", 60, fuse_class="c").verdict == "not-assured"
    result = check(device_kind="fuse", fuse_class="c", device="60", fault_current="400")
    assert result.answer_code == "likely" and result.answer.values["slowest_second"] is None
    assert any("No published time" in str(words) for words in result.trace.warnings)


def test_the_public_claim_of_25_ms_at_6_ma_is_not_repeated():
    assert opening(1, "ground-fault-interrupter", 0.006).slowest_second == pytest.approx((20 / 6) ** 1.43)
    assert opening(100, "ground-fault-interrupter", 0.006).slowest_second == pytest.approx((20 / 264) ** 1.43)


@pytest.mark.parametrize(("rating", "seconds"), [(30, 50), (31, 80), (51, 140), (101, 200), (151, 230), (226, 300)])
def test_the_inference_starts_at_the_field_test_and_falls_with_the_square(rating, seconds):
    assert inferred_second(3, rating) == seconds
    assert inferred_second(6, rating) == seconds / 4
    assert inferred_second(2.99, rating) is None
    assert inferred_second(5, 401) is None


def test_the_estimate_is_called_an_inference_and_changes_neither_verdict_nor_time():
    plain, estimated = (check(device="20", fault_current="100", estimate=each) for each in ("no", "yes"))
    assert plain.answer.values["estimate_second"] is None
    assert estimated.answer_code == plain.answer_code and estimated.answer.values["slowest_second"] == 120
    assert any("inference and not a rating" in str(step.words) for step in estimated.trace.steps)
    assert estimated.answer.values["series"][-1]["key"] == "inferred"
    assert [each["key"] for each in plain.answer.values["series"]] == ["stays-closed", "open-by", "fault"]


@pytest.mark.parametrize(
    ("inputs", "expected"),
    [((230, 5, 6), 7.28), ((230, 5, 16), 2.73), ((230, 5, 32), 1.37), ((230, 10, 32), 0.68), ((230, 20, 20), 0.55)],
)
def test_loop_impedances_are_the_printed_ones(inputs, expected):
    """BS 7671 Table 41.3: B6, B16, B32, C32, D20."""
    assert largest_loop_impedance(*inputs) == pytest.approx(expected, abs=0.006)


def test_the_largest_loop_impedance_just_drives_the_multiple_on_a_low_voltage_day():
    typed = dict(instantaneous_multiple="10", instantaneous_read="curve", voltage_to_ground="120")
    result = check(device="20", fault_current="275", **typed)
    assert result.answer.values["largest_loop_ohm"] == pytest.approx(0.95 * 120 / 200)
    assert check(device="20", fault_current="275", voltage_to_ground="120").answer.values["largest_loop_ohm"] is None


RATINGS = some.floats(0.5, 5000)
MULTIPLES = some.floats(0, 500)


@settings(max_examples=300, deadline=None)
@given(some.sampled_from(KINDS), RATINGS, MULTIPLES, MULTIPLES, some.sampled_from(FUSE_CLASSES))
def test_more_current_never_gives_a_weaker_verdict_or_a_longer_time(kind, rating, one, other, fuse_class):
    less, more = (opening(each, kind, rating, None, fuse_class) for each in sorted((one, other)))
    assert VERDICTS.index(less.verdict) <= VERDICTS.index(more.verdict)
    assert (more.slowest_second or inf) <= (less.slowest_second or inf)


@settings(max_examples=200, deadline=None)
@given(some.sampled_from(KINDS), some.floats(1, 1000), some.floats(0.001, 200_000))
def test_every_picture_is_of_positive_finite_numbers_and_its_edges_never_cross(kind, rating, current):
    result = check(device_kind=kind, device=f"{rating:.3f}", fault_current=f"{current:.6f}")
    if result.outcome != "answer":
        return
    series = {each["key"]: each["points"] for each in result.answer.values["series"]}
    for points in series.values():
        assert all(len(point) == 2 and all(math.isfinite(each) and each > 0 for each in point) for point in points)
    for edge in ("stays-closed", "open-by"):
        amperes = [ampere for ampere, _ in series.get(edge, [])]
        assert amperes == sorted(amperes)
    for ampere, second in series["stays-closed"]:
        above = [allowed for from_ampere, allowed in series.get("open-by", []) if from_ampere < ampere]
        assert all(second <= allowed for allowed in above), kind


def test_the_picture_of_a_20_a_breaker_has_the_published_corners():
    series = {each["key"]: each for each in check(device="20", fault_current="275").answer.values["series"]}
    assert series["stays-closed"]["points"] == [[20, 10_000], [20, 0.01]]
    assert series["open-by"]["points"] == [[27, 10_000], [27, 3600], [40, 3600], [40, 120], [2000, 120]]
    assert series["fault"]["points"] == [[275, 0.01], [275, 10_000]]
    assert all(each["words"] for each in series.values())


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        (dict(device="20"), "fault_current"),
        (dict(fault_current="100"), "device"),
        (dict(device="0", fault_current="100"), "device"),
        (dict(device="20 V", fault_current="100"), "device"),
        (dict(device="20", fault_current="-5"), "fault_current"),
        (dict(device="20", fault_current="0"), "fault_current"),
        (dict(device="20", fault_current="300 kA"), "fault_current"),
        (dict(device="20", fault_current="nan"), "fault_current"),
        (dict(device="20", fault_current="100", instantaneous_multiple="1.9"), "instantaneous_multiple"),
        (dict(device="20", fault_current="100", instantaneous_multiple="51"), "instantaneous_multiple"),
        (dict(device="20", fault_current="100", instantaneous_multiple="nan"), "instantaneous_multiple"),
        (dict(device="20", fault_current="100", voltage_to_ground="1001"), "voltage_to_ground"),
        (dict(device="20", fault_current="100", device_kind="toaster"), "device_kind"),
        (dict(device="20", fault_current="100", device_kind="fuse", instantaneous_multiple="10"),
         "instantaneous_multiple"),
        (dict(device="20", fault_current="100", fuse_class="c"), "fuse_class"),
        (dict(device="31", fault_current="100", device_kind="fuse", fuse_class="cc"), "device"),
        (dict(device="601", fault_current="1000", device_kind="fuse", fuse_class="k"), "device"),
        (dict(device="1201", fault_current="5000", device_kind="fuse", fuse_class="c"), "device"),
        (dict(device="1201", fault_current="5000", device_kind="ground-fault-protection"), "device"),
    ],
)  # fmt: skip
def test_bad_input_names_its_field(inputs, field):
    result = check(**inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize(
    "inputs", [(-1, "fuse", 20), (math.nan, "fuse", 20), (2, "toaster", 20), (2, "fuse", 0), (2, "fuse", math.inf)]
)
def test_the_bare_function_refuses_what_is_no_device_or_current(inputs):
    with pytest.raises(ValueError, match=r"."):
        opening(*inputs)


@pytest.mark.parametrize("edition", EDITIONS)
def test_every_answer_says_it_is_a_model_and_sends_to_the_published_curve(edition):
    notes = " ".join(str(words) for words in check(edition, device="20", fault_current="275").trace.notes)
    assert "a model for teaching and checking" in notes and "published curve" in notes and "qualified person" in notes


def test_protection_of_equipment_says_it_guards_no_person_and_has_its_switch_to_open_yet():
    result = check(device_kind="ground-fault-protection", device="1000", fault_current="4000")
    assert "own time to open" in str(result.answer.detail)
    assert any("not people" in str(words) for words in result.trace.notes)


@pytest.mark.parametrize(
    ("ampere", "unsure", "setting", "curve"),
    [(199, "likely", "likely", "likely"), (200, "likely", "likely", "assured"), (279, "likely", "likely", "assured"),
     (280, "assured", "assured", "assured")],
)  # fmt: skip
def test_the_tolerance_of_an_instantaneous_trip_decides_near_its_limit(ampere, unsure, setting, curve):
    """Ten times 20 A is 200 A; a dial may act 40 percent late, at 280 A (NETA Table 100.8)."""
    typed = dict(device="20", fault_current=ampere, instantaneous_multiple="10")
    assert check(**typed).answer_code == unsure
    assert check(**typed, instantaneous_read="setting").answer_code == setting
    assert check(**typed, instantaneous_read="curve").answer_code == curve
    detail = str(check(**typed).answer.detail)
    assert ("only from 14 times" in detail) is (200 <= ampere < 280)


@pytest.mark.parametrize(
    ("kind", "rating", "unmarked"),
    [(BREAKER, 20, 5000), ("fuse", 60, 10_000), ("fuse-time-delay", 60, 10_000), ("iec-c", 16, 1500)],
)
def test_the_interrupting_rating_is_judged_before_the_time(kind, rating, unmarked):
    """240.83(C): a breaker without a mark has 5000 A; 240.60(C): a fuse 10,000 A; 110.9: the highest current counts."""
    case = dict(device_kind=kind, device=rating)
    assert check(**case, fault_current=unmarked).answer.values["verdict"] in ("likely", "assured")
    asked = check(**case, fault_current=unmarked + 1)
    assert [each.field for each in asked.fix] == ["interrupting_rating"]
    assert f"{unmarked:,} A" in str(asked.fix[0].words)
    far = check(**case, fault_current=unmarked, available=22_000)
    assert [each.field for each in far.fix] == ["interrupting_rating"]
    weak = check(**case, fault_current=unmarked, available=22_000, interrupting_rating=21_999)
    assert weak.answer_code == "beyond-rating" and str(weak.answer.headline) == "Do not count on it"
    assert "may burst" in str(weak.answer.detail) and "22,000 A" in str(weak.answer.detail)
    enough = check(**case, fault_current=unmarked, available=22_000, interrupting_rating=22_000)
    assert enough.answer_code in ("likely", "assured")


def test_a_class_a_interrupter_is_credited_with_leaks_only():
    def gfci(**inputs):
        return check(device_kind="ground-fault-interrupter", **inputs)

    leak = gfci(fault_current="30 mA")
    assert leak.answer_code == "assured" and "does not see a fault between two wires" in str(leak.answer.detail)
    assert gfci(fault_current="4.8").answer_code == gfci(fault_current="15").answer_code == "assured"
    assert gfci(fault_current="15.1").answer_code == "beyond-rating"
    assert gfci(fault_current="15.1", device="20").answer_code == "assured"
    short = gfci(fault_current="20000", device="20")
    assert short.answer_code == "beyond-rating" and "The breaker or fuse must clear it" in str(short.answer.detail)
    assert short.answer.values["slowest_second"] is None
    assert gfci(fault_current="30 mA", voltage_to_ground="120").outcome == "answer"
    assert gfci(fault_current="30 mA", voltage_to_ground="277").outcome == "not_covered"


def test_protection_of_equipment_is_credited_with_faults_to_ground_only():
    detail = str(check(device_kind="ground-fault-protection", device="1000", fault_current="4000").answer.detail)
    assert detail.startswith("Ground faults only")


@pytest.mark.parametrize(("times", "said"), [(1.35, True), (1.59, True), (1.6, False)])
def test_a_fuse_of_a_class_not_named_says_that_class_c_may_hold(times, said):
    detail = str(check(device_kind="fuse", device="100", fault_current=100 * times).answer.detail)
    assert ("class C fuse is not required to open below 1.6 times" in detail) is said


def test_unseen_times_are_told_as_unverified_and_seen_ones_are_not():
    def unverified(device):
        return " ".join(map(str, check(device=device, fault_current="1000").trace.warnings))

    assert unverified("20") == ""
    assert "UL 489" in unverified("60")


def test_its_link_restores_the_answer():
    result = check(device="20A", fault_current="0.5 kA", instantaneous_multiple="10x", voltage_to_ground="120 V")
    again = device_clearing.run(read(write(result).partition("?")[2]))
    assert again.answer.values == result.answer.values and again.linked_answer == result.answer_code
