"""Conductor sizes are ordered labels: "18" to "1", "1/0" to "4/0", "250kcmil" to "2000kcmil".

The label is the one spelling used in links, JSON, cases and rules.
"""

from __future__ import annotations

import re

from calc.conductors.area import sizes_of_any_edition
from calc.field import UnclearError
from calc.messages import message

# Blanks stand around the stroke and the words only: "1 0" is neither 10 AWG nor surely 1/0.
_WRITTEN = re.compile(
    r"(?:\(?(?P<sets>\d{1,2})(?:\) ?[-X]?|[-X]| [-X]|(?: SETS?)? OF) ?)?"
    r"(?:(?:NO\.?|AWG) ?)?#? ?(?P<number>[12],\d{3}|\d{1,4}|[1-4] ?/ ?0|0{1,4}) ?(?P<unit>AWG|KCMIL|MCM)?"
    r"(?P<metal>[ ,]*(?:CU|COPPER|AL|ALUM|ALUMINUM|ALUMINIUM|CCA|COPPER-CLAD ALUMINUM)\.?)?"
)
_STROKES = str.maketrans(dict.fromkeys("\N{FRACTION SLASH}\N{DIVISION SLASH}", "/") | {"×": "X", "–": "-"})


def read_size(text: str) -> str:
    """Return the label of a size as people write it.

    Raises: ValueError when no listed size is written so, UnclearError when more than the size is.

    >>> read_size("000"), read_size("3/0 AWG"), read_size("500 MCM"), read_size("#4")
    ('3/0', '3/0', '500kcmil', '4')
    """
    spelled = " ".join(text.upper().split()).translate(_STROKES)
    written = _WRITTEN.fullmatch(spelled) if spelled.isascii() else None
    if not written:
        raise ValueError(text)
    number, unit = re.sub("[ ,]", "", written["number"]), written["unit"]
    if set(number) == {"0"}:
        number = f"{len(number)}/0"
    is_kcmil = "/" not in number and int(number) >= 250
    label = f"{number}kcmil" if is_kcmil else number
    if label not in sizes_of_any_edition() or (unit and (unit == "AWG") == is_kcmil):
        raise ValueError(text)
    if written["sets"] or written["metal"]:
        raise UnclearError(
            message(
                "Enter the size of one conductor only, such as 3/0. Its material and the number in parallel have their "
                "own fields, where they apply."
            )
        )
    return label


def shown_size(label: str) -> str:
    """Return a label as it is read out: "3/0 AWG", "500 kcmil".

    >>> shown_size("3/0"), shown_size("500kcmil")
    ('3/0 AWG', '500 kcmil')
    """
    return label.replace("kcmil", " kcmil") if label.endswith("kcmil") else f"{label} AWG"
