"""Which answers changed: the list over the declared domain equals brute force, and the record is today's."""

import copy
import tomllib
from itertools import product

import pytest

from calc import CALCULATORS, EDITIONS, rulebook
from calc.editing import domain
from calc.editing.answer_record import (
    changed_since,
    explained,
    packed,
    read_record,
    recorded,
    unpacked,
    unrecorded,
)
from calc.editing.change_rows import TO_BE_WRITTEN, change_rows
from calc.editing.changes_command import changes_command
from calc.editing.domain import DOMAIN
from calc.editing.tree import ROOT, RefusedError

SLUG, EDITION = "equipment-bonding-jumper", "2023"
HOW_TO = "Add a row to calc/rules/changes.toml for each, then: python -m calc changes --record"


@pytest.fixture
def change_a_figure(monkeypatch):
    """Yield a function that makes the row of 60 A ask for 8 AWG copper in 2023, where the table has 10 AWG."""
    key = "grounding/equipment_grounding_size"
    document = copy.deepcopy(rulebook._document(key))
    stated = document["editions"][EDITION]
    rows = copy.deepcopy(document["editions"][stated.pop("same_as", EDITION)]["rows"])
    next(row for row in rows if row["through_ampere"] == 60)["copper"] = "8"
    stated["rows"] = rows
    read = rulebook._document

    def change():
        monkeypatch.setattr(rulebook, "_document", lambda asked: document if asked == key else read(asked))
        rulebook.forget()

    yield change
    monkeypatch.undo()
    rulebook.forget()


def said_to(grids):
    return [CALCULATORS[SLUG](edition=EDITION, **inputs).answer_code for inputs in grids]


def test_a_changed_figure_gives_the_list_that_brute_force_gives(change_a_figure):
    grids = [dict(zip(grid, values, strict=True)) for grid in DOMAIN[SLUG] for values in product(*grid.values())]
    was = said_to(grids)
    assert changed_since(read_record(), [SLUG], [EDITION]) == []
    change_a_figure()
    now = said_to(grids)
    listed = changed_since(read_record(), [SLUG], [EDITION])
    brute = [(inputs, before, after) for inputs, before, after in zip(grids, was, now, strict=True) if before != after]
    assert brute and [(each.inputs, each.was, each.now) for each in listed] == brute
    # 250.122: 25 A to 60 A is one row, 20 A and 70 A are in others.
    assert {inputs["device"] for inputs, _, _ in brute} == {"25", "30", "40", "50", "60"}


def test_a_row_made_for_a_change_explains_it_and_an_older_one_does_not(change_a_figure, monkeypatch):
    record = read_record()
    change_a_figure()
    listed = changed_since(record, [SLUG], [EDITION])
    assert listed and not any(explained(each, record) for each in listed)
    rows = tomllib.loads(change_rows(listed, 2, "2026-11-30", lambda _: "tried"))["change"]
    monkeypatch.setattr("calc.editing.answer_record.changes", lambda: {"change": rows})
    assert all(explained(each, record) for each in listed)
    assert not any(explained(each, record | {"changes": [row["id"] for row in rows]}) for each in listed)


def test_a_row_whose_reason_is_still_to_be_written_is_not_recorded(monkeypatch):
    assert not [row["id"] for row in rulebook.changes()["change"] if TO_BE_WRITTEN in row["why"]]
    rows = {"version": 2, "change": [{"id": "no-reason-yet", "why": TO_BE_WRITTEN}]}
    monkeypatch.setattr("calc.editing.changes_command.changes", lambda: rows)
    monkeypatch.setattr("calc.editing.changes_command.changed_since", lambda _: [])
    monkeypatch.setattr("calc.editing.changes_command.write_whole", lambda _: pytest.fail("it was recorded"))
    with pytest.raises(RefusedError, match="no-reason-yet"):
        changes_command(["--record"])


@pytest.mark.slices(len(DOMAIN))
def test_what_is_answered_today_is_what_is_recorded_or_a_row_of_changes_explains_it(slice_number):
    record, slug = read_record(), list(DOMAIN)[slice_number]
    assert not [each for each in unrecorded(record) if each.startswith(f"{slug} ")], HOW_TO
    unexplained = [each for each in changed_since(record, [slug]) if not explained(each, record)]
    assert not unexplained, f"{len(unexplained)} answers changed, {unexplained[0]} first. {HOW_TO}"


def test_a_record_is_small():
    assert (ROOT / "calc/editing/answers.json").stat().st_size < 300_000


@pytest.mark.parametrize("slug", DOMAIN)
def test_every_case_of_the_domain_is_recorded_and_most_are_answered(slug):
    for edition in EDITIONS:
        answers = recorded(read_record(), slug, edition)
        assert len(answers) == len(list(domain.inputs_of(slug)))
        assert sum(each.startswith("fix:") for each in answers) < len(answers) / 8
        assert unpacked(packed(answers)) == answers
