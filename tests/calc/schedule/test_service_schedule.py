"""A service from its conductors to the list of its parts."""

import pytest

from calc.schedule.service_schedule import service_schedule
from tests.cases.read import cases, named


@pytest.mark.parametrize("pair", cases("schedule/service_schedule"), ids=named)
def test_a_worked_case_has_the_sizes_of_its_source(pair):
    edition, case = pair
    result = service_schedule(edition=edition, **case["inputs"])
    sizes = result.answer.values["sizes"]
    assert {part: sizes.get(part) for part in case["sizes"]} == case["sizes"]
    assert not set(case.get("absent", ())) & set(sizes)


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        (dict(conductor="3/0"), "electrodes"),
        (dict(conductor="3/0", electrodes="rod", metal_parts="other-metal"), "piping_device"),
        (dict(conductor="3/0", electrodes="rod,rod"), "electrodes"),
        (dict(conductor="3/0", electrodes="fence"), "electrodes"),
        (dict(conductor="3/0", electrodes="rod", disconnects="3/0,x"), "disconnects"),
        (dict(conductor="500kcmil", electrodes="rod", disconnects="3/0"), "disconnects"),
        (dict(conductor="500kcmil", electrodes="rod,ring"), "ring"),
        (dict(conductor="500kcmil", electrodes="rod", disconnects="2x1/0,2"), "disconnect_raceways"),
        (dict(conductor="500kcmil", electrodes="rod", sets="2"), "raceways"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = service_schedule(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def warnings(**inputs):
    result = service_schedule(edition="2023", ring="2", **inputs)
    assert result.outcome == "answer"
    return [str(words) for words in result.trace.warnings]


def test_one_rod_is_warned_of_alone_and_beside_a_water_pipe():
    """250.53(A)(2): a second electrode unless one measures 25 ohm or less; 250.53(D)(2) asks it of a supplement too."""
    for electrodes, warned in (
        ("rod", True),
        ("plate", True),
        ("water-pipe,rod", True),
        ("water-pipe,concrete-encased,rod", False),
        ("rod,plate", False),
        ("water-pipe,ring", False),
    ):
        said = warnings(conductor="2/0", electrodes=electrodes)
        assert any("25 ohm" in words and "250.53(A)(2)" in words for words in said) is warned
        assert any("250.53(D)(2)" in words for words in said) is (electrodes == "water-pipe,rod")


def test_a_water_pipe_alone_is_warned_of():
    """250.53(D)(2): an underground water pipe is supplemented by an electrode of another kind."""
    for electrodes, warned in (("water-pipe", True), ("water-pipe,ring", False), ("ring", False)):
        said = warnings(conductor="2/0", electrodes=electrodes)
        assert any("never be the only electrode" in words for words in said) is warned


def test_the_neutral_is_sized_in_the_metal_of_the_hot_conductors():
    """Table 250.102(C)(1), 4/0 to 250 aluminum: 4 copper or 2 aluminum."""
    result = service_schedule(edition="2023", conductor="4/0", conductor_metal="aluminum", electrodes="rod")
    sizes = result.answer.values["sizes"]
    assert (sizes["grounded-conductor"], sizes["main-bonding-jumper"]) == ("2-aluminum", "4-copper")


def test_no_electrode_conductor_starts_at_a_neutral_that_is_not_there():
    for system, start in (("ungrounded", "Metal enclosure"), ("impedance-grounded", "Grounded side")):
        rows = service_schedule(
            edition="2023", conductor="2/0", electrodes="rod", system_grounding=system
        ).answer.table.rows
        (row,) = (row for row in rows if str(row.cells["part"]).startswith("Grounding electrode conductor"))
        assert str(row.cells["from"]).startswith(start)


def test_every_row_has_a_name_of_its_own():
    rows = service_schedule(
        edition="2023", conductor="500kcmil", electrodes="rod,ring,water-pipe", disconnects="3/0,2", ring="2"
    ).answer.table.rows
    assert len({str(row.cells["part"]) for row in rows}) == len(rows)


def test_a_warning_of_several_parts_names_them_once():
    said = warnings(conductor="10", electrodes="rod", raceway="metal")
    assert len(said) == len(set(said))


def test_each_disconnect_has_its_own_jumper_by_its_own_conductors():
    result = service_schedule(
        edition="2023",
        conductor="500kcmil",
        electrodes="rod",
        disconnects="3/0,2x250kcmil,2",
        disconnect_raceways="one",
    )
    found = [result.answer.values["sizes"][f"main-bonding-jumper-{number}"] for number in (1, 2, 3)]
    assert found == ["4-copper", "1/0-copper", "8-copper"]  # 167,800, 500,000 and 66,360 cmil


def sizes(**inputs):
    return service_schedule(edition="2023", **inputs).answer.values["sizes"]


def test_the_grounded_phase_of_a_corner_grounded_delta_is_as_large_as_a_hot_conductor():
    """250.24(D)(3) of 2023, (C)(3) before: 6 AWG, where the table of a neutral gives 8 AWG behind 6 AWG."""
    job = dict(conductor="6", electrodes="rod")
    corner = service_schedule(edition="2023", system_grounding="corner-grounded", **job)
    assert corner.answer.values["sizes"]["grounded-conductor"] == "6-copper"
    assert corner.answer.values["sizes"]["main-bonding-jumper"] == "8-copper"
    (row,) = (row for row in corner.answer.table.rows if "Grounded phase conductor" in str(row.cells["part"]))
    assert "eutral" not in " ".join(map(str, row.cells.values()))
    assert sizes(**job)["grounded-conductor"] == "8-copper"
    said = [str(words) for words in service_schedule(edition="2023", **job).trace.notes]
    assert any("corner-grounded" in words and "250.24(D)(3)" in words for words in said)


def test_the_grounded_conductor_of_the_common_supply_is_listed_ahead_of_several_disconnects():
    """250.24(D)(2) of 2023: two raceways of 3/0, 4 AWG by the table and 1/0 in parallel, in each."""
    found = sizes(conductor="3/0", sets="2", raceways="2", disconnects="3/0,3/0", electrodes="rod")
    assert (found["grounded-conductor-supply"], found["grounded-conductor-1"]) == ("1/0-copper", "4-copper")


def test_parallel_sets_to_one_disconnect_have_a_grounded_conductor_in_each_raceway():
    """Together 2 x 105,600 cmil: 2 AWG in one raceway; in two, 1/0 in each, the least in parallel."""
    job = dict(conductor="500kcmil", disconnects="2x1/0,2", electrodes="rod")
    for share, size in (("one", "2-copper"), ("each", "1/0-copper")):
        assert sizes(disconnect_raceways=share, **job)["grounded-conductor-1"] == size


def test_a_meter_enclosure_is_asked_about_behind_any_raceway():
    """250.92(A)."""
    for raceway in ("metal", "nonmetallic"):
        assert "service-enclosures" in sizes(conductor="2/0", raceway=raceway, electrodes="rod")


def test_what_an_ungrounded_service_lacks_is_no_part_to_install():
    result = service_schedule(
        edition="2023", conductor="2/0", electrodes="rod", system_grounding="ungrounded", raceway="nonmetallic"
    )
    assert str(result.answer.in_one_line).startswith("1 part to install for this service; 2 not covered here; ")
    assert (result.answer.values["to_install"], result.answer.values["not_covered"]) == (1, 2)
