"""A result as plain data, the JSON of the command line."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Any

from calc import permalink
from calc.address import page_address
from calc.answer import Answer, Row
from calc.calculator import Calculator, Correction, Result
from calc.data_file import Data
from calc.found.shown import found_to_dict
from calc.margin.words import margin_to_list
from calc.rulebook import Rule, changes, sources
from calc.trace import MARK_WORDS

if TYPE_CHECKING:
    from calc.unknown.assumed import Assumption
    from calc.unknown.outcomes import Depends

SCHEMA = 1


def result_to_dict(result: Result, *, margin: bool = False) -> Data:
    """Return a result as dictionaries, lists, texts and numbers. Keys: see the README.

    margin: with how far each input is from another answer, for which the calculator runs again and again.
    """
    trace = result.trace
    return {
        "schema": SCHEMA,
        "calculator": result.calculator.slug,
        "edition": result.edition,
        "edition_chosen": result.edition_chosen,
        "rules": changes()["version"],
        "inputs": dict(result.inputs),
        "outcome": result.outcome,
        "answer": {**_answer_to_dict(result.answer), **_found_to_dict(result)} if result.answer else None,
        "fix": corrections_to_list(result.fix),
        "not_covered": _not_covered_to_dict(result),
        "steps": [
            {
                "say": str(step.words),
                "formula": step.formula,
                "numbers": step.numbers,
                "value": step.value,
                "unit": step.unit,
                "citations": [cited.key for cited in step.citations],
            }
            for step in trace.steps
        ],
        "notes": [str(words) for words in trace.notes],
        "warnings": [str(words) for words in result.warnings],
        "citations": [citation_to_dict(cited) for cited in trace.citations],
        "said": linked_answer(result),
        "permalink": page_address(permalink.write(result)) if result.outcome != "fix" else None,
        **({"margin": margin_to_list(result.margin)} if margin else {}),
        **(_depends_to_dict(result.depends) if result.depends else {}),
    }


def left_out_to_dict(result: Result) -> Data:
    """Return what nobody entered: the defaults that apply, and what the other editions answer where none was chosen.

    It stands beside the keys of `result_to_dict`, and takes as long as many runs.
    """
    check = result.edition_check
    data: Data = {"assumed": [_assumption_to_dict(each) for each in result.assumed]}
    if check:
        others = {edition: str(words) for edition, words in check.others.items()}
        data["editions"] = {"same": check.same, "how": check.how, "others": others, "say": str(check.words)}
    return data


def _depends_to_dict(depends: Depends) -> Data:
    return {
        "safe": _answer_to_dict(depends.safe) if depends.safe else None,
        "alternatives": [
            {
                "when": str(each.when),
                "answer": _answer_to_dict(each.result.answer) if each.result.answer else None,
                "outcome": each.result.outcome,
                "say": str(each.words),
            }
            for each in depends.alternatives
        ],
        "more_alternatives": depends.more,
        "ask": {"field": depends.ask.field, "label": str(depends.ask.label), "why": str(depends.ask.why)},
        "depends_on": list(depends.fields),
    }


def _assumption_to_dict(assumed: Assumption) -> Data:
    return {
        "field": assumed.field,
        "value": assumed.value,
        "decides": assumed.decides,
        "otherwise": str(assumed.words) if assumed.decides else None,
    }


def _answer_to_dict(answer: Answer) -> Data:
    shown: Data = {"name": str(answer.name), "headline": str(answer.in_one_line), "said": answer.answer_code}
    rows: Data = {"rows": [_row_to_dict(row) for row in answer.table.rows]} if answer.table else {}
    return dict(answer.values) | shown | rows


def _found_to_dict(result: Result) -> Data:
    return {"found": found_to_dict(result, result.found)} if result.found else {}


def _not_covered_to_dict(result: Result) -> Data | None:
    outside = result.not_covered
    if outside is None:
        return None
    calculators = list(outside.calculators)
    return {"why": str(outside.why), "look_in": str(outside.look_in), "calculators": calculators}


def _row_to_dict(row: Row) -> Data:
    link = page_address(row.link) if row.link else None
    cells: Data = {key: str(words) for key, words in row.cells.items()} | {"permalink": link}
    return cells | ({"status": row.status} if row.status else {})


def corrections_to_list(fix: Iterable[Correction]) -> list[Data]:
    """Return fields to correct: the field, its label, what to enter."""
    return [{"field": each.field, "label": str(each.label), "say": str(each.words)} for each in fix]


def citation_to_dict(cited: Rule) -> Data:
    """Return a rule as a citation: where the edition states it, how it was checked, the texts seen."""
    return {
        "key": cited.key,
        "title": str(cited.title),
        "section": cited.section,
        "edition": cited.edition,
        "mark": cited.mark,
        "mark_words": str(MARK_WORDS[cited.mark]),
        "note": str(cited.note),
        "sources": [sources()[key]["title"] for key in cited.sources],
    }


def linked_answer(result: Result) -> Data | None:
    """Return what a link's maker was answered when it is not what is answered now, and the changes that explain it.

    Where a field is to be mended now, `now` is "fix": an answer that the link was made with is not to be lost.
    """
    if result.linked_answer in ("", result.answer_code):
        return None
    explained = [row for row in changes()["change"] if _explains(row, result)]
    return {"then": result.linked_answer, "now": result.answer_code, "changes": explained}


def _explains(row: Mapping[str, Any], result: Result) -> bool:
    """Tell whether a recorded change speaks of this calculator, edition and case."""
    return (
        row["calculator"] == result.calculator.slug
        and result.edition in row["editions"]
        and all(_is_one_of(result, name, meant) for name, meant in row.get("when", {}).items())
    )


def _is_one_of(result: Result, name: str, meant: Iterable[str]) -> bool:
    """Tell whether an input is one of the values of a recorded change, which may call it as links did then."""
    name = result.calculator.name_now(name)
    field = result.calculator.fields[name]
    return str(result.inputs.get(name)) in map(field.value_now, meant)


def calculator_to_dict(calculator: Calculator) -> Data:
    """Return a calculator's declaration: its fields with labels, choices and defaults."""
    return {
        "calculator": calculator.slug,
        "name": str(calculator.name),
        "purpose": str(calculator.purpose),
        "fields": [
            {
                "name": name,
                "label": str(field.label),
                "enter": str(field.enter),
                "choices": [choice.value for choice in field.choices],
                "default": calculator.defaults.get(name),
                "required": name not in calculator.defaults,
            }
            for name, field in calculator.fields.items()
        ],
    }
