"""The system bonding jumper: worked cases with their sources, every boundary, and what it must say."""

import itertools

import pytest

from calc import EDITIONS, system_bonding_jumper
from tests.cases.read import cases, named
from tests.independent.jumper_size import AREAS, THROUGH, jumper_size

METALS = ("copper", "aluminum")


@pytest.mark.parametrize("pair", cases("jumpers/system_bonding_jumper"), ids=named)
def test_worked_cases_give_the_size_of_their_source(pair):
    edition, case = pair
    result = system_bonding_jumper(edition=edition, **case["inputs"])
    if "size" in case:
        assert result.answer.values["size"] == case["size"], case["reason"]
    else:
        assert result.outcome == "not_covered"
        said = f"{result.not_covered.why} {result.not_covered.look_in}"
        assert case["not_covered"] in said


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases("jumpers/system_bonding_jumper"):
        assert case["source"] and case["mark"] in ("published", "memory")


def boundary(limit: str) -> list[tuple[str, int]]:
    """Return conductors and sets of equal size just below, at and just above a limit of the table, up to 12 sets."""
    area = AREAS.get(limit) or int(limit.removesuffix("kcmil")) * 1000
    totals = {}
    for size, sets in itertools.product(AREAS, range(1, 13)):
        totals.setdefault(AREAS[size] * sets, (size, sets))
    below = max(total for total in totals if total < area)
    above = min(total for total in totals if total > area)
    return [totals[total] for total in (below, area, above) if total in totals]


BOUNDARIES = [
    (metal, conductor, sets) for metal in METALS for limit in THROUGH[metal] for conductor, sets in boundary(limit)
]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("place", ["source", "first-disconnect"])
@pytest.mark.parametrize("jumper_metal", METALS)
@pytest.mark.parametrize(("metal", "conductor", "sets"), BOUNDARIES)
def test_just_below_at_and_just_above_each_limit_equals_the_second_route(
    metal, conductor, sets, jumper_metal, place, edition
):
    result = system_bonding_jumper(
        edition=edition, conductor=conductor, sets=sets, conductor_metal=metal, metal=jumper_metal, place=place
    )
    assert result.answer.values["size"] == jumper_size(conductor, sets, metal, jumper_metal)


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_larger_conductor_or_more_sets_never_give_a_smaller_jumper(edition):
    for conductor_metal, metal in itertools.product(METALS, METALS):
        areas = {}
        for conductor, sets in itertools.product(AREAS, range(1, 13)):
            result = system_bonding_jumper(
                edition=edition, conductor=conductor, sets=sets, conductor_metal=conductor_metal, metal=metal
            )
            if result.answer:
                areas[conductor, sets] = result.answer.values["area_cmil"]
        order = list(AREAS)
        for (conductor, sets), area in areas.items():
            assert areas.get((conductor, sets + 1), area) >= area
            larger = order[min(order.index(conductor) + 1, len(order) - 1)]
            assert areas.get((larger, sets), area) >= area


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("conductor", "5/0"),
        ("sets", "0"),
        ("sets", "31"),
        ("enclosures", "31"),
        ("place", "meter"),
        ("form", "supplied"),
        ("metal", "steel"),
    ],
)
def test_bad_input_names_the_field_to_mend(field, value):
    result = system_bonding_jumper(**{"edition": "2023", "conductor": "3/0"} | {field: value})
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize(("place", "section"), [("source", "(a)"), ("first-disconnect", "(b)")])
def test_the_note_says_what_it_joins_where_it_stands(place, section):
    notes = [str(words) for words in system_bonding_jumper(edition="2023", conductor="3/0", place=place).trace.notes]
    assert any(f"(250.30(A)(1){section})" in words for words in notes)


@pytest.mark.parametrize("form", ["wire", "busbar", "strap", "screw"])
def test_the_landing_of_the_electrode_conductor_is_that_of_a_derived_system(form):
    result = system_bonding_jumper(edition="2023", conductor="3/0", form=form)
    cited = {rule.section for rule in result.trace.citations}
    assert "250.30(A)(5) Exception No. 1" in cited and "250.24(A)(4)" not in cited


def test_a_bus_has_the_area_of_the_wire_rounded_up():
    """2/0 AWG is 133,100 cmil; x pi/4 x 1e-6 in² = 0.10454 in² = 67.44 mm² (25.4 mm an inch)."""
    detail = str(system_bonding_jumper(edition="2023", conductor="500kcmil", sets=2, form="busbar").answer.detail)
    assert detail.endswith("0.105 in² (68 mm²)")


def test_fewer_sets_than_enclosures_at_the_source_are_questioned():
    def warnings(sets, place):
        result = system_bonding_jumper(edition="2023", conductor="3/0", sets=sets, enclosures=3, place=place)
        return [str(words) for words in result.trace.warnings]

    assert "250.28(D)(3)" in warnings(2, "source")[0]
    assert warnings(3, "source") == [] and warnings(1, "first-disconnect") == []


def test_an_aluminum_jumper_under_the_2017_edition_needs_the_authority():
    def warnings(edition):
        result = system_bonding_jumper(edition=edition, conductor="3/0", metal="aluminum")
        return [str(words) for words in result.trace.warnings]

    assert "not aluminum" in warnings("2017")[0] and warnings("2020") == []


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_an_ordinary_answer_of_an_edition_that_was_read_warns_of_nothing(edition):
    assert system_bonding_jumper(edition=edition, conductor="3/0").trace.warnings == []


def test_the_answer_as_links_carry_it():
    result = system_bonding_jumper(edition="2023", conductor="400kcmil", sets=3)
    assert result.answer_code == "3/0-copper"
