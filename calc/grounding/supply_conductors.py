"""The ungrounded conductors to several disconnects or systems, as a list: "3/0,2x250kcmil"."""

from __future__ import annotations

import re

from calc.calculator import Field
from calc.conductors.area import area
from calc.conductors.size import read_size, shown_size
from calc.field import UnclearError
from calc.messages import Message, message
from calc.shared_fields import MAX_SETS, SIZES

_ONE = re.compile(r"(?:(?P<sets>[1-9]\d?) ?(?:[x×]|-(?!0)) ?)?(?P<size>.+)", re.IGNORECASE)
_CABLE = re.compile(r"\s*\d{1,2} ?- ?\d{1,2}\s*")
_THOUSANDS = re.compile(r"(?<![\d/])[12],(?:000|[257][05]0)(?!\d)", re.IGNORECASE)


def other_conductors(label: Message, hint: Message, most: int) -> Field:
    """Return a field for up to `most` further sets of conductors; left out where there are no others."""

    def read(text: str) -> str:
        if _THOUSANDS.search(text):
            raise UnclearError(message("Enter 1500 kcmil without a comma, and 1 AWG and 500 kcmil as 1, 1x500."))
        written = text.split(",")
        if any(map(_CABLE.fullmatch, written)):
            raise UnclearError(
                message("6-3 can be a cable with three 6 AWG conductors: enter 6. For six 3 AWG conductors enter 6x3.")
            )
        sets = [_read_one(each) for each in written]
        if len(sets) > most:
            raise ValueError(text)
        return ",".join(_written(*each) for each in sets)

    enter = message(
        "Enter up to {most} sizes separated by commas, for example 3/0,1/0. Enter 2x250kcmil for two conductors in "
        "parallel.",
        most=most,
    )
    return Field(label, hint, enter, read, show=_shown, rare=True, items=(1, most), domain=SIZES)


def _written(count: int, size: str) -> str:
    """Return a set as links carry it: "3/0", "2x250kcmil"; 1x500kcmil, for "1,500kcmil" could be one size."""
    return f"{count}x{size}" if count > 1 or size.endswith("kcmil") else size


def sets_of(listed: str | None) -> list[tuple[int, str]]:
    """Return (conductors in parallel, size label) of each set that a list names.

    >>> sets_of("3/0,2x250kcmil"), sets_of(None)
    ([(1, '3/0'), (2, '250kcmil')], [])
    """
    return [] if listed is None else [_read_one(each) for each in listed.split(",")]


def area_of(sets: int, size: str, edition: str) -> int:
    """Return the area of a set, cmil.

    >>> area_of(2, "250kcmil", "2023")
    500000
    """
    return sets * area(size, edition)


def shown_set(sets: int, size: str) -> str:
    """Return a set as it is read out: "3/0 AWG", "2 × 250 kcmil"."""
    return f"{sets} × {shown_size(size)}" if sets > 1 else shown_size(size)


def _shown(listed: str) -> str:
    return ", ".join(shown_set(*each) for each in sets_of(listed))


def _read_one(text: str) -> tuple[int, str]:
    written = _ONE.fullmatch(" ".join(text.split()))
    if not written or int(written["sets"] or 1) > MAX_SETS:
        raise ValueError(text)
    return int(written["sets"] or 1), read_size(written["size"])
