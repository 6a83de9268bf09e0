"""What goes by the overcurrent device, against a second implementation: every row, metal, edition and boundary.

Each test counts what it compared. Cases where the code can be read in two ways are left out, and the comment beside
says why.
"""

from collections.abc import Iterator
from itertools import pairwise

from tests.independent import sizing
from tests.independent.comparison import COLUMNS, EDITIONS, METALS, SETS, Case
from tests.independent.tables import AREA, DEVICE_ROWS, SIZES

ROWS = tuple(row[0] for row in DEVICE_ROWS)
# 310.3(A): copper starts at 14 AWG, aluminum at 12.
COPPER_SIZES = tuple(size for size in SIZES if AREA[size] >= AREA["14"])
ALUMINUM_SIZES = COPPER_SIZES[1:]
PARALLEL_SIZES = tuple(size for size in SIZES if AREA[size] >= AREA["1/0"])


def piping_by_device_cases() -> Iterator[Case]:
    for edition in EDITIONS:
        for metal in METALS:
            for device in device_points():
                for piping in ("water-isolated-unit", "other-metal"):
                    yield Case(
                        {"edition": edition, "piping": piping, "device": device, "metal": metal},
                        lambda d=device, m=metal: sizing.by_device(float(d), m),
                    )


def test_bonds_of_other_piping_and_of_isolated_units_go_by_the_device(sweep):
    assert sweep("water-pipe-bonding", piping_by_device_cases()) == 2_832


def device_points() -> tuple[str, ...]:
    """Each row's rating, half an ampere and one ampere to either side, the middle of the gap, and far beyond."""
    points = {1.0, 2.0, 10.0, 6500.0, 10000.0}
    for rating in ROWS:
        points |= {rating - 1.0, rating - 0.5, float(rating), rating + 0.5, rating + 1.0}
    points |= {(low + high) / 2 for low, high in pairwise(ROWS)}
    return tuple(f"{point:g}" for point in sorted(points))


def equipment_by_device_cases() -> Iterator[Case]:
    whole_amperes = [str(rating) for rating in range(1, 6011)]
    for edition in EDITIONS:
        for metal in COLUMNS:
            for device in (*whole_amperes, *device_points()):
                yield Case(
                    {"edition": edition, "device": device, "metal": metal},
                    lambda d=device, m=metal: sizing.equipment_grounding_conductor(float(d), m),
                )


def test_equipment_grounding_conductors_agree_for_every_whole_ampere_and_around_every_row(sweep):
    assert sweep("equipment-grounding-conductor", equipment_by_device_cases()) == 49_024


def is_a_judgement_of_unlike_metals(size: str, hot: str, metal: str, hot_metal: str) -> bool:
    """A copper conductor larger than the aluminum hot conductors: whether "not larger" is said of sizes is open."""
    return metal == "copper" and hot_metal != "copper" and AREA[size] > AREA[hot]


def circuit_that_has(hot: str, sets: int, device: float, metal: str) -> dict[str, str]:
    """A motor circuit where the hot conductors together are smaller than the row's size: a feeder has none so small."""
    row = sizing.equipment_grounding_conductor(device, metal)
    return {"circuit": "motor"} if AREA[hot] * sets < AREA[row] else {}


def increase_cases(editions: tuple[str, ...], metals: tuple[tuple[str, str], ...]) -> Iterator[Case]:
    """Every pair of a smallest and an installed hot conductor, at every row of the table by device."""
    for edition in editions:
        for hot_metal, metal in metals:
            for device in ROWS:
                sizes = COPPER_SIZES if hot_metal == "copper" else ALUMINUM_SIZES
                for minimum in sizes:
                    for hot in sizes[sizes.index(minimum) :]:
                        try:
                            unlimited = sizing.equipment_grounding_conductor(device, metal, hot, minimum)
                        except sizing.BeyondTheTablesError:
                            unlimited = SIZES[-1]
                        if is_a_judgement_of_unlike_metals(unlimited, hot, metal, hot_metal):
                            continue
                        inputs = {"device": device, "metal": metal, "conductor_metal": hot_metal}
                        inputs |= circuit_that_has(hot, 1, device, metal)
                        yield Case(
                            {"edition": edition, "installed_conductor": hot, "minimum_conductor": minimum} | inputs,
                            lambda d=device, m=metal, h=hot, n=minimum, k=hot_metal: (
                                sizing.equipment_grounding_conductor(d, m, h, n, k, AREA[h])
                            ),
                        )


def test_equipment_grounding_conductors_grow_with_the_hot_conductors_by_circular_mils(sweep):
    unlike = (("copper", "aluminum"), ("aluminum", "copper"))
    alike = (("copper", "copper"), ("aluminum", "aluminum"))
    count = sweep("equipment-grounding-conductor", increase_cases(("2023",), alike + unlike))
    assert count == 26_551


def test_the_growth_by_circular_mils_is_the_same_in_the_other_editions(sweep):
    others = ("2017", "2020", "2026")
    count = sweep("equipment-grounding-conductor", increase_cases(others, (("copper", "copper"),)))
    assert count == 3 * 19 * (28 * 29 // 2)


def parallel_cases() -> Iterator[Case]:
    """One set to a raceway: the full size in each, limited by the summed set to 2023 and by one conductor in 2026."""
    for edition in EDITIONS:
        # The last edition of each of the two rules is swept in full, the earlier ones at every third row.
        rows = ROWS if edition in ("2023", "2026") else ROWS[::3]
        for metal in COLUMNS:
            for device in rows:
                for sets in SETS:
                    for hot in PARALLEL_SIZES:
                        # Left out: more than the device asks for. Whether they were made larger is then a question.
                        if sets * sizing.ampacities(metal)[hot] > device:
                            continue
                        inputs = {"device": device, "metal": metal, "conductor_metal": metal}
                        inputs |= circuit_that_has(hot, sets, device, metal)
                        yield Case(
                            {"edition": edition, "installed_conductor": hot, "sets": sets, "raceways": sets} | inputs,
                            lambda d=device, m=metal, h=hot, s=sets, e=edition: sizing.equipment_grounding_conductor(
                                d, m, h, None, m, sizing.hot_area_that_limits(h, s, e)
                            ),
                        )


def test_equipment_grounding_conductors_in_parallel_raceways_are_of_full_size_in_each(sweep):
    assert sweep("equipment-grounding-conductor", parallel_cases()) == 9_436


def motor_cases() -> Iterator[Case]:
    """Motor currents around every fuse rating, in tenths of an ampere, to both percentages."""
    for kind, percent in (("ac", 175), ("wound-rotor-or-dc", 150)):
        exact = [fuse * 1000 // percent for fuse in sizing.FUSES]
        for tenths in sorted({tenths + step for tenths in exact for step in (-1, 0, 1, 2)} - {0}):
            for edition in EDITIONS:
                for metal in METALS:
                    inputs = {"device": 15, "metal": metal, "circuit": "motor-instantaneous-trip"}
                    yield Case(
                        {"edition": edition, "motor": kind, "motor_current": f"{tenths / 10:.1f}"} | inputs,
                        lambda t=tenths, k=kind, m=metal: sizing.equipment_grounding_conductor(
                            sizing.instantaneous_trip_rating(t, k), m
                        ),
                    )


def test_motors_with_an_instantaneous_trip_device_go_by_their_largest_dual_element_fuse(sweep):
    assert sweep("equipment-grounding-conductor", motor_cases()) == 4_032


def wire_beside_raceway_cases() -> Iterator[Case]:
    for edition in EDITIONS:
        for metal in METALS:
            for device in device_points():
                yield Case(
                    {"edition": edition, "raceway": "nonmetallic-raceway", "device": device, "metal": metal},
                    lambda d=device, m=metal: sizing.by_device(float(d), m),
                )


def test_the_wire_that_a_nonmetallic_raceway_needs_goes_by_the_device(sweep):
    assert sweep("raceway-as-grounding-path", wire_beside_raceway_cases()) == 1_416
