"""What a calculator declares of its answers is what it answers: every value, its type and unit, no more and no less."""

import math
import re

import pytest

from calc import CALCULATORS
from calc.messages import message
from calc.output import Output
from calc.shared_outputs import wire
from tests.calc.declared import faults
from tests.calc.worked import results

# Values that no worked case gives, or that every worked case gives: one more case for each.
GIVEN_BY = {
    ("available-fault-current", "three_phase_at_end"): {
        "system": "208Y/120", "kva": "75", "percent_z": "2.3", "conductor": "3/0", "length": "60ft",
    },
    ("pool-bonding-plan", "wire_feet"): {
        "kind": "in-ground-conductive", "parts": "rebar,pump", "pool_length": "32 ft", "pool_width": "16 ft",
    },
}  # fmt: skip
LOOP = {"system": "120/240", "device": "20", "conductor": "12", "return_conductor": "12"}
LEFT_OUT_BY = {
    ("shock-limits", "interrupter_second"): {"voltage": "1", "path": "hand-hand", "condition": "dry"},
    ("equipment-grounding-conductor", "count"): {"device": "400", "installed_conductor": "3/0", "sets": "2"},
    ("ground-fault-loop", "slowest_second"): LOOP | {"length": "100000"},
    ("ground-fault-loop", "least_available_ampere"): LOOP | {"length": "100000"},
    ("ground-fault-loop", "arc_ampere"): LOOP | {"length": "100", "arc": "40"},
    ("ground-fault-loop", "arc_verdict"): LOOP | {"length": "100", "arc": "40"},
}
# What a name says of its unit, and the numbers that have none.
UNITS = {
    "ampere": "A", "milliampere": "mA", "volt": "V", "volts": "V", "ohm": "ohm", "milliohm": "milliohm", "ft": "ft",
    "feet": "ft", "inch": "in", "second": "s", "percent": "%", "celsius": "°C", "cmil": "cmil",
}  # fmt: skip
WITHOUT_UNIT = {
    "count", "differences", "enclosures", "raceways", "parts", "to_install", "not_covered", "not_judged", "bond",
    "appliances_for_filters", "wire_share", "raceway_share",
}  # fmt: skip

# What steps call a unit, and the number of one output that a step gives of another thing: percent of a rise of 100 V.
AS_IN_STEPS = {"×": "x", "times": "x", "A²s": "A2s", "ohm·m": "ohmm", "Ω": "ohm", "s at most": "s", "degC": "°C"}
OF_ANOTHER_UNIT = {("deck-voltage", "touch_percent")}


def answers(slug: str) -> list:
    return [result.answer for result in results(slug) if result.answer]


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_value_of_every_worked_case_is_declared_with_its_kind(slug):
    assert answers(slug)
    for answer in answers(slug):
        assert faults(CALCULATORS[slug].outputs, answer.values) == []


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_declared_output_is_given_and_what_may_be_left_out_is_left_out(slug):
    calculator = CALCULATORS[slug]
    for output in calculator.outputs:
        given = [answer.values.get(output.name) is not None for answer in answers(slug)]
        if inputs := GIVEN_BY.get((slug, output.name)):
            assert True not in given, f"a worked case gives {output.name}: take it off the list"
            given.append(calculator(**inputs).answer.values.get(output.name) is not None)
        if inputs := LEFT_OUT_BY.get((slug, output.name)):
            assert False not in given, f"a worked case leaves out {output.name}: take it off the list"
            given.append(calculator(**inputs).answer.values.get(output.name) is not None)
        assert set(given) == ({True, False} if output.when else {True}), output.name


@pytest.mark.parametrize("slug", CALCULATORS)
def test_a_number_has_the_unit_that_its_name_says(slug):
    for output in CALCULATORS[slug].outputs:
        words = output.name.split("_")
        if output.kind not in ("number", "whole-number"):
            assert not output.unit, output.name
        elif output.name in WITHOUT_UNIT:
            assert output.unit == "", output.name
        else:
            named = {UNITS[word] for word in words if word in UNITS}
            assert output.unit, output.name
            assert output.unit in named or not named or "per" in words or "metre" in words, output.name


@pytest.mark.parametrize("slug", CALCULATORS)
def test_a_number_that_a_step_of_the_working_gives_has_the_unit_of_that_step(slug):
    steps = {}
    for result in results(slug):
        shown = {step.value: step.unit for step in result.trace.steps if isinstance(step.value, int | float)}
        for output in CALCULATORS[slug].outputs if result.answer else ():
            value = result.answer.values.get(output.name)
            if output.unit and (slug, output.name) not in OF_ANOTHER_UNIT and isinstance(value, int | float):
                same = {unit for number, unit in shown.items() if number and math.isclose(number, value)}
                steps.setdefault(output.name, []).append((same, output.unit))
    for name, pairs in steps.items():
        units = set().union(*(same for same, _ in pairs))
        assert not units or {AS_IN_STEPS.get(unit, unit) for unit in units} & {pairs[0][1]}, f"{name}: {units}"


@pytest.mark.parametrize("slug", CALCULATORS)
def test_outputs_are_told_in_short_words_and_none_has_the_name_of_another(slug):
    outputs = CALCULATORS[slug].outputs
    names = [output.name for output in outputs]
    assert outputs and len(set(names)) == len(names)
    for output in outputs:
        assert re.fullmatch("[a-z][a-z_]*", output.name)
        for words in filter(None, (output.meaning, output.when)):
            assert 3 < len(str(words)) < 90 and not str(words).endswith("."), words
        assert bool(output.choices) == (output.kind == "choice"), output.name
        assert bool(output.parts) == (output.kind == "record"), output.name


SIZED = {"size": "3/0", "metal": "copper", "area_cmil": 167800}


def test_an_answer_that_is_as_declared_has_no_fault():
    outputs = (*wire(message("Size")), Output("volts", message("Volts"), "number", "V", shape="by-name"))
    assert faults(outputs, SIZED | {"volts": {"panel": 120.0, "service": 0}}) == []
    loose = (Output("taps", message("Taps"), "size", shape="list", when=message("where there are taps")),)
    assert faults(loose, {}) == faults(loose, {"taps": None}) == faults(loose, {"taps": ["4", "2/0"]}) == []


@pytest.mark.parametrize(
    ("broken", "name"),
    [
        ({"size": "5/0"}, "size"),
        ({"size": None}, "size"),
        ({"metal": "steel"}, "metal"),
        ({"area_cmil": "167800"}, "area_cmil"),
        ({"area_cmil": 167800.5}, "area_cmil"),
        ({"area_cmil": True}, "area_cmil"),
        ({"sise": "3/0"}, "sise"),
    ],
)
def test_an_answer_that_is_not_as_declared_is_named(broken, name):
    (fault,) = faults(wire(message("Size")), SIZED | broken)
    assert fault.startswith(name)


@pytest.mark.parametrize(
    ("output", "value"),
    [
        (Output("volts", message("Volts"), "number", "V", shape="list"), [1.0, float("inf")]),
        (Output("volts", message("Volts"), "number", "V", shape="by-name"), [1.0]),
        (Output("points", message("Points"), "point", shape="list"), [[1, 2, 3]]),
        (Output("may", message("May it"), "yes-no"), "yes"),
        (
            Output("lines", message("Lines"), "record", shape="list", parts=(Output("key", message("Key"), "text"),)),
            [{}],
        ),
    ],
)
def test_a_list_a_map_a_point_and_a_record_are_looked_into(output, value):
    assert faults((output,), {output.name: value})
