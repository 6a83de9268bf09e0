"""An answer that grows: what it was asked for first, then the rest; whoever asks for the answer gets it whole."""

import pytest

from calc import CALCULATORS, EDITIONS
from calc.batch import answer_table
from calc.json_output import result_to_dict
from calc.touch.deck import deck_voltage as declared
from calc.touch.deck.deck_profile import profile_of
from site_assets.render.answer import result_html
from site_assets.render.note import note
from site_assets.render.page_response import answer_parts, answer_request

DECK = CALCULATORS["deck-voltage"]
POOL = [("rise", "120"), ("pool_length", "31ft"), ("edition", "2023")]
DECKS = ("shell", "ring", "grid", "mesh")
LACKING = "not calculated yet"


def parts(arrangement="ring", *more):
    return list(DECK.run_in_parts([("arrangement", arrangement), *POOL, *more]))


def waiting(result):
    """Return the decks whose row of the comparison has no figures."""
    rows = zip(DECKS, result.answer.table.rows, strict=True)
    return [deck for deck, row in rows if LACKING in [str(cell) for cell in row.cells.values()]]


@pytest.mark.parametrize("chosen", DECKS)
def test_the_chosen_deck_and_the_bare_one_come_first_and_the_others_one_by_one(chosen):
    grown = parts(chosen)
    others = [each for each in DECKS if each not in (chosen, "shell")]
    assert [waiting(part) for part in grown] == [others[place:] for place in range(len(others) + 1)]
    for part in grown:
        assert [each["arrangement"] for each in part.answer.values["compared"]] == [
            each for each in DECKS if each not in waiting(part)
        ]


def test_nothing_is_solved_before_the_first_part_but_the_chosen_deck_and_the_bare_one(monkeypatch):
    solved = []

    def counted(bundles, *more):
        solved.append(len(bundles))
        return profile_of(bundles, *more)

    monkeypatch.setattr(declared, "profile_of", counted)
    growing = DECK.run_in_parts([("arrangement", "ring"), *POOL])
    next(growing)
    first = len(solved)
    assert first == 2
    list(growing)
    assert len(solved) == 4
    assert max(solved[:first]) < min(solved[first:])  # wires of a loop, and those of a mesh


def test_all_that_a_part_shows_but_the_comparison_stays_as_it_is():
    *grown, whole = parts("mesh")
    for part in grown:
        compared = {"compared": whole.answer.values["compared"]}
        assert part.answer.values | compared == whole.answer.values
        assert [str(words) for words in part.warnings] == [str(words) for words in whole.warnings]
        assert [str(words) for words in part.trace.notes] == [str(words) for words in whole.trace.notes]
        assert (part.trace.steps, part.trace.citations) == (whole.trace.steps, whole.trace.citations)
        assert (str(part.answer.headline), part.answer_code) == (str(whole.answer.headline), whole.answer_code)


def test_every_part_but_the_last_says_that_it_is_not_finished_in_the_answer_and_in_its_note():
    *grown, whole = parts()
    assert [(part.answer.unfinished.done, part.answer.unfinished.total) for part in grown] == [(2, 4), (3, 4)]
    for part, count in zip(grown, "23", strict=True):
        told = f"This answer is not finished. Compared so far: {count} of 4 decks."
        assert told in result_html(part) and told in note(part)
        assert result_html(part).index(told) < result_html(part).index("answer-basis")
        assert LACKING in note(part)
    for words in ("not finished", LACKING, "data-unfinished"):
        assert words not in result_html(whole) and words not in note(whole)


@pytest.mark.parametrize("edition", EDITIONS)
def test_who_asks_for_the_answer_gets_the_last_part(edition):
    asked = [("arrangement", "grid"), *POOL[:2], ("edition", edition)]
    *_, whole = DECK.run_in_parts(asked)
    result = DECK.run(asked)
    assert result.answer.unfinished is None
    assert result_to_dict(result) == result_to_dict(whole)
    assert result_html(result) == result_html(whole)
    query = "&".join("=".join(each) for each in asked)
    assert list(answer_parts("deck-voltage", query))[-1] == answer_request("deck-voltage", query)


def test_a_part_is_not_changed_by_those_that_follow():
    growing = DECK.run_in_parts([("arrangement", "mesh"), *POOL])
    first = next(growing)
    before = result_html(first)
    list(growing)
    assert result_html(first) == before


def test_a_row_of_a_table_is_whole():
    from io import BytesIO

    (row,) = answer_table(DECK, BytesIO(b"rise,arrangement\n120,ring\n")).rows
    assert row["compared"].count("arrangement") == 4


def test_an_open_input_an_entry_to_correct_and_a_case_not_covered_have_one_part():
    for asked, outcome in (
        ([("arrangement", "unknown"), *POOL], "depends"),
        ([("arrangement", "ring")], "fix"),
        ([("form", "other"), *POOL], "not_covered"),
    ):
        (only,) = DECK.run_in_parts(asked)
        assert only.outcome == outcome


@pytest.mark.parametrize("slug", [slug for slug in CALCULATORS if slug != "deck-voltage"])
def test_every_other_example_is_whole_at_once(slug):
    (only,) = CALCULATORS[slug].run_in_parts(CALCULATORS[slug].example.items())
    assert only.answer.unfinished is None
