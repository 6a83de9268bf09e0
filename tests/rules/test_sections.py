"""Every section number against the text of its edition, read apart from the rules.

Other standards and physics stand in the same place in every edition.
2017: NFPA 70-2017. 2020: California Electrical Code 2022. 2023: NFPA 70-2023. No text of 2026
was seen: its sections are taken as in 2023 and marked unverified. One file a room stands in `sections`.
"""

import re
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
OF_THE_CODE = re.compile(r"\d|Table|Article|Chapter|Annex")


def test_every_rule_has_its_sections_checked_here():
    assert rule_keys() == sorted(READ)


def test_sections_are_those_of_the_texts_read():
    for key, (in_2017, in_2020, in_2023) in READ.items():
        expected = dict(zip(EDITIONS, (in_2017, in_2020, in_2023, in_2023), strict=True))
        assert {edition: rule(key, edition).section for edition in EDITIONS} == expected, key


@pytest.mark.parametrize("key", [key for key, places in READ.items() if OF_THE_CODE.match(places[2])])
def test_nothing_that_the_2026_code_states_is_called_confirmed(key):
    assert rule(key, "2026").mark in ("memory", "practice")
