"""The surface around a pool: which of it is bonded, in which ways the edition allows, and what is spared."""

from __future__ import annotations

from calc.calculator import FieldError, require
from calc.equipotential import pool_fields as ask
from calc.equipotential.plan import ASK, BOND, CHANGE, NEED_NOT, Plan
from calc.messages import Message, message

WAYS, WAYS_AMENDED = "planes/pool_perimeter_ways", "planes/pool_perimeter_ways_amended"
PERIMETER = "places/pool_perimeter"
WIDTH = "places/pool_perimeter_width"
WALL = "planes/pool_perimeter_wall"
TIES = "planes/pool_perimeter_ties"
SPARES_OUTDOORS, RIM, RIM_REACH = "places/spa_outdoors", "places/spa_rim_height", "planes/spa_rim_reach"
RING_TESTS = "places/deck_tests"
SPARES_INDOORS = "planes/spa_indoors_floor"
AROUND = message("Surface around the pool")


def allowed_ways(amendment: str, plan: Plan) -> tuple[str, dict[str, list[str]]]:
    """Return the rule that counts, and the ways it allows by surface; "any" stands for every surface."""
    rule = WAYS_AMENDED if amendment == "yes" else WAYS
    ways: dict[str, list[str]] = {}
    for row in plan.trace.cite(rule).rows:
        ways.setdefault(row["surface"], []).append(row["way"])
    return rule, ways


def usable_ways(surface: str, ways: dict[str, list[str]]) -> list[str]:
    """Return the ways for one surface. One that is off the earth has none, unless the edition spares it by name."""
    return ways.get(surface) or ([] if surface == ask.OFF_EARTH else ways.get("any", []))


def spared(kind: str, listed_spa: str, rim_height: float | None, plan: Plan) -> bool:
    """Tell whether a listed spa needs no bonded surface around it, and add the row that says so.

    Raises: FieldError for the rim's height, which a listed spa outdoors needs.
    """
    if listed_spa != "yes" or kind not in (ask.SPA_OUTDOORS, ask.SPA_INDOORS):
        return False
    if kind == ask.SPA_INDOORS:
        why = message("A listed self-contained spa above a finished floor is exempt.")
        plan.add("perimeter", AROUND, NEED_NOT, why, SPARES_INDOORS)
        return True
    least, reach = plan.trace.cite(RIM).value, plan.trace.cite(RIM_REACH).value
    if require(rim_height, "rim_height") < least:
        return False
    why = message(
        "The rim is {least} in or more above all surfaces within {reach} in, and the spa is listed for it.",
        least=least,
        reach=reach,
    )
    plan.add("perimeter", AROUND, NEED_NOT, why, SPARES_OUTDOORS)
    return True


def add_surfaces(surfaces: str | None, way: str, amendment: str, plan: Plan) -> None:
    """Add a row for each surface around the pool: how it is bonded in this edition.

    way: how it is meant to be bonded, "open" if not decided. Raises: FieldError for the surfaces, when only the way is
    known.
    """
    width = plan.trace.cite(WIDTH).value
    plan.trace.step(
        message("The rule covers the surface this far out from the inside wall."), width, "ft", (PERIMETER, WIDTH)
    )
    rule, ways = allowed_ways(amendment, plan)
    if surfaces is None and way != ask.OPEN:
        raise FieldError("surfaces")
    if surfaces is None:
        why = message("Paved or not, it is bonded out to {width} ft from the inside wall.", width=width)
        plan.add("perimeter", AROUND, BOND, why, PERIMETER)
        return
    for surface in surfaces.split(","):
        decision, why = _decided(surface, usable_ways(surface, ways), way, width)
        plan.add(surface, ask.SURFACE_WORDS[surface], decision, why, rule)
    if "any" in ways:
        plan.trace.note(message("Wire or grid is only for a surface that has no bare steel."))
    plan.trace.note(
        message(
            "In full-size tests one wire let over {milliampere} mA through a person during a fault ({source}). Steel, "
            "mesh or a grid does better.",
            milliampere=plan.trace.cite(RING_TESTS).value,
            source=plan.trace.section(RING_TESTS),
        )
    )


def _decided(surface: str, usable: list[str], way: str, width: float) -> tuple[str, Message]:
    if surface == ask.OFF_EARTH:
        if usable:
            return NEED_NOT, message("It is nonconductive and kept off the earth.")
        return ASK, message("This edition does not exempt it by name. The AHJ decides.")
    words = "; ".join(str(ask.WAY_WORDS[each]) for each in usable)
    if way == ask.OPEN:
        return BOND, message("Out to {width} ft from the inside wall, with one of: {ways}.", width=width, ways=words)
    if way == ask.MESH and way not in usable and usable[0] == ask.STEEL:
        return ASK, message("This edition names steel bars, not mesh. The AHJ decides.")
    if way in usable:
        return BOND, message("Out to {width} ft from the inside wall, with {way}.", width=width, way=ask.WAY_WORDS[way])
    return CHANGE, message("Not with {way}. This edition names: {ways}.", way=ask.WAY_WORDS[way], ways=words)


def add_wall(wall_height: float | None, plan: Plan) -> None:
    """Add the surface behind a wall or building, where there is one."""
    if wall_height is None:
        return
    least = plan.trace.cite(WALL).value
    part = message("Surface behind the wall")
    if wall_height >= least:
        why = message("The wall is {least} ft or higher: only the pool's side is bonded.", least=least)
        plan.add("behind-wall", part, NEED_NOT, why, WALL)
    else:
        why = message("The wall is lower than {least} ft, so bond the surface behind it too.", least=least)
        plan.add("behind-wall", part, BOND, why, WALL)


def add_ties(conductive: bool, plan: Plan) -> None:
    """Add the ties between the surface and the shell."""
    count = plan.trace.cite(TIES).value
    part = message("Ties from the surface to the shell")
    if conductive:
        why = message("At {count} places or more, evenly around the pool, to its steel or its grid.", count=count)
        plan.add("ties", part, BOND, why, TIES)
    else:
        why = message(
            "The shell is treated as nonconductive: {count} ties are not required. One bond connects the surface.",
            count=count,
        )
        plan.add("ties", part, NEED_NOT, why, TIES)
