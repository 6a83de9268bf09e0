"""The record of what was answered in the domain: kept with the rules, held against what is answered today."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby
from pathlib import Path

from calc.data_file import Data
from calc.editing.domain import DOMAIN, answers, declared, inputs_of
from calc.editing.tree import ROOT, text_of
from calc.editions import EDITIONS
from calc.rulebook import changes

RECORD = Path("calc/editing/answers.json")


@dataclass(frozen=True)
class Changed:
    """One answer of the domain that is another one now."""

    calculator: str
    edition: str
    inputs: dict[str, str]
    was: str
    now: str


def record_of(before: Data | None = None, editions: Iterable[str] = EDITIONS) -> Data:
    """Return the record of today's answers; calculators and editions that are not asked stay as `before` has them."""
    record = {"rules": changes()["version"], "changes": sorted(row["id"] for row in changes()["change"])}
    asked = set(editions)
    record["answers"] = {}
    for slug in DOMAIN:
        kept = (before or {}).get("answers", {}).get(slug, {}).get("editions", {})
        today = {
            edition: packed(answers(slug, edition)) if edition in asked else _held(kept, edition)
            for edition in EDITIONS
            if edition in asked or edition in kept
        }
        digest = hashlib.sha256(json.dumps(today, sort_keys=True).encode()).hexdigest()[:16]
        record["answers"][slug] = {"asked": declared(slug), "digest": digest, "editions": _shortened(today)}
    return record


def _shortened(today: dict[str, str]) -> dict[str, str]:
    """Return the answers by edition, "=2017" where an edition answers all as 2017 does."""
    first: dict[str, str] = {}
    for edition, text in today.items():
        first.setdefault(text, edition)
    return {edition: text if first[text] == edition else f"={first[text]}" for edition, text in today.items()}


def _held(editions: dict[str, str], edition: str) -> str:
    text = editions[edition]
    return editions[text[1:]] if text.startswith("=") else text


def recorded(record: Data, slug: str, edition: str) -> list[str]:
    """Return the recorded answers of a calculator in an edition, in the domain's order."""
    return unpacked(_held(record["answers"][slug]["editions"], edition))


def packed(listed: list[str]) -> str:
    """Return answers as one text, runs of the same one counted.

    >>> packed(["8-copper", "8-copper", "6-copper"])
    '8-copper*2 6-copper'
    """
    runs = ((answer, sum(1 for _ in run)) for answer, run in groupby(listed))
    return " ".join(f"{answer}*{count}" if count > 1 else answer for answer, count in runs)


def unpacked(text: str) -> list[str]:
    """Return the answers of `packed`.

    >>> unpacked("8-copper*2 6-copper")
    ['8-copper', '8-copper', '6-copper']
    """
    runs = (run.partition("*") for run in text.split(" "))
    return [answer for answer, _, count in runs for _ in range(int(count or 1))]


def read_record() -> Data:
    """Return the record that stands in the tree."""
    return json.loads(text_of(RECORD))


def record_text(record: Data) -> str:
    """Return a record as its file holds it."""
    return json.dumps(record, indent=1, ensure_ascii=False) + "\n"


def has_record() -> bool:
    """Tell whether the tree has a record."""
    return (ROOT / RECORD).exists()


def unrecorded(record: Data) -> list[str]:
    """Return the calculators and editions of which the record does not hold what is asked today."""
    held = record["answers"]
    return [
        f"{slug} {edition}"
        for slug in DOMAIN
        for edition in EDITIONS
        if held.get(slug, {}).get("asked") != declared(slug) or edition not in held[slug]["editions"]
    ]


def changed(slug: str, edition: str, was: list[str], now: list[str]) -> Iterator[Changed]:
    """Return every answer of a calculator in an edition that differs between two lists in the domain's order."""
    for inputs, before, after in zip(inputs_of(slug), was, now, strict=True):
        if before != after:
            yield Changed(slug, edition, inputs, before, after)


def changed_since(record: Data, slugs: Iterable[str] = DOMAIN, editions: Iterable[str] = EDITIONS) -> list[Changed]:
    """Return every answer that is not the recorded one, of the calculators and editions asked."""
    unheld = set(unrecorded(record))
    return [
        each
        for slug in slugs
        for edition in editions
        if f"{slug} {edition}" not in unheld
        for each in changed(slug, edition, recorded(record, slug, edition), answers(slug, edition))
    ]


def explained(each: Changed, record: Data) -> bool:
    """Tell whether a row of changes.toml that is newer than the record speaks of a changed answer."""
    return any(
        row["calculator"] == each.calculator
        and each.edition in row["editions"]
        and all(each.inputs.get(name) in meant for name, meant in row.get("when", {}).items())
        for row in changes()["change"]
        if row["id"] not in record["changes"]
    )
