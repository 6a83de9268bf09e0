"""Jumpers and grounded conductors of raceways, elbows and the frame, against the second implementation.

Each test counts what it compared. Cases where the code can be read in two ways are left out, and the comment beside
says why.
"""

from collections.abc import Iterator
from itertools import product

from tests.independent import sizing
from tests.independent.comparison import COLUMNS, EDITIONS, METALS, SETS, Case
from tests.independent.tables import AREA, DEVICE_ROWS, SIZES

ROWS = tuple(row[0] for row in DEVICE_ROWS)

# Hot conductors below 6 AWG are left out: they are smaller than the first row of the supply-side table, and how far
# its note spares them is a judgement. The sweep of main bonding jumpers keeps what every reading agrees on.
HOT_SIZES = tuple(size for size in SIZES if AREA[size] >= AREA["6"])

WIRING_SIZES = tuple(size for size in SIZES if AREA[size] >= AREA["14"])  # 310.3(A): copper starts there

EVERY_SPLIT = tuple((sets, raceways) for sets in SETS for raceways in SETS if sets % raceways == 0)
SOME_SPLITS = ((1, 1), (2, 1), (2, 2), (3, 3), (4, 2), (6, 6), (8, 4), (30, 1), (30, 30))


def split_inputs() -> Iterator[tuple[dict, tuple]]:
    """Every way to lay the sets evenly into raceways in one edition, some of them in the others."""
    for edition in EDITIONS:
        splits = EVERY_SPLIT if edition == "2023" else SOME_SPLITS
        for size, (sets, raceways), hot_metal, metal in product(HOT_SIZES, splits, COLUMNS, COLUMNS):
            inputs = {"conductor": size, "sets": sets, "raceways": raceways}
            inputs |= {"edition": edition, "conductor_metal": hot_metal, "metal": metal}
            yield inputs, (size, sets, raceways, hot_metal, metal)


def jumper_of_each_raceway_cases() -> Iterator[Case]:
    for inputs, known in split_inputs():
        yield Case(inputs, lambda k=known: sizing.supply_side_jumper_of_each(*k))


def test_a_supply_side_bonding_jumper_in_each_raceway_goes_by_the_conductors_there(sweep):
    assert sweep("supply-side-bonding-jumper", jumper_of_each_raceway_cases()) == 24 * 4 * (111 + 3 * 9)


def jumper_for_all_cases() -> Iterator[Case]:
    for inputs, (size, sets, _, hot_metal, metal) in split_inputs():
        yield Case(
            {"arrangement": "single", "place": "separately-derived-system"} | inputs,
            lambda s=size, n=sets, h=hot_metal, m=metal: sizing.supply_side_jumper_for_all(s, n, h, m),
        )


def test_a_single_supply_side_bonding_jumper_goes_by_the_sum_of_all_sets(sweep):
    assert sweep("supply-side-bonding-jumper", jumper_for_all_cases()) == 24 * 4 * (111 + 3 * 9)


def grounded_cases(place: str) -> Iterator[Case]:
    for inputs, known in split_inputs():
        yield Case({"place": place} | inputs, lambda k=known: sizing.grounded_conductor(*k))


def test_the_grounded_conductor_of_each_raceway_to_a_service_disconnect_agrees(sweep):
    assert sweep("grounded-conductor", grounded_cases("service-disconnect")) == 24 * 4 * (111 + 3 * 9)


def test_the_grounded_conductor_of_each_raceway_from_a_derived_system_agrees(sweep):
    assert sweep("grounded-conductor", grounded_cases("first-disconnect")) == 24 * 4 * (111 + 3 * 9)


def around_each_row() -> tuple[float, ...]:
    steps = (-1, -0.5, 0, 0.5, 1)
    return (*(rating + step for rating in ROWS for step in steps), 7000, 10000)


def device_cases() -> Iterator[Case]:
    for edition, metal, device in product(EDITIONS, METALS, around_each_row()):
        inputs = {"edition": edition, "device": f"{device:g}", "metal": metal}
        yield Case(inputs, lambda d=device, m=metal: sizing.equipment_bonding_jumper([d], m))


def test_load_side_bonding_jumpers_agree_around_every_row(sweep):
    assert sweep("equipment-bonding-jumper", device_cases()) == 4 * 3 * (19 * 5 + 2)


def shared_jumper_cases() -> Iterator[Case]:
    for edition, metal in product(EDITIONS, COLUMNS):
        for first, second, third in product(ROWS, ROWS, (15, 225, 1200, 6000)):
            inputs = {"edition": edition, "metal": metal, "device": first, "other_devices": f"{second},{third}"}
            yield Case(
                inputs, lambda a=first, b=second, c=third, m=metal: sizing.equipment_bonding_jumper([a, b, c], m)
            )


def test_one_jumper_for_several_raceways_goes_by_the_largest_device(sweep):
    assert sweep("equipment-bonding-jumper", shared_jumper_cases()) == 4 * 2 * 19 * 19 * 4


# Left out: copper jumpers with aluminum hot conductors, as in the sweep of equipment grounding conductors; and
# parallel sets in the 2026 edition, where the limit is one conductor of a raceway and no raceway is given here; and hot
# conductors smaller than the row of the device: no plain circuit has them, and the calculator asks which rule
# allows it.
def grown_jumper_cases() -> Iterator[Case]:
    for edition, device in product(EDITIONS, ROWS[::3]):
        row = AREA[sizing.equipment_bonding_jumper([device], "copper")]
        for minimum in WIRING_SIZES:
            for hot in WIRING_SIZES[WIRING_SIZES.index(minimum) :]:
                if AREA[hot] < row:
                    continue
                inputs = {"device": device, "installed_conductor": hot, "minimum_conductor": minimum}
                yield Case(
                    {"edition": edition} | inputs,
                    lambda d=device, h=hot, n=minimum: sizing.equipment_grounding_conductor(
                        d, "copper", h, n, "copper", AREA[h]
                    ),
                )


def test_load_side_bonding_jumpers_grow_with_the_hot_conductors_by_circular_mils(sweep):
    assert sweep("equipment-bonding-jumper", grown_jumper_cases()) == len(list(grown_jumper_cases())) > 8_000


def elbow_cases() -> Iterator[Case]:
    """An elbow too near the surface: by the hot conductors of its raceway ahead of a device, by the device past it."""
    for edition, hot_metal, metal in product(EDITIONS, COLUMNS, COLUMNS):
        shared = {"edition": edition, "cover": "10 in", "metal": metal}
        for circuit, size, sets in product(("service", "derived-system"), HOT_SIZES, (1, 2, 3, 6)):
            inputs = {"circuit": circuit, "conductor": size, "sets": sets, "conductor_metal": hot_metal}
            yield Case(shared | inputs, lambda s=size, n=sets, h=hot_metal, m=metal: sizing.supply_side([(s, n)], h, m))
        for device in around_each_row():
            inputs = {"circuit": "feeder-or-branch", "device": f"{device:g}"}
            yield Case(shared | inputs, lambda d=device, m=metal: sizing.by_device(d, m))


def test_the_jumper_of_a_shallow_metal_elbow_goes_by_the_conductors_or_the_device_of_its_run(sweep):
    assert sweep("buried-metal-elbow", elbow_cases()) == 4 * 4 * (2 * 24 * 4 + 97)


def frame_cases() -> Iterator[Case]:
    """Only sizes below the limit of 3/0 AWG copper and 250 kcmil aluminum: no text here says from when it holds."""
    for edition, size, sets, hot_metal, metal in product(EDITIONS, HOT_SIZES, SETS, COLUMNS, COLUMNS):
        runs = ((size, sets),)
        try:
            unlimited = sizing.supply_side(runs, hot_metal, metal)
        except sizing.BeyondTheTablesError:
            continue
        if unlimited == sizing.water_pipe_bond(runs, hot_metal, metal, "2023"):
            inputs = {"edition": edition, "conductor": size, "sets": sets}
            yield Case(
                inputs | {"conductor_metal": hot_metal, "metal": metal},
                lambda r=runs, h=hot_metal, m=metal: sizing.supply_side(r, h, m),
            )


def test_the_bond_of_a_building_frame_goes_by_the_supply_side_table(sweep):
    assert sweep("structural-metal-bonding", frame_cases()) == 4 * 825
