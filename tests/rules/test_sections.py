"""Every section number against the text of its edition, read apart from the rules.

2017: NFPA 70-2017. 2020: California Electrical Code 2022. 2023: NFPA 70-2023. No text of 2026
was seen: its sections are taken as in 2023 and marked unverified.
"""

import pytest

from calc.editions import EDITIONS
from calc.rulebook import rule, rule_keys

READ = {
    "conductors/ampacity_75c": ("Table 310.15(B)(16)", "Table 310.16", "Table 310.16"),
    "conductors/area": ("Chapter 9, Table 8", "Chapter 9, Table 8", "Chapter 9, Table 8"),
    "conductors/parallel_minimum": ("310.10(H)(1)", "310.10(G)(1)", "310.10(G)(1)"),
    "grounding/electrode_conductor_landing": ("250.24(A)(4)", "250.24(A)(4)", "250.24(A)(4)"),
    "grounding/no_neutral_bond_on_load_side": (
        "250.24(A)(5) and 250.142(B)",
        "250.24(A)(5) and 250.142(B)",
        "250.24(B) and 250.142(B)",
    ),
    "jumpers/bus_of_equal_area": ("250.28(D)(1), as practice reads it",) * 3,
    "jumpers/main_bonding_jumper_attachment": ("250.28(C) and 250.8",) * 3,
    "jumpers/main_bonding_jumper_material": ("250.28(A)",) * 3,
    "jumpers/main_bonding_jumper_required": ("250.24(B)", "250.24(B)", "250.24(C)"),
    "jumpers/main_bonding_jumper_size": ("250.28(D)(1)",) * 3,
    "jumpers/no_service_conductors": (
        "Table 250.102(C)(1) note 4",
        "Table 250.102(C)(1) note 4",
        "Table 250.102(C)(1) note 3",
    ),
    "jumpers/not_larger_than_ungrounded": ("Table 250.102(C)(1) note 1",) * 3,
    "jumpers/screw_identification": ("250.28(B)",) * 3,
    "jumpers/several_service_enclosures": ("250.28(D)(2)",) * 3,
    "jumpers/supplied_with_listed_equipment": ("408.3(C)",) * 3,
    "jumpers/supply_side_share_above_table": ("Table 250.102(C)(1) note 1",) * 3,
    "jumpers/supply_side_size": ("Table 250.102(C)(1)",) * 3,
    "jumpers/unlike_metals_above_table": ("Table 250.102(C)(1) note 2",) * 3,
    "naming/equipment_grounding_conductor_size": ("250.122",) * 3,
    "naming/impedance_grounding": ("250.36",) * 3,
    "naming/separate_building": ("250.32(B)(1)",) * 3,
    "naming/supply_side_bonding_jumper": ("250.102(C)",) * 3,
    "naming/system_bonding_jumper": ("250.30(A)(1)",) * 3,
    "naming/ungrounded_service": ("250.24(E)", "250.24(E)", "250.24(F)"),
    "services/disconnects_maximum": ("230.71(A)", "230.71(B)", "230.71(B)"),
}


def test_every_rule_has_its_sections_checked_here():
    assert rule_keys() == sorted(READ)


def test_sections_are_those_of_the_texts_read():
    for key, (in_2017, in_2020, in_2023) in READ.items():
        expected = dict(zip(EDITIONS, (in_2017, in_2020, in_2023, in_2023), strict=True))
        assert {edition: rule(key, edition).section for edition in EDITIONS} == expected, key


@pytest.mark.parametrize("key", READ)
def test_nothing_of_2026_is_called_confirmed(key):
    assert rule(key, "2026").mark in ("memory", "practice")
