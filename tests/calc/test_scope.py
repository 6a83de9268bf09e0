"""What a calculator leaves out is a table: each row is met, says why and where to look; its neighbor is answered."""

import sys

import pytest

from calc import CALCULATORS, EDITIONS
from calc.messages import Message
from calc.scope import FigureOf, SectionOf


def table_of(slug: str) -> tuple:
    return getattr(sys.modules[CALCULATORS[slug].function.__module__], "OUT_OF_SCOPE", ())


ROWS = [(slug, row) for slug in CALCULATORS for row in table_of(slug)]


def named(part: object) -> str:
    return part if isinstance(part, str) else f"{part.field}-{part.value}"


def test_the_jumpers_and_the_conductors_of_circuits_have_their_tables():
    assert {slug for slug, _ in ROWS} >= {"main-bonding-jumper", "grounded-conductor", "pool-bonding-plan"}
    assert len(ROWS) == len({(slug, row.field, row.value) for slug, row in ROWS})


@pytest.mark.parametrize(("slug", "row"), ROWS, ids=named)
def test_each_row_names_a_choice_of_its_calculator_and_is_met_by_it(slug, row):
    calculator = CALCULATORS[slug]
    assert row.value in {choice.value for choice in calculator.fields[row.field].choices}
    for edition in EDITIONS:
        example = dict(calculator.example) | {"edition": edition}
        assert calculator(**example).outcome == "answer"
        result = calculator(**example | {row.field: row.value})
        assert result.outcome == "not_covered"
        assert result.not_covered.calculators == row.calculators
        for told, stated in ((result.not_covered.why, row.why), (result.not_covered.look_in, row.look_in)):
            assert told.template == stated.template
            assert not any(isinstance(value, SectionOf | FigureOf) for value in told.values.values())


@pytest.mark.parametrize(("slug", "row"), ROWS, ids=named)
def test_each_row_says_why_and_where_to_look(slug, row):
    assert isinstance(row.why, Message) and isinstance(row.look_in, Message) and str(row.why.template).endswith(".")
    assert set(row.calculators) <= set(CALCULATORS) - {slug}
    cited = [value for words in (row.why, row.look_in) for value in words.values.values()]
    assert any(isinstance(value, SectionOf) for value in cited), "a name to look under has its section"
