"""The margin of an answer as plain data."""

from __future__ import annotations

from collections.abc import Sequence

from calc.data_file import Data
from calc.margin.search import UP, Turn


def margin_to_list(turns: Sequence[Turn]) -> list[Data]:
    """Return turns as plain data."""
    return [
        {
            "field": each.field,
            "unit": each.unit,
            "value": each.value,
            "turns_at": each.turns_at,
            "direction": "up" if each.direction == UP else "down",
            "included": each.included,
            "becomes": each.becomes,
        }
        for each in turns
    ]
