"""The voltage on a pool deck: a published table, two second routes, order, limits, and what it must say."""

import itertools
import math
import re
from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import EDITIONS, deck_voltage, shock_limits
from calc.permalink import read, write
from calc.rulebook import rule
from calc.touch.deck.deck import FINENESS
from calc.touch.deck.deck_metal import Wire, loop, mesh
from calc.touch.surface.surface_potential import bundle_currents, resistance_shape, surface_voltage
from tests.cases.read import cases, named
from tests.independent import deck_pieces, deck_section

CASES = "touch/deck/deck_voltage"
FOOT, DIAMETER = 0.3048, 0.1285 / 12
QUICK, FINE = FINENESS["quick"], FINENESS["fine"]
OFFSETS = (0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6)
ARRANGEMENTS = ("shell", "ring", "grid", "mesh")


@cache
def _deck(edition, inputs):
    return deck_voltage(edition=edition, **dict(inputs))


def deck(edition="2023", **inputs):
    return _deck(edition, tuple(({"rise": 120} | inputs).items()))


def values(**inputs):
    return deck(**inputs).answer.values


def compared(**inputs):
    return {each["arrangement"]: each for each in values(**inputs)["compared"]}


def words(result):
    spoken = [*(step.words for step in result.trace.steps), *result.trace.notes, *result.trace.warnings]
    return " ".join(map(str, spoken))


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_voltages_of_their_source(pair):
    edition, case = pair
    found = deck(edition, **case["inputs"]).answer.values
    assert found["at_ft"] == [0.5, 1.5, 3.0, 6.0]
    assert found["side_volts"] == pytest.approx(case["side"], abs=case["within"]), case["reason"]


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


def solved(bundles, places):
    currents = bundle_currents(bundles)
    return [1 - surface_voltage(bundles, currents, *place) for place in places], currents


def out_from(width, length):
    """Places out from the middle of a long side and from a corner."""
    side = [(width / 2 + away, 0.0) for away in OFFSETS]
    return side + [(width / 2 + away / math.sqrt(2), length / 2 + away / math.sqrt(2)) for away in OFFSETS]


@pytest.mark.parametrize(
    ("pool", "wires", "bundles", "piece", "least"),
    [
        ((16, 32), deck_pieces.ring(16, 32, 0, 4), loop(8, 16, Wire(4, DIAMETER / 2, QUICK)), 0.25, 0.002),
        (
            (16, 32),
            deck_pieces.ring(16, 32, 1.5, 1 / 3),
            loop(9.5, 17.5, Wire(1 / 3, DIAMETER / 2, QUICK)),
            0.25,
            0.002,
        ),
        ((40, 90), deck_pieces.ring(40, 90, 2, 0.5), loop(22, 47, Wire(0.5, DIAMETER / 2, QUICK)), 0.25, 0.002),
        (
            (16, 32),
            deck_pieces.mesh(16, 32, 3, 1, 1 / 3),
            mesh(8, 16, 3, 1, Wire(1 / 3, DIAMETER / 2, QUICK)),
            0.25,
            0.008,
        ),
        (
            (16, 32),
            deck_pieces.mesh(16, 32, 3, 1, 1 / 3),
            mesh(8, 16, 3, 1, Wire(1 / 3, DIAMETER / 2, FINE)),
            0.25,
            0.005,
        ),
        (
            (8, 12),
            deck_pieces.mesh(8, 12, 2, 0.5, 1 / 6),
            mesh(4, 6, 4, 0.5, Wire(1 / 6, DIAMETER / 2, QUICK)),
            0.125,
            0.01,
        ),
    ],
    ids=["shell", "ring", "large ring", "grid", "fine grid", "6 in mesh"],
)
def test_spans_and_bundles_agree_with_small_equal_pieces_of_numpy(pool, wires, bundles, piece, least):
    """Single wires: 0.002, the longest spans are 20 ft. Meshes: bundles stand for many pieces, 0.01 as stated."""
    places = out_from(*pool)
    touch, shape = deck_pieces.solved(wires, DIAMETER, piece)
    found, currents = solved(bundles, places)
    assert found == pytest.approx([touch(*place) for place in places], abs=least)
    assert resistance_shape(bundles, currents) / FOOT == pytest.approx(shape, rel=0.005)


@pytest.mark.parametrize(
    ("pool", "reach", "spacing", "depth"),
    [
        ((16, 32), 3, 1, 4),
        ((6, 10), 3, 1, 4),
        ((8, 12), 2, 0.5, 2),
        ((15, 30), 3, 0.75, 3),
        ((6, 6), 3, 1.5, 4),
        ((18, 36), 3, 1.5, 1),
    ],
)
def test_no_mesh_is_off_by_more_of_the_rise_than_the_answer_says(pool, reach, spacing, depth):
    wire = Wire(depth / 12, DIAMETER / 2, QUICK)
    touch, _ = deck_pieces.solved(deck_pieces.mesh(*pool, reach, spacing, depth / 12), DIAMETER, spacing / 4)
    found, _ = solved(mesh(pool[0] / 2, pool[1] / 2, round(reach / spacing), spacing, wire), out_from(*pool))
    off = 100 * max(abs(one - touch(*place)) for one, place in zip(found, out_from(*pool), strict=True))
    limits = {row["limit"]: row["figure"] for row in rule("places/deck_model_limits", "2023").rows}
    narrow = spacing * 12 <= limits["fine-spacing-inches"]
    assert off < limits["percent-of-rise" if narrow else "percent-of-rise-wider"]


@pytest.mark.parametrize(
    ("wires", "ohm"),
    [
        (loop(9.5, 17.5, Wire(0.5, DIAMETER / 2, QUICK)), 7.611),
        (loop(10, 18, Wire(1 / 3, DIAMETER / 2, QUICK)), 7.563),
        (loop(10, 18, Wire(0.5, DIAMETER / 2, QUICK)), 7.370),
        (mesh(8, 16, 3, 1, Wire(1 / 3, DIAMETER / 2, QUICK)), 5.173),
    ],
)
def test_the_resistance_in_100_ohm_metre_is_that_of_a_moment_method_run_apart(wires, ohm):
    """Half a percent: what spans leave out at the corners."""
    assert 100 * resistance_shape(wires, bundle_currents(wires)) / FOOT == pytest.approx(ohm, rel=0.005)


SECTIONS = {"shell": [(0, 4)], "ring": [(1.5, 1 / 3)], "wires": [(away, 1 / 3) for away in range(4)]}


@cache
def in_section(name, **how):
    """Touch voltages beside a pool wall by finite volumes, ft out from it as OFFSETS."""
    wall = how.pop("wall", 0.0)
    wires = [(wall + away * FOOT, depth * FOOT) for away, depth in SECTIONS[name]]
    return deck_section.touch(wires, DIAMETER / 2 * FOOT, wall, offsets=[each * FOOT for each in OFFSETS], **how)


@pytest.mark.parametrize("name", SECTIONS)
def test_a_very_long_pool_has_the_profile_of_a_section_by_finite_volumes(name):
    """Beside the value 6 ft out, which cancels how far away 0 V is. 0.015: wires stand in cells of 8 mm there."""
    bundles = [
        bundle
        for away, depth in SECTIONS[name]
        for bundle in loop(8 + away, 400 + away, Wire(depth, DIAMETER / 2, FINE))
    ]
    found, _ = solved(bundles, [(8 + away, 0.0) for away in OFFSETS])
    section = in_section(name, wall=8 * FOOT, insulating=False, reach=300)
    assert [each / found[-1] for each in found] == pytest.approx([each / section[-1] for each in section], abs=0.015)


def test_the_section_gives_what_another_run_of_finite_volumes_gave():
    """An insulating wall, a 4 in slab, 0 V at 15 m: ring in a slab like the soil, half and ten times of it."""
    for slab, expected in (
        (1.0, (0.255, 0.22, 0.175, 0.251, 0.323, 0.374, 0.445, 0.496, 0.536)),
        (0.5, (0.177, 0.15, 0.12, 0.185, 0.25, 0.3, 0.375, 0.431, 0.475)),
        (10.0, (0.593, 0.558, 0.492, 0.574, 0.63, 0.662, 0.702, 0.73, 0.752)),
    ):
        found = in_section("ring", insulating=True, reach=15, slab=(4 / 12 * FOOT, slab))
        assert found == pytest.approx(expected, abs=0.01)


def test_beside_an_insulating_wall_the_order_is_the_same():
    shell, ring, wires = (
        in_section(name, insulating=True, reach=15, slab=(4 / 12 * FOOT, 1.0)) for name in ("shell", "ring", "wires")
    )
    to_3_ft = slice(0, 6)
    assert max(wires[to_3_ft]) < max(ring[to_3_ft]) < max(shell[to_3_ft])
    sides = {each: values(arrangement=each)["side_volts"] for each in ("shell", "ring", "grid")}
    for name, section in (("shell", shell), ("ring", ring), ("grid", wires)):
        # The wall doubles what the wire sends up, and 0 V lies nearer: both together move it by a tenth at most.
        at_four = [section[OFFSETS.index(ft)] for ft in (0.5, 1.5, 3, 6)]
        assert at_four == pytest.approx([volt / 120 for volt in sides[name]], abs=0.1)


def test_a_dry_slab_above_the_metal_leaves_several_times_the_voltage():
    wet, dry = (in_section("wires", insulating=True, reach=15, slab=(4 / 12 * FOOT, slab)) for slab in (1.0, 10.0))
    assert all(2.5 < one / other < 6 for one, other in zip(dry[:6], wet[:6], strict=True))
    assert "several times the voltage shown" in words(deck(arrangement="grid"))


POOLS = [(16, 32), (6, 6), (12, 24), (40, 80)]


@pytest.mark.parametrize("pool", POOLS)
@pytest.mark.parametrize("shell", ["no", "yes"])
def test_the_highest_touch_is_lower_with_a_mesh_than_with_a_ring_and_lower_with_a_ring_than_with_nothing(pool, shell):
    width, length = pool
    found = {
        name: each["touch_volt"] for name, each in compared(pool_width=width, pool_length=length, shell=shell).items()
    }
    assert found["mesh"] < found["grid"] < found["ring"] < found["shell"]


@pytest.mark.parametrize("pool", POOLS)
def test_one_wire_raises_the_step_inside_the_deck_and_the_answer_says_so(pool):
    width, length = pool
    result = deck(arrangement="ring", pool_width=width, pool_length=length)
    found = {each["arrangement"]: each["step_inside_volt"] for each in result.answer.values["compared"]}
    assert found["ring"] > 2 * found["shell"] and result.answer.values["step_raised"] is True
    first = next(words for words in result.trace.warnings if "raises the step" in str(words))
    told = [float(each) for each in re.findall(r"([\d.]+) V", str(first))]
    # Two digits: “up to” is never under the value, the other is the nearest.
    assert 1 <= told[0] / found["ring"] <= 1.1 and told[1] == pytest.approx(found["shell"], rel=0.05)


def test_a_grid_makes_the_step_inside_small_and_the_step_off_its_edge_large():
    result = deck(arrangement="grid")
    found = {each["arrangement"]: each for each in result.answer.values["compared"]}
    assert found["grid"]["step_inside_volt"] < found["shell"]["step_inside_volt"]
    assert found["grid"]["step_across_volt"] > 3 * found["shell"]["step_across_volt"]
    assert result.answer.values["step_raised"] is False
    assert "raises the step" not in words(result) and "steps off the edge" in words(result)


def test_a_3_ft_step_off_a_mesh_out_from_a_side_takes_26_to_30_percent():
    """Published with the table: 0.26 to 0.30 of the rise from 3 ft to 6 ft."""
    for depth in ("4in", "1.5in"):
        _, _, at_3, at_6 = values(arrangement="grid", depth=depth)["side_volts"]
        assert 0.255 <= (at_6 - at_3) / 120 <= 0.305


def test_a_2_ft_step_within_3_ft_is_that_of_the_published_table():
    """Exactly 2 ft apart, from 3 in off the wall on, as in the table; the answer seeks from the wall and shorter ones.

    Two more digits of a mesh hang on where its wires across lie: 0.008.
    """
    for bundles, expected, least in (
        (loop(8, 16, Wire(4, DIAMETER / 2, QUICK)), 0.043, 0.001),
        (loop(9.5, 17.5, Wire(1 / 3, DIAMETER / 2, QUICK)), 0.128, 0.001),
        (loop(10, 18, Wire(0.5, DIAMETER / 2, QUICK)), 0.134, 0.001),
        (mesh(8, 16, 3, 1, Wire(1 / 3, DIAMETER / 2, FINE)), 0.032, 0.008),
        (mesh(8, 16, 3, 1, Wire(1 / 8, DIAMETER / 2, FINE)), 0.019, 0.008),
    ):
        feet = [(near, near + 2) for near in (0.25, 0.5, 0.75, 1.0)]
        found, _ = solved(bundles, [(8 + at, 0.0) for pair in feet for at in pair])
        largest = max(abs(one - other) for one, other in zip(found[::2], found[1::2], strict=True))
        assert largest == pytest.approx(expected, abs=least)


def test_a_shorter_longest_step_never_gives_more():
    for arrangement in ARRANGEMENTS:
        short, long = (values(arrangement=arrangement, step=each) for each in ("2ft", "3ft"))
        assert short["step_inside_volt"] <= long["step_inside_volt"]
        assert short["step_across_volt"] <= long["step_across_volt"]


def test_at_a_small_standing_voltage_one_wire_leaves_a_volt_and_a_grid_a_fifth():
    """Published for 3 V: about 1.2 V at 3 ft with one wire, 0.2 V with a mesh."""
    assert values(rise=3, arrangement="ring")["side_volts"][2] == pytest.approx(1.2, abs=0.05)
    assert values(rise=3, arrangement="grid")["side_volts"][2] == pytest.approx(0.2, abs=0.02)


@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
def test_every_voltage_grows_with_the_rise(arrangement):
    one, ten = (values(arrangement=arrangement, rise=rise) for rise in (12, 120))
    for name in ("touch_volt", "volt_at_distance", "step_inside_volt", "step_across_volt"):
        assert ten[name] == pytest.approx(10 * one[name])
    assert ten["touch_percent"] == pytest.approx(one["touch_percent"])


@settings(deadline=None, max_examples=40)
@given(
    draw.sampled_from(["shell", "ring"]),
    draw.floats(6, 200),
    draw.floats(6, 200),
    draw.floats(0, 120),
    draw.floats(1, 48),
)
def test_no_touch_voltage_is_negative_or_above_the_rise(arrangement, one, other, out, depth):
    half = sorted((one / 2, other / 2))
    wire = Wire(4, DIAMETER / 2, QUICK) if arrangement == "shell" else Wire(depth / 12, DIAMETER / 2, QUICK)
    away = 0 if arrangement == "shell" else out / 12
    found, _ = solved(loop(half[0] + away, half[1] + away, wire), out_from(2 * half[0], 2 * half[1]))
    assert all(0 < each < 1 for each in found)


def test_counting_the_shell_never_raises_the_highest_touch():
    for arrangement in ("ring", "grid", "mesh"):
        assert (
            values(arrangement=arrangement, shell="yes")["touch_volt"] < values(arrangement=arrangement)["touch_volt"]
        )


def test_a_thicker_wire_and_a_finer_grid_lower_the_touch():
    assert values(arrangement="ring", conductor="2/0")["touch_volt"] < values(arrangement="ring")["touch_volt"]
    assert values(arrangement="grid", spacing=6)["touch_volt"] < values(arrangement="grid")["touch_volt"]
    assert values(arrangement="grid")["touch_volt"] < values(arrangement="grid", spacing=18)["touch_volt"]


def test_a_mesh_narrower_than_3_ft_is_still_judged_to_3_ft():
    """At its corner the strip is square: its tip lies 3 ft times the root of 2 away."""
    narrow = values(arrangement="grid", mesh_width=2)
    assert narrow["touch_volt"] > 1.5 * values(arrangement="grid")["touch_volt"]
    assert narrow["worst_ft"] == pytest.approx(3 * 2**0.5) and narrow["worst_line"] == "corner"


@pytest.mark.parametrize(
    ("wires", "inputs"),
    [
        (deck_pieces.ring(8, 12, 0, 4), {"arrangement": "shell"}),
        (deck_pieces.ring(8, 12, 1.5, 1 / 3), {"arrangement": "ring"}),
        (deck_pieces.mesh(8, 12, 3, 1, 1 / 8), {"arrangement": "grid", "depth": "1.5in"}),
        (deck_pieces.mesh(8, 12, 2, 1, 1 / 3), {"arrangement": "grid", "mesh_width": 2}),
    ],
    ids=["shell", "ring", "shallow grid", "narrow grid"],
)
def test_nowhere_within_the_square_strip_is_there_more_than_the_answer_says(wires, inputs):
    """Small equal pieces of numpy, every half foot over the whole strip, its corner too: not on two lines only."""
    touch, _ = deck_pieces.solved(wires, DIAMETER, 0.25)
    found = max(touch(x / 2, y / 2) for x in range(15) for y in range(19) if x >= 8 or y >= 12)
    stated = values(**inputs, pool_width=8, pool_length=12)
    assert found <= stated["touch_volt_most"] / 120
    assert found == pytest.approx(stated["touch_volt"] / 120, abs=0.01)


def test_which_side_is_called_length_does_not_matter():
    assert values(pool_length=16, pool_width=32) == values(pool_length=32, pool_width=16)


@pytest.mark.parametrize(
    ("inputs", "outcome"),
    [
        ({"depth": "0.19in"}, "not_covered"),  # 3 radii of 8 AWG are 0.1928 in
        ({"depth": "0.193in"}, "answer"),
        ({"depth": "0"}, "not_covered"),
        ({"conductor": "2000kcmil", "depth": "2.12in"}, "not_covered"),  # 1.414 in thick: 3 radii are 2.121 in
        ({"conductor": "2000kcmil", "depth": "2.13in"}, "answer"),
        ({"arrangement": "grid", "mesh_width": 8}, "answer"),
        ({"arrangement": "grid", "mesh_width": 9}, "not_covered"),
        ({"arrangement": "mesh", "mesh_width": 4}, "answer"),
        ({"arrangement": "mesh", "mesh_width": 4.5}, "not_covered"),
        ({"arrangement": "grid", "conductor": "4/0", "spacing": "4.5in", "mesh_width": 0.75}, "not_covered"),
        ({"arrangement": "grid", "conductor": "4/0", "spacing": "4.6in", "mesh_width": 0.8}, "answer"),  # 0.46 in thick
        ({"form": "other"}, "not_covered"),
    ],
)
def test_what_the_solution_does_not_hold_for_is_not_covered(inputs, outcome):
    result = deck(**({"arrangement": "ring"} | inputs))
    assert result.outcome == outcome


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        ({"rise": None}, "rise"),
        ({"rise": "0"}, "rise"),
        ({"rise": "-3"}, "rise"),
        ({"rise": "1001V"}, "rise"),
        ({"rise": "120 ft"}, "rise"),
        ({"pool_length": "5.9"}, "pool_length"),
        ({"pool_width": "1e9"}, "pool_width"),
        ({"distance": "-1"}, "distance"),
        ({"distance": "21"}, "distance"),
        ({"spacing": "1.9in"}, "spacing"),
        ({"spacing": "19in"}, "spacing"),
        ({"arrangement": "hope"}, "arrangement"),
        ({"arrangement": "mesh", "conductor": "8"}, "conductor"),
        ({"arrangement": "grid", "mesh_width": "0.5"}, "mesh_width"),
        ({"arrangement": "grid", "mesh_width": "2.9", "spacing": "18in"}, "mesh_width"),
        ({"conductor": "9"}, "conductor"),
        ({"step": "4ft"}, "step"),
    ],
)
def test_what_is_missing_or_cannot_be_is_named(inputs, field):
    result = deck(**inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def test_a_mesh_that_is_only_compared_is_left_out_where_it_cannot_be_solved():
    result = deck(arrangement="grid", mesh_width=6)
    assert [each["arrangement"] for each in result.answer.values["compared"]] == ["shell", "ring", "grid"]
    assert "Not compared, outside what is solved here: Steel mesh" in words(result)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
def test_every_answer_puts_people_first_and_says_what_it_is(edition, arrangement):
    result = deck(edition, arrangement=arrangement)
    assert str(result.trace.warnings[0]).startswith("If anyone feels a tingle, get everyone out of the water")
    spoken = words(result)
    for part in (
        "No figure here says that anyone may swim",
        "does not choose the metal of a deck",
        "680.26(B)(2)",
        "model for teaching",
        "upper bound",
        "stays all day",
        "so the form does not ask for it",
        "an insulating shell",
    ):
        assert part in spoken
    assert " safe" not in spoken and "zero volt" not in spoken.lower()


def test_only_one_wire_is_told_of_the_full_size_tests_and_of_its_place():
    assert "more than 100 mA" in words(deck(arrangement="ring"))
    assert "more than 100 mA" not in words(deck(arrangement="grid"))
    for out, told in (("17.9in", True), ("18in", False), ("24in", False), ("24.1in", True)):
        assert ("it is 18 to 24 in" in words(deck(arrangement="ring", ring_distance=out))) == told


def test_a_wide_spacing_is_told_of_its_larger_error():
    assert "by 1 percent of the rise: 1.2 V" in words(deck(arrangement="grid", spacing="12in"))
    assert "by 2 percent of the rise: 2.4 V" in words(deck(arrangement="grid", spacing="18in"))


def test_the_chart_shows_what_the_values_say():
    answer = deck(arrangement="ring").answer
    side, corner, bare = answer.charts[0].lines
    assert [dict(side.points)[ft] for ft in answer.values["at_ft"]] == pytest.approx(answer.values["side_volts"])
    assert [dict(corner.points)[ft] for ft in answer.values["at_ft"]] == pytest.approx(answer.values["corner_volts"])
    assert "Nothing in the deck" in str(bare.words)
    assert len(deck(arrangement="shell").answer.charts[0].lines) == 2


def test_a_link_restores_the_answer():
    result = deck(arrangement="grid", depth="2in", mesh_width="3ft")
    again = deck_voltage.run(read(write(result).partition("?")[2]))
    assert again.answer_code == result.answer_code == again.linked_answer


def test_no_input_crashes():
    rough = {
        "arrangement": ARRANGEMENTS,
        "pool_length": ["6", "200"],
        "pool_width": ["6", "33.3"],
        "mesh_width": ["0.25", "2.7", "40"],
        "spacing": ["2", "18", None],
        "depth": ["0.3", "48"],
        "ring_distance": ["0", "120"],
    }
    outcomes = set()
    for place, inputs in enumerate(itertools.product(*rough.values())):
        if place % 17:
            continue
        result = deck(**dict(zip(rough, inputs, strict=True)), rise="0.1", distance="0", shell_depth="0.5", shell="yes")
        outcomes.add(result.outcome)
        if result.answer:
            assert 0 < result.answer.values["touch_volt"] < 0.1
    assert outcomes == {"answer", "fix", "not_covered"}


def test_the_headline_says_how_far_it_was_sought():
    assert str(deck().answer.headline).endswith("within 3 ft of a 16 by 32 ft pool")  # a smaller one has more


@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
def test_who_stands_farther_out_is_told_the_voltage_there_and_not_that_near_the_wall(arrangement):
    """Out there the ground follows the metal less: 97 V over one wire 20 ft out, by small equal pieces of numpy."""
    near, far = (deck(arrangement=arrangement, distance=ft).answer for ft in (3, 20))
    assert "20 ft from a 16 by 32 ft pool" in str(far.headline) and "20 ft" not in str(near.headline)
    assert far.values["touch_volt"] == near.values["touch_volt"]
    assert far.values["touch_volt_most"] >= far.values["volt_at_distance"] > near.values["touch_volt_most"]
    assert far.values["milliampere_wet_most"] > near.values["milliampere_wet_most"]


def test_20_ft_out_the_voltage_is_that_of_small_equal_pieces():
    touch, _ = deck_pieces.solved(deck_pieces.ring(16, 32, 1.5, 1 / 3), DIAMETER, 0.5)
    there = max(touch(8 + 20, 0), touch(8 + 20 / math.sqrt(2), 16 + 20 / math.sqrt(2)))
    assert values(distance=20)["volt_at_distance"] == pytest.approx(120 * there, abs=0.5)


@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
@pytest.mark.parametrize("rise", [0.5, 120])
def test_the_answer_is_read_at_a_glance(arrangement, rise):
    answer = deck(arrangement=arrangement, rise=rise).answer
    assert len(f"{answer.headline} {answer.detail}".split()) <= 40
    assert ("It can kill" if rise == 120 else "land" if arrangement in ("grid", "mesh") else "felt") in str(
        answer.detail
    )


@pytest.mark.parametrize(
    ("arrangement", "in_a_step"), [("shell", False), ("ring", False), ("grid", True), ("mesh", True)]
)
def test_a_step_that_is_worse_than_a_touch_decides_what_it_does_to_a_body(arrangement, in_a_step):
    """Off the edge of a mesh at 20 V a step has 8.2 V and 0.2 more: 16.8 mA through 500 ohm. A touch has 5.1 mA."""
    answer = deck(arrangement=arrangement, rise=20).answer
    found, off = answer.values, 0.01 * 20
    step = 1000 * (max(found["step_inside_volt"], found["step_across_volt"]) + off) / 500
    assert found["step_milliampere_most"] == pytest.approx(step, rel=1e-6)
    assert (step > found["milliampere_wet_most"]) == in_a_step
    assert ("in a step" in str(answer.detail)) == in_a_step
    assert ("Legs cramp and some fall" in str(answer.detail)) == (in_a_step and 6 < step < 20)


def test_a_step_told_as_at_most_counts_what_the_solution_may_be_off():
    """28.56 V inside and 44.53 V across the edge, each 1.2 V up or down."""
    told = [str(each) for each in deck().trace.warnings if "foot to foot" in str(each)]
    assert "up to 30 V" in told[0] and "up to 46 V" in told[1]


@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
def test_a_dry_slab_is_told_beside_the_answer_where_metal_lies_under_it(arrangement):
    told = "A dry slab can leave the full 120 V" in str(deck(arrangement=arrangement).answer.detail)
    assert told == (arrangement != "shell")


def test_under_a_very_dry_slab_nearly_all_of_the_rise_is_left():
    """Finite volumes, a slab of a hundred times the soil's resistivity: 0.93 of the rise over one wire."""
    found = {
        name: max(in_section(name, insulating=True, reach=15, slab=(4 / 12 * FOOT, 100.0))[:6])
        for name in ("ring", "wires")
    }
    assert 0.9 < found["ring"] < 1 and 0.7 < found["wires"] < 0.8


@pytest.mark.parametrize("arrangement", ARRANGEMENTS)
@pytest.mark.parametrize("rise", [3, 120])
def test_what_a_body_takes_is_what_shock_limits_gives_at_that_voltage(arrangement, rise):
    found = values(arrangement=arrangement, rise=rise)
    volt = f"{found['touch_volt_most']:.9f}V"
    for who, condition in (("wet", "water-wet"), ("bare", "dry")):
        shock = shock_limits(edition="2023", voltage=volt, path="hand-feet", condition=condition).answer.values
        for share in ("few", "most"):
            assert found[f"milliampere_{who}_{share}"] == pytest.approx(shock[f"milliampere_{share}"], rel=1e-6)


def test_a_few_volts_on_a_deck_are_told_with_what_they_do_to_a_body():
    """15.9 V over 500 ohm are 31.8 mA, more than the 20 mA from which breathing may stop; 0.38 V are 0.76 mA, felt."""
    worst = deck(arrangement="grid", spacing=12, depth=1.5)
    assert str(worst.answer.detail).startswith("It can kill")
    assert "Through a body: wet 7.7 to 32 mA, it can kill; dry and barefoot" in words(worst)
    little = deck(arrangement="mesh", rise=3)
    assert str(little.answer.detail).startswith("It is felt")
    assert "wet 0.18 to 0.76 mA, it is felt" in words(little)


def test_shoes_lower_what_the_fewest_take_and_never_the_most():
    found = values(arrangement="grid")
    assert found["milliampere_shod_few"] < found["milliampere_bare_few"]
    assert found["milliampere_shod_most"] == found["milliampere_bare_most"]
    # Two dry shoes of 2000 ohm beside each other: 1000 ohm before the body, by hand from 21 V over 25 V's 0.75 × 6100.
    volt = found["touch_volt_most"]
    assert found["milliampere_shod_few"] == pytest.approx(1000 * volt / (0.75 * 6100 + 1000), rel=1e-6)


@pytest.mark.parametrize("edition", EDITIONS[2:])
def test_the_place_of_one_wire_is_marked_where_nobody_saw_the_text(edition, marked):
    for key in ("planes/pool_ring_distance", "planes/pool_ring_depth"):
        marked(key, edition, "memory")
    told = next(
        str(each) for each in deck(edition, ring_distance="30in").trace.warnings if "permits one wire" in str(each)
    )
    assert "unverified" in told


def test_a_voltage_too_small_to_show_is_never_told_as_nothing():
    result = deck(rise="0.1V", arrangement="mesh", mesh_width="1ft", spacing="2in", depth="1.5in")
    assert min(result.answer.values["side_volts"]) < 0.0005
    assert "less than 0.0005 V" in words(result) and " 0 V" not in words(result)
