"""Conductor sizes are ordered labels: "18" to "1", "1/0" to "4/0", "250kcmil" to "2000kcmil".

The label is the one spelling used in links, JSON, cases and rules.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from calc.conductors.area import sizes_of_any_edition
from calc.conductors.dictated import in_figures
from calc.field import UnclearError
from calc.messages import message

_METAL = r"CU|COPPER|AL|ALUM|ALUMINUM|ALUMINIUM|CCA|COPPER[ -]CLAD(?: ALUMINUM)?"
# Blanks stand around the stroke and the words only: "1 0" is neither 10 AWG nor surely 1/0.
_WRITTEN = re.compile(
    rf"(?:(?P<before>{_METAL}) )?"
    r"(?:\(?(?P<sets>\d{1,2})(?P<joined>\) ?[-X]?|[-X]| [-X]|"
    r"(?: PARALLEL)?(?: SETS?| RUNS?| PER PHASE)?(?: IN PARALLEL)?(?: OF)? ) ?)?"
    r"(?:(?:NO\.?|AWG) ?)?#? ?(?P<number>[12],\d{3}|\d{1,4}|[1-4] ?/ ?0|0{1,4}) ?(?P<unit>AWG|KCMIL|MCM)?"
    rf"(?P<metal>[ ,]*(?:{_METAL})\.?)?"
)
_STROKES = str.maketrans(dict.fromkeys("\N{FRACTION SLASH}\N{DIVISION SLASH}", "/") | {"×": "X", "–": "-"})
# Numbers that a drawing puts before a size for the wires in one conduit, as often as for sets in parallel.
_WIRES_IN_A_CONDUIT = (3, 4)
_SMALLEST_IN_PARALLEL = "1/0"


@dataclass(frozen=True)
class WrittenConductors:
    """What someone wrote of conductors: the size of one, and, where they said it, how many a phase and of what."""

    size: str
    sets: int | None = None
    metal: str | None = None


def read_size(text: str) -> str:
    """Return the label of a size as people write it.

    Raises: ValueError when no listed size is written so, UnclearError when more than the size is.

    >>> read_size("000"), read_size("3/0 AWG"), read_size("500 MCM"), read_size("#4"), read_size("three aught")
    ('3/0', '3/0', '500kcmil', '4', '3/0')
    """
    size, more = _parts(text)
    if more["sets"] or more["metal"] or more["before"]:
        raise UnclearError(
            message(
                "Enter the size of one conductor only, such as 3/0. Its material and the number in parallel have their "
                "own fields, where they apply."
            )
        )
    return size


def read_conductors(text: str) -> WrittenConductors:
    """Return a size with the number in parallel and the metal that were written beside it.

    A number that may count something else is refused: 12-2 and 6-3 are cables, 2-0 is 2/0 to many, and on a drawing
    3-500 and (4) 3/0 are as often the wires in one conduit.
    Raises: as `read_size`.

    >>> read_conductors("2-3/0"), read_conductors("3/0 AL").metal, read_conductors("two sets of three aught").sets
    (WrittenConductors(size='3/0', sets=2, metal=None), 'aluminum', 2)
    """
    size, more = _parts(text)
    metal = more["metal"] or more["before"]
    if more["sets"]:
        _require_sets(int(more["sets"]), more["joined"].strip(" )"), size, more["number"])
    return WrittenConductors(size, int(more["sets"]) if more["sets"] else None, _metal(metal) if metal else None)


def shown_size(label: str) -> str:
    """Return a label as it is read out: "3/0 AWG", "500 kcmil".

    >>> shown_size("3/0"), shown_size("500kcmil")
    ('3/0 AWG', '500 kcmil')
    """
    return label.replace("kcmil", " kcmil") if label.endswith("kcmil") else f"{label} AWG"


def _parts(text: str) -> tuple[str, dict[str, str]]:
    """Return the label of the size in a text, and the parts that were written."""
    spelled = " ".join(text.upper().split()).translate(_STROKES)
    spelled = in_figures(spelled) if spelled.isascii() and any(map(str.isalpha, spelled)) else spelled
    written = _WRITTEN.fullmatch(spelled) if spelled.isascii() else None
    if not written or (written["sets"] and not written["joined"].strip()):  # "2 3/0", "1 0"
        raise ValueError(text)
    number, unit = re.sub("[ ,]", "", written["number"]), written["unit"]
    if set(number) == {"0"}:
        number = f"{len(number)}/0"
    is_kcmil = "/" not in number and int(number) >= 250
    label = f"{number}kcmil" if is_kcmil else number
    if label not in sizes_of_any_edition() or (unit and (unit == "AWG") == is_kcmil):
        raise ValueError(text)
    return label, written.groupdict("")


def _require_sets(sets: int, joined: str, size: str, number: str) -> None:
    """Raise UnclearError for a number that may be no number in parallel."""
    in_words = len(joined) > 1 or joined == "X"
    sizes = list(sizes_of_any_edition())
    cable = sizes.index(size) < sizes.index(_SMALLEST_IN_PARALLEL) or set(number) == {"0"}
    if in_words or not (cable or sets in _WIRES_IN_A_CONDUIT):
        return
    raise UnclearError(
        message(
            "The first number may count wires in one conduit or cable. Enter the size of one conductor only, such as "
            "3/0, and the number in parallel per phase in its own field. Or write it out: {sets} sets of 3/0.",
            sets=sets,
        )
    )


def _metal(written: str) -> str:
    """Return the value of a metal that was written in any usual way."""
    word = written.strip(" ,.")
    if word == "CCA" or "CLAD" in word:
        return "copper-clad-aluminum"
    return "copper" if word.startswith("C") else "aluminum"
