"""A new edition by one command: every rule states it as another one, from memory, and every calculator answers."""

import subprocess
import sys
import tomllib

import pytest

from calc import CALCULATORS
from calc.editing.new_edition import new_edition
from calc.editing.statements import with_figures, with_statement
from calc.editing.tree import RULES, SECTIONS, RefusedError, copy_with, text_of
from calc.editions import EDITIONS
from calc.rulebook import DATED, KINDS, RuleError, _document, file_of, rule, rule_keys, validate

NEW = str(int(EDITIONS[-1]) + 3)
LATER = "2099"  # stands for it where it answers, so that no year of a tree is meant by it
ANSWER_ALL = f"""
from calc import CALCULATORS
from calc.rulebook import _document, rule_keys, validate
for key in rule_keys():
    validate(key, _document(key))
for slug, calculator in CALCULATORS.items():
    before = calculator(**calculator.example | {{"edition": "{EDITIONS[-1]}"}})
    result = calculator(**calculator.example | {{"edition": "{LATER}"}})
    cited = [each.mark for each in result.trace.citations]
    warned = any(str(words).startswith("Not verified for the {LATER} edition: ") for words in result.trace.warnings)
    print(slug, result.answer_code == before.answer_code, "memory" in cited, warned)
"""


@pytest.fixture(scope="module")
def texts():
    return new_edition(NEW, EDITIONS[-1])


def later(text: str) -> str:
    """Return a text as if the new edition had a year that no edition will have."""
    return text.replace(NEW, LATER)


def test_every_rule_of_the_code_states_a_new_edition_and_none_is_confirmed_by_it(texts):
    dated = [key for key in rule_keys() if DATED in _document(key)]
    assert len(dated) > 400
    for key in dated:
        stated = tomllib.loads(texts[RULES / f"{file_of(key)}.toml"])[DATED]
        (new,) = set(stated) - set(EDITIONS)
        before = rule(key, EDITIONS[-1])
        assert stated[new]["section"] == before.section and stated[new]["sources"] == []
        assert stated[new]["mark"] == ("practice" if before.mark == "practice" else "memory")
        figures = KINDS[_document(key)["kind"]]
        assert figures is None or figures in stated[stated[new]["same_as"]]
        assert {edition: stated[edition] for edition in EDITIONS} == _document(key)[DATED]


def test_a_rule_that_no_edition_states_is_left_alone(texts):
    assert RULES / f"{file_of('electrodes/soil_resistivity')}.toml" not in texts
    assert RULES / "jumpers/supply_side_size.toml" in texts


def test_the_checks_and_the_pages_know_the_new_edition(texts):
    expected = tomllib.loads(texts[SECTIONS / "jumpers.toml"])
    (new,) = set(expected) - {*EDITIONS, "every_edition"}
    assert expected[new] == {"taken_as": EDITIONS[-1]}
    name = f"editions/{EDITIONS[-1]}-to-{new}"
    assert sum(name in text for text in texts.values()) >= 3


def test_in_a_new_edition_every_calculator_answers_as_before_and_says_what_is_not_verified(texts):
    """A year that no edition has stands for the new one, so that the test stays when that one is there."""
    tried = {path: later(text) for path, text in texts.items() if path.is_relative_to(RULES)}
    with copy_with(tried) as copy:
        done = subprocess.run([sys.executable, "-c", ANSWER_ALL], cwd=copy, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    told = {slug: words for slug, *words in map(str.split, done.stdout.splitlines())}
    assert set(told) == set(CALCULATORS)
    assert all(same == "True" and memory == warned for same, memory, warned in told.values())
    assert told["main-bonding-jumper"] == ["True", "True", "True"]


@pytest.mark.parametrize(("new", "taken_from"), [("29", "2026"), (EDITIONS[0], EDITIONS[-1]), ("2029", "1896")])
def test_an_edition_that_is_none_or_is_there_or_is_taken_from_none_is_refused(new, taken_from):
    with pytest.raises(RefusedError):
        new_edition(new, taken_from)


@pytest.mark.parametrize("year", ["2018", "2019", "2027", "2028", "2015"])
def test_a_year_between_two_editions_is_refused_with_the_two_around_it(year):
    """NFPA 70 has come out every three years since 1975: ... 2014, 2017, 2020, 2023, 2026."""
    around = {"2018": "2017 and 2020", "2019": "2017 and 2020", "2015": "2014 and 2017"}.get(year, "2026 and 2029")
    with pytest.raises(RefusedError, match=f"There is no {year} edition: they come every 3 years, {around}"):
        new_edition(year, "2017")


def test_an_older_edition_stands_before_the_others():
    assert 'editions = ["2014", "2017"' in new_edition("2014", "2017")[RULES / "editions.toml"]


def test_figures_that_others_take_stay_theirs_when_an_edition_gets_its_own():
    key = "jumpers/supply_side_size"
    document = _document(key)
    first, *others = sorted(document[DATED])
    assert all(document[DATED][each]["same_as"] == first for each in others)
    stated = with_figures(document, first, [{"through_copper": "2", "copper": "6"}])
    text = text_of(RULES / f"{file_of(key)}.toml")
    for edition, each in stated.items():
        text = with_statement(text, edition, each)
    changed = tomllib.loads(text)
    validate(key, changed)
    assert changed[DATED][first]["rows"] == [{"through_copper": "2", "copper": "6"}]
    assert changed[DATED][others[0]]["rows"] == document[DATED][first]["rows"]
    assert all(changed[DATED][each]["same_as"] == others[0] for each in others[1:])


def test_a_rule_that_forgets_the_new_edition_is_refused_by_name():
    document = _document("jumpers/supply_side_size")
    with pytest.raises(RuleError, match="jumpers/supply_side_size: states the editions"):
        validate("jumpers/supply_side_size", document | {DATED: {EDITIONS[0]: document[DATED][EDITIONS[0]]}})
