"""Jumpers and electrode conductors against a second implementation: every row, metal, edition and boundary.

sizing.py and tables.py were written from other texts, without sight of the calculators. Each test counts what it
compared. Cases where the code can be read in two ways are left out, and the comment beside says why.
"""

from collections.abc import Callable, Iterator
from itertools import combinations_with_replacement

from tests.independent import sizing
from tests.independent.comparison import COLUMNS, EDITIONS, METALS, SETS, Case
from tests.independent.tables import AREA, ELECTRODE_ROWS, SIZES

ELECTRODES = ("water-pipe", "structural-metal", "concrete-encased", "ring", "rod", "pipe", "plate", "other")
RING = {"ring": "2"}  # its size is asked for only where the electrode is a ring


# Left out: hot conductors smaller than any service has, 12 AWG copper and 10 AWG aluminum (the exceptions to 230.23(B)
# and 230.31(B)).
def hot_sizes(metal: str) -> tuple[str, ...]:
    least = AREA["12" if metal == "copper" else "10"]
    return tuple(size for size in SIZES if AREA[size] >= least)


def supply_inputs(edition: str) -> Iterator[tuple[str, int, str, str]]:
    """Every size and number of sets; copper-clad aluminum, which shares a column, in one edition only."""
    metals = METALS if edition == "2023" else COLUMNS
    for hot_metal in metals:
        for size in hot_sizes(hot_metal):
            for sets in SETS:
                for metal in metals:
                    yield size, sets, hot_metal, metal


# Sizes of hot conductors from 12 AWG copper (27) and 10 AWG aluminum (26), 30 sets, metals of the jumper; copper-clad
# aluminum in 2023.
SUPPLY_CASES = 30 * (3 * (27 + 26) * 2 + (27 + 26 + 26) * 3)


def supply_cases(rule: Callable[..., str]) -> Iterator[Case]:
    for edition in EDITIONS:
        for size, sets, hot_metal, metal in supply_inputs(edition):
            inputs = {"conductor": size, "sets": sets, "conductor_metal": hot_metal, "metal": metal}
            yield Case({"edition": edition} | inputs, lambda a=((size, sets),), h=hot_metal, m=metal: rule(a, h, m))


def test_the_swept_hot_conductors_reach_every_row_of_the_supply_side_table_from_both_sides():
    sums = sorted({AREA[size] * sets for size in SIZES for sets in SETS})
    for copper_limit, aluminum_limit, *_ in ELECTRODE_ROWS:
        for limit in (copper_limit, aluminum_limit):
            below, above = max(s for s in sums if s <= limit), min(s for s in sums if s > limit)
            assert limit - below < limit // 25
            assert above - limit < limit // 25 or above == AREA[next(s for s in SIZES if AREA[s] > limit)]


def test_main_bonding_jumpers_of_every_size_and_number_of_sets_agree(sweep):
    assert sweep("main-bonding-jumper", supply_cases(sizing.main_bonding_jumper)) == SUPPLY_CASES


def test_system_bonding_jumpers_of_every_size_and_number_of_sets_agree(sweep):
    assert sweep("system-bonding-jumper", supply_cases(sizing.system_bonding_jumper)) == SUPPLY_CASES


def water_pipe_cases() -> Iterator[Case]:
    for edition in EDITIONS:
        for size, sets, hot_metal, metal in supply_inputs(edition):
            runs = ((size, sets),)
            # No text here prints the limit of 3/0 AWG copper and 250 kcmil aluminum for 2020, so what it would change
            # in that edition is left out.
            if edition == "2020" and _limit_matters(runs, hot_metal, metal):
                continue
            inputs = {"conductor": size, "sets": sets, "conductor_metal": hot_metal, "metal": metal}
            yield Case(
                {"edition": edition, "piping": "water"} | inputs,
                lambda r=runs, h=hot_metal, m=metal, e=edition: sizing.water_pipe_bond(r, h, m, e),
            )


def _limit_matters(runs, hot_metal: str, metal: str) -> bool:
    try:
        size = sizing.supply_side(runs, hot_metal, metal)
    except sizing.BeyondTheTablesError:
        return True
    return size != sizing.water_pipe_bond(runs, hot_metal, metal, "2023")


def test_bonds_of_water_piping_in_a_building_with_a_service_agree(sweep):
    assert sweep("water-pipe-bonding", water_pipe_cases()) == 14_595


# Water piping of another building and of the area of a derived system is not swept: no text used here prints
# 250.104(A)(3) and (D) edition by edition.


def electrode_cases() -> Iterator[Case]:
    for edition in EDITIONS:
        for hot_metal in COLUMNS:
            for size in hot_sizes(hot_metal):
                for sets in SETS:
                    for metal in COLUMNS:
                        inputs = {"conductor": size, "sets": sets, "conductor_metal": hot_metal, "metal": metal}
                        yield Case(
                            {"edition": edition} | inputs,
                            lambda r=((size, sets),), h=hot_metal, m=metal: sizing.grounding_electrode_conductor(
                                r, h, m, ("water-pipe",)
                            ),
                        )


def test_grounding_electrode_conductors_to_water_piping_agree_for_every_size_and_number_of_sets(sweep):
    assert sweep("grounding-electrode-conductor", electrode_cases()) == 4 * 30 * 2 * (27 + 26)


def chain_cases() -> Iterator[Case]:
    """Every pair of electrodes on one run, one conductor for each row, both metals, two sizes of ring."""
    for edition in EDITIONS:
        for size in ("4", "2", "1", "1/0", "3/0", "4/0", "350", "500", "600", "750", "1000", "1750", "2000"):
            for metal in METALS:
                for electrode in ELECTRODES:
                    for further in ("none", *ELECTRODES):
                        for ring in ("2", "1/0"):
                            run = tuple(kind for kind in (electrode, further) if kind != "none")
                            inputs = {"conductor": size, "metal": metal, "electrode": electrode, "ring": ring}
                            yield Case(
                                {"edition": edition, "continues_to": further} | inputs,
                                lambda s=size, m=metal, e=run, r=ring: sizing.grounding_electrode_conductor(
                                    ((s, 1),), "copper", m, e, r
                                ),
                            )


def test_the_most_demanding_electrode_on_a_run_decides_its_grounding_electrode_conductor(sweep):
    assert sweep("grounding-electrode-conductor", chain_cases()) == 4 * 13 * 3 * 8 * 9 * 2


def sums_around_each_limit() -> Iterator[tuple[str, str, str]]:
    """Three hot conductors whose areas add up to just under, exactly, and just over each limit of the table."""
    triples = {sum(AREA[s] for s in three): three for three in combinations_with_replacement(hot_sizes("aluminum"), 3)}
    ordered = sorted(triples)
    for copper_limit, aluminum_limit, *_ in ELECTRODE_ROWS:
        for limit in sorted({copper_limit, aluminum_limit}):
            yield triples[max(total for total in ordered if total < limit)]
            if limit in triples:
                yield triples[limit]
            yield triples[min(total for total in ordered if total > limit)]


def several_disconnect_cases() -> Iterator[Case]:
    for edition in EDITIONS:
        for place in ("service-disconnect", "separate-building"):
            for first, *others in sums_around_each_limit():
                for hot_metal in COLUMNS:
                    for metal in METALS:
                        for electrode in ELECTRODES:
                            inputs = {"conductor": first, "other_conductors": ", ".join(others), "place": place}
                            inputs |= {"conductor_metal": hot_metal, "metal": metal, "electrode": electrode} | RING
                            runs = tuple((size, 1) for size in (first, *others))
                            yield Case(
                                {"edition": edition} | inputs,
                                lambda r=runs, h=hot_metal, m=metal, e=electrode: sizing.grounding_electrode_conductor(
                                    r, h, m, (e,)
                                ),
                            )


def test_common_grounding_electrode_conductors_go_by_the_sum_of_the_areas_at_every_limit(sweep):
    assert sweep("grounding-electrode-conductor", several_disconnect_cases()) == 10_368


def tap_cases() -> Iterator[Case]:
    for edition in EDITIONS:
        for first, *others in sums_around_each_limit():
            for hot_metal in COLUMNS:
                for metal in METALS:
                    for electrode in ELECTRODES:
                        sizes = (first, *others)
                        inputs = {
                            "conductor": first,
                            "other_conductors": ", ".join(others),
                            "electrode": electrode,
                        } | RING
                        yield Case(
                            {"edition": edition, "conductor_metal": hot_metal, "metal": metal} | inputs,
                            lambda s=sizes, h=hot_metal, m=metal, e=electrode: ",".join(
                                sizing.grounding_electrode_conductor(((one, 1),), h, m, (e,)) for one in s
                            ),
                        )


def test_each_tap_goes_by_the_conductors_of_its_own_disconnect(sweep):
    assert sweep("grounding-electrode-conductor", tap_cases(), "taps") == 5_184


def derived_system_cases() -> Iterator[Case]:
    for edition in EDITIONS:
        # From 2020 the calculator lets rods, concrete-encased electrodes and rings have a smaller common conductor
        # where nothing else is present. The texts here print only the floor of 3/0 AWG, for 2014 and 2017.
        electrodes = ELECTRODES if edition == "2017" else ("water-pipe", "structural-metal")
        for size in SIZES[SIZES.index("14") :]:
            for metal in METALS:
                for electrode in electrodes:
                    inputs = {
                        "conductor": size,
                        "metal": metal,
                        "electrode": electrode,
                        "other_conductors": "2,1/0",
                    } | RING
                    yield Case(
                        {"edition": edition, "place": "several-derived-systems"} | inputs,
                        lambda m=metal: sizing.common_conductor_of_derived_systems(m),
                    )


def test_the_conductor_common_to_several_derived_systems_has_its_fixed_size(sweep):
    assert sweep("grounding-electrode-conductor", derived_system_cases()) == 28 * 3 * (8 + 3 * 2)
