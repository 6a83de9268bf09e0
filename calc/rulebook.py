"""The only reader of `calc/rules`: every figure and section, dated by edition.

A rule is one TOML file. Its key is the path below `rules`, without the ending, at which it was first published: links,
JSON and anchors use it, so it stays when the file is moved, and `moved.toml` then says where the file is. A rule of the
code states each edition: in full, or `same_as` another edition, which is a claim with its own mark and sources; silence
about an edition is an error. What no edition states, as physics and other standards, stands once, as `every_edition`.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from typing import Any

from calc.data_file import Data, data_text
from calc.editions import EDITIONS
from calc.messages import Message, message

KINDS = {"value": "value", "step": "rows", "choice": "rows", "section": None}
MARKS = ("confirmed", "computed", "practice", "memory")
RULE_FIELDS = {"title", "kind", "unit", "applies"}
DATED, UNDATED = "editions", "every_edition"
EDITION_FIELDS = {"section", "mark", "sources", "note"}

type Figures = Data  # one row of a rule: a figure by the name of its column


class RuleError(Exception):
    """A rule file breaks the schema; the message names the rule and what is wrong."""


@dataclass(frozen=True)
class Rule:
    """One rule as it stands in one edition.

    `section` is where the edition states it; `mark` how that was checked; `sources` the
    keys of the texts seen; `value` (kind value) or `rows` (kinds step and choice) its figures.
    """

    key: str
    title: Message
    kind: str
    unit: str
    applies: Message
    edition: str
    section: str
    mark: str
    sources: tuple[str, ...]
    note: Message
    value: Any
    rows: tuple[Figures, ...]


@cache
def rule(key: str, edition: str) -> Rule:
    """Return the rule `key`, or the one that states its fact now, as `edition` states it. Raises: RuleError."""
    key = aliases().get(key, key)
    if edition not in EDITIONS:
        raise RuleError(f"{key}: no edition {edition!r}; the editions are {', '.join(EDITIONS)}")
    document = _document(key)
    dated, figures = _stated(document, edition)
    return Rule(
        key=key,
        title=message(document["title"]),
        kind=document["kind"],
        unit=document["unit"],
        applies=message(document["applies"]),
        edition=edition,
        section=dated["section"],
        mark=dated["mark"],
        sources=tuple(dated["sources"]),
        note=message(dated.get("note", "")),
        value=figures.get("value"),
        rows=tuple(figures.get("rows", ())),
    )


def every_edition(key: str) -> tuple[Rule, ...]:
    """Return the rule as each edition states it, oldest first: for the limits of a field, that hold for any of them."""
    return tuple(rule(key, edition) for edition in EDITIONS)


@cache
def undated(key: str) -> Rule:
    """Return a rule whose figures are the same in every edition, for a reader that is told no edition.

    Raises: RuleError where they differ: then its reader has to be told the edition.
    """
    first, *others = every_edition(key)
    differing = [other.edition for other in others if (other.value, other.rows) != (first.value, first.rows)]
    if differing:
        raise RuleError(f"{key}: {differing[0]} has other figures, and what reads them is told no edition")
    return first


@cache
def sources() -> dict[str, Data]:
    """Return every published text that a rule names, by key: title, kind, seen."""
    return _read("sources.toml")


@cache
def aliases() -> dict[str, str]:
    """Return the rule that states a fact now, by the key it was published under."""
    return _read("aliases.toml")


@cache
def moved() -> dict[str, str]:
    """Return where the file of a rule is now, by its key, for every rule whose file was moved."""
    return _read("moved.toml")


@cache
def changes() -> Data:
    """Return the record of published answers that changed: `version` and `change` rows."""
    nothing: Data = {"change": []}
    return nothing | _read("changes.toml")


def forget() -> None:
    """Forget the rules that were given out, for whoever puts other documents in their place."""
    rule.cache_clear()
    undated.cache_clear()


def rule_keys() -> list[str]:
    """Return the key of every rule there is, sorted. It looks into the folder, so not inside the browser's bundle."""
    from pathlib import Path  # only builds and tests list the rules

    rules = Path(__file__).parent / "rules"
    files = [file.relative_to(rules).with_suffix("").as_posix() for file in rules.glob("*/**/*.toml")]
    keys = {file: key for key, file in moved().items()}
    return sorted(keys.get(file, file) for file in files)


def file_of(key: str) -> str:
    """Return the path below `rules`, without the ending, of the file that states a rule."""
    return moved().get(key, key)


def validate(key: str, document: Data) -> None:
    """Hold a rule's document to the schema. Raises: RuleError."""

    def error(why: str) -> RuleError:
        return RuleError(f"{key}: {why}")

    if len({DATED, UNDATED} & set(document)) != 1 or set(document) - {DATED, UNDATED} != RULE_FIELDS:
        raise error(f"has the fields {sorted(document)}, not {sorted(RULE_FIELDS)} and {DATED} or {UNDATED}")
    if document["kind"] not in KINDS:
        raise error(f"kind {document['kind']!r} is none of {sorted(KINDS)}")
    if DATED in document and set(document[DATED]) != set(EDITIONS):
        raise error(f"states the editions {sorted(document[DATED])}, not {list(EDITIONS)}")
    figures = KINDS[document["kind"]]
    for edition, dated in statements(document).items():
        allowed = EDITION_FIELDS | {"same_as" if "same_as" in dated else figures} - {None}
        if not {"section", "mark", "sources"} <= set(dated) <= allowed:
            takes = f"it needs mark, section and sources, and takes no other than {sorted(filter(None, allowed))}"
            raise error(f"{edition} has the fields {sorted(dated)}; {takes}")
        if "same_as" in dated:
            if figures not in statements(document).get(dated["same_as"], {}):
                raise error(f"{edition} is the same as {dated['same_as']!r}, which states nothing")
        elif figures and not dated.get(figures):
            raise error(f"{edition} states no {figures}")
        if dated["mark"] not in MARKS:
            raise error(f"{edition} has the mark {dated['mark']!r}, none of {MARKS}")
        if dated["mark"] == "confirmed" and not dated["sources"]:
            raise error(f"{edition} is marked confirmed and names no source")
        for source in dated["sources"]:
            if source not in sources():
                raise error(f"{edition} names the source {source!r}, which sources.toml lacks")


def statements(document: Data) -> dict[str, Data]:
    """Return what a rule's document states, by edition, or the one statement for every edition."""
    return document[DATED] if DATED in document else {UNDATED: document[UNDATED]}


def _stated(document: Data, edition: str) -> tuple[Data, Data]:
    """Return the statement of an edition, and the one that holds its figures."""
    stated = statements(document)
    dated = stated[edition] if DATED in document else stated[UNDATED]
    return dated, stated[dated["same_as"]] if "same_as" in dated else dated


def document(key: str) -> Data:
    """Return a rule as its file states it, held to the schema. Raises: RuleError."""
    return _document(key)


@cache
def _document(key: str) -> Data:
    document = _read(f"{file_of(key)}.toml")
    validate(key, document)
    return document


def _read(path: str) -> Data:
    try:
        return tomllib.loads(data_text(f"rules/{path}"))
    except FileNotFoundError:
        raise RuleError(f"{path}: no such rule") from None
    except tomllib.TOMLDecodeError as fault:
        raise RuleError(f"calc/rules/{path} is no TOML: {fault}") from None
