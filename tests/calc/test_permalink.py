"""Links restore what was entered and answered, and say when the answer has changed."""

import re

import pytest

from calc import EDITIONS, main_bonding_jumper, permalink, rulebook
from calc.field import read_field
from calc.json_output import linked_answer
from calc.registry import CALCULATORS
from tests.cases.read import cases, named


@pytest.mark.parametrize("pair", cases("jumpers/main_bonding_jumper"), ids=named)
def test_a_link_gives_the_same_inputs_and_answer_again(pair):
    edition, case = pair
    first = main_bonding_jumper(edition=edition, **case["inputs"])
    query = permalink.write(first).partition("?")[2]
    again = main_bonding_jumper.run(permalink.read(query))
    assert (again.edition, again.inputs, again.outcome, again.answer_code) == (
        edition,
        first.inputs,
        first.outcome,
        first.answer_code,
    )
    assert again.linked_answer == again.answer_code and linked_answer(again) is None


def test_a_link_always_carries_its_edition_and_what_was_answered():
    result = main_bonding_jumper(conductor="500kcmil", sets=2)
    assert permalink.write(result) == (
        "main-bonding-jumper?edition=2023&conductor=500kcmil&sets=2&conductor_metal=copper&metal=copper"
        "&place=service-disconnect&system_grounding=solidly-grounded&enclosures=1&form=wire&conductor_basis=installed"
        "&assumed=edition,conductor_metal,metal,place,system_grounding,enclosures,form,conductor_basis&said=2/0-copper"
    )


def test_reading_keeps_blank_and_repeated_parameters_so_that_they_become_errors():
    assert permalink.read("?conductor=&metal=copper&metal=copper&h=x&q=y") == [
        ("conductor", ""),
        ("metal", "copper"),
        ("metal", "copper"),
    ]


def test_a_link_with_spaces_or_plus_signs_reads_the_same():
    for query in ("conductor=500%20kcmil", "conductor=500+kcmil", "conductor=500kcmil"):
        assert main_bonding_jumper.run(permalink.read(query)).inputs["conductor"] == "500kcmil"


def test_a_link_that_was_answered_otherwise_shows_both_answers():
    earlier = linked_answer(main_bonding_jumper(edition="2023", conductor="500kcmil", sets=2, said="1/0-copper"))
    assert (earlier["then"], earlier["now"]) == ("1/0-copper", "2/0-copper")


def test_a_link_that_must_be_mended_now_tells_what_it_was_answered():
    link = "edition=2023&conductor=12-2&said=4-copper"
    result = main_bonding_jumper.run(permalink.read(link))
    assert result.outcome == "fix"
    assert linked_answer(result) == {"then": "4-copper", "now": "fix", "changes": []}
    assert linked_answer(main_bonding_jumper.run(permalink.read("edition=2023&conductor=12-2"))) is None
    assert linked_answer(main_bonding_jumper.run(permalink.read("edition=2023&conductor=3/0&said=4-copper"))) is None


def test_a_recorded_change_of_that_edition_explains_the_difference(monkeypatch):
    row = {
        "rules": 2,
        "date": "2027-01-01",
        "calculator": "main-bonding-jumper",
        "editions": ["2023"],
        "was": "1/0-copper",
        "now": "2/0-copper",
        "why": "A row was read one line too high.",
    }
    monkeypatch.setattr("calc.json_output.changes", lambda: {"version": 2, "change": [row]})
    for edition in EDITIONS:
        earlier = linked_answer(main_bonding_jumper(edition=edition, conductor="500kcmil", sets=2, said="1/0-copper"))
        assert earlier["changes"] == ([row] if edition == "2023" else [])


def test_a_change_that_speaks_of_some_inputs_explains_only_those(monkeypatch):
    row = {"calculator": "main-bonding-jumper", "editions": ["2023"], "when": {"sets": ["2", "3"]}}
    monkeypatch.setattr("calc.json_output.changes", lambda: {"version": 2, "change": [row]})
    for sets in range(1, 5):
        earlier = linked_answer(main_bonding_jumper(edition="2023", conductor="500kcmil", sets=sets, said="6-copper"))
        assert earlier["changes"] == ([row] if sets in (2, 3) else [])


def test_the_record_of_changes_has_a_version_and_whole_rows():
    record = rulebook.changes()
    rows = record["change"]
    assert all(2 <= row["rules"] <= record["version"] for row in rows)
    assert len({row["id"] for row in rows}) == len(rows)
    for row in rows:
        assert set(row) - {"when"} == {"id", "rules", "date", "calculator", "editions", "was", "now", "why"}
        assert re.fullmatch(r"[a-z0-9-]+", row["id"]), row["id"]
        assert set(row["editions"]) <= set(EDITIONS)
        calculator = CALCULATORS[row["calculator"]]
        for name, meant in row.get("when", {}).items():
            asked = calculator.fields[calculator.name_now(name)]
            assert meant and all(str(read_field(asked, text)) == asked.value_now(text) for text in meant), row["id"]
