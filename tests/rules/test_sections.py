"""Every section number against the text of its edition, read apart from the rules.

Other standards and physics stand in the same place in every edition.
2017: NFPA 70-2017. 2020: California Electrical Code 2022. 2023: NFPA 70-2023. No text of 2026
was seen: its sections are marked unverified, and taken as in 2023 where no fourth place is written, as trade press
reports it. One file a room stands in `sections`.
"""

import tomllib
from pathlib import Path

import pytest

from calc.editions import EDITIONS
from calc.rulebook import rule, rule_keys

READ = {
    f"{file.stem}/{name}": places
    for file in sorted((Path(__file__).parent / "sections").glob("*.toml"))
    for name, places in tomllib.loads(file.read_text(encoding="utf-8")).items()
}


def test_every_rule_has_its_sections_checked_here():
    assert rule_keys() == sorted(READ)


def test_sections_are_those_of_the_texts_read():
    for key, (in_2017, in_2020, in_2023, *in_2026) in READ.items():
        expected = dict(zip(EDITIONS, (in_2017, in_2020, in_2023, *(in_2026 or [in_2023])), strict=True))
        assert {edition: rule(key, edition).section for edition in EDITIONS} == expected, key


def of_the_code(key: str) -> bool:
    """Tell whether a rule stands in a numbered place of the code; physics and reports do not."""
    return READ[key][2].startswith((*"123456789", "Table", "Chapter", "Article"))


@pytest.mark.parametrize("key", [key for key in READ if of_the_code(key)])
def test_no_section_of_2026_is_called_confirmed(key):
    assert rule(key, "2026").mark in ("memory", "practice")


@pytest.mark.parametrize("key", [key for key in READ if not of_the_code(key)])
def test_what_is_not_of_the_code_does_not_change_with_its_edition(key):
    stated = [rule(key, edition) for edition in EDITIONS]
    assert len({(each.section, str(each.value), str(each.rows)) for each in stated}) == 1
