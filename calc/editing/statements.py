"""The text of a rule's file: what one edition states is put in or changed, all else stays as it is written."""

from __future__ import annotations

import re
import tomllib
from typing import Any

from calc.data_file import Data, Value
from calc.rulebook import DATED, KINDS

_BEGINS = re.compile(r"(?m)^\[editions\.([^\]\n]+)\]$")
_ORDER = ("same_as", "section", "mark", "sources", "note", "value", "rows")


def with_statement(text: str, edition: str, stated: Data) -> str:
    """Return the text of a rule with what `edition` states now; a new edition is put in its order.

    Raises: ValueError for a rule that is not stated by edition.
    """
    head, blocks = _blocks(text)
    blocks[edition] = written_statement(edition, stated)
    ordered = "\n".join(blocks[each].rstrip() + "\n" for each in sorted(blocks))
    changed = f"{head.rstrip()}\n\n{ordered}"
    expected = tomllib.loads(text)
    expected[DATED][edition] = stated
    if tomllib.loads(changed) != expected:
        raise ValueError(f"{edition} cannot be written into this rule")
    return changed


def written_statement(edition: str, stated: Data) -> str:
    """Return what an edition states, as the rules' files write it.

    >>> stated = {"section": "250.28", "mark": "memory", "sources": [], "rows": [{"size": "8"}]}
    >>> print(written_statement("2029", stated))
    [editions.2029]
    section = "250.28"
    mark = "memory"
    sources = []
    rows = [
        { size = "8" },
    ]
    """
    fields = sorted(stated, key=_ORDER.index)
    return "\n".join([f"[{DATED}.{edition}]", *(f"{name} = {_field(name, stated[name])}" for name in fields)])


def written(value: Value) -> str:
    """Return a text, number, truth or list of them as TOML."""
    if isinstance(value, str):
        escaped = value.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")
        return f'"{escaped}"'
    if isinstance(value, list):
        return f"[{', '.join(map(written, value))}]"
    return str(value).lower() if isinstance(value, bool) else repr(value)


def carrier(document: Data, edition: str) -> str:
    """Return the edition that states the figures of `edition`: itself, or the one it is the same as."""
    return document[DATED][edition].get("same_as", edition)


def with_figures(document: Data, edition: str, figures: object) -> dict[str, Data]:
    """Return what the editions of a rule state once `edition` has figures of its own.

    Editions that were the same as it keep the figures they had: the oldest of them states them from now on.
    """
    name = KINDS[document["kind"]]
    stated = {each: dict(dated) for each, dated in document[DATED].items()}
    followers = sorted(each for each, dated in stated.items() if dated.get("same_as") == edition)
    if followers:
        first, *others = followers
        del stated[first]["same_as"]
        stated[first][name] = stated[edition][name]
        for other in others:
            stated[other]["same_as"] = first
    stated[edition].pop("same_as", None)
    stated[edition][name] = figures
    return stated


def _blocks(text: str) -> tuple[str, dict[str, str]]:
    head, *rest = _BEGINS.split(text)
    if not rest:
        raise ValueError("this rule is not stated by edition")
    return head, {
        edition: f"[{DATED}.{edition}]{block}" for edition, block in zip(rest[::2], rest[1::2], strict=True)
    }


def _field(name: str, value: Any) -> str:
    if name != "rows":
        return written(value)
    rows = (", ".join(f"{key} = {written(each)}" for key, each in row.items()) for row in value)
    return "\n".join(["[", *(f"    {{ {row} }}," for row in rows), "]"])
