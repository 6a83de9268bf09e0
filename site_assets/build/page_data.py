"""The data beside a page of a part or a place: what people call it, its cautions, checks and exercise.

`docs/parts/main-bonding-jumper.toml` belongs to the page `parts/main-bonding-jumper`.
"""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from calc.data_file import Data
from calc.editions import EDITIONS
from calc.registry import CALCULATORS
from calc.rulebook import RuleError, rule
from site_assets.build.cautions import CAUTIONS

DOCS = Path(__file__).parents[2] / "docs"
ROOMS = ("parts", "places")
LISTS = ("also_called", "about", "cautions", "see_also", "first_checks")


class PageDataError(Exception):
    """The data of a page leaves something unsaid; the message names the page and what is wrong."""


@dataclass(frozen=True)
class Check:
    """One field check. `sections` are the keys of the rules it holds the work to; `measure` may be empty."""

    page: str
    id: str
    name: str
    look_for: str
    pass_when: str
    why: str
    make_right: str
    sections: tuple[str, ...]
    observed: str
    required: str
    measure: str = ""

    @property
    def address(self) -> str:
        """Its name among all checks, and its link: page and anchor."""
        return f"{self.page}#{self.id}"


@dataclass(frozen=True)
class Exercise:
    """A question with its worked answer; `calculator` on `inputs` answers `said`, where a calculator can.

    `inputs` hold an edition only where the question names it; without one the answer is the same in every edition.
    """

    question: str
    steps: tuple[str, ...]
    answer: str
    calculator: str = ""
    inputs: tuple[tuple[str, str], ...] = ()
    said: str = ""

    @property
    def editions(self) -> tuple[str, ...]:
        """The editions in which the answer is `said`: the one that the question names, or all."""
        named = dict(self.inputs).get("edition")
        return (named,) if named else EDITIONS

    @property
    def to_open(self) -> dict[str, str]:
        """What the calculator is opened with: in the reader's edition, unless the question names one."""
        inputs = dict(self.inputs)
        return inputs | {"said": self.said} if "edition" in inputs else inputs


@dataclass(frozen=True)
class PageData:
    """All that stands beside one page.

    `about` are the rules it explains; `first_checks` are addresses of other pages' checks that come first here.
    """

    page: str
    also_called: tuple[str, ...]
    about: tuple[str, ...]
    cautions: tuple[str, ...]
    see_also: tuple[str, ...]
    first_checks: tuple[str, ...]
    checks: tuple[Check, ...]
    exercise: Exercise | None


def pages(*rooms: str) -> list[str]:
    """Return the parts and the places that have a page, "parts/bonding" and so on, sorted within their room."""
    return [
        file.relative_to(DOCS).with_suffix("").as_posix()
        for room in rooms or ROOMS
        for file in sorted((DOCS / room).glob("*.md"))
    ]


@cache
def page_data(page: str) -> PageData:
    """Return the data of a page. Raises: PageDataError, when it is missing or breaks its shape."""
    file = DOCS / f"{page}.toml"
    try:
        written = tomllib.loads(file.read_text(encoding="utf-8"))
        checks = tuple(_check(page, row) for row in written.pop("check", []))
        exercise = _exercise(written.pop("exercise")) if "exercise" in written else None
        listed = {name: tuple(written.pop(name, ())) for name in LISTS}
    except FileNotFoundError:
        raise PageDataError(f"docs/{page}.toml is not there: a part or a place has its data beside it") from None
    except (tomllib.TOMLDecodeError, TypeError) as error:
        raise PageDataError(f"{page}.toml: {in_words(error)}") from error
    if written:
        raise PageDataError(f"{page}.toml: does not know {', '.join(written)}")
    data = PageData(page=page, checks=checks, exercise=exercise, **listed)
    _validate(data)
    return data


def in_words(error: Exception) -> str:
    """Return what is wrong with a row of TOML, in words that name its fields and no Python.

    >>> in_words(TypeError("Term.__init__() missing 1 required positional argument: 'meaning'"))
    "a term lacks 'meaning'"
    >>> in_words(TypeError("Check.__init__() got an unexpected keyword argument 'colour'"))
    "a check knows no 'colour'"
    """
    words = re.sub(r"^(\w+)\.__init__\(\) ", lambda found: f"a {found[1].lower()} ", str(error))
    words = re.sub(r"missing \d+ required positional arguments?: ", "lacks ", words)
    return re.sub(r"got an unexpected keyword argument ", "knows no ", words)


def check_at(address: str) -> Check:
    """Return the check of an address like "parts/main-bonding-jumper#in-place". Raises: PageDataError."""
    page, _, wanted = address.partition("#")
    for check in page_data(page).checks:
        if check.id == wanted:
            return check
    raise PageDataError(f"{address}: there is no such check")


@cache
def linked_pages() -> dict[str, list[str]]:
    """Return for every page the pages to see also: what it names, then whatever names it."""
    linked = {page: list(page_data(page).see_also) for page in pages()}
    for page in pages():
        for other in page_data(page).see_also:
            back = linked.setdefault(other, [])
            if page not in back:
                back.append(page)
    return linked


@cache
def title_of(page: str) -> str:
    """Return the title of a page of `docs`, the one in the menu: a calculator's says what it does.

    A page that is not there gets its address for a name; the link to it then fails the build.
    Raises: PageDataError, for a calculator that is not there.
    """
    if page.startswith("calculators/") and page.removeprefix("calculators/") not in CALCULATORS:
        raise PageDataError(f"{page}: there is no such calculator")
    file = DOCS / f"{page}.md"
    if not file.is_file():
        return page
    heading = next(line for line in file.read_text(encoding="utf-8").splitlines() if line.startswith("# "))
    return heading.removeprefix("# ").partition(" {")[0]


def _check(page: str, row: Data) -> Check:
    stated: Data = {**row, "sections": tuple(row.get("sections", ()))}
    return Check(page=page, **stated)


def _stated(page: str, key: str, edition: str) -> None:
    try:
        rule(key, edition)
    except RuleError as error:
        raise PageDataError(f"{page}.toml: {error}") from error


def _exercise(row: Data) -> Exercise:
    inputs = tuple((name, str(value)) for name, value in row.pop("inputs", {}).items())
    stated: Data = {**row, "steps": tuple(row.get("steps", ())), "inputs": inputs}
    return Exercise(**stated)


def _validate(data: PageData) -> None:
    ids = [check.id for check in data.checks]
    if len(set(ids)) != len(ids):
        raise PageDataError(f"{data.page}.toml: gives an id of a check twice")
    for check in data.checks:
        if not check.sections:
            raise PageDataError(f"{data.page}.toml: the check {check.id} names no section")
    for key in {*data.about, *(key for check in data.checks for key in check.sections)}:
        for edition in EDITIONS:
            _stated(data.page, key, edition)
    for caution in data.cautions:
        if caution not in CAUTIONS:
            raise PageDataError(f"{data.page}.toml: knows no caution {caution!r}, only {', '.join(CAUTIONS)}")
    for other in data.see_also:
        title_of(other)
    if data.exercise and data.exercise.calculator:
        _hold_to_its_calculator(data.page, data.exercise)


def _hold_to_its_calculator(page: str, asked: Exercise) -> None:
    inputs = dict(asked.inputs)
    if inputs.get("edition", "") not in asked.question:
        raise PageDataError(f"{page}.toml: the exercise has an edition that its question does not name")
    for edition in asked.editions:
        said = CALCULATORS[asked.calculator](**inputs | {"edition": edition}).answer_code
        if said != asked.said:
            raise PageDataError(
                f"{page}.toml: the exercise says {asked.said!r}, computed is {said!r} in the {edition} edition"
            )
