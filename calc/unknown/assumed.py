"""Inputs that nobody gave: each stands at its default, and the answer names those of which another value changes it.

Each default is tried against the other values of its field, one input at a time. Of a whole number the next value is
tried, so of one set two. Of heavy calculators, and of numbers without a natural other value, nothing is tried.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial
from typing import Any

from calc.calculator import Calculator, Result
from calc.messages import Message, message
from calc.unknown.completions import NOT_A_STATE, counts
from calc.unknown.outcome_words import mark_of, outcome_words
from calc.unknown.safe_side import on_the_safe_side, safe_side
from calc.unknown.states import WORD, Open

MAX_SHOWN = 3
_WORDS, _LESS, _NOT_COVERED, _OTHER, _MORE = range(5)
# A number that people leave at its default, and what it is where it is not that.
_OTHER_NUMBER = {"voltage_to_ground": 277, "electrode_ohm": 5, "voltage": 277}


@dataclass(frozen=True)
class Assumption:
    """An input left out. `decides`: whether another value changes the answer; None where that was not tried.

    `other` is the value that changes it most, and `otherwise` the outcome then; None where none does. `chosen`: of a
    list of choices, else typed.
    """

    field: str
    label: Message | str
    value: object
    shown: object
    decides: bool | None
    other: object = None
    otherwise: Message | None = None
    weight: tuple[Any, ...] = ()
    chosen: bool = False

    @property
    def words(self) -> Message:
        """Return what is assumed, and what the answer would be otherwise."""
        otherwise = str(self.otherwise).rstrip(".")
        words = dict(label=self.label, value=self.shown, other=self.other, otherwise=otherwise)
        if self.chosen:
            return message("{label}: {value}. If you choose “{other}” instead: {otherwise}.", **words)
        return message("{label}: {value}. If you enter {other} instead: {otherwise}.", **words)


def assumptions(result: Result) -> tuple[Assumption, ...]:
    """Return the inputs of an answer that were left out, those first that would ask for more."""
    if result.outcome != "answer":
        return ()
    tried = not safe_side(result.calculator.slug).heavy and not _is_open(result)
    each = [_assumption(result, name, tried=tried) for name in result.left_out if _counts(result, name)]
    return tuple(sorted(each, key=lambda one: one.weight, reverse=True))


def assumed_words(result: Result) -> list[Message]:
    """Return the assumptions that decide in words, at most three, and how many more there are."""
    deciding = [one for one in result.assumed if one.decides]
    words = [one.words for one in deciding[:MAX_SHOWN]]
    if len(deciding) > MAX_SHOWN:
        labels = "; ".join(str(one.label) for one in deciding[MAX_SHOWN:])
        count = len(deciding) - MAX_SHOWN
        words.append(
            message("{count} more decide: {labels}.", count=count, labels=labels)
            if count > 1
            else message("One more decides: {labels}.", labels=labels)
        )
    return words


def _is_open(result: Result) -> bool:
    return any(isinstance(value, Open) for value in result.inputs.values())


def _counts(result: Result, name: str) -> bool:
    """Tell whether an input can be assumed here: it counts, and its default is not that nothing is known."""
    value = result.inputs[name]
    return value not in (*NOT_A_STATE, WORD) and counts(result.calculator.fields[name], result.inputs)


def _assumption(result: Result, name: str, *, tried: bool) -> Assumption:
    calculator, value = result.calculator, result.inputs[name]
    field = calculator.fields[name]
    assumption = partial(Assumption, name, field.label, value, field.shown(value), chosen=bool(field.choices))
    others = list(_others(calculator, name, value)) if tried else []
    if not others:
        return assumption(decides=None)
    own = mark_of(result, (name,))
    found: list[tuple[tuple[Any, ...], Any, Result]] = []
    for other in others:
        outcome = calculator.settled(result.edition, {**result.inputs, name: other})
        if mark_of(outcome, (name,)) != own and not any(fix.field == name for fix in outcome.fix):
            found.append((_weight(result, outcome), other, outcome))
    if not found:
        return assumption(decides=False)
    weight, other, outcome = max(found, key=lambda each: each[0])
    shown = message("{other}", other=field.shown(other))
    return assumption(decides=True, other=shown, otherwise=_otherwise(outcome, result), weight=weight)


def _otherwise(outcome: Result, result: Result) -> Message:
    if outcome.not_covered:
        return message("not covered here")
    if outcome.fix:
        return message("first enter “{label}”", label=outcome.fix[0].label)
    return outcome_words(outcome, result)


def _others(calculator: Calculator, name: str, value: Any) -> Iterator[Any]:
    """Yield the values to try instead of a default."""
    field = calculator.fields[name]
    if field.kind == "choice":
        yield from (each.value for each in field.choices if each.value not in (value, *NOT_A_STATE, WORD))
    elif field.whole_numbers:
        low, high = field.whole_numbers
        yield value + 1 if value < high else low
    elif name in _OTHER_NUMBER and _OTHER_NUMBER[name] != value:
        yield _OTHER_NUMBER[name]


def _weight(result: Result, outcome: Result) -> tuple[Any, ...]:
    """Return how much another outcome matters: more asked, another metal, not covered, less asked, other words."""
    if outcome.answer is None:
        return (_NOT_COVERED if outcome.not_covered else _LESS, 0.0)
    rank = safe_side(result.calculator.slug).rank
    if rank is None:
        return (_OTHER, 0.0)
    own, other = rank(result.answered), rank(outcome.answer)
    if own == other:
        return (_WORDS, 0.0)
    level = _LESS if on_the_safe_side(own, other) else _MORE if on_the_safe_side(other, own) else _OTHER
    return (level, sum(amount for _, amount in other))
