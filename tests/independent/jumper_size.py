"""The size of a main bonding jumper by a second route, with tables of its own and nothing from calc.

Thresholds and sizes: Table 250.102(C)(1), read in the 2017 and 2023 editions.
Ampacities at 75 °C: Table 310.15(B)(16) of 2017 and Table 310.16 of 2023, read separately, equal in all 55 values.
"""

from tests.independent.wire_gauge import listed_areas

AREAS = listed_areas()
# Largest ungrounded conductor of the row, then the jumper; columns copper, aluminum.
THROUGH = {
    "copper": ["2", "1/0", "3/0", "350kcmil", "600kcmil", "1100kcmil"],
    "aluminum": ["1/0", "3/0", "250kcmil", "500kcmil", "900kcmil", "1750kcmil"],
}
JUMPER = {
    "copper": ["8", "6", "4", "2", "1/0", "2/0"],
    "aluminum": ["6", "4", "2", "1/0", "3/0", "4/0"],
}
# Size, copper, aluminum.
_AMPACITIES = """
14 20 -
12 25 20
10 35 30
8 50 40
6 65 50
4 85 65
3 100 75
2 115 90
1 130 100
1/0 150 120
2/0 175 135
3/0 200 155
4/0 230 180
250kcmil 255 205
300kcmil 285 230
350kcmil 310 250
400kcmil 335 270
500kcmil 380 310
600kcmil 420 340
700kcmil 460 375
750kcmil 475 385
800kcmil 490 395
900kcmil 520 425
1000kcmil 545 445
1250kcmil 590 485
1500kcmil 625 520
1750kcmil 650 545
2000kcmil 665 560
"""
_ROWS = [line.split() for line in _AMPACITIES.split("\n") if line]
AMPACITY = {
    "copper": {size: int(copper) for size, copper, _ in _ROWS},
    "aluminum": {size: int(aluminum) for size, _, aluminum in _ROWS if aluminum != "-"},
}


# The smallest hot conductors: of general wiring, 310.3(A) of 2020 and 2023; of a service for limited loads of a single
# branch circuit, the exceptions to 230.23(B) and 230.31(B) of 2023.
WIRING = {"copper": "14", "aluminum": "12"}
SERVICE = {"copper": "12", "aluminum": "10"}


def hot_sizes(metal: str, least: dict = SERVICE) -> list[str]:
    """Return the sizes a hot conductor of `metal` may have, from the smallest."""
    return [size for size, cmil in AREAS.items() if cmil >= AREAS[least[metal]]]


def jumper_size(conductor: str, sets: int, conductor_metal: str, metal: str, limited: bool = False) -> str | None:
    """Return the smallest jumper's size label, or None where no listed size will do.

    limited: the section itself says that it need not be larger than the conductors, as 250.30(A)(2) does. The note on
    conductors past the end of the table does not say it of small ones.
    """
    total = AREAS[conductor] * sets
    limits = [AREAS.get(size) or int(size[:-5]) * 1000 for size in THROUGH[conductor_metal]]
    if total > limits[-1]:
        if conductor_metal != metal:
            needed = AMPACITY[conductor_metal][conductor]
            as_good = [size for size, ampere in AMPACITY[metal].items() if ampere >= needed]
            if not as_good:
                return None
            total = AREAS[as_good[0]] * sets
        enough = [size for size, cmil in AREAS.items() if cmil * 8 >= total]
        return enough[0] if enough else None
    size = JUMPER[metal][sum(limit < total for limit in limits)]
    copper_to_aluminum = conductor_metal == "copper" and metal == "aluminum"
    if not limited or AREAS[size] <= total or copper_to_aluminum:
        return size
    # No larger than the conductors, but as large as all of a set together.
    as_large = conductor if sets == 1 else next(label for label, cmil in AREAS.items() if cmil >= total)
    return min(size, as_large, key=AREAS.get)
