"""Electrical bonding and grounding, computed: pure Python that knows no web page."""

from calc.catalogue import CALCULATORS
from calc.editions import EDITIONS
from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.grounding.grounded_conductor import grounded_conductor
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.grounding.structural_metal_bonding import structural_metal_bonding
from calc.grounding.water_pipe_bonding import water_pipe_bonding
from calc.jumpers.equipment_bonding_jumper import equipment_bonding_jumper
from calc.jumpers.main_bonding_jumper import main_bonding_jumper
from calc.raceways.buried_metal_elbow import buried_metal_elbow
from calc.raceways.knockouts_over_250_volts import knockouts_over_250_volts
from calc.raceways.raceway_as_grounding_path import raceway_as_grounding_path

__all__ = ["CALCULATORS", "EDITIONS", "main_bonding_jumper", "water_pipe_bonding"]
__all__ = ["CALCULATORS", "EDITIONS", "main_bonding_jumper", "raceway_as_grounding_path"]
from calc.jumpers.supply_side_bonding_jumper import supply_side_bonding_jumper
from calc.jumpers.system_bonding_jumper import system_bonding_jumper

__all__ = ["CALCULATORS", "EDITIONS", "main_bonding_jumper", "system_bonding_jumper"]
__all__ = ["CALCULATORS", "EDITIONS", "grounding_electrode_conductor", "main_bonding_jumper"]
__all__ = ["CALCULATORS", "EDITIONS", "equipment_grounding_conductor", "main_bonding_jumper"]
__all__ = ["CALCULATORS", "EDITIONS", "main_bonding_jumper", "supply_side_bonding_jumper"]
__all__ = ["CALCULATORS", "EDITIONS", "grounded_conductor", "main_bonding_jumper"]
__all__ = ["CALCULATORS", "EDITIONS", "equipment_bonding_jumper", "main_bonding_jumper"]
__all__ = ["CALCULATORS", "EDITIONS", "main_bonding_jumper", "structural_metal_bonding"]
__all__ = ["CALCULATORS", "EDITIONS", "buried_metal_elbow", "main_bonding_jumper"]
from calc.naming.conductor_name import conductor_name

__all__ = ["CALCULATORS", "EDITIONS", "conductor_name", "main_bonding_jumper"]
__all__ = ["CALCULATORS", "EDITIONS", "knockouts_over_250_volts", "main_bonding_jumper"]
