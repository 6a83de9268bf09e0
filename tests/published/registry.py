"""What is published for ever, as `site_assets/published` states it, and the same names as the product has them now.

Names are compared both ways: one that is gone breaks a link, a program or a table of someone; one that is not stated
yet can be lost unseen.
"""

import random
import re
import tomllib
from collections.abc import Iterable
from functools import cache
from pathlib import Path

from calc import CALCULATORS, permalink
from calc.calculator import Calculator, Result
from calc.field import Field
from calc.registry import REGISTERED
from tests.cases.read import cases

FOLDER = Path(__file__).parents[2] / "site_assets" / "published"
SIZE = re.compile(r"(?<![\w.])(?:\d+/0|\d+kcmil|\d+(?=-(?:copper|aluminum)))")
NUMBER = re.compile(r"\d+(?:\.\d+)?(?:e[+-]?\d+)?")
# What is stated of the answers of each calculator, besides the `columns` of its values and `links` that show all this.
LISTS = ("values", "cells", "statuses", "said")


@cache
def document(name: str) -> dict:
    """Return one file of the registry: "rules", "formats", a calculator's slug and so on."""
    return tomllib.loads((FOLDER / f"{name}.toml").read_text(encoding="utf-8"))


@cache
def rows(kind: str) -> list[dict]:
    """Return every row of a kind, "page" or "calculator", over all files."""
    return [row for file in sorted(FOLDER.glob("*.toml")) for row in document(file.stem).get(kind, [])]


def answers(slug: str) -> dict[str, list[str]]:
    """Return what is stated of the answers of a calculator: `LISTS`, `columns` and `links`."""
    (row,) = document(slug)["calculator"]
    return row["answers"]


def names_in(results: Iterable[Result]) -> dict[str, set[str]]:
    """Return the names that results have, by the lists of the registry."""
    found: dict[str, set[str]] = {name: set() for name in LISTS}
    for result in results:
        if result.outcome == "fix":
            continue
        found["said"] |= forms(result)
        if result.answer:
            found["values"] |= set(keys(result.answer.values))
        if result.answer and result.answer.table:
            found["cells"] |= set(result.answer.table.headings)
            found["statuses"] |= {row.status for row in result.answer.table.rows if row.status}
    return found


def keys(values: object, before: str = "") -> Iterable[str]:
    """Return the keys of plain data, inner ones after a point; those of several disconnects once, for any number.

    >>> list(keys({"sizes": {"rod": 1, "bar-2": 1}, "series": [{"key": 1}]}))
    ['sizes', 'sizes.rod', 'sizes.bar-{number}', 'series', 'series.key']
    """
    if isinstance(values, dict):
        for name, value in values.items():
            named = re.sub(r"-\d+$", "-{number}", before + name)
            yield named
            yield from keys(value, f"{named}.")
    elif isinstance(values, list | tuple):
        for value in values:
            yield from keys(value, before)


def forms(result: Result) -> set[str]:
    """Return the forms of an answer as a link carries it: sizes and numbers are left open, a list is cut into parts."""
    if "case" in result.calculator.fields:  # it holds two answers of any other calculator
        both = f"{result.answer.values['one']}_{result.answer.values['other']}"
        return {"{said}_{said}"} if result.answer_code == both else {result.answer_code}
    return {form for item in result.answer_code.split(",") for form in forms_of(item)}


def forms_of(item: str) -> set[str]:
    """Return the form of one part of an answer in a link; a decision is cut into what it is about and what to do.

    >>> sorted(forms_of("2/0-copper") | forms_of("likely-273A-139V") | forms_of("rail.need-not"))
    ['.need-not', 'likely-{number}A-{number}V', 'rail.', '{size}-copper']
    """
    subject, point, decision = item.partition(".")
    if point and not decision[:1].isdigit():
        return {f"{subject}.", f".{decision}"}
    return {NUMBER.sub("{number}", SIZE.sub("{size}", item))}


def opened(slug: str, query: str) -> Result:
    """Return what a calculator answers to the query of a link."""
    return CALCULATORS[slug].run(permalink.read(query))


def swept(slug: str, editions: Iterable[str], mixed: int = 20) -> Iterable[Result]:
    """Return the results of many inputs in these editions.

    They are the worked cases, the example with each choice of each field, and `mixed` times with choices by chance.
    """
    calculator = CALCULATORS[slug]
    (listed,) = (each for each in REGISTERED if each.endswith(f"/{slug}"))
    for edition, case in cases(listed.replace("-", "_")):
        if edition in editions:
            yield calculator(edition=edition, **case["inputs"])
    chance = random.Random(slug)
    for edition in editions:
        example = {**calculator.example, "edition": edition}
        yield calculator(**example)
        for name, field in calculator.fields.items():
            for choice in field.choices:
                yield calculator(**{**example, name: choice.value})
        for _ in range(mixed):
            yield calculator(**example | {name: by_chance(field, chance) for name, field in choices_of(calculator)})


def choices_of(calculator: Calculator) -> list[tuple[str, Field]]:
    """Return the fields of a calculator that are chosen, but those that only ask for slower work."""
    return [(name, field) for name, field in calculator.fields.items() if field.choices and name != "detail"]


def by_chance(field: Field, chance: random.Random) -> str:
    """Return a choice of a field, or several of them where it takes several."""
    values = [choice.value for choice in field.choices]
    return ",".join(chance.sample(values, chance.randint(1, len(values)) if field.several else 1))
