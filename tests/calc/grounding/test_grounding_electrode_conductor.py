"""The grounding electrode conductor: worked cases with their sources, every boundary, and what it must say."""

import itertools

import pytest

from calc import EDITIONS, grounding_electrode_conductor
from tests.cases.read import cases, named
from tests.independent.jumper_size import hot_sizes
from tests.independent.wire_gauge import listed_areas

AREAS = listed_areas()
METALS = ("copper", "aluminum")
# Table 250.66 as printed in 2017 and as its twin in NOM-001-SEDE-2012: limits in kcmil, then the conductor.
LIMITS = {
    "copper": [66.36, 105.6, 167.8, 350, 600, 1100],
    "aluminum": [105.6, 167.8, 250, 500, 900, 1750],
}
SIZES = {
    "copper": ["8", "6", "4", "2", "1/0", "2/0", "3/0"],
    "aluminum": ["6", "4", "2", "1/0", "3/0", "4/0", "250kcmil"],
}
ROD = {"copper": "6", "aluminum": "4"}


def from_print(total: int, conductor_metal: str, metal: str) -> str:
    """Return the printed size for a total in cmil."""
    return SIZES[metal][sum(limit * 1000 < total for limit in LIMITS[conductor_metal])]


def run(edition="2023", **inputs):
    return grounding_electrode_conductor(edition=edition, **inputs)


def size(edition="2023", **inputs) -> str:
    return run(edition, **inputs).answer.values["size"]


def warnings(edition="2023", **inputs) -> str:
    return " | ".join(str(words) for words in run(edition, **inputs).trace.warnings)


@pytest.mark.parametrize("pair", cases("grounding/grounding_electrode_conductor"), ids=named)
def test_worked_cases_give_the_size_of_their_source(pair):
    edition, case = pair
    result = run(edition, **case["inputs"])
    if "size" in case:
        assert result.answer.values["size"] == case["size"], case["reason"]
        assert result.answer.values["taps"] == case.get("taps", [])
        assert result.answer_code == f"{case['size']}-copper"
    else:
        assert case["not_covered"] in f"{result.not_covered.why} {result.not_covered.look_in}"


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases("grounding/grounding_electrode_conductor"):
        assert case["source"] and case["mark"] in ("published", "memory")


def near(limit: float) -> list[tuple[int, str]]:
    """Return sets of equal conductors just below, at and just above a limit in kcmil."""
    totals = {}
    for label, sets in itertools.product(AREAS, range(1, 13)):
        totals.setdefault(AREAS[label] * sets, (sets, label))
    area = round(limit * 1000)
    below = max(total for total in totals if total < area)
    above = min(total for total in totals if total > area)
    return [totals[total] for total in (below, area, above) if total in totals]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", METALS)
@pytest.mark.parametrize(
    ("conductor_metal", "row"), [(metal, row) for metal in METALS for row in range(6)], ids=str
)
def test_just_below_at_and_just_above_each_limit_equals_the_print(conductor_metal, row, metal, edition):
    tried = near(LIMITS[conductor_metal][row])
    given = [
        size(edition, conductor=label, sets=sets, conductor_metal=conductor_metal, metal=metal) for sets, label in tried
    ]
    assert given == [from_print(sets * AREAS[label], conductor_metal, metal) for sets, label in tried]
    assert (given[0], given[-1]) == (SIZES[metal][row], SIZES[metal][row + 1])


@pytest.mark.parametrize("edition", EDITIONS)
def test_every_listed_conductor_up_to_thirty_sets_equals_the_print(edition):
    each = itertools.product(AREAS, (1, 2, 3, 5, 8, 13, 30), METALS, METALS)
    for label, sets, conductor_metal, metal in each:
        if label not in hot_sizes(conductor_metal):
            continue
        given = size(edition, conductor=label, sets=sets, conductor_metal=conductor_metal, metal=metal)
        assert given == from_print(AREAS[label] * sets, conductor_metal, metal), (label, sets)


@pytest.mark.parametrize("edition", EDITIONS)
def test_no_share_of_the_area_is_taken_however_large_the_supply(edition):
    """The jumper of the same service would be 12.5 percent of 60,000 kcmil; this conductor stays 3/0."""
    assert size(edition, conductor="2000kcmil", sets=30) == "3/0"
    assert size(edition, conductor="2000kcmil", sets=30, metal="aluminum") == "250kcmil"


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("electrode", ["rod", "pipe", "plate"])
def test_a_rod_pipe_or_plate_alone_asks_for_no_more_than_6_copper_or_4_aluminum(electrode, edition):
    for metal, label in itertools.product(METALS, hot_sizes("copper")):
        table = from_print(AREAS[label] * 2, "copper", metal)
        expected = min(table, ROD[metal], key=AREAS.get)
        assert size(edition, conductor=label, sets=2, metal=metal, electrode=electrode) == expected


@pytest.mark.parametrize(
    ("electrode", "continues_to", "expected"),
    [
        ("rod", "rod", "6"),
        ("rod", "concrete-encased", "4"),
        ("concrete-encased", "rod", "4"),
        ("rod", "ring", "2"),
        ("ring", "concrete-encased", "2"),
        ("rod", "water-pipe", "3/0"),
        ("water-pipe", "rod", "3/0"),
        ("concrete-encased", "structural-metal", "3/0"),
        ("plate", "other", "3/0"),
    ],
)
def test_a_conductor_that_runs_on_has_the_largest_size_asked_for(electrode, continues_to, expected):
    result = run(conductor="500kcmil", sets=4, electrode=electrode, continues_to=continues_to, ring="2")
    assert result.answer.values["size"] == expected
    assert "250.64(F)" in [rule.section for rule in result.trace.citations]


def test_the_ring_s_own_size_is_the_limit_and_the_table_where_it_is_smaller():
    assert [size(conductor="500kcmil", sets=4, electrode="ring", ring=ring) for ring in ("2", "1/0", "4/0")] == [
        "2",
        "1/0",
        "3/0",
    ]
    assert size(conductor="2", electrode="ring", ring="2") == "8"


@pytest.mark.parametrize("inputs", [{"electrode": "ring"}, {"electrode": "rod", "continues_to": "ring"}])
def test_a_ring_without_its_size_is_asked_for_because_a_guess_could_be_too_small(inputs):
    outcome = run(conductor="500kcmil", sets=4, **inputs)
    assert outcome.outcome == "fix" and [each.field for each in outcome.fix] == ["ring"]


@pytest.mark.parametrize(
    ("others", "says"),  # Table 250.66: 3/0 asks for 4 AWG, 2 x 250 for 1/0, 2 AWG for 8
    [
        (None, "copper wire or larger"),
        ("3/0,3/0", "copper wire or larger; taps 4 AWG each"),
        ("2x250kcmil,2", "copper wire or larger; taps 4 AWG, 1/0 AWG, 8 AWG, in the order entered"),
    ],
)
def test_the_answer_says_the_size_of_each_tap(others, says):
    assert str(run(conductor="3/0", other_conductors=others).answer.detail) == says


@pytest.mark.parametrize("edition", EDITIONS)
def test_the_tap_of_one_derived_system_is_not_promised_to_the_others_that_nobody_entered(edition):
    """Table 250.66: 1/0 asks for 6 AWG, 500 kcmil for 1/0 (250.30(A)(6)(b): each tap by its own system)."""
    alone = run(edition=edition, conductor="1/0", place="several-derived-systems").answer
    assert str(alone.in_one_line) == (
        "3/0 AWG copper wire or larger; tap for this system 6 AWG, each other tap sized from its own conductors"
    )
    both = run(edition=edition, conductor="1/0", place="several-derived-systems", other_conductors="500kcmil").answer
    assert str(both.in_one_line) == "3/0 AWG copper wire or larger; taps 6 AWG, 1/0 AWG, in the order entered"


@pytest.mark.parametrize(("conductor", "says"), [("2", "8 AWG copper wire or larger, in a raceway or cable armor"),
                                                 ("1", "6 AWG copper wire or larger")])  # fmt: skip
def test_a_conductor_smaller_than_6_says_beside_its_size_that_it_runs_in_a_raceway_or_armor(conductor, says):
    """250.64(B)(3): smaller than 6 AWG is protected; 6 AWG free from damage may run on the surface."""
    assert str(run(conductor=conductor, electrode="rod").answer.in_one_line) == says


def test_a_ring_smaller_than_2_is_no_ground_ring():
    outcome = run(conductor="3/0", electrode="ring", ring="4")
    assert outcome.outcome == "not_covered" and "250.52(A)(4)" in str(outcome.not_covered.look_in)


def test_concrete_and_ring_limits_are_not_given_to_aluminum():
    for electrode in ("concrete-encased", "ring"):
        inputs = dict(conductor="500kcmil", sets=4, metal="aluminum", electrode=electrode, ring="2")
        assert size(**inputs) == "250kcmil"
        assert "for copper only" in warnings(**inputs)


@pytest.mark.parametrize("written", ["1, 500", "1, 500 kcmil", "1,1x500kcmil"])
def test_a_list_of_1_awg_and_500_kcmil_is_never_1500_kcmil(written):
    inputs = run(conductor="3/0", other_conductors=written).inputs
    assert inputs["other_conductors"] == "1,1x500kcmil"


def test_sets_of_a_list_are_read_with_a_cross_or_a_hyphen():
    for written in ("2x3/0", "2 × 3/0", "2-3/0"):
        assert run(conductor="3/0", other_conductors=written).inputs["other_conductors"] == "2x3/0"


@pytest.mark.parametrize("written", ["6-3", "12-2", "3/0, 6 - 3"])
def test_what_can_name_a_cable_is_asked_and_is_never_that_many_conductors(written):
    (fix,) = run(conductor="3/0", other_conductors=written).fix
    assert fix.field == "other_conductors" and "cable" in str(fix.words)
    assert run(conductor="3/0", other_conductors="6x3, 2-500").inputs["other_conductors"] == "6x3,2x500kcmil"


def test_unlike_disconnects_are_summed_and_each_tap_goes_by_its_own_conductors():
    """3/0 + 2 x 250 + 2 = 167.8 + 500 + 66.36 = 734.16 kcmil: 2/0; taps 4, 1/0, 8."""
    values = run(conductor="3/0", other_conductors="2x250kcmil, 2").answer.values
    assert (values["size"], values["taps"]) == ("2/0", ["4", "1/0", "8"])


def test_a_tap_is_never_larger_than_the_conductor_it_joins():
    values = run(conductor="500kcmil", other_conductors="500kcmil", electrode="rod").answer.values
    assert (values["size"], values["taps"]) == ("6", ["6", "6"])


@pytest.mark.parametrize(("metal", "common"), [("copper", "3/0"), ("aluminum", "250kcmil")])
@pytest.mark.parametrize("edition", EDITIONS)
def test_derived_systems_share_a_fixed_size_and_tap_by_their_own_conductors(metal, common, edition):
    values = run(
        edition, conductor="2", other_conductors="600kcmil", metal=metal, place="several-derived-systems"
    ).answer.values
    assert values["size"] == common
    assert values["taps"] == [SIZES[metal][0], SIZES[metal][4]]


@pytest.mark.parametrize(("edition", "expected"), [("2017", "3/0"), ("2020", "6"), ("2023", "6"), ("2026", "6")])
def test_the_common_conductor_shrinks_with_the_electrodes_since_2020_and_says_when_not(edition, expected):
    inputs = dict(conductor="250kcmil", place="several-derived-systems", electrode="rod")
    assert size(edition, **inputs) == expected
    assert ("no water pipe" in warnings(edition, **inputs)) == (edition != "2017")
    assert size(edition, **inputs, continues_to="water-pipe") == "3/0"


@pytest.mark.parametrize(
    ("edition", "sections", "contact"),
    [
        ("2017", ["(250.64(A))"], "masonry or earth"),
        ("2020", ["(250.64(A)(1))", "(250.64(A)(3))"], "concrete"),
        ("2023", ["(250.64(A)(1))", "(250.64(A)(3))"], "concrete"),
    ],
)
@pytest.mark.parametrize("metal", ["aluminum", "copper-clad-aluminum"])
def test_aluminum_is_warned_of_earth_masonry_and_corrosion_with_the_section(edition, sections, contact, metal):
    said = warnings(edition, conductor="3/0", metal=metal)
    assert contact in said and "18 inches" in said and "corrodes" in said
    assert [section for section in sections if section not in said] == []
    assert warnings(edition, conductor="3/0") == ""


def test_a_conductor_smaller_than_6_is_protected_and_6_is_not_spoken_of():
    def notes(conductor):
        return " ".join(str(words) for words in run(conductor=conductor).trace.notes)

    assert "raceway or cable armor (250.64(B)(3))" in notes("2")
    assert "raceway or cable armor" not in notes("1")


@pytest.mark.parametrize(
    ("place", "grounding", "in_2020", "in_2023"),
    [
        ("service-disconnect", "solidly-grounded", "250.24(D)", "250.24(E)"),
        ("service-disconnect", "ungrounded", "250.24(E)", "250.24(F)"),
        ("separate-building", "solidly-grounded", "250.32(E)", "250.32(E)"),
        ("separately-derived-system", "solidly-grounded", "250.30(A)(5)", "250.30(A)(5)"),
        ("separately-derived-system", "ungrounded", "250.30(B)(1)", "250.30(B)(1)"),
    ],
)
def test_the_section_that_asks_for_it_is_that_of_the_place_and_edition(place, grounding, in_2020, in_2023):
    for edition, section in (("2017", in_2020), ("2020", in_2020), ("2023", in_2023)):
        cited = run(edition, conductor="3/0", place=place, system_grounding=grounding).trace.citations
        assert section in [rule.section for rule in cited]


def test_a_single_derived_system_takes_no_other_disconnects():
    outcome = run(conductor="3/0", place="separately-derived-system", other_conductors="3/0").not_covered
    assert "250.30(A)(5)" in str(outcome.look_in)


@pytest.mark.parametrize(
    ("field", "text"),
    [
        ("other_conductors", "3/0,,3/0"),
        ("other_conductors", "3/0,none"),
        ("other_conductors", "0x3/0"),
        ("other_conductors", "1,500 kcmil"),
        ("other_conductors", "2,000"),
        ("other_conductors", "2-0"),
        ("other_conductors", "31x3/0"),
        ("other_conductors", "1,1,1,1,1,1"),
        ("electrode", "gas-pipe"),
        ("continues_to", ""),
        ("ring", "thirteen"),
        ("sets", "0"),
        ("place", "roof"),
    ],
)
def test_bad_input_names_its_field(field, text):
    result = grounding_electrode_conductor.run([("conductor", "3/0"), (field, text)])
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def test_a_larger_conductor_more_sets_or_another_disconnect_never_gives_a_smaller_part():
    for edition, conductor_metal, metal, electrode in itertools.product(
        EDITIONS, METALS, METALS, ("water-pipe", "concrete-encased", "ring", "rod")
    ):
        fixed = dict(conductor_metal=conductor_metal, metal=metal, electrode=electrode, ring="2")
        by_size = [AREAS[size(edition, conductor=label, **fixed)] for label in hot_sizes(conductor_metal)]
        by_sets = [AREAS[size(edition, conductor="3/0", sets=sets, **fixed)] for sets in range(1, 13)]
        others = [None, "2", "3/0", "3/0,3/0", "3/0,3/0,2x500kcmil"]
        by_others = [AREAS[size(edition, conductor="2", other_conductors=each, **fixed)] for each in others]
        for areas in (by_size, by_sets, by_others):
            assert areas == sorted(areas)


def test_no_electrode_ever_asks_for_more_than_the_water_pipe():
    for label, electrode, metal in itertools.product(
        hot_sizes("copper"), ("concrete-encased", "ring", "rod", "other"), METALS
    ):
        whole = AREAS[size(conductor=label, metal=metal)]
        assert AREAS[size(conductor=label, metal=metal, electrode=electrode, ring="2")] <= whole
