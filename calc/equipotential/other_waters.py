"""Indoor spas, therapeutic tubs and fountains: lists of their own for the parts that are bonded."""

from __future__ import annotations

from calc.equipotential import pool_fields as ask
from calc.equipotential.plan import ASK, BOND, NEED_NOT, Plan
from calc.messages import message

LISTS = {ask.SPA_INDOORS: "places/spa_indoors", ask.THERAPEUTIC_TUB: "planes/therapeutic_tub"}
FEET = {ask.SPA_INDOORS: "planes/spa_indoors_distance", ask.THERAPEUTIC_TUB: "planes/therapeutic_tub_distance"}
FOUNTAIN_PARTS, FOUNTAIN_GROUNDING = "planes/fountain_parts", "places/fountain_grounding"
FITTINGS = ("metal-light", "ladder", "rail", "diving-board", "water-feature")
EQUIPMENT = ("pump", "heater", "large-heater", "cover-motor")
NAMED_IN_FOUNTAINS = {
    **dict.fromkeys((*FITTINGS, "small-fitting", "cover-anchors"), "fittings"),
    **dict.fromkeys(EQUIPMENT, "equipment"),
    ask.PIPING: "piping",
    ask.RACEWAY: "raceways",
    **dict.fromkeys((ask.FENCE, ask.DOOR, ask.OTHER_METAL), "surfaces"),
}


def add_tub(
    kind: str, there: list[str], listed_spa: str, near: dict[str, float], barrier: list[str], plan: Plan
) -> None:
    """Add the parts of an indoor spa or a therapeutic tub and the metal near it."""
    rule = LISTS[kind]
    for key in there:
        part = ask.PARTS[key]
        if key in EQUIPMENT and kind == ask.SPA_INDOORS and listed_spa == "yes":
            plan.add(key, part, NEED_NOT, message("It is part of a listed self-contained spa."), rule)
        elif key in (*FITTINGS, *EQUIPMENT):
            plan.add(key, part, BOND, message("It is part of the tub and its water."), rule)
        elif key == "plastic-light":
            plan.add(key, part, NEED_NOT, message("A listed low-voltage light has no metal shell to bond."), rule)
        elif key == "small-fitting":
            why = message("A jet or drain not on metal piping, a towel bar, a mirror frame: not likely to become live.")
            plan.add(key, part, NEED_NOT, why, rule)
        else:
            plan.add(key, part, ASK, message("The list for this kind of tub does not name it."), rule)
    feet = plan.trace.cite(FEET[kind]).value
    for key, distance in near.items():
        part = ask.NEAR_METAL[key]
        if key in barrier:
            plan.add(key, part, NEED_NOT, message("A permanent barrier keeps people from it."), rule)
        elif distance > feet:
            why = message("It is farther than {feet} ft from the inside wall.", feet=feet)
            plan.add(key, part, NEED_NOT, why, FEET[kind])
        else:
            plan.add(key, part, BOND, message("It is within {feet} ft, with no barrier.", feet=feet), rule)


def add_fountain(there: list[str], near: dict[str, float], barrier: list[str], plan: Plan) -> None:
    """Add the parts of a fountain and the metal near it, as far as the edition names them."""
    within = {row["part"]: row["within"] for row in plan.trace.cite(FOUNTAIN_PARTS).rows}
    for key in there:
        named = NAMED_IN_FOUNTAINS.get(key)
        if named in within:
            why = message("It is part of the fountain: bond it to the equipment grounding conductor.")
            plan.add(key, ask.PARTS[key], BOND, why, FOUNTAIN_PARTS)
        elif named == "equipment" or key == "metal-light":
            why = message("This edition bonds piping only. The equipment grounding conductor reaches it.")
            plan.add(key, ask.PARTS[key], NEED_NOT, why, FOUNTAIN_GROUNDING)
        else:
            why = message("This edition's list for fountains does not name it.")
            plan.add(key, ask.PARTS[key], ASK, why, FOUNTAIN_PARTS)
    for key, distance in near.items():
        part, feet = ask.NEAR_METAL[key], within.get(NAMED_IN_FOUNTAINS[key])
        if feet is None:
            plan.add(key, part, NEED_NOT, message("This edition bonds the fountain's piping only."), FOUNTAIN_PARTS)
        elif feet == 0:
            plan.add(key, part, BOND, message("The fountain's own piping is bonded at any distance."), FOUNTAIN_PARTS)
        elif key in barrier:
            plan.add(key, part, NEED_NOT, message("A permanent barrier keeps people from it."), FOUNTAIN_PARTS)
        elif distance > feet:
            why = message("It is farther than {feet} ft from the fountain.", feet=feet)
            plan.add(key, part, NEED_NOT, why, FOUNTAIN_PARTS)
        else:
            plan.add(key, part, BOND, message("It is within {feet} ft, with no barrier.", feet=feet), FOUNTAIN_PARTS)
