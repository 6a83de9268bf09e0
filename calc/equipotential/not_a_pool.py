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
            "A storable pool has rules of its own: a pump with double insulation on a cord, and ground-fault "
            "interrupters. The bonding of permanent pools is not asked of it."
        ),
        message(
            "Look under storable pools ({section}), and in the maker's book.",
            section=SectionOf("planes/storable_pool"),
        ),
    ),
    OutOfScope(
        "kind",
        ask.THERAPEUTIC_PORTABLE,
        message("A portable therapeutic tub is an appliance: the bonding of fixed tubs is not written for it."),
        message(
            "Look under therapeutic use ({section}), which sends to the article on appliances, and in the maker's "
            "book.",
            section=SectionOf("planes/therapeutic_portable"),
        ),
    ),
    OutOfScope(
        "kind",
        ask.HYDROMASSAGE,
        message(
            "A whirlpool bathtub has a list of its own for what is bonded. Those of pools and spas do not count."
        ),
        message("Look under hydromassage bathtubs ({section}).", section=SectionOf("places/hydromassage_bonding")),
    ),
)
