"""A plane of one voltage beside equipment at the water: whether it is asked, how far it reaches, and what is bonded."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, NotCovered, calculator, require
from calc.equipotential import bond_wire
from calc.equipotential import waterside_fields as ask
from calc.equipotential.plan import BUILD, CHANGE, IN_ORDER, NEED_NOT, WISE, Plan
from calc.equipotential.plan_outputs import WATERSIDE
from calc.equipotential.waterside_rows import (
    DEPTH,
    SHORELINE,
    Asked,
    add_depth,
    add_reach,
    add_shoreline,
    add_wet_metal,
)
from calc.messages import Message, message
from calc.trace import Trace

NAME = message("Equipotential plane at the water's edge")
PLANE, REACH, BOND_RULE = "places/dock_plane", "places/dock_plane_reach", "places/dock_plane_conductor"
CONTROLLED = "planes/controlled_equipment"
CONDITIONS, DOCK_BOND, DOCK_CONTROLLED = (
    "planes/dock_plane_conditions",
    "planes/dock_plane_bond",
    "planes/dock_controlled_equipment",
)
SHIPS = "naming/ships_mines_railways"
PART = message("Plane around the equipment")


@calculator(
    "waterside-equipotential-plane",
    name=NAME,
    purpose=message(
        "Whether equipment at the water needs an equipotential plane, how far out it goes, and what is bonded."
    ),
    submit=message("Check the equipment"),
    example={
        "edition": "2020",
        "water": "body",
        "equipment": "disconnect",
        "distance": "8ft",
        "voltage_to_ground": "277V",
        "reach": "30in",
        "bond_conductor": "8",
    },
    outputs=WATERSIDE,
)
def waterside_equipotential_plane(
    *,
    trace: Trace,
    water: Annotated[str, ask.WATER],
    equipment: Annotated[str, ask.EQUIPMENT],
    metal: Annotated[str, ask.METAL] = "yes",
    distance: Annotated[float | None, ask.DISTANCE] = None,
    voltage_to_ground: Annotated[float | None, ask.VOLTAGE] = None,
    reach: Annotated[float | None, ask.REACH] = None,
    bond_conductor: Annotated[str | None, bond_wire.SIZE] = None,
    bond_kind: Annotated[str, bond_wire.KIND] = bond_wire.SOLID_COPPER,
    wet_metal: Annotated[str, ask.WET_METAL] = "yes",
    depth: Annotated[float | None, ask.DEPTH] = None,
) -> Answer:
    """Tell whether equipment beside water needs a plane of one voltage, and what of it is in order.

    When: outdoor service equipment and disconnects that control equipment in or on natural or artificial waters, docks
    and floating buildings, up to 1000 V. Not for pools, ships or boats. It computes no voltage.

    Parameters:
        water: "body", "dock", "floating-building" or "ship". equipment: "service", "disconnect" or "controlled".
        metal: "yes" or "no", metal in reach that may become live. distance: ft to the water, 0 to 10,000, needed at
            "body" for "service" and "disconnect".
        voltage_to_ground: V, 1 to 1000. Distance and voltage decide at docks from 2023 on.
        reach: in, 0 to 1200, of the plane from the equipment; depth: in, 0 to 120, below the walking surface.
        bond_conductor: size label. bond_kind: "solid-copper", "stranded-copper" or "aluminum".
        wet_metal: "yes" or "no".
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold plane_needed ("yes" or "no"), reach_inch and bond_size (what is
        asked, None where no plane is), and decisions (by part).
    Raises: nothing; bad or missing input ends as `fix`, ships and boats as `not_covered`.
    Source: 682.11, 682.14(B), 682.31 to 682.33; 555.13, and 555.14 from 2023 on; in 2017 553.11.

    Example:
    >>> result = waterside_equipotential_plane(edition="2020", water="body", equipment="service", distance=8, reach=36)
    >>> result.answer.values["plane_needed"], result.answer.values["decisions"]["reach"]
    ('yes', 'in-order')
    """
    _warn(trace)
    if water == ask.SHIP:
        raise _ship(trace)
    plan = Plan(trace)
    if water == ask.BODY:
        asked = _asked_at_a_body(equipment, metal, reach, depth, plan)
    else:
        asked = _asked_at_a_dock(equipment, distance, voltage_to_ground, reach, plan)
    if asked:
        add_reach(asked, reach, plan)
        if water == ask.BODY and (reach or depth is not None):
            add_depth(depth, plan)
        bond_wire.add_bond(bond_conductor, bond_kind, asked.least, asked.bond_rule, plan)
    if water == ask.BODY and equipment in SHORELINE:
        add_shoreline(equipment, require(distance, "distance"), plan)
    if wet_metal == "yes":
        add_wet_metal(water, plan)
    _note(water, asked is not None, trace)
    return Answer(
        name=NAME,
        headline=_headline(asked, plan),
        detail=_detail(asked, plan),
        basis=None,
        answer_code=f"{'needed' if asked else 'not-needed'},{plan.answer_code}",
        values={
            "plane_needed": "yes" if asked else "no",
            "reach_inch": asked.reach if asked else None,
            "bond_size": asked.least if asked else None,
            "decisions": plan.decisions,
        },
        table=plan.table,
    )


def _headline(asked: Asked | None, plan: Plan) -> Message:
    if asked is None:
        return message("No equipotential plane is required here")
    own = [plan.decisions[key] for key in ("plane", "reach", "depth", "bond") if key in plan.decisions]
    if all(each == IN_ORDER for each in own) and not plan.count(CHANGE):
        return message("The plane required here is OK as entered, if its wire is solid copper")
    return message("A plane is required here")


def _detail(asked: Asked | None, plan: Plan) -> Message:
    """Return how far the plane reaches, and the parts to put right: a list is read to its end by few."""
    wrong = [key for key, decided in plan.decisions.items() if decided == CHANGE and key != "plane"]
    words = {"reach": asked.reach if asked else 0, "parts": plan.names(*wrong)}
    if asked is None:
        return message("fix {parts}", **words) if wrong else message("see each part")
    if wrong:
        return message("out {reach} in, bonded with solid copper; fix {parts}", **words)
    return message("out {reach} in, bonded with solid copper", **words)


def _there(reach: float | None, least: float, deep: bool = False) -> str:
    """Return what to do where a plane is asked: build it, change one that is too short or too deep, or nothing."""
    if not reach:
        return BUILD
    return CHANGE if reach < least or deep else IN_ORDER


def _asked_at_a_body(
    equipment: str, metal: str, reach: float | None, depth: float | None, plan: Plan
) -> Asked | None:
    """Return what is asked beside other waters. reach, depth: in, of the plane that is there, None for none."""
    if equipment == ask.CONTROLLED:
        why = message("It is controlled from elsewhere. The plane belongs at its disconnect or service.")
        plan.add("plane", PART, NEED_NOT, why, CONTROLLED)
        return None
    if metal == "no":
        plan.add("plane", PART, NEED_NOT, message("No metal within reach can become live."), PLANE)
        return None
    least = plan.trace.cite(REACH).value
    why = message(
        "People stand on wet soil with a hand on metal that may become live. It applies at any distance from the water."
    )
    deep = depth is not None and depth > plan.trace.cite(DEPTH).value
    plan.add("plane", PART, _there(reach, least, deep), why, PLANE)
    return Asked(least, plan.trace.cite(BOND_RULE).value, REACH, BOND_RULE)


def _asked_at_a_dock(
    equipment: str, distance: float | None, volt: float | None, reach: float | None, plan: Plan
) -> Asked | None:
    """Return what is asked at a dock. Raises: FieldError for distance and voltage, in an edition where they decide."""
    limits = plan.trace.cite(CONDITIONS).rows[0]
    if equipment == ask.CONTROLLED:
        why = message("It is controlled from elsewhere. A plane belongs at its disconnect or service.")
        plan.add("plane", PART, NEED_NOT, why, DOCK_CONTROLLED)
        return None
    if limits["asked"] == "no":
        why = message(
            "This edition requires none at docks or floating buildings. Choose the pond or lake to see how one is "
            "built."
        )
        plan.add("plane", PART, WISE, why, CONDITIONS)
        return None
    volt, distance = require(volt, "voltage_to_ground"), require(distance, "distance")
    words = {"volt": limits["over_volt"], "feet": limits["within_feet"]}
    if volt <= limits["over_volt"]:
        plan.add("plane", PART, NEED_NOT, message("The system has {volt} V to ground or less.", **words), CONDITIONS)
        return None
    if distance > limits["within_feet"]:
        plan.add("plane", PART, NEED_NOT, message("It is farther than {feet} ft from the water.", **words), CONDITIONS)
        return None
    why = message("Over {volt} V to ground, and within {feet} ft of the water.", **words)
    plan.add("plane", PART, _there(reach, limits["reach_inch"]), why, CONDITIONS)
    return Asked(limits["reach_inch"], plan.trace.cite(DOCK_BOND).rows[0]["size"], CONDITIONS, DOCK_BOND)


def _warn(trace: Trace) -> None:
    trace.warn(
        message(
            "If anyone feels a tingle in the water: swim away from dock and metal. Nobody goes in to help. Shut the "
            "power off from a dry place, throw a float, and call the utility."
        ),
        grave=True,
    )
    trace.warn(message("No bond makes swimming OK in water with power nearby."))


def _note(water: str, needed_here: bool, trace: Trace) -> None:
    if water == ask.BODY and needed_here:
        trace.note(
            message(
                "Connect the plane by exothermic welds or listed connectors of stainless steel, brass or copper "
                "({section}).",
                section=trace.section(BOND_RULE),
            )
        )
    if water == ask.BODY:
        words = {
            "size": trace.cite("planes/water_equipment_conductor").value,
            "section": trace.section("places/floating_equipment_grounding"),
        }
        trace.note(
            message("The equipment grounding conductor is insulated copper, {size} AWG or larger ({section}).", **words)
        )
    else:
        trace.note(
            message(
                "The equipment grounding conductor is insulated and runs with the circuit ({section}).",
                section=trace.section("places/marina_equipment_grounding"),
            )
        )
    trace.note(
        message("A plane clears no fault, and ground-fault protection at the water saves lives. Test it."), grave=True
    )


def _ship(trace: Trace) -> NotCovered:
    return NotCovered(
        message("The wiring of ships and boats is outside the code these rules come from."),
        message(
            "See ships ({section}) and the marine standards. Shore power begins at the dock: choose the dock.",
            section=trace.section(SHIPS),
        ),
    )
