"""Every rule key that was ever published states a fact still, in every edition."""

from calc import EDITIONS
from calc.rulebook import aliases, rule, rule_keys
from tests.published.registry import document

STATED = document("rules")["keys"]


def test_every_published_rule_key_still_gives_a_rule():
    known = {*rule_keys(), *aliases()}
    gone = [key for key in STATED if key not in known]
    needed = "a file that moved needs a line in moved.toml, a fact that another rule states a line in aliases.toml"
    assert not gone, f"{gone} were published: {needed}"
    assert all(rule(key, edition).section for key in aliases() for edition in EDITIONS)


def test_every_rule_key_is_published():
    new = sorted({*rule_keys(), *aliases()} - set(STATED))
    assert not new, f"add {new} to `keys` in site_assets/published/rules.toml, as `python -m tests.published` does"


def test_a_rule_is_cited_by_the_key_it_was_published_under():
    assert all(rule(key, "2023").key == key for key in rule_keys())
    assert len(STATED) == len(set(STATED))
