"""The wire that bonds a plane: what is asked of it, and whether one entered will do."""

from __future__ import annotations

from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.declare import Choice
from calc.planes.plan import BOND, CHANGE, IN_ORDER, Plan
from calc.vocabulary import conductor_size, one_of
from calc.words import say

SOLID_COPPER = "solid-copper"
SIZE = conductor_size(say("Wire that bonds the plane"), say("Leave it empty to see what is asked."))
KIND = one_of(
    say("That wire is"),
    say(""),
    (
        Choice(SOLID_COPPER, say("Solid copper")),
        Choice("stranded-copper", say("Stranded copper")),
        Choice("aluminum", say("Aluminum or copper-clad aluminum")),
    ),
)


def add_bond(size: str | None, kind: str, least: str, rule: str, plan: Plan) -> None:
    """Add the bond of a plane. least: the smallest size that `rule` takes, solid copper."""
    part, words = say("Bond of the plane"), {"least": shown_size(least)}
    if size is None:
        why = say("Solid copper, {least} or larger, to the grounding of the installation.", **words)
        plan.add("bond", part, BOND, why, rule)
    elif kind != SOLID_COPPER:
        plan.add("bond", part, CHANGE, say("Only solid copper is named, {least} or larger.", **words), rule)
    elif area(size, plan.working.edition) < area(least, plan.working.edition):
        why = say("{size} is smaller than {least}.", size=shown_size(size), **words)
        plan.add("bond", part, CHANGE, why, rule)
    else:
        why = say(
            "{size}, if it is solid copper: {least} or larger is asked. Stranded wire or aluminum will not do.",
            size=shown_size(size),
            **words,
        )
        plan.add("bond", part, IN_ORDER, why, rule)
