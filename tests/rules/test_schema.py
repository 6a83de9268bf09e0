"""A rule file that leaves something unsaid is an error, never a guess."""

import copy

import pytest

from calc.editions import EDITIONS
from calc.rulebook import (
    RuleError,
    _document,
    aliases,
    every_edition,
    rule,
    rule_keys,
    sources,
    statements,
    undated,
    validate,
)

GOOD = _document("conductors/parallel_minimum")


def broken(change) -> dict:
    document = copy.deepcopy(GOOD)
    change(document)
    return document


@pytest.mark.parametrize("key", rule_keys())
def test_every_rule_in_the_book_keeps_the_schema(key):
    validate(key, _document(key))


@pytest.mark.parametrize(
    ("change", "complaint"),
    [
        (lambda d: d["editions"].pop("2020"), "states the editions"),
        (lambda d: d["editions"].update({"1896": d["editions"]["2017"]}), "states the editions"),
        (lambda d: d.update(every_edition=d["editions"]["2017"]), "has the fields"),
        (lambda d: d.pop("editions"), "has the fields"),
        (lambda d: d.pop("unit"), "has the fields"),
        (lambda d: d.update(kind="guess"), "kind 'guess'"),
        (lambda d: d["editions"]["2017"].pop("value"), "states no value"),
        (lambda d: d["editions"]["2017"].pop("mark"), "2017 has the fields"),
        (lambda d: d["editions"]["2017"].update(mark="sure"), "has the mark 'sure'"),
        (lambda d: d["editions"]["2017"].update(sources=[]), "names no source"),
        (lambda d: d["editions"]["2017"].update(sources=["hearsay"]), "names the source 'hearsay'"),
        (lambda d: d["editions"]["2020"].update(same_as="2023"), "states nothing"),
        (lambda d: d["editions"]["2020"].update(value="1"), "2020 has the fields"),
    ],
)
def test_a_rule_that_breaks_the_schema_is_refused_by_name(change, complaint):
    with pytest.raises(RuleError, match="conductors/parallel_minimum: ") as refused:
        validate("conductors/parallel_minimum", broken(change))
    assert complaint in str(refused.value)


def test_an_unknown_edition_is_refused():
    with pytest.raises(RuleError, match="no edition '1999'"):
        rule("conductors/area", "1999")


def test_an_unknown_rule_is_refused():
    with pytest.raises(RuleError, match="no such rule"):
        rule("conductors/colour", "2023")


def test_every_source_is_used_and_says_what_was_seen_in_it():
    used = {
        source for key in rule_keys() for dated in statements(_document(key)).values() for source in dated["sources"]
    }
    assert used == set(sources())
    assert all(each["title"] and each["kind"] and each["seen"] for each in sources().values())


def test_a_key_that_was_published_gives_the_rule_that_states_its_fact_now():
    assert aliases() and not set(aliases()) & set(rule_keys())
    for old, now in aliases().items():
        assert rule(old, "2023") == rule(now, "2023")


def test_what_every_edition_shares_is_stated_once_and_read_in_each():
    once = {edition: rule("electrodes/soil_resistivity", edition) for edition in EDITIONS}
    assert all(stated.edition == edition for edition, stated in once.items())
    assert len({(stated.section, stated.mark, str(stated.rows)) for stated in once.values()}) == 1
    assert undated("electrodes/soil_resistivity").rows == once[EDITIONS[-1]].rows


def test_figures_that_an_edition_changed_are_never_read_without_one():
    with pytest.raises(RuleError, match="places/emergency_disconnect: 2020 has other figures"):
        undated("places/emergency_disconnect")
    assert {stated.value for stated in every_edition("places/emergency_disconnect")} == {"required", "not required"}
