"""The figures of the grounding electrode conductor against texts read apart from the rules."""

from calc.editions import EDITIONS
from calc.rulebook import rule

# Table 250.66: the 2017 print; its twin in NOM-001-SEDE-2012; the 2023 rows.
# Copper limit, aluminum limit, copper, aluminum.
PRINTED = """
2 1/0 8 6
1/0 3/0 6 4
3/0 250kcmil 4 2
350kcmil 500kcmil 2 1/0
600kcmil 900kcmil 1/0 3/0
1100kcmil 1750kcmil 2/0 4/0
- - 3/0 250kcmil
"""
COLUMNS = ("through_copper", "through_aluminum", "copper", "aluminum")


def test_the_electrode_conductor_table_has_the_rows_of_the_print_in_every_edition():
    printed = [line.split() for line in PRINTED.split("\n") if line]
    for edition in EDITIONS:
        rows = rule("grounding/electrode_conductor_size", edition).rows
        assert [[row.get(column, "-") for column in COLUMNS] for row in rows] == printed


def test_a_rod_asks_for_6_copper_or_4_aluminum_and_concrete_for_4_copper():
    """250.66(A) and (B), read in the 2017, 2020 (California 2022) and 2023 texts."""
    for edition in EDITIONS:
        assert rule("grounding/electrode_conductor_to_rod", edition).rows == ({"copper": "6", "aluminum": "4"},)
        assert rule("grounding/electrode_conductor_to_concrete_encased", edition).value == "4"


def test_a_ground_ring_is_2_copper_or_larger():
    """250.52(A)(4), read in the same three texts."""
    for edition in EDITIONS:
        assert rule("grounding/ground_ring_smallest", edition).value == "2"


def test_derived_systems_share_3_0_copper_or_250_aluminum():
    """250.30(A)(6)(a), read in the same three texts; EC&M on the 2011 changes has the same sizes."""
    for edition in EDITIONS:
        rows = rule("grounding/electrode_conductor_common_to_derived_systems", edition).rows
        assert rows == ({"copper": "3/0", "aluminum": "250kcmil"},)


def test_only_editions_since_2020_let_the_common_conductor_shrink_with_the_electrodes():
    for edition in EDITIONS:
        value = rule("grounding/electrode_conductor_common_to_small_electrodes", edition).value
        assert value == ("not stated" if edition == "2017" else "permitted")


def test_aluminum_keeps_18_inches_from_earth_and_the_2017_edition_names_masonry_and_earth():
    """250.64(A) of 2017; (A)(1) and (A)(3) since 2020 (California 2022)."""
    for edition in EDITIONS:
        assert rule("grounding/electrode_conductor_aluminum_height", edition).value == 18
        named = [row["contact"] for row in rule("grounding/electrode_conductor_aluminum_contact", edition).rows]
        assert named == (["masonry", "earth"] if edition == "2017" else ["concrete"])


def test_conductors_smaller_than_6_are_protected():
    """250.64(B)(3), read in the same three texts."""
    for edition in EDITIONS:
        assert rule("grounding/electrode_conductor_unprotected", edition).value == "6"
