"""A wire found on site against the size required. Expected: the code's tables; areas from Chapter 9 Table 8."""

from io import BytesIO

import pytest

from calc import (
    buried_metal_elbow,
    equipment_bonding_jumper,
    equipment_grounding_conductor,
    grounded_conductor,
    grounding_electrode_conductor,
    main_bonding_jumper,
    raceway_as_grounding_path,
    structural_metal_bonding,
    supply_side_bonding_jumper,
    system_bonding_jumper,
    water_pipe_bonding,
)
from calc.batch import answer_table
from calc.conductors.area import area, listed_sizes
from calc.editions import EDITIONS
from calc.json_output import result_to_dict
from calc.registry import CALCULATORS
from site_assets.render.answer import result_html
from site_assets.render.note import note

CHECKED = [slug for slug, each in CALCULATORS.items() if "found" in each.fields and not slug.endswith("-schedule")]


def found(calculator, **inputs):
    """Return the verdict of a case, in plain data."""
    return result_to_dict(calculator(**({"edition": "2023"} | inputs)))["answer"]["found"]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(
    ("seen", "verdict"),
    [("6 copper", "short"), ("4 copper", "enough"), ("2 copper", "enough"),
     ("4 aluminum", "short"), ("3 aluminum", "short"), ("2 aluminum", "enough"), ("2 cca", "enough")],
)  # fmt: skip
def test_behind_3_0_copper_a_main_bonding_jumper_is_4_copper_or_2_aluminum(edition, seen, verdict):
    # Table 250.102(C)(1), row 2/0 or 3/0 copper: 4 AWG copper, 2 AWG aluminum or copper-clad aluminum
    assert found(main_bonding_jumper, edition=edition, conductor="3/0", found=seen)["verdict"] == verdict


def test_what_is_short_is_told_in_sizes_and_area():
    told = found(main_bonding_jumper, conductor="3/0", found="8 copper")
    # Chapter 9 Table 8: 41,740 cmil - 16,510 cmil; between them 6 AWG, then 4 AWG
    assert told["short_by"] == {"sizes": 2, "cmil": 25_230} and told["spare"] is None
    assert told["headline"] == "8 AWG copper is there: short by 2 sizes"


def test_what_is_enough_is_told_with_what_it_has_to_spare():
    told = found(main_bonding_jumper, conductor="3/0", found="2 copper")
    # 66,360 cmil - 41,740 cmil; 3 AWG and 2 AWG are larger
    assert told["spare"] == {"sizes": 2, "cmil": 24_620} and told["short_by"] is None


def test_the_metal_found_is_sized_by_its_own_rule_whatever_metal_the_answer_is_for():
    told = found(main_bonding_jumper, conductor="3/0", metal="copper", found="4 aluminum")
    assert (told["required_size"], told["required_metal"]) == ("2", "aluminum")
    result = main_bonding_jumper(edition="2023", conductor="3/0", metal="copper", found="4 aluminum")
    assert result.answer_code == "4-copper"
    # With conductors over the table the metals change places: 600 kcmil x 2 copper carries 2 x 420 A, which aluminum
    # of 900 kcmil does (425 A): 12.5 % of 1,800,000 is 225,000 cmil, so 250 kcmil. Copper: 150,000, so 3/0.
    told = found(main_bonding_jumper, conductor="600", sets="2", found="4/0 aluminum")
    assert told["required_size"] == "250kcmil" and told["verdict"] == "short"
    assert found(main_bonding_jumper, conductor="600", sets="2", found="3/0 copper")["verdict"] == "enough"


def test_a_metal_that_the_edition_does_not_name_is_warned_of_when_it_is_found():
    old = main_bonding_jumper(edition="2017", conductor="3/0", found="2 aluminum")
    assert any("not aluminum" in str(words) for words in old.trace.warnings)
    copper = main_bonding_jumper(edition="2017", conductor="3/0", found="4 copper")
    assert copper.trace.warnings == []


@pytest.mark.parametrize("typed", ["6", "6 AWG", "1/0", "350 kcmil"])
def test_a_size_without_its_metal_is_asked_for_even_where_the_form_has_one_chosen(typed):
    result = main_bonding_jumper(edition="2023", conductor="3/0", metal="copper", found=typed)
    (fix,) = result.fix
    assert fix.field == "found" and "material too" in str(fix.words)


@pytest.mark.parametrize("typed", ["2x4 copper", "2-4 copper", "(2) 1/0 cu", "2 sets of 1/0 cu"])
def test_several_small_wires_are_not_taken_for_a_large_one(typed):
    (fix,) = main_bonding_jumper(edition="2023", conductor="3/0", found=typed).fix
    assert fix.field == "found" and "one conductor at a time" in str(fix.words)


@pytest.mark.parametrize("typed", ["steel", "copper", "6 steel", "5/0 copper", "0", "6 copper 4 copper", "yes"])
def test_what_is_no_size_is_not_read_as_one(typed):
    (fix,) = main_bonding_jumper(edition="2023", conductor="3/0", found=typed).fix
    assert fix.field == "found" and "6 copper" in str(fix.words)


@pytest.mark.parametrize("typed", ["6 copper", "6 AWG copper", "#6 Cu", "6cu", "No. 6 CU.", "6-copper", "6, copper"])
def test_a_size_and_its_metal_are_read_as_people_write_them(typed):
    assert main_bonding_jumper(edition="2023", conductor="3/0", found=typed).inputs["found"] == "6-copper"


@pytest.mark.parametrize("slug", CHECKED)
def test_a_part_that_nobody_saw_never_passes(slug):
    calculator = CALCULATORS[slug]
    told = found(calculator, **calculator.example, found="unknown")
    assert told["verdict"] == "unknown" and told["required_size"] == result_to_dict(
        calculator(**calculator.example)
    )["answer"]["size"]


def test_beside_a_raceway_that_is_the_path_no_wire_is_required_and_beside_one_that_is_not_it_is_checked():
    # 250.118: flexible metal conduit, 6 ft in all, at 20 A at most. Table 250.122: 20 A 12 AWG, 30 A 10 AWG copper
    flexible = {"raceway": "flexible-metal-conduit", "trade_size": "1/2", "length": "4ft"}
    told = found(raceway_as_grounding_path, **flexible, device="20", found="14 copper")
    assert told["verdict"] == "enough" and told["headline"] == "Not required here: 14 AWG copper found"
    assert found(raceway_as_grounding_path, **flexible, device="30", found="12 copper")["verdict"] == "short"
    assert found(raceway_as_grounding_path, **flexible, device="30", found="10 copper")["verdict"] == "enough"


def test_a_listed_main_bonding_jumper_is_enough_by_its_listing_and_no_other_part_is():
    told = found(main_bonding_jumper, conductor="3/0", found="listed")
    assert told["verdict"] == "enough" and told["section"] == "408.3(C)" and "instructions" in told["headline"]
    for slug in CHECKED:
        if slug != "main-bonding-jumper":
            assert found(CALCULATORS[slug], **CALCULATORS[slug].example, found="listed")["verdict"] == "unknown"


def test_where_a_smaller_size_holds_on_a_condition_the_verdict_follows_the_larger_one():
    circuit = {"device": "40", "installed_conductor": "6"}
    # Table 250.122: 40 A asks for 10 AWG. 8 AWG hot (50 A at 75 degrees C) would do: 10,380 x 26,240 / 16,510 cmil is
    # 16,497, so 8 AWG where the hot conductors were made larger.
    for calculator in (equipment_grounding_conductor, equipment_bonding_jumper):
        told = found(calculator, **circuit, found="10 copper")
        assert told["verdict"] == "short" and "6 AWG is the minimum hot conductor size" in told["only_if"]
        assert told["headline"] == "10 AWG copper is there: short by 1 size"
        assert found(calculator, **circuit, found="12 copper")["only_if"] is None
        assert found(calculator, **circuit, found="8 copper")["verdict"] == "enough"
    # The ordinary neighbour: nobody doubts 8 AWG hot conductors behind 40 A.
    told = found(equipment_grounding_conductor, device="40", installed_conductor="8", found="10 copper")
    assert told["verdict"] == "enough" and told["open"] == []


def test_hot_conductors_that_nobody_entered_are_left_open_not_passed_over():
    told = found(equipment_grounding_conductor, device="20", found="12 copper")
    assert told["verdict"] == "enough" and "were not entered" in told["open"][0]
    assert "were not entered" in note(equipment_grounding_conductor(edition="2023", device="20", found="12 copper"))


def test_sets_without_a_number_of_raceways_are_enough_only_in_one_of_the_two_ways():
    # 3 x 400 kcmil: 12.5 % of 1,200,000 is 150,000 cmil, so 3/0; one set alone, over 350 through 600: 1/0
    told = found(supply_side_bonding_jumper, conductor="400", sets="3", found="1/0 copper")
    assert told["verdict"] == "short" and "its own" in told["only_if"]
    told = found(supply_side_bonding_jumper, conductor="400", sets="3", raceways="3", found="1/0 copper")
    assert told["verdict"] == "enough" and told["only_if"] is None
    assert found(supply_side_bonding_jumper, conductor="400", sets="3", found="1 copper")["only_if"] is None
    # 2 x 3/0 in one raceway: 335,600 cmil, 2 AWG; in two, 4 AWG by the table, 1/0 as each parallel one is at least that
    told = found(grounded_conductor, conductor="3/0", sets="2", found="2 copper")
    assert told["verdict"] == "short" and told["only_if"] == "Large enough only if all sets are in one raceway."


def test_small_service_conductors_keep_the_least_size_of_the_table():
    told = found(main_bonding_jumper, conductor="10", found="10 copper")
    assert told["verdict"] == "short" and "authority" in told["only_if"] and told["required_size"] == "8"
    assert found(main_bonding_jumper, conductor="10", found="8 copper")["verdict"] == "enough"


def test_a_wire_to_a_rod_is_enough_until_it_runs_on():
    # 250.66(A): 6 AWG copper to a rod; Table 250.66, over 350 through 600 kcmil: 1/0
    told = found(grounding_electrode_conductor, conductor="500", electrode="rod", found="6 copper")
    assert told["verdict"] == "enough" and told["section"] == "250.66(A)"
    assert told["open"] == ["1/0 AWG is required where it continues to a water pipe or building steel."]
    told = found(grounding_electrode_conductor, conductor="500", electrode="water-pipe", found="6 copper")
    assert told["verdict"] == "short" and told["required_size"] == "1/0" and told["section"] == "Table 250.66"


def test_the_neutral_load_that_was_not_entered_is_left_open():
    service = {"conductor": "3/0", "found": "4 copper"}
    assert "neutral load" in found(grounded_conductor, **service)["open"][0]
    assert found(grounded_conductor, **service, load_size="4")["open"] == []
    assert found(grounded_conductor, **service, load_size="2")["verdict"] == "short"


def test_a_jumper_of_the_right_size_on_a_route_that_is_not_allowed_does_not_pass():
    told = found(equipment_bonding_jumper, device="100", routing="outside", length="9 ft", found="8 copper")
    assert told["verdict"] == "not-permitted"
    assert told["headline"].startswith("8 AWG copper is there: large enough, but not permitted as entered")
    short = found(equipment_bonding_jumper, device="100", routing="outside", length="6 ft", found="8 copper")
    assert short["verdict"] == "enough"


def test_where_no_bond_is_needed_none_is_too_small():
    told = found(structural_metal_bonding, exposed="no", found="8 copper")
    assert told["verdict"] == "enough" and told["headline"] == "Not required here: 8 AWG copper found"
    told = found(structural_metal_bonding, conductor="500", sets="3", found="8 copper")
    assert told["verdict"] == "short" and told["required_size"] == "3/0"  # 250.104(C): 3/0 copper is the most required


def test_more_than_the_most_that_is_required_is_enough():
    told = found(water_pipe_bonding, conductor="500", sets="6", found="250 kcmil copper")
    assert told["verdict"] == "enough" and told["required_size"] == "3/0"


def test_a_bond_whose_size_cannot_be_known_is_not_passed():
    elbow = {"circuit": "service", "cover": "17in"}
    assert found(buried_metal_elbow, **elbow, found="4 copper")["verdict"] == "unknown"
    assert found(buried_metal_elbow, **elbow, conductor="3/0", found="4 copper")["verdict"] == "enough"


def test_a_metal_of_which_no_size_is_listed_is_not_passed():
    # 2000 kcmil copper carries 665 A at 75 degrees C; the largest aluminum listed carries 560 A
    case = {"conductor": "2000", "sets": "2"}
    assert found(system_bonding_jumper, **case, found="2000 al")["verdict"] == "unknown"
    assert found(system_bonding_jumper, **case, found="500 cu")["verdict"] == "enough"  # 12.5 % of 4,000,000 cmil


@pytest.mark.parametrize("slug", CHECKED)
def test_every_listed_size_passes_just_where_its_area_is_that_of_the_answer(slug):
    calculator = CALCULATORS[slug]
    size = calculator(**calculator.example).answer.values["size"]
    for label, cmil in listed_sizes("2023").items():
        told = found(calculator, **calculator.example, found=f"{label} copper")
        assert (told["verdict"] == "enough") == (cmil >= area(size, "2023")), label


def test_a_note_tells_what_was_observed_and_required_and_where():
    lines = note(main_bonding_jumper(edition="2023", conductor="3/0", found="8 cu")).splitlines()
    assert lines[:4] == [
        "Observed: 8 AWG copper.",
        "Required: 4 AWG copper or larger (Table 250.102(C)(1), 2023 edition).",
        "8 AWG copper is there: short by 2 sizes.",
        "2 sizes smaller than the 4 AWG copper required (25,230 cmil).",
    ]


def test_the_page_puts_the_verdict_before_the_size():
    html = result_html(main_bonding_jumper(edition="2023", conductor="3/0", found="8 cu"))
    assert 0 < html.index('data-verdict="short"') < html.index("answer-size")
    assert "data-verdict" not in result_html(main_bonding_jumper(edition="2023", conductor="3/0"))


def table(text):
    """Return the columns and the rows of an answered table of main bonding jumpers."""
    answered = answer_table(main_bonding_jumper, BytesIO(text.encode()), [("edition", "2023")])
    return answered.columns, list(answered.rows)


def test_a_table_has_the_columns_of_a_verdict_only_where_it_has_what_was_found():
    assert "found_verdict" not in table("conductor\n3/0\n")[0]
    columns, rows = table("conductor,found\n3/0,8 cu\n3/0,4 cu\n3/0,\n3/0,8\n")
    assert columns[-2:] == ("found_verdict", "found_short_by") and all(tuple(row) == columns for row in rows)
    assert [row["found_verdict"] for row in rows] == ["short", "enough", "", ""]
    assert rows[0]["found_short_by"] == "2 sizes smaller than the 4 AWG copper required (25,230 cmil)."
    assert [row["outcome"] for row in rows] == ["answer", "answer", "answer", "fix"]


def test_an_answer_without_what_was_found_has_no_key_for_it():
    assert "found" not in result_to_dict(main_bonding_jumper(edition="2023", conductor="3/0"))["answer"]
