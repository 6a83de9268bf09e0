"""The rows of a plane beside water: how far and how deep it goes, the shoreline, and metal that touches the water."""

from __future__ import annotations

from dataclasses import dataclass

from calc.equipotential import waterside_fields as ask
from calc.equipotential.plan import BOND, BUILD, CHANGE, IN_ORDER, LOOK, WISE, Plan
from calc.messages import message

DEPTH = "planes/plane_depth"
SHORELINE = {
    ask.SERVICE: "planes/service_from_shoreline",
    ask.DISCONNECT: "planes/disconnect_from_shoreline",
}
WET, DOCK_WET = "places/dock_bonded_parts", "planes/dock_solid_copper"
FLOATING_WET = "places/floating_building_bonding"


@dataclass(frozen=True)
class Asked:
    """What is asked of a plane: how far out, inches; its smallest bond; and the rules that say so."""

    reach: float
    least: str
    rule: str
    bond_rule: str


def add_reach(asked: Asked, reach: float | None, plan: Plan) -> None:
    """Add how far the plane reaches; reach: in, None where none is there."""
    part, words = message("How far it reaches"), {"inch": asked.reach}
    if reach is None:
        why = message(
            "From below the equipment, {inch} in or more wherever a person could stand and touch it.", **words
        )
        plan.add("reach", part, BUILD, why, asked.rule)
    elif reach < asked.reach:
        plan.add("reach", part, CHANGE, message("It stops short of {inch} in.", **words), asked.rule)
    else:
        plan.add("reach", part, IN_ORDER, message("It reaches {inch} in or more.", **words), asked.rule)


def add_depth(depth: float | None, plan: Plan) -> None:
    """Add how deep the plane lies; depth: in below the walking surface, None if nobody looked."""
    most, part = plan.trace.cite(DEPTH).value, message("How deep it lies")
    if depth is None:
        plan.add("depth", part, LOOK, message("Not entered: no more than {most} in below.", most=most), DEPTH)
    elif depth > most:
        plan.add("depth", part, CHANGE, message("Deeper than {most} in, it does too little.", most=most), DEPTH)
    else:
        plan.add("depth", part, IN_ORDER, message("On the walking surface or up to {most} in below.", most=most), DEPTH)


def add_shoreline(equipment: str, distance: float, plan: Plan) -> None:
    """Add how far service equipment or a disconnect stands from the shoreline; distance: ft."""
    rule = SHORELINE[equipment]
    least = plan.trace.cite(rule).value
    part = message("Service equipment and the shoreline")
    if equipment == ask.DISCONNECT:
        part = message("Disconnect and the shoreline")
    if distance < least:
        why = message("On land, install it at least {least} ft from the shoreline.", least=least)
        if equipment == ask.DISCONNECT:
            why = message(
                "Install the disconnect of floating or submerged equipment at least {least} ft from the shoreline.",
                least=least,
            )
        plan.add("shoreline", part, CHANGE, why, rule)
    else:
        plan.add("shoreline", part, IN_ORDER, message("At least {least} ft away.", least=least), rule)


def add_wet_metal(water: str, plan: Plan) -> None:
    """Add the metal that touches the water."""
    part = message("Metal that touches the water, piping, tanks")
    why = message("A fault in it must open the device. Bond it to the grounding bar of its panel.")
    if water == ask.BODY:
        plan.add("wet-metal", part, BOND, why, WET)
    elif water == ask.FLOATING:
        plan.add("wet-metal", part, BOND, why, FLOATING_WET)
    elif plan.trace.cite(DOCK_WET).rows[0]["size"] == "none":
        plan.add("wet-metal", part, WISE, message("This edition requires it for floating buildings only."), DOCK_WET)
    else:
        why = message(
            "A fault in it must open the device. Solid copper, {size} AWG or larger, to the grounding bar of its "
            "panel.",
            size=plan.trace.cite(DOCK_WET).rows[0]["size"],
        )
        plan.add("wet-metal", part, BOND, why, DOCK_WET)
