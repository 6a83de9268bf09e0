"""Interval bounds of a function over ranges of its inputs."""

from __future__ import annotations

import itertools
import random
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from calc.known import known

Evaluate = Callable[[dict[str, float]], dict[str, float]]
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


def ranged(inputs: Mapping[str, Between], evaluate: Evaluate) -> Ranged:
    """Return the results of `evaluate` at every corner of `inputs`, widened by seeded samples from inside.

    Corners alone are no bound: in a network with reactance the extreme may lie between them, so samples that fall
    outside widen the answer. influence: the share of each input, 0 to 1, from moving it alone over its range.

    >>> found = ranged({"ohm": Between(1, 2, 4)}, lambda at: {"ampere": 12 / at["ohm"]})
    >>> found.results["ampere"]
    Between(low=3.0, likely=6.0, high=12.0)
    """
    *_, found = ranged_in_steps(inputs, evaluate, at_once=SAMPLES)
    return known(found)


def ranged_in_steps(inputs: Mapping[str, Between], evaluate: Evaluate, at_once: int) -> Iterator[Ranged | None]:
    """Yield None after each `at_once` evaluations, so that the work can be given up between them, and `ranged` last."""
    likely = {name: between.likely for name, between in inputs.items()}
    moving = {name: between for name, between in inputs.items() if between.low != between.high}
    center = evaluate(likely)
    found = [center]
    for place in _places(moving):
        found.append(evaluate(likely | place))
        if len(found) % at_once == 0:
            yield None
    results = {
        name: Between(min(each[name] for each in found), value, max(each[name] for each in found))
        for name, value in center.items()
    }
    yield Ranged(results, _influence(moving, likely, evaluate, center))


def _places(moving: Mapping[str, Between]) -> Iterator[dict[str, float]]:
    """Yield each corner of the inputs that move, then the samples."""
    for corner in itertools.product(*((between.low, between.high) for between in moving.values())):
        yield dict(zip(moving, corner, strict=True))
    chance = random.Random(SEED)
    for _ in range(SAMPLES if moving else 0):
        yield {name: chance.triangular(each.low, each.high, each.likely) for name, each in moving.items()}


def _influence(
    moving: Mapping[str, Between], likely: dict[str, float], evaluate: Evaluate, center: dict[str, float]
) -> dict[str, tuple[tuple[str, float], ...]]:
    swings: dict[str, dict[str, float]] = {name: {} for name in center}
    for each, between in moving.items():
        ends = [evaluate(likely | {each: value}) for value in (between.low, between.high)]
        for name in center:
            swings[name][each] = abs(ends[1][name] - ends[0][name])
    ranked: dict[str, tuple[tuple[str, float], ...]] = {}
    for name, by_input in swings.items():
        whole = sum(by_input.values())
        shares = [(each, swing / whole if whole else 0.0) for each, swing in by_input.items()]
        ranked[name] = tuple(sorted(shares, key=lambda share: -share[1]))
    return ranked
