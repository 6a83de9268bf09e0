"""Reads the worked cases: each with inputs, what is expected, its source and mark.

One file for each calculator, where its package stands: `tests/cases/fault/device/device_clearing.toml`. A comment at
its head says what the expected values mean. Then rows:

    [[case]]
    id = "W004"                                  # once in its file; test reports name it
    editions = ["2017", "2020", "2023", "2026"]  # those the source speaks for
    inputs = { conductor = "4/0", sets = "1" }   # as a link writes them
    size = "4"                                   # what is expected, in whatever keys the calculator's test reads
    reason = "4/0 aluminum is in the row that asks for 4 copper"
    source = "where the expected value comes from: never our own output"
    mark = "published"                           # how sure that is, one of MARKS

published: the case or its value was seen in the text named. computed: it follows from a definition, worked by hand or
by another program. memory: the rule and the arithmetic, from memory. confirmed: as published, in the book itself.
"""

import tomllib
from collections import Counter
from pathlib import Path

from calc import EDITIONS

FOLDER = Path(__file__).parent
TOLD = ("id", "editions", "inputs", "reason", "source", "mark")
MARKS = ("published", "confirmed", "computed", "memory")


class CaseError(Exception):
    """A file of cases cannot be used; the message names the file, the case and what to change."""


def cases(name: str) -> list[tuple[str, dict]]:
    """Return (edition, case) for every case of a file and every edition it speaks for. Raises: CaseError."""
    file = FOLDER / f"{name}.toml"
    if not file.is_file():
        raise CaseError(f"{name}.toml: there is no such file below tests/cases")
    return [(edition, case) for case in read(name, file.read_text(encoding="utf-8")) for edition in case["editions"]]


def read(name: str, text: str) -> list[dict]:
    """Return the cases that a file's text states, each of them whole. Raises: CaseError."""
    try:
        document = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise CaseError(f"{name}.toml: {error}") from None
    rows = document.get("case")
    if set(document) != {"case"} or not isinstance(rows, list):
        raise CaseError(f"{name}.toml: it has the tables {sorted(document)}; write [[case]] rows and nothing else")
    for number, case in enumerate(rows, start=1):
        if why := _fault(case):
            raise CaseError(f"{name}.toml, case {case.get('id', number)}: {why}")
    twice = [each for each, count in Counter(case["id"] for case in rows).items() if count > 1]
    if twice:
        raise CaseError(f"{name}.toml, case {twice[0]}: the id is there twice; give each case its own")
    return rows


def _fault(case: dict) -> str:
    """Return what is wrong with a case and what to write, "" when it is whole."""
    missing = [each for each in TOLD if each not in case]
    if missing:
        return f"it lacks {', '.join(missing)}"
    unknown = [str(each) for each in case["editions"] if each not in EDITIONS]
    if unknown or not case["editions"]:
        return f"editions are {', '.join(EDITIONS)} as text, not {', '.join(unknown) or 'none'}"
    if not isinstance(case["inputs"], dict):
        return 'inputs are a table, { conductor = "4/0" }'
    if case["mark"] not in MARKS:
        return f"the mark is one of {', '.join(MARKS)}, not {case['mark']!r}"
    return "" if str(case["source"]).strip() else "source is empty"


def named(pair: tuple[str, dict]) -> str:
    """Return the name of a case in test reports."""
    edition, case = pair
    return f"{case['id']}-{edition}"
