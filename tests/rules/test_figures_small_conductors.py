"""The least sizes of conductors and what protects small ones, against texts read apart from the rules."""

from calc.editions import EDITIONS
from calc.rulebook import rule


def test_a_small_conductor_has_its_largest_device():
    """240.4(D) of 2020 (California 2022) and 2023; a course page of 2017; a cable maker's sheet."""
    for edition in EDITIONS:
        rows = rule("conductors/small_conductor_device", edition).rows
        assert [row["size"] for row in rows] == ["14", "12", "10"]
        assert [row["copper"] for row in rows] == [15, 20, 30]
        assert [row.get("aluminum") for row in rows] == [None, 15, 25]


def test_the_60_degree_columns_end_at_1_awg():
    """Table 310.16 of 2023 and a copy of Table 310.15(B)(16), read apart: equal in all values."""
    copper = dict(zip("14 12 10 8 6 4 3 2 1".split(), (15, 20, 30, 40, 55, 70, 85, 95, 110), strict=True))
    aluminum = dict(zip("12 10 8 6 4 3 2 1".split(), (15, 25, 35, 40, 55, 65, 75, 85), strict=True))
    for edition in EDITIONS:
        rows = rule("conductors/ampacity_60c", edition).rows
        assert {row["size"]: row["copper"] for row in rows} == copper
        assert {row["size"]: row["aluminum"] for row in rows if "aluminum" in row} == aluminum


def test_wiring_starts_at_14_awg_copper_and_12_awg_aluminum():
    """310.3(A) of 2020 (California 2022) and 2023."""
    for edition in EDITIONS:
        assert rule("conductors/least_size", edition).rows == ({"copper": "14", "aluminum": "12"},)


def test_a_service_starts_at_8_awg_copper_and_for_one_small_circuit_at_12():
    """230.23(B) and 230.31(B) of 2023 with their exceptions."""
    for edition in EDITIONS:
        assert rule("services/least_conductor", edition).rows == ({"copper": "8", "aluminum": "6"},)
        assert rule("services/least_conductor_of_one_circuit", edition).rows == ({"copper": "12", "aluminum": "10"},)
