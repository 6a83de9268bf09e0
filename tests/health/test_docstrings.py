"""Docstrings are the contract: every public name has one, calculators name each parameter, examples run."""

import doctest
import importlib
import inspect
import pkgutil

import pytest

import calc
from calc import CALCULATORS

MODULES = [
    importlib.import_module(found.name)
    for found in pkgutil.walk_packages(calc.__path__, "calc.")
    if not found.name.endswith("__main__")
]


@pytest.mark.parametrize("module", MODULES, ids=lambda module: module.__name__)
def test_every_public_function_and_class_says_what_it_gives(module):
    assert module.__doc__
    silent = [
        name
        for name, value in vars(module).items()
        if not name.startswith("_")
        and getattr(value, "__module__", "") == module.__name__
        and (inspect.isfunction(value) or inspect.isclass(value))
        and not inspect.getdoc(value)
    ]
    assert silent == []


@pytest.mark.parametrize("module", MODULES, ids=lambda module: module.__name__)
def test_every_example_in_a_docstring_holds(module):
    assert doctest.testmod(module).failed == 0


@pytest.mark.parametrize("slug", CALCULATORS)
def test_a_calculators_docstring_names_every_parameter_and_has_every_part(slug):
    calculator = CALCULATORS[slug]
    contract = inspect.getdoc(calculator.function)
    assert [name for name in calculator.fields if name not in contract] == []
    for part in ("When:", "Parameters:", "Returns:", "Raises:", "Source:", "Example:"):
        assert part in contract


@pytest.mark.parametrize("slug", CALCULATORS)
def test_a_calculators_own_example_is_an_answer(slug):
    calculator = CALCULATORS[slug]
    assert calculator(**calculator.example).outcome == "answer"
    examples = doctest.DocTestFinder().find(calculator.function, slug, globs={calculator.function.__name__: calculator})
    runner = doctest.DocTestRunner()
    for example in examples:
        runner.run(example)
    assert runner.tries > 0 and runner.failures == 0
