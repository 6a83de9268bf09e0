"""The equipment bonding jumper: worked cases with their sources, every boundary, and what it must say."""

import itertools

import pytest

from calc import EDITIONS, equipment_bonding_jumper
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.equipment_grounding_size import AREAS, ROWS, by_device, increased, on_a_feeder

CASES = "jumpers/equipment_bonding_jumper"
METALS = ("copper", "aluminum")
LIMITS = [int(row[0]) for row in ROWS]
LEAST = {"copper": "14", "aluminum": "12"}  # 310.3(A) of 2020 and 2023


def jumper(edition="2023", **inputs):
    return equipment_bonding_jumper(edition=edition, **inputs)


def wires(metal):
    return [size for size, cmil in AREAS.items() if cmil >= AREAS[LEAST[metal]]]


def size(**inputs):
    result = jumper(**inputs)
    return result.answer.values["size"] if result.answer else None


def notes(**inputs):
    return " ".join(str(words) for words in jumper(**inputs).trace.notes)


def warnings(**inputs):
    return " ".join(str(words) for words in jumper(**inputs).trace.warnings)


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    result = jumper(edition, **case["inputs"])
    if "said" in case:
        assert result.answer_code == case["said"], case["reason"]
    else:
        assert case["not_covered"] in f"{result.not_covered.why} {result.not_covered.look_in}"


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", METALS)
@pytest.mark.parametrize("limit", LIMITS)
def test_just_below_at_and_just_above_each_row_equals_the_second_route(limit, metal, edition):
    for ampere in (limit - 0.1, limit, limit + 0.1):
        assert size(edition=edition, device=ampere, metal=metal) == by_device(ampere, metal)


@pytest.mark.parametrize("edition", EDITIONS)
def test_copper_clad_aluminum_is_read_in_the_aluminum_column(edition):
    for limit in LIMITS:
        assert size(edition=edition, device=limit, metal="copper-clad-aluminum") == by_device(limit, "aluminum")


@pytest.mark.parametrize("metal", METALS)
def test_a_common_jumper_goes_by_the_largest_device_wherever_it_stands_in_the_list(metal):
    for three in itertools.combinations([15, 20.5, 60, 100, 225, 400, 1200, 6000], 3):
        for device, *others in itertools.permutations(three):
            result = jumper(device=device, other_devices=",".join(map(str, others)), metal=metal)
            assert result.answer.values["size"] == by_device(max(three), metal)
            assert result.answer.values["device"] == max(three)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(
    ("length", "fits"),
    [
        ("5.99ft", True),
        ("6ft", True),
        ("6'", True),
        ("72in", True),
        ('72"', True),
        ("1.8m", True),
        ("1828.8mm", True),
        ("6.01ft", False),
        ("72.1in", False),
        ("1.83m", False),
        ("7", False),
    ],
)
def test_the_length_outside_just_below_at_and_just_above_six_feet(edition, length, fits):
    result = jumper(edition, device=200, routing="outside", length=length)
    assert result.answer.values["fits"] == fits
    assert result.answer_code == ("6-copper" if fits else "not-outside-6-copper")
    assert ("Not permitted outside" in str(result.answer.headline)) != fits


@pytest.mark.parametrize("edition", EDITIONS)
def test_inside_and_at_a_pole_neither_length_nor_path_counts(edition):
    for routing in ("inside", "outside-at-pole"):
        assert jumper(edition, device=200, routing=routing, length="50ft", along="no").answer_code == "6-copper"
        assert jumper(edition, device=200, routing=routing).answer_code == "6-copper"


def test_every_reason_against_a_route_is_told_with_the_size_that_would_do():
    result = jumper(device=200, routing="outside", length="7ft", along="no")
    assert len(result.answer.values["reasons"]) == 2
    detail = str(result.answer.detail)
    assert "7 ft" in detail and "follow the raceway" in detail and "run 6 AWG copper inside" in detail


def test_the_length_is_asked_for_outside_only():
    for pairs in ([], [("length", "")]):
        result = equipment_bonding_jumper.run([("edition", "2023"), ("device", "20"), ("routing", "outside"), *pairs])
        assert [each.field for each in result.fix] == ["length"]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", METALS)
def test_every_circuit_conductor_of_the_same_metal_is_the_limit(edition, metal):
    for limit, sets, installed in itertools.product(LIMITS, (1, 2, 5), wires(metal)):
        given = jumper(
            edition=edition,
            device=limit,
            metal=metal,
            conductor_metal=metal,
            sets=sets,
            installed_conductor=installed,
        )
        if given.answer is None:  # no single listed conductor is as large as an increase would ask for
            assert AREAS[installed] * sets >= 1_000_000 and "single listed conductor" in str(given.not_covered.why)
            continue
        base = by_device(limit, metal)
        expected = on_a_feeder(base, base, installed, sets)
        assert given.answer.values["size_unless_increased"] == expected, (limit, sets, installed)


def test_hot_conductors_too_small_for_the_device_leave_the_jumper_as_the_table_says_and_name_the_other_size():
    """Table 250.122: 10 AWG behind 40 A. A motor may have 12 AWG there, and then 12 AWG will do (250.122(A))."""
    answer = jumper(device=40, installed_conductor="12").answer
    assert answer.values["size"] == "10"
    assert "12 AWG copper only where a rule, such as the one for motors, permits 12 AWG" in str(answer.in_one_line)


def test_a_larger_hot_conductor_than_the_device_asks_for_gives_both_answers_and_an_ordinary_one_stays_plain():
    """250.102(D) through 250.122(B): 6,530 x 26,240 / 6,530 = 26,240, which is 6 AWG."""
    for edition in EDITIONS:
        larger = jumper(edition, device=20, installed_conductor="6").answer
        assert (larger.values["size"], larger.values["size_unless_increased"]) == ("6", "12")
        assert "12 AWG copper where 6 AWG is the minimum size" in str(larger.in_one_line)
        plain = jumper(edition, device=20, installed_conductor="12").answer
        assert str(plain.in_one_line) == "12 AWG copper wire or larger"


@pytest.mark.parametrize("metal", METALS)
def test_larger_hot_conductors_make_it_larger_as_the_second_route_in_fractions(metal):
    for limit, (minimum, installed) in itertools.product((20, 40, 200, 1600), itertools.combinations(wires(metal), 2)):
        base = by_device(limit, metal)
        grown = increased(base, minimum, installed)
        given = size(
            device=limit, metal=metal, conductor_metal=metal, minimum_conductor=minimum, installed_conductor=installed
        )
        assert given == (on_a_feeder(grown, base, installed, 1) if grown else None), (limit, minimum, installed)


def test_ambient_temperature_does_not_count_and_several_circuits_are_warned_of():
    wires = dict(minimum_conductor="8", installed_conductor="6")
    assert size(device=40, increase_reason="ambient-or-bundling", **wires) == "10"
    assert "each circuit separately" in warnings(device=40, other_devices="20", **wires)
    assert "not applied here" in notes(device=40, other_devices="20", installed_conductor="12")


def test_an_aluminum_jumper_beside_copper_circuit_conductors_keeps_the_table():
    inputs = dict(device=100, metal="aluminum", installed_conductor="12")
    assert size(**inputs) == "6" and "do not have the same conductance" in warnings(**inputs)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", METALS)
def test_a_larger_device_never_gives_a_smaller_jumper(edition, metal):
    sizes = [size(edition=edition, device=ampere, metal=metal) for ampere in range(10, 6001, 30)]
    areas = [AREAS[each] for each in sizes]
    assert areas == sorted(areas)


@pytest.mark.parametrize(("device", "protected"), [(100, True), (100.1, False), (200, False)])
def test_outside_a_jumper_smaller_than_6_awg_is_protected(device, protected):
    for routing in ("outside", "outside-at-pole"):
        said = notes(device=device, routing=routing, length="3ft")
        assert ("smaller than 6 AWG" in said and "250.64(B)(3)" in said) == protected
        assert "250.102(E)(3)" in said
    assert "250.102(E)(3)" not in notes(device=device)
    assert "250.102(E)(1)" in notes(device=device)


@pytest.mark.parametrize("edition", EDITIONS)
def test_around_a_flexible_raceway_that_moves_early_editions_warn_of_a_jumper_outside(edition):
    inputs = dict(edition=edition, device=20, joins="flexible-raceway", length="3ft")
    early = edition in ("2017", "2020")
    assert ("not a jumper outside" in warnings(routing="outside", **inputs)) == early
    assert "not a jumper outside" not in warnings(routing="inside", **inputs)
    assert "raceway as grounding path" in notes(**inputs)


def test_receptacles_and_expansion_fittings_name_their_own_sections():
    said = notes(device=20, joins="receptacle", routing="outside")
    assert "250.146(A) to (D)" in said and "250.102(E)" not in said
    assert "250.98" in notes(device=100, joins="expansion-fitting")
    assert "250.98" not in notes(device=100) and "250.146" not in notes(device=100)


@pytest.mark.parametrize("edition", EDITIONS)
def test_ahead_of_the_first_device_the_name_to_look_under_is_given(edition):
    result = jumper(edition, device=200, side="supply-side")
    assert result.outcome == "not_covered"
    assert "supply-side bonding jumper (250.102(C))" in str(result.not_covered.look_in)


@pytest.mark.parametrize(
    "inputs",
    [
        {"device": "0"},
        {"device": "10001"},
        {"other_devices": "100/200"},
        {"other_devices": "1,200"},
        {"other_devices": "100,0"},
        {"other_devices": "100,"},
        {"other_devices": ",".join(["100"] * 21)},
        {"length": "long"},
        {"length": "1001"},
        {"length": "-1"},
        {"sets": "31"},
        {"installed_conductor": "5/0"},
        {"routing": "over"},
        {"joins": "pipe"},
        {"along": "maybe"},
        {"metal": "steel"},
    ],
)
def test_bad_input_names_the_field_to_mend(inputs):
    result = jumper(**({"device": "200"} | inputs))
    assert result.outcome == "fix" and [each.field for each in result.fix] == list(inputs)


def test_a_smallest_conductor_alone_asks_for_the_installed_one():
    assert [each.field for each in jumper(device=40, minimum_conductor="8").fix] == ["installed_conductor"]


@pytest.mark.parametrize("others", ["225,400", "225A, 400A", " 225 , 400 ", "1200"])
def test_a_link_gives_the_same_answer_again(others):
    result = jumper(device="100A", other_devices=others, routing="outside", length="4'")
    again = equipment_bonding_jumper.run(read(write(result).partition("?")[2]))
    assert again.answer_code == result.answer_code and again.inputs == result.inputs


def test_a_thousand_in_a_list_is_never_read_as_two_devices():
    assert size(device=15, other_devices="1200") == by_device(1200, "copper")
    assert jumper(device=15, other_devices="1,200").outcome == "fix"


@pytest.mark.parametrize("edition", ["2017", "2023"])
def test_copper_of_an_edition_whose_table_was_read_warns_of_nothing_and_aluminum_of_earth(edition):
    assert warnings(edition=edition, device=100, routing="outside", length="4ft") == ""
    assert "250.64(A)" in warnings(edition=edition, device=100, metal="aluminum")
