"""Every calculator by slug."""

from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.grounding.grounded_conductor import grounded_conductor
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.grounding.water_pipe_bonding import water_pipe_bonding
from calc.jumpers.main_bonding_jumper import main_bonding_jumper
from calc.jumpers.system_bonding_jumper import system_bonding_jumper
from calc.raceways.knockouts_over_250_volts import knockouts_over_250_volts
from calc.raceways.raceway_as_grounding_path import raceway_as_grounding_path

CALCULATORS = {
    each.slug: each
    for each in (
        main_bonding_jumper,
        water_pipe_bonding,
        raceway_as_grounding_path,
        system_bonding_jumper,
        grounding_electrode_conductor,
        equipment_grounding_conductor,
        grounded_conductor,
        knockouts_over_250_volts,
    )
}  # fmt: skip
