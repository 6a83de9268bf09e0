"""Buried metal against charges on its whole skin, by numpy, and against the exact row of images of a ball.

A line of current has no thickness; the skin has. So the two differ most near the surface, always to the high side
for the voltage over the metal.
"""

import pytest

from calc.touch.surface import buried_metal
from tests.independent import buried_metal as skin

INCH = 0.0254
OHMS = 0.022  # with current free along a line, its ends still let out a little too much
ELBOWS = [(0.84, 4), (2.375, 9.5), (2.375, 30), (4.5, 16)]  # in, outside and bend
RUNS = [(2.375, 9.5), (4.5, 18.1), (2.375, 25), (2.375, 120), (0.84, 48)]  # in, outside and length


@pytest.mark.parametrize(("outside", "bend"), ELBOWS)
@pytest.mark.parametrize("cover", [2, 6, 18, 60])
@pytest.mark.parametrize("upright", [False, True])
def test_an_elbow_has_the_ohms_and_the_voltage_of_its_skin(outside, bend, cover, upright):
    radius, bend, cover = outside / 2 * INCH, bend * INCH, cover * INCH
    if upright:
        found = buried_metal.upright_elbow(bend, radius, cover)
    else:
        found = buried_metal.level_elbow(bend, radius, cover + radius)
    true = skin.elbow(bend, radius, cover, upright)
    assert found.shape == pytest.approx(true.shape, rel=OHMS)
    highest = max(true.share(found.highest + step * 0.01) for step in range(-8, 9))
    # Near the surface a line is up to a tenth of the metal's voltage high, deep down it is exact to a hundredth.
    assert -0.002 <= found.share(found.highest) - highest <= (0.1 if cover < 6 * INCH else 0.03)
    if cover >= 18 * INCH:
        assert found.share(found.highest) == pytest.approx(highest, abs=0.01)
    for away in (1, -1, 3):
        assert found.share(found.highest + away) == pytest.approx(true.share(found.highest + away), rel=0.025)


@pytest.mark.parametrize(("outside", "length"), RUNS)
@pytest.mark.parametrize("cover", [2, 18, 60])
def test_a_run_has_the_ohms_and_the_voltage_of_its_skin(outside, length, cover):
    radius, length, cover = outside / 2 * INCH, length * INCH, cover * INCH
    found = buried_metal.pipe(length, radius, cover + radius)
    true = skin.pipe(length, radius, cover + radius)
    assert found.shape == pytest.approx(true.shape, rel=OHMS)
    assert -0.003 <= found.share(0) - true.share(0) <= 0.05
    for away in (0.5, 1, 3):
        assert found.share(away) == pytest.approx(true.share(away), rel=0.025)
    assert max(true.share(0, length / 2 * part / 10) for part in range(11)) == true.share(0)


@pytest.mark.parametrize(
    ("radius_by_depth", "ohms", "over"),
    [(0.6, 0.007, 0.06), (0.5, 0.004, 0.033), (0.33, 0.001, 0.01), (0.1, 1e-5, 3e-4)],
)
def test_a_ball_is_near_its_endless_row_of_images_down_to_its_limit(radius_by_depth, ohms, over):
    for depth in (0.1, 1, 3):
        found = buried_metal.ball(radius_by_depth * depth, depth)
        exact, share = skin.ball(radius_by_depth * depth, depth)
        assert found.shape == pytest.approx(exact, rel=ohms)
        for x in (0, 0.5 * depth, 2 * depth):
            assert 0 <= found.share(x) / share(x) - 1 <= over


def test_the_exact_row_is_right_where_the_answer_is_known():
    """Far down a ball is alone: 1 / (4 pi a). Its share is that of the first charges: published figures of one ball."""
    assert skin.ball(0.1, 1e6)[0] == pytest.approx(1 / (12.566370614 * 0.1), rel=1e-6)
    ohms, share = skin.ball(0.1, 0.457)
    assert ohms == pytest.approx(0.882724683812508, rel=1e-9)
    assert [share(x) for x in (0, 0.5, 1, 2)] == pytest.approx([0.39347, 0.26585, 0.16391, 0.08787], abs=1e-5)


def test_a_line_cut_finer_than_it_is_thick_lets_out_too_much():
    """Why pieces are as long as the radius: five times finer, an elbow has 5 percent fewer ohms than its skin."""
    radius, bend, depth = 2.375 / 2 * INCH, 9.5 * INCH, 18 * INCH + 2.375 / 2 * INCH
    true = skin.elbow(bend, radius, 18 * INCH, False).shape
    fine = [buried_metal.parts(1, 1 / 13), [count / 65 for count in range(66)]]
    shapes = []
    for cuts in fine:
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr(buried_metal, "parts", lambda length, radius, cuts=cuts: cuts)
            shapes.append(buried_metal.level_elbow(bend, radius, depth).shape)
    assert shapes[0] == pytest.approx(true, rel=0.01)
    assert shapes[1] < 0.96 * true
