"""The loop of one fault: current, opening, what stays on the metal, and what is asked for."""

import pytest

from calc.fault.ground_fault_loop import ground_fault_loop
from tests.cases.read import cases, named

BASE = dict(edition="2023", voltage_to_ground=120, device=20, conductor="12", return_conductor="12", length=100)
STEEL = dict(raceway="electrical-metallic-tubing", trade_size="1/2")


def values(**inputs):
    return ground_fault_loop(**(BASE | inputs)).answer.values


@pytest.mark.parametrize("pair", cases("fault/ground_fault_loop"), ids=named)
def test_a_worked_case_is_what_its_source_says(pair):
    edition, case = pair
    result = ground_fault_loop(edition=edition, **case["inputs"])
    likely = {str(row.cells["what"]): str(row.cells["likely"]) for row in result.answer.table.rows}
    if "volt" in case:
        shown = likely["Voltage of the metal to earth and to the panel"]
        assert float(shown.split()[0]) == pytest.approx(case["volt"], rel=0.005)
    if "lowest_ampere" in case:
        assert result.answer.values["lowest_ampere"] == pytest.approx(case["lowest_ampere"], rel=0.002)


def test_the_three_currents_are_in_order_and_the_verdict_goes_by_the_lowest():
    found = values(device=30)
    assert found["lowest_ampere"] < found["likely_ampere"] < found["highest_ampere"]
    assert found["multiple"] == pytest.approx(found["lowest_ampere"] / 30, rel=1e-5)


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
    assert values(instantaneous_multiple=10)["verdict"] == "assured"
    assert values(instantaneous_multiple=20)["verdict"] != "assured"


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
    notes = " ".join(map(str, ground_fault_loop(**BASE).working.notes))
    assert "model for teaching and checking" in notes and "qualified" in notes and notes.count("Assumed:") == 5
