"""A name in a link that no field has: the nearest is offered, all else is kept; only listed trackers are ignored."""

import pytest

from calc import CALCULATORS, main_bonding_jumper, permalink
from calc.unknown_name import nearest


def fix(query):
    return main_bonding_jumper.run(permalink.read(query)).fix


@pytest.mark.parametrize(
    ("written", "field"),
    [
        ("conducter", "conductor"),
        ("cunductor", "conductor"),
        ("Conductor", "conductor"),
        ("set", "sets"),
        ("conductor-metal", "conductor_metal"),
        ("conductor metl", "conductor_metal"),
        ("systemgrounding", "system_grounding"),
    ],
)
def test_the_nearest_field_is_offered(written, field):
    assert nearest(written, main_bonding_jumper.fields) == field
    (unknown,) = fix(f"conductor=3/0&{written}=2" if field != "conductor" else f"{written}=3/0&conductor=3/0")
    assert unknown.near == field and f"The nearest is {field}, “" in str(unknown.words)


@pytest.mark.parametrize("written", ["colour", "x", "", "utm-source", "🔥", "m" * 300])
def test_a_name_like_none_offers_none(written):
    assert nearest(written, main_bonding_jumper.fields) is None


def test_every_field_of_every_calculator_is_nearest_to_itself():
    for calculator in CALCULATORS.values():
        assert all(nearest(name, calculator.fields) == name for name in calculator.fields)


@pytest.mark.parametrize("name", ["utm_source", "utm_campaign", "fbclid", "gclid"])
def test_what_counts_visits_is_ignored_and_told(name):
    query = f"edition=2023&conductor=3/0&{name}=abc"
    assert main_bonding_jumper.run(permalink.read(query)).answer_code == "4-copper"
    assert permalink.trackers(query) == (name,)


@pytest.mark.parametrize("name", ["utm", "ref", "source", "fbclid2", "msclkid", "xutm_source"])
def test_no_other_name_is_ignored(name):
    """What looks like a tracker may be a mistyped input."""
    query = f"conductor=3/0&{name}=2"
    assert [each.field for each in fix(query)] == [name] and permalink.trackers(query) == ()
