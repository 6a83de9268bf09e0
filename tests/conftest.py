"""Campaigns too long for every run: `--long` runs them whole, without it each runs one slice that rotates.

A test that takes `slice_number` is a campaign: `@pytest.mark.slices(20)` says into how many seeded slices it is cut.
One marked `long` cannot be cut, and only `--long` runs it. Of tests marked `turns(3)` each commit runs a third, another
than the one before; who names tests on the command line runs all of those.
"""

import copy
import subprocess
from collections import Counter
from pathlib import Path

import pytest

from calc import rulebook

ROOT = Path(__file__).parent.parent


def pytest_addoption(parser):
    """Add the options of this suite."""
    parser.addoption("--long", action="store_true", help="run every slice of the long campaigns")
    parser.addoption("--slice", type=int, help="the slice to run; by default the commit decides")


def pytest_configure(config):
    """Register the marker, and settle the slice once, so that all workers agree."""
    config.addinivalue_line("markers", "slices(count): a campaign cut into seeded slices")
    config.addinivalue_line("markers", "long: run by --long alone")
    config.addinivalue_line("markers", "turns(count): run with one of so many commits, unless it is named")
    if config.option.slice is None:
        config.option.slice = commit_number()


def pytest_report_header(config):
    """Say which slice runs, so that it can be run again."""
    return "campaigns: whole" if config.option.long else f"campaigns: one slice each (--slice {config.option.slice})"


def pytest_generate_tests(metafunc):
    """Give a campaign its slices."""
    if "slice_number" in metafunc.fixturenames:
        count = metafunc.definition.get_closest_marker("slices").args[0]
        option = metafunc.config.option
        metafunc.parametrize("slice_number", range(count) if option.long else [option.slice % count])


def pytest_collection_modifyitems(config, items):
    """Leave out what only `--long` runs, and what has its turn with another commit."""
    if config.option.long:
        return
    left_out = {item for item in items if item.get_closest_marker("long")}
    if config.args_source is not config.ArgsSource.ARGS:
        left_out |= waiting(items, config.option.slice)
    config.hook.pytest_deselected(items=[item for item in items if item in left_out])
    items[:] = [item for item in items if item not in left_out]


def waiting(items, number: int) -> set:
    """Return the tests marked `turns` whose turn it is not."""
    found, seen = set(), Counter()
    for item in items:
        mark = item.get_closest_marker("turns")
        if mark:
            (count,) = mark.args
            if seen[count] % count != number % count:
                found.add(item)
            seen[count] += 1
    return found


def commit_number() -> int:
    """Return a number that each commit has its own of; 0 outside a checkout."""
    shown = subprocess.run(["git", "rev-parse", "HEAD"], cwd=ROOT, capture_output=True, text=True, check=False)
    return int(shown.stdout.strip()[:6], 16) if shown.returncode == 0 else 0


@pytest.fixture
def marked(monkeypatch):
    """Yield a function of key, edition and mark: the rule has that mark then, as if a book had been read or had not."""
    read, changed = rulebook._document, {}

    def mark_as(key: str, edition: str, mark: str) -> None:
        document = changed.setdefault(key, copy.deepcopy(read(key)))
        rulebook.statements(document)[edition if rulebook.DATED in document else rulebook.UNDATED]["mark"] = mark
        rulebook.forget()

    monkeypatch.setattr(rulebook, "_document", lambda key: changed.get(key) or read(key))
    yield mark_as
    monkeypatch.undo()
    rulebook.forget()
