"""A plane beside water: where it is asked, each limit, its bond."""

import pytest

from calc.editions import EDITIONS
from calc.equipotential.waterside_equipotential_plane import waterside_equipotential_plane
from tests.cases.read import cases, named

POND = {"water": "body", "equipment": "disconnect", "distance": "8ft"}
DOCK = {"water": "dock", "equipment": "disconnect", "voltage_to_ground": "277V", "distance": "5ft"}


def decided(edition, **inputs):
    result = waterside_equipotential_plane(edition=edition, **inputs)
    assert result.outcome == "answer"
    return result.answer.values["decisions"]


@pytest.mark.parametrize("pair", cases("equipotential/waterside_equipotential_plane"), ids=named)
def test_a_worked_case_has_every_row_of_its_text_and_no_other(pair):
    edition, case = pair
    values = waterside_equipotential_plane(edition=edition, **case["inputs"]).answer.values
    assert values["decisions"] == case["decisions"]
    assert {name: values[name] for name in case["values"]} == case["values"]


LIMITS = [
    ({**POND, "reach": "35.99in"}, "reach", "change"),
    ({**POND, "reach": "36in"}, "reach", "in-order"),
    ({**POND, "reach": "3ft"}, "reach", "in-order"),
    ({**POND, "reach": "36.01in"}, "reach", "in-order"),
    ({**POND, "reach": "900mm"}, "reach", "change"),
    ({**POND, "depth": "2.99in"}, "depth", "in-order"),
    ({**POND, "depth": "3in"}, "depth", "in-order"),
    ({**POND, "depth": "3.01in"}, "depth", "change"),
    *(
        ({**POND, "equipment": equipment, "distance": distance}, "shoreline", found)
        for equipment in ("service", "disconnect")
        for distance, found in (("4.99ft", "change"), ("5ft", "in-order"), ("5.01ft", "in-order"))
    ),
    ({**POND, "reach": "35.99in"}, "plane", "change"),
    ({**POND, "reach": "36in"}, "plane", "in-order"),
    (POND, "plane", "build"),
    ({**POND, "reach": "36in"}, "depth", "look"),
    ({**POND, "bond_conductor": "10"}, "bond", "change"),
    ({**POND, "bond_conductor": "8"}, "bond", "in-order"),
    ({**POND, "bond_conductor": "6"}, "bond", "in-order"),
    ({**POND, "bond_conductor": "8", "bond_kind": "stranded-copper"}, "bond", "change"),
    ({**POND, "bond_conductor": "4", "bond_kind": "aluminum"}, "bond", "change"),
]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("inputs", "part", "found"), LIMITS)
def test_every_limit_at_a_pond_holds_just_inside_at_and_just_outside(edition, inputs, part, found):
    assert decided(edition, **inputs)[part] == found


@pytest.mark.parametrize(
    ("change", "found"),
    [
        ({"voltage_to_ground": "249V"}, "need-not"),
        ({"voltage_to_ground": "250V"}, "need-not"),
        ({"voltage_to_ground": "250.1V"}, "build"),
        ({"distance": "9.99ft"}, "build"),
        ({"distance": "10ft"}, "build"),
        ({"distance": "10.01ft"}, "need-not"),
        ({"equipment": "controlled"}, "need-not"),
    ],
)
@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("water", ["dock", "floating-building"])
def test_a_plane_at_a_dock_is_asked_from_2023_on_over_250_volts_and_within_10_feet(water, edition, change, found):
    expected = found if edition >= "2023" or "equipment" in change else "wise"
    assert decided(edition, **(DOCK | {"water": water} | change))["plane"] == expected


@pytest.mark.parametrize("edition", ["2023", "2026"])
def test_a_plane_at_a_dock_has_the_reach_and_the_bond_of_its_own_section(edition):
    for reach, found in (("35.9in", "change"), ("36in", "in-order")):
        assert decided(edition, **DOCK, reach=reach)["reach"] == found
    for size, found in (("10", "change"), ("8", "in-order")):
        assert decided(edition, **DOCK, bond_conductor=size)["bond"] == found


@pytest.mark.parametrize(
    ("edition", "inputs", "field"),
    [
        ("2017", {"equipment": "service"}, "water"),
        ("2017", {"water": "body"}, "equipment"),
        ("2023", {"water": "river", "equipment": "service"}, "water"),
        ("2023", {"water": "dock", "equipment": "service", "distance": "2"}, "voltage_to_ground"),
        ("2023", {"water": "dock", "equipment": "service", "voltage_to_ground": "277"}, "distance"),
        ("2017", {"water": "body", "equipment": "service"}, "distance"),
        ("2020", {"water": "body", "equipment": "disconnect"}, "distance"),
        ("2023", {**POND, "distance": "-1"}, "distance"),
        ("2023", {**POND, "distance": "10001"}, "distance"),
        ("2023", {**POND, "voltage_to_ground": "0"}, "voltage_to_ground"),
        ("2023", {**POND, "voltage_to_ground": "1001"}, "voltage_to_ground"),
        ("2023", {**POND, "reach": "1201"}, "reach"),
        ("2023", {**POND, "depth": "5 V"}, "depth"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(edition, inputs, field):
    result = waterside_equipotential_plane(edition=edition, **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_ship_is_not_covered(edition):
    result = waterside_equipotential_plane(edition=edition, water="ship", equipment="service")
    assert result.outcome == "not_covered" and "marine standards" in str(result.not_covered.look_in)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("water", ["body", "dock", "floating-building"])
def test_the_first_warning_is_of_a_tingle_and_nothing_is_called_safe(water, edition):
    result = waterside_equipotential_plane(edition=edition, **(DOCK | {"water": water}))
    assert "tingle" in str(result.trace.warnings[0]) and "swimming" in str(result.trace.warnings[1])
    assert "power off from a dry place" in str(result.trace.warnings[0])
    words = [*result.trace.warnings, *result.trace.notes, result.answer.headline, result.answer.detail]
    assert "safe" not in " ".join(map(str, words)).lower()


def test_a_ship_too_is_warned_of_a_tingle():
    result = waterside_equipotential_plane(edition="2023", water="ship", equipment="service")
    assert "tingle" in str(result.trace.warnings[0])


def test_what_a_disconnect_controls_needs_no_distance():
    assert decided("2020", water="body", equipment="controlled")["plane"] == "need-not"


@pytest.mark.parametrize("distance", ["0ft", "8ft", "500ft"])
def test_at_a_pond_the_plane_is_asked_at_any_distance(distance):
    """682.33(A) names no distance from the water."""
    assert decided("2020", **{**POND, "distance": distance})["plane"] == "build"


def test_how_a_plane_is_joined_is_told_only_where_one_is_asked():
    for metal, told in (("yes", True), ("no", False)):
        notes = waterside_equipotential_plane(edition="2020", **POND, metal=metal).trace.notes
        assert any("exothermic" in str(words) for words in notes) is told


def told(**inputs):
    answer = waterside_equipotential_plane(edition="2023", **inputs).answer
    return f"{answer.headline} {answer.detail}"


BUILT = {**POND, "reach": "36in", "depth": "3in", "bond_conductor": "8"}


@pytest.mark.parametrize(
    ("wrong", "part"),
    [
        ({"reach": "35in"}, "“How far it reaches”"),
        ({"depth": "3.01in"}, "“How deep it lies”"),
        ({"bond_conductor": "10"}, "“Bonding wire of the plane”"),
        ({"bond_kind": "aluminum"}, "“Bonding wire of the plane”"),
        ({"distance": "4.99ft"}, "“Disconnect and the shoreline”"),
        ({"metal": "no", "distance": "2ft"}, "“Disconnect and the shoreline”"),
    ],
)
def test_a_part_that_is_wrong_is_named_beside_the_verdict(wrong, part):
    assert f"fix {part}" in told(**BUILT | wrong) and "is OK" not in told(**BUILT | wrong)


@pytest.mark.parametrize("there", [BUILT, {**DOCK, "reach": "36in", "bond_conductor": "8"}])
def test_a_plane_with_all_its_parts_is_told_as_in_order_as_entered(there):
    assert told(**there).startswith("The plane required here is OK as entered, if its wire is solid copper")


@pytest.mark.parametrize("unknown", ["reach", "depth", "bond_conductor"])
def test_what_nobody_looked_at_is_not_told_as_in_order(unknown):
    assert told(**{name: value for name, value in BUILT.items() if name != unknown}).startswith("A plane is required")


@pytest.mark.parametrize(("depth", "plane"), [("3in", "in-order"), ("3.01in", "change")])
def test_a_plane_that_lies_too_deep_is_not_in_order_itself(depth, plane):
    assert decided("2023", **{**BUILT, "depth": depth})["plane"] == plane


@pytest.mark.parametrize(
    ("equipment", "words"), [("disconnect", "of floating or submerged equipment"), ("service", "On land, install it")]
)
def test_the_shoreline_says_whose_distance_it_is(equipment, words):
    """682.11 is of service equipment on land, 682.14(B) of the disconnect of what floats or is submerged."""
    rows = waterside_equipotential_plane(edition="2023", **{**BUILT, "equipment": equipment, "distance": "2ft"})
    why = next(str(row.cells["why"]) for row in rows.answer.table.rows if "shoreline" in str(row.cells["part"]))
    assert words in why and "at least 5 ft from the shoreline" in why
