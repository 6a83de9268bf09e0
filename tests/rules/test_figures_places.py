"""The figures of pools, farms, docks and other places against texts read apart from the rules."""

from calc.editions import EDITIONS
from calc.rulebook import rule

FIGURES = {
    "pool_bonding_conductor": "8",
    "pool_perimeter_width": 3,
    "pool_fixed_metal_distance": 5,
    "pool_fixed_metal_height": 12,
    "pool_water_area": 9,
    "pool_light_niche_bond": "8",
    "spa_rim_height": 28,
    "livestock_plane_conductor": "8",
    "dock_plane_reach": 36,
    "dock_plane_conductor": "8",
    "patient_panels_conductor": "10",
    "communications_conductor_size": "14",
    "communications_conductor_length": 20,
    "communications_electrode_jumper": "6",
    "water_pipe_electrode": 10,
    "concrete_encased_electrode": 20,
    "ring_electrode": 20,
    "rod_electrode": 8,
    "plate_electrode": 2,
    "rod_depth": 8,
    "water_pipe_landing_distance": 5,
}


def test_the_figures_are_those_of_the_texts():
    for key, figure in FIGURES.items():
        assert {rule(f"places/{key}", edition).value for edition in EDITIONS} == {figure}, key
