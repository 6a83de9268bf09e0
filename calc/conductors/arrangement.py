"""In how many raceways or cables parallel sets run. Where nobody said, an answer gives both ends."""

from __future__ import annotations

from dataclasses import replace

from calc.field import Field
from calc.messages import Message, message
from calc.shared_fields import MAX_SETS, whole_number


def raceways_of(hint: Message) -> Field:
    """Return the field for the number of raceways or cables; left out, nobody has said it."""
    field = whole_number(message("Raceways or cables for the sets in parallel"), hint, 1, MAX_SETS)
    return replace(field, hint=message("{hint} Leave it empty if it is not known.", hint=hint))


def arrangements(sets: int, raceways: int | None) -> tuple[int, ...]:
    """Return the numbers of raceways to reckon with: the one entered, else all sets in one and each set in its own.

    >>> arrangements(3, 3), arrangements(1, None), arrangements(3, None)
    ((3,), (1,), (1, 3))
    """
    if raceways is not None:
        return (raceways,)
    return (1,) if sets == 1 else (1, sets)
