"""What is not the same in two results of one calculator: rules cited, rows of a list, warnings."""

from __future__ import annotations

from typing import Any

from calc.answer import Row
from calc.calculator import Result
from calc.known import known
from calc.messages import Message, message
from calc.rulebook import Figures, Rule
from calc.trace import Trace

NOT_USED = message("not used")
WARNING = message("Warning")
NONE = message("none")


def shown_outcome(result: Result) -> Message:
    """Return a result in one sentence: the answer, or why the case is not covered."""
    if result.answer:
        return result.answer.in_one_line
    outside = known(result.not_covered)
    return message("Not covered. {why} {look_in}", why=outside.why, look_in=outside.look_in)


def list_rows(one: Result, other: Result) -> list[Row]:
    """Return the rows of two lists that differ in size, by the name of the part."""
    sizes = [_sizes(result) for result in (one, other)]
    names = list(dict.fromkeys([*sizes[0], *sizes[1]]))
    return [
        Row(dict(what=name, one=sizes[0].get(name, NOT_USED), other=sizes[1].get(name, NOT_USED)))
        for name in names
        if str(sizes[0].get(name)) != str(sizes[1].get(name))
    ]


def differing_rules(one: Trace, other: Trace, same: bool) -> list[Row]:
    """Return a row for each rule cited that has another section or other figures, or that one edition alone uses.

    same: both answers are. When both came by the same rules too, the rows of a stepped table that differ were not used.
    """
    stated = [{cited.key: cited for cited in trace.citations} for trace in (one, other)]
    same_way = same and stated[0].keys() == stated[1].keys()
    rows: list[Row] = []
    for key in dict.fromkeys([*stated[0], *stated[1]]):
        first, second = (cited.get(key) for cited in stated)
        unused = same_way and first and second and _steps(first) and _steps(second)
        if first and second and first.section == second.section and (unused or _figures(first) == _figures(second)):
            continue
        title = known(first or second).title
        rows.append(Row(dict(what=title, one=_stated(first, second), other=_stated(second, first))))
    return rows


def differing_warnings(one: Trace, other: Trace) -> list[Row]:
    """Return a row for each warning that one edition alone raises; the sections named in it may differ."""
    kinds = [{words.template for words in trace.warnings} for trace in (one, other)]
    first = [Row(dict(what=WARNING, one=words, other=NONE)) for words in one.warnings if words.template not in kinds[1]]
    second = [
        Row(dict(what=WARNING, one=NONE, other=words)) for words in other.warnings if words.template not in kinds[0]
    ]
    return first + second


def _sizes(result: Result) -> dict[str, Message | str]:
    table = result.answer.table if result.answer else None
    if table is None or "size" not in table.headings:
        return {}
    return {str(row.cells["part"]): row.cells["size"] for row in table.rows}


def _steps(rule: Rule) -> bool:
    """Tell whether a rule is a table read by the first row that a number does not pass."""
    return any(column.startswith("through") for row in rule.rows for column in row)


def _figures(rule: Rule) -> tuple[Any, tuple[Figures, ...]]:
    return rule.value, rule.rows


def _stated(rule: Rule | None, beside: Rule | None) -> Message:
    """Return where a rule stands, and its figures as far as the rule beside it has others."""
    if rule is None:
        return NOT_USED
    if beside is None or _figures(rule) == _figures(beside):
        return message("{section}", section=rule.section)
    if isinstance(rule.value, str):
        return message("{section}: {words}", section=rule.section, words=rule.value.replace("-", " "))
    if rule.value is not None:
        return message("{section}: {value} {unit}", section=rule.section, value=rule.value, unit=rule.unit)
    own = [row for row in rule.rows if row not in beside.rows]
    if not own:
        return message("{section}: does not have these", section=rule.section)
    return message("{section}: {figures}", section=rule.section, figures="; ".join(map(_shown_row, own)))


def _shown_row(row: Figures) -> str:
    if len(row) == 1:
        return str(next(iter(row.values())))
    return ", ".join(f"{column.replace('_', ' ')} {_shown_value(value)}" for column, value in row.items())


def _shown_value(value: object) -> str:
    return str(value).replace("kcmil", " kcmil")
