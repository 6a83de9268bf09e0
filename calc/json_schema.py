"""The JSON Schema of a calculator: what may be put in, and the JSON that comes out, for programs of others.

The root describes the JSON of `python -m calc SLUG`, and of each call in Python; `$defs/inputs` describes the object of
inputs. Both come from the declaration alone.
"""

from __future__ import annotations

import typing
from collections.abc import Mapping
from typing import Any

from calc.calculator import Calculator
from calc.data_file import Data
from calc.editions import EDITIONS
from calc.field import Field
from calc.json_output import SCHEMA
from calc.messages import message
from calc.output import Output, shown_unit, values_of
from calc.rulebook import MARKS
from calc.schedule.part_list import INSTALL, LEAVE_OUT, NOT_COVERED, NOT_NEEDED, TO_JUDGE

DIALECT = "https://json-schema.org/draft/2020-12/schema"
JSON_TYPES: dict[Any, str] = {str: "string", int: "integer", float: "number"}
TEXT, TEXTS = {"type": "string"}, {"type": "array", "items": {"type": "string"}}
TEXT_OR_NULL = {"type": ["string", "null"]}
KINDS = {"text": "string", "size": "string", "number": "number", "whole-number": "integer", "yes-no": "boolean"}


OPEN = {
    "type": "string",
    "pattern": r"^unknown$|\.\.",
    "description": str(
        message("A value that is not known, or known only as a range: unknown, or two values with two dots between.")
    ),
}


def calculator_schema(calculator: Calculator) -> Data:
    """Return the JSON Schema of a calculator's result, with its inputs and its answer as `$defs`.

    A number in it is in the unit that `x-unit` names.
    """
    result: Data = {
        "schema": {"const": SCHEMA},
        "calculator": {"const": calculator.slug},
        "edition": {"enum": list(EDITIONS)},
        "edition_chosen": {"type": "boolean"},
        "rules": {"type": "integer"},
        "inputs": _reference("fields"),
        "outcome": {"enum": ["answer", "depends", "fix", "not_covered"]},
        "answer": {"anyOf": [_reference("answer"), {"type": "null"}]},
        "fix": {"type": "array", "items": _whole({"field": TEXT, "label": TEXT, "say": TEXT})},
        "not_covered": {"anyOf": [_whole({"why": TEXT, "look_in": TEXT}), {"type": "null"}]},
        "steps": {"type": "array", "items": _step()},
        "notes": TEXTS,
        "warnings": TEXTS,
        "citations": {"type": "array", "items": _citation()},
        "said": {"anyOf": [_whole({"then": TEXT, "now": TEXT, "changes": {"type": "array"}}), {"type": "null"}]},
        "permalink": TEXT_OR_NULL,
    }
    return {
        "$schema": DIALECT,
        "title": str(calculator.name),
        "description": str(calculator.purpose),
        **_whole(result),
        "allOf": [_when_answered(calculator), _when_to_fix(), _when_not_covered(calculator)],
        "$defs": {
            "inputs": _inputs(calculator),
            "fields": {"type": "object", "properties": _fields(calculator)},
            "answer": answer_schema(calculator),
            "open": OPEN,
        },
    }


def _inputs(calculator: Calculator) -> Data:
    """Return the schema of the object of inputs: no name but those of the fields, and those that are needed."""
    edition = {
        "enum": list(EDITIONS), "description": str(message("Code edition. If it is left out, the answer warns."))
    }
    return {
        "description": str(
            message(
                "Inputs of the calculator. A number is in the unit named; as text, it may carry any unit of its kind. "
                "An input that fits here may still end as fix."
            )
        ),
        **_reference("fields"),
        "properties": {"edition": edition},
        "required": [name for name in calculator.fields if name not in calculator.defaults],
        "unevaluatedProperties": False,
    }


def _fields(calculator: Calculator) -> dict[str, Data]:
    hints = typing.get_type_hints(calculator.function)
    return {
        name: _or_open(field_schema(field, hints.get(name, str | None), calculator.defaults.get(name)))
        for name, field in calculator.fields.items()
    }


def _or_open(schema: Data) -> Data:
    return {"anyOf": [schema, _reference("open")]}


def field_schema(field: Field, hint: object, default: object = None) -> Data:
    """Return the schema of one input as it is read. hint: its type in Python; default: None where it has none."""
    kinds = [kind for kind in (typing.get_args(hint) or (hint,)) if kind is not type(None)]
    names = [JSON_TYPES[kind] for kind in kinds]
    chosen = field.choices and not field.several
    words = _with_unit(str(field.hint if chosen else field.enter), field.unit)
    schema: Data = {"title": str(field.label)} | ({"description": words} if words else {})
    if chosen:
        schema["enum"] = list(values_of(field))
    else:
        schema["type"] = names[0]
        if names[0] == "string":
            schema["maxLength"] = field.longest
        elif field.minimum is not None:
            schema |= {"minimum": field.minimum, "maximum": field.maximum}
    if field.unit:
        schema["x-unit"] = field.unit
    if field.relevant_when:
        schema["x-relevant-when"] = {name: list(values) for name, values in field.relevant_when.items()}
    if default is not None:
        return schema | {"default": default}
    return _or_null(schema) if len(kinds) < len(typing.get_args(hint)) else schema


def answer_schema(calculator: Calculator) -> Data:
    """Return the schema of an answer: its values, the same in words, and the rows of a list."""
    words = {
        "name": {"type": "string", "description": str(message("What the answer is about, in words"))},
        "headline": {"type": "string", "description": str(message("The answer in words"))},
        "said": {"type": "string", "description": str(message("The answer as links carry it"))},
    }
    always = [output.name for output in calculator.outputs if not output.when]
    return {
        "type": "object",
        "properties": {output.name: output_schema(output) for output in calculator.outputs}
        | words
        | {"rows": {"type": "array", "items": _row()}},
        "required": list(dict.fromkeys([*always, *words])),
    }


def output_schema(output: Output) -> Data:
    """Return the schema of one value of an answer; null fits too where the value is not there for every answer."""
    schema = _of_kind(output)
    if output.unit:
        schema["x-unit"] = output.unit
    if output.shape == "list":
        schema = {"type": "array", "items": schema}
    elif output.shape == "by-name":
        schema = {"type": "object", "additionalProperties": schema}
    words = _with_unit(f"{output.meaning}.", output.unit)
    if not output.when:
        return {"description": words} | schema
    return {"description": str(message("{words} Only {when}.", words=words, when=output.when))} | _or_null(schema)


def _of_kind(output: Output) -> Data:
    if output.kind == "choice":
        return {"enum": list(output.choices)}
    if output.kind == "point":
        return {"type": "array", "items": {"type": "number"}, "minItems": 2, "maxItems": 2}
    if output.kind == "record":
        return _whole({part.name: output_schema(part) for part in output.parts})
    return {"type": KINDS[output.kind]}


def _with_unit(words: str, unit: str) -> str:
    shown = shown_unit(unit)
    return str(message("{words} In {unit}.", words=words, unit=shown)) if shown else words


def _or_null(schema: Data) -> Data:
    if "enum" in schema:
        return schema | {"enum": [*schema["enum"], None]}
    return schema | {"type": [schema["type"], "null"]}


def _reference(name: str) -> Data:
    return {"$ref": f"#/$defs/{name}"}


def _whole(properties: Mapping[str, Data]) -> Data:
    """Return the schema of an object that has all of these; more may come with later versions."""
    return {"type": "object", "properties": dict(properties), "required": list(properties)}


def _step() -> Data:
    return _whole(
        {"say": TEXT, "formula": TEXT, "numbers": TEXT, "value": {}, "unit": TEXT, "citations": TEXTS},
    )


def _citation() -> Data:
    texts = ("key", "title", "section", "edition", "mark_words", "note")
    return _whole(dict.fromkeys(texts, TEXT) | {"mark": {"enum": list(MARKS)}, "sources": TEXTS})


def _row() -> Data:
    statuses = [INSTALL, LEAVE_OUT, NOT_NEEDED, NOT_COVERED, TO_JUDGE]
    return {
        "type": "object",
        "properties": {"permalink": TEXT_OR_NULL, "status": {"enum": statuses}},
        "required": ["permalink"],
        "additionalProperties": TEXT,
    }


def _when(outcome: str, properties: Mapping[str, Data]) -> Data:
    return {"if": {"properties": {"outcome": {"const": outcome}}}, "then": {"properties": dict(properties)}}


def _when_answered(calculator: Calculator) -> Data:
    return _when(
        "answer",
        {
            "inputs": {"required": list(calculator.fields)},
            "answer": {"type": "object"},
            "fix": {"maxItems": 0},
            "not_covered": {"type": "null"},
            "permalink": TEXT,
        },
    )


def _when_to_fix() -> Data:
    nothing = {"type": "null"}
    return _when("fix", {"answer": nothing, "fix": {"minItems": 1}, "not_covered": nothing, "permalink": nothing})


def _when_not_covered(calculator: Calculator) -> Data:
    return _when(
        "not_covered",
        {
            "inputs": {"required": list(calculator.fields)},
            "answer": {"type": "null"},
            "fix": {"maxItems": 0},
            "not_covered": {"type": "object"},
            "permalink": TEXT,
        },
    )
