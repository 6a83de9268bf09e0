"""An input that is said not to count under other choices changes no answer there: it can be left unasked."""

import random
import tomllib
from functools import cache
from pathlib import Path

import pytest

from calc.editions import EDITIONS
from calc.registry import CALCULATORS
from calc.relevance import REFUSED, RELEVANT_WHEN
from tests.calc.strategies import texts

MANY, SLICES = 60, 80  # cases of a field, in one of so many slices; one case a field in every run
TRIES = 4
CASES = Path(__file__).parents[1] / "cases"
SLOW = {"deck-voltage", "take-a-bond-away", "surface-voltage", "available-fault-current", "ground-fault-loop",
        "transformer-schedule", "generator-schedule", "separate-building-schedule", "voltage-between"}  # fmt: skip
FIELDS = [(slug, name) for slug, conditions in RELEVANT_WHEN.items() for name in conditions]


@cache
def domain(slug, name):
    """Return texts from one end of a field to the other, and its absence where it may be left out."""
    left_out = [None] if name in CALCULATORS[slug].defaults else []
    return [*left_out, *texts(slug, name)]


def told(slug, case):
    result = CALCULATORS[slug].work([(name, str(value)) for name, value in case.items() if value is not None])
    answer = result.answer and (result.answer.values, str(result.answer.headline))
    outside = result.not_covered and (str(result.not_covered.why), str(result.not_covered.look_in))
    return result, (
        result.outcome,
        result.answer_code,
        answer,
        outside,
        [(each.field, str(each.words)) for each in result.fix],
    )


@cache
def begun(slug):
    """Return the inputs of the worked cases, which reach every part of a calculator, and of its example."""
    path = next(CASES.rglob(f"{slug.replace('-', '_')}.toml"), None)
    worked = tomllib.loads(path.read_text())["case"] if path else []
    known = [each["inputs"] for each in worked if set(each.get("inputs", ())) <= set(CALCULATORS[slug].fields)]
    return [dict(CALCULATORS[slug].example), *known]


def case_outside(slug, name, drawn):
    """Return a case in which one condition of a field, at least, does not hold, preferably one that is answered."""
    single, when = CALCULATORS[slug], CALCULATORS[slug].fields[name].relevant_when
    for _ in range(TRIES):
        case = dict(drawn.choice(begun(slug))) | {"edition": drawn.choice(EDITIONS)}
        share = drawn.choice((0, 0.1, 0.3, 0.7, 1))
        for other in single.fields:
            if drawn.random() < share or (other in when and drawn.random() < 0.5):
                case[other] = drawn.choice(domain(slug, other))
        broken = drawn.choice(list(when))
        choices = [choice.value for choice in single.fields[broken].choices]
        case[broken] = drawn.choice([value for value in choices if value not in when[broken]])
        if told(slug, case)[0].outcome == "answer":
            break
    return case


def changes(slug, name, drawn, cases):
    """Return the cases in which a field changed what is told although it is said not to count."""
    found = []
    for _ in range(cases):
        case = case_outside(slug, name, drawn)
        _, first = told(slug, case | {name: None if name in CALCULATORS[slug].defaults else domain(slug, name)[0]})
        values = domain(slug, name)
        for value in drawn.sample(values, min(3, len(values))):
            result, other = told(slug, case | {name: value})
            refused = name in REFUSED.get(slug, ()) and name in {each.field for each in result.fix}
            if other != first and not refused:
                found.append((case, value, first, other))
    return found


def test_conditions_name_fields_and_their_choices_and_leave_some_out():
    for slug, conditions in RELEVANT_WHEN.items():
        fields = CALCULATORS[slug].fields
        for name, when in conditions.items():
            assert name in fields and fields[name].relevant_when == when and when, (slug, name)
            for other, values in when.items():
                choices = {choice.value for choice in fields[other].choices}
                assert fields[other].kind == "choice" and set(values) < choices and other != name, (slug, name, other)
    assert {name for slug, names in REFUSED.items() for name in names if name not in RELEVANT_WHEN[slug]} == set()


@pytest.mark.parametrize("slug", RELEVANT_WHEN)
def test_a_field_that_does_not_count_changes_no_answer(slug):
    drawn = random.Random(slug)
    names = list(RELEVANT_WHEN[slug])
    for name in drawn.sample(names, 2) if slug in SLOW and len(names) > 2 else names:
        assert not changes(slug, name, drawn, 1)


@pytest.mark.slices(SLICES)
def test_no_field_that_does_not_count_changes_an_answer_in_many_cases(slice_number):
    for number, (slug, name) in enumerate(FIELDS):
        if number % SLICES == slice_number:
            assert not changes(slug, name, random.Random(f"{slug} {name}"), MANY // 10 if slug in SLOW else MANY)


def test_a_field_that_is_refused_where_it_does_not_count_is_named():
    """Each is the ordinary field of one kind of device or electrode, given beside another kind."""
    loop = CALCULATORS["device-clearing"]
    typed = dict(fault_current="500", device="20")
    assert loop(**typed, device_kind="fuse", instantaneous_multiple="10").fix[0].field == "instantaneous_multiple"
    assert loop(**typed, device_kind="inverse-time-breaker", fuse_class="cc").fix[0].field == "fuse_class"
    assert loop(**typed, device_kind="inverse-time-breaker", instantaneous_multiple="10").outcome == "answer"
