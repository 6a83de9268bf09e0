"""The smallest hot conductor that an overcurrent device asks for: a larger one may have been run on purpose.

It tells only whether to ask. Ambient temperature and bundling may need more, and a load smaller than the device less.
"""

from __future__ import annotations

from calc.conductors.ampacity import AMPACITY_RULE, TABLE_COLUMN
from calc.conductors.area import area
from calc.rulebook import rule

SMALL = "conductors/small_conductor_device"
PARALLEL = "conductors/parallel_minimum"
COOL_TERMINALS = "conductors/ampacity_60c"


def least_hot_conductor(device: float, metal: str, sets: int, edition: str) -> str | None:
    """Return the smallest size label of `metal` whose `sets` carry `device` ampere at 75 °C, None above the table.

    Small conductors stay behind the devices named for them. Where the device asks for that many sets, they are of the
    size that may run in parallel. Source: `AMPACITY_RULE`, `SMALL`, `PARALLEL`.
    """
    column = TABLE_COLUMN[metal]
    small = {row["size"]: row.get(column, 0) for row in rule(SMALL, edition).rows}
    rows = [row for row in rule(AMPACITY_RULE, edition).rows if column in row]
    carried = {row["size"]: min(row[column], small.get(row["size"], row[column])) for row in rows}
    least = next((size for size, ampere in carried.items() if sets * ampere >= device), None)
    parallel = rule(PARALLEL, edition).value
    if least is None or sets == 1 or (sets - 1) * carried[parallel] >= device:
        return least
    return max(least, parallel, key=lambda size: area(size, edition))


def least_with_cool_terminals(device: float, metal: str, edition: str) -> str | None:
    """Return the smallest size label of `metal` that carries `device` ampere at 60 °C, None above the table.

    So much is needed through 100 A where the terminals are not listed for more. Source: `COOL_TERMINALS`.
    """
    column = TABLE_COLUMN[metal]
    rows = rule(COOL_TERMINALS, edition).rows
    return next((row["size"] for row in rows if row.get(column, 0) >= device), None)
