"""The sizing rules of Article 250, worked out once more from the tables of tables.py.

Nothing here is shared with the calculators. Areas are whole circular mils and ratios are exact fractions, so no
boundary depends on how a number is stored. Sections are those of the 2017 edition where letters moved later.
"""

from fractions import Fraction

from tests.independent.tables import (
    AMPACITY_75_ALUMINUM,
    AMPACITY_75_COPPER,
    AREA,
    DEVICE_ROWS,
    ELECTRODE_LARGEST,
    ELECTRODE_ROWS,
    FUSES,
    SUPPLY_ROWS,
)


class BeyondTheTablesError(Exception):
    """No listed size, row or ampacity answers."""


def is_copper(metal):
    """Tables have two columns: copper, and aluminum together with copper-clad aluminum."""
    return metal == "copper"


def same_column(one, other):
    return is_copper(one) == is_copper(other)


def smallest_size(area):
    """The smallest listed size with at least this many circular mils."""
    for size, own in AREA.items():
        if own >= area:
            return size
    raise BeyondTheTablesError


def larger(one, other):
    return one if AREA[one] >= AREA[other] else other


def smaller(one, other):
    return other if AREA[one] >= AREA[other] else one


def total_area(runs):
    """Circular mils of one phase: runs are pairs of size and number of conductors."""
    return sum(AREA[size] * number for size, number in runs)


def row_for(area, hot_metal, wanted_metal, rows):
    """The size of the first row whose limit is not passed, or None past the last row."""
    for copper_limit, aluminum_limit, copper, aluminum in rows:
        if area <= (copper_limit if is_copper(hot_metal) else aluminum_limit):
            return copper if is_copper(wanted_metal) else aluminum
    return None


def ampacities(metal):
    return AMPACITY_75_COPPER if is_copper(metal) else AMPACITY_75_ALUMINUM


def equal_in_metal(size, hot_metal, wanted_metal):
    """The smallest conductor of the wanted metal that carries at least what this one carries."""
    if size not in ampacities(hot_metal):
        raise BeyondTheTablesError
    needed = ampacities(hot_metal)[size]
    for other, carried in ampacities(wanted_metal).items():
        if carried >= needed:
            return other
    raise BeyondTheTablesError


def supply_side(runs, hot_metal, jumper_metal):
    """Table 250.102(C)(1) and its notes: main, system and supply-side jumpers, and the grounded conductor.

    Past the last row: one eighth of the hot area; for unlike metals, of the hot conductors of the jumper's metal that
    carry the same current. Hot conductors smaller than the first row keep it: the note that spares what is larger than
    they are is written for those past the last row.
    """
    area = total_area(runs)
    size = row_for(area, hot_metal, jumper_metal, SUPPLY_ROWS)
    if size is None and same_column(hot_metal, jumper_metal):
        return smallest_size(Fraction(area, 8))
    if size is None:
        assumed = [(equal_in_metal(hot, hot_metal, jumper_metal), number) for hot, number in runs]
        return smallest_size(Fraction(total_area(assumed), 8))
    return size


def main_bonding_jumper(runs, hot_metal, jumper_metal):
    """250.28(D): by the service conductors of the enclosure."""
    return supply_side(runs, hot_metal, jumper_metal)


def system_bonding_jumper(runs, hot_metal, jumper_metal):
    """250.28(D) through 250.30(A)(1): by the derived conductors."""
    return supply_side(runs, hot_metal, jumper_metal)


def supply_side_jumper_for_all(size, sets, hot_metal, jumper_metal):
    """250.102(C)(2): one jumper for every raceway goes by the sum of the sets."""
    return supply_side([(size, sets)], hot_metal, jumper_metal)


def supply_side_jumper_of_each(size, sets, raceways, hot_metal, jumper_metal):
    """250.102(C)(2): a jumper in each raceway goes by the conductors of the fullest raceway."""
    return supply_side([(size, -(-sets // raceways))], hot_metal, jumper_metal)


def grounded_conductor(size, sets, raceways, hot_metal, grounded_metal):
    """250.24(C): by the hot conductors of the raceway; in parallel runs of two or more raceways at least 1/0."""
    in_one = -(-sets // raceways)
    needed = supply_side([(size, in_one)], hot_metal, grounded_metal)
    return larger(needed, "1/0") if raceways > 1 else needed


ROD_LIKE = ("rod", "pipe", "plate")


def electrode_limit(electrode, metal, ring):
    """250.66(A) to (C): the largest size that an electrode of this kind can ask for, or None."""
    if electrode in ROD_LIKE:
        return "6" if is_copper(metal) else "4"
    if electrode == "concrete-encased" and is_copper(metal):
        return "4"
    if electrode == "ring" and is_copper(metal):
        return ring
    return None


def grounding_electrode_conductor(runs, hot_metal, metal, electrodes, ring="2"):
    """250.66 and 250.64(D): by the sum of the hot conductors; the most demanding electrode on the run decides."""
    table = row_for(total_area(runs), hot_metal, metal, ELECTRODE_ROWS)
    if table is None:
        table = ELECTRODE_LARGEST[0 if is_copper(metal) else 1]
    limits = [electrode_limit(electrode, metal, ring) for electrode in electrodes]
    needed = [table if limit is None else smaller(table, limit) for limit in limits]
    return max(needed, key=AREA.get)


def common_conductor_of_derived_systems(metal):
    """250.30(A)(6): the common conductor of several derived systems is at least the largest of the table."""
    return ELECTRODE_LARGEST[0 if is_copper(metal) else 1]


def by_device(rating, metal):
    """Table 250.122: the first row that the rating or setting does not pass."""
    for limit, copper, aluminum in DEVICE_ROWS:
        if rating <= limit:
            return copper if is_copper(metal) else aluminum
    raise BeyondTheTablesError


def increased(size, installed, minimum):
    """250.122(B): as many times larger in circular mils as the hot conductors were made."""
    return smallest_size(Fraction(AREA[size] * AREA[installed], AREA[minimum]))


def equipment_grounding_conductor(rating, metal, hot=None, minimum=None, hot_metal="copper", largest_area=None):
    """250.122(A) and (B). `largest_area` is the hot area that the conductor need not pass, if one is given."""
    size = by_device(rating, metal)
    if hot and minimum and AREA[hot] > AREA[minimum]:
        size = increased(size, hot, minimum)
    if largest_area and same_column(metal, hot_metal) and AREA[size] > largest_area:
        return smallest_size(largest_area)
    return size


def hot_area_that_limits(hot, sets, edition):
    """250.122(A) with the parallel rule: the summed set up to 2023, the largest conductor of the raceway in 2026."""
    return AREA[hot] if edition == "2026" else AREA[hot] * sets


def instantaneous_trip_rating(tenths_of_an_ampere, motor):
    """250.122(D)(2): the largest dual-element fuse for the motor, 175 percent (150 wound rotor, dc), next one up."""
    percent = 175 if motor == "ac" else 150
    needed = Fraction(tenths_of_an_ampere * percent, 1000)
    for fuse in FUSES:
        if fuse >= needed:
            return fuse
    raise BeyondTheTablesError


def equipment_bonding_jumper(ratings, metal):
    """250.102(D): by the largest device of the circuits that it serves."""
    return by_device(max(ratings), metal)


WATER_PIPE_LIMIT = ("3/0", "250")


def water_pipe_bond(runs, hot_metal, metal, edition):
    """250.104(A)(1): the supply-side table; 3/0 copper or 250 kcmil aluminum at most, seen in print for 2023 on."""
    if edition in ("2017", "2020"):
        return supply_side(runs, hot_metal, metal)
    limit = WATER_PIPE_LIMIT[0 if is_copper(metal) else 1]
    try:
        return smaller(supply_side(runs, hot_metal, metal), limit)
    except BeyondTheTablesError:
        return limit
