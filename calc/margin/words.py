"""The margin of an answer as one line for readers, and as plain data."""

from __future__ import annotations

from collections.abc import Sequence

from calc.calculator import Result
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.data_file import Data
from calc.margin.search import UP, Turn, rounded_towards
from calc.messages import Message, message
from calc.trace import shown_number
from calc.unknown.conditions import lower


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


def margin_line(result: Result, turns: Sequence[Turn]) -> Message | None:
    """Return where the answer changes by the first input that turns it, None where nothing is known of it."""
    told: list[Message] = []
    for name in list(dict.fromkeys(each.field for each in turns))[:1]:
        own = [each for each in turns if each.field == name]
        # The area of all conductors together says more than the next size, where the row of the table decides.
        by_area = {each.direction: each for each in own if each.area}
        shown = [by_area.get(each.direction, each) for each in own if not each.area]
        shown += [each for direction, each in by_area.items() if direction not in {turn.direction for turn in shown}]
        told.append(
            message(
                "{label}, now {value}: {turns}.",
                label=result.calculator.fields[name].label,
                value=_value_now(result, shown),
                turns="; ".join(str(_told(result, each)) for each in shown),
            )
        )
    return message("Where the answer changes. {told}", told=" ".join(map(str, told))) if told else None


def _value_now(result: Result, shown: Sequence[Turn]) -> Message:
    now = result.calculator.fields[shown[0].field].shown(result.inputs[shown[0].field])
    total = next((each.value for each in shown if each.area), None)
    if total is None or total == area(str(result.inputs[shown[0].field]), result.edition):
        return message("{now}", now=now)
    return message("{now}, {total} kcmil total", now=now, total=_kcmil(total))


def _told(result: Result, turn: Turn) -> Message:
    up, words = turn.direction == UP, {"at": _amount(result, turn), "words": lower(turn.words)}
    if turn.unit == "size":
        return message("{at} or larger, {words}", **words) if up else message("{at} or smaller, {words}", **words)
    if not turn.unit:
        return message("{at} or more, {words}", **words) if up else message("{at} or fewer, {words}", **words)
    if turn.included:
        return message("{at} or more, {words}", **words) if up else message("{at} or less, {words}", **words)
    return message("over {at}, {words}", **words) if up else message("under {at}, {words}", **words)


def _amount(result: Result, turn: Turn) -> Message:
    if turn.area:
        return message("{kcmil} kcmil total", kcmil=_kcmil(turn.turns_at))
    if turn.unit == "size":
        return message("{size}", size=shown_size(str(turn.turns_at)))
    value = turn.turns_at
    if isinstance(value, float):
        value = rounded_towards(value, turn.direction)
    return message("{amount}", amount=result.calculator.fields[turn.field].shown(value))


def _kcmil(cmil: object) -> str:
    return shown_number(float(str(cmil)) / 1000)
