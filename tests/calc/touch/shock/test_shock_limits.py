"""What a shock does: worked cases, every limit of time and current, what it never says, and what it always says."""

import math

import numpy
import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import EDITIONS, shock_limits
from calc.permalink import read, write
from calc.rulebook import rule
from calc.touch.shock.time_zones import curve_at
from tests.cases.read import cases, named

CASES = "touch/shock/shock_limits"
CONDITIONS = ("dry", "water-wet", "salt-water-wet")
PATHS = ("hand-hand", "hand-feet", "hands-feet", "foot-foot")
# IEC 479-1:1994, seen: hand to hand, dry, large contact; volts and ohm at 5, 50 and 95 percent.
OLDER = {
    25: (1750, 3250, 6100), 50: (1450, 2625, 4375), 75: (1250, 2200, 3500), 100: (1200, 1875, 3200),
    125: (1125, 1625, 2875), 220: (1000, 1350, 2125), 700: (750, 1100, 1550), 1000: (700, 1050, 1500),
}  # fmt: skip


def shock(edition="2023", **inputs):
    return shock_limits(edition=edition, **({"voltage": "120V"} | inputs))


def values(**inputs):
    return shock(**inputs).answer.values


def words(result):
    spoken = [*(step.words for step in result.trace.steps), *result.trace.notes, *result.trace.warnings]
    spoken += [result.answer.headline, result.answer.detail]
    return " ".join(map(str, spoken))


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    found = shock(edition, **case["inputs"]).answer.values
    assert found["verdict"] == case["verdict"], case["reason"]
    for name, expected in case["expected"].items():
        assert found[name] == pytest.approx(expected, rel=case["relative"]), (name, case["reason"])


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


@pytest.mark.parametrize("volt", OLDER)
def test_never_less_current_than_the_older_table_that_was_seen_gives(volt):
    """Half of people: up to a third more. Few and most: the older table has a narrower spread at 50 and 75 V."""
    found = values(voltage=f"{volt}V", path="hand-hand", condition="dry")
    most, half, few = (1000 * volt / ohm for ohm in OLDER[volt])
    assert 1 <= found["milliampere_most"] / most * 1.000001 < 1.31
    assert 1 <= found["milliampere_half"] / half * 1.000001 < 1.42
    assert 0.94 < found["milliampere_few"] / few < 1.5


def test_salt_wet_men_got_no_more_than_counted_here():
    """Dalziel: 9 mA at 21 V from hand to hand and at 10.2 V from hand to feet."""
    for volt, path in (("21V", "hand-hand"), ("10.2V", "hand-feet")):
        assert values(voltage=volt, path=path, condition="salt-water-wet")["milliampere_half"] > 9


@pytest.mark.parametrize("condition", CONDITIONS)
@pytest.mark.parametrize("path", PATHS)
def test_currents_grow_with_the_voltage_and_few_stay_under_most(condition, path):
    steps = [values(voltage=f"{volt}V", path=path, condition=condition) for volt in (0.1, 1, 12, 25, 49, 50, 51, 120,
             125, 126, 240, 277, 399, 480, 600, 1000)]  # fmt: skip
    for name in ("milliampere_few", "milliampere_half", "milliampere_most"):
        found = [each[name] for each in steps]
        assert found == sorted(found) and len(set(found)) == len(found)
    for each in steps:
        assert each["milliampere_few"] < each["milliampere_half"] < each["milliampere_most"]


@pytest.mark.parametrize("volt", [5, 25, 60, 120, 200])
@pytest.mark.parametrize("path", PATHS)
def test_wetter_skin_never_takes_less(volt, path):
    wetter = [values(voltage=f"{volt}V", path=path, condition=condition) for condition in CONDITIONS]
    for name in ("milliampere_few", "milliampere_half", "milliampere_most"):
        found = [each[name] for each in wetter]
        assert found == sorted(found)


def test_wet_skin_is_never_counted_with_more_than_500_ohm():
    for path in PATHS:
        for condition in CONDITIONS[1:]:
            assert values(path=path, condition=condition)["milliampere_most"] >= 120 / 500 * 1000
    # Both hands: 500 × 0.5 ÷ 0.75.
    assert values(path="hands-feet", voltage="12V")["milliampere_most"] == pytest.approx(12 / 333 * 1000, rel=0.001)
    assert values(path="hand-hand", condition="dry")["milliampere_most"] < 240


@pytest.mark.parametrize("curve", ["b", "c1", "c2"])
@pytest.mark.parametrize("second", [0.001, 0.01, 0.05, 0.07, 0.1, 0.3, 1, 2.2, 3, 5, 10, 100])
def test_curves_are_straight_between_their_points_on_both_logarithms(curve, second):
    """Numpy interpolates the logarithms, and holds the ends."""
    book = rule("touch/time_zones", "2023")
    rows = [row for row in book.rows if row["curve"] == curve]
    straight = numpy.interp(
        math.log(second), [math.log(row["second"]) for row in rows], [math.log(row["milliampere"]) for row in rows]
    )
    assert curve_at(book, curve, second) == pytest.approx(math.exp(straight), rel=1e-9)


def at(milliampere, second):
    """A shock of just this most current: wet, hand to hand, counted with 500 ohm."""
    return shock(
        voltage=f"{milliampere / 2:.6f}V", path="hand-hand", condition="water-wet", clears="yes", time=f"{second}s"
    ).answer.values


@pytest.mark.parametrize(
    ("milliampere", "second", "zone"),
    [
        (0.49, 1, "AC-1"), (0.5, 1, "AC-1"), (0.51, 1, "AC-2"),
        (199.9, 0.01, "AC-2"), (200, 0.01, "AC-2"), (200.1, 0.01, "AC-3"),
        (5, 10, "AC-2"), (5.01, 10, "AC-3"),
        (499.9, 0.05, "AC-3"), (500, 0.05, "AC-3"), (500.1, 0.05, "AC-4.1"),
        (50, 1, "AC-3"), (50.1, 1, "AC-4.1"), (80, 1, "AC-4.1"), (80.1, 1, "AC-4.2"),
        (40, 3, "AC-3"), (40.1, 3, "AC-4.1"), (40, 100, "AC-3"), (50.1, 100, "AC-4.2"),
        (899, 0.03, "AC-4.1"), (901, 0.03, "AC-4.2"),
    ],
)  # fmt: skip
def test_the_zone_of_a_current_and_a_time(milliampere, second, zone):
    assert at(milliampere, second)["zone"] == zone


@pytest.mark.parametrize(
    ("second", "limit"),
    [("0.029s", None), ("0.03s", 669.73), ("0.031s", 658.84), ("0.5s", 164.05), ("2.99s", 67.085), ("3s", 66.973),
     ("3.01s", None), ("60s", None)],
)  # fmt: skip
def test_the_fibrillation_limit_holds_from_0_03_to_3_seconds(second, limit):
    """116 / sqrt(t)."""
    found = values(clears="yes", time=second)["limit_milliampere"]
    assert found == (limit and pytest.approx(limit, rel=1e-4))


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("condition", CONDITIONS)
def test_a_fault_that_does_not_clear_gets_no_limit_by_time(edition, condition):
    result = shock(edition, condition=condition, clears="no", time="0.1s")
    found = result.answer.values
    assert found["limit_milliampere"] is None and found["zone"] is None
    assert "no time limit applies" in words(result) and "does not stop" in str(result.answer.headline)
    assert "touch/fibrillation_limit" not in [cited.key for cited in result.trace.citations]
    assert [chart.key for chart in result.answer.charts] == ["let-go"]


def test_no_answer_at_all_is_given_as_if_it_cleared():
    assert shock().answer.values == shock(clears="no").answer.values


@pytest.mark.parametrize(
    ("milliampere", "verdict"),
    [
        (0.5, "hardly-felt"),
        (0.51, "felt"),
        (6, "felt"),
        (6.01, "cannot-let-go"),
        (19.99, "cannot-let-go"),
        (20, "can-kill"),
    ],
)
def test_a_shock_that_lasts_is_judged_by_letting_go_and_breathing(milliampere, verdict):
    found = values(voltage=f"{milliampere / 2:.6f}V", path="hand-hand", condition="water-wet")
    assert found["verdict"] == verdict


@pytest.mark.parametrize(("second", "verdict"), [(2.9, "cannot-let-go"), (3, "cannot-let-go"), (3.1, "can-kill")])
def test_a_device_slower_than_3_seconds_is_judged_as_if_the_shock_lasted(second, verdict):
    """30 mA: under the heart's curves, over the 20 mA at which breathing may stop."""
    assert at(30, second)["verdict"] == verdict


@pytest.mark.parametrize(
    ("milliampere", "second", "verdict"),
    [
        (163, 0.5, "can-kill"),
        (99, 0.5, "cannot-let-go"),
        (101, 0.5, "can-kill"),
        (400, 0.1, "can-kill"),
        (366, 0.1, "cannot-let-go"),
    ],
)
def test_a_shock_that_ends_can_kill_past_the_lower_of_both_limits(milliampere, second, verdict):
    """At 0.5 s c1 is at 99.9 mA and 116 / sqrt(t) at 164; at 0.1 s c1 at 500 and the limit at 367."""
    assert at(milliampere, second)["verdict"] == verdict


@pytest.mark.parametrize(("milliampere", "second"), [(5.99, None), (6, 5.594), (30, 0.56), (264, 0.025), (2000, 0.025)])
def test_a_class_a_interrupter_opens_by_its_curve(milliampere, second):
    """(20 / I)^1.43 from 6 to 264 mA; 5.59 s at 6 mA, not 25 ms."""
    found = at(milliampere, 0.1)["interrupter_second"]
    assert found == (second and pytest.approx(second, rel=0.003))


def test_people_who_take_little_wait_longer_for_the_interrupter():
    found = values(clears="yes", time="0.1s")
    assert found["interrupter_second_longest"] > found["interrupter_second"]
    assert values(voltage="10V", path="hand-hand")["interrupter_second_longest"] is None


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        ({"voltage": "0"}, "voltage"),
        ({"voltage": "-5"}, "voltage"),
        ({"voltage": "1001V"}, "voltage"),
        ({"voltage": "many"}, "voltage"),
        ({"path": "head-feet"}, "path"),
        ({"condition": "damp"}, "condition"),
        ({"clears": "maybe"}, "clears"),
        ({"clears": "yes"}, "time"),
        ({"clears": "yes", "time": "0"}, "time"),
        ({"clears": "yes", "time": "2h"}, "time"),
    ],
)
def test_what_cannot_be_is_named(inputs, field):
    assert [each.field for each in shock(**inputs).fix] == [field]


def test_the_voltage_is_asked_for():
    assert [each.field for each in shock_limits(path="hand-hand").fix] == ["voltage"]


def test_someone_in_the_water_gets_no_number_but_what_to_do():
    for volt in ("0.1V", "15V", "1000V"):
        result = shock(voltage=volt, condition="in-water")
        assert result.outcome == "not_covered"
        assert "No voltage is known to be harmless" in str(result.not_covered.why)
        assert "never jump in" in str(result.not_covered.look_in)


@pytest.mark.parametrize("condition", CONDITIONS)
@pytest.mark.parametrize("volt", ["0.1V", "5V", "120V", "1000V"])
def test_every_answer_says_first_what_to_do_and_never_that_it_is_safe(condition, volt):
    for inputs in ({}, {"clears": "yes", "time": "0.05s"}):
        result = shock(voltage=volt, condition=condition, **inputs)
        assert str(result.trace.warnings[0]).startswith("If anyone feels a tingle")
        assert "shut the power off first" in str(result.trace.warnings[1])
        assert "safe" not in words(result).lower()
        water = "leaves out everyone in water" in words(result)
        assert water == (condition != "dry")


def test_cycles_and_milliseconds_are_times():
    # 6 cycles of 60 Hz are 0.1 s.
    one, other, plain = (values(clears="yes", time=time) for time in ("6 cycles", "100ms", "0.1"))
    assert one == other == plain


def test_the_pictures_of_a_shock_that_ends_show_it_at_its_time():
    zones, limits = shock(clears="yes", time="0.2s").answer.charts
    for chart in (zones, limits):
        assert chart.kind == "logarithmic"
        assert [up for _, up in chart.lines[0].points] == [0.2, 0.2]
        assert all(across > 0 and up > 0 for line in chart.lines for across, up in line.points)
        assert len(chart.lines) == 4
    assert zones.lines[2].points[:3] == ((500, 0.01), (500, 0.1), (50, 1))
    assert limits.lines[1].points == ((669.7, 0.03), (67.0, 3))
    assert limits.lines[3].points == ((6, 5.5939), (264, 0.025))


def test_the_picture_of_a_lasting_shock_stands_beside_letting_go():
    (chart,) = shock().answer.charts
    assert chart.kind == "bars" and len(chart.names) == len(chart.lines[0].points) == 5
    assert [up for _, up in chart.lines[0].points][3:] == [9, 6]


def test_a_link_restores_the_answer():
    result = shock(clears="yes", time="0.1s", condition="dry")
    again = shock_limits.run(read(write(result).partition("?")[2]))
    assert again.answer_code == result.answer_code == again.linked_answer


@settings(deadline=None, max_examples=60)
@given(draw.floats(0.1, 1000), draw.floats(0.001, 3600), draw.sampled_from(PATHS), draw.sampled_from(CONDITIONS))
def test_a_longer_shock_is_never_judged_milder(volt, second, path, condition):
    order = ("hardly-felt", "felt", "cannot-let-go", "can-kill")
    judged = [
        order.index(
            values(voltage=f"{volt:.4f}", path=path, condition=condition, clears="yes", time=f"{each:.6f}")["verdict"]
        )
        for each in (second, min(3600, 3 * second), 3600)
    ]
    lasting = order.index(values(voltage=f"{volt:.4f}", path=path, condition=condition)["verdict"])
    assert judged == sorted(judged) and lasting <= judged[2]


def test_a_lasting_shock_that_holds_someone_is_said_to_kill():
    held = shock_limits(edition="2023", voltage="9.99V")
    assert held.answer.values["verdict"] == "cannot-let-go" and "it can kill" in str(held.answer.detail)


@pytest.mark.parametrize(("voltage", "who"), [("12V", "Some"), ("60V", "Most")])
def test_where_half_of_all_are_held_it_says_most(voltage, who):
    """Half of men let go at 15.5 mA; half of people get 11 mA at 12 V and 62 mA at 60 V."""
    answer = shock_limits(edition="2023", voltage=voltage, clears="yes", time="0.05s").answer
    assert str(answer.detail).startswith(f"{who} cannot let go")


def test_a_time_entered_for_a_shock_that_nothing_ends_is_told_as_not_used():
    assert "not used" in words(shock_limits(edition="2023", voltage="50V", time="0.1s"))
    assert "not used" not in words(shock_limits(edition="2023", voltage="50V"))


@pytest.mark.parametrize(("voltage", "counted"), [("240V", True), ("240.1V", False), ("480V", False)])
def test_no_class_a_interrupter_is_counted_on_above_240_volts(voltage, counted):
    said = words(shock_limits(edition="2023", voltage=voltage))
    assert ("GFCI opens within" in said) == counted and ("Count on none" in said) != counted


@pytest.mark.parametrize("condition", CONDITIONS)
@pytest.mark.parametrize("volt", [1, 12, 60, 125, 480, 1000])
def test_a_second_foot_and_a_second_hand_never_take_less(volt, condition):
    """From hand to hand, then to both feet, then from both hands: each has more limbs beside each other."""
    more = [values(voltage=f"{volt}V", path=path, condition=condition) for path in PATHS[:3]]
    for name in ("milliampere_few", "milliampere_half", "milliampere_most"):
        found = [each[name] for each in more]
        assert found == sorted(found)
    for name in ("milliampere_few", "milliampere_half", "milliampere_most"):
        assert more[2][name] >= 1.49 * more[1][name]  # 0.75 by 0.5, as the model has it


@settings(deadline=None, max_examples=60)
@given(draw.floats(0.1, 1000), draw.floats(0.001, 1000), draw.floats(1, 50), draw.sampled_from(PATHS))
def test_a_longer_shock_and_a_higher_voltage_never_have_a_milder_zone(volt, second, more, path):
    zones = ("AC-1", "AC-2", "AC-3", "AC-4.1", "AC-4.2")

    def zone(volt, second):
        found = values(voltage=f"{volt:.4f}", path=path, clears="yes", time=f"{second:.6f}")
        return zones.index(found["zone"])

    assert zone(volt, second) <= zone(volt, min(3600, second * more))
    assert zone(volt, second) <= zone(min(1000, volt * more), second)


def test_no_rounding_makes_at_most_or_more_than_untrue():
    """262.3 mA at the most and 152.4 mA in half of people are told as at most 270 and more than 150."""
    answer = shock(clears="yes", time="0.1s").answer
    assert "Up to 270 mA from one hand to both feet, wet" in str(answer.headline)
    assert "half get more than 150 mA" in str(answer.detail) and "Under 360 mA" in str(answer.detail)


@pytest.mark.parametrize(("second", "told"), [("0.1s", "360"), ("0.5s", "100"), ("1s", "50"), ("3s", "40")])
def test_no_current_is_told_as_borne_at_which_the_heart_may_fibrillate(second, told):
    """The lower of 116 / sqrt(t), 366.8 mA at 0.1 s, and c1: 500 at 0.1 s, 100 at 0.5 s, 50 at 1 s, 40 at 3 s."""
    detail = str(shock(voltage="10V", clears="yes", time=second).answer.detail)
    assert f"Under {told} mA few hearts fibrillate" in detail


@pytest.mark.parametrize(("second", "kills"), [("3s", False), ("3.1s", True), ("3600s", True)])
def test_a_device_too_slow_for_any_limit_does_not_make_a_hold_harmless(second, kills):
    """8 mA hold some people; after 3 s no limit holds, and the shock counts as lasting."""
    assert ("it can kill" in str(shock(voltage="4V", clears="yes", time=second).answer.detail)) == kills


def test_from_foot_to_foot_people_fall_and_from_a_hand_they_are_held():
    feet, hand = (shock(voltage="20V", path=path, clears="yes", time="0.1s") for path in ("foot-foot", "hand-feet"))
    assert "fall" in str(feet.answer.detail) and "let go" not in str(feet.answer.detail)
    assert "A person who falls" in words(feet) and "A person who falls" not in words(hand)
    assert str(hand.answer.detail).startswith("Most cannot let go")


def test_children_are_not_told_to_let_go_easily():
    assert "Less current holds a child" in str(shock(voltage="1V").answer.detail)
