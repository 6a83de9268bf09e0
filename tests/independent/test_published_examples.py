"""The second implementation against worked examples that others published, so that it is not its own witness."""

import pytest

from tests.independent import sizing
from tests.independent.tables import AREA


@pytest.mark.parametrize(
    ("size", "sets", "hot_metal", "metal", "published"),
    [
        ("250", 1, "copper", "copper", "2"),  # building code forum, supply-side bond, 2019
        ("250", 3, "copper", "copper", "2/0"),  # the same
        ("3/0", 2, "copper", "copper", "2"),  # the same, through 335,600 circular mils
        ("3/0", 2, "copper", "aluminum", "1/0"),  # the same
        ("4/0", 1, "aluminum", "copper", "4"),  # EC&M Code Quiz, "Sizing a Supply-Side Bonding Jumper"
        ("500", 4, "copper", "copper", "250"),  # NEC Digest on main and system bonding jumpers
        ("600", 10, "copper", "copper", "750"),  # trade forum on note 1 of the supply-side table
        ("600", 3, "aluminum", "aluminum", "250"),  # trade forum on notes 1 and 2, 225,000 circular mils rounded up
    ],
)
def test_supply_side_jumpers_come_out_as_published(size, sets, hot_metal, metal, published):
    assert sizing.supply_side([(size, sets)], hot_metal, metal) == published


def test_a_jumper_in_each_raceway_goes_by_the_conductors_of_that_raceway():
    # Trade forum: 10 sets of 600 kcmil, one set to a raceway, 1/0 AWG in each.
    assert sizing.supply_side_jumper_of_each("600", 10, 10, "copper", "copper") == "1/0"
    assert sizing.supply_side_jumper_for_all("600", 10, "copper", "copper") == "750"


def test_the_grounded_conductor_of_each_parallel_raceway_is_at_least_one_aught():
    # NFPA community thread on 250.24(C)(2), 2018: 5 raceways of 400 kcmil, 1/0 AWG in each.
    assert sizing.grounded_conductor("400", 5, 5, "copper", "copper") == "1/0"
    assert sizing.grounded_conductor("1/0", 2, 2, "copper", "copper") == "1/0"


@pytest.mark.parametrize(
    ("device", "minimum", "installed", "published"),
    [
        (300, "250", "350", "2"),  # industrial trainer's notes, 58,436 circular mils
        (20, "12", "1/0", "1/0"),  # engineers' question board: one to one for the smallest circuits
        (50, "8", "1", "3"),  # the same: 52,617 circular mils just fit 3 AWG
        (40, "8", "4", "4"),  # trade forum: 26,242 circular mils just pass 6 AWG
    ],
)
def test_equipment_grounding_conductors_grow_as_published(device, minimum, installed, published):
    size = sizing.equipment_grounding_conductor(device, "copper", installed, minimum, "copper", AREA[installed])
    assert size == published


@pytest.mark.parametrize(
    ("size", "published"),
    [("3/0", "4"), ("350", "2"), ("500", "1/0"), ("2000", "3/0")],  # a textbook, and EC&M quizzes on 250.66
)
def test_grounding_electrode_conductors_come_out_as_published(size, published):
    assert sizing.grounding_electrode_conductor([(size, 1)], "copper", "copper", ["water-pipe"]) == published


def test_a_motor_with_an_instantaneous_trip_breaker_comes_out_as_published():
    # Trade forum on 250.122(D)(2): a motor of 15 A asks for 10 AWG before the limit of the circuit conductors.
    assert sizing.by_device(sizing.instantaneous_trip_rating(150, "ac"), "copper") == "10"


def test_a_bond_for_several_circuits_goes_by_the_largest_device():
    # A course page: a gutter fed through a 200 A breaker. The smaller devices beside it do not count.
    assert sizing.equipment_bonding_jumper([20, 200, 60], "copper") == "6"
