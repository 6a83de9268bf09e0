"""The size of a main bonding jumper by a second route, with tables of its own and nothing from calc.

Thresholds and sizes: Table 250.102(C)(1), read in the 2017 and 2023 editions.
Ampacities at 75 °C: Table 310.15(B)(16) of 2017 and Table 310.16 of 2023, read separately, equal in all 55 values.
"""

from tests.oracles.wire_gauge import listed_areas

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
_SIZES = ["14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0", "250", "300", "350", "400", "500", "600", "700", "750", "800", "900", "1000", "1250", "1500", "1750", "2000"]
_COPPER = (
    ["20", "25", "35", "50", "65", "85", "100", "115", "130", "150", "175", "200", "230", "255", "285", "310", "335", "380", "420", "460", "475", "490", "520", "545", "590", "625", "650", "665"]
)
_ALUMINUM = (
    ["20", "30", "40", "50", "65", "75", "90", "100", "120", "135", "155", "180", "205", "230", "250", "270", "310", "340", "375", "385", "395", "425", "445", "485", "520", "545", "560"]
)


def _label(size: str) -> str:
    return f"{size}kcmil" if size.isdigit() and int(size) >= 250 else size


AMPACITY = {
    "copper": {_label(size): int(ampere) for size, ampere in zip(_SIZES, _COPPER, strict=True)},
    "aluminum": {_label(size): int(ampere) for size, ampere in zip(_SIZES[1:], _ALUMINUM, strict=True)},
}


def jumper_size(conductor: str, sets: int, conductor_metal: str, metal: str) -> str | None:
    """Give the smallest jumper's size label, or None where no listed size will do."""
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
    smaller_conductor = AREAS[size] > total
    copper_to_aluminum = conductor_metal == "copper" and metal == "aluminum"
    return conductor if smaller_conductor and not copper_to_aluminum else size
