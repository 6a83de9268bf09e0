"""Parts found on site against the rows of a schedule. Expected: the code's tables, read by hand."""

import pytest

from calc import (
    generator_schedule,
    separate_building_schedule,
    service_schedule,
    transformer_schedule,
)
from calc.json_output import result_to_dict
from calc.registry import CALCULATORS
from site_assets.render.answer import result_html
from site_assets.render.note import note

# Table 250.102(C)(1) and Table 250.66, row 2/0 or 3/0 copper: 4 AWG copper each; a rod needs no more than 6 AWG.
SERVICE = {"edition": "2023", "conductor": "3/0", "electrodes": "water-pipe,rod", "metal_parts": "water-pipe"}


def found(calculator, **inputs):
    """Return the verdict of a case, in plain data."""
    return result_to_dict(calculator(**inputs))["answer"]["found"]


@pytest.mark.parametrize(
    ("seen", "verdict", "headline"),
    [
        ("main bonding jumper: 4 copper", "enough", "Large enough: Main bonding jumper"),
        ("main bonding jumper: 6 copper", "short", "To correct: Main bonding jumper"),
        ("main-bonding-jumper=listed", "enough", "Large enough: Main bonding jumper"),
        ("main bonding jumper: unknown", "unknown", "Not checked: Main bonding jumper"),
        ("Grounding electrode conductor: Ground rod: 6 copper", "enough",
         "Large enough: Grounding electrode conductor: Ground rod"),
        ("Grounding electrode conductor: Metal underground water pipe: 6 copper", "short",
         "To correct: Grounding electrode conductor: Metal underground water pipe"),
    ],
)  # fmt: skip
def test_each_part_of_a_service_is_held_against_its_own_row(seen, verdict, headline):
    told = found(service_schedule, **SERVICE, found=seen)
    assert (told["verdict"], told["headline"]) == (verdict, headline)


def test_one_short_part_is_not_hidden_by_those_that_are_large_enough():
    told = found(
        service_schedule,
        **SERVICE,
        found="grounding electrode conductor ground rod: 6 copper; main bonding jumper: 8 copper",
    )
    assert told["verdict"] == "short" and told["headline"] == "To correct: Main bonding jumper"
    first, second = told["parts"]
    # Chapter 9 Table 8: 41,740 - 16,510 cmil; 6 AWG and 4 AWG are larger than 8 AWG.
    assert first["part"] == "main-bonding-jumper" and first["short_by"] == {"sizes": 2, "cmil": 25_230}
    assert first["section"] == "Table 250.102(C)(1)" and second["verdict"] == "enough"
    assert told["open"][-1] == "Not checked, as nothing was entered for them: 4 more of the list."


def test_what_the_list_only_asks_about_leaves_the_rows_with_a_size_unchecked():
    told = found(service_schedule, **SERVICE, found="main bonding jumper: 4 copper; intersystem: unknown")
    assert told["parts"][0]["part"].startswith("intersystem") and told["verdict"] == "unknown"
    # Of the six that it sizes, the jumper alone was entered.
    assert told["open"][-1] == "Not checked, as nothing was entered for them: 5 more of the list."


def test_the_note_names_each_part_before_what_was_observed_and_required():
    lines = note(service_schedule(**SERVICE, found="main bonding jumper: 8 copper")).splitlines()
    assert lines[:4] == [
        "Main bonding jumper",
        "Observed: 8 AWG copper.",
        "Required: 4 AWG copper or larger (Table 250.102(C)(1), 2023 edition).",
        "8 AWG copper is there: short by 2 sizes.",
    ]


def test_a_part_that_must_not_be_there_never_passes():
    """250.24(B), 250.142: past the service disconnect no second bond of the neutral."""
    told = found(
        separate_building_schedule, edition="2023", device="100", conductor="3", electrodes="rod",
        found="neutral-bond: 6 copper",
    )  # fmt: skip
    assert told["verdict"] == "not-permitted" and told["parts"][0]["headline"] == "Leave it out: 6 AWG copper found"


def test_a_row_that_asks_for_more_than_its_calculator_never_passes_by_that_alone():
    """250.32(B), 310.10: the neutral of an old supply is 8 AWG by Table 250.122, and 1/0 where it runs in parallel."""
    old = {"edition": "2023", "device": "100", "conductor": "1/0", "wires": "existing-without", "metal_path": "no",
           "ground_fault_protection": "no", "electrodes": "rod", "minimum_conductor": "3"}  # fmt: skip
    key = "grounded-conductor"
    alone = separate_building_schedule(**old).answer.values["sizes"][key].replace("-", " ")
    assert found(separate_building_schedule, **old, found=f"{key}: {alone}")["verdict"] == "enough"
    parallel = old | {"sets": "2", "raceways": "1"}
    told = found(separate_building_schedule, **parallel, found=f"{key}: 2 copper")
    assert told["verdict"] == "unknown" and "in parallel 1/0 AWG or larger" in told["parts"][0]["headline"]
    rows = separate_building_schedule(**parallel).answer.table.rows
    assert any("in parallel 1/0 AWG" in str(row.cells["size"]) for row in rows)


@pytest.mark.parametrize("written", ["foo: 4 copper", "grounding electrode conductor: 4 copper"])
def test_what_is_no_row_or_may_be_two_is_asked_for_with_the_rows_there_are(written):
    result = service_schedule(**SERVICE, found=written)
    assert result.outcome == "fix" and result.fix[0].field == "found"
    assert "Main bonding jumper" in str(result.fix[0].words)


@pytest.mark.parametrize("written", ["4 copper", "main bonding jumper: 4", "main: 4 cu; main: 6 cu", "main:"])
def test_what_names_no_part_or_no_metal_or_one_part_twice_is_asked_for(written):
    assert [fix.field for fix in service_schedule(**SERVICE, found=written).fix] == ["found"]


def test_every_size_of_every_schedule_passes_just_where_its_own_calculator_passes():
    for calculator in (service_schedule, transformer_schedule, generator_schedule, separate_building_schedule):
        answer = calculator(**calculator.example).answer
        for key, row in zip(answer.values["sizes"], answer.table.rows, strict=True):
            slug = row.link.partition("?")[0]
            size, _, metal = answer.values["sizes"][key].partition("-")
            if slug not in CALCULATORS or metal not in ("copper", "aluminum"):
                continue
            told = found(calculator, **calculator.example, found=f"{key}: {size} {metal}")
            assert told["parts"][0]["spare"] == {"sizes": 0, "cmil": 0}, (key, told["headline"])
            smaller = found(calculator, **calculator.example, found=f"{key}: 14 {metal}")
            assert smaller["verdict"] == "short", key


def test_a_page_shows_the_verdict_before_the_list():
    html = result_html(service_schedule(**SERVICE, found="main bonding jumper: 8 copper"))
    verdict = '<p class="found" data-verdict="short">To correct: Main bonding jumper</p>'
    assert html.index(verdict) < html.index("<table")


def test_without_what_was_found_a_schedule_answers_as_before():
    plain = service_schedule(**SERVICE)
    assert plain.found is None and "found" not in result_to_dict(plain)["answer"]
