"""A plan of a pool's bonding: each part, each limit, the wire to bring."""

import math

import pytest

from calc.editions import EDITIONS
from calc.equipotential.pool_bonding_plan import pool_bonding_plan
from tests.cases.read import cases, named

POOL = {"kind": "in-ground-conductive"}
HIGH = {**POOL, "other_metal": "1ft", "other_height": "13ft"}


def decided(edition="2020", **inputs):
    result = pool_bonding_plan(edition=edition, **inputs)
    assert result.outcome == "answer"
    return result.answer.values["decisions"]


@pytest.mark.parametrize("pair", cases("equipotential/pool_bonding_plan"), ids=named)
def test_a_worked_case_has_every_row_of_its_text_and_no_other(pair):
    edition, case = pair
    result = pool_bonding_plan(edition=edition, **case["inputs"])
    assert result.answer.values["decisions"] == case["decisions"]
    rows = result.answer.table.rows
    assert len(rows) == len(case["decisions"])
    assert all(str(row.cells["why"]) and str(row.cells["section"]) for row in rows)


# Each limit just inside, at, and just outside: (inputs, part, what to do). "Greater than" 5 ft and 12 ft is spared, so
# at the limit a part still counts; a rim and a wall "at least" so high spare the surface at the limit.
FIXED = [
    ({**POOL, name: feet}, name, found)
    for name in ("fence", "door", "piping", "raceway", "other_metal")
    for feet, found in (("4.99ft", "bond"), ("5ft", "bond"), ("5.01ft", "need-not"), ("1.524m", "bond"))
]
HEIGHT = [
    ({**POOL, "other_metal": "1ft", "other_height": feet, "height_from": origin}, "other_metal", found)
    for origin in ("water", "structure")
    for feet, found in (("11.99ft", "bond"), ("12ft", "bond"), ("12.01ft", "need-not"))
]
WALL = [
    ({**POOL, "wall_height": feet}, "behind-wall", found)
    for feet, found in (("4.99ft", "bond"), ("5ft", "need-not"), ("5.01ft", "need-not"))
]
RIM = [
    ({"kind": "spa-outdoors", "listed_spa": "yes", "rim_height": inch}, "perimeter", found)
    for inch, found in (("27.99in", "bond"), ("28in", "need-not"), ("28.01in", "need-not"))
]
WATER = [
    ({**POOL, "water_contact": "surface", "water_area": area}, "water", found)
    for area, found in (("8.99in2", "change"), ("9in2", "in-order"), ("9.01in2", "in-order"), ("5800mm2", "change"))
]
NEAR_TUBS = [
    ({"kind": kind, name: feet}, name, found)
    for kind in ("spa-indoors", "therapeutic-tub")
    for name in ("fence", "raceway")
    for feet, found in (("4.99ft", "bond"), ("5ft", "bond"), ("5.01ft", "need-not"))
]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("inputs", "part", "found"), FIXED + HEIGHT + WALL + RIM + WATER + NEAR_TUBS)
def test_every_limit_holds_just_inside_at_and_just_outside(edition, inputs, part, found):
    assert decided(edition, **inputs)[part] == found


@pytest.mark.parametrize(
    ("edition", "feet", "found"),
    [("2017", "1ft", "need-not")]
    + [
        (edition, feet, found)
        for edition in ("2020", "2023", "2026")
        for feet, found in (("4.99ft", "bond"), ("5ft", "bond"), ("5.01ft", "need-not"))
    ],
)
def test_metal_near_a_fountain_counts_from_2020_on_within_5_feet(edition, feet, found):
    assert decided(edition, kind="fountain", fence=feet)["fence"] == found


# 680.26(B)(2): ways by edition. 2017: steel, wire. 2020: a copper grid as well. Amended: wire for bare ground only.
WAYS = [
    ("2017", "yes", "paved", dict(steel="bond", mesh="ask", grid="change", ring="bond")),
    ("2020", "yes", "paved", dict(steel="bond", mesh="ask", grid="bond", ring="bond")),
    ("2020", "no", "unpaved", dict(steel="bond", mesh="ask", grid="bond", ring="bond")),
    ("2023", "no", "paved", dict(steel="bond", mesh="ask", grid="bond", ring="bond")),
    ("2023", "yes", "paved", dict(steel="bond", mesh="bond", grid="bond", ring="change")),
    ("2023", "yes", "unpaved", dict(steel="change", mesh="change", grid="bond", ring="bond")),
    ("2026", "no", "paved", dict(steel="bond", mesh="bond", grid="bond", ring="change")),
]


@pytest.mark.parametrize(("edition", "amendment", "surface", "expected"), WAYS)
def test_the_ways_to_bond_the_surface_are_those_of_the_edition(edition, amendment, surface, expected):
    found = {way: decided(edition, **POOL, amendment=amendment, surfaces=surface, way=way)[surface] for way in expected}
    assert found == expected


@pytest.mark.parametrize("edition", EDITIONS)
def test_an_open_way_lists_every_way_and_asks_for_none(edition):
    result = pool_bonding_plan(edition=edition, **POOL, surfaces="paved")
    (row,) = (row for row in result.answer.table.rows if "Paving" in str(row.cells["part"]))
    assert result.answer.values["decisions"]["paved"] == "bond"
    assert ("one copper wire" in str(row.cells["why"])) is (edition in ("2017", "2020"))
    assert ("copper grid" in str(row.cells["why"])) is (edition != "2017")


@pytest.mark.parametrize(("edition", "amendment", "found"), [
    ("2017", "yes", "ask"), ("2020", "yes", "ask"), ("2023", "no", "ask"), ("2023", "yes", "need-not"),
    ("2026", "no", "need-not"),
])  # fmt: skip
def test_a_deck_off_the_earth_is_spared_only_by_the_amendment(edition, amendment, found):
    assert decided(edition, **POOL, surfaces="off-earth", amendment=amendment)["off-earth"] == found


def test_the_ring_is_two_lengths_two_widths_and_eight_times_its_distance_and_a_tenth_more():
    """24 in out: 2 x (32 + 16) = 96, corners 8 x 2 = 16, so 112; a tenth more is 123.2, and 124 ft are brought."""
    result = pool_bonding_plan(edition="2020", **POOL, pool_length=32, pool_width=16)
    assert result.answer.values["wire_feet"] == pytest.approx(123.2, rel=1e-12)
    assert any("124 ft" in str(words) for words in result.trace.notes)


@pytest.mark.parametrize(("long", "wide"), [(1, 1), (20, 20), (32, 16), (75, 45), (1000, 3)])
def test_the_ring_is_long_enough_for_any_round_corner_and_for_a_round_pool(long, wide):
    """Outside a convex outline the wire is its girth and 2 pi times its distance: less than the rectangle's."""
    brought = pool_bonding_plan(edition="2020", **POOL, pool_length=long, pool_width=wide).answer.values["wire_feet"]
    rounded = 2 * (long + wide) + 2 * math.pi * 2
    ellipse = math.pi * (3 * (long + wide) / 2 - math.sqrt((3 * long + wide) * (long + 3 * wide)) / 2) + 2 * math.pi * 2
    assert brought > rounded and brought > ellipse
    assert brought < 1.1 * (rounded + 4)


@pytest.mark.parametrize(("long", "wide"), [(8, 8), (32, 16), (75, 45)])
def test_the_grid_has_the_wire_of_a_mesh_counted_one_by_one(long, wide):
    """Counted: wires of a mesh of 1 ft over the strip of 3 ft, both ways, from outer edge to outer edge.

    The count has an edge wire more than area x 2, the formula one along the wall: they agree within 5 percent.
    """
    counted = 0
    for across, along in ((long, wide), (wide, long)):
        for line in range(across + 7):  # from 3 ft outside to 3 ft outside
            inside = 3 < line < across + 3
            counted += 6 if inside else along + 6
    brought = pool_bonding_plan(
        edition="2020", **POOL, pool_length=long, pool_width=wide, surfaces="paved", way="grid"
    ).answer.values["wire_feet"]
    assert brought / 1.1 == pytest.approx(counted, rel=0.05)


@pytest.mark.parametrize(
    ("edition", "surface", "way", "feet"),
    [  # 32 by 16 ft: one ring 123.2 ft; a grid 2 x 324 + 96 = 744 ft and a tenth more, 818.4 ft
        ("2020", "paved", "open", 123.2),
        ("2020", "paved", "ring", 123.2),
        ("2023", "paved", "open", None),
        ("2023", "paved", "ring", None),
        ("2023", "paved,unpaved", "ring", 123.2),
        ("2023", "unpaved", "open", 123.2),
        ("2023", "paved", "grid", 818.4),
        ("2017", "paved", "grid", None),
        ("2020", "paved", "steel", None),
        ("2020", "off-earth", "ring", None),
    ],
)
def test_wire_is_brought_only_for_a_way_that_some_surface_takes(edition, surface, way, feet):
    result = pool_bonding_plan(edition=edition, **POOL, surfaces=surface, way=way, pool_length=32, pool_width=16)
    found = result.answer.values["wire_feet"]
    assert found is None if feet is None else found == pytest.approx(feet, rel=1e-9)


def test_more_pool_takes_more_wire():
    plans = [pool_bonding_plan(**POOL, pool_length=long, pool_width=10) for long in (10, 20, 40)]
    feet = [plan.answer.values["wire_feet"] for plan in plans]
    assert feet == sorted(set(feet))


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        ({}, "kind"),
        ({"kind": "pond"}, "kind"),
        ({**POOL, "parts": "rebar,rebar"}, "parts"),
        ({**POOL, "fence": "-1"}, "fence"),
        ({**POOL, "fence": "1001"}, "fence"),
        ({**POOL, "fence": "5 A"}, "fence"),
        ({**POOL, "pool_length": "0"}, "pool_length"),
        ({**POOL, "pool_length": "20"}, "pool_width"),
        ({**POOL, "pool_width": "20"}, "pool_length"),
        ({**POOL, "way": "ring"}, "surfaces"),
        ({**POOL, "way": "rope"}, "way"),
        ({**POOL, "water_contact": "surface"}, "water_area"),
        ({"kind": "spa-outdoors", "listed_spa": "yes"}, "rim_height"),
        (HIGH, "height_from"),
        ({**HIGH, "parts": "diving-board", "height_from": "water"}, "height_from"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = pool_bonding_plan(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_storable_pool_is_not_covered_and_says_where_to_look(edition):
    result = pool_bonding_plan(edition=edition, kind="storable", parts="pump")
    assert result.outcome == "not_covered" and "680.30" in str(result.not_covered.look_in)


@pytest.mark.parametrize("kind", ["in-ground-conductive", "above-ground", "spa-indoors", "fountain", "therapeutic-tub"])
@pytest.mark.parametrize("edition", EDITIONS)
def test_the_first_warning_is_of_a_tingle_and_nothing_is_called_safe(kind, edition):
    result = pool_bonding_plan(edition=edition, kind=kind, parts="ladder,pump", fence=3)
    assert "tingle" in str(result.trace.warnings[0]) and "off from a dry place" in str(result.trace.warnings[0])
    words = " ".join(map(str, result.trace.warnings + result.trace.notes)).lower()
    assert "safe" not in words and "zero" not in words


def test_the_text_not_seen_is_said_for_the_surface_in_2023_and_2026():
    said = (("2023", "yes", "not seen"), ("2023", "no", "amendment"), ("2026", "no", "not seen"))
    for edition, amendment, word in said:
        result = pool_bonding_plan(edition=edition, **POOL, amendment=amendment)
        assert word in str(result.trace.warnings[1])
    assert len(pool_bonding_plan(edition="2020", **POOL).trace.warnings) == 1


def test_a_barrier_spares_what_is_behind_it_and_nothing_else():
    found = decided(**POOL, fence=1, door=1, barrier="fence")
    assert (found["fence"], found["door"]) == ("need-not", "bond")


def test_metal_12_feet_over_the_water_is_in_reach_of_one_who_stands_on_a_tower():
    """680.26(B)(7) Exception No. 3: above the water, and above any stand, tower, platform or diving structure."""
    high = {**POOL, "parts": "diving-board", "other_metal": "1ft"}
    assert decided(**high, other_height="13ft", height_from="structure")["other_metal"] == "need-not"
    assert decided(**high, other_height="12ft", height_from="structure")["other_metal"] == "bond"
    assert decided(**high, other_height="11ft")["other_metal"] == "bond"
    assert decided(**POOL, other_metal="6ft", other_height="13ft")["other_metal"] == "need-not"


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("kind", "section"), [("therapeutic-portable", "680.60"), ("hydromassage", "680.74")])
def test_a_portable_tub_and_a_whirlpool_bathtub_are_sent_to_their_own_rules(edition, kind, section):
    result = pool_bonding_plan(edition=edition, kind=kind, parts="pump")
    assert result.outcome == "not_covered" and section in str(result.not_covered.look_in)


@pytest.mark.parametrize(("listed", "pump", "water"), [("yes", "listing", "listing"), ("no", "bond", "bond")])
def test_what_is_inside_a_listed_spa_goes_by_its_listing(listed, pump, water):
    found = decided(kind="spa-outdoors", parts="pump,rail", listed_spa=listed, rim_height="30in", fence="2ft")
    assert (found["pump"], found["water"], found["rail"], found["fence"]) == (pump, water, "bond", "bond")
    assert decided(kind="spa-indoors", listed_spa=listed)["water"] == water


def test_a_small_fitting_is_measured_before_it_is_spared():
    assert decided(**POOL, parts="small-fitting")["small-fitting"] == "look"


def test_a_storable_pool_too_is_warned_of_a_tingle():
    assert "tingle" in str(pool_bonding_plan(edition="2020", kind="storable").trace.warnings[0])


@pytest.mark.parametrize(("way", "told"), [("steel", False), ("mesh", True)])
def test_what_the_edition_leaves_to_the_authority_is_counted_in_a_warning(way, told):
    result = pool_bonding_plan(edition="2020", kind="in-ground-conductive", surfaces="paved", way=way)
    assert ("Not decided here: 1." in " ".join(map(str, result.trace.warnings))) is told


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("mark", ["confirmed", "memory"])
def test_figures_of_the_ring_that_nobody_saw_are_marked_where_they_stand(edition, mark, marked):
    for key in ("planes/pool_ring_distance", "planes/pool_ring_depth"):
        marked(key, edition, mark)
    result = pool_bonding_plan(edition=edition, kind="in-ground-conductive", surfaces="unpaved", way="ring")
    ring = next(str(words) for words in result.trace.notes if str(words).startswith("Run the ring"))
    assert ("unverified" in ring) is (mark == "memory")


@pytest.mark.parametrize(("edition", "section"), [("2017", "680.54"), ("2020", "680.54(A)")])
def test_a_fountain_names_its_own_rule_of_equipment_grounding(edition, section):
    notes = pool_bonding_plan(edition=edition, kind="fountain", parts="pump").trace.notes
    assert f"({section})." in str(notes[0])


def test_a_plan_without_parts_asks_for_them_and_one_with_parts_says_where_they_go():
    empty, pump = (pool_bonding_plan(edition="2023", kind="fountain", parts=parts).answer for parts in (None, "pump"))
    assert (str(empty.headline), str(empty.detail)) == ("No part was entered", "enter what is there")
    assert "equipment grounding conductor" in str(pump.detail)
