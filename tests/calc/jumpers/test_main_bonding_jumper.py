"""The main bonding jumper: worked cases with their sources, every boundary, and what it must say."""

import itertools

import pytest

from calc import EDITIONS, main_bonding_jumper
from tests.cases.read import cases, named
from tests.independent.jumper_size import AREAS, THROUGH, hot_sizes, jumper_size

METALS = ("copper", "aluminum")


@pytest.mark.parametrize("pair", cases("jumpers/main_bonding_jumper"), ids=named)
def test_worked_cases_give_the_size_of_their_source(pair):
    edition, case = pair
    result = main_bonding_jumper(edition=edition, **case["inputs"])
    if "size" in case:
        assert result.answer.values["size"] == case["size"], case["reason"]
    else:
        assert result.outcome == "not_covered"
        said = f"{result.not_covered.why} {result.not_covered.look_in}"
        assert case["not_covered"] in said


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases("jumpers/main_bonding_jumper"):
        assert case["source"] and case["mark"] in ("published", "memory")


def boundary(metal: str, limit: str) -> list[tuple[str, int]]:
    """Return conductors and sets of equal size just below, at and just above a limit of the table, up to 12 sets."""
    area = AREAS.get(limit) or int(limit.removesuffix("kcmil")) * 1000
    totals = {}
    for size, sets in itertools.product(AREAS, range(1, 13)):
        totals.setdefault(AREAS[size] * sets, (size, sets))
    below = max(total for total in totals if total < area)
    above = min(total for total in totals if total > area)
    return [totals[total] for total in (below, area, above) if total in totals]


BOUNDARIES = [
    (metal, limit, conductor, sets)
    for metal in METALS
    for limit in THROUGH[metal]
    for conductor, sets in boundary(metal, limit)
]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("jumper_metal", METALS)
@pytest.mark.parametrize(("metal", "limit", "conductor", "sets"), BOUNDARIES)
def test_just_below_at_and_just_above_each_limit_equals_the_second_route(
    metal, limit, conductor, sets, jumper_metal, edition
):
    result = main_bonding_jumper(
        edition=edition, conductor=conductor, sets=sets, conductor_metal=metal, metal=jumper_metal
    )
    assert result.answer.values["size"] == jumper_size(conductor, sets, metal, jumper_metal)


def test_every_limit_but_1100_kcmil_copper_is_tried_at_the_limit_itself():
    """No equal listed conductors add up to just 1100 kcmil; 1058 and 1120 kcmil are the nearest tried."""
    at = {
        limit
        for metal, limit, conductor, sets in BOUNDARIES
        if AREAS[conductor] * sets
        == AREAS.get(limit, int(limit.removesuffix("kcmil")) * 1000 if "kcmil" in limit else 0)
    }
    assert {limit for metal in METALS for limit in THROUGH[metal]} - at == {"1100kcmil"}


@pytest.mark.parametrize("edition", EDITIONS)
def test_every_listed_conductor_up_to_thirty_sets_equals_the_second_route(edition):
    each = (
        (conductor, sets, conductor_metal, metal)
        for conductor_metal, metal in itertools.product(METALS, METALS)
        for conductor, sets in itertools.product(hot_sizes(conductor_metal), range(1, 31))
    )
    for conductor, sets, conductor_metal, metal in each:
        result = main_bonding_jumper(
            edition=edition, conductor=conductor, sets=sets, conductor_metal=conductor_metal, metal=metal
        )
        expected = jumper_size(conductor, sets, conductor_metal, metal)
        given = result.answer.values["size"] if result.answer else None
        assert given == expected, (conductor, sets, conductor_metal, metal)


def test_working_shows_the_area_before_it_is_rounded_up():
    """6 x 350 = 2100 kcmil, an eighth is 262.5 kcmil, the next listed size 300."""
    result = main_bonding_jumper(edition="2023", conductor="350kcmil", sets=6)
    numbers = [step.numbers for step in result.trace.steps]
    assert "0.125 × 2,100,000 = 262,500 cmil" in numbers
    assert str(result.trace.steps[-1].words) == "Next listed size up: 300 kcmil, 300,000 cmil."


def test_every_step_that_uses_a_rule_names_its_section_and_mark():
    result = main_bonding_jumper(edition="2020", conductor="600kcmil", sets=3, conductor_metal="aluminum")
    cited = {rule.section for step in result.trace.steps for rule in step.citations}
    assert cited == {
        "Chapter 9, Table 8",
        "Table 250.102(C)(1)",
        "Table 250.102(C)(1) note 1",
        "Table 250.102(C)(1) note 2",
        "Table 310.16",
    }


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_an_ordinary_answer_of_an_edition_that_was_read_warns_of_nothing(edition):
    assert main_bonding_jumper(edition=edition, conductor="3/0").trace.warnings == []


def test_an_aluminum_wire_under_the_2017_edition_needs_the_authority():
    """250.28(A) of 2017 names copper or other corrosion-resistant material; later editions name aluminum."""
    assert any(
        "not aluminum" in str(words)
        for words in main_bonding_jumper(edition="2017", conductor="3/0", metal="aluminum").trace.warnings
    )
    assert not main_bonding_jumper(edition="2020", conductor="3/0", metal="aluminum").trace.warnings


@pytest.mark.parametrize(("metal", "least", "smaller"), [("copper", "8", "10"), ("aluminum", "6", "10")])
def test_a_small_service_keeps_the_least_size_of_the_table_and_the_other_reading_is_named(metal, least, smaller):
    """250.28(D)(1) names the table and no limit; the limit stands in the note on conductors past its end."""
    for edition in EDITIONS:
        result = main_bonding_jumper(edition=edition, conductor="10", conductor_metal=metal, metal=metal)
        assert result.answer_code == f"{least}-{metal}"
        (note,) = [str(words) for words in result.trace.notes if "Some apply it here too" in str(words)]
        assert f"{smaller} AWG {metal}" in note and "(Table 250.102(C)(1) note 1)" in note
        assert any("single branch circuit" in str(words) for words in result.trace.notes)
    ordinary = main_bonding_jumper(edition="2023", conductor="4", conductor_metal=metal, metal=metal)
    assert ordinary.answer_code == f"{least}-{metal}" and ordinary.trace.warnings == []
    assert not any("Some apply it here too" in str(words) for words in ordinary.trace.notes)


@pytest.mark.parametrize(("metal", "least"), [("copper", "12"), ("aluminum", "10"), ("copper-clad-aluminum", "10")])
def test_a_size_that_no_service_has_is_to_be_fixed_and_the_next_is_answered(metal, least):
    """230.23(B) and 230.31(B) with their exceptions; 310.3(A) for what wiring does not have at all."""
    sizes = list(AREAS)
    for conductor in sizes[: sizes.index(least)]:
        (fix,) = main_bonding_jumper(edition="2023", conductor=conductor, conductor_metal=metal).fix
        assert fix.field == "conductor" and "or larger" in str(fix.words)
    assert main_bonding_jumper(edition="2023", conductor=least, conductor_metal=metal).answer_code == "8-copper"


def test_parallel_conductors_under_1_0_are_questioned_and_1_0_are_not():
    def questioned(conductor):
        return [str(w) for w in main_bonding_jumper(edition="2023", conductor=conductor, sets=2).trace.warnings]

    assert "310.10(G)(1)" in questioned("1")[0]
    assert questioned("1/0") == []


@pytest.mark.parametrize(
    ("form", "says"),
    [
        ("wire", "If the wire runs from the neutral bar to the equipment grounding bar"),
        ("busbar", "If the busbar runs from the neutral bar to the equipment grounding bar"),
        ("strap", "connect the grounding electrode conductor to the neutral bar unless"),
        ("screw", "the green must be visible with the screw installed (250.28(B))"),
        (
            "screw",
            (
                "connect the grounding electrode conductor to the neutral bar, not to the equipment grounding bar "
                "(250.24(A)(4))"
            ),
        ),
        ("supplied", "Use the jumper that came with the listed equipment"),
    ],
)
def test_each_form_says_what_it_implies(form, says):
    notes = [str(words) for words in main_bonding_jumper(edition="2023", conductor="3/0", form=form).trace.notes]
    assert any(says in words for words in notes)


@pytest.mark.parametrize(("form", "headline"), [("screw", "Green screw"), ("supplied", "As supplied")])
def test_a_part_that_is_not_sized_on_site_is_named_before_the_size_of_a_wire_in_its_place(form, headline):
    answer = main_bonding_jumper(edition="2023", conductor="3/0", form=form).answer
    assert str(answer.headline) == headline
    assert str(answer.detail).endswith("For a wire instead: 4 AWG copper or larger")


def test_a_bus_has_the_area_of_the_wire_rounded_up():
    """2/0 AWG is 133,100 cmil; x pi/4 x 1e-6 in² = 0.10454 in² = 67.44 mm² (25.4 mm an inch)."""
    detail = str(main_bonding_jumper(edition="2023", conductor="500kcmil", sets=2, form="busbar").answer.detail)
    assert detail.endswith("0.105 in² (68 mm²)")


def test_several_enclosures_each_have_a_jumper_of_their_own_conductors():
    steps = [
        str(step.words) for step in main_bonding_jumper(edition="2023", conductor="3/0", enclosures=6).trace.steps
    ]
    assert steps[0].startswith("6 enclosures, each with its own jumper")
    assert main_bonding_jumper(edition="2023", conductor="3/0", enclosures=7).outcome == "fix"


def test_without_service_conductors_the_note_of_the_edition_is_cited():
    """Note 4 in 2017 and 2020; note 3 in 2023, which dropped the note on several sets."""
    for edition, note in {"2017": "note 4", "2020": "note 4", "2023": "note 3"}.items():
        result = main_bonding_jumper(edition=edition, conductor="3/0", conductor_basis="needed-for-load")
        assert result.trace.steps[0].citations[0].section.endswith(note)


@pytest.mark.parametrize(("edition", "section"), [("2017", "250.24(B)"), ("2020", "250.24(B)"), ("2023", "250.24(C)")])
def test_the_section_that_requires_the_jumper_moves_in_2023(edition, section):
    cited = [rule.section for rule in main_bonding_jumper(edition=edition, conductor="3/0").trace.citations]
    assert section in cited


def test_a_conductor_one_size_larger_never_gives_a_smaller_jumper():
    for edition, sets, conductor_metal, metal in itertools.product(EDITIONS, (1, 2, 3, 5, 8, 12), METALS, METALS):
        areas = [
            result.answer.values["area_cmil"]
            for conductor in AREAS
            if (
                result := main_bonding_jumper(
                    edition=edition, conductor=conductor, sets=sets, conductor_metal=conductor_metal, metal=metal
                )
            ).answer
        ]
        assert areas == sorted(areas)


def test_a_set_of_small_conductors_keeps_the_least_size_of_the_table():
    for sets in (1, 2, 3, 7):
        assert main_bonding_jumper(edition="2023", conductor="12", sets=sets).answer.values["size"] == "8"
