"""The figures of pools, farms, docks and other places against texts read apart from the rules.

2017: NFPA 70-2017. 2020: California Electrical Code 2022. 2023: NFPA 70-2023. No text of 2026 was seen.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule
from tests.rules.by_edition import rows, since, values

# Read in the texts of 2017 and 2020: Articles 680 and 682. The 2023 text of Chapter 6 was not seen.
WATER = {
    "pool_bonding_conductor": "8",  # 680.26(B), solid copper
    "pool_perimeter_width": 3,  # 680.26(B)(2), feet, 1 m in the text
    "pool_fixed_metal_distance": 5,  # 680.26(B)(7), feet
    "pool_fixed_metal_height": 12,  # 680.26(B)(7), feet
    "pool_water_area": 9,  # 680.26(C), square inches
    "pool_light_niche_bond": "8",  # 680.23(B)(2)(b), insulated copper
    "spa_rim_height": 28,  # 680.42(B), inches
    "dock_plane_reach": 36,  # 682.33(A), inches
    "dock_plane_conductor": "8",  # 682.33(C), solid copper
}
# Read in the text of 2017: Articles 517, 547 and 800. The texts of 2020 and 2023 of Chapters 5 and 8 were not seen.
FARMS_CARE_AND_CABLES = {
    "livestock_plane_conductor": "8",  # 547.10(B), solid copper
    "patient_panels_conductor": "10",  # 517.14, insulated copper
    "communications_conductor_size": "14",  # 800.100(A)(3)
    "communications_conductor_length": 20,  # 800.100(A)(4), feet, one- and two-family dwellings
    "communications_electrode_jumper": "6",  # 800.100(D), copper
}
# Read in the texts of 2017, 2020 and 2023: Article 250.
ELECTRODES = {
    "water_pipe_electrode": 10,  # 250.52(A)(1), feet in the earth
    "building_steel_electrode": 10,  # 250.52(A)(2), feet upright in the earth
    "concrete_encased_electrode": 20,  # 250.52(A)(3), feet
    "ring_electrode": 20,  # 250.52(A)(4), feet
    "rod_electrode": 8,  # 250.52(A)(5), feet
    "rod_diameter": "5/8",  # 250.52(A)(5), inches, 15.87 mm in the text; the figure of 2023 could not be read
    "plate_electrode": 2,  # 250.52(A)(7), square feet
    "rod_depth": 8,  # 250.53(G), later 250.53(A)(4), feet
    "ring_depth": 30,  # 250.53(F), inches, 750 mm in the text
    "plate_depth": 30,  # 250.53(H), later 250.53(A)(5), inches, 750 mm in the text
    "water_pipe_landing_distance": 5,  # 250.68(C)(1), feet
}


def test_the_figures_are_those_of_the_texts():
    for key, figure in (WATER | FARMS_CARE_AND_CABLES | ELECTRODES).items():
        assert {rule(f"places/{key}", edition).value for edition in EDITIONS} == {figure}, key


def test_a_busbar_for_other_systems_is_as_thick_and_wide_as_the_texts_say():
    for edition in EDITIONS:
        # Read in the texts of 2017, 2020 and 2023: 250.94(B), 6 mm by 50 mm or 1/4 in by 2 in.
        assert rule("places/intersystem_busbar", edition).value == "1/4 by 2"


def test_an_emergency_disconnect_is_asked_for_in_2020_and_2023():
    # The text of 2017 goes from 230.82 to 230.90; those of 2020 and 2023 have 230.85. A course page on 2026 tells
    # that it is deleted and that the service disconnect itself stands outdoors by 230.70(A)(1).
    required = since({"2017": "not required", "2020": "required", "2026": "not required"})
    assert values("places/emergency_disconnect") == required


def test_the_protection_at_a_dock_has_the_settings_that_public_pages_tell_of_each_edition():
    # A press page on 555.3 of 2017: 30 mA for what supplies the dock. Press and course pages on 555.35 of 2020 and
    # 2023: 30 mA at shore-power receptacles, 100 mA on feeders. 2026 is taken as 2023.
    settings = {"2017": [{"shore_power": 30, "feeder": 30}], "2020": [{"shore_power": 30, "feeder": 100}]}
    assert rows("places/dock_ground_fault_protection") == since(settings)
