"""What looks like a pool and has rules elsewhere: why it has no plan here, and where to look."""

from __future__ import annotations

from calc.calculator import NotCovered
from calc.equipotential import pool_fields as ask
from calc.messages import message
from calc.trace import Trace


def stay_with_pools(kind: str, trace: Trace) -> None:
    """Raise NotCovered, with where to look, for a kind that has no plan here. kind: a value of `pool_fields.KIND`."""
    section = trace.section
    if kind == ask.STORABLE:
        raise NotCovered(
            message(
                "A storable pool has rules of its own: a pump with double insulation on a cord, and ground-fault "
                "interrupters. The bonding of permanent pools is not asked of it."
            ),
            message(
                "Look under storable pools ({section}), and in the maker's book.",
                section=section("planes/storable_pool"),
            ),
        )
    if kind == ask.THERAPEUTIC_PORTABLE:
        raise NotCovered(
            message("A portable therapeutic tub is an appliance: the bonding of fixed tubs is not written for it."),
            message(
                "Look under therapeutic use ({section}), which sends to the article on appliances, and in the maker's "
                "book.",
                section=section("planes/therapeutic_portable"),
            ),
        )
    if kind == ask.HYDROMASSAGE:
        raise NotCovered(
            message(
                "A whirlpool bathtub has a list of its own for what is bonded. Those of pools and spas do not count."
            ),
            message("Look under hydromassage bathtubs ({section}).", section=section("places/hydromassage_bonding")),
        )
