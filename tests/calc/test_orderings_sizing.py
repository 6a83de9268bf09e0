"""Orderings that hold for sizes: more copper, a larger device, more sets never ask for less, and where they may.

The true exceptions:
- Behind a larger device the same hot conductors are less of an increase, so 250.122(B) asks for less: 20 A on 6 AWG
  asks for 6 AWG, 60 A on 6 AWG for 10 AWG. The size without the increase never shrinks.
- More raceways for the same sets leave fewer conductors in each: one jumper or neutral of each may be smaller.
- Electrodes that ask for little cap a grounding electrode conductor, so more sets may leave it as it is.
"""

import random
from itertools import pairwise, product

import pytest

from calc import EDITIONS
from calc.registry import CALCULATORS
from tests.independent.jumper_size import AREAS, hot_sizes

METALS = ("copper", "aluminum")
DEVICES = (15, 20, 25, 30, 40, 50, 60, 70, 100, 110, 200, 225, 400, 600, 800, 1000, 1600, 2500, 4000, 6000)
SETS = (1, 2, 3, 4, 6, 8, 12, 20)
BY_CONDUCTORS = {
    "main-bonding-jumper": {},
    "system-bonding-jumper": {},
    "supply-side-bonding-jumper": {},
    "supply-side-bonding-jumper at a derived system": {"place": "separately-derived-system"},
    "grounded-conductor": {},
    "grounded-conductor of a derived system": {"place": "first-disconnect"},
    "grounded-conductor of a delta": {"system_grounding": "corner-grounded"},
    "grounding-electrode-conductor": {},
    "grounding-electrode-conductor to a rod": {"electrode": "rod"},
    "water-pipe-bonding": {},
    "structural-metal-bonding": {},
    "buried-metal-elbow": {"cover": 10},
    "buried-metal-elbow of a derived system": {"cover": 10, "circuit": "derived-system"},
}
BY_DEVICE = {
    "equipment-grounding-conductor": {},
    "equipment-bonding-jumper": {},
    "raceway-as-grounding-path": {"raceway": "nonmetallic-raceway"},
    "buried-metal-elbow": {"circuit": "feeder-or-branch", "cover": 10},
    "water-pipe-bonding": {"piping": "other-metal"},
}


def cmil(name, key="size", **inputs):
    """Return the area of what a calculator requires, None beyond its tables; nothing else ends without an answer."""
    result = CALCULATORS[name.split()[0]](**inputs)
    assert result.answer or result.not_covered, (name, inputs, result.fix)
    return result.answer and AREAS[result.answer.values[key]]


def never_shrinks(areas):
    known = [area for area in areas if area is not None]
    return known == sorted(known) and None not in areas[: len(known)]


@pytest.mark.parametrize("name", BY_CONDUCTORS)
def test_larger_hot_conductors_and_more_sets_never_ask_for_less(name):
    pick = random.Random(name)
    for metal, own, edition in product(METALS, METALS, pick.sample(EDITIONS, 2)):
        case = {"edition": edition, "conductor_metal": metal, "metal": own} | BY_CONDUCTORS[name]
        sets = pick.choice(SETS)
        by_size = [cmil(name, conductor=size, sets=sets, **case) for size in hot_sizes(metal)]
        conductor = pick.choice(hot_sizes(metal))
        by_sets = [cmil(name, conductor=conductor, sets=count, **case) for count in SETS]
        assert never_shrinks(by_sets), (case, conductor, by_sets)
        if metal == own:  # another metal may have no size that carries as much, and a larger hot one still be listed
            assert never_shrinks(by_size), (case, sets, by_size)


@pytest.mark.parametrize("name", BY_DEVICE)
def test_a_larger_device_never_asks_for_less(name):
    for edition, metal in product(EDITIONS, METALS):
        areas = [cmil(name, edition=edition, metal=metal, device=each, **BY_DEVICE[name]) for each in DEVICES]
        assert never_shrinks(areas) and None not in areas


@pytest.mark.parametrize("slug", ["equipment-grounding-conductor", "equipment-bonding-jumper"])
def test_behind_one_device_larger_hot_conductors_and_more_sets_never_ask_for_less(slug):
    pick = random.Random(slug)
    for edition, metal in product(EDITIONS, METALS):
        device = pick.choice(DEVICES[:12])
        case = {"edition": edition, "device": device, "conductor_metal": metal, "metal": metal}
        assert never_shrinks([cmil(slug, installed_conductor=size, **case) for size in hot_sizes(metal)]), case
        conductor = pick.choice(hot_sizes(metal)[:20])
        assert never_shrinks([cmil(slug, installed_conductor=conductor, sets=count, **case) for count in SETS]), case


def test_the_same_hot_conductors_behind_a_larger_device_may_ask_for_less_but_not_without_the_increase():
    """250.122(B) by hand: 20 A on 6 AWG: 6,530 x 26,240 / 6,530, 6 AWG; 60 A on 6 AWG: no increase, 10 AWG."""
    slug, case = "equipment-grounding-conductor", {"edition": "2023", "installed_conductor": "6"}
    assert cmil(slug, device=20, **case) == AREAS["6"] > cmil(slug, device=60, **case) == AREAS["10"]
    for installed in ("10", "6", "1/0", "500kcmil"):
        case = {"edition": "2023", "installed_conductor": installed}
        kept = [cmil(slug, "size_unless_increased", device=device, **case) for device in DEVICES[:14]]
        assert all(before <= after for before, after in pairwise(kept))


def test_the_size_with_the_increase_is_never_below_the_one_without():
    pick = random.Random(3)
    for _ in range(150):
        metal = pick.choice(METALS)
        case = dict(
            edition=pick.choice(EDITIONS),
            device=pick.choice(DEVICES),
            installed_conductor=pick.choice(hot_sizes(metal)),
            sets=pick.choice(SETS),
            conductor_metal=metal,
            metal=pick.choice(METALS),
        )
        result = CALCULATORS["equipment-grounding-conductor"](**case)
        if result.answer:
            values = result.answer.values
            assert AREAS[values["size"]] >= AREAS[values["size_unless_increased"]], case
            assert (values["size"] == values["size_unless_increased"]) == (
                "upsized" not in str(result.answer.in_one_line)
            )
