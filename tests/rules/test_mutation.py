"""Change every figure of the rules, one at a time: some check against an outside text must fail."""

import copy
import importlib
import inspect
import re
from pathlib import Path

import pytest

from calc import rulebook
from calc.conductors import area

MODULES = [
    importlib.import_module(f"tests.rules.{file.stem}")
    for pattern in ("test_figures*.py", "test_sections.py")
    for file in sorted(Path(__file__).parent.glob(pattern))
]
CHECKS = [
    check
    for module in MODULES
    for name, check in vars(module).items()
    if name.startswith("test_") and not inspect.signature(check).parameters
]


def figures(node, path=()):
    """Yield the path of every figure: numbers, sizes and sections, not words, marks or sources."""
    if isinstance(node, dict):
        for key, value in node.items():
            if key not in ("title", "kind", "unit", "applies", "mark", "sources", "note", "same_as"):
                yield from figures(value, (*path, key))
    elif isinstance(node, list):
        for position, value in enumerate(node):
            yield from figures(value, (*path, position))
    else:
        yield path


def mutated(value):
    """Return the nearest other figure: one more, a hair more, the next letter or digit, another word."""
    if isinstance(value, int):
        return value + 1
    if isinstance(value, float):
        return value + 0.001
    changed = re.sub(r"\d(?=\D*$)", lambda digit: str((int(digit[0]) + 1) % 10), value)
    return changed if changed != value else value + "x"


def mutants():
    for key in rulebook.rule_keys():
        for path in figures(rulebook.statements(rulebook._document(key))):
            yield key, path


ALL = list(mutants())
SLICES = 8


@pytest.fixture
def fresh_book():
    yield
    forget()


def forget():
    rulebook.forget()
    area.listed_sizes.cache_clear()


def caught(key, path, monkeypatch) -> bool:
    document = copy.deepcopy(rulebook._document(key))
    *parents, last = path
    node = rulebook.statements(document)
    for step in parents:
        node = node[step]
    node[last] = mutated(node[last])
    read = rulebook._document
    with monkeypatch.context() as patch:
        patch.setattr(rulebook, "_document", lambda asked: document if asked == key else read(asked))
        forget()
        for check in CHECKS:
            try:
                check()
            except AssertionError:
                return True
    return False


def test_the_unchanged_book_passes_every_check(fresh_book):
    forget()
    for check in CHECKS:
        check()


def test_there_are_figures_to_change_in_every_rule():
    assert {key for key, _ in ALL} == set(rulebook.rule_keys())
    assert len(ALL) > 200


@pytest.mark.slices(SLICES)
def test_changing_any_figure_of_any_rule_fails_a_check(fresh_book, monkeypatch, slice_number):
    """Each slice takes figures of all rules."""
    assert [(key, path) for key, path in ALL[slice_number::SLICES] if not caught(key, path, monkeypatch)] == []
