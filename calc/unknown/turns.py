"""The values of a number at which its direction may turn: the figures of the rules that its calculator names."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

from calc.rulebook import rule
from calc.shared_fields import SETS
from calc.unknown.safe_side import safe_side
from calc.unknown.states import Open

MAX_SETS = (SETS.whole_numbers or (1, 1))[1]


def starts_of(slug: str, name: str, inputs: Mapping[str, Any], edition: str, grid: Sequence[float]) -> list[int]:
    """Return where on a grid of an input its direction may turn, ends left out: at each figure, and just above it.

    With sets in parallel the figures count for all of them together too, for each number of sets that may be.
    """
    sets = inputs.get("sets")
    counts = (sets, sets - 1) if isinstance(sets, int) else range(1, MAX_SETS + 1) if isinstance(sets, Open) else ()
    times = {1, *counts}
    figures = {
        figure * each for key in safe_side(slug).turns.get(name, ()) for figure in _figures(key, edition)
        for each in times
    }  # fmt: skip
    found = {place(grid, figure) for figure in figures for place in (bisect_left, bisect_right)}
    return sorted(found - {0, len(grid)})


@cache
def _figures(key: str, edition: str) -> tuple[float, ...]:
    """Return the numbers in the rows of a rule; where some are called ampere, these alone."""
    cells = [(name, each) for row in rule(key, edition).rows for name, each in row.items()
             if isinstance(each, int | float)]  # fmt: skip
    amperes = tuple(each for name, each in cells if name.endswith("ampere"))
    return amperes or tuple(each for _, each in cells)
