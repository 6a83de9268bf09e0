"""A generator: its neutral and its breaker decide the names and sizes."""

import pytest

from calc.schedule.generator_schedule import generator_schedule
from tests.cases.read import cases, named


@pytest.mark.parametrize("pair", cases("schedule/generator_schedule"), ids=named)
def test_a_worked_case_has_the_sizes_of_its_source(pair):
    edition, case = pair
    result = generator_schedule(edition=edition, **case["inputs"])
    sizes = result.answer.values["sizes"]
    assert {part: sizes.get(part) for part in case["sizes"]} == case["sizes"]
    assert not set(case.get("absent", ())) & set(sizes)


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        (dict(neutral="joined", breaker="yes", conductor="3/0"), "device"),
        (dict(neutral="switched", breaker="no", conductor="3/0"), "electrodes"),
        (dict(breaker="no", conductor="3/0"), "neutral"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = generator_schedule(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def test_a_bond_at_the_generator_is_listed_as_to_be_left_out_with_a_joined_neutral_only():
    for breaker in ("yes", "no"):
        joined = generator_schedule(edition="2023", neutral="joined", breaker=breaker, conductor="3/0", device="200")
        assert joined.answer.values["sizes"]["neutral-bond"] == "none"
        switched = generator_schedule(
            edition="2023", neutral="switched", breaker=breaker, conductor="3/0", device="200", electrodes="rod"
        )
        assert "neutral-bond" not in switched.answer.values["sizes"]
        assert switched.answer.values["sizes"]["second-neutral-bond"] == "none"


def test_with_a_breaker_on_the_set_the_neutral_is_bonded_at_the_set():
    """The first disconnect is then the breaker on the set itself."""
    for place in ("source", "first-disconnect"):
        result = generator_schedule(
            edition="2023",
            neutral="switched",
            breaker="yes",
            conductor="3/0",
            device="200",
            electrodes="rod",
            place=place,
        )
        row = next(row for row in result.answer.table.rows if str(row.cells["part"]) == "System bonding jumper")
        assert str(row.cells["from"]).startswith("Generator")
        warned = [
            str(words) for words in result.trace.warnings if "system bonding jumper is at the generator" in str(words)
        ]
        assert bool(warned) is (place == "first-disconnect")


def test_the_practice_behind_a_breaker_on_the_set_is_cited_as_practice():
    result = generator_schedule(edition="2023", neutral="joined", breaker="yes", conductor="3/0", device="200")
    assert [cited.mark for cited in result.trace.citations if cited.key == "grounding/generator_with_device"] == [
        "practice"
    ]


def generator(**inputs):
    inputs = dict(edition="2023", breaker="no", conductor="500kcmil", electrodes="rod") | inputs
    return generator_schedule(**inputs)


def test_piping_and_steel_are_bonded_to_a_generator_that_is_a_source_of_its_own():
    """250.104(D)(1) and (D)(2), Table 250.102(C)(1): over 350 to 600 kcmil copper, 1/0 copper."""
    sizes = generator(neutral="switched", metal_parts="water-pipe,structural-metal").answer.values["sizes"]
    assert (sizes["water-pipe-bonding"], sizes["structural-metal-bonding"]) == ("1/0-copper", "1/0-copper")


def test_steel_that_is_the_electrode_of_the_generator_needs_no_further_bond():
    """250.104(D)(2) Exception No. 1."""
    result = generator(neutral="switched", electrodes="structural-metal,rod", metal_parts="structural-metal")
    assert result.answer.values["sizes"]["structural-metal-bonding"] == "no-bond"


def test_with_a_joined_neutral_the_bonds_at_the_service_serve():
    result = generator(neutral="joined", metal_parts="water-pipe")
    assert "water-pipe-bonding" not in result.answer.values["sizes"]
    assert any("serve here too" in str(words) for words in result.trace.notes)


def test_a_joined_neutral_without_a_device_carries_the_fault_and_is_asked_about():
    """445.13(A); past a device 215.2(B) of 2023."""
    for breaker, section in (("no", "445.13(A)"), ("yes", "215.2(B)")):
        result = generator(neutral="joined", breaker=breaker, device="400")
        (row,) = (row for row in result.answer.table.rows if str(row.cells["part"]).startswith("Neutral "))
        assert row.status == "not-judged" and section in str(row.cells["section"])
        least = "supply-side bonding jumper" if breaker == "no" else "equipment grounding conductor"
        assert f"no smaller than the {least}" in str(row.cells["why"])


def test_conductors_larger_than_the_breaker_asks_for_are_asked_about():
    """250.122(B): 100 A, 8 AWG (16,510 cmil); 3/0 (167,800) for 3 AWG (52,620): 52,648 cmil, so 2 AWG."""
    inputs = dict(neutral="joined", breaker="yes", device="100", conductor="3/0")
    assert [each.field for each in generator(**inputs).fix] == ["minimum_conductor"]
    grown = generator(minimum_conductor="3", **inputs).answer.values["sizes"]
    assert grown["equipment-grounding-conductor"] == "2-copper"


def test_an_outdoor_place_is_asked_about_for_a_source_of_its_own_alone():
    """250.30(C)."""
    for neutral, asked in (("switched", True), ("joined", False)):
        assert ("outdoor-source" in generator(neutral=neutral).answer.values["sizes"]) is asked
