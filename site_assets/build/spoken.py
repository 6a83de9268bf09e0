"""What people say and mean, from `docs/spoken.toml`: two senses, other words, Spanish, what is not covered."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache

from calc.data_file import Data
from site_assets.build.page_data import DOCS, PageDataError, in_words

FILE = "spoken.toml"


@dataclass(frozen=True)
class Sense:
    """One thing that a name can mean: how to tell it, what is right for it, and the page that says so.

    `device` names a calculator that sizes it by the breaker or fuse alone: a query with amps then gets its size.
    """

    name: str
    answer: str
    page: str
    device: str = ""


@dataclass(frozen=True)
class Slang:
    """A name with more senses than one: what people say, the question that tells them apart, the senses."""

    said: tuple[str, ...]
    asks: str
    senses: tuple[Sense, ...]


@dataclass(frozen=True)
class NotCovered:
    """What people ask for and no page covers: why, what to do first where someone is in danger, where to read on."""

    said: tuple[str, ...]
    title: str
    why: str
    steps: tuple[str, ...]
    page: str


@dataclass(frozen=True)
class Spoken:
    """All of it. `names` are what people type for a page; `same` are other words for a word, Spanish among them."""

    slang: tuple[Slang, ...]
    not_covered: tuple[NotCovered, ...]
    names: dict[str, tuple[str, ...]]
    same: dict[str, tuple[str, ...]]
    quiet: tuple[str, ...]
    beside: tuple[str, ...]
    amps: tuple[str, ...]


@cache
def spoken() -> Spoken:
    """Return what people say. Raises: PageDataError, when a row leaves something out or names no page."""
    return read_spoken((DOCS / FILE).read_text(encoding="utf-8"))


def read_spoken(written: str) -> Spoken:
    """Return what a text in the form of `spoken.toml` says. Raises: PageDataError."""
    stated = tomllib.loads(written)
    try:
        told = Spoken(
            slang=tuple(_slang(row) for row in stated["slang"]),
            not_covered=tuple(_not_covered(row) for row in stated["not_covered"]),
            names={page: tuple(said) for page, said in stated["names"].items()},
            same={word: tuple(others) for word, others in stated["same"].items()},
            quiet=tuple(stated["quiet"]),
            beside=tuple(stated["beside"]),
            amps=tuple(stated["amps"]),
        )
    except (TypeError, KeyError) as error:
        raise PageDataError(f"{FILE}: {in_words(error)}") from error
    named = [sense.page for slang in told.slang for sense in slang.senses] + [each.page for each in told.not_covered]
    for page in (*named, *told.names):
        if not (DOCS / f"{page.partition('#')[0]}.md").is_file():
            raise PageDataError(f"{FILE}: there is no page {page!r}")
    return told


def _slang(row: Data) -> Slang:
    senses = tuple(Sense(**sense) for sense in row["sense"])
    if len(senses) < 2:
        raise PageDataError(f"{FILE}: {row['said'][0]!r} has one sense, so it is a name, not slang")
    return Slang(tuple(row["said"]), row["asks"], senses)


def _not_covered(row: Data) -> NotCovered:
    return NotCovered(tuple(row["said"]), row["title"], row["why"], tuple(row["steps"]), row["page"])
