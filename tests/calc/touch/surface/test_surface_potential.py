"""The equations of wires in soil, held against systems whose solution is known by hand."""

import math
from itertools import pairwise

import pytest

from calc.touch.surface.surface_potential import ALONG_X, Bundle, bundle_currents, solved, surface_voltage


def test_equations_whose_rows_weigh_most_in_their_own_place_are_solved_as_by_hand():
    # 4x + y = 9 and x + 3y = 5: x = 2, y = 1.
    assert solved([[4.0, 1.0], [1.0, 3.0]], [9.0, 5.0]) == pytest.approx([2.0, 1.0], abs=1e-15)


@pytest.mark.parametrize("pivot", [0.0, 1e-20])
def test_equations_that_need_another_pivot_are_solved_with_it(pivot):
    # pivot*x + y = 1 and x + y = 2: x = 1, y = 1 but for the pivot; without a change of rows x comes out as 0.
    assert solved([[pivot, 1.0], [1.0, 1.0]], [1.0, 2.0]) == pytest.approx([1.0, 1.0], abs=1e-12)


def test_a_hundred_wires_seen_one_by_one_give_the_sum_of_each_alone():
    """Their logarithms are added as a product, which must not grow past the largest number there is."""
    places = tuple(1 + 0.1 * place for place in range(100))
    many = Bundle(ALONG_X, 0.0, 40.0, places, 0.95, 10.95, 1.0, 0.004, (20.0, 5.0))
    alone = [
        Bundle(ALONG_X, 0.0, 40.0, (place,), place - 0.05, place + 0.05, 1.0, 0.004, (20.0, place)) for place in places
    ]
    summed = surface_voltage(alone, [1.0] * len(alone), 20.0, 5.0)
    assert surface_voltage([many], [1.0], 20.0, 5.0) == pytest.approx(summed, rel=1e-12)


def test_one_long_wire_has_the_voltage_of_its_own_metal():
    """A level wire of 4 pieces in one quarter: at each match point the voltage is 1 by the currents found."""
    cuts = [0.0, 5.0, 8.0, 9.5, 10.0]
    pieces = [
        Bundle(ALONG_X, start, end, (2.0,), 2.0, 2.0, 1.5, 0.01, ((start + end) / 2, 2.0))
        for start, end in pairwise(cuts)
    ]
    currents = bundle_currents(pieces)
    assert all(current > 0 for current in currents)
    middle = surface_voltage(pieces, currents, 5.0, 2.0)
    assert 0 < middle < 1
    assert math.isclose(middle, surface_voltage(pieces, currents, -5.0, -2.0), rel_tol=1e-12)
