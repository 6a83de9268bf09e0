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
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = service_schedule(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def warnings(**inputs):
    return [str(words) for words in service_schedule(edition="2023", **inputs).working.warnings]


def test_one_rod_alone_is_warned_of():
    """250.53(A)(2): a second electrode unless one measures 25 ohm or less."""
    for electrodes, warned in (("rod", True), ("water-pipe,rod", False)):
        said = warnings(conductor="2/0", electrodes=electrodes)
        assert any("25 ohm" in words and "250.53(A)(2)" in words for words in said) is warned


def test_a_warning_of_several_parts_names_them_once():
    said = warnings(conductor="10", electrodes="rod", raceway="metal")
    assert len(said) == len(set(said))


def test_each_disconnect_has_its_own_jumper_by_its_own_conductors():
    result = service_schedule(edition="2023", conductor="500kcmil", electrodes="rod", disconnects="3/0,2x250kcmil,2")
    found = [result.answer.values["sizes"][f"main-bonding-jumper-{number}"] for number in (1, 2, 3)]
    assert found == ["4-copper", "1/0-copper", "8-copper"]  # 167,800, 500,000 and 66,360 cmil
