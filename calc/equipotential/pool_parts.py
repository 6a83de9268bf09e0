"""The parts of a pool, spa, tub or fountain and the metal near it: which of them are bonded, and why."""

from __future__ import annotations

from calc.calculator import FieldError, require
from calc.equipotential import pool_fields as ask
from calc.equipotential.plan import BOND, CHANGE, IN_ORDER, LISTING, LOOK, MUST_NOT, NEED_NOT, Plan
from calc.messages import message

SHELL, STRUCTURE, FITTINGS = "places/pool_shell", "places/pool_metal_structure", "places/pool_metal_fittings"
LIGHTS, LIGHT_JUMPER = "places/pool_underwater_lights", "places/pool_light_niche_bond"
EQUIPMENT = "places/pool_equipment"
FIXED, FIXED_FEET = "places/pool_fixed_metal", "places/pool_fixed_metal_distance"
FIXED_HEIGHT = "places/pool_fixed_metal_height"
CONDUCTOR, WATER, WATER_AREA = "places/pool_bonding_conductor", "places/pool_water", "places/pool_water_area"
SMALL, ANCHOR = "planes/pool_small_fitting", "planes/pool_cover_anchor"
LARGE_HEATER = "planes/pool_heater_with_instructions"
HOOPS = "places/spa_outdoors"
LISTED = {ask.SPA_OUTDOORS: "places/spa_outdoors", ask.SPA_INDOORS: "places/spa_indoors"}
MADE_WITH_A_SPA = ("metal-light", "plastic-light", "pump", "double-insulated-pump", "heater", "large-heater")
GRID = "planes/pool_grid_spacing"


def is_conductive(kind: str, there: list[str]) -> bool:
    """Tell whether the shell conducts: concrete does, and an outdoor spa with steel bars in its shell."""
    return kind == ask.CONDUCTIVE or (kind == ask.SPA_OUTDOORS and bool({"rebar", "coated-rebar"} & set(there)))


def add_shell(kind: str, there: list[str], plan: Plan) -> None:
    """Add what the shell is bonded through, and its steel."""
    conductive = is_conductive(kind, there)
    if conductive and "rebar" in there:
        why = message("Concrete conducts. Its bars are tied together with steel wire and bonded.")
        plan.add("rebar", ask.PARTS["rebar"], BOND, why, SHELL)
    elif conductive:
        trace = plan.trace
        why = message(
            "Concrete conducts. With no bare steel, a copper grid of {size} AWG takes its place: {mesh} in mesh, "
            "within {depth} in of the shell.",
            size=trace.cite(CONDUCTOR).value,
            mesh=trace.cite(GRID).value,
            depth=trace.cite("planes/pool_grid_depth").value,
        )
        plan.add("shell-grid", message("Copper grid in or under the shell"), BOND, why, SHELL)
        trace.note(
            message(
                "The grid spacing may be off by {tolerance} in. Its wires are bonded at each crossing.",
                tolerance=trace.cite("planes/pool_grid_tolerance").value,
            )
        )
    elif "rebar" in there:
        plan.add("rebar", ask.PARTS["rebar"], BOND, message("Metal of the pool's structure."), STRUCTURE)
    if "coated-rebar" in there:
        why = message("Its coating isolates it from the concrete: it bonds nothing.")
        plan.add("coated-rebar", ask.PARTS["coated-rebar"], NEED_NOT, why, STRUCTURE)
    if "wall-panels" in there:
        plan.add("wall-panels", ask.PARTS["wall-panels"], BOND, message("Metal of the pool's structure."), STRUCTURE)
    if "hoops" in there:
        if kind == ask.SPA_OUTDOORS:
            plan.add("hoops", ask.PARTS["hoops"], NEED_NOT, message("The rule for outdoor spas exempts them."), HOOPS)
        else:
            plan.add("hoops", ask.PARTS["hoops"], BOND, message("Metal of the pool's structure."), STRUCTURE)


def add_listed_spa(there: list[str], plan: Plan) -> list[str]:
    """Add what a listed self-contained spa is made with; give the parts that are left to the installer."""
    why = message(
        "The manufacturer bonded it. Use the spa's bonding lug per its instructions, and change nothing inside."
    )
    for key in MADE_WITH_A_SPA:
        if key in there:
            plan.add(key, ask.PARTS[key], LISTING, why, HOOPS)
    return [key for key in there if key not in MADE_WITH_A_SPA]


def add_lights(there: list[str], plan: Plan) -> None:
    """Add the underwater lights."""
    if "metal-light" in there:
        why = message(
            "Bonded from the outside. In a nonmetallic conduit an insulated copper jumper of {size} AWG runs to its "
            "inside too.",
            size=plan.trace.cite(LIGHT_JUMPER).value,
        )
        plan.add("metal-light", ask.PARTS["metal-light"], BOND, why, LIGHTS)
    if "plastic-light" in there:
        why = message("A listed low-voltage light has no metal shell to bond.")
        plan.add("plastic-light", ask.PARTS["plastic-light"], NEED_NOT, why, LIGHTS)


def add_fittings(there: list[str], plan: Plan) -> None:
    """Add the fittings in or on the pool."""
    for key in ("ladder", "rail", "diving-board", "water-feature"):
        if key in there:
            plan.add(key, ask.PARTS[key], BOND, message("Wet hands and feet are on it. Bond its sockets."), FITTINGS)
    if "small-fitting" in there:
        limit = plan.trace.cite(SMALL).rows[0]
        why = message(
            "Exempt only if no side is over {across} in and it goes no more than {into} in into the structure. "
            "Larger: bond it.",
            **limit,
        )
        plan.add("small-fitting", ask.PARTS["small-fitting"], LOOK, why, SMALL)
    if "cover-anchors" in there:
        spared = plan.trace.cite(ANCHOR).rows
        sizes = "; ".join(str(message("{across} in across, {long} in long ({deck} deck)", **row)) for row in spared)
        why = message("Unless they are no larger than this: {sizes}.", sizes=sizes)
        plan.add("cover-anchors", ask.PARTS["cover-anchors"], BOND, why, ANCHOR)


def add_equipment(there: list[str], plan: Plan) -> None:
    """Add pump, heater and the motor of a cover."""
    size = plan.trace.cite(CONDUCTOR).value
    for key in ("pump", "heater", "cover-motor"):
        if key in there:
            why = message("A fault in it would put its metal and the water at another voltage.")
            plan.add(key, ask.PARTS[key], BOND, why, EQUIPMENT)
    if "double-insulated-pump" in there:
        plan.add(
            "double-insulated-pump",
            ask.PARTS["double-insulated-pump"],
            MUST_NOT,
            message("Its insulation is the protection. Leave its metal unbonded."),
            EQUIPMENT,
        )
        why = message(
            "{size} AWG solid copper, left beside the pump. Where nothing else connects the two, bond it to the "
            "equipment grounding conductor.",
            size=size,
        )
        plan.add("spare-wire", message("Wire for a replacement pump"), BOND, why, EQUIPMENT)
    if "large-heater" in there:
        why = message(
            "Rated over {ampere} A with its own instructions: bond and ground only the parts they name.",
            ampere=plan.trace.cite(LARGE_HEATER).value,
        )
        plan.add("large-heater", ask.PARTS["large-heater"], BOND, why, LARGE_HEATER)


def add_near_metal(
    near: dict[str, float], height: float | None, height_from: str, there: list[str], barrier: list[str], plan: Plan
) -> None:
    """Add the fixed metal near a pool: bonded unless it is far, high or out of reach.

    height: ft of the other metal. Raises: FieldError for where a height that spares it is measured from.
    """
    feet, up = plan.trace.cite(FIXED_FEET).value, plan.trace.cite(FIXED_HEIGHT).value
    for key, distance in near.items():
        part = ask.NEAR_METAL[key]
        if key in barrier:
            plan.add(key, part, NEED_NOT, message("A permanent barrier keeps people from it."), FIXED)
        elif distance > feet:
            why = message("It is farther than {feet} ft from the inside wall.", feet=feet)
            plan.add(key, part, NEED_NOT, why, FIXED_FEET)
        elif key == ask.OTHER_METAL and height is not None and height > up:
            _check_where_from(height_from, there)
            why = message(
                "It is higher than {up} ft above the water and every stand, tower, platform or diving structure.", up=up
            )
            plan.add(key, part, NEED_NOT, why, FIXED_HEIGHT)
        else:
            why = message(
                "Within {feet} ft, and within reach of someone standing in the water or on the deck.", feet=feet
            )
            plan.add(key, part, BOND, why, FIXED)


def _check_where_from(height_from: str, there: list[str]) -> None:
    if height_from == ask.NOT_GIVEN:
        raise FieldError(
            "height_from", message("Height is measured from where people stand. Choose what you measured from.")
        )
    if height_from == ask.FROM_WATER and "diving-board" in there:
        raise FieldError(
            "height_from", message("A diving board is there. Measure the height from its top, and choose that.")
        )


def add_water(contact: str, area: float | None, listed: str | None, plan: Plan) -> None:
    """Add the water. listed: the rule of a listed spa, None for others. Raises: FieldError for a surface's area."""
    least, part = plan.trace.cite(WATER_AREA).value, message("Pool water")
    if listed and contact == ask.BY_NONE:
        why = message("The manufacturer of a listed spa took care of it. Put nothing through its shell.")
        plan.add("water", part, LISTING, why, listed)
    elif contact == ask.BY_PART:
        plan.add("water", part, IN_ORDER, message("A bonded part touches it at all times."), WATER)
    elif contact == ask.BY_NONE:
        why = message("Give it a bonded metal surface of {least} in² or more that it always touches.", least=least)
        plan.add("water", part, BOND, why, WATER)
    elif require(area, "water_area") >= least:
        plan.add("water", part, IN_ORDER, message("The surface has {least} in² or more. Bond it.", least=least), WATER)
    else:
        plan.add("water", part, CHANGE, message("The surface is smaller than {least} in².", least=least), WATER)
