"""The size of an equipment grounding conductor by a second route: fractions, its own tables, nothing from calc.

Rows: Table 250.122 of the 2023 edition. The 2017 text prints 1200 for 1250, which no list of sizes holds.
"""

from fractions import Fraction

from tests.independent.wire_gauge import listed_areas

AREAS = listed_areas()
ROWS = [
    line.split()
    for line in """15 14 12
20 12 10
60 10 8
100 8 6
200 6 4
300 4 2
400 3 1
500 2 1/0
600 1 2/0
800 1/0 3/0
1000 2/0 4/0
1200 3/0 250kcmil
1600 4/0 350kcmil
2000 250kcmil 400kcmil
2500 350kcmil 600kcmil
3000 400kcmil 600kcmil
4000 500kcmil 750kcmil
5000 700kcmil 1250kcmil
6000 800kcmil 1250kcmil""".splitlines()
]


def by_device(ampere: float, metal: str) -> str | None:
    """Return the size of the row, or None above the last one."""
    column = 1 if metal == "copper" else 2
    return next((row[column] for row in ROWS if ampere <= int(row[0])), None)


def increased(size: str, minimum: str, installed: str) -> str | None:
    """Return the smallest listed size of the increased area, or None; the circuit conductors do not limit it."""
    needed = Fraction(AREAS[size] * AREAS[installed], AREAS[minimum])
    return next((label for label, cmil in AREAS.items() if cmil >= needed), None)


def limited(size: str, installed: str, sets: int) -> str:
    """Return the size, no larger than the set of circuit conductors of the same metal."""
    total = AREAS[installed] * sets
    if AREAS[size] <= total:
        return size
    return next(label for label, cmil in AREAS.items() if cmil >= total)


def on_a_feeder(size: str, base: str, installed: str, sets: int) -> str:
    """Return the limited size, never below the row's where the whole set is smaller: no feeder has such a set.

    240.4: a device protects its conductors. Below the size of the row they carry far less than the device lets through.
    """
    if AREAS[installed] * sets >= AREAS[base]:
        return limited(size, installed, sets)
    return max(base, limited(size, installed, sets), key=AREAS.get)
