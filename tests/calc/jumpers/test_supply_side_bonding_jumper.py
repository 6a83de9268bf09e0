"""The supply-side bonding jumper: worked cases, every boundary, raceways, lengths, and what it must say."""

import itertools

import pytest

from calc import EDITIONS, equipment_grounding_conductor, supply_side_bonding_jumper
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.jumper_size import AREAS, THROUGH, hot_sizes, jumper_size

METALS = ("copper", "aluminum")
PLACES = ("service-raceway", "ahead-of-service-disconnects", "separately-derived-system", "generator-joined-neutral")
RIGID = ("rigid-metal-conduit", "intermediate-metal-conduit", "electrical-metallic-tubing", "metal-wireway")
FLEXIBLE = ("flexible-metal-conduit", "liquidtight-flexible-metal-conduit")


def answer(**inputs):
    return supply_side_bonding_jumper(**{"edition": "2023", "conductor": "3/0"} | inputs)


def size_of(**inputs):
    result = supply_side_bonding_jumper(**inputs)
    return result.answer.values["size"] if result.answer else None


def notes(**inputs):
    return " ".join(str(words) for words in answer(**inputs).trace.notes)


def warnings(**inputs):
    return [str(words) for words in answer(**inputs).trace.warnings]


@pytest.mark.parametrize("pair", cases("jumpers/supply_side_bonding_jumper"), ids=named)
def test_worked_cases_give_what_their_source_says(pair):
    edition, case = pair
    result = supply_side_bonding_jumper(edition=edition, **case["inputs"])
    if "not_covered" in case:
        assert case["not_covered"] in f"{result.not_covered.why} {result.not_covered.look_in}"
        return
    assert result.answer.values["size"] == case["size"], case["reason"]
    assert result.answer.values["wire_needed"] == case.get("wire_needed", True)


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases("jumpers/supply_side_bonding_jumper"):
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
@pytest.mark.parametrize(("conductor_metal", "metal"), list(itertools.product(METALS, METALS)))
def test_just_below_at_and_just_above_each_limit_equals_the_second_route(edition, place, conductor_metal, metal):
    for limit in THROUGH[conductor_metal]:
        for conductor, sets in around(limit):
            inputs = dict(edition=edition, conductor=conductor, place=place, conductor_metal=conductor_metal)
            inputs["metal"] = metal
            if conductor not in hot_sizes(conductor_metal):
                continue
            limited = place == "separately-derived-system"
            one, all_of_them = (jumper_size(conductor, count, conductor_metal, metal, limited) for count in (1, sets))
            assert size_of(**inputs, sets=sets, raceways=1) == all_of_them
            assert size_of(**inputs, sets=sets, raceways=sets, arrangement="single") == all_of_them
            assert size_of(**inputs, sets=sets, raceways=sets) == one


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_larger_conductor_or_more_sets_never_give_a_smaller_jumper_nor_a_raceway_more_than_all(edition):
    for conductor_metal, metal in itertools.product(METALS, METALS):
        inputs = dict(edition=edition, conductor_metal=conductor_metal, metal=metal)
        by_sets = []
        for sets in (1, 2, 4, 12):
            sizes = [size_of(conductor=conductor, sets=sets, **inputs) for conductor in AREAS]
            areas = [AREAS[size] for size in sizes if size]
            assert areas == sorted(areas)
            by_sets.append(sizes)
            for conductor, whole in zip(AREAS, sizes, strict=True):
                each = size_of(conductor=conductor, sets=sets, raceways=sets, **inputs)
                assert whole is None or each is None or AREAS[each] <= AREAS[whole]
        for fewer, more in itertools.pairwise(by_sets):
            assert all(AREAS[a] <= AREAS[b] for a, b in zip(fewer, more, strict=True) if a and b)


@pytest.mark.parametrize("raceways", [1, 2, 3, 6])
def test_a_raceway_goes_by_the_sets_in_it(raceways):
    """Six sets of 350 kcmil: 6, 3, 2 or 1 in a raceway are 2100, 1050, 700 or 350 kcmil."""
    expected = {1: "300kcmil", 2: "2/0", 3: "2/0", 6: "2"}[raceways]
    assert size_of(edition="2023", conductor="350kcmil", sets=6, raceways=raceways) == expected


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("conductor", "5/0"),
        ("sets", "0"),
        ("raceways", "31"),
        ("arrangement", "both"),
        ("place", "meter"),
        ("form", "screw"),
        ("raceway", "pipe"),
        ("run", "under"),
        ("length", "0"),
        ("length", "6A"),
        ("metal", "steel"),
    ],
)
def test_bad_input_names_the_field_to_mend(field, value):
    result = answer(**{field: value})
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def test_a_raceway_as_the_jumper_needs_its_kind():
    assert [each.field for each in answer(form="raceway").fix] == ["raceway"]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("place", ["service-raceway", "ahead-of-service-disconnects", "separately-derived-system"])
@pytest.mark.parametrize("raceway", RIGID)
def test_a_nonflexible_metal_raceway_may_be_the_jumper(edition, place, raceway):
    result = answer(edition=edition, place=place, form="raceway", raceway=raceway)
    assert str(result.answer.headline) == "No wire required" and result.answer_code == "raceway"
    assert "For a wire instead: 4 AWG copper" in str(result.answer.detail)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("raceway", [*FLEXIBLE, "nonmetallic-raceway"])
def test_a_flexible_or_nonmetallic_raceway_needs_a_wire(edition, place, raceway):
    result = answer(edition=edition, place=place, form="raceway", raceway=raceway)
    assert result.answer.values["wire_needed"] and result.answer_code == "4-copper"
    assert "wire" in str(result.answer.detail).split(". ", 1)[1]


@pytest.mark.parametrize(("edition", "item"), [("2017", "15"), ("2020", "15"), ("2023", "14")])
def test_flexible_conduit_on_a_service_names_the_item_of_the_edition(edition, item):
    result = answer(edition=edition, form="raceway", raceway="flexible-metal-conduit")
    assert f"no longer than 6 ft and needs a wire-type bonding jumper with it (230.43({item}))" in str(
        result.answer.detail
    )


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("length", "outcome"), [("5.9ft", "answer"), ("6ft", "answer"), ("6.1ft", "not_covered")])
def test_outside_the_jumper_is_six_feet_or_shorter(edition, length, outcome):
    assert answer(edition=edition, run="outside", length=length).outcome == outcome
    assert answer(edition=edition, run="outside-at-pole", length=length).outcome == "answer"
    assert answer(edition=edition, run="inside", length=length).outcome == "answer"


def test_the_length_counts_in_any_unit_and_only_where_there_is_a_wire():
    assert answer(run="outside", length="72in").outcome == "answer"
    assert answer(run="outside", length="1.9m").outcome == "not_covered"
    raceway = dict(form="raceway", raceway="rigid-metal-conduit")
    assert answer(run="outside", length="10ft", **raceway).outcome == "answer"


def test_a_small_derived_conductor_is_the_limit_without_a_doubt_and_at_a_service_with_one():
    """The table begins with 8 AWG; 12 AWG is smaller. 250.30(A)(2) says so outright, the note of the table does not."""
    derived = answer(conductor="12", place="separately-derived-system")
    assert derived.answer.values["size"] == "12" and derived.trace.warnings == []
    assert "250.30(A)(2)" in {rule.section for rule in derived.trace.citations}
    service = answer(conductor="12")
    assert service.answer.values["size"] == "8"
    assert "Some apply it here too: 12 AWG copper. Ask the authority" in " ".join(map(str, service.trace.notes))


def test_parallel_sets_without_a_number_of_raceways_give_both_sizes():
    """3 x 400: 1200 / 8 = 150 kcmil, so 3/0; one 400: 1/0 (Table 250.102(C)(1))."""
    both = answer(conductor="400kcmil", sets=3).answer
    assert both.values["size"] == "3/0" and "1/0 AWG for each of 3 raceways" in str(both.in_one_line)
    for how in ({"raceways": 1}, {"raceways": 3}, {"arrangement": "single"}):
        assert "if all sets are in one raceway" not in str(
            answer(conductor="400kcmil", sets=3, **how).answer.in_one_line
        )


def test_an_aluminum_jumper_to_small_copper_keeps_the_size_of_the_table():
    result = answer(conductor="10", metal="aluminum", place="separately-derived-system")
    assert result.answer.values["size"] == "6"
    assert "(250.30(A)(2))" in str(result.trace.warnings[0])


def test_past_a_breaker_at_the_generator_the_device_gives_the_size():
    """400 A: 3 AWG; the conductors, 500 kcmil, would have given 1/0."""
    conductor = equipment_grounding_conductor(edition="2023", device=400, installed_conductor="500kcmil")
    assert conductor.answer.values["size"] == "3"
    assert size_of(edition="2023", conductor="500kcmil") == "1/0"


@pytest.mark.parametrize(
    ("place", "section"), [("separately-derived-system", "250.30(A)(2)(2)"), (PLACES[0], "250.102")]
)
def test_a_bus_has_the_area_of_the_wire_rounded_up(place, section):
    """2/0 AWG is 133,100 cmil; x pi/4 x 1e-6 in² = 0.10454 in² = 67.44 mm² (25.4 mm an inch)."""
    result = answer(conductor="500kcmil", sets=2, raceways=1, form="busbar", place=place)
    assert str(result.answer.detail).endswith("0.105 in² (68 mm²)")
    assert any(rule.section.startswith(section) for rule in result.trace.citations)


@pytest.mark.parametrize(
    ("inputs", "says"),
    [
        ({}, "Standard locknuts and bushings alone are not enough"),
        ({"place": "ahead-of-service-disconnects"}, "needs its own main bonding jumper (250.28(D)(2))"),
        ({"place": "separately-derived-system"}, "from the source enclosure to the first disconnect enclosure"),
        ({"place": "separately-derived-system"}, "It is not required between an outdoor source and the disconnect"),
        (
            {"place": "separately-derived-system", "system_grounding": "ungrounded"},
            "requires this jumper too (250.30(B))",
        ),
        ({"system_grounding": "ungrounded"}, "connect that metal to the grounding electrode conductor (250.24(F))"),
        ({"place": "generator-joined-neutral"}, "Do not bond the neutral to metal at the generator (250.35(B))"),
        ({"sets": 2, "raceways": 2, "arrangement": "single"}, "bushing to bushing"),
        ({"run": "inside"}, "(250.102(E)(1))"),
        ({"run": "outside"}, "no longer than 6 ft and must follow the raceway (250.102(E)(2))"),
        ({"run": "outside-at-pole"}, "(250.102(E)(2) Exception)"),
        ({"form": "raceway", "raceway": "rigid-metal-conduit"}, "paint removed"),
    ],
)
def test_the_notes_say_what_the_case_implies_on_site(inputs, says):
    assert says in notes(**inputs)


@pytest.mark.parametrize(
    ("conductor", "run", "named"),  # 8 AWG up to 2 AWG copper, 6 AWG above; 250.64(B)(3) asks of less than 6 AWG
    [("2", "outside", True), ("2", "outside-at-pole", True), ("2", "inside", False), ("1", "outside", False)],
)
def test_a_wire_outside_smaller_than_6_runs_in_a_raceway_or_armor(conductor, run, named):
    notes = [str(note) for note in answer(conductor=conductor, run=run).trace.notes]
    assert any("in a raceway or cable armor" in note and "250.64(B)(3)" in note for note in notes) == named


def test_without_the_kind_of_raceway_the_words_ask_for_it_plainly():
    (fix,) = answer(form="raceway").fix
    assert fix.field == "raceway" and str(fix.words) == "Choose the type of raceway used as the jumper."


def test_outside_the_raceway_of_a_derived_system_the_authority_is_asked():
    assert "250.30(A)(2)" in warnings(place="separately-derived-system", run="outside")[0]
    assert warnings(run="outside") == []


def test_only_aluminum_is_warned_of_near_earth():
    assert warnings() == [] and "250.64(A)" in warnings(metal="aluminum")[0]


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
@pytest.mark.parametrize("place", PLACES)
def test_an_ordinary_answer_of_an_edition_that_was_read_warns_of_nothing(edition, place):
    assert warnings(edition=edition, place=place) == []


def test_a_link_gives_the_same_answer_and_leaves_out_what_was_left_out():
    result = answer(conductor="400kcmil", sets=3, raceways=3)
    link = write(result)
    assert result.answer_code == "1/0-copper" and "length" not in link
    assert supply_side_bonding_jumper.run(read(link.partition("?")[2])).answer_code == result.answer_code
