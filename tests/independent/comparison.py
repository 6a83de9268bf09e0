"""Asks a calculator and the second implementation the same thing, and gathers where they differ."""

from collections.abc import Callable, Iterable
from typing import NamedTuple

from calc.registry import CALCULATORS
from tests.independent.sizing import BeyondTheTablesError

EDITIONS = ("2017", "2020", "2023", "2026")
METALS = ("copper", "aluminum", "copper-clad-aluminum")
COLUMNS = ("copper", "aluminum")
SETS = range(1, 31)


class Case(NamedTuple):
    """What is asked of a calculator, and how the second implementation answers."""

    inputs: dict
    second: Callable[[], str]


def second_answer(case: Case) -> str:
    try:
        return case.second()
    except BeyondTheTablesError:
        return "not_covered"


def as_written_here(value: str | list) -> str:
    """A size, or several with commas, as tables.py writes them."""
    sizes = value if isinstance(value, list) else [value]
    return ",".join(str(size).removesuffix("kcmil") for size in sizes)


def first_answer(slug: str, inputs: dict, value: str) -> str:
    """The value a calculator gives, or its outcome where it gives none."""
    result = CALCULATORS[slug](**{name: str(entry) for name, entry in inputs.items()})
    return as_written_here(result.answer.values[value]) if result.outcome == "answer" else result.outcome


def compare(slug: str, cases: Iterable[Case], value: str = "size") -> tuple[int, list]:
    """How many cases were compared, and those that differ with both answers."""
    count, differences = 0, []
    for case in cases:
        count += 1
        first, second = first_answer(slug, case.inputs, value), second_answer(case)
        if first != second:
            differences.append((case.inputs, f"calculator {first}", f"second {second}"))
    return count, differences
