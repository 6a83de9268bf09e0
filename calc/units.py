"""One pint registry on a small definition file of our own; quantities live at the edges."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

from calc.data_file import data_text

if TYPE_CHECKING:
    import pint


@cache
def registry() -> pint.UnitRegistry:
    """Return the registry. It is filled line by line: a file inside the browser's bundle has no path."""
    import pint  # a quarter of the start on a phone, and most answers convert nothing

    units = pint.UnitRegistry(None)
    units.load_definitions(data_text("units.txt").splitlines())
    return units


def convert(value: float, unit: str, wanted: str) -> float:
    """Return `value` in `unit` as a bare number in `wanted`. Raises: pint.errors.DimensionalityError.

    >>> round(convert(6, "ft", "m"), 4)
    1.8288
    """
    quantity: Any = registry().Quantity(value, unit)  # pint types it by what numbers it may hold; ours are floats
    return quantity.to(wanted).magnitude

