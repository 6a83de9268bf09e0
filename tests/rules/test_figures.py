"""Every figure of the rules against a text or definition read apart from them.

The mutation test runs every test of this file, so each must fail when its figure changes.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule
from tests.independent.jumper_size import AMPACITY, JUMPER, THROUGH
from tests.independent.wire_gauge import listed_areas


def test_areas_follow_the_definition_of_the_wire_gauge_in_every_edition():
    for edition in EDITIONS:
        assert {row["size"]: row["cmil"] for row in rule("conductors/area", edition).rows} == listed_areas()


def test_areas_stand_from_the_smallest_to_the_largest():
    for edition in EDITIONS:
        areas = [row["cmil"] for row in rule("conductors/area", edition).rows]
        assert areas == sorted(set(areas))


def test_ampacities_are_those_of_the_75_degree_columns_in_every_edition():
    for edition in EDITIONS:
        rows = rule("conductors/ampacity_75c", edition).rows
        for metal in ("copper", "aluminum"):
            assert {row["size"]: row[metal] for row in rows if metal in row} == AMPACITY[metal]


def test_jumper_table_has_the_rows_of_the_printed_table_in_every_edition():
    for edition in EDITIONS:
        rows = rule("jumpers/supply_side_size", edition).rows
        for metal in ("copper", "aluminum"):
            assert [row[f"through_{metal}"] for row in rows] == THROUGH[metal]
            assert [row[metal] for row in rows] == JUMPER[metal]


def test_above_the_table_one_eighth_of_the_area_counts():
    """12.5 percent: Table 250.102(C)(1) note 1, read in the 2017, 2020 (California 2022) and 2023 texts."""
    for edition in EDITIONS:
        assert rule("jumpers/supply_side_share_above_table", edition).value == 1 / 8


def test_conductors_in_parallel_start_at_1_0():
    """310.10(H)(1) of 2017, 310.10(G)(1) of 2020 and 2023."""
    for edition in EDITIONS:
        assert rule("conductors/parallel_minimum", edition).value == "1/0"


def test_a_service_has_at_most_six_disconnects():
    """230.71(A) of 2017, 230.71(B) of 2020 and 2023."""
    for edition in EDITIONS:
        assert rule("services/disconnects_maximum", edition).value == 6


def test_the_2017_edition_names_only_copper_for_the_jumper_and_later_ones_name_three_metals():
    """250.28(A), read in the 2017, 2020 (California 2022) and 2023 texts."""
    for edition in EDITIONS:
        named = [row["metal"] for row in rule("jumpers/main_bonding_jumper_material", edition).rows]
        assert named == (["copper"] if edition == "2017" else ["copper", "aluminum", "copper-clad-aluminum"])
