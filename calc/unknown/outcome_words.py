"""One outcome in words, and what tells two outcomes apart."""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from typing import Any

from calc.answer import Answer
from calc.calculator import Result
from calc.conductors.size import shown_size
from calc.messages import Message, message
from calc.shared_fields import METAL_WORDS
from calc.unknown.conditions import lower
from calc.unknown.safe_side import safe_side

MAX_ROWS = 2


def outcome_words(result: Result, beside: Result | None = None) -> Message:
    """Return an outcome in one sentence: an answer, why it is not covered, or what to enter first.

    beside: of a list, the result whose rows it is compared with; then the rows that differ are told.
    """
    if result.answer and result.answer.table and beside and beside.answer and beside is not result:
        return _rows_words(result.answer, beside.answer)
    if result.answer:
        return result.answer.in_one_line
    if result.not_covered:
        return message(
            "not covered here. {why} {look_in}", why=result.not_covered.why, look_in=result.not_covered.look_in
        )
    first = result.fix[0]
    return message("first enter “{label}”. {words}", label=first.label, words=first.words)


def short_words(answer: Answer) -> Message:
    """Return the headline, with the wire that is needed where it does not name one."""
    values = answer.values
    if not values.get("area_cmil") or str(values["metal"]).replace("-", " ") in str(answer.headline).replace("-", " "):
        return answer.headline
    words = dict(headline=answer.headline, size=shown_size(values["size"]), metal=METAL_WORDS[values["metal"]])
    if str(words["size"]) in str(answer.headline):
        return message("{headline} {metal}", **words)
    return message("{headline}: {size} {metal}", **words)


def _rows_words(answer: Answer, beside: Answer) -> Message:
    """Return the rows of a list that are not the same in another one: the part and its size or decision."""
    changed = _changed_rows(answer, beside)
    if not changed:
        return answer.in_one_line
    shown, more = "; ".join(changed[:MAX_ROWS]), len(changed) - MAX_ROWS
    if more == 1:
        return message("{rows}; one more row changes", rows=shown)
    if more > 1:
        return message("{rows}; {count} more rows change", rows=shown, count=more)
    return message("{rows}", rows=shown)


def first_size_words(answer: Answer, beside: Answer) -> Message:
    """Return the first part of a list whose size is not the same in another one, and how many there are."""
    sizes, others = answer.values["sizes"], beside.values["sizes"]
    words = dict(zip(sizes, _row_words(answer), strict=True))
    changed = [f"{words[key][0]}: {words[key][1]}" for key, size in sizes.items() if others.get(key) != size]
    changed += [str(message("a part is not on the list")) for key in others if key not in sizes]
    if not changed:
        return answer.in_one_line
    if len(changed) == 1:
        return message("{row}", row=changed[0])
    return message("{count} rows change (first {row})", count=len(changed), row=lower(changed[0]))


def _changed_rows(answer: Answer, beside: Answer) -> list[str]:
    rows, others = ({str(words[0]): str(words[1]) for words in _row_words(each)} for each in (answer, beside))
    changed = [f"{name}: {words}" for name, words in rows.items() if others.get(name) != words]
    return changed + [str(message("{part}: not on the list", part=name)) for name in others if name not in rows]


def _row_words(answer: Answer) -> list[tuple[object, object]]:
    if answer.table is None:
        return []
    first, second = list(answer.table.headings)[:2]
    return [(row.cells[first], row.cells[second]) for row in answer.table.rows]


def mark_of(result: Result, opened: Sequence[str] = ()) -> tuple[Hashable, ...]:
    """Return what tells two outcomes apart: code, words and values, without the open inputs that values repeat."""
    if result.answer is None:
        words = result.not_covered.why if result.not_covered else result.fix[0].words
        return result.outcome, tuple(fix.field for fix in result.fix), templates(words)
    declared = safe_side(result.calculator.slug)
    if declared.by_code and declared.rank:
        return str(result.answer.headline), declared.rank(result.answer)
    values = {name: value for name, value in result.answer.values.items() if name not in opened}
    return result.answer_code, str(result.answer.in_one_line), str(values)


def templates(words: object) -> tuple[Any, ...]:
    """Return the wording of a sentence without the numbers in it."""
    if not isinstance(words, Message):
        return ()
    return words.template, *map(templates, words.values.values())
