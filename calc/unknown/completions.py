"""Every way in which the open inputs of a run can be settled, and what the calculator gives for each.

Choices, sizes and whole numbers of few values are gone through. Other numbers are bounded: a calculator declares in
which direction each pushes its answer (`calc.unknown.safe_side`); then equal answers at two ends hold between them,
and where they differ the turning points are found by halving. Where nothing is declared, nothing is guessed.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import product
from math import prod
from typing import Any

from calc.calculator import Calculator, FieldError, Result
from calc.field import Field
from calc.messages import message
from calc.unknown.numbers import between
from calc.unknown.safe_side import safe_side
from calc.unknown.states import Open, Range, place
from calc.unknown.stretches import Stretch, turning_points
from calc.unknown.turns import starts_of

MAX_CASES = 4096
MAX_CASES_OF_HEAVY = 64
MAX_WHOLE = 128
NOT_A_STATE = ("not-given", "not-sure")  # choices that say that nothing was entered

Case = Mapping[str, Any]


@dataclass(frozen=True)
class Completion:
    """One way to settle the open inputs: a value or stretch of each, and what the calculator gives."""

    settled: Case
    result: Result


@dataclass(frozen=True)
class Completions:
    """All completions that can be. `domains`: the values gone through of each open input, in their order.

    `only_ends`: the inputs of which only the ends were worked out, so that answers may lie between those found.
    `impossible`: how many were left out because the calculator has no such case: it refuses the open value itself.
    """

    cases: tuple[Completion, ...]
    domains: Mapping[str, tuple[Any, ...]]
    only_ends: tuple[str, ...] = ()
    impossible: int = 0


def completions(
    calculator: Calculator, edition: str, inputs: Case, key: Callable[[Result], Hashable]
) -> Completions:
    """Return every completion of `inputs`. Raises: FieldError for a field that must be entered first.

    key: tells outcomes apart.
    """
    opened = [name for name, value in inputs.items() if isinstance(value, Open)]
    listed = {name: values for name in opened if (values := _listed(calculator.fields[name], inputs[name]))}
    numbers = [name for name in opened if name not in listed]
    for name in numbers:
        _refuse_unbounded(calculator, name, inputs)
    ends = {name: _ends(calculator, edition, inputs, name) for name in numbers}
    _refuse_too_many(calculator, {**listed, **ends})

    def run(settled: Case) -> Result:
        return calculator.settled(edition, {**inputs, **settled})

    if len(numbers) == 1 and not safe_side(calculator.slug).figures:
        stepped = _stepped(calculator, edition, inputs, listed, numbers[0], run, key)
        if stepped:
            return _possible(stepped, {**listed, numbers[0]: ()}, opened)
    cases = [
        Completion(settled | at_end, run(settled | {name: end.low for name, end in at_end.items()}))
        for settled in _settled(calculator, inputs, listed)
        for at_end in (dict(zip(ends, chosen, strict=True)) for chosen in product(*ends.values()))
    ]
    return _possible(cases, {**listed, **ends}, opened, tuple(numbers))


def _listed(field: Field, value: Open) -> tuple[Any, ...]:
    """Return the values of an input that can be gone through; none for a number that must be bounded."""
    if field.domain and isinstance(value, Range):
        return tuple(size for size in field.domain if _within(field, size, value))
    if field.kind == "choice":
        return tuple(choice.value for choice in field.choices if choice.value not in NOT_A_STATE)
    if field.kind == "size":
        return field.domain
    if field.kind == "whole number":
        low, high = (value.low, value.high) if isinstance(value, Range) else field.whole_numbers
        return tuple(range(low, high + 1)) if high - low < MAX_WHOLE else ()
    return ()


def _within(field: Field, size: str, value: Range) -> bool:
    return place(field, value.low) <= place(field, size) <= place(field, value.high)


def _refuse_unbounded(calculator: Calculator, name: str, inputs: Case) -> None:
    """Raise FieldError for an open input that can be neither gone through nor bounded."""
    declared, field = safe_side(calculator.slug), calculator.fields[name]
    if name in declared.not_zero and _low_and_high(field, inputs[name])[0] == 0:
        why = message("0 stands for none here, or for one that is not known: begin the range above it.")
    elif not declared.bounds(name, inputs) or field.kind not in ("quantity", "whole number"):
        why = declared.enter.get(name, message("Nothing is safe to say without it."))
    else:
        return
    words = message("No bounds can be given for an unknown or a range here. {why} {enter}", why=why, enter=field.enter)
    raise FieldError(name, words)


def _refuse_too_many(calculator: Calculator, listed: Mapping[str, Sequence[Any]]) -> None:
    """Raise FieldError for the input of most values where there are more completions than are gone through."""
    count = prod(map(len, listed.values()))
    most = MAX_CASES_OF_HEAVY if safe_side(calculator.slug).heavy else MAX_CASES
    if count <= most:
        return
    first = max(listed, key=lambda name: len(listed[name]))
    names = "; ".join(str(calculator.fields[name].label) for name in listed)
    raise FieldError(
        first,
        message(
            "Too much is unknown at once: {count} cases, and at most {most} are worked out. None was. "
            "Enter this first. Unknown now: {names}.",
            count=f"{count:,}",
            most=f"{most:,}",
            names=names,
        ),
    )


def _settled(calculator: Calculator, inputs: Case, listed: Mapping[str, Sequence[Any]]) -> Iterator[dict[str, Any]]:
    """Yield the ways to settle what is gone through; an input that does not count there stands at its default."""
    seen: set[tuple[Any, ...]] = set()
    for chosen in product(*listed.values()):
        settled = dict(zip(listed, chosen, strict=True))
        for name in listed:
            if name in calculator.defaults and not counts(calculator.fields[name], {**inputs, **settled}):
                settled[name] = calculator.defaults[name]
        marks = tuple(settled.values())
        if marks not in seen:
            seen.add(marks)
            yield settled


def counts(field: Field, inputs: Case) -> bool:
    """Tell whether a field counts at all beside the other inputs; beside an open one it does."""
    return all(
        isinstance(inputs.get(other), Open) or str(inputs.get(other)) in values
        for other, values in field.relevant_when.items()
    )


def _low_and_high(field: Field, value: Open) -> tuple[float, float]:
    return (value.low, value.high) if isinstance(value, Range) else field.ends


def _grid(field: Field, value: Open) -> Sequence[float]:
    """Return the values of a number that are looked at: whole ones of a rating in amperes, as ratings are made."""
    integers = bool(field.whole_numbers) or (field.unit == "A" and field.ends[0] >= 1)
    return between(*_low_and_high(field, value), integers=integers)


def _ends(calculator: Calculator, edition: str, inputs: Case, name: str) -> tuple[Stretch, ...]:
    """Return the two ends of a number, and on both sides of each value where its direction may turn."""
    grid = _grid(calculator.fields[name], inputs[name])
    starts = starts_of(calculator.slug, name, inputs, edition, grid)
    places = sorted({0, len(grid) - 1, *starts, *(start - 1 for start in starts)})
    return tuple(Stretch(grid[place], grid[place]) for place in places)


def _stepped(
    calculator: Calculator,
    edition: str,
    inputs: Case,
    listed: Mapping[str, Sequence[Any]],
    name: str,
    run: Callable[[Case], Result],
    key: Callable[[Result], Hashable],
) -> list[Completion] | None:
    """Return the completions where one number is open: its stretches of one outcome; None for too many of them."""
    grid = _grid(calculator.fields[name], inputs[name])
    worst_last = name in (*safe_side(calculator.slug).rising, *safe_side(calculator.slug).turns)
    found: list[tuple[dict[str, Any], list[int]]] = []
    for settled in _settled(calculator, inputs, listed):

        def at(value: float, beside: Case = settled) -> Result:
            return run({**beside, name: value})

        starts = starts_of(calculator.slug, name, {**inputs, **settled}, edition, grid)
        turns = turning_points(grid, at, key, starts)
        if turns is None:
            return None
        found.append((settled, turns))
    # Each turning point of one case cuts the stretches of all, so that a stretch means the same everywhere.
    cuts = sorted({first for _, turns in found for first in turns})
    stretches = list(zip(cuts, [*(cut - 1 for cut in cuts[1:]), len(grid) - 1], strict=True))
    cases: list[Completion] = []
    for settled, turns in found:
        ends = [*(turn - 1 for turn in turns[1:]), len(grid) - 1]
        whole = [(first, last, run({**settled, name: grid[last if worst_last else first]}))
                 for first, last in zip(turns, ends, strict=True)]  # fmt: skip
        cases += [
            Completion({**settled, name: Stretch(grid[first], grid[last])}, result)
            for first, last in stretches
            for low, high, result in whole
            if low <= first and last <= high
        ]
    return cases


def _possible(
    cases: Sequence[Completion],
    domains: Mapping[str, tuple[Any, ...]],
    opened: Sequence[str],
    only_ends: tuple[str, ...] = (),
) -> Completions:
    """Return the completions without those that the calculator refuses for the very value that is open."""
    possible = [case for case in cases if not any(fix.field in opened for fix in case.result.fix)]
    if not possible:
        raise FieldError(cases[0].result.fix[0].field, cases[0].result.fix[0].words)
    domains = {
        name: values or tuple(sorted({case.settled[name] for case in possible})) for name, values in domains.items()
    }
    return Completions(tuple(possible), domains, only_ends, len(cases) - len(possible))
