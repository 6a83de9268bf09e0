"""The safety case as data: how each calculator, check list and drawing could lead someone into harm.

`site_assets/hazards/calculators/main-bonding-jumper.toml` holds the hazards of that calculator; `checks.toml`,
`drawings.toml` and `handbook.toml` beside it hold those of check lists, drawings and the handbook as a whole,
each row with `of`: the page of the list or the name of the drawing.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from calc.data_file import Data

DATA = Path(__file__).parents[1] / "hazards"
CALCULATOR, CHECKS, DRAWING, HANDBOOK = "calculators", "checks", "drawings", "handbook"
KINDS = (CALCULATOR, CHECKS, DRAWING, HANDBOOK)
DEATH, INJURY, WORK = "death", "injury", "work"
GRAVITY = (DEATH, INJURY, WORK)


class HazardError(Exception):
    """The safety case leaves something out; the message names what it is missing for."""


@dataclass(frozen=True)
class Hazard:
    """One way to harm: how it comes about, how grave it is, what stops it, and the test that proves the stop.

    `file`, `old` and `new` are the mutant: the edit that brings the hazard back, so that the test must fail.
    """

    kind: str
    of: str
    id: str
    harm: str
    grave: str
    stop: str
    test: str
    file: str
    old: str
    new: str

    @property
    def key(self) -> str:
        """Return its name among all hazards, like "main-bonding-jumper/breaker-sizes-it"."""
        return f"{self.of}/{self.id}"


@cache
def hazards() -> tuple[Hazard, ...]:
    """Return every hazard, by kind and in the order of its file. Raises: HazardError, for a row out of shape."""
    found = [
        _hazard(CALCULATOR, row | {"of": file.stem}, file.name)
        for file in sorted((DATA / CALCULATOR).glob("*.toml"))
        for row in _rows(file)
    ]
    for kind in KINDS[1:]:
        found += [_hazard(kind, row, f"{kind}.toml") for row in _rows(DATA / f"{kind}.toml")]
    return tuple(found)


def hazards_of(kind: str, of: str) -> tuple[Hazard, ...]:
    """Return the hazards of one calculator, check list or drawing. Raises: HazardError, where there are none."""
    found = tuple(each for each in hazards() if (each.kind, each.of) == (kind, of))
    if not found:
        raise HazardError(f"{of} has no hazard in site_assets/hazards ({kind}): say how it could harm, and the stop")
    return found


def _rows(file: Path) -> list[Data]:
    written = tomllib.loads(file.read_text(encoding="utf-8"))
    rows = written.pop("hazard", [])
    if written:
        raise HazardError(f"{file.name}: does not know {', '.join(written)}")
    return rows


def _hazard(kind: str, row: Data, file: str) -> Hazard:
    try:
        hazard = Hazard(kind=kind, **row)
    except TypeError as error:
        raise HazardError(f"{file}, {row.get('id', 'a row without id')}: {error}") from error
    if hazard.grave not in GRAVITY:
        raise HazardError(f"{file}, {hazard.id}: grave is one of {', '.join(GRAVITY)}")
    return hazard
