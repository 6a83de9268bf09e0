"""Electrical bonding and grounding, computed: pure Python that knows no web page.

Each calculator is here under its name, `from calc import main_bonding_jumper`, and is loaded when it is asked for.
"""

from calc.catalogue import CALCULATORS
from calc.editions import EDITIONS
from calc.fault.available_fault_current import available_fault_current
from calc.fault.longest_return_path import longest_return_path
from calc.fault.take_a_bond_away import take_a_bond_away
from calc.fault.device_clearing import device_clearing
from calc.fault.ground_fault_loop import ground_fault_loop
from calc.fault.jumper_withstand import jumper_withstand
from calc.fault.longest_return_path import longest_return_path
from calc.fault.stray_neutral_current import stray_neutral_current
from calc.electrodes.electrode_resistance import electrode_resistance
from calc.electrodes.measured_electrode import measured_electrode
from calc.fault.earth_only_return import earth_only_return
from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.grounding.grounded_conductor import grounded_conductor
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.grounding.structural_metal_bonding import structural_metal_bonding
from calc.grounding.water_pipe_bonding import water_pipe_bonding
from calc.jumpers.equipment_bonding_jumper import equipment_bonding_jumper
from calc.jumpers.main_bonding_jumper import main_bonding_jumper
from calc.jumpers.supply_side_bonding_jumper import supply_side_bonding_jumper
from calc.jumpers.system_bonding_jumper import system_bonding_jumper
from calc.naming.conductor_name import conductor_name
from calc.raceways.buried_metal_elbow import buried_metal_elbow
from calc.raceways.knockouts_over_250_volts import knockouts_over_250_volts
from calc.raceways.raceway_as_grounding_path import raceway_as_grounding_path
from calc.schedule.generator_schedule import generator_schedule
from calc.schedule.separate_building_schedule import separate_building_schedule
from calc.schedule.service_schedule import service_schedule
from calc.schedule.transformer_schedule import transformer_schedule

__all__ = [
    "CALCULATORS",
    "EDITIONS",
    "available_fault_current",
    "buried_metal_elbow",
    "compare_editions",
    "conductor_name",
    "device_clearing",
    "earth_only_return",
    "electrode_resistance",
    "equipment_bonding_jumper",
    "equipment_grounding_conductor",
    "generator_schedule",
    "ground_fault_loop",
    "grounded_conductor",
    "grounding_electrode_conductor",
    "jumper_withstand",
    "knockouts_over_250_volts",
    "longest_return_path",
    "main_bonding_jumper",
    "measured_electrode",
    "raceway_as_grounding_path",
    "separate_building_schedule",
    "service_schedule",
    "stray_neutral_current",
    "structural_metal_bonding",
    "supply_side_bonding_jumper",
    "system_bonding_jumper",
    "take_a_bond_away",
    "transformer_schedule",
    "water_pipe_bonding",
]

__all__ = ["CALCULATORS", "EDITIONS", *sorted(slug.replace("-", "_") for slug in CALCULATORS)]  # noqa: PLE0604


def __getattr__(name: str):
    slug = name.replace("_", "-")
    if slug in CALCULATORS:
        return CALCULATORS[slug]
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
