"""From two parts and a side to one name, or to the reason why there is none. The order of the parts never counts."""

from __future__ import annotations

from collections.abc import Set as AbstractSet

from calc.identify.supply_or_load_side import (
    BUILDING,
    DERIVED,
    JOINED_GENERATOR,
    LOAD,
    PRIMARY,
    SERVICE,
    SERVICE_DISCONNECT,
    Side,
)

MAIN = "main-bonding-jumper"
SYSTEM = "system-bonding-jumper"
SUPPLY_SIDE = "supply-side-bonding-jumper"
EQUIPMENT_JUMPER = "equipment-bonding-jumper"
EQUIPMENT_CONDUCTOR = "equipment-grounding-conductor"
ELECTRODE_CONDUCTOR = "grounding-electrode-conductor"
ELECTRODE_JUMPER = "electrode-bonding-jumper"
METER_JUMPER = "water-meter-bonding-jumper"
GROUNDED = "grounded-conductor"
PIPING_JUMPER = "piping-or-steel-bonding-jumper"
INTERSYSTEM = "intersystem-bonding-conductor"
NO_CONDUCTOR = "no-conductor"

NEUTRALS = frozenset({"neutral", "source-neutral"})
PIPES_AND_STEEL = frozenset({"water-pipe", "other-piping", "structural-metal"})
SERVICE_PLACES = (SERVICE, SERVICE_DISCONNECT)


class UnclassifiedError(Exception):
    """The parts take none of the names here; the text says which of the known reasons it is."""


def parts_joined(from_part: str, to_part: str, side: Side) -> frozenset[str]:
    """Return the parts as the names see them: a metal box is one more piece of metal that equipment has.

    Raises: UnclassifiedError for a receptacle ahead of the first overcurrent device.
    """
    pair = frozenset("equipment" if part == "box" else part for part in (from_part, to_part))
    if not side.supply or side.place == SERVICE_DISCONNECT:
        return pair
    if "receptacle" in pair:
        raise UnclassifiedError("receptacle-ahead-of-device")
    # Ahead of the first device there is no load equipment: what is called so there is an enclosure.
    return frozenset("enclosure" if part == "equipment" else part for part in pair)


def name_of(pair: AbstractSet[str], side: Side) -> str:
    """Return the name of what joins a pair of parts on one side. Raises: UnclassifiedError with the reason's key."""
    if pair <= NEUTRALS:
        return GROUNDED
    if pair & NEUTRALS:
        (other,) = pair - NEUTRALS
        return _from_neutral(other, "source-neutral" in pair, side)
    if "communications" in pair:
        return _from_communications(pair - {"communications"}, side)
    if "electrode" in pair:
        return _from_electrode(pair - {"electrode"}, side)
    if pair & PIPES_AND_STEEL:
        return _from_pipes_and_steel(pair, side)
    return _between_metal_parts(pair, side)


def _from_neutral(other: str, from_source: bool, side: Side) -> str:
    if other == "communications":
        raise UnclassifiedError("communications-to-neutral")
    if from_source and side.place in SERVICE_PLACES:
        raise UnclassifiedError("utility-source")
    if side.place in (LOAD, PRIMARY, BUILDING, JOINED_GENERATOR):
        return NO_CONDUCTOR
    if other == "electrode":
        return ELECTRODE_CONDUCTOR
    if other in PIPES_AND_STEEL:
        return PIPING_JUMPER
    if other in ("equipment", "receptacle"):
        if side.place == DERIVED:
            raise UnclassifiedError("source-to-equipment")
        return EQUIPMENT_CONDUCTOR
    if side.place == DERIVED:
        return SYSTEM
    if side.place == SERVICE_DISCONNECT and other == "enclosure":
        return MAIN
    return SUPPLY_SIDE


def _from_communications(other: AbstractSet[str], side: Side) -> str:
    if side.place not in (*SERVICE_PLACES, BUILDING):
        raise UnclassifiedError("communications-elsewhere")
    if other <= {"enclosure", "electrode"} and other:
        return INTERSYSTEM
    if other == {"raceway"} and side.place in SERVICE_PLACES:
        return INTERSYSTEM
    raise UnclassifiedError("communications-landing")


def _from_electrode(other: AbstractSet[str], side: Side) -> str:
    if not other:
        return ELECTRODE_JUMPER
    if other <= PIPES_AND_STEEL:
        return PIPING_JUMPER
    if other == {"enclosure"} and side.place in (*SERVICE_PLACES, DERIVED, BUILDING):
        return ELECTRODE_CONDUCTOR
    if other == {"raceway"} and side.place in SERVICE_PLACES:
        return ELECTRODE_JUMPER
    raise UnclassifiedError("electrode-at-equipment")


def _from_pipes_and_steel(pair: AbstractSet[str], side: Side) -> str:
    metal, other = pair & PIPES_AND_STEEL, pair - PIPES_AND_STEEL
    if pair == {"water-pipe"}:
        return METER_JUMPER
    if pair == {"water-pipe", "structural-metal"}:
        return PIPING_JUMPER
    if not other:
        raise UnclassifiedError("pipe-to-pipe")
    if "other-piping" in metal and other <= {"enclosure", "equipment"}:
        return PIPING_JUMPER
    if other != {"enclosure"}:
        raise UnclassifiedError("pipes-and-steel-are-no-path")
    if side.place in (*SERVICE_PLACES, DERIVED, BUILDING):
        return PIPING_JUMPER
    if side.place == LOAD and "water-pipe" in metal:
        return PIPING_JUMPER
    raise UnclassifiedError("pipes-and-steel-elsewhere")


def _between_metal_parts(pair: AbstractSet[str], side: Side) -> str:
    if side.supply and not pair & {"equipment", "receptacle"}:
        return SUPPLY_SIDE
    if "raceway" in pair or pair == {"receptacle", "equipment"}:
        return EQUIPMENT_JUMPER
    return EQUIPMENT_CONDUCTOR
