"""A building fed from another one, new and old."""

import pytest

from calc.schedule.separate_building_schedule import separate_building_schedule
from tests.cases.read import cases, named


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
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = separate_building_schedule(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def warnings(**inputs):
    result = separate_building_schedule(edition="2023", **inputs)
    assert result.outcome == "answer"
    return [str(words) for words in result.working.warnings]


def test_the_old_way_is_refused_with_metal_between_the_buildings_or_ground_fault_protection():
    for refused in ({"metal_path": "yes"}, {"ground_fault_protection": "yes"}):
        inputs = dict(device="100", conductor="3", wires="existing-without", electrodes="rod") | refused
        assert any("250.32(B)(1) Exception" in words and "does not hold" in words for words in warnings(**inputs))


def test_the_old_way_is_warned_of_as_for_existing_supplies_only():
    inputs = dict(device="100", conductor="3", wires="existing-without", electrodes="rod")
    assert any("already installed" in words for words in warnings(**inputs))


def test_only_the_old_way_bonds_the_neutral():
    for wires, bonded in (("with-equipment-conductor", False), ("existing-without", True)):
        result = separate_building_schedule(edition="2023", device="100", conductor="3", wires=wires, electrodes="rod")
        assert ("neutral-bond" not in result.answer.values["sizes"]) is bonded


def test_the_old_neutral_is_sized_in_the_metal_of_the_hot_conductors():
    """Table 250.122, 125 A (row of 200 A): 6 copper or 4 aluminum."""
    result = separate_building_schedule(
        edition="2023",
        device="125",
        conductor="1/0",
        conductor_metal="aluminum",
        wires="existing-without",
        electrodes="rod",
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
        if "piping" in str(row.cells["part"]) or "structural" in str(row.cells["part"])
    ]
    assert len(starts) == 2 and not any("eutral" in start for start in starts)
