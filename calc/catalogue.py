"""Every calculator by slug."""

from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.jumpers.main_bonding_jumper import main_bonding_jumper

CALCULATORS = {
    each.slug: each
    for each in (
        main_bonding_jumper,
        grounding_electrode_conductor,
    )
}  # fmt: skip
