"""Expected figures by edition: each is named with the edition from which it stands."""

from calc.editions import EDITIONS
from calc.rulebook import rule


def since(expected: dict[str, object]) -> dict[str, object]:
    """Return what is expected of every edition: what the newest named one, of its own year or before, has.

    Adding an edition changes nothing here until its book says otherwise; then one name and figure are added.
    """
    return {edition: expected[max(named for named in expected if named <= edition)] for edition in EDITIONS}


def values(key: str) -> dict[str, object]:
    """Return the value of a rule by edition."""
    return {edition: rule(key, edition).value for edition in EDITIONS}


def rows(key: str) -> dict[str, list]:
    """Return the rows of a rule by edition."""
    return {edition: list(rule(key, edition).rows) for edition in EDITIONS}
