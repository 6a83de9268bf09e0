"""What comes out when every input may be anywhere between a low and a high value."""

from __future__ import annotations

import itertools
import random
from collections.abc import Callable, Mapping
from dataclasses import dataclass

SAMPLES = 200
SEED = 20


@dataclass(frozen=True)
class Between:
    """An input or a result: the lowest, the likely and the highest value."""

    low: float
    likely: float
    high: float


@dataclass(frozen=True)
class Ranged:
    """Results by name, and for each how much of its spread each input makes alone, the largest first."""

    results: Mapping[str, Between]
    influence: Mapping[str, tuple[tuple[str, float], ...]]


def ranged(inputs: Mapping[str, Between], evaluate: Callable[[dict[str, float]], dict[str, float]]) -> Ranged:
    """Give the results of `evaluate` at every corner of `inputs`, widened by seeded samples from inside.

    Corners alone are no bound: in a network with reactance the extreme may lie between them, so samples that fall
    outside widen the answer. influence: the share of each input, 0 to 1, from moving it alone over its range.

    >>> found = ranged({"ohm": Between(1, 2, 4)}, lambda at: {"ampere": 12 / at["ohm"]})
    >>> found.results["ampere"]
    Between(low=3.0, likely=6.0, high=12.0)
    """
    likely = {name: between.likely for name, between in inputs.items()}
    moving = {name: between for name, between in inputs.items() if between.low != between.high}
    center = evaluate(likely)
    found = [center]
    for corner in itertools.product(*((between.low, between.high) for between in moving.values())):
        found.append(evaluate(likely | dict(zip(moving, corner, strict=True))))
    chance = random.Random(SEED)
    for _ in range(SAMPLES if moving else 0):
        drawn = {name: chance.triangular(each.low, each.high, each.likely) for name, each in moving.items()}
        found.append(evaluate(likely | drawn))
    results = {
        name: Between(min(each[name] for each in found), value, max(each[name] for each in found))
        for name, value in center.items()
    }
    return Ranged(results, _influence(moving, likely, evaluate, center))


def _influence(moving, likely, evaluate, center) -> dict[str, tuple[tuple[str, float], ...]]:
    swings: dict[str, dict[str, float]] = {name: {} for name in center}
    for each, between in moving.items():
        ends = [evaluate(likely | {each: value}) for value in (between.low, between.high)]
        for name in center:
            swings[name][each] = abs(ends[1][name] - ends[0][name])
    ranked = {}
    for name, by_input in swings.items():
        whole = sum(by_input.values())
        shares = [(each, swing / whole if whole else 0.0) for each, swing in by_input.items()]
        ranked[name] = tuple(sorted(shares, key=lambda share: -share[1]))
    return ranked
