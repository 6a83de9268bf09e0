"""The bond of a metal building frame: worked cases, every boundary, the caps, what spares it, where it lands."""

import itertools

import pytest

from calc import EDITIONS, structural_metal_bonding
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.jumper_size import AREAS, THROUGH, hot_sizes, jumper_size

METALS = ("copper", "aluminum")
CAP = {"copper": "3/0", "aluminum": "250kcmil"}
SIZED = ("service", "feeder-or-branch", "separately-derived-system")
BUILDINGS = ("service", "feeder-or-branch")
DERIVED = "separately-derived-system"


def bond_size(edition, conductor, sets, conductor_metal, metal):
    """Return the size by the second route: the table, and from 2020 no larger than the cap."""
    size = jumper_size(conductor, sets, conductor_metal, metal)
    if edition == "2017" or (size and AREAS[size] <= AREAS[CAP[metal]]):
        return size
    return CAP[metal]


def size_of(**inputs):
    result = structural_metal_bonding(**inputs)
    return result.answer.values["size"] if result.answer else None


def answer(**inputs):
    return structural_metal_bonding(**{"edition": "2023", "conductor": "3/0"} | inputs)


def require(**inputs):
    return answer(**inputs).answer.values["needed"]


@pytest.mark.parametrize("pair", cases("grounding/structural_metal_bonding"), ids=named)
def test_worked_cases_give_what_their_source_says(pair):
    edition, case = pair
    result = structural_metal_bonding(edition=edition, **case["inputs"])
    if "size" in case:
        assert result.answer.values["size"] == case["size"], case["reason"]
    elif "no_bond" in case:
        assert str(result.answer.headline) == "No bond required" and result.answer_code == "no-bond"
        assert case["no_bond"] in str(result.answer.detail)
    else:
        assert case["not_covered"] in f"{result.not_covered.why} {result.not_covered.look_in}"


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases("grounding/structural_metal_bonding"):
        assert case["source"] and case["mark"] in ("published", "memory")


def around(limit):
    """Return conductors and sets just below, at (where there are such) and just above a limit of the table."""
    area = AREAS.get(limit) or int(limit.removesuffix("kcmil")) * 1000
    totals = {AREAS[size] * sets: (size, sets) for size, sets in itertools.product(AREAS, range(1, 13))}
    below = max(total for total in totals if total < area)
    above = min(total for total in totals if total > area)
    return [totals[total] for total in (below, area, above) if total in totals]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("supply", SIZED)
@pytest.mark.parametrize(("conductor_metal", "metal"), list(itertools.product(METALS, METALS)))
def test_just_below_at_and_just_above_each_limit_equals_the_second_route(edition, supply, conductor_metal, metal):
    limits = [
        *THROUGH[conductor_metal],
        "1342kcmil",
        "2000kcmil",
    ]  # eight times 3/0 and 250 kcmil: where the caps begin
    for limit in limits:
        for conductor, sets in around(limit):
            given = size_of(
                edition=edition,
                supply=supply,
                conductor=conductor,
                sets=sets,
                conductor_metal=conductor_metal,
                metal=metal,
            )
            assert given == bond_size(edition, conductor, sets, conductor_metal, metal), (conductor, sets)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("supply", ["service", DERIVED])
def test_every_listed_conductor_equals_the_second_route_and_a_larger_one_never_gives_less(edition, supply):
    for sets, conductor_metal, metal in itertools.product((1, 2, 5, 12, 30), METALS, METALS):
        areas = []
        inputs = dict(edition=edition, supply=supply, sets=sets, conductor_metal=conductor_metal, metal=metal)
        for conductor in hot_sizes(conductor_metal):
            given = size_of(conductor=conductor, **inputs)
            assert given == bond_size(edition, conductor, sets, conductor_metal, metal), (conductor, sets)
            areas += [AREAS[given]] if given else []
        assert areas == sorted(areas)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("supply", BUILDINGS)
def test_a_building_is_bonded_only_where_all_four_conditions_hold(edition, supply):
    inputs = dict(edition=edition, supply=supply)
    assert require(**inputs)
    for spared in ({"frame": "not-interconnected"}, {"exposed": "no"}, {"bonded": "yes"}, {"energized": "no"}):
        assert not require(**inputs, **spared)


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_source_of_its_own_is_bonded_even_where_the_frame_is_bonded_or_no_fault_is_likely(edition):
    inputs = dict(edition=edition, supply=DERIVED)
    assert require(**inputs) and require(**inputs, bonded="yes") and require(**inputs, energized="no")
    assert not require(**inputs, frame="not-interconnected") and not require(**inputs, exposed="no")
    words = [str(step.words) for step in answer(**inputs, bonded="yes").trace.steps]
    assert any("not the bond to a separately derived system" in each for each in words)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", ["structural-metal", "water-pipe"])
def test_what_grounds_the_source_spares_its_bond_and_the_conductor_to_it_from_2023_on(edition, metal):
    inputs = dict(edition=edition, supply=DERIVED)
    assert not require(**inputs, electrode=metal)
    result = answer(**inputs, electrode=f"{metal}-as-conductor")
    early = edition in ("2017", "2020")
    assert result.answer.values["needed"] == early
    assert any("Ask the authority" in str(words) for words in result.trace.warnings) == early


def test_what_grounds_another_source_spares_no_building():
    assert require(electrode="structural-metal") and require(electrode="water-pipe")


def test_every_reason_is_given():
    reasons = answer(frame="not-interconnected", energized="no").answer.values["reasons"]
    assert len(reasons) == 2 and all("(250.104(C))" in reason for reason in reasons)


def test_the_common_conductor_of_several_sources_is_not_guessed_at():
    result = answer(supply="common-electrode-conductor")
    assert result.outcome == "not_covered" and "(250.104(D)(3))" in str(result.not_covered.why)
    assert not require(supply="common-electrode-conductor", exposed="no")


@pytest.mark.parametrize("supply", SIZED)
def test_the_conductor_is_asked_for_only_where_a_bond_is_needed(supply):
    for pairs in ([], [("conductor", " ")]):
        result = structural_metal_bonding.run([("edition", "2023"), ("supply", supply), *pairs])
        assert result.outcome == "fix" and [each.field for each in result.fix] == ["conductor"]
    assert structural_metal_bonding(edition="2023", supply=supply, exposed="no").outcome == "answer"


@pytest.mark.parametrize(
    "inputs",
    [
        {"conductor": "5/0"},
        {"sets": "31"},
        {"supply": "meter"},
        {"frame": "wood"},
        {"exposed": "maybe"},
        {"bonded": "1"},
        {"energized": "true"},
        {"electrode": "rod"},
        {"metal": "steel"},
    ],
)
def test_bad_input_is_sent_back_for_its_field(inputs):
    result = answer(**inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == list(inputs)


@pytest.mark.parametrize(
    ("supply", "says"),
    [
        ("service", "service equipment enclosure or to the grounded conductor at the service (250.104(C))"),
        ("feeder-or-branch", "the building's own disconnect (250.104(C))"),
        (DERIVED, "where the grounding electrode conductor connects, to the frame in the area served (250.104(D)(2))"),
    ],
)
def test_each_bond_says_where_it_lands(supply, says):
    assert says in str(answer(supply=supply).trace.notes[0])


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_building_fed_by_a_feeder_is_warned_off_the_neutral(edition):
    def warned(supply):
        warnings = answer(edition=edition, supply=supply).trace.warnings
        return any("Do not connect it to the neutral" in str(words) for words in warnings)

    assert warned("feeder-or-branch") and not warned("service") and not warned(DERIVED)


@pytest.mark.parametrize(
    ("edition", "says"), [("2017", "large enough"), ("2020", "large enough"), ("2023", "no smaller")]
)
def test_an_electrode_conductor_to_land_on_is_measured_as_the_edition_says(edition, says):
    notes = [str(words) for words in answer(edition=edition).trace.notes]
    assert says in next(words for words in notes if "(250.104(C)(4))" in words)


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_only_aluminum_is_warned_of_near_earth_and_masonry(edition):
    def warned(metal):
        return ["250.64(A)" in str(words) for words in answer(edition=edition, metal=metal).trace.warnings]

    assert warned("copper") == [] and warned("aluminum") == [True] and warned("copper-clad-aluminum") == [True]


def test_a_link_gives_the_same_answer_and_leaves_out_what_was_left_out():
    bonded, spared = answer(), structural_metal_bonding(edition="2023", exposed="no")
    assert bonded.answer_code == "4-copper" and spared.answer_code == "no-bond"
    for result in (bonded, spared):
        assert structural_metal_bonding.run(read(write(result).partition("?")[2])).answer_code == result.answer_code
    assert "conductor=" not in write(spared).replace("conductor_metal=", "")


def test_a_bond_of_the_frame_smaller_than_6_says_that_it_runs_in_a_raceway_or_armor():
    """250.104(C) sends to 250.64(B): smaller than 6 AWG it is protected. Table 250.102(C)(1): 2 AWG, 8; 1 AWG, 6."""
    for conductor, says in (("2", "8 AWG copper wire or larger, in a raceway or cable armor"),
                            ("1", "6 AWG copper wire or larger")):  # fmt: skip
        answer = structural_metal_bonding(edition="2023", conductor=conductor).answer
        assert str(answer.in_one_line) == says
