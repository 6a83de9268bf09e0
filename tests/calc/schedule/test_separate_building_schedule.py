"""A building fed from another one, new and old."""

import pytest

from calc import EDITIONS
from calc.schedule.separate_building_schedule import separate_building_schedule
from tests.cases.read import cases, named


def cells_of(result, part):
    return [row.cells for row in result.answer.table.rows if part in str(row.cells["part"])]


@pytest.mark.parametrize("pair", cases("schedule/separate_building_schedule"), ids=named)
def test_a_worked_case_has_the_sizes_of_its_source(pair):
    edition, case = pair
    result = separate_building_schedule(edition=edition, **case["inputs"])
    sizes = result.answer.values["sizes"]
    assert {part: sizes.get(part) for part in case["sizes"]} == case["sizes"]
    assert not set(case.get("absent", ())) & set(sizes)


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        (dict(device="100", conductor="3"), "electrodes"),
        (dict(device="100", conductor="3", electrodes="rod", wires="existing-without"), "metal_path"),
        (
            dict(device="100", conductor="3", electrodes="rod", wires="existing-without", metal_path="no"),
            "ground_fault_protection",
        ),
        (dict(device="60", conductor="2", electrodes="rod"), "minimum_conductor"),
        (dict(device="60", conductor="6", electrodes="rod", minimum_conductor="4"), "minimum_conductor"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = separate_building_schedule(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


# An old supply of which the reader says that no metal joins the buildings and that nothing trips on ground faults.
OLD = dict(device="100", conductor="3", wires="existing-without", metal_path="no", ground_fault_protection="no",
           electrodes="rod")  # fmt: skip


def warnings(**inputs):
    result = separate_building_schedule(edition="2023", **inputs)
    assert result.outcome == "answer"
    return [str(words) for words in result.trace.warnings]


def test_the_old_way_is_refused_with_metal_between_the_buildings_or_ground_fault_protection():
    for refused in ({"metal_path": "yes"}, {"ground_fault_protection": "yes"}):
        inputs = OLD | refused
        assert any("250.32(B)(1) Exception" in words and "does not apply" in words for words in warnings(**inputs))


def test_the_old_way_is_warned_of_as_for_existing_supplies_only():
    inputs = OLD
    assert any("Only an existing supply may stay this way" in words for words in warnings(**inputs))


def test_only_the_old_way_bonds_the_neutral():
    for wires, bonded in (("with-equipment-conductor", False), ("existing-without", True)):
        result = separate_building_schedule(edition="2023", **OLD | {"wires": wires})
        assert ("neutral-bond" not in result.answer.values["sizes"]) is bonded


def test_the_old_neutral_is_sized_in_the_metal_of_the_hot_conductors():
    """Table 250.122, 125 A (row of 200 A): 6 copper or 4 aluminum."""
    result = separate_building_schedule(
        edition="2023", **OLD | {"device": "125", "conductor": "1/0", "conductor_metal": "aluminum"}
    )
    assert result.answer.values["sizes"]["grounded-conductor"] == "4-aluminum"


def test_no_bond_of_a_fed_building_starts_at_its_neutral():
    """250.32(B)(1): the neutral is not bonded there."""
    result = separate_building_schedule(
        edition="2023", device="100", conductor="3", electrodes="rod", metal_parts="water-pipe,structural-metal"
    )
    starts = [
        str(row.cells["from"])
        for row in result.answer.table.rows
        if str(row.cells["part"]).startswith("Bonding jumper")
    ]
    assert len(starts) == 2 and not any("eutral" in start for start in starts)


def test_hot_conductors_larger_than_the_device_asks_for_are_asked_about_and_others_are_not():
    """75 °C copper: 8 AWG 50 A, 6 AWG 65 A, 4 AWG 85 A. Behind 15, 20 and 30 A: 14, 12 and 10 AWG (240.4(D))."""
    for device, conductor, asked in (
        ("60", "6", False), ("60", "4", True), ("50", "8", False), ("50", "6", True), ("15", "14", False),
        ("15", "12", True), ("20", "12", False), ("20", "10", True), ("30", "10", False), ("30", "8", True),
    ):  # fmt: skip
        result = separate_building_schedule(edition="2023", device=device, conductor=conductor, electrodes="rod")
        assert (result.outcome == "fix") is asked, (device, conductor)
        if asked:
            assert [each.field for each in result.fix] == ["minimum_conductor"]


def test_the_equipment_grounding_conductor_grows_with_the_hot_conductors():
    """250.122(B): 60 A, 10 AWG of 10,380 cmil; 2 AWG (66,360) for 6 AWG (26,240): 26,251 cmil, so 4 AWG."""
    job = dict(edition="2023", device="60", conductor="2", electrodes="rod")
    for minimum, size in (("6", "4-copper"), ("2", "10-copper")):
        sizes = separate_building_schedule(minimum_conductor=minimum, **job).answer.values["sizes"]
        assert sizes["equipment-grounding-conductor"] == size


def test_a_feeder_asks_for_its_neutral_and_a_single_branch_circuit_does_not():
    """215.2(B) of 2023: no smaller than the equipment grounding conductor."""
    for supply, asked in (("feeder", True), ("single-branch-circuit", False)):
        result = separate_building_schedule(
            edition="2023", device="20", conductor="12", supply=supply, electrodes="rod"
        )
        assert ("neutral" in result.answer.values["sizes"]) is asked


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_building_spared_an_electrode_is_not_told_that_it_needs_one(edition):
    """250.32(A) Exception: one branch circuit with an equipment grounding conductor. A feeder has no such exception."""
    inputs = dict(edition=edition, device="20", conductor="12", electrodes="no-other", metal_parts="no-other")
    spared, fed = (separate_building_schedule(supply=each, **inputs) for each in ("single-branch-circuit", "feeder"))
    assert any("no grounding electrode is required here" in str(words) for words in spared.trace.notes)
    assert "grounding-electrode-conductor" not in spared.answer.values["sizes"]
    assert fed.answer.values["sizes"]["grounding-electrode-conductor"] == "not-judged"


def test_a_thin_electrode_conductor_says_in_its_row_how_it_is_run():
    """Table 250.66: 3 AWG asks for 8 AWG, 1 AWG for 6 AWG; 250.64(B)(3) protects what is smaller than 6."""
    for conductor, protected in (("3", True), ("1", False)):
        inputs = dict(conductor=conductor, minimum_conductor=conductor, electrodes="rod,concrete-encased")
        cells = cells_of(separate_building_schedule(edition="2023", device="100", **inputs), "electrode conductor:")
        assert [("in a raceway or cable armor" in str(each["size"])) for each in cells] == [protected, protected]


def test_the_neutral_of_an_old_supply_in_parallel_names_its_least_size():
    """310.10(G)(1): conductors in parallel are 1/0 AWG or larger, which Table 250.122 does not know of."""
    inputs = OLD | dict(device="400", conductor="3/0", sets="2", raceways="2")
    result = separate_building_schedule(edition="2023", **inputs)
    (cells,) = cells_of(result, "of the existing supply")
    assert str(cells["size"]).endswith("; in parallel 1/0 AWG or larger")
    (single,) = cells_of(separate_building_schedule(edition="2023", **OLD), "of the existing supply")
    assert str(single["size"]) == "8 AWG copper wire or larger"
