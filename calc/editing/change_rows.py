"""Changed answers as rows for changes.toml: one row for each answer that became another one, with the cases meant."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable

from calc.editing.answer_record import Changed
from calc.editing.domain import inputs_of
from calc.editing.statements import written

TO_BE_WRITTEN = "Write here why."


def listing(changed: Iterable[Changed]) -> str:
    """Return every changed answer, one a line, by calculator and edition."""
    return "\n".join(
        f"{each.calculator} {each.edition}: {shown(each.inputs)}: {each.was} -> {each.now}" for each in changed
    )


def shown(inputs: dict[str, str]) -> str:
    """Return inputs as they are written on the command line."""
    return " ".join(f"{name}={value}" for name, value in inputs.items())


def change_rows(changed: list[Changed], version: int, date: str, why: Callable[[Changed], str]) -> str:
    """Return `[[change]]` rows that explain every changed answer; `when` names the values that the cases have.

    why: gives the reason of one of them, from its first case.
    """
    groups: dict[tuple[str, str, str], list[Changed]] = {}
    for each in changed:
        groups.setdefault((each.calculator, each.was, each.now), []).append(each)
    return "\n".join(_row(cases, version, date, why) for cases in groups.values())


def _row(cases: list[Changed], version: int, date: str, why: Callable[[Changed], str]) -> str:
    first = cases[0]
    editions = sorted({each.edition for each in cases})
    name = re.sub(r"[^a-z0-9]+", "-", f"{first.calculator}-{first.was}-{first.now}-{'-'.join(editions)}".lower())
    row = {
        "id": name.strip("-"),
        "rules": version,
        "date": date,
        "calculator": first.calculator,
        "editions": editions,
        "was": first.was,
        "now": first.now,
        "why": why(first),
    }
    lines = ["[[change]]", *(f"{field} = {written(value)}" for field, value in row.items())]
    when = _when(cases)
    if when:
        lines.append(f"when = {{ {', '.join(f'{field} = {written(values)}' for field, values in when.items())} }}")
    return "\n".join(lines) + "\n"


def _when(cases: list[Changed]) -> dict[str, list[str]]:
    """Return by field the values that the cases have, where the domain has others; a field left out has none."""
    asked = list(inputs_of(cases[0].calculator))
    meant: dict[str, list[str]] = {}
    for field in cases[0].inputs:
        here = list(dict.fromkeys(value for each in cases if (value := each.inputs.get(field)) is not None))
        everywhere = all(each.inputs.get(field) is not None for each in cases)
        if everywhere and {inputs.get(field) for inputs in asked} != set(here):
            meant[field] = here
    return meant
