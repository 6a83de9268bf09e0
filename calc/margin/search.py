"""The smallest change of one input that changes the answer, up and down."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from calc.answer import Answer
from calc.calculator import FieldError, NotCovered, Result
from calc.conductors.area import area, listed_sizes
from calc.conductors.size import read_size
from calc.field import Field
from calc.found.declared import FOUND
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.rulebook import rule
from calc.trace import TableRow, Trace
from calc.unknown.outcome_words import first_size_words
from calc.unknown.states import Open

UP, DOWN = 1, -1
FINE = 1e-8  # the share to which the limit of an amount is found, so that a figure of a rule is known in it
FIGURES = 4  # of an amount that is no figure of a rule
SMALLEST = 1e-9  # of an amount, in its unit
PAST = 1e-9  # a share of an amount: just past a figure of a rule
NOT_COVERED, FIX = "not-covered", "fix"


@dataclass(frozen=True)
class Turn:
    """One way to another answer: the input, its value now, and the value where the answer turns.

    field, unit: of the input; "size" for a conductor size, "" for a count. direction: 1 up, -1 down. included:
    whether turns_at itself already has the other answer, else all past it has. becomes: the other answer as links
    carry it, a verdict, "not-covered" or "fix"; words: the same for readers. area: the value is the area of all
    conductors together.
    """

    field: str
    unit: str
    value: Any
    turns_at: Any
    direction: int
    included: bool
    becomes: str
    words: Message
    area: bool = False


@dataclass(frozen=True)
class _End:
    """What one value of an input leads to."""

    code: str
    words: Message
    answered: bool = True


_Ends = Callable[[Any], _End]  # what a value of an input leads to
_Place = tuple[float, bool] | None  # where an answer turns, and whether that value has the other answer


def turns_of(result: Result) -> tuple[Turn, ...]:
    """Return the turns of an answer, each field up before down; none where the calculator declares no margin."""
    margin = result.calculator.margin
    if margin is None or result.answer is None or any(isinstance(value, Open) for value in result.inputs.values()):
        return ()
    inputs = {name: value for name, value in result.inputs.items() if name != FOUND}
    turns: list[Turn] = []
    for name in margin.fields:
        if inputs[name] is None or (name in margin.needs and inputs[margin.needs[name]] is None):
            continue
        at = _ends(result, name, inputs)
        for direction in (UP, DOWN):
            turns += _turn(result, margin, name, inputs, at, direction)
    return (*turns, *_of_the_row(result, inputs, turns))


def _ends(result: Result, name: str, inputs: Mapping[str, Any]) -> _Ends:
    """Return the function that gives what a value of the input `name` leads to, all else as entered."""
    margin = result.calculator.margin or Margin(())

    now = result.answered

    @cache
    def at(value: Any) -> _End:
        if value == inputs[name]:
            return _End(_code(now, margin), now.headline)
        try:
            answer = result.calculator.answer(Trace(result.edition), {**inputs, name: value})
        except NotCovered:
            return _End(NOT_COVERED, message("not covered"), answered=False)
        except FieldError as error:
            label = result.calculator.fields[error.field].label
            return _End(FIX, message("“{label}” is required", label=label), answered=False)
        return _End(_code(answer, margin), _words(answer, now))

    return at


def _code(answer: Answer, margin: Margin) -> str:
    return str(answer.values[margin.verdict]) if margin.verdict else answer.answer_code


def _words(answer: Answer, now: Answer) -> Message:
    """Return the headline of another answer, or its whole line where the headline is that of now; of a list a row."""
    if answer.table and now.table and "sizes" in answer.values:
        return first_size_words(answer, now)
    same = str(answer.headline) == str(now.headline)
    return message("{line}", line=answer.in_one_line) if same else answer.headline


def _turn(
    result: Result, margin: Margin, name: str, inputs: Mapping[str, Any], at: _Ends, direction: int
) -> Iterator[Turn]:
    field, value = result.calculator.fields[name], inputs[name]
    now, unit = at(value).code, "size" if field.read is read_size else field.unit
    found = None
    if (steps := _steps(field, value, result.edition, direction)) is not None:
        found = next(((step, True) for step in steps if at(step).answered and at(step).code != now), None)
        seen = found and at(found[0])
    elif name in margin.breaks:
        found, seen = _at_a_break(margin.breaks[name], value, field, inputs, result.edition, at, direction)
    else:
        found, seen = _halved(value, field, margin.close, at, direction)
    if found and seen:
        yield Turn(name, unit, value, found[0], direction, found[1], seen.code, seen.words)


def _steps(field: Field, value: Any, edition: str, direction: int) -> Iterable[Any] | None:
    """Return the values from the next one outwards, None for an amount."""
    if field.read is read_size:
        domain: list[Any] = list(listed_sizes(edition))
    elif field.whole_numbers:
        domain = list(range(field.whole_numbers[0], field.whole_numbers[1] + 1))
    else:
        return None
    place = domain.index(value)
    return domain[place + 1 :] if direction == UP else domain[:place][::-1]


def _at_a_break(
    keys: tuple[str, ...],
    value: float,
    field: Field,
    inputs: Mapping[str, Any],
    edition: str,
    at: _Ends,
    direction: int,
) -> tuple[_Place, _End | None]:
    """Return the nearest figure of the rules where the answer turns: above a figure, or at one below."""
    now, sets = at(value).code, inputs.get("sets", 1)
    figures = {figure * times for key in keys for figure in _figures(key, edition) for times in {1, sets, sets - 1}}
    low, high = field.ends
    within = sorted(each for each in figures if low <= each <= high)
    if direction == DOWN:
        for figure in (each for each in reversed(within) if each < value):
            if at(figure).code != now:
                return (figure, True), at(figure)
        return None, None
    for figure in (each for each in within if each >= value):
        past = figure * (1 + PAST)
        if past <= high and at(past).code != now:
            return (figure, False), at(past)
    return None, None


@cache
def _figures(key: str, edition: str) -> tuple[float, ...]:
    """Return every number in the rows of a rule."""
    return tuple(
        each for row in rule(key, edition).rows for each in row.values() if isinstance(each, int | float)
    )


def _halved(
    value: float, field: Field, close: float, at: _Ends, direction: int
) -> tuple[_Place, _End | None]:
    """Return the amount between the value and its end where the answer turns, found by halving."""
    end = field.maximum if direction == UP else field.minimum
    if end is None or end == value or at(float(end)).code == at(value).code:
        return None, None
    kept, other = float(value), float(end)
    while abs(other - kept) > max(close * max(abs(kept), abs(other)), SMALLEST):
        middle = (kept * other) ** 0.5 if min(kept, other) > 0 else (kept + other) / 2
        if middle in (kept, other):
            break
        kept, other = (middle, other) if at(middle).code == at(value).code else (kept, middle)
    if close > FINE:
        return (rounded_towards(kept, direction), False), at(other)  # the last amount seen to keep the answer
    turning = _shortest(kept, other, close)
    if abs(turning) <= 2 * SMALLEST:
        return None, None  # nothing at all is no amount to turn at
    included = at(turning).code != at(value).code
    return (turning, included), at(turning) if included else at(other)


def rounded_towards(value: float, direction: int) -> float:
    """Return an amount to `FIGURES` figures, never further from the amount entered than it is.

    >>> rounded_towards(284.5126, UP), rounded_towards(284.5126, DOWN)
    (284.5, 284.6)
    """
    if value == 0 or float(f"{value:.{FIGURES}g}") == value:
        return value
    step = FIGURES - 1 - math.floor(math.log10(abs(value)))
    return (math.floor if direction == UP else math.ceil)(value * 10**step) / 10**step


def _shortest(kept: float, other: float, close: float) -> float:
    """Return the number with the fewest digits between two or as close, `kept` where there is none.

    A figure of a rule is compared with a hair of tolerance, so that it may lie just outside.
    """
    low, high = min(kept, other) * (1 - close), max(kept, other) * (1 + close)
    for digits in range(1, 13):
        rounded = float(f"{(kept + other) / 2:.{digits}g}")
        if low <= rounded <= high:
            return rounded
    return kept


def _of_the_row(result: Result, inputs: Mapping[str, Any], turns: list[Turn]) -> list[Turn]:
    """Return how far the area of all conductors together is from the ends of its row of the table."""
    row = result.trace.table_row
    if row is None or "conductor" not in (result.calculator.margin or Margin(())).fields:
        return []
    at = _ends(result, "conductor", inputs)
    now = at(inputs["conductor"]).code
    given: list[Turn] = []
    for direction, end in ((UP, row.through), (DOWN, row.over)):
        if end is None:
            continue
        size = _size_past(inputs["conductor"], row, end, direction, result.edition)
        seen = at(size) if size else None
        # No listed size has that label.
        if seen and size and seen.answered and seen.code != now and size not in seen.code:
            turn = Turn("conductor", "cmil", row.total, end, direction, direction == DOWN, seen.code, seen.words, True)
            given.append(turn)
    return [each for each in given if _agrees(each, turns, row, inputs, result.edition)]


def _size_past(conductor: str, row: TableRow, end: int, direction: int, edition: str) -> str | None:
    """Return the first whole kcmil of one conductor with which all together are past the end of the row."""
    one = area(conductor, edition) + (end - row.total) / row.count
    kcmil = int(one // 1000) + (1 if direction == UP else 0)
    return f"{kcmil}kcmil" if kcmil >= 1 else None


def _agrees(turn: Turn, turns: list[Turn], row: TableRow, inputs: Mapping[str, Any], edition: str) -> bool:
    """Tell whether the next listed conductor that turns the answer is past this end of the row, and not before it."""
    for each in turns:
        if each.field == "conductor" and each.direction == turn.direction:
            total = row.total + row.count * (area(str(each.turns_at), edition) - area(inputs["conductor"], edition))
            return total > turn.turns_at if turn.direction == UP else total <= turn.turns_at
    return True
