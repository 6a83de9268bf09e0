"""A field for a length or an area, in any unit of its kind."""

from __future__ import annotations

from calc.declare import Field
from calc.units import read_quantity
from calc.vocabulary import whole
from calc.words import Sentence
from calc.working import shown_number

FINEST = 9  # decimals kept, so that 72 in is 6 ft


def measured(
    label: Sentence, hint: Sentence, enter: Sentence, unit: str, most: int, *, zero: bool = True, rare: bool = False
) -> Field:
    """Give a field for a number up to `most` in `unit`; other units and inch and foot marks are converted.

    `zero`: whether 0 is taken.
    """

    def read(text: str) -> float:
        value = round(read_quantity(text, unit), FINEST)
        if not 0 <= value <= most or (value == 0 and not zero):
            raise ValueError(text)
        return whole(value)

    return Field(label, hint, enter, read, show=lambda value: f"{shown_number(value)} {unit}", rare=rare)
