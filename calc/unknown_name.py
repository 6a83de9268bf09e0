"""A name that no field has, in a link or a table: what it may have meant. Names that only count visits are ignored."""

from __future__ import annotations

from collections.abc import Mapping

from calc.field import Field, truncate
from calc.messages import message
from calc.result import Correction

# What other sites add to a link when it is shared, to count visits; it says nothing of the case.
TRACKERS = ("fbclid", "gclid")
TRACKER_BEGINS = "utm_"
_LETTERS_PER_SLIP = 3  # one letter wrong, left out or too many for each three of the name


def is_tracker(name: str) -> bool:
    """Tell whether a name in a link is one that others add to count visits.

    >>> is_tracker("utm_source"), is_tracker("fbclid"), is_tracker("sets")
    (True, True, False)
    """
    return name in TRACKERS or name.startswith(TRACKER_BEGINS)


def no_such_field(name: str, fields: Mapping[str, Field]) -> Correction:
    """Return what to do about a name that none of the fields has, with the nearest that one has."""
    shown = truncate(name)
    names = ", ".join(["edition", *fields])
    near = nearest(shown, fields)
    if near is None:
        words = message("There is no field with this name. The fields are {names}.", names=names)
    else:
        words = message(
            "There is no field with this name. The nearest is {near}, “{label}”. The fields are {names}.",
            near=near,
            label=fields[near].label,
            names=names,
        )
    return Correction(shown, shown, words, near or "")


def nearest(name: str, fields: Mapping[str, Field]) -> str | None:
    """Return the field whose name is the nearest to one that was written, None where none is near."""
    wanted = name.lower().replace("-", "_").replace(" ", "_")
    slips = {each: _slips(wanted, each) for each in fields}
    found = min(slips, key=lambda each: slips[each])
    return found if slips[found] * _LETTERS_PER_SLIP <= len(found) else None


def _slips(one: str, other: str) -> int:
    """Return how many letters are to be changed, put in or taken out to make one name of the other."""
    row = list(range(len(other) + 1))
    for place, letter in enumerate(one, start=1):
        before, row[0] = row[0], place
        for column, wanted in enumerate(other, start=1):
            before, row[column] = row[column], min(
                row[column] + 1, row[column - 1] + 1, before + (letter != wanted)
            )
    return row[-1]
