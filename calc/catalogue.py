"""Every calculator by slug."""

from calc.grounding.water_pipe_bonding import water_pipe_bonding
from calc.jumpers.main_bonding_jumper import main_bonding_jumper

CALCULATORS = {
    each.slug: each
    for each in (
        main_bonding_jumper,
        water_pipe_bonding,
    )
}  # fmt: skip
