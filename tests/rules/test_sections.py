"""Every section number against the text of its edition, read apart from the rules. One file a room, in `sections`.

2017: NFPA 70-2017. 2020: California Electrical Code 2022. 2023: NFPA 70-2023. An edition that is `taken_as` another
was not seen as a book: only the places that published texts tell of it stand under it. Other standards and physics
stand once, under `every_edition`.
"""

import tomllib
from pathlib import Path

import pytest

from calc.editions import EDITIONS
from calc.rulebook import UNDATED, _document, rule, rule_keys, sources

ROOMS = {
    file.stem: tomllib.loads(file.read_text(encoding="utf-8"))
    for file in sorted((Path(__file__).parent / "sections").glob("*.toml"))
}
KEYS = sorted({f"{room}/{name}" for room, read in ROOMS.items() for places in read.values() for name in places})
KEYS = [key for key in KEYS if not key.endswith("/taken_as")]


def expected_section(key: str, edition: str) -> str | None:
    """Return where the texts have a rule in an edition, None where they were not asked."""
    room, name = key.split("/")
    read = ROOMS[room]
    places = read.get(edition, {})
    if name in read.get(UNDATED, {}):
        return read[UNDATED][name]
    return places.get(name) or ("taken_as" in places and expected_section(key, places["taken_as"])) or None


def editions_without_a_book() -> set[str]:
    """Return the editions that some room takes as another one."""
    return {edition for read in ROOMS.values() for edition, places in read.items() if "taken_as" in places}


def of_the_code(key: str) -> bool:
    """Tell whether a rule stands in a numbered place of the code; physics and reports do not."""
    return expected_section(key, EDITIONS[0]).startswith((*"123456789", "Table", "Chapter", "Article"))


def test_every_rule_has_its_sections_checked_here():
    assert rule_keys() == KEYS


def test_sections_are_those_of_the_texts_read():
    for key in KEYS:
        for edition in EDITIONS:
            assert rule(key, edition).section == expected_section(key, edition), (
                f"{key}: tests/rules/sections/{key.split('/')[0]}.toml, [{edition}]"
            )


def test_a_room_names_no_edition_that_the_rules_do_not_know():
    for read in ROOMS.values():
        assert set(read) <= {UNDATED, *EDITIONS}


@pytest.mark.parametrize("edition", EDITIONS)
def test_where_a_book_was_not_seen_only_a_text_on_that_edition_confirms(edition):
    """Of any edition, the newest too: what is unverified follows from the marks, and a mark from a text."""
    if edition not in editions_without_a_book():
        assert all(expected_section(key, edition) for key in KEYS)
        return
    for key in filter(of_the_code, KEYS):
        stated = rule(key, edition)
        titles = [sources()[source]["title"] for source in stated.sources]
        assert stated.mark != "confirmed" or any(edition in title for title in titles), key


@pytest.mark.parametrize("key", [key for key in KEYS if not of_the_code(key)])
def test_what_is_not_of_the_code_does_not_change_with_its_edition(key):
    stated = [rule(key, edition) for edition in EDITIONS]
    assert len({(each.section, str(each.value), str(each.rows)) for each in stated}) == 1


@pytest.mark.parametrize("key", [key for key in KEYS if UNDATED in _document(key)])
def test_what_every_edition_shares_is_no_numbered_place_of_the_code(key):
    assert not of_the_code(key)
