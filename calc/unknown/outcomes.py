"""What all completions of a run come to: one plain answer, or an answer that depends, and on what."""

from __future__ import annotations

from collections.abc import Hashable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from calc.answer import Answer
from calc.calculator import Calculator, Correction, FieldError, Result
from calc.messages import Message, message
from calc.trace import Trace
from calc.unknown.completions import Completion, Completions, completions
from calc.unknown.conditions import condition_words, shortest_condition
from calc.unknown.outcome_words import mark_of, outcome_words, short_words
from calc.unknown.question import Question, the_question
from calc.unknown.safe_side import Rank, on_the_safe_side, safe_side
from calc.unknown.states import Open

MAX_ALTERNATIVES = 4

Marked = tuple[Mapping[str, Any], Hashable]  # a settled case, and what tells its outcome from others


@dataclass(frozen=True)
class Alternative:
    """One outcome that the open inputs leave, and the shortest condition that leads to it."""

    when: Message
    result: Result
    beside: Result | None = None

    @property
    def words(self) -> Message:
        """Return the outcome in one sentence; without the words that repeat one value of what is open."""
        if self.result.answer and safe_side(self.result.calculator.slug).by_code:
            return short_words(self.result.answer)
        return outcome_words(self.result, self.beside)


@dataclass(frozen=True)
class Depends:
    """What an answer depends on. `safe`: the answer on the safe side in every case, None where there is none.

    `alternatives`: the outcomes shown, the safe one first; `more`: how many others there are. `fields`: the open
    inputs that decide, `without`: those that do not. `only_ends`: inputs of which only the ends were worked out.
    """

    safe: Answer | None
    alternatives: tuple[Alternative, ...]
    more: int
    ask: Question
    fields: tuple[str, ...]
    without: tuple[str, ...]
    only_ends: tuple[str, ...] = ()

    @property
    def answer_code(self) -> str:
        """The outcome as a link carries it."""
        return f"depends-{self.safe.answer_code}" if self.safe else "depends"

    @property
    def safe_words(self) -> Message:
        """Return the safe answer, or that there is none."""
        if self.safe:
            return self.safe.in_one_line
        return message("No one answer is on the safe side in every case.")


def resolved(calculator: Calculator, edition: str, inputs: Mapping[str, Any]) -> Result:
    """Return the outcome of inputs of which some are open."""
    opened = [name for name, value in inputs.items() if isinstance(value, Open)]
    try:
        found = completions(calculator, edition, inputs, lambda result: mark_of(result, opened))
    except FieldError as error:
        field = calculator.fields[error.field]
        fix = Correction(error.field, field.label, error.words or field.enter)
        return Result(calculator, edition, inputs, "fix", Trace(edition), fix=(fix,))
    marked = [(case.settled, mark_of(case.result, opened)) for case in found.cases]
    first = _at_defaults(calculator, found.cases)
    if len({mark for _, mark in marked}) == 1:
        return _plain(calculator, first.result, opened, [case.result for case in found.cases])
    return _depending(calculator, found, marked, first)


def _at_defaults(calculator: Calculator, cases: Sequence[Completion]) -> Completion:
    """Return the case in which most open inputs stand at their default, the first of these."""
    defaults = calculator.defaults
    return max(cases, key=lambda case: sum(defaults.get(name) == value for name, value in case.settled.items()))


def _plain(calculator: Calculator, result: Result, opened: Sequence[str], others: Sequence[Result]) -> Result:
    """Return the one outcome, with the note that the open inputs do not decide it.

    Values that are not the same in all cases are left out, and what the working is of is said.
    """
    result.trace.notes.insert(0, without_words(calculator, opened))
    if result.answer is None:
        return result
    values = result.answer.values
    beside = [each.answer for each in others if each.answer]
    differing = {name for name in values if any(each.values.get(name) != values[name] for each in beside)}
    if differing - set(opened):
        result.trace.notes.insert(1, _worked_out_for(calculator, result, opened))
    left_out = dict.fromkeys(differing | set(opened) & set(values))
    return replace(result, answer=replace(result.answer, values={**values, **left_out}))


def _worked_out_for(calculator: Calculator, result: Result, opened: Sequence[str]) -> Message:
    fields = ((calculator.fields[name], result.inputs[name]) for name in opened)
    shown = "; ".join(f"{field.label}: {field.shown(value)}" for field, value in fields)
    return message("Figures and working below are of one case: {inputs}.", inputs=shown)


def without_words(calculator: Calculator, names: Sequence[str]) -> Message:
    """Return the note that the answer is the same whatever these inputs are."""
    labels = "; ".join(str(calculator.fields[name].label) for name in names)
    return message("Does not depend on: {labels}.", labels=labels)


def _depending(calculator: Calculator, found: Completions, marked: Sequence[Marked], first: Completion) -> Result:
    """Return the outcome where the open inputs decide."""
    groups: dict[Hashable, list[Completion]] = {}
    for case, (_, mark) in zip(found.cases, marked, strict=True):
        groups.setdefault(mark, []).append(case)
    safe = _safe(calculator, groups, first)
    shown = list(groups.items())
    if len(shown) <= MAX_ALTERNATIVES:
        shown.sort(key=lambda group: _demand(calculator, group[1][0].result), reverse=True)
    if safe:
        shown.sort(key=lambda group: safe not in group[1])  # a stable sort: the safe one first, the others as they were
    alternatives = tuple(
        Alternative(_when(calculator, found, mark, marked), cases[0].result, shown[0][1][0].result)
        for mark, cases in shown[:MAX_ALTERNATIVES]
    )
    without = tuple(name for name in found.domains if not _decides(name, marked))
    edition = first.result.edition
    depends = Depends(
        safe=safe.result.answer if safe else None,
        alternatives=alternatives,
        more=len(shown) - len(alternatives),
        ask=the_question(calculator.fields, marked),
        fields=tuple(name for name in found.domains if name not in without),
        without=without,
        only_ends=found.only_ends,
    )
    trace = safe.result.trace if safe else Trace(edition)
    trace.notes[:0] = _notes(calculator, depends)
    return Result(calculator, edition, first.result.inputs, "depends", trace, depends=depends)


def _notes(calculator: Calculator, depends: Depends) -> list[Message]:
    notes = [without_words(calculator, depends.without)] if depends.without else []
    if depends.safe:
        notes.insert(0, message("Working, notes and sections below are those of the safe answer."))
    if depends.only_ends:
        labels = "; ".join(str(calculator.fields[name].label) for name in depends.only_ends)
        words = message("Worked out at single values of: {labels}. Between them other answers lie.", labels=labels)
        notes.append(words)
    return notes


def _safe(
    calculator: Calculator, groups: Mapping[Hashable, Sequence[Completion]], first: Completion
) -> Completion | None:
    """Return the case whose answer is on the safe side of every other; of equals the one nearest to the defaults."""
    rank = safe_side(calculator.slug).rank
    cases = [case for group in groups.values() for case in group]
    if rank is None or safe_side(calculator.slug).purposes or any(case.result.answer is None for case in cases):
        return None
    each = [first, *(group[0] for group in groups.values())]
    ranks: list[Rank] = [rank(case.result.answered) for case in each]
    all_ranks = {rank(case.result.answered) for case in cases}
    for case, own in zip(each, ranks, strict=True):
        if all(on_the_safe_side(own, other) for other in all_ranks):
            return case
    return None


def _demand(calculator: Calculator, result: Result) -> tuple[Any, ...]:
    """Return how much an outcome asks for, to put the most demanding first; what is not answered comes last."""
    rank = safe_side(calculator.slug).rank
    if result.answer is None:
        return (0, result.outcome == "not_covered")
    return (1, [amount for _, amount in rank(result.answer)] if rank else [])


def _when(calculator: Calculator, found: Completions, mark: Hashable, marked: Sequence[Marked]) -> Message:
    inside = [settled for settled, each in marked if each == mark]
    outside = [settled for settled, each in marked if each != mark]
    return condition_words(shortest_condition(inside, outside, found.domains), calculator.fields, found.domains)


def _decides(name: str, marked: Sequence[Marked]) -> bool:
    """Tell whether any case changes its outcome with this input alone."""
    seen: dict[tuple[Any, ...], Hashable] = {}
    for settled, mark in marked:
        others = tuple(value for other, value in settled.items() if other != name)
        if seen.setdefault(others, mark) != mark:
            return True
    return False
