"""The wire that bonds a plane: what is asked of it, and whether one entered will do."""

from __future__ import annotations

from calc.calculator import Choice
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.equipotential.plan import BOND, CHANGE, IN_ORDER, Plan
from calc.messages import message
from calc.shared_fields import conductor_size, one_of

SOLID_COPPER = "solid-copper"
SIZE = conductor_size(message("Wire that bonds the plane"), message("Leave empty to see what is required."))
KIND = one_of(
    message("Material of that wire"),
    message(""),
    (
        Choice(SOLID_COPPER, message("Solid copper")),
        Choice("stranded-copper", message("Stranded copper")),
        Choice("aluminum", message("Aluminum or copper-clad aluminum")),
    ),
)


def add_bond(size: str | None, kind: str, least: str, rule: str, plan: Plan) -> None:
    """Add the bond of a plane. least: the smallest size that `rule` takes, solid copper."""
    part, words = message("Bonding wire of the plane"), {"least": shown_size(least)}
    if size is None:
        why = message("Solid copper, {least} or larger, to the grounding system.", **words)
        plan.add("bond", part, BOND, why, rule)
    elif kind != SOLID_COPPER:
        plan.add("bond", part, CHANGE, message("The rule names only solid copper, {least} or larger.", **words), rule)
    elif area(size, plan.trace.edition) < area(least, plan.trace.edition):
        why = message("{size} is smaller than {least}.", size=shown_size(size), **words)
        plan.add("bond", part, CHANGE, why, rule)
    else:
        why = message(
            "{size}, if it is solid copper: {least} or larger is required. Stranded wire or aluminum does not comply.",
            size=shown_size(size),
            **words,
        )
        plan.add("bond", part, IN_ORDER, why, rule)
