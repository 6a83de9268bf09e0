"""Areas of conductors in integer circular mils, and the next listed size up."""

from __future__ import annotations

from functools import cache

from calc.editions import EDITIONS
from calc.rulebook import rule, undated

AREA_RULE = "conductors/area"


@cache
def listed_sizes(edition: str) -> dict[str, int]:
    """Return every listed size label with its area, cmil, from the smallest to the largest.

    Source: rule conductors/area (the conductor properties table of the edition).
    """
    return {row["size"]: row["cmil"] for row in rule(AREA_RULE, edition).rows}


@cache
def sizes_of_any_edition() -> dict[str, int]:
    """Return every size label that some edition lists, with its area, cmil, from the smallest to the largest."""
    listed = {label: cmil for edition in EDITIONS for label, cmil in listed_sizes(edition).items()}
    return dict(sorted(listed.items(), key=lambda pair: pair[1]))


def undated_area(label: str) -> int:
    """Return the area of a size label, cmil, for what is told no edition: the gauge is a definition.

    Raises: KeyError for an AWG label that is not listed, RuleError where the editions list it differently.
    """
    return area(label, undated(AREA_RULE).edition)


def area(label: str, edition: str) -> int:
    """Return the area of a size label, cmil. A kcmil label is an area by definition, listed or not.

    Raises: KeyError for an AWG label that is not listed.

    >>> area("4/0", "2023"), area("1100kcmil", "2023")
    (211600, 1100000)
    """
    if label.endswith("kcmil"):
        return int(label.removesuffix("kcmil")) * 1000
    return listed_sizes(edition)[label]


def next_listed_size(least_area: float, edition: str) -> str | None:
    """Return the smallest listed size of at least `least_area` cmil, or None above the last one.

    >>> next_listed_size(262_500, "2023"), next_listed_size(250_000, "2023")
    ('300kcmil', '250kcmil')
    """
    return next((label for label, cmil in listed_sizes(edition).items() if cmil >= least_area), None)
