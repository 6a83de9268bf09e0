"""The JSON Schema of a calculator holds what it answers, and refuses what it does not: read by a library of others."""

import copy
import json
import re

import pytest
from jsonschema import Draft202012Validator

from calc import CALCULATORS
from calc.field import read_field
from calc.json_output import result_to_dict
from calc.json_schema import DIALECT, calculator_schema, field_schema, output_schema
from calc.messages import message
from calc.output import Output
from calc.shared_fields import quantity
from tests.calc.worked import results

JUMPER = CALCULATORS["main-bonding-jumper"]
ASKED = {"edition": "2023", "conductor": "500kcmil", "sets": 2}


def of_result(calculator) -> Draft202012Validator:
    return Draft202012Validator(calculator_schema(calculator))


def of_inputs(calculator) -> Draft202012Validator:
    schema = calculator_schema(calculator)
    return Draft202012Validator({"$ref": "#/$defs/inputs", "$defs": schema["$defs"]})


def document(result) -> dict:
    return json.loads(json.dumps(result_to_dict(result)))


@pytest.mark.parametrize("slug", CALCULATORS)
def test_the_json_of_every_worked_case_is_as_its_schema_says(slug):
    calculator = CALCULATORS[slug]
    Draft202012Validator.check_schema(calculator_schema(calculator))
    whole, asked = of_result(calculator), of_inputs(calculator)
    for result in results(slug):
        written = document(result)
        assert [each.message for each in whole.iter_errors(written)] == []
        if result.outcome != "fix":
            assert [each.message for each in asked.iter_errors({"edition": result.edition} | written["inputs"])] == []


@pytest.mark.parametrize("slug", CALCULATORS)
def test_inputs_as_they_were_read_ask_the_same_again(slug):
    first = results(slug)[0]
    again = document(CALCULATORS[slug](edition=first.edition, **document(first)["inputs"]))
    link = document(first)["permalink"]
    assert again == document(first) | {"permalink": re.sub("&assumed=[^&]*", "", link)}  # now all of them are given


@pytest.mark.parametrize("slug", CALCULATORS)
def test_a_form_that_is_to_be_mended_is_as_the_schema_says_too(slug):
    calculator = CALCULATORS[slug]
    written = document(calculator.run([("edition", "never"), ("no-field", "x")]))
    assert written["outcome"] == "fix"
    assert of_result(calculator).is_valid(written)


@pytest.mark.parametrize("slug", ["service-schedule", "conductor-name", "main-bonding-jumper"])
def test_an_answer_a_fix_and_a_case_not_covered_are_never_taken_for_each_other(slug):
    calculator = CALCULATORS[slug]
    valid = of_result(calculator).is_valid
    answered = document(calculator(**calculator.example))
    assert valid(answered)
    for outcome in ("fix", "not_covered", "maybe"):
        assert not valid(answered | {"outcome": outcome})
    assert not valid(answered | {"answer": None})
    assert not valid(answered | {"permalink": None})


def broken(*path, value):
    """Return the answer of the main bonding jumper with one thing changed, or taken away where value is ...."""
    written = copy.deepcopy(document(JUMPER(**ASKED)))
    *way, last = path
    place = written
    for name in way:
        place = place[name]
    if value is ...:
        del place[last]
    else:
        place[last] = value
    return written


@pytest.mark.parametrize(
    ("path", "value"),
    [
        (("schema",), 99),
        (("calculator",), "system-bonding-jumper"),
        (("edition",), "1776"),
        (("edition_chosen",), "yes"),
        (("inputs", "sets"), "2"),
        (("inputs", "sets"), 31),
        (("inputs", "metal"), "steel"),
        (("inputs", "conductor"), ...),
        (("answer", "size"), ...),
        (("answer", "size"), 4),
        (("answer", "metal"), "steel"),
        (("answer", "area_cmil"), "133100"),
        (("answer", "area_cmil"), None),
        (("answer", "enclosures"), 1.5),
        (("answer", "headline"), ...),
        (("fix",), None),
        (("steps", 0, "citations"), "jumpers/supply_side_size"),
        (("citations", 0, "mark"), "sure"),
        (("citations", 0, "section"), ...),
        (("warnings",), ["", 1]),
        (("said",), "2/0-copper"),
        (("permalink",), ...),
    ],
)
def test_what_is_broken_by_hand_is_refused(path, value):
    assert not of_result(JUMPER).is_valid(broken(*path, value=value))


def test_what_a_later_version_adds_is_no_fault():
    assert of_result(JUMPER).is_valid(broken("margin", value={"conductor": "600kcmil"}))
    assert of_result(JUMPER).is_valid(broken("answer", "spare", value=7))


@pytest.mark.parametrize(
    "inputs",
    [
        {"sets": 2},
        {"conductor": "3/0", "sets": 0},
        {"conductor": "3/0", "sets": 2.5},
        {"conductor": "3/0", "metal": "coper"},
        {"conductor": "3/0", "weight": 3},
        {"conductor": "3/0", "edition": "1776"},
        {"conductor": 4},
        {"conductor": "9" * 201},
    ],
)
def test_inputs_that_end_as_fix_for_their_form_are_refused_by_the_schema(inputs):
    assert not of_inputs(JUMPER).is_valid(inputs)
    assert JUMPER(**inputs).outcome == "fix" or inputs["conductor"] == 4  # the engine takes 4 for "4"
    assert of_inputs(JUMPER).is_valid({"conductor": "3/0"})


LENGTH = quantity(message("Length"), message("One way."), "ft", 1, 100, example="40 ft")


@pytest.mark.parametrize("feet", [0.999, 1, 100, 100.001])
def test_the_ends_of_a_number_are_those_that_the_field_reads(feet):
    schema = field_schema(LENGTH, float)
    try:
        read_field(LENGTH, str(feet))
        taken = True
    except ValueError:
        taken = False
    assert Draft202012Validator(schema).is_valid(feet) == taken == (1 <= feet <= 100)
    assert (schema["minimum"], schema["maximum"], schema["x-unit"]) == (1, 100, "ft")
    assert schema["description"] == "Enter a value from 1 to 100 ft, for example 40 ft. In ft."


def test_an_input_that_may_be_left_out_takes_null_and_one_with_a_default_names_it():
    assert Draft202012Validator(field_schema(LENGTH, float | None)).is_valid(None)
    assert not Draft202012Validator(field_schema(LENGTH, float)).is_valid(None)
    assert field_schema(LENGTH, float, 3.0)["default"] == 3.0


@pytest.mark.parametrize(
    ("output", "fits", "fits_not"),
    [
        (Output("size", message("Size"), "size"), ["3/0"], [3, None]),
        (Output("size", message("Size"), "size", when=message("where a wire is required")), ["3/0", None], [3]),
        (Output("need", message("Need"), "choice", choices=("a", "b")), ["a"], ["c", None]),
        (Output("need", message("Need"), "choice", choices=("a",), when=message("where any")), ["a", None], ["c"]),
        (Output("count", message("Count"), "whole-number"), [2], [2.5, True, "2"]),
        (
            Output("volts", message("Volts"), "number", "V", shape="by-name"),
            [{"panel": 1.5}, {}],
            [{"panel": "1"}, [1]],
        ),
        (Output("taps", message("Taps"), "size", shape="list"), [[], ["4"]], ["4", [4]]),
        (Output("points", message("Points"), "point", shape="list"), [[[1, 2.5]]], [[[1]], [[1, 2, 3]], [1, 2]]),
        (
            Output("rows", message("Rows"), "record", shape="list", parts=(Output("key", message("Key"), "text"),)),
            [[{"key": "a"}]],
            [[{}], [{"key": 1}], {"key": "a"}],
        ),
    ],
)
def test_the_schema_of_each_kind_of_output_takes_what_fits_and_nothing_else(output, fits, fits_not):
    holds = Draft202012Validator(output_schema(output)).is_valid
    assert all(map(holds, fits)) and not any(map(holds, fits_not))


def test_the_schema_names_its_dialect_its_calculator_and_every_field_and_output():
    schema = calculator_schema(JUMPER)
    assert schema["$schema"] == DIALECT
    assert schema["title"] == "Main bonding jumper"
    assert list(schema["$defs"]["fields"]["properties"]) == list(JUMPER.fields)
    outputs = [output.name for output in JUMPER.outputs]
    assert list(schema["$defs"]["answer"]["properties"])[: len(outputs)] == outputs
    assert schema["$defs"]["answer"]["properties"]["area_cmil"]["x-unit"] == "cmil"
