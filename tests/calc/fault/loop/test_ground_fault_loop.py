"""The loop of one fault: current, opening, what stays on the metal, and what is asked for."""

import cmath
import itertools
import random

import pytest

from calc import device_clearing
from calc.conductors.impedance import impedance
from calc.fault.loop.ground_fault_loop import ground_fault_loop
from calc.fault.return_path.apart import impedance_apart
from tests.cases.read import cases, named

BASE = dict(edition="2023", voltage_to_ground=120, device=20, conductor="12", return_conductor="12", length=100)
STEEL = dict(raceway="electrical-metallic-tubing", trade_size="1/2")


def values(**inputs):
    return ground_fault_loop(**(BASE | inputs)).answer.values


def detail(**inputs):
    return str(ground_fault_loop(**(BASE | inputs)).answer.detail)


@pytest.mark.parametrize("pair", cases("fault/loop/ground_fault_loop"), ids=named)
def test_a_worked_case_is_what_its_source_says(pair):
    edition, case = pair
    result = ground_fault_loop(edition=edition, **case["inputs"])
    likely = {str(row.cells["what"]): str(row.cells["likely"]) for row in result.answer.table.rows}
    if "volt" in case:
        shown = likely["Voltage of the metal to the panel"]
        assert float(shown.split()[0]) == pytest.approx(case["volt"], rel=0.005)
    if "lowest_ampere" in case:
        assert result.answer.values["lowest_ampere"] == pytest.approx(case["lowest_ampere"], rel=0.002)


def test_the_three_currents_are_in_order_and_the_verdict_goes_by_the_lowest():
    found = values(device=30)
    assert found["lowest_ampere"] < found["likely_ampere"] < found["highest_ampere"]
    assert found["multiple"] == pytest.approx(found["lowest_ampere"] / 30, rel=1e-5)
    between = values(device=60)  # five times 60 A, from where a breaker probably opens, lies between the two ends
    assert between["lowest_ampere"] < 300 < between["likely_ampere"]
    assert between["verdict"] == "slow" and found["verdict"] == "likely"


def test_a_longer_run_never_gives_more_current():
    currents = [values(length=feet)["lowest_ampere"] for feet in (1, 10, 50, 100, 500, 2000, 10_000)]
    assert currents == sorted(currents, reverse=True)


def test_a_larger_wire_never_gives_less_current():
    currents = [values(return_conductor=size)["lowest_ampere"] for size in ("14", "12", "10", "8", "6", "2", "4/0")]
    assert currents == sorted(currents)


def test_wire_and_raceway_share_the_current_and_their_shares_add_to_more_than_one():
    """Their currents are out of step: steel is partly reactance, so magnitudes add to more than the whole."""
    found = values(wiring="both", **STEEL)
    assert found["wire_share"] + found["raceway_share"] > 1
    assert 0 < found["wire_share"] < 1 and 0 < found["raceway_share"] < 1


def test_a_raceway_beside_the_wire_lowers_the_voltage_on_the_metal():
    assert values(wiring="both", **STEEL)["touch_volt"] < values()["touch_volt"]


def test_a_loose_joint_in_the_only_way_back_stops_the_device():
    tight, loose = values(wiring="raceway", **STEEL), values(wiring="raceway", joint=10, **STEEL)
    assert tight["verdict"] == "likely" and loose["verdict"] == "does-not-open"
    assert loose["touch_volt"] > 0.9 * 120


def test_a_loose_locknut_beside_a_wire_leaves_the_wire_to_carry_it():
    both = values(wiring="both", joint=1000, **STEEL)
    assert both["wire_share"] == pytest.approx(1, abs=0.001) and both["verdict"] == "likely"


def test_a_stated_source_holds_the_current_back():
    """120 V at 2000 A is 0.06 ohm, added straight: 114 V / (0.4 + 0.06) is 247.8 A."""
    assert values(available=2000)["lowest_ampere"] == pytest.approx(114 / abs(0.46 + 0.0108j), rel=0.002)


def test_the_curve_of_the_device_makes_a_probable_opening_sure():
    assert values()["verdict"] == "likely"
    assert values(instantaneous_multiple=10)["verdict"] == "assured"  # 14.2 times, above 1.4 times 10
    assert values(instantaneous_multiple=14)["verdict"] == "likely"
    assert values(instantaneous_multiple=14, instantaneous_read="curve")["verdict"] == "assured"
    assert "if it is a setting, only from 19.6 times up" in detail(instantaneous_multiple=14)
    assert values(instantaneous_multiple=20)["verdict"] != "assured"


def test_the_loop_and_the_device_say_the_same_of_one_current():
    """Random loops, each current asked of the device alone: same verdict, same time, same words, never other times."""
    chance = random.Random(489)
    for _ in range(120):
        kind, device, multiple = chance.choice(DEVICES)
        typed = dict(device_kind=kind, device=device, instantaneous_multiple=multiple)
        size = chance.choice(["14", "12", "10", "6"])
        circuit = dict(conductor=size, return_conductor=size, length=chance.randint(5, 900))
        circuit |= dict(joint=chance.choice([0, 0, 0.5, 3]), available=chance.choice([200, 2000]))
        loop = ground_fault_loop(**(BASE | typed | circuit))
        found = loop.answer.values
        alone = device_clearing(
            edition="2023", fault_current=f"{found['lowest_ampere']:.9f}", interrupting_rating=200_000, **typed
        ).answer
        assert (found["verdict"], found["slowest_second"]) == (alone.values["verdict"], alone.values["slowest_second"])
        assert str(loop.answer.headline) == str(alone.headline)
        assert str(loop.answer.detail).startswith(str(alone.detail))
        assert "minutes or hours" not in " ".join(map(str, loop.trace.warnings))


DEVICES = [
    ("inverse-time-breaker", 20, None), ("inverse-time-breaker", 20, 8), ("inverse-time-breaker", 60, None),
    ("fuse", 30, None), ("fuse-time-delay", 15, None), ("iec-b", 16, None), ("iec-c", 32, None),
    ("ground-fault-protection", 100, None),
]  # fmt: skip


def test_eighty_eight_ampere_on_20_ampere_are_two_minutes_in_both():
    """A loose joint of 1 ohm: 114 V / (0.4 + 1 ohm) is 81.4 A; UL 489 gives a 20 A breaker 2 min from 40 A on."""
    slow = ground_fault_loop(**BASE, joint=1)
    assert "Its standard allows 2 min" in str(slow.answer.detail)
    assert any("live for 2 min" in str(words) for words in slow.trace.warnings)


def test_at_least_is_never_rounded_up_and_at_most_never_down():
    """114 V / |0.4 + 0.0108j| is 284.896 A; 120 V / |0.33537 + 0.0108j| is 357.63 A."""
    assert "284 to 358 A" in detail() and ground_fault_loop(**BASE).answer_code == "likely-284A-60V"


def test_an_ordinary_answer_is_read_at_a_glance_and_its_verdict_comes_first():
    ordinary = str(ground_fault_loop(**BASE, available=2000).answer.in_one_line)
    assert ordinary.startswith("Probably opens") and len(ordinary.split()) <= 30


@pytest.mark.parametrize(
    ("inputs", "wires"),
    [
        (dict(), "12 AWG copper both ways"),
        (dict(return_conductor="14"), "12 AWG copper out, 14 AWG copper back"),
        (dict(metal="aluminum"), "12 AWG copper out, 12 AWG aluminum back"),
        (dict(wiring="raceway"), "12 AWG copper out, the raceway back"),
        (dict(wiring="both"), "12 AWG copper out, 12 AWG copper and the raceway back"),
    ],
)
def test_every_way_back_that_counts_is_named_beside_the_current(inputs, wires):
    assert f"A, {wires}." in detail(raceway="electrical-metallic-tubing", trade_size="1/2", **inputs)


def test_the_least_current_has_every_range_at_its_worst_whatever_the_angle_of_the_source():
    """500 kcmil in steel is mostly reactance: a source of any angle from 0 to 90 degrees gives no less."""
    large = dict(voltage_to_ground=277, device=400, conductor="500kcmil", return_conductor="500kcmil", length=200)
    steel = dict(wiring="both", raceway="rigid-metal-conduit", trade_size="3")
    found = values(**large, **steel, available=10_000)
    from calc.raceways.return_impedance import return_impedance

    wire = impedance("500kcmil", "copper", "steel", 75) * 200
    tube = return_impedance("rigid-metal-conduit", "3")[2] * 200
    currents = [
        0.95 * 277 / abs(wire + 1 / (1 / wire + 1 / tube) + cmath.rect(277 / 10_000, cmath.pi / 2 * step / 90))
        for step in range(91)
    ]
    assert found["lowest_ampere"] == pytest.approx(min(currents), rel=1e-4)
    assert found["lowest_ampere"] <= min(currents) * (1 + 1e-9)


def test_a_source_not_entered_belongs_to_the_verdict():
    """5 times 20 A needs 1.2 of 114 V / 100 A = 1.14 ohm; 1.14 - 0.40015 is 0.73985 ohm, 120 V over it 162.2 A."""
    assert values()["least_available_ampere"] == 163
    assert "True where 163 A or more is available" in detail() and "infinite source" in detail()
    assert values(available=163)["verdict"] == "likely" and values(available=160)["verdict"] == "slow"
    assert "available" not in detail(available=2000) and "infinite" not in detail(available=2000)
    assert values(available=2000)["least_available_ampere"] == 163
    hopeless = values(length=5000)
    assert hopeless["verdict"] == "does-not-open" and hopeless["least_available_ampere"] is None


def test_an_arc_that_makes_another_verdict_is_told_and_one_that_does_not_is_silent():
    """With 200 ft: 142.5 A or 7.1 times; an arc of 50 V leaves 64 / 114 of it, 80 A or 4 times."""
    assert "arc" not in detail()
    assert "Through an arc, by trade practice 50 V, as little as 79.9 A: opens slowly" in detail(length=200)
    entered = values(length=200, arc=50)
    assert entered["verdict"] == "slow" and entered["lowest_ampere"] == pytest.approx(142.448 * 64 / 114, rel=1e-4)
    assert entered["touch_volt"] == values(length=200)["touch_volt"], "the arc may go out and leave the metal pressed"
    assert values(arc=114)["lowest_ampere"] == 0 and values(arc=1000)["verdict"] == "does-not-open"


def test_a_way_back_apart_counts_the_field_between_the_two_wires():
    """6 AWG out, 10 AWG back, 20 ft apart: less current and more voltage than side by side."""
    circuit = dict(device=60, conductor="3", return_conductor="8", available=3000)
    together, apart = values(**circuit), values(**circuit, wiring="wire-apart", spacing=20)
    assert apart["lowest_ampere"] < together["lowest_ampere"]
    near = values(**circuit, wiring="wire-apart", spacing=0.1)
    assert apart["lowest_ampere"] < near["lowest_ampere"] <= together["lowest_ampere"]
    asked = ground_fault_loop(**(BASE | circuit), wiring="wire-apart")
    assert [each.field for each in asked.fix] == ["spacing"]


@pytest.mark.parametrize("size", ["12", "4", "4/0", "500kcmil"])
def test_the_reactance_of_wires_apart_is_the_flux_between_them(size):
    """Flux of 1 A counted in 20,000 strips from the surface to the other axis, and 1/4 of it inside a round wire."""
    from tests.independent.wire_gauge import listed_areas

    radius, feet = listed_areas()[size] ** 0.5 / 2 * 0.0254 / 1000, 3
    ends = [radius * (feet * 0.3048 / radius) ** (step / 20_000) for step in range(20_001)]
    flux = sum(2e-7 / ((a + b) / 2) * (b - a) for a, b in itertools.pairwise(ends)) + 2e-7 / 4
    expected = 377 * flux * 0.3048
    assert impedance_apart(size, "copper", 75, feet).imag == pytest.approx(expected, rel=0.002)


def test_the_reactance_at_one_foot_is_no_less_than_the_published_one():
    """4/0 copper of 19 strands at 1 ft: 0.497 ohm a mile in tables of lines; a solid wire of its area, 2.6 % more."""
    at_one_foot = impedance_apart("4/0", "copper", 75, 1).imag * 5280
    assert 0.497 <= at_one_foot < 0.497 * 1.03


def test_a_device_far_too_large_for_its_wire_is_remarked_and_a_motor_circuit_is_not():
    """14 AWG copper carries 20 A at 75 °C (Table 310.16)."""
    for device, remarked in ((1000, True), (81, True), (80, False), (20, False)):
        warned = ground_fault_loop(**(BASE | dict(device=device, conductor="14"))).trace.warnings
        assert any("which carries 20 A" in str(words) for words in warned) is remarked


def test_the_voltage_is_called_to_the_panel_and_the_earth_is_told_apart():
    result = ground_fault_loop(**BASE)
    assert "Up to 60 V from metal to panel" in str(result.answer.detail)
    assert any("To earth it is higher" in str(words) for words in result.trace.notes)


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        (dict(return_conductor=None), "return_conductor"),
        (dict(wiring="raceway"), "raceway"),
        (dict(wiring="both", raceway="rigid-metal-conduit"), "trade_size"),
        (dict(length=0), "length"),
        (dict(length="1e9"), "length"),
        (dict(joint=-1), "joint"),
        (dict(device="lamp"), "device"),
        (dict(voltage_to_ground=None), "voltage_to_ground"),
        (dict(device_kind="fuse", instantaneous_multiple=10), "instantaneous_multiple"),
        (dict(fuse_class="c"), "fuse_class"),
        (dict(device_kind="ground-fault-protection", device=1201), "device"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = ground_fault_loop(**(BASE | inputs))
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize(
    "inputs", [dict(system="240-ungrounded"), dict(conductor="2000kcmil"), dict(metal="copper-clad-aluminum")]
)
def test_what_is_outside_the_rules_says_where_to_look(inputs):
    result = ground_fault_loop(**(BASE | inputs))
    assert result.outcome in ("not_covered", "fix")
    assert result.outcome == "not_covered" or result.fix[0].field == "system"


def test_the_result_says_that_it_is_a_model_and_who_decides():
    notes = " ".join(map(str, ground_fault_loop(**BASE).trace.notes))
    assert "model for teaching and checking" in notes and "qualified" in notes and notes.count("Assumed:") == 5
