"""Ranges: corners, what lies between them, and which input counts most."""

import pytest

from calc.fault.circuit.ranges import Between, ranged


def test_a_current_is_lowest_with_the_highest_impedance_and_the_lowest_voltage():
    """120 V ± 3.5 and 0.40 ohm ± 0.06: 116.5/0.46 = 253.3 A to 123.5/0.34 = 363.2 A, likely 300 A."""
    inputs = {"volt": Between(116.5, 120, 123.5), "ohm": Between(0.34, 0.40, 0.46)}
    ampere = ranged(inputs, lambda at: {"ampere": at["volt"] / at["ohm"]}).results["ampere"]
    assert (ampere.low, ampere.likely, ampere.high) == pytest.approx((253.26, 300, 363.24), abs=0.01)


def test_an_extreme_between_the_corners_widens_the_answer():
    """x(1 - x) is 0 at both corners and 0.25 between them."""
    result = ranged({"x": Between(0, 0.3, 1)}, lambda at: {"y": at["x"] * (1 - at["x"])}).results["y"]
    assert result.low == 0 and 0.249 < result.high <= 0.25


def test_the_input_that_moves_the_result_most_comes_first():
    inputs = {"much": Between(1, 2, 3), "little": Between(1.9, 2, 2.1), "fixed": Between(5, 5, 5)}
    shares = ranged(inputs, lambda at: {"sum": sum(at.values())}).influence["sum"]
    assert [name for name, _ in shares] == ["much", "little"]
    assert shares[0][1] == pytest.approx(2 / 2.2)


def test_the_same_inputs_give_the_same_ranges():
    inputs = {"x": Between(0, 0.3, 1)}
    evaluate = lambda at: {"y": at["x"] * (1 - at["x"])}  # noqa: E731
    assert ranged(inputs, evaluate) == ranged(inputs, evaluate)


def test_without_a_range_the_result_is_one_value():
    result = ranged({"x": Between(2, 2, 2)}, lambda at: {"y": at["x"]}).results["y"]
    assert result == Between(2, 2, 2)
