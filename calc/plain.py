"""A result as plain data, the JSON of the command line."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from calc import permalink
from calc.answer import Row
from calc.declare import Calculator, Fix, Result
from calc.found.shown import plain_found
from calc.margin.words import plain_margin
from calc.rulebook import Rule, changes, sources
from calc.working import MARK_WORDS

SCHEMA = 1


def plain_result(result: Result, *, margin: bool = False) -> dict:
    """Give a result as dictionaries, lists, texts and numbers. Keys: see the README.

    margin: with how far each input is from another answer, for which the calculator runs again and again.
    """
    working, outside = result.working, result.not_covered
    answer = None
    if result.answer:
        shown = {
            "name": str(result.answer.name),
            "headline": str(result.answer.in_one_line),
            "said": result.answer.said,
        }
        answer = dict(result.answer.values) | shown
        if result.answer.table:
            answer["rows"] = [_plain_row(row) for row in result.answer.table.rows]
        if result.found:
            answer["found"] = plain_found(result, result.found)
    return {
        "schema": SCHEMA,
        "calculator": result.calculator.slug,
        "edition": result.edition,
        "edition_chosen": result.edition_chosen,
        "rules": changes()["version"],
        "inputs": dict(result.inputs),
        "outcome": result.outcome,
        "answer": answer,
        "fix": plain_fix(result.fix),
        "not_covered": {"why": str(outside.why), "look_in": str(outside.look_in)} if outside else None,
        "steps": [
            {
                "say": str(step.words),
                "formula": step.formula,
                "numbers": step.numbers,
                "value": step.value,
                "unit": step.unit,
                "citations": [cited.key for cited in step.citations],
            }
            for step in working.steps
        ],
        "notes": [str(words) for words in working.notes],
        "warnings": [str(words) for words in working.warnings],
        "citations": [plain_citation(cited) for cited in working.citations],
        "said": said_before(result),
        "permalink": permalink.write(result) if result.outcome != "fix" else None,
        **({"margin": plain_margin(result.margin)} if margin else {}),
    }


def _plain_row(row: Row) -> dict:
    cells = {key: str(words) for key, words in row.cells.items()} | {"permalink": row.link or None}
    return cells | ({"status": row.status} if row.status else {})


def plain_fix(fix: Iterable[Fix]) -> list[dict]:
    """Give fields to mend: the field, its label, what to enter."""
    return [{"field": each.field, "label": str(each.label), "say": str(each.words)} for each in fix]


def plain_citation(cited: Rule) -> dict:
    """Give a rule as a citation: where the edition states it, how it was checked, the texts seen."""
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


def said_before(result: Result) -> dict | None:
    """Give what a link's maker was answered when it is not what is answered now, and the changes that explain it.

    Where a field is to be mended now, `now` is "fix": an answer that the link was made with is not to be lost.
    """
    if result.said_before in ("", result.said):
        return None
    explained = [row for row in changes()["change"] if _explains(row, result)]
    return {"then": result.said_before, "now": result.said, "changes": explained}


def _explains(row: Mapping, result: Result) -> bool:
    """Tell whether a recorded change speaks of this calculator, edition and case."""
    return (
        row["calculator"] == result.calculator.slug
        and result.edition in row["editions"]
        and all(str(result.inputs.get(name)) in meant for name, meant in row.get("when", {}).items())
    )


def plain_calculator(calculator: Calculator) -> dict:
    """Give a calculator's declaration: its fields with labels, choices and defaults."""
    return {
        "calculator": calculator.slug,
        "name": str(calculator.name),
        "purpose": str(calculator.purpose),
        "fields": [
            {
                "name": name,
                "label": str(asked.label),
                "enter": str(asked.enter),
                "choices": [choice.value for choice in asked.choices],
                "default": calculator.defaults.get(name),
                "required": name not in calculator.defaults,
            }
            for name, asked in calculator.fields.items()
        ],
    }
