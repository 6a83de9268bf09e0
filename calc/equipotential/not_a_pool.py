"""What looks like a pool and has rules elsewhere: why it has no plan here, and where to look."""

from __future__ import annotations

from calc.equipotential import pool_fields as ask
from calc.messages import message
from calc.scope import OutOfScope, SectionOf

OUT_OF_SCOPE = (
    OutOfScope(
        "kind",
        ask.STORABLE,
        message(
            "A storable pool has its own rules: a cord-connected, double-insulated pump, and GFCIs. The bonding "
            "of permanent pools is not required for it."
        ),
        message(
            "See storable pools ({section}) and the manufacturer's instructions.",
            section=SectionOf("planes/storable_pool"),
        ),
    ),
    OutOfScope(
        "kind",
        ask.THERAPEUTIC_PORTABLE,
        message("A portable therapeutic tub is an appliance: the bonding rules for fixed tubs do not apply to it."),
        message(
            "See therapeutic use ({section}), which sends you to the article on appliances, and the "
            "manufacturer's instructions.",
            section=SectionOf("planes/therapeutic_portable"),
        ),
    ),
    OutOfScope(
        "kind",
        ask.HYDROMASSAGE,
        message("A whirlpool bathtub has its own list of what to bond. The lists for pools and spas do not apply."),
        message("See hydromassage bathtubs ({section}).", section=SectionOf("places/hydromassage_bonding")),
    ),
)
