"""The figures of pools, farms, docks and other places against texts read apart from the rules.

2017: NFPA 70-2017. 2020: California Electrical Code 2022. 2023: NFPA 70-2023. No text of 2026 was seen.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule

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
    "plate_electrode": 2,  # 250.52(A)(7), square feet
    "rod_depth": 8,  # 250.53(G), later 250.53(A)(4), feet
    "water_pipe_landing_distance": 5,  # 250.68(C)(1), feet
}


def test_the_figures_are_those_of_the_texts():
    for key, figure in (WATER | FARMS_CARE_AND_CABLES | ELECTRODES).items():
        assert {rule(f"places/{key}", edition).value for edition in EDITIONS} == {figure}, key
