"""The grounded conductor: worked cases with their sources, every boundary, the floor in parallel, what it must say."""

import itertools

import pytest

from calc import EDITIONS, grounded_conductor
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.jumper_size import AMPACITY, AREAS, THROUGH, hot_sizes, jumper_size

METALS = ("copper", "aluminum")
BOTH_METALS = list(itertools.product(METALS, METALS))
PLACES = ("service-disconnect", "first-disconnect")
CASES = "grounding/grounded_conductor"


def larger(*sizes):
    """Return the largest of some size labels by area."""
    return max(sizes, key=AREAS.get)


def expected_size(conductor, sets, raceways, conductor_metal, metal):
    """Return the size by the second route: the table for one raceway, and 1/0 or larger in several."""
    size = jumper_size(conductor, sets // raceways, conductor_metal, metal)
    return larger(size, "1/0") if size and raceways > 1 else size


def size_of(**inputs):
    result = grounded_conductor(**({"edition": "2023"} | inputs))
    return result.answer.values["size"] if result.answer else None


def words_of(kind, **inputs):
    return [str(words) for words in getattr(grounded_conductor(**({"edition": "2023"} | inputs)).trace, kind)]


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_size_of_their_source(pair):
    edition, case = pair
    result = grounded_conductor(edition=edition, **case["inputs"])
    if "size" in case:
        assert result.answer.values["size"] == case["size"], case["reason"]
    else:
        assert case["not_covered"] in f"{result.not_covered.why} {result.not_covered.look_in}"


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


def around(limit):
    """Return conductors and sets just below, at (where there are such) and just above a limit of the table."""
    area = AREAS.get(limit) or int(limit.removesuffix("kcmil")) * 1000
    totals = {AREAS[size] * sets: (size, sets) for size, sets in itertools.product(AREAS, range(1, 13))}
    below = max(total for total in totals if total < area)
    above = min(total for total in totals if total > area)
    return [totals[total] for total in (below, area, above) if total in totals]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("raceways", [1, 2])
@pytest.mark.parametrize(("conductor_metal", "metal"), BOTH_METALS)
def test_just_below_at_and_just_above_each_limit_equals_the_second_route(
    edition, place, raceways, conductor_metal, metal
):
    for conductor, sets in itertools.chain.from_iterable(map(around, THROUGH[conductor_metal])):
        wires = dict(conductor=conductor, sets=sets * raceways, raceways=raceways)
        metals = dict(conductor_metal=conductor_metal, metal=metal)
        given = size_of(edition=edition, place=place, **wires, **metals)
        assert given == expected_size(**wires, **metals), wires


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("conductor_metal", "metal"), BOTH_METALS)
def test_every_listed_conductor_equals_the_second_route_and_a_larger_one_never_gives_less(
    edition, conductor_metal, metal
):
    for sets, raceways in ((1, 1), (2, 1), (2, 2), (6, 3), (12, 12), (30, 1), (30, 30)):
        areas = []
        for conductor in hot_sizes(conductor_metal):
            inputs = dict(
                conductor=conductor, sets=sets, raceways=raceways, conductor_metal=conductor_metal, metal=metal
            )
            given = size_of(edition=edition, **inputs)
            assert given == expected_size(**inputs), inputs
            areas += [AREAS[given]] if given else []
        assert areas == sorted(areas)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize(("conductor_metal", "metal"), BOTH_METALS)
def test_the_grounded_wire_of_a_delta_carries_what_a_hot_wire_carries(edition, place, conductor_metal, metal):
    sizes = [size for size in hot_sizes(conductor_metal) if size in AMPACITY[conductor_metal]]
    limited = place == "first-disconnect" and edition != "2017"
    for conductor, (sets, raceways) in itertools.product(sizes, ((1, 1), (3, 1), (3, 3))):
        inputs = dict(conductor=conductor, sets=sets, raceways=raceways, conductor_metal=conductor_metal, metal=metal)
        result = grounded_conductor(edition=edition, place=place, system_grounding="corner-grounded", **inputs)
        enough = [size for size, ampere in AMPACITY[metal].items() if ampere >= AMPACITY[conductor_metal][conductor]]
        if conductor_metal != metal and not enough:
            assert "Choose the same material as the hot conductors" in str(result.not_covered.look_in)
            continue
        size = conductor if conductor_metal == metal else enough[0]
        if sets == 1:
            size = larger(size, jumper_size(conductor, 1, conductor_metal, metal, limited))
        size = larger(size, "1/0") if sets > 1 else size
        assert (result.answer.values["size"], result.answer.values["count"]) == (size, sets)


@pytest.mark.parametrize(("load_size", "size"), [("6", "4"), ("4", "4"), ("3", "3"), ("500kcmil", "500kcmil")])
def test_the_larger_of_fault_path_and_load_counts(load_size, size):
    assert size_of(conductor="3/0", load_size=load_size) == size


@pytest.mark.parametrize(("load_size", "size"), [("1", "1/0"), ("1/0", "1/0"), ("2/0", "2/0")])
def test_a_small_load_does_not_go_under_the_floor_in_parallel(load_size, size):
    assert size_of(conductor="3/0", sets=2, raceways=2, load_size=load_size) == size


def test_without_the_load_the_answer_says_that_it_was_not_computed():
    left_out = "The neutral load was not calculated. If it requires a larger conductor, use the larger one (220.61)."
    assert left_out in words_of("notes", conductor="3/0")
    assert left_out not in words_of("notes", conductor="3/0", load_size="4")
    assert left_out not in words_of("notes", conductor="3/0", system_grounding="corner-grounded")


@pytest.mark.parametrize(("edition", "section"), [("2017", "250.24(C)"), ("2020", "250.24(C)"), ("2023", "250.24(D)")])
def test_no_neutral_load_does_not_spare_it_and_the_section_moves_in_2023(edition, section):
    notes = words_of("notes", edition=edition, conductor="3/0")
    needed = "It is required even where no load uses the neutral: it is the ground-fault return path"
    assert f"{needed} ({section})." in notes


def test_the_derived_system_says_itself_from_2020_that_it_need_not_be_larger():
    """250.30(A)(3) of 2017 lacks the sentence; those of 2020 (California 2022) and 2023 have it."""
    for edition in EDITIONS:
        small = dict(edition=edition, conductor="10", place="first-disconnect")
        assert size_of(**small) == ("8" if edition == "2017" else "10")
        assert any("Some apply it here too" in words for words in words_of("notes", **small)) == (edition == "2017")


def test_a_small_service_keeps_the_least_size_of_the_table_and_the_other_reading_is_named():
    """250.24(D)(1) of 2023 and (C)(1) before name the table and no limit."""
    for edition in EDITIONS:
        assert size_of(edition=edition, conductor="10") == "8"
        notes = words_of("notes", edition=edition, conductor="10")
        assert any("Some apply it here too: 10 AWG copper" in words for words in notes)


def test_parallel_sets_without_a_number_of_raceways_give_both_sizes_the_larger_first():
    """2 x 3/0: 335.6 kcmil, 2 AWG, or 1/0 in each (250.24(D)(2)); 3 x 400: 1200 / 8 = 150, 3/0, or 1/0 in each."""
    for conductor, sets, first, shown in (
        ("3/0", 2, "1/0", "in each of 2 raceways, one set in each; 2 AWG if all sets are in one raceway"),
        ("400kcmil", 3, "3/0", "if all sets are in one raceway; 1/0 AWG in each of 3 raceways"),
    ):
        answer = grounded_conductor(edition="2023", conductor=conductor, sets=sets).answer
        assert answer.values["size"] == first and shown in str(answer.in_one_line)
        for raceways in (1, sets):
            plain = grounded_conductor(edition="2023", conductor=conductor, sets=sets, raceways=raceways).answer
            assert plain.values["count"] == raceways and "if all sets" not in str(plain.in_one_line)


@pytest.mark.parametrize(("sets", "raceways"), [(3, 2), (1, 2), (2, 4), (30, 29)])
def test_sets_that_do_not_share_the_raceways_equally_are_not_covered(sets, raceways):
    for edition, section in {"2017": "310.10(H)(3)", "2020": "310.10(G)(3)", "2023": "310.10(G)(3)"}.items():
        result = grounded_conductor(edition=edition, conductor="3/0", sets=sets, raceways=raceways)
        assert section in str(result.not_covered.look_in)


@pytest.mark.parametrize(("conductor", "questioned"), [("1", True), ("1/0", False), ("3/0", False)])
def test_parallel_hot_conductors_under_1_0_are_questioned(conductor, questioned):
    for raceways in (1, 2):
        warnings = words_of("warnings", conductor=conductor, sets=2, raceways=raceways)
        assert any("310.10(G)(1)" in words for words in warnings) == questioned


@pytest.mark.parametrize(
    ("inputs", "says"),
    [
        ({}, "copper or larger, with the hot conductors. The neutral load may require a larger one"),
        ({"load_size": "2"}, "copper or larger, with the hot conductors"),
        (
            {"sets": 4, "raceways": 2},
            "copper or larger, one in each of 2 raceways or cables. The neutral load may require a larger one",
        ),
        (
            {"sets": 4, "raceways": 2, "system_grounding": "corner-grounded"},
            "copper or larger, one with each of the 4 sets",
        ),
    ],
)
def test_the_answer_says_how_many_there_are(inputs, says):
    assert str(grounded_conductor(edition="2023", conductor="3/0", **inputs).answer.detail) == says


def test_each_of_several_enclosures_has_its_own():
    step = grounded_conductor(edition="2023", conductor="3/0", enclosures=3).trace.steps[0]
    assert str(step.words).startswith("3 enclosures, each with its own grounded conductor")
    assert step.citations[0].section == "250.24(D)"
    assert grounded_conductor(edition="2023", conductor="3/0", enclosures=7).outcome == "fix"


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize(
    ("system", "section"), [("ungrounded", ("250.24(F)", "250.30(B)")), ("impedance-grounded", ("250.36",) * 2)]
)
def test_a_system_without_this_conductor_says_where_to_look(place, system, section):
    result = grounded_conductor(edition="2023", conductor="3/0", place=place, system_grounding=system)
    assert section[PLACES.index(place)] in str(result.not_covered.look_in)


@pytest.mark.parametrize(
    ("field", "value"),
    [("conductor", "5/0"), ("sets", "0"), ("sets", "31"), ("raceways", "31"), ("load_size", "big"), ("place", "meter")],
)
def test_bad_input_names_the_field_to_mend(field, value):
    result = grounded_conductor(**{"edition": "2023", "conductor": "3/0"} | {field: value})
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def test_an_empty_load_counts_as_left_out_and_the_link_carries_no_none():
    result = grounded_conductor.run([("edition", "2023"), ("conductor", "3/0"), ("load_size", " ")])
    link = write(result)
    assert result.answer_code == "4-copper" and "None" not in link
    assert grounded_conductor.run(read(link.partition("?")[2])).answer_code == "4-copper"


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_an_ordinary_answer_of_an_edition_that_was_read_warns_of_nothing(edition):
    assert words_of("warnings", edition=edition, conductor="3/0", sets=2, raceways=2) == []
