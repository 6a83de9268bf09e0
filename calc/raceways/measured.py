"""A field for a length or an area, in any unit of its kind."""

from __future__ import annotations

from calc.declare import Field
from calc.vocabulary import amount
from calc.words import Sentence


def measured(
    label: Sentence, hint: Sentence, enter: Sentence, unit: str, most: int, *, zero: bool = True, rare: bool = False
) -> Field:
    """Give a field for a number up to `most` in `unit`; other units and inch and foot marks are converted.

    `zero`: whether 0 is taken.
    """
    return amount(label, hint, enter, unit, 0, most, zero=zero, number=False, rare=rare)
