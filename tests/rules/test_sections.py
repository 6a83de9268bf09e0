"""Every section number against the text of its edition, read apart from the rules.

Other standards and physics stand in the same place in every edition.
2017: NFPA 70-2017. 2020: California Electrical Code 2022. 2023: NFPA 70-2023. The book of 2026 was not seen: its
sections are taken as in 2023 unless a fourth place says what published texts on 2026 tell, and `confirmed_2026.toml`
names those whose whole fact such a text states. One file a room stands in `sections`.
"""

import tomllib
from pathlib import Path

import pytest

from calc.editions import EDITIONS
from calc.rulebook import rule, rule_keys, sources

READ = {
    f"{file.stem}/{name}": places
    for file in sorted((Path(__file__).parent / "sections").glob("*.toml"))
    for name, places in tomllib.loads(file.read_text(encoding="utf-8")).items()
}
TOLD_OF_2026 = tomllib.loads((Path(__file__).parent / "confirmed_2026.toml").read_text(encoding="utf-8"))


def test_every_rule_has_its_sections_checked_here():
    assert rule_keys() == sorted(READ)


def test_sections_are_those_of_the_texts_read():
    for key, places in READ.items():
        expected = dict(zip(EDITIONS, (*places, places[2])[: len(EDITIONS)], strict=True))
        assert {edition: rule(key, edition).section for edition in EDITIONS} == expected, key


def of_the_code(key: str) -> bool:
    """Tell whether a rule stands in a numbered place of the code; physics and reports do not."""
    return READ[key][2].startswith((*"123456789", "Table", "Chapter", "Article"))


@pytest.mark.parametrize("key", [key for key in READ if of_the_code(key)])
def test_a_section_of_2026_is_confirmed_only_where_a_text_on_that_edition_states_it(key):
    stated = rule(key, "2026")
    if stated.mark == "confirmed":
        assert TOLD_OF_2026[key] in stated.sources and "2026" in sources()[TOLD_OF_2026[key]]["title"]
    else:
        assert stated.mark in ("memory", "practice") and key not in TOLD_OF_2026


@pytest.mark.parametrize("key", [key for key in READ if not of_the_code(key)])
def test_what_is_not_of_the_code_does_not_change_with_its_edition(key):
    stated = [rule(key, edition) for edition in EDITIONS]
    assert len({(each.section, str(each.value), str(each.rows)) for each in stated}) == 1
