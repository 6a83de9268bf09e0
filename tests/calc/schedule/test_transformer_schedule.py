"""A transformer from its plate to the list of its parts."""

import pytest

from calc.schedule.transformer_schedule import transformer_schedule
from tests.cases.read import cases, named


@pytest.mark.parametrize("pair", cases("schedule/transformer_schedule"), ids=named)
def test_a_worked_case_has_the_sizes_of_its_source(pair):
    edition, case = pair
    result = transformer_schedule(edition=edition, **case["inputs"])
    sizes = result.answer.values["sizes"]
    assert {part: sizes.get(part) for part in case["sizes"]} == case["sizes"]
    assert not set(case.get("absent", ())) & set(sizes)


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        (dict(device="100"), "kva"),
        (dict(kva="0", device="100"), "kva"),
        (dict(kva="75 A", device="100"), "kva"),
        (dict(kva="75"), "device"),
        (dict(kva="75", device="225"), "electrode"),
        (dict(kva="75", device="225", electrode="water-pipe", sets="2"), "raceways"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(inputs, field):
    result = transformer_schedule(edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def schedule(**inputs):
    return transformer_schedule(**{"edition": "2023", "electrode": "structural-metal"} | inputs)


def warnings(**inputs):
    result = schedule(**inputs)
    assert result.outcome == "answer"
    return [str(words) for words in result.trace.warnings]


def test_a_secondary_conductor_just_under_its_device_is_warned_of_and_at_it_is_not():
    """Table 310.16: 4/0 copper carries 230 A at 75 °C. The next larger device is not allowed."""
    for device, warned in (("229", False), ("230", False), ("231", True)):
        said = warnings(kva="75", device=device, conductor="4/0")
        assert any("240.21(C)" in words and "230 A" in words for words in said) is warned


def test_without_a_conductor_the_smallest_that_carries_the_device_is_taken():
    for device, size in (("230", "4/0"), ("231", "250kcmil"), ("255", "250kcmil"), ("256", "300kcmil")):
        result = schedule(kva="75", device=device)
        assert any(f"conductor={size}&" in row.link for row in result.answer.table.rows)


def test_parallel_secondary_conductors_are_never_smaller_than_1_0():
    result = schedule(kva="30", device="100", sets="2", raceways="1")
    assert any("conductor=1/0&" in row.link for row in result.answer.table.rows)


def test_a_secondary_device_past_the_next_rating_over_125_percent_is_warned_of():
    """75 kVA at 208 V: 208.2 A, 125 % is 260.2 A, the next standard rating 300 A."""
    for device, warned in (("300", False), ("350", True)):
        said = warnings(kva="75", device=device, conductor="500kcmil")
        assert any("450.3(B)" in words for words in said) is warned


@pytest.mark.parametrize(
    ("system", "section"), [("over-1000", "Article 250, Part X"), ("direct-current", "Article 250, Part VIII")]
)
def test_what_is_outside_the_rules_says_where_to_look(system, section):
    for edition in ("2017", "2020", "2023"):
        result = transformer_schedule(edition=edition, kva="75", system=system, device="100")
        assert result.outcome == "not_covered" and section in str(result.not_covered.look_in)


def test_a_small_transformer_has_167_percent_and_no_next_rating():
    """Table 450.3(B): below 9 A. 1 kVA at 120/240 V is 4.17 A, 167 % is 6.96 A; 3 kVA is 12.5 A, 125 % then 20 A."""
    for kva, device, warned in (("1", "6", False), ("1", "7", True), ("3", "20", False), ("3", "25", True)):
        said = warnings(kva=kva, system="120/240", device=device, conductor="10")
        assert any("450.3(B)" in words for words in said) is warned


def test_a_second_neutral_bond_is_listed_as_to_be_left_out_wherever_the_first_is():
    for place in ("source", "first-disconnect"):
        result = schedule(kva="75", device="225", place=place)
        assert result.answer.values["sizes"]["second-neutral-bond"] == "none"
        starts = {str(row.cells["part"]): str(row.cells["from"]) for row in result.answer.table.rows}
        bonded = "Transformer: neutral" if place == "source" else "First disconnect: neutral"
        assert starts["System bonding jumper"] == bonded != starts["Second neutral-to-ground bond"]


def test_the_secondary_current_is_that_of_the_source():
    """The currents of the worked cases: kVA x 1000 / (1.732 x V), or / V in single phase."""
    for edition, case in cases("schedule/transformer_schedule"):
        step = transformer_schedule(edition=edition, **case["inputs"]).trace.steps[0]
        assert step.unit == "A" and round(step.value, 1) == case["current"]
    assert transformer_schedule(kva="25", system="120/240", device="100").trace.steps[0].value == pytest.approx(
        104.17, abs=0.005
    )


def test_the_conductor_and_the_tap_are_those_of_the_source():
    for edition, case in cases("schedule/transformer_schedule"):
        rows = transformer_schedule(edition=edition, **case["inputs"]).answer.table.rows
        if "conductor" in case:
            assert any(f"conductor={case['conductor']}&" in row.link for row in rows)
        for tap in case.get("taps", ()):
            assert any(f"tap for this system {tap} AWG" in str(row.cells["size"]) for row in rows)


def test_one_rod_is_warned_of_and_the_electrodes_of_the_building_are_not():
    """250.53(A)(2)."""
    for electrode, warned in (("rod", True), ("plate", True), ("structural-metal", False), ("water-pipe", False)):
        said = warnings(kva="75", device="225", electrode=electrode)
        assert any("25 ohm" in words for words in said) is warned


def sizes(**inputs):
    return schedule(**{"kva": "75", "device": "225", "conductor": "4/0"} | inputs).answer.values["sizes"]


def test_a_primary_whose_device_nobody_entered_is_asked_about():
    assert sizes()["equipment-grounding-conductor-primary"] == "not-judged"
    assert sizes(primary_device="125")["equipment-grounding-conductor-primary"] == "6-copper"  # Table 250.122, to 200 A


def test_secondary_conductors_that_nobody_entered_are_named_as_taken():
    entered, taken = schedule(kva="75", device="225", conductor="4/0"), schedule(kva="75", device="225")
    assert "secondary-conductors" not in entered.answer.values["sizes"]
    assert "with 4/0 AWG copper secondary conductors, which were assumed" in str(taken.answer.in_one_line)
    assert taken.answer.values["sizes"]["secondary-conductors"] == "not-judged"


def test_the_steel_is_spared_where_it_is_the_electrode_and_not_by_a_pipe_whose_bond_nobody_entered():
    """250.104(D)(2) Exceptions No. 1 and No. 2; 4/0 copper: 2 AWG by Table 250.102(C)(1)."""
    for electrode, size in (("structural-metal", "no-bond"), ("water-pipe", "2-copper")):
        assert sizes(electrode=electrode, metal_parts="structural-metal")["structural-metal-bonding"] == size


def test_the_neutral_of_a_bond_at_the_source_is_asked_about_and_of_one_in_the_disconnect_sized():
    """250.30(A)(3): sized where the jumper is not at the source."""
    source, disconnect = sizes(place="source"), sizes(place="first-disconnect")
    assert (source["neutral"], "grounded-conductor" in source) == ("not-judged", False)
    assert (disconnect["grounded-conductor"], "neutral" in disconnect) == ("2-copper", False)
