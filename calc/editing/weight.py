"""How much hangs on each rule: the worked answers that read it, their calculators, the pages that cite it."""

from __future__ import annotations

import tomllib
from collections.abc import Generator, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field

from calc import rulebook
from calc.conductors import area
from calc.data_file import Data
from calc.editing.tree import CASES, ROOT
from calc.registry import CALCULATORS
from calc.rulebook import forget, rule_keys

_PAGES = ("*.md", "*.toml")


@dataclass
class Weight:
    """What reads one rule in one edition: how many worked answers, of which calculators, and how many pages cite it."""

    answers: int = 0
    calculators: set[str] = field(default_factory=set[str])
    pages: int = 0


def weights(edition: str) -> dict[str, Weight]:
    """Return for every rule what hangs on it in an edition; every worked case is answered once."""
    found = {key: Weight(pages=count) for key, count in citing_pages().items()}
    for slug, inputs in worked_inputs():
        for key in keys_read(slug, edition, inputs):
            found[key].answers += 1
            found[key].calculators.add(slug)
    return found


def worked_inputs() -> Iterator[tuple[str, dict[str, str]]]:
    """Return the inputs of every calculator's example and worked cases, without an edition."""
    for slug, calculator in CALCULATORS.items():
        (file,) = (ROOT / CASES).rglob(f"{slug.replace('-', '_')}.toml")
        cases = tomllib.loads(file.read_text(encoding="utf-8"))["case"]
        for inputs in (calculator.example, *(case.get("inputs", {}) for case in cases)):
            yield slug, {name: value for name, value in inputs.items() if name in calculator.fields}


def keys_read(slug: str, edition: str, inputs: dict[str, str]) -> set[str]:
    """Return every rule that one answer reads or cites."""
    calculator = CALCULATORS[slug]  # loaded before: the limits of its fields are no part of an answer
    with _watched() as read:
        result = calculator(edition=edition, **inputs)
    return read | {cited.key for cited in result.trace.citations}


def citing_pages() -> dict[str, int]:
    """Return for every rule how many files of the pages name its key."""
    texts = [
        file.read_text(encoding="utf-8") for pattern in _PAGES for file in sorted((ROOT / "docs").rglob(pattern))
    ]
    return {key: sum(f'"{key}"' in text for text in texts) for key in rule_keys()}


@contextmanager
def _watched() -> Generator[set[str]]:
    """Collect the keys of the rules that are read meanwhile, none of them out of memory."""
    read: set[str] = set()
    document = rulebook._document  # pyright: ignore[reportPrivateUsage] its cache is what must not answer here

    def watched(key: str) -> Data:
        read.add(key)
        return document(key)

    rulebook._document = watched  # pyright: ignore[reportPrivateUsage] every reader asks it by this name
    _forget()
    try:
        yield read
    finally:
        rulebook._document = document  # pyright: ignore[reportPrivateUsage] as it was
        _forget()


def _forget() -> None:
    forget()
    area.listed_sizes.cache_clear()
    area.sizes_of_any_edition.cache_clear()
