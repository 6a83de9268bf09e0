"""Every calculator by slug."""

from calc.jumpers.main_bonding_jumper import main_bonding_jumper
from calc.jumpers.system_bonding_jumper import system_bonding_jumper

CALCULATORS = {
    each.slug: each
    for each in (
        main_bonding_jumper,
        system_bonding_jumper,
    )
}  # fmt: skip
