"""One pint registry on a small definition file of our own; quantities live at the edges."""

from __future__ import annotations

import re
from functools import cache
from pkgutil import get_data
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import pint

_WRITTEN = re.compile(r"([0-9][0-9,]*(?:\.[0-9]+)?(?:e-[0-9]+)?|\.[0-9]+)\s*([A-Za-zΩ][A-Za-zΩ0-9]*)?")

MARKS = {'"': "in", "″": "in", "'": "ft", "′": "ft"}


@cache
def registry() -> pint.UnitRegistry:
    """Give the registry. It is filled line by line: a file inside the browser's bundle has no path."""
    import pint  # a quarter of the start on a phone, and most answers convert nothing

    units = pint.UnitRegistry(None)
    units.load_definitions(get_data("calc", "units.txt").decode().splitlines())
    return units


def convert(value: float, unit: str, wanted: str) -> float:
    """Give `value` in `unit` as a bare number in `wanted`. Raises: pint.errors.DimensionalityError.

    >>> round(convert(6, "ft", "m"), 4)
    1.8288
    """
    return registry().Quantity(value, unit).to(wanted).magnitude


def read_quantity(text: str, unit: str) -> float:
    """Give a written quantity ("150ft", "46 m", "200A", "200") as a bare number in `unit`.

    A number without a unit counts in `unit`; capitals ("200 AMPS"), inch and foot marks (72") are read too, and a tiny
    number as links write it ("1e-07"). Twelve digits are kept, so that 72 in is 6 ft.
    Raises: ValueError when the text is no number with a unit of the same kind.

    >>> read_quantity("150 ft", "ft"), read_quantity("200", "A"), read_quantity('72"', "ft")
    (150.0, 200.0, 6.0)
    """
    for mark, name in MARKS.items():
        text = text.replace(mark, name)
    written = _WRITTEN.fullmatch(text.strip())
    if not written:
        raise ValueError(text)
    number = float(written[1].replace(",", ""))
    if written[2] in (None, unit):
        return number
    for spelling in (written[2], written[2].lower()):
        try:
            return float(f"{convert(number, spelling, unit):.12g}")
        except (AttributeError, TypeError):  # what pint's unknown unit and wrong dimension are
            continue
    raise ValueError(text)
