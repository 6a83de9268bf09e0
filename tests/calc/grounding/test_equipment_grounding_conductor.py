"""The equipment grounding conductor: worked cases with their sources, every boundary, and what it must say."""

import itertools

import pytest

from calc import EDITIONS, equipment_grounding_conductor
from calc.rulebook import rule
from tests.cases.read import cases, named
from tests.independent.equipment_grounding_size import AREAS, ROWS, by_device, increased, limited, on_a_feeder
from tests.rules.by_edition import since

METALS = ("copper", "aluminum")
LIMITS = [int(row[0]) for row in ROWS]
LEAST = {"copper": "14", "aluminum": "12"}  # 310.3(A) of 2020 and 2023


def size(**inputs):
    result = equipment_grounding_conductor(**inputs)
    return result.answer.values["size"] if result.answer else None


def unless_increased(**inputs):
    return equipment_grounding_conductor(**inputs).answer.values["size_unless_increased"]


def own_warnings(result):
    return [str(words) for words in result.trace.warnings if not str(words).startswith("Not verified for")]


def wires(metal):
    return [size for size, cmil in AREAS.items() if cmil >= AREAS[LEAST[metal]]]


def warnings(**inputs):
    return [str(words) for words in equipment_grounding_conductor(**inputs).trace.warnings]


def notes(**inputs):
    return [str(words) for words in equipment_grounding_conductor(**inputs).trace.notes]


@pytest.mark.parametrize("pair", cases("grounding/equipment_grounding_conductor"), ids=named)
def test_worked_cases_give_the_size_of_their_source(pair):
    edition, case = pair
    result = equipment_grounding_conductor(edition=edition, **case["inputs"])
    if "size" in case:
        assert result.answer.values["size"] == case["size"], case["reason"]
    else:
        assert result.outcome == "not_covered"
        assert case["not_covered"] in f"{result.not_covered.why} {result.not_covered.look_in}"


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases("grounding/equipment_grounding_conductor"):
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


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", METALS)
def test_every_pair_of_hot_conductors_equals_the_second_route_in_fractions(metal, edition):
    """Both metals alike, so that the limit by the circuit conductors holds without a question."""
    for limit in (15, 20, 40, 60, 100, 200, 400, 800, 1600):
        for minimum, installed in itertools.combinations(wires(metal), 2):
            base = by_device(limit, metal)
            grown = increased(base, minimum, installed)
            given = size(
                edition=edition,
                device=limit,
                metal=metal,
                conductor_metal=metal,
                minimum_conductor=minimum,
                installed_conductor=installed,
            )
            assert given == (on_a_feeder(grown, base, installed, 1) if grown else None), (limit, minimum, installed)


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_before_2026_parallel_conductors_count_together_as_the_limit(edition):
    for limit, sets, installed in itertools.product(LIMITS, (2, 3, 5), ("14", "6", "1/0", "4/0", "500kcmil")):
        given = unless_increased(edition=edition, device=limit, sets=sets, raceways=sets, installed_conductor=installed)
        base = by_device(limit, "copper")
        assert given == on_a_feeder(base, base, installed, sets)


def test_in_2026_one_conductor_of_the_raceway_is_the_limit_and_it_is_said_to_be_disputed():
    for limit, sets, installed in itertools.product(LIMITS, (2, 3, 5), ("14", "6", "1/0", "4/0", "500kcmil")):
        given = unless_increased(edition="2026", device=limit, sets=sets, raceways=sets, installed_conductor=installed)
        base = by_device(limit, "copper")
        assert given == (limited(base, installed, 1) if sets * AREAS[installed] >= AREAS[base] else base)
    said = warnings(edition="2026", device=2000, sets=5, raceways=5, installed_conductor="4/0")
    assert any("disputed" in words and "250 kcmil" in words for words in said)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("device", "installed", "by_table"), [(400, "14", "3"), (200, "8", "6"), (40, "12", "10")])
def test_hot_conductors_that_the_device_does_not_protect_are_no_plain_reason_for_a_thin_path(
    device, installed, by_table, edition
):
    """240.4 and Table 310.16: at 75 °C 14 AWG carries 20 A, 8 AWG 50 A, 12 AWG 25 A; Table 250.122 gives the size."""
    result = equipment_grounding_conductor(edition=edition, device=device, installed_conductor=installed)
    assert result.answer.values["size"] == result.answer.values["size_unless_increased"] == by_table
    said = (
        f"{installed} AWG copper only where a rule, such as the one for motors, "
        f"permits {installed} AWG on this breaker or fuse"
    )
    assert said in str(result.answer.in_one_line)
    steps = [str(step.words) for step in result.trace.steps]
    assert any("A device requires" in words and "Check both" in words for words in steps)


def test_where_the_circuit_is_one_that_allows_small_conductors_and_where_they_are_ordinary_the_answer_stays_plain():
    """A motor of 22 A on 12 AWG behind 40 A, and 12 AWG behind 20 A (240.4(D))."""
    for inputs in (dict(device=40, circuit="motor"), dict(device=40, circuit="feeder-tap"), dict(device=20)):
        answer = equipment_grounding_conductor(edition="2023", installed_conductor="12", **inputs).answer
        assert str(answer.in_one_line) == "12 AWG copper wire or larger"


def test_in_2026_sets_in_one_raceway_keep_the_limit_of_the_whole_set():
    assert size(edition="2026", device=2000, sets=5, raceways=1, installed_conductor="4/0") == "250kcmil"


@pytest.mark.parametrize(
    ("device", "minimum", "installed", "exact", "other"),
    [
        (40, "8", "6", "8", "gives 16,608 cmil and 6 AWG"),
        (60, "6", "4", "6", "gives 16,504.2 cmil and 8 AWG"),
        (100, "3", "1", "4", "only 18.493 cmil above"),
    ],
)
def test_a_near_miss_shows_the_other_size_or_the_few_circular_mils(device, minimum, installed, exact, other):
    """40 A: 10,380 x 26,240 / 16,510 = 16,497; 60 A: 10,380 x 41,740 / 26,240 = 16,511.5, both against 16,510.

    100 A: 16,510 x 83,690 / 52,620 = 26,258.493 against 26,240.
    """
    inputs = dict(edition="2023", device=device, minimum_conductor=minimum, installed_conductor=installed)
    assert size(**inputs) == exact
    assert any(other in words for words in warnings(**inputs))


def test_an_increase_with_no_doubt_is_no_near_miss():
    assert warnings(edition="2023", device=20, minimum_conductor="12", installed_conductor="10") == []


@pytest.mark.parametrize("edition", EDITIONS)
def test_ambient_and_bundling_do_not_count(edition):
    given = equipment_grounding_conductor(
        edition=edition,
        device=50,
        minimum_conductor="8",
        installed_conductor="6",
        increase_reason="ambient-or-bundling",
    )
    assert given.answer.values["size"] == "10"
    # From 2026 on its letter was not seen.
    part = {"2017": "250.122(B)", "2020": "250.122(B) with 310.15(B) and (C)", "2026": "250.122 with 310.15(B) and (C)"}
    section = since(part)[edition]
    assert section in [cited.section for step in given.trace.steps for cited in step.citations]


def test_the_qualified_person_came_in_2020():
    inputs = dict(device=20, minimum_conductor="12", installed_conductor="10")
    assert any("has no exception" in words for words in notes(edition="2017", **inputs))
    for edition in EDITIONS[1:]:
        assert any("A qualified person may size it another way" in words for words in notes(edition=edition, **inputs))


def test_an_aluminum_conductor_is_not_shrunk_to_a_copper_size():
    inputs = dict(edition="2023", device=20, metal="aluminum", installed_conductor="12", conductor_metal="copper")
    assert size(**inputs) == "10"
    assert any("keeps 10 AWG aluminum" in words for words in warnings(**inputs))


def test_aluminum_is_warned_of_earth_and_copper_is_not():
    assert any(
        "18 in. of the earth (250.120(B))" in words for words in warnings(edition="2023", device=200, metal="aluminum")
    )
    assert warnings(edition="2023", device=200) == []


@pytest.mark.parametrize(
    ("current", "motor", "fuse"),
    [(34, "ac", 60), (34.3, "ac", 70), (65, "ac", 125), (15, "ac", 30), (40, "wound-rotor-or-dc", 60), (0.1, "ac", 1)],
)
def test_behind_an_instantaneous_trip_breaker_the_largest_fuse_counts(current, motor, fuse):
    """175 percent, 150 for wound rotors and direct current, then the next standard rating: 59.5 to 60, 60.025 to 70."""
    for setting in (15, 6000):
        result = equipment_grounding_conductor(
            edition="2023", device=setting, circuit="motor-instantaneous-trip", motor=motor, motor_current=current
        )
        assert result.answer.values["device"] == fuse
        assert result.answer.values["size"] == by_device(fuse, "copper")


@pytest.mark.parametrize(
    ("inputs", "look_in"),
    [
        (dict(device=6001), "engineer"),
        (dict(device=100, circuit="motor-instantaneous-trip", motor_current=3500), "250.122"),
        (dict(device=100, circuit="flexible-cord"), "250.122"),
        (dict(device=100, circuit="service"), "supply-side bonding jumper"),
        (dict(device=100, minimum_conductor="3", installed_conductor="4"), "ampacity"),
        (dict(device=100, sets=3, raceways=2), "complete sets"),
        (dict(device=6000, minimum_conductor="14", installed_conductor="2000kcmil"), "engineer"),
    ],
)
def test_what_is_outside_the_rules_says_where_to_look(inputs, look_in):
    for edition in EDITIONS:
        result = equipment_grounding_conductor(edition=edition, **inputs)
        assert result.outcome == "not_covered" and look_in in str(result.not_covered.look_in)


@pytest.mark.parametrize(
    ("name", "text"),
    [("device", "0"), ("device", "200V"), ("device", ""), ("installed_conductor", "5/0"), ("minimum_conductor", "1100"),
     ("motor_current", "0"), ("motor_current", "much"), ("sets", "0"), ("raceways", "1.5"), ("circuits", "101"),
     ("metal", "steel"), ("circuit", "lamp")],
)  # fmt: skip
def test_bad_input_is_named_to_be_fixed(name, text):
    result = equipment_grounding_conductor(**{"device": "100"} | {name: text})
    assert result.outcome == "fix" and [each.field for each in result.fix] == [name]


@pytest.mark.parametrize(
    ("inputs", "name"),
    [
        (dict(circuit="motor-instantaneous-trip"), "motor_current"),
        (dict(minimum_conductor="3"), "installed_conductor"),
    ],
)
def test_a_field_that_only_this_case_needs_is_asked_for(inputs, name):
    result = equipment_grounding_conductor(device=100, **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [name]


def test_notation_never_changes_the_answer():
    for written in ("200", "200A", "200 A"):
        assert size(edition="2023", device=written) == "6"
    for written in ("3/0", "000", "3/0 AWG"):
        assert size(edition="2023", device=400, installed_conductor=written) == "3"


@pytest.mark.parametrize(
    ("inputs", "count", "section"),
    [
        (dict(sets=2, raceways=2), 2, "250.122(F)(1)(b)"),
        (dict(sets=4, raceways=2), 2, "250.122(F)(1)(b)"),
        (dict(sets=2, raceways=1), 1, "250.122(F)(1)(a)"),
        (dict(sets=2, raceways=2, raceway="cable"), 2, "250.122(F)(2)"),
    ],
)
def test_parallel_sets_say_how_many_of_full_size_and_where_it_stands(inputs, count, section):
    for edition in ("2017", "2020", "2023"):
        result = equipment_grounding_conductor(edition=edition, device=400, **inputs)
        assert (result.answer.values["size"], result.answer.values["count"]) == ("3", count)
        assert section in [cited.section for step in result.trace.steps for cited in step.citations]


def test_a_single_wire_in_a_cable_tray_is_never_smaller_than_4_awg():
    for limit in LIMITS:
        in_tray = size(edition="2023", device=limit, raceway="cable-tray")
        assert AREAS[in_tray] == max(AREAS[by_device(limit, "copper")], AREAS["4"])
    # Seen in the texts of 2017 to 2023.
    for edition in ("2017", "2020", "2023"):
        assert "392.10(B)(1)(c)" not in str(warnings(edition=edition, device=20, raceway="cable-tray"))


def test_circuits_that_share_one_conductor_are_not_limited_by_one_circuit():
    result = equipment_grounding_conductor(edition="2023", device=60, circuits=3, installed_conductor="12")
    assert result.answer.values["size"] == "10"
    assert "250.122(C)" in [cited.section for step in result.trace.steps for cited in step.citations]


def test_the_2017_row_of_1200_kcmil_gives_a_listed_size_and_shows_both():
    result = equipment_grounding_conductor(edition="2017", device=5000, metal="aluminum")
    words = [str(step.words) for step in result.trace.steps]
    assert "1200 kcmil aluminum" in words[0] and "1250 kcmil" in words[1]


@pytest.mark.parametrize("edition", ["2017", "2023"])
@pytest.mark.parametrize("inputs", [dict(device=200), dict(device=400, sets=2, raceways=2, installed_conductor="3/0")])
def test_an_ordinary_answer_of_an_edition_whose_table_was_read_warns_of_nothing(edition, inputs):
    assert warnings(edition=edition, **inputs) == []


@pytest.mark.parametrize("edition", EDITIONS)
def test_where_the_rows_were_not_read_the_answer_says_so(edition):
    not_read = rule("grounding/equipment_grounding_size", edition).mark == "memory"
    assert any("Table 250.122" in words for words in warnings(edition=edition, device=200)) == not_read


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("metal", METALS)
def test_larger_input_never_gives_a_smaller_part(edition, metal):
    """Without an increase: behind a smaller device the same hot conductors are larger than needed by more."""

    def areas(inputs):
        given = [equipment_grounding_conductor(edition=edition, metal=metal, **each) for each in inputs]
        return [AREAS[result.answer.values["size_unless_increased"]] for result in given if result.answer]

    runs = [[dict(device=limit) for limit in LIMITS]]
    for raceways in (1, 2):
        run = dict(device=1200, raceways=raceways, circuit="motor")
        runs += [
            [dict(device=limit, sets=2, raceways=raceways, installed_conductor="1/0") for limit in LIMITS],
            # Motor circuits: on a feeder sets that are too small keep the size of the row, larger ones in 2026 not.
            [run | dict(sets=2, installed_conductor=wire) for wire in AREAS],
            [run | dict(sets=sets * 2, installed_conductor="2") for sets in range(1, 11)],
        ]
    runs.append(
        [
            dict(device=100, minimum_conductor="8", installed_conductor=wire, conductor_metal=metal)
            for wire in list(AREAS)[list(AREAS).index("8") :]
        ]
    )
    for run in runs:
        found = areas(run)
        assert len(found) > 5 and found == sorted(found)


# 240.4(D) and Table 310.16 say what a device asks for; 250.122(B) by hand: 6,530 x 26,240 / 6,530 = 26,240 (6 AWG),
# 4,110 x 10,380 / 4,110 = 10,380 (10 AWG); 110 A asks for 2 AWG (115 A): 26,240 x 105,600 / 66,360 = 41,756, which is
# over 4 AWG (41,740): 3 AWG.
# 250.122(F): 800 A with 3 x 300 kcmil (855 A) asks for 3 x 300, so 3 x 500: 105,600 x 500 / 300 = 176,000: 4/0.
LARGER = [
    (20, "6", {}, "6", "12"),
    (15, "10", {}, "10", "14"),
    (110, "1/0", {}, "3", "6"),
    (800, "500kcmil", {"sets": 3, "raceways": 3}, "4/0", "1/0"),
    (20, "8", {"conductor_metal": "aluminum", "metal": "aluminum"}, "8", "10"),
]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("device", "installed", "other", "larger", "smaller"), LARGER)
def test_a_larger_hot_conductor_than_the_device_asks_for_gives_both_answers(
    device, installed, other, larger, smaller, edition
):
    result = equipment_grounding_conductor(edition=edition, device=device, installed_conductor=installed, **other)
    values = result.answer.values
    assert (values["size"], values["size_unless_increased"]) == (larger, smaller)
    shown = str(result.answer.in_one_line)
    assert "upsized" in shown and f"{smaller} AWG" in shown.partition(". ")[2]
    (asked,) = [str(words) for words in result.trace.notes if "Were the hot conductors upsized" in str(words)]
    assert "(250.122" in asked and ("metal" in other or own_warnings(result) == [])


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(
    ("device", "installed", "sets", "expected"),
    [(15, "14", 1, "14"), (20, "12", 1, "12"), (30, "10", 1, "10"), (60, "6", 1, "10"), (100, "3", 1, "8"),
     (200, "3/0", 1, "6"), (400, "500kcmil", 1, "3"), (400, "600kcmil", 1, "3"), (400, "3/0", 2, "3"),
     (50, "6", 1, "10"), (100, "1", 1, "8"), (60, "8", 1, "10")],
)  # fmt: skip
def test_a_hot_conductor_that_the_device_asks_for_gives_one_plain_answer(device, installed, sets, expected, edition):
    """Table 310.16 at 75 °C, 240.4(D); for 50 and 100 A also at 60 °C, 110.14(C)(1)(a)."""
    result = equipment_grounding_conductor(
        edition=edition, device=device, installed_conductor=installed, sets=sets, raceways=sets
    )
    assert result.answer.values["size"] == result.answer.values["size_unless_increased"] == expected
    assert "load needs" not in str(result.answer.in_one_line)
    assert own_warnings(result) == []


def test_what_terminals_for_60_degrees_ask_for_keeps_the_small_answer_and_names_the_other():
    """50 A behind 6 AWG: 10,380 x 26,240 / 16,510 = 16,497, so 8 AWG where 8 AWG would do."""
    said = notes(edition="2023", device=50, installed_conductor="6")
    assert any("If 8 AWG is the minimum" in words and "it is 8 AWG copper" in words for words in said)
    assert not any("60 °C" in words for words in notes(edition="2023", device=50, installed_conductor="8"))


def test_one_answer_is_left_when_the_question_is_answered():
    plain = dict(edition="2023", device=20, installed_conductor="6")
    assert size(**plain, minimum_conductor="6") == unless_increased(**plain, minimum_conductor="6") == "12"
    assert size(**plain, minimum_conductor="12") == unless_increased(**plain, minimum_conductor="12") == "6"
    assert size(**plain, increase_reason="ambient-or-bundling") == "12"


def test_parallel_sets_without_a_number_of_raceways_give_both_counts():
    """250.122(F): one for the sets in one raceway, else one of full size in each; 2026 limits each by its raceway."""
    shown = str(equipment_grounding_conductor(edition="2023", device=400, sets=2).answer.in_one_line)
    assert "one if all sets are in one raceway, otherwise one in each raceway or cable" in shown
    for raceways in (1, 2):
        plain = equipment_grounding_conductor(edition="2023", device=400, sets=2, raceways=raceways)
        assert plain.answer.values["count"] == raceways and "if all sets" not in str(plain.answer.in_one_line)
    shown = equipment_grounding_conductor(edition="2026", device=2000, sets=5, installed_conductor="4/0").answer
    assert shown.values["size"] == "250kcmil" and "one set in each of 5 raceways: 4/0 AWG" in str(shown.in_one_line)


@pytest.mark.parametrize(("metal", "least"), [("copper", "14"), ("aluminum", "12"), ("copper-clad-aluminum", "12")])
def test_hot_conductors_that_wiring_does_not_have_are_to_be_fixed(metal, least):
    for installed in ("18", "16", "14"):
        result = equipment_grounding_conductor(
            edition="2023", device=15, installed_conductor=installed, conductor_metal=metal
        )
        if AREAS[installed] < AREAS[least]:
            (fix,) = result.fix
            assert fix.field == "installed_conductor" and f"{least} AWG or larger" in str(fix.words)
        else:
            assert result.outcome == "answer"
