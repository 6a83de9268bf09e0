"""Orderings that hold whatever is entered: length, metal, rating, current and time against what a fault does."""

from math import inf

from hypothesis import assume, given, settings
from hypothesis import strategies as some

from calc import (
    available_fault_current,
    device_clearing,
    earth_only_return,
    ground_fault_loop,
    jumper_withstand,
    longest_return_path,
    stray_neutral_current,
    take_a_bond_away,
)
from calc.fault.device.device import VERDICTS, opening
from calc.fault.device.device_limits import BREAKER, FUSE

SIZES = ("14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0", "250kcmil", "500kcmil")
STEEL = dict(raceway="electrical-metallic-tubing", trade_size="1")
SLACK = 1 + 1e-9
size = some.sampled_from(SIZES)
feet = some.integers(1, 3000)
volt = some.sampled_from([120, 277, 347])
source = some.sampled_from([None, 150, 1000, 20_000])


def few(examples):
    """Return the settings of a test: a few examples, the same on every machine."""
    return settings(max_examples=examples, derandomize=True, deadline=None, database=None)


def loop(**inputs):
    base = dict(edition="2023", device=20, conductor="12", return_conductor="12", voltage_to_ground=120)
    result = ground_fault_loop(**(base | inputs))
    assert result.outcome == "answer", result.fix or result.not_covered
    return result.answer.values


def in_order(one: float, other: float) -> bool:
    return one <= other * SLACK + 1e-12


@few(6)
@given(size, size, feet, feet, volt, source)
def test_a_longer_run_never_brings_more_current_nor_a_surer_opening(out, back, one, other, driving, available):
    given_ = dict(conductor=out, return_conductor=back, voltage_to_ground=driving, available=available)
    short, long = (loop(**given_, length=length) for length in sorted((one, other)))
    for name in ("lowest_ampere", "likely_ampere", "highest_ampere"):
        assert in_order(long[name], short[name])
    assert VERDICTS.index(long["verdict"]) <= VERDICTS.index(short["verdict"])
    assert (short["slowest_second"] or inf) <= (long["slowest_second"] or inf)


@few(6)
@given(size, size, size, feet, source)
def test_a_larger_way_back_never_leaves_more_voltage_or_less_current(out, one, other, length, available):
    ends = sorted((one, other), key=SIZES.index)
    small, large = (loop(conductor=out, return_conductor=back, length=length, available=available) for back in ends)
    assert in_order(small["lowest_ampere"], large["lowest_ampere"])
    assert in_order(large["touch_volt"], small["touch_volt"])


@few(6)
@given(size, some.integers(1, 500), source)
def test_a_raceway_beside_the_wire_never_leaves_more_voltage_than_that_raceway_alone(back, length, available):
    given_ = dict(return_conductor=back, length=length, available=available, **STEEL)
    alone, both = (loop(wiring=wiring, **given_) for wiring in ("raceway", "both"))
    assert in_order(both["touch_volt"], alone["touch_volt"])
    assert in_order(alone["lowest_ampere"], both["lowest_ampere"])


@few(6)
@given(size, some.floats(0.1, 900), some.floats(0.1, 900), feet)
def test_a_way_back_farther_from_its_circuit_never_brings_more_current(back, one, other, length):
    near, far = (
        loop(return_conductor=back, length=length, wiring="wire-apart", spacing=f"{each:.3f}")
        for each in sorted((one, other))
    )
    assert in_order(far["lowest_ampere"], near["lowest_ampere"])
    assert in_order(near["lowest_ampere"], loop(return_conductor=back, length=length)["lowest_ampere"])


@few(6)
@given(size, feet, some.floats(0, 200), some.floats(0, 200), source)
def test_more_volts_in_the_arc_or_a_weaker_source_never_bring_more_current(back, length, one, other, available):
    less, more = (
        loop(return_conductor=back, length=length, arc=f"{arc:.3f}", available=available)
        for arc in sorted((one, other))
    )
    assert in_order(more["lowest_ampere"], less["lowest_ampere"])
    weak = loop(return_conductor=back, length=length, arc=f"{min(one, other):.3f}", available=100)
    assert in_order(weak["lowest_ampere"], less["lowest_ampere"])


@few(6)
@given(size, size, some.integers(15, 200), some.integers(2, 12), volt, some.sampled_from([None, 3000, 50_000]),
       some.sampled_from([0, 20, 50]))  # fmt: skip
def test_a_loop_as_long_as_the_longest_run_brings_the_current_asked_and_a_longer_one_does_not(
    out, back, device, multiple, driving, available, arc
):
    given_ = dict(edition="2023", device=device, conductor=out, return_conductor=back, voltage_to_ground=driving)
    given_ |= dict(available=available, arc=arc)
    longest = longest_return_path(**given_, multiple=multiple).answer.values["shortest_ft"]
    assume(1 <= longest < 99_000)
    assert loop(**given_, length=longest)["multiple"] >= multiple * (1 - 1e-6)
    assert loop(**given_, length=longest + 1)["multiple"] < multiple * (1 + 1e-6)


@few(6)
@given(some.sampled_from(["1/2", "1", "2", "4"]), some.integers(20, 200))
def test_the_same_holds_for_a_raceway_as_the_way_back(trade_size, device):
    tube = dict(edition="2023", device=device, conductor="4", voltage_to_ground=120)
    kind = "electrical-metallic-tubing"
    run = longest_return_path(**tube, wiring=kind, trade_size=trade_size, multiple=5).answer.values["shortest_ft"]
    assume(run >= 1)
    round_trip = dict(wiring="raceway", raceway=kind, trade_size=trade_size, return_conductor=None)
    assert loop(**tube, **round_trip, length=run)["multiple"] >= 5 * (1 - 1e-6)
    assert loop(**tube, **round_trip, length=run + 1)["multiple"] < 5 * (1 + 1e-6)


@few(200)
@given(some.sampled_from([BREAKER, FUSE]), some.integers(1, 600), some.integers(1, 600), some.floats(0.1, 5000))
def test_a_larger_device_is_never_surer_to_open_at_the_same_current(kind, one, other, ampere):
    """Nor faster: its multiple is lower and the times of its row are no shorter. No exception among listed ratings."""
    small, large = (opening(ampere / rating, kind, rating) for rating in sorted((one, other)))
    assert VERDICTS.index(large.verdict) <= VERDICTS.index(small.verdict)
    assert (small.slowest_second or inf) <= (large.slowest_second or inf)


def test_the_exceptions_to_a_larger_device_are_those_of_the_standards():
    """A time-delay class K fuse must hold five times its rating for 8 s to 30 A, for 10 s above.

    So 31 A holds longer, and no exception comes of it. A class C fuse to 60 A has no published time, the
    next larger has one: at 1.6 times 61 A the larger one is sure to open in 2 h, of the smaller one nothing is known.
    """
    small, large = (opening(97.6 / rating, FUSE, rating, fuse_class="c") for rating in (60, 61))
    assert small.verdict == "not-assured" and large.verdict == "slow" and large.slowest_second == 7200


@few(25)
@given(some.sampled_from([BREAKER, FUSE, "iec-b", "iec-c"]), some.integers(1, 125), some.floats(0.1, 1400),
       some.floats(0.1, 1400))  # fmt: skip
def test_a_higher_fault_current_is_never_slower_or_less_sure(kind, device, one, other):
    less, more = (
        device_clearing(edition="2023", device_kind=kind, device=device, fault_current=f"{each:.3f}").answer.values
        for each in sorted((one, other))
    )
    assert VERDICTS.index(less["verdict"]) <= VERDICTS.index(more["verdict"])
    assert (more["slowest_second"] or inf) <= (less["slowest_second"] or inf)


@few(20)
@given(some.floats(1, 200_000), some.floats(100, 200_000), some.floats(100, 200_000), some.integers(15, 600))
def test_a_higher_interrupting_rating_is_never_worse_and_more_current_available_never_better(
    ampere, one, other, device
):
    typed = dict(edition="2023", device=device, fault_current=f"{ampere:.2f}")
    weak, strong = (
        device_clearing(**typed, interrupting_rating=f"{each:.2f}").answer_code for each in sorted((one, other))
    )
    assert weak == "beyond-rating" or strong != "beyond-rating"
    near, far = (
        device_clearing(**typed, interrupting_rating=20_000, available=f"{each:.2f}").answer_code
        for each in sorted((one, other))
    )
    assert far == "beyond-rating" or near != "beyond-rating"


@few(10)
@given(some.floats(100, 20_000), some.floats(0.1, 5), some.floats(0.1, 5), some.sampled_from([None, 0, 5, 30]))
def test_a_longer_clearing_time_never_asks_for_a_smaller_jumper(ampere, one, other, ratio):
    typed = dict(edition="2023", fault_current=f"{ampere:.2f}", x_over_r=ratio)
    short, long = (jumper_withstand(**typed, clearing_time=f"{each:.4f}") for each in sorted((one, other)))
    assume(short.answer and long.answer)
    assert short.answer.values["area_cmil"] <= long.answer.values["area_cmil"]


@few(6)
@given(some.floats(0.001, 100), some.floats(0.001, 100), some.sampled_from(["yes", "no"]), some.floats(1, 100))
def test_a_better_metal_path_never_raises_the_voltage_on_it_nor_on_the_other_leg(one, other, broken, load):
    typed = dict(edition="2023", load=f"{load:.2f}", neutral="2", length=100, neutral_open=broken)
    better, worse = (
        stray_neutral_current(**typed, pipe=f"{each:.6f}").answer.values for each in sorted((one, other))
    )
    assert in_order(better["metal_volt"], worse["metal_volt"])
    assert in_order(worse["metal_ampere"], better["metal_ampere"])
    assert in_order(better["other_leg_volt"], worse["other_leg_volt"])


@few(6)
@given(some.floats(0.1, 1000), some.floats(0.1, 1000), some.floats(0, 100))
def test_more_ohms_at_the_metal_never_bring_more_current_nor_less_voltage_on_it(one, other, at_source):
    typed = dict(edition="2023", device=20, voltage_to_ground=120, source_ohm=f"{at_source:.3f}")
    few_ohms, many = (
        earth_only_return(**typed, electrode_ohm=f"{each:.3f}").answer.values for each in sorted((one, other))
    )
    assert in_order(many["ampere"], few_ohms["ampere"]) and in_order(few_ohms["metal_volt"], many["metal_volt"])


@few(6)
@given(some.integers(1, 2000), some.sampled_from(["panel", "machine"]))
def test_one_more_grounding_path_in_the_scene_never_lowers_the_fault_current(length, fault):
    typed = dict(edition="2023", fault=fault, feeder_length=length)
    wire, both = (take_a_bond_away(**typed, feeder_path=path).answer.values for path in ("wire", "both"))
    assert in_order(wire["fault_ampere"], both["fault_ampere"])
    assert in_order(both["volts"][fault], wire["volts"][fault])


@few(6)
@given(size, some.integers(1, 2000), some.integers(1, 2000), some.floats(0.5, 20), some.floats(0.5, 20))
def test_a_longer_run_or_a_higher_impedance_never_raises_the_available_current(line, one, other, low, high):
    typed = dict(edition="2023", system="208Y/120", kva=75, conductor=line)
    short, long = (
        available_fault_current(**typed, percent_z=2, length=length).answer.values["available_ampere"]
        for length in sorted((one, other))
    )
    assert long <= short
    stiff, soft = (
        available_fault_current(**typed, percent_z=f"{each:.3f}", length=one).answer.values["available_ampere"]
        for each in sorted((low, high))
    )
    assert soft <= stiff
