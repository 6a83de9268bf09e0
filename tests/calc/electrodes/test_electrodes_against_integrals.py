"""Electrodes against scipy, live: the same even current added up point by point, and current free to find its own way.

The first must agree to the last digits. The second is always lower, by the part a current can save: a few percent.
"""

import itertools
import math

import pytest
from scipy.integrate import dblquad

from calc import electrode_resistance
from calc.electrodes import shape
from tests.independent import electrode_integrals as integral

FOOT, INCH = 0.3048, 0.0254
RODS = [(8, 0.5), (8, 0.625), (10, 0.75), (20, 1), (4, 2)]  # ft, in
WIRES = [(10, 0.004, 0.75), (30, 0.0033, 0.76), (6, 0.01, 0.3), (100, 0.006, 1.5)]
SAME = 1e-9
SOIL = {"edition": "2023", "soil": "resistivity", "resistivity": "100"}
NUMBER_TWO = math.sqrt(66_360) / 2 * INCH / 1000  # m, the radius of 2 AWG


def upright(length, places):
    return [((x, y, 0), (x, y, length)) for x, y in places]


def standing(spacing, count, layout):
    """Return where rods stand, worked out here: in a row, or at the corners of a figure of equal sides."""
    if layout == "line":
        return [(step * spacing, 0) for step in range(count)]
    around = [(math.cos(2 * math.pi * step / count), math.sin(2 * math.pi * step / count)) for step in range(count)]
    side = math.dist(around[0], around[1])
    return [(x * spacing / side, y * spacing / side) for x, y in around]


@pytest.mark.parametrize(("feet", "inches"), RODS)
def test_a_rod_is_the_average_of_its_own_voltage(feet, inches):
    length, radius = feet * FOOT, inches * INCH / 2
    assert shape.rod(length, radius) == pytest.approx(integral.even_rod(length, radius), rel=SAME)
    free = integral.pieces(upright(length, [(0, 0)]), radius)
    # A stout rod, 24 times as long as thick, saves most.
    assert 1 < shape.rod(length, radius) / free < 1.04


@pytest.mark.parametrize("distance", [0.3, 1, 2.4384, 5, 40])
def test_a_rod_in_the_field_of_another_is_a_double_integral(distance):
    length, radius = 8 * FOOT, 0.3125 * INCH
    pair = (integral.even_rod(length, radius) + integral.even_rods_apart(length, distance)) / 2
    assert shape.rods(length, radius, distance, 2, "line") == pytest.approx(pair, rel=SAME)


@pytest.mark.parametrize("layout", ["line", "circle"])
@pytest.mark.parametrize("count", [2, 3, 8, 24])
@pytest.mark.parametrize("spacing", [6 * FOOT, 8 * FOOT, 16 * FOOT])
def test_rods_together_are_a_little_above_current_that_is_free(spacing, count, layout):
    length, radius = 8 * FOOT, 0.3125 * INCH
    free = integral.pieces(upright(length, standing(spacing, count, layout)), radius, count=30)
    assert 1 < shape.rods(length, radius, spacing, count, layout) / free < 1.03


@pytest.mark.parametrize(("length", "radius", "depth"), WIRES)
def test_a_buried_wire_is_the_average_of_its_own_voltage(length, radius, depth):
    assert shape.wire(length, radius, depth) == pytest.approx(integral.even_wire(length, radius, depth), rel=SAME)
    free = integral.pieces([((0, 0, depth), (length, 0, depth))], radius)
    assert 1 < shape.wire(length, radius, depth) / free < 1.03


@pytest.mark.parametrize(("length", "radius", "depth"), WIRES)
def test_a_ring_is_the_average_around_its_circle(length, radius, depth):
    assert shape.ring(length, radius, depth) == pytest.approx(integral.even_ring(length, radius, depth), rel=SAME)
    corners = [(math.cos(math.tau * step / 90), math.sin(math.tau * step / 90)) for step in range(91)]
    points = [(length / math.tau * x, length / math.tau * y, depth) for x, y in corners]
    free = integral.pieces(list(itertools.pairwise(points)), radius, count=6)
    assert shape.ring(length, radius, depth) / free == pytest.approx(1, abs=0.01)


@pytest.mark.parametrize(
    ("depth_by_radius", "within"), [(1, 0.0075), (1.2, 0.0035), (1.5, 0.0018), (2, 0.001), (8, 2e-5)]
)
def test_a_plate_is_near_the_exact_disc_down_to_its_limit(depth_by_radius, within):
    for radius in (0.2, 0.343, 1):
        side = radius * math.sqrt(math.pi)  # a square of its area
        found = shape.plate(side, side, depth_by_radius * radius)
        assert found == pytest.approx(integral.disc(radius, depth_by_radius * radius), rel=within)


def test_the_exact_disc_is_right_where_the_answer_is_known():
    """Far from the surface it is alone: 1 / (8 a). Nearly on the surface it is a disc lying on it: 1 / (4 a)."""
    assert integral.disc(0.5, 1e6) == pytest.approx(1 / (8 * 0.5), rel=1e-6)
    assert integral.disc(0.5, 0.01, points=800) == pytest.approx(1 / (4 * 0.5), rel=0.04)


@pytest.mark.parametrize(
    ("long", "short"), [(98, 2), (90, 10), (75, 25), (50, 50), (99.5, 0.5)], ids=lambda feet: f"{feet} ft"
)
def test_a_rectangular_ring_is_a_little_above_current_that_is_free(long, short):
    """200 ft of 2 AWG, 2.5 ft down: 4.63 ohm in 100 ohm·m at 98 by 2 ft, where a circle has 3.66."""
    one, other, depth = long * FOOT, short * FOOT, 2.5 * FOOT
    corners = [(0, 0, depth), (one, 0, depth), (one, other, depth), (0, other, depth)]
    free = integral.pieces(list(zip(corners, corners[1:] + corners[:1], strict=True)), NUMBER_TWO, count=60)
    found = shape.rectangle(one, other, NUMBER_TWO, depth)
    assert 1 < found / free < 1.012
    circle, line = shape.ring(200 * FOOT, NUMBER_TWO, depth), shape.wire(100 * FOOT, NUMBER_TWO, depth)
    assert circle < free < line


def test_a_square_ring_is_sides_in_pairs_added_up_point_by_point():
    """scipy, in two dimensions, of the average along a square of 5 m: each side on itself and on the three others."""
    side, radius, depth = 5.0, 0.01, 0.75

    def pair(at):
        return dblquad(lambda x, y: 1 / at(x, y), 0, side, 0, side, epsrel=1e-8)[0]

    def summed(down):
        own = integral.average_along(side, down) * side**2 * integral.WHOLE_SPACE
        facing = pair(lambda x, y: math.sqrt((x - y) ** 2 + side**2 + down**2))
        beside = pair(lambda x, y: math.sqrt(x**2 + y**2 + down**2))
        return 4 * (own + facing + 2 * beside)

    expected = (summed(radius) + summed(2 * depth)) / (4 * math.pi * (4 * side) ** 2)
    assert shape.rectangle(side, side, radius, depth) == pytest.approx(expected, rel=1e-5)


@pytest.mark.parametrize("depth_by_width", [1, 8])
@pytest.mark.parametrize(("by_width", "within"), [(1, 0.02), (2, 0.02), (2.01, 0.015), (10, 0.037), (50, 0.026)])
def test_a_plate_or_strip_is_never_under_small_patches_and_little_over(by_width, within, depth_by_width):
    """A strip counted as a disc of its area would have a third more at 10 times its width, twice as much at 50."""
    found = electrode_resistance(
        **SOIL, electrode="plate", length=f"{by_width}ft", width="1ft", depth=f"{depth_by_width}ft"
    ).answer.values["ohm_likely"]
    exact = 100 * integral.plate_in_patches(by_width * FOOT, FOOT, depth_by_width * FOOT)
    assert 1 < found / exact < 1 + within




@pytest.mark.parametrize(
    ("inputs", "expected"),
    [
        ({"length": "10ft", "diameter": "3/4in"}, integral.even_rod(10 * FOOT, 0.375 * INCH)),
        (
            {"electrode": "buried-wire", "length": "100ft", "conductor": "2", "depth": "30in"},
            integral.even_wire(100 * FOOT, NUMBER_TWO, 30 * INCH),
        ),
        (
            {"electrode": "ring", "length": "100ft", "conductor": "2", "depth": "30in"},
            integral.even_ring(100 * FOOT, NUMBER_TWO, 30 * INCH),
        ),
    ],
)
def test_the_calculator_answers_what_the_integral_gives(inputs, expected):
    answer = electrode_resistance(**SOIL, **inputs).answer
    assert answer.values["ohm_likely"] == pytest.approx(100 * expected, rel=1e-6)
