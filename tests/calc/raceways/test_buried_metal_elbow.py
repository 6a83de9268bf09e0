"""The buried metal elbow: worked cases with their sources, every boundary, the exceptions, and what it must say."""

import itertools

import pytest

from calc import EDITIONS, buried_metal_elbow
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.equipment_grounding_size import ROWS, by_device
from tests.independent.jumper_size import AREAS, THROUGH, jumper_size

CASES = "raceways/buried_metal_elbow"
METALS = ("copper", "aluminum")
CIRCUITS = ("service", "derived-system", "feeder-or-branch")
OTHERS = CIRCUITS[1:]


def elbow(edition="2023", **inputs):
    return buried_metal_elbow(edition=edition, **inputs)


def notes(**inputs):
    return " ".join(str(words) for words in elbow(**inputs).trace.notes)


def warnings(**inputs):
    return " ".join(str(words) for words in elbow(**inputs).trace.warnings)


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    assert elbow(edition, **case["inputs"]).answer_code == case["said"], case["reason"]


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("circuit", CIRCUITS)
@pytest.mark.parametrize(
    ("cover", "said"),
    [
        ("0", "bond"),
        ("17", "bond"),
        ("17.9", "bond"),
        ("17.999in", "bond"),
        ("449mm", "bond"),
        ("450mm", "bond"),
        ("457mm", "bond"),
        ("1.49ft", "bond"),
        ("18", "no-bond"),
        ('18"', "no-bond"),
        ("1.5ft", "no-bond"),
        ("457.2mm", "no-bond"),
        ("45.72cm", "no-bond"),
        ("18.1", "no-bond"),
        ("460mm", "no-bond"),
        ("0.5m", "no-bond"),
    ],
)
def test_the_cover_just_below_at_and_just_above_18_inches_in_any_unit(edition, circuit, cover, said):
    result = elbow(edition, circuit=circuit, cover=cover)
    assert result.answer_code == said and result.answer.values["bond"] == (said == "bond")
    assert str(result.answer.headline) == ("Bond it" if said == "bond" else "No bond required")


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(
    ("concrete", "said"),
    [("0", "bond"), ("1.9", "bond"), ("50mm", "bond"), ("2", "no-bond"), ("50.8mm", "no-bond"), ("2.1in", "no-bond")],
)
def test_concrete_just_below_at_and_just_above_2_inches_counts_for_others_but_never_for_services(
    edition, concrete, said
):
    for circuit in OTHERS:
        assert elbow(edition, circuit=circuit, cover="6in", concrete=concrete).answer_code == said
    service = elbow(edition, circuit="service", cover="6in", concrete=concrete)
    assert service.answer_code == "bond"
    assert any("is not an exception" in str(step.words) for step in service.trace.steps)


@pytest.mark.parametrize("edition", EDITIONS)
def test_each_exception_is_cited_for_its_own_conductors(edition):
    def sections(**inputs):
        return {cited.section for cited in elbow(edition, **inputs).trace.citations}

    assert "250.80 Exception" in sections(circuit="service", cover="20in")
    assert "250.86 Exception No. 3(1)" not in sections(circuit="service", cover="20in")
    for circuit in OTHERS:
        assert "250.86 Exception No. 3(1)" in sections(circuit=circuit, cover="20in")
        assert "250.86 Exception No. 3(2)" in sections(circuit=circuit, concrete="3in")
        assert "250.80 Exception" not in sections(circuit=circuit, cover="20in")


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("circuit", CIRCUITS)
def test_an_elbow_joined_to_metal_is_bonded_however_deep(edition, circuit):
    result = elbow(edition, circuit=circuit, cover="48in", concrete="6in", joined="metal")
    assert result.answer_code == "bond" and "comes above grade" in str(result.answer.detail)
    assert elbow(edition, circuit=circuit, joined="metal").answer_code == "bond"


@pytest.mark.parametrize("circuit", CIRCUITS)
def test_more_cover_or_more_concrete_never_makes_a_bond_needed(circuit):
    depths = [0, 1, 1.99, 2, 5, 17.9, 18, 18.1, 40]
    for (cover, deeper), (concrete, thicker) in itertools.product(itertools.pairwise(depths), repeat=2):
        if elbow(circuit=circuit, cover=cover, concrete=concrete).answer_code == "no-bond":
            assert elbow(circuit=circuit, cover=deeper, concrete=concrete).answer_code == "no-bond"
            assert elbow(circuit=circuit, cover=cover, concrete=thicker).answer_code == "no-bond"


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("conductor_metal", "metal"), list(itertools.product(METALS, METALS)))
@pytest.mark.parametrize("circuit", ["service", "derived-system"])
def test_ahead_of_a_device_the_conductors_size_the_bond_as_the_second_route(edition, circuit, conductor_metal, metal):
    limits = [limit for limit in THROUGH[conductor_metal] if limit in AREAS]
    order = list(AREAS)
    for limit in limits:
        for conductor in order[order.index(limit) - 1 : order.index(limit) + 2]:
            result = elbow(
                edition,
                circuit=circuit,
                cover=12,
                conductor=conductor,
                conductor_metal=conductor_metal,
                metal=metal,
                device=15,
            )
            expected = jumper_size(conductor, 1, conductor_metal, metal)
            assert result.answer.values["size"] == expected
            assert result.answer.values["jumper"] == "supply-side bonding jumper"
            assert "Bond it: " in str(result.answer.headline)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", METALS)
def test_past_a_device_the_device_sizes_the_bond_just_below_at_and_just_above_each_row(edition, metal):
    for row in ROWS:
        for device in (int(row[0]) - 0.1, int(row[0]), int(row[0]) + 0.1):
            result = elbow(edition, circuit="feeder-or-branch", cover=12, device=device, metal=metal)
            expected = by_device(device, metal)
            if expected is None:
                assert result.outcome == "not_covered"
            else:
                assert result.answer.values["size"] == expected
                assert result.answer.values["jumper"] == "equipment bonding jumper"


@pytest.mark.parametrize("circuit", CIRCUITS)
def test_without_the_field_that_sizes_it_the_bond_is_told_with_what_sizes_it(circuit):
    result = elbow(circuit=circuit, cover=12)
    named, sizes = ("equipment", "device") if circuit == "feeder-or-branch" else ("supply-side", "hot conductors")
    detail = str(result.answer.detail)
    assert f"Bond it with the {named} bonding jumper." in detail and sizes in detail
    assert result.answer.values["size"] is None and result.answer.values["area_cmil"] is None


@pytest.mark.parametrize(
    ("inputs", "reached"),
    [
        (dict(cover="449.9mm"), False),
        (dict(cover="450mm"), True),
        (dict(cover="17.9in"), True),
        (dict(cover="18in"), False),
        (dict(cover="6in", concrete="50mm"), True),
        (dict(cover="6in", concrete="49.9mm"), False),
        (dict(cover="450mm", concrete="2in"), False),
        (dict(cover="18in", concrete="50mm"), False),
    ],
)
def test_where_only_the_metric_number_is_reached_the_answer_says_so(inputs, reached):
    assert ("either unit may be used (90.9(D))" in warnings(circuit="feeder-or-branch", **inputs)) == reached


def test_a_cover_that_misses_is_never_shown_as_the_cover_it_misses():
    assert "It has 17.99 in. of cover; the minimum is 18 in." in str(elbow(cover="17.9999in").answer.detail)


@pytest.mark.parametrize("circuit", CIRCUITS)
def test_the_cover_is_asked_for_only_where_it_decides(circuit):
    for pairs in ([], [("cover", ""), ("concrete", " ")]):
        result = buried_metal_elbow.run([("edition", "2023"), ("circuit", circuit), *pairs])
        assert result.outcome == "fix" and [each.field for each in result.fix] == ["cover"]
    thin = elbow(circuit=circuit, concrete="1in")
    assert [each.field for each in thin.fix] == ["cover"]


@pytest.mark.parametrize(
    "inputs",
    [
        {"cover": "deep"},
        {"cover": "-1"},
        {"cover": "1001"},
        {"cover": "18V"},
        {"concrete": "thick"},
        {"circuit": "lighting"},
        {"joined": "plastic"},
        {"conductor": "5/0"},
        {"sets": "0"},
        {"device": "10001"},
        {"metal": "steel"},
    ],
)
def test_bad_input_names_the_field_to_mend(inputs):
    result = elbow(**({"cover": "12"} | inputs))
    assert result.outcome == "fix" and [each.field for each in result.fix] == list(inputs)


@pytest.mark.parametrize("cover", ["450mm", "17.9", "18in", "1.5 ft", "12"])
def test_a_link_gives_the_same_answer_again(cover):
    result = elbow(cover=cover, conductor="3/0")
    again = buried_metal_elbow.run(read(write(result).partition("?")[2]))
    assert again.answer_code == result.answer_code and again.inputs == result.inputs


def test_where_the_bond_lands_is_told_for_each_kind_of_conductors():
    assert "Connect it to the grounded conductor" in notes(circuit="service", cover=12)
    assert "supply side of the separately derived system" in notes(circuit="derived-system", cover=12)
    said = notes(circuit="feeder-or-branch", cover=12, device=20)
    assert "equipment grounding conductor of the circuit (250.86)" in said and "250.122(A)" in said
    assert "Connect it" not in notes(circuit="service", cover=18)


@pytest.mark.parametrize(("edition", "table"), [("2017", "300.5"), ("2020", "300.5"), ("2023", "300.5(A)")])
def test_where_cover_is_measured_is_told_with_the_table_of_the_edition(edition, table):
    assert f"(Table {table} note 1)" in notes(edition=edition, cover=18)
    assert "note 1" not in notes(edition=edition, circuit="feeder-or-branch", concrete=2)


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_an_ordinary_answer_warns_of_nothing_and_an_aluminum_bond_of_earth(edition):
    assert warnings(edition=edition, cover=18) == "" and warnings(edition=edition, cover=12, conductor="3/0") == ""
    assert "250.64(A)" in warnings(edition=edition, cover=12, metal="aluminum")
    assert warnings(edition=edition, cover=18, metal="aluminum") == ""


SHALLOW = "It has 12 in. of cover; the minimum is 18 in."


@pytest.mark.parametrize(
    ("device", "conductor", "size", "other"),
    [
        # 250.122(B): 26,240 x 500 / 167.8 = 78,188, which is over 2 AWG (66,360): 1 AWG. Table 250.122: 20 A, 12 AWG.
        ("200", "500kcmil", "1", " 6 AWG copper where 500 kcmil is the minimum size."),
        (
            "20",
            "14",
            "12",
            " 14 AWG copper only where a rule, such as the one for motors, permits 14 AWG on this breaker or fuse.",
        ),
        ("20", "12", "12", ""),
    ],
)
def test_hot_conductors_too_large_or_too_small_for_the_device_give_both_sizes(device, conductor, size, other):
    inputs = dict(circuit="feeder-or-branch", cover="12", device=device, conductor=conductor)
    shown = str(buried_metal_elbow(edition="2023", **inputs).answer.in_one_line)
    assert shown == f"Bond it: {size} AWG copper: {SHALLOW}{other}"
