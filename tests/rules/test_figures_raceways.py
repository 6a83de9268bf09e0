"""The figures of raceways as grounding path against texts read apart from the rules.

250.118, 250.102(E)(2): NFPA 70-2017, California 2022 (2020), NFPA 70-2023. Tray areas: a maker's manual of 2002.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule

FLEXIBLE = [
    ("flexible-metal-conduit", "3/8", "1-1/4", 20),
    ("liquidtight-flexible-metal-conduit", "3/8", "1/2", 20),
    ("liquidtight-flexible-metal-conduit", "3/4", "1-1/4", 60),
    ("flexible-metallic-tubing", None, None, 20),
]
# Ampere, steel, aluminum, in².
TRAY = [
    (60, 0.2, 0.2),
    (100, 0.4, 0.2),
    (200, 0.7, 0.2),
    (400, 1.0, 0.4),
    (600, 1.5, 0.4),
    (1000, None, 0.6),
    (1200, None, 1.0),
    (1600, None, 1.5),
    (2000, None, 2.0),
]


def test_flexible_raceways_have_the_devices_and_sizes_of_the_texts():
    for edition in EDITIONS:
        rows = rule("raceways/flexible_device_largest", edition).rows
        assert [(r["raceway"], r.get("smallest"), r.get("largest"), r["ampere"]) for r in rows] == FLEXIBLE


def test_six_feet_is_the_longest_flexible_path_and_the_longest_jumper_outside():
    for edition in EDITIONS:
        assert rule("raceways/flexible_length_longest", edition).value == 6
        assert rule("raceways/jumper_outside_longest", edition).value == 6


def test_the_2023_edition_brings_the_jumper_and_stainless_steel():
    for edition in EDITIONS:
        early = edition in ("2017", "2020")
        moves = rule("raceways/flexibility_after_installation", edition).value
        assert moves == ("wire" if early else "wire-or-jumper")
        assert rule("raceways/stainless_steel", edition).value == ("not-named" if early else "wire-or-jumper")


def test_trays_have_the_areas_of_the_manual_and_the_4_awg_of_the_texts():
    for edition in EDITIONS:
        rows = rule("raceways/tray_metal_area", edition).rows
        assert [(r["through_ampere"], r.get("steel"), r["aluminum"]) for r in rows] == TRAY
        assert rule("raceways/tray_single_conductor_smallest", edition).value == "4"


def test_flexible_metallic_tubing_has_the_trade_sizes_of_its_article():
    """360.20 of 2023, and of a page of 2021: 1/2 to 3/4, and 3/8 by exception."""
    for edition in EDITIONS:
        rows = rule("raceways/flexible_metallic_tubing_size", edition).rows
        assert [(row["trade_size"], row["use"]) for row in rows] == [
            ("3/8", "exceptions"),
            ("1/2", "any"),
            ("3/4", "any"),
        ]


def test_only_a_course_page_on_2026_tells_of_voltage_limits_in_the_list():
    """250.118 of NFPA 70-2017 and California 2022, 250.118(A) of NFPA 70-2023: none. Later: a page on 250.118(A)."""
    for edition in EDITIONS:
        expected = "none" if edition in ("2017", "2020", "2023") else "for some kinds"
        assert rule("raceways/voltage_limits_of_kinds", edition).value == expected
