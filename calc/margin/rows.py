"""The rows above and below an answer: what the same rule gives just before and just past the case entered."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.calculator import Result
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.margin.search import UP, Turn, rounded_towards
from calc.messages import Message, message
from calc.trace import shown_number

NEAR = 0.8  # of the way through its row: from here on the next size looks as good


@dataclass(frozen=True)
class MarginRow:
    """One row: for which inputs, and what the answer is there. `entered`: the row of the case entered."""

    inputs: Message
    answer: Message
    entered: bool = False


@dataclass(frozen=True)
class Gauge:
    """How far through its row the case is, 0 to 1: its amount and the ends of the row in words, and what comes next."""

    share: float
    entered: Message
    low: Message
    high: Message
    next: Message


@dataclass(frozen=True)
class Margins:
    """Where an answer changes by one input: its label, the rows in rising order, how far the case is through its row.

    by_area: the area of all conductors together decides. close: that area is near the end of its row.
    """

    label: Message | str
    rows: tuple[MarginRow, ...]
    gauge: Gauge | None
    by_area: bool
    close: Message | None


def margins(result: Result) -> Margins | None:
    """Return the rows around an answer by the first input that turns it, None where nothing is known of it."""
    shown = _of_first_input(result.margin)
    if not shown:
        return None
    field = result.calculator.fields[shown[0].field]
    below = [MarginRow(_range(result, each), each.words) for each in shown if each.direction != UP]
    above = [MarginRow(_range(result, each), each.words) for each in shown if each.direction == UP]
    answer = message("this list") if "sizes" in result.answered.values else result.answered.headline
    own = MarginRow(_entered(result, shown), answer, entered=True)
    by_area = any(each.area for each in shown)
    gauge = _gauge(result, shown)
    return Margins(field.label, (*below, own, *above), gauge, by_area, _close(shown, gauge))


def _of_first_input(turns: Sequence[Turn]) -> list[Turn]:
    """Return the turns of the first input, down before up; the area of all conductors says more than the next size."""
    own = [each for each in turns if each.field == turns[0].field]
    by_direction = {each.direction: each for each in own if not each.area}
    by_direction |= {each.direction: each for each in own if each.area}
    return [by_direction[direction] for direction in sorted(by_direction)]


def _entered(result: Result, shown: Sequence[Turn]) -> Message:
    field = shown[0].field
    now = result.calculator.fields[field].shown(result.inputs[field])
    total = next((each.value for each in shown if each.area), None)
    if total is None or total == area(str(result.inputs[field]), result.edition):
        return message("{now}", now=now)
    return message("{now}, {total} total", now=now, total=_kcmil(total))


def _range(result: Result, turn: Turn) -> Message:
    up, at = turn.direction == UP, _amount(result, turn)
    if turn.area:
        return message("over {at} total", at=at) if up else message("{at} total or less", at=at)
    if turn.unit == "size":
        return message("{at} or larger", at=at) if up else message("{at} or smaller", at=at)
    if not turn.unit:
        return message("{at} or more", at=at) if up else message("{at} or fewer", at=at)
    if turn.included:
        return message("{at} or more", at=at) if up else message("{at} or less", at=at)
    return message("over {at}", at=at) if up else message("under {at}", at=at)


def _amount(result: Result, turn: Turn) -> Message:
    if turn.area:
        return _kcmil(turn.turns_at)
    if turn.unit == "size":
        return message("{size}", size=shown_size(str(turn.turns_at)))
    value = turn.turns_at
    if isinstance(value, float):
        value = rounded_towards(value, turn.direction)
    return message("{amount}", amount=result.calculator.fields[turn.field].shown(value))


def _gauge(result: Result, shown: Sequence[Turn]) -> Gauge | None:
    """Return the gauge of an amount that has a limit above; None for sizes and counts, which have no between."""
    up = next((each for each in shown if each.direction == UP), None)
    if up is None or not up.unit or up.unit == "size":
        return None
    down = next((each for each in shown if each.direction != UP and each.unit == up.unit), None)
    low = float(down.turns_at) if down else 0.0
    share = (float(up.value) - low) / (float(up.turns_at) - low)
    now = _kcmil(up.value) if up.area else _entered(result, [up])
    start = _amount(result, down) if down else message("0")
    return Gauge(share, message("yours {amount}", amount=now), start, _amount(result, up), up.words)


def _close(shown: Sequence[Turn], gauge: Gauge | None) -> Message | None:
    """Return the sentence against the usual trap: to round an area up into the next row."""
    up = next((each for each in shown if each.direction == UP and each.area), None)
    if up is None or gauge is None or gauge.share < NEAR:
        return None
    words = dict(total=_kcmil(up.value), end=_kcmil(up.turns_at))
    if up.value == up.turns_at:
        return message("{total} is the last of its row. The next row begins above it.", **words)
    return message("{total}. The next row begins above {end}. Do not round it up.", **words)


def _kcmil(cmil: object) -> Message:
    return message("{kcmil} kcmil", kcmil=shown_number(float(str(cmil)) / 1000))
