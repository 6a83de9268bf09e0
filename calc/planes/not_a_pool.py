"""What looks like a pool and has rules elsewhere: why it has no plan here, and where to look."""

from __future__ import annotations

from calc.declare import NotCovered
from calc.planes import pool_fields as ask
from calc.words import say
from calc.working import Working


def stay_with_pools(kind: str, working: Working) -> None:
    """Raise NotCovered, with where to look, for a kind that has no plan here. kind: a value of `pool_fields.KIND`."""
    section = working.section
    if kind == ask.STORABLE:
        raise NotCovered(
            say(
                "A storable pool has rules of its own: a pump with double insulation on a cord, and ground-fault "
                "interrupters. The bonding of permanent pools is not asked of it."
            ),
            say(
                "Look under storable pools ({section}), and in the maker's book.",
                section=section("planes/storable_pool"),
            ),
        )
    if kind == ask.THERAPEUTIC_PORTABLE:
        raise NotCovered(
            say("A portable therapeutic tub is an appliance: the bonding of fixed tubs is not written for it."),
            say(
                "Look under therapeutic use ({section}), which sends to the article on appliances, and in the maker's "
                "book.",
                section=section("planes/therapeutic_portable"),
            ),
        )
    if kind == ask.HYDROMASSAGE:
        raise NotCovered(
            say("A whirlpool bathtub has a list of its own for what is bonded. Those of pools and spas do not count."),
            say("Look under hydromassage bathtubs ({section}).", section=section("places/hydromassage_bonding")),
        )
