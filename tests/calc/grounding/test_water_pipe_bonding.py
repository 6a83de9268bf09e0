"""The bonds of piping: worked cases with their sources, every boundary, the caps of each edition, what it must say."""

import itertools

import pytest

from calc import EDITIONS, water_pipe_bonding
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.jumper_size import AREAS, THROUGH, hot_sizes, jumper_size
from tests.rules.test_figures_by_device import ALUMINUM, COPPER, DEVICE

METALS = ("copper", "aluminum")
CAP = {"copper": "3/0", "aluminum": "250kcmil"}
BY_TABLE = ("water", "water-derived-system")
BY_DEVICE = {"copper": COPPER.split(), "aluminum": ALUMINUM.split()}


def bond_size(edition, conductor, sets, conductor_metal, metal):
    """Return the size by the second route: the table, and from 2020 no larger than the cap."""
    size = jumper_size(conductor, sets, conductor_metal, metal)
    if edition == "2017" or (size and AREAS[size] <= AREAS[CAP[metal]]):
        return size
    return CAP[metal]


def size_of(**inputs):
    result = water_pipe_bonding(**inputs)
    return result.answer.values["size"] if result.answer else None


@pytest.mark.parametrize("pair", cases("grounding/water_pipe_bonding"), ids=named)
def test_worked_cases_give_the_size_of_their_source(pair):
    edition, case = pair
    result = water_pipe_bonding(edition=edition, **case["inputs"])
    if "size" in case:
        assert result.answer.values["size"] == case["size"], case["reason"]
    else:
        assert case["not_covered"] in f"{result.not_covered.why} {result.not_covered.look_in}"


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases("grounding/water_pipe_bonding"):
        assert case["source"] and case["mark"] in ("published", "memory")


def around(limit):
    """Return conductors and sets just below, at (where there are such) and just above a limit of the table."""
    area = AREAS.get(limit) or int(limit.removesuffix("kcmil")) * 1000
    totals = {AREAS[size] * sets: (size, sets) for size, sets in itertools.product(AREAS, range(1, 13))}
    below = max(total for total in totals if total < area)
    above = min(total for total in totals if total > area)
    return [totals[total] for total in (below, area, above) if total in totals]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("piping", BY_TABLE)
@pytest.mark.parametrize(("conductor_metal", "metal"), list(itertools.product(METALS, METALS)))
def test_just_below_at_and_just_above_each_limit_equals_the_second_route(edition, piping, conductor_metal, metal):
    for limit in THROUGH[conductor_metal]:
        for conductor, sets in around(limit):
            given = size_of(
                edition=edition,
                piping=piping,
                conductor=conductor,
                sets=sets,
                conductor_metal=conductor_metal,
                metal=metal,
            )
            assert given == bond_size(edition, conductor, sets, conductor_metal, metal), (conductor, sets)


@pytest.mark.parametrize("edition", EDITIONS)
def test_every_listed_conductor_equals_the_second_route_and_a_larger_one_never_gives_less(edition):
    for sets, conductor_metal, metal in itertools.product((1, 2, 5, 12, 30), METALS, METALS):
        areas = []
        for conductor in hot_sizes(conductor_metal):
            given = size_of(
                edition=edition, conductor=conductor, sets=sets, conductor_metal=conductor_metal, metal=metal
            )
            assert given == bond_size(edition, conductor, sets, conductor_metal, metal), (conductor, sets)
            areas += [AREAS[given]] if given else []
        assert areas == sorted(areas)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", METALS)
@pytest.mark.parametrize("piping", ["water-isolated-unit", "other-metal"])
def test_each_row_by_device_holds_just_below_at_and_changes_just_above(edition, metal, piping):
    for row, through in enumerate(DEVICE):
        for device, place in ((through - 0.5, row), (through, row), (through + 0.5, row + 1)):
            expected = BY_DEVICE[metal][place] if place < len(DEVICE) else None
            assert size_of(edition=edition, piping=piping, metal=metal, device=device) == expected


@pytest.mark.parametrize(("edition", "size"), [("2017", "3/0"), ("2020", "2/0"), ("2023", "2/0")])
def test_a_separate_building_goes_by_conductors_in_2017_and_by_the_device_later(edition, size):
    """2 x 600 kcmil copper, 1000 A: an eighth of 1200 kcmil is 150, so 3/0; Table 250.122 gives 2/0."""
    given = size_of(edition=edition, piping="water-separate-building", conductor="600kcmil", sets=2, device=1000)
    assert given == size


@pytest.mark.parametrize(
    ("inputs", "says"),
    [
        (dict(conductor="2"), "8 AWG copper wire or larger, in a raceway or cable armor"),
        (dict(conductor="1"), "6 AWG copper wire or larger"),
        (
            dict(piping="water-derived-system", conductor="2"),
            "8 AWG copper wire or larger, in a raceway or cable armor",
        ),
        (dict(piping="other-metal", device=20), "12 AWG copper wire or larger"),
    ],
)
def test_a_bond_smaller_than_6_says_that_it_runs_in_a_raceway_or_armor(inputs, says):
    """250.102(E)(3) sends to 250.64(B). Other piping may be bonded by the circuit's own equipment conductor."""
    result = water_pipe_bonding(edition="2023", **inputs)
    assert str(result.answer.in_one_line) == says
    noted = any("in a raceway or cable armor (250.102(E)(3)" in str(words) for words in result.trace.notes)
    assert noted is ("armor" in says)


@pytest.mark.parametrize("edition", ["2020", "2023", "2026"])
def test_a_feeder_conductor_too_small_for_its_device_is_no_plain_reason_for_a_thin_bond(edition):
    """10 AWG carries 35 A; Table 250.122 gives 8 AWG for 100 A. 3 AWG, which carries 100 A, is told nothing."""
    small, ordinary = (
        water_pipe_bonding(edition=edition, piping="water-separate-building", device=100, conductor=conductor)
        for conductor in ("10", "3")
    )
    assert small.answer.values["size"] == ordinary.answer.values["size"] == "8"
    assert any("10 AWG is small for this overcurrent device: check both" in str(words) for words in small.trace.notes)
    assert not any("small for this overcurrent device" in str(words) for words in ordinary.trace.notes)


def test_the_bond_of_a_separate_building_in_aluminum_says_why_it_keeps_its_size():
    inputs = dict(edition="2023", piping="water-separate-building", device=100)
    kept = water_pipe_bonding(**inputs, conductor="10", metal="aluminum")
    assert kept.answer.values["size"] == "6"
    assert any("do not have the same conductance" in str(words) for words in kept.trace.warnings)
    assert size_of(**inputs) == "8"


@pytest.mark.parametrize(
    ("edition", "piping", "field"),
    [
        ("2023", "water", "conductor"),
        ("2023", "water-derived-system", "conductor"),
        ("2017", "water-separate-building", "conductor"),
        ("2020", "water-separate-building", "device"),
        ("2023", "water-isolated-unit", "device"),
        ("2023", "other-metal", "device"),
    ],
)
def test_a_field_that_this_case_needs_is_asked_for_and_an_empty_one_counts_as_left_out(edition, piping, field):
    for pairs in ([], [("conductor", ""), ("device", " ")]):
        result = water_pipe_bonding.run([("edition", edition), ("piping", piping), *pairs])
        assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize("inputs", [{"conductor": "5/0"}, {"device": "0"}, {"sets": "31"}, {"piping": "steel"}])
def test_bad_input_is_sent_back_for_its_field(inputs):
    result = water_pipe_bonding(edition="2023", **({"conductor": "3/0"} | inputs))
    assert [each.field for each in result.fix] == list(inputs)


def test_a_link_leaves_out_what_was_left_out_and_gives_the_same_answer():
    result = water_pipe_bonding(edition="2023", piping="other-metal", device=15)
    link = write(result)
    assert "conductor=" not in link.replace("conductor_metal=", "") and "None" not in link
    assert water_pipe_bonding.run(read(link.partition("?")[2])).answer_code == "14-copper"


@pytest.mark.parametrize(
    ("piping", "inputs", "says"),
    [
        ("water", {"conductor": "3/0"}, "grounded conductor at the service"),
        ("water-isolated-unit", {"device": 100}, "not of service equipment (250.104(A)(2) and 250.102(D))"),
        ("water-separate-building", {"device": 100}, "the building's own disconnect enclosure"),
        ("water-derived-system", {"conductor": "3/0"}, "where the grounding electrode conductor connects"),
        ("other-metal", {"device": 20}, "equipment grounding conductor of that circuit may serve as the bond"),
    ],
)
def test_each_piping_says_where_its_bond_lands(piping, inputs, says):
    notes = [str(words) for words in water_pipe_bonding(edition="2023", piping=piping, **inputs).trace.notes]
    assert says in notes[0]


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_only_aluminum_is_warned_of_near_earth_and_masonry(edition):
    def warned(metal):
        warnings = water_pipe_bonding(edition=edition, conductor="3/0", metal=metal).trace.warnings
        return ["250.64(A)" in str(words) for words in warnings]

    assert warned("copper") == [] and warned("aluminum") == [True] and warned("copper-clad-aluminum") == [True]
