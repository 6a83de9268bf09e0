"""Every calculator by slug."""

from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.jumpers.main_bonding_jumper import main_bonding_jumper

CALCULATORS = {
    each.slug: each
    for each in (
        main_bonding_jumper,
        equipment_grounding_conductor,
    )
}  # fmt: skip
