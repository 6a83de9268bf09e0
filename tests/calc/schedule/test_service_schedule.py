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
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = service_schedule(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def warnings(**inputs):
    result = service_schedule(edition="2023", ring="2", **inputs)
    assert result.outcome == "answer"
    return [str(words) for words in result.working.warnings]


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
        assert any("never the only electrode" in words for words in said) is warned


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
    result = service_schedule(edition="2023", conductor="500kcmil", electrodes="rod", disconnects="3/0,2x250kcmil,2")
    found = [result.answer.values["sizes"][f"main-bonding-jumper-{number}"] for number in (1, 2, 3)]
    assert found == ["4-copper", "1/0-copper", "8-copper"]  # 167,800, 500,000 and 66,360 cmil
