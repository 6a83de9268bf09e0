"""The stretches of a number in which a calculator has one outcome, found by halving between its turning points."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass
from itertools import pairwise

MAX_STEPS = 40


@dataclass(frozen=True, order=True)
class Stretch:
    """The values of a number from `low` to `high`, all with one outcome; one value where they are the same."""

    low: float
    high: float


def turning_points[R](
    grid: Sequence[float], run: Callable[[float], R], key: Callable[[R], Hashable], starts: Sequence[int] = ()
) -> list[int] | None:
    """Return where on a grid each outcome begins, found by halving; None for more than MAX_STEPS of them.

    starts: where on the grid to begin anew, as an outcome may come back from there on.
    """
    turns: list[int] = []
    before: Hashable = None
    for start, end in pairwise((0, *starts, len(grid))):
        first, last = start, end - 1
        last_key = key(run(grid[last]))
        while first <= last:
            here = key(run(grid[first]))
            if not turns or here != before:
                turns.append(first)
            if len(turns) > MAX_STEPS:
                return None
            before = here
            same, other = (last, last) if here == last_key else (first, last)
            while other - same > 1:
                middle = (same + other) // 2
                same, other = (middle, other) if key(run(grid[middle])) == here else (same, middle)
            first = same + 1
    return turns
