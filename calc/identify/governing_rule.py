"""The rule that asks for a part, what sizes it, and which calculator of the handbook does."""

from __future__ import annotations

from collections.abc import Set as AbstractSet
from typing import NamedTuple

from calc.identify import classify as name
from calc.identify.names import Name
from calc.identify.supply_or_load_side import BUILDING, DERIVED, JOINED_GENERATOR, LOAD, SERVICE_DISCONNECT, Side
from calc.messages import CalculatorName, Message, message
from calc.rulebook import rule
from calc.trace import Trace

CONDUCTORS, DEVICE, ELECTRODE_TABLE = "conductors", "device", "electrode-table"
LOAD_CARRIED, SAME_AS_ON_PIPE, OWN_ARTICLE, NOTHING = (
    "load",
    "conductor-on-the-pipe",
    "communications-article",
    "nothing",
)
SIZED_BY = (CONDUCTORS, DEVICE, ELECTRODE_TABLE, LOAD_CARRIED, SAME_AS_ON_PIPE, OWN_ARTICLE, NOTHING)

CALCULATOR_WORDS = {
    "main-bonding-jumper": message("main bonding jumper"),
    "system-bonding-jumper": message("system bonding jumper"),
    "supply-side-bonding-jumper": message("supply-side bonding jumper"),
    "equipment-bonding-jumper": message("equipment bonding jumper"),
    "equipment-grounding-conductor": message("equipment grounding conductor"),
    "grounding-electrode-conductor": message("grounding electrode conductor"),
    "grounded-conductor": message("grounded conductor"),
    "water-pipe-bonding": message("bonding of water and other piping"),
    "structural-metal-bonding": message("bonding of building steel"),
}


class OwnRule(NamedTuple):
    """The rule that asks for the part, what sizes it, the rule of the size, and the calculator or None."""

    requiring_rule: str
    sized_by: str
    size: str
    calculator: str | None


def own_rule(name_key: str, pair: AbstractSet[str], side: Side, edition: str) -> OwnRule:
    """Return the rule of a named part between `pair` on one side, as `edition` states it."""
    if name_key == name.NO_CONDUCTOR:
        return OwnRule(_kept_apart(side), NOTHING, _kept_apart(side), None)
    if name_key == name.MAIN:
        requiring_rule, size = "jumpers/main_bonding_jumper_required", "jumpers/main_bonding_jumper_size"
        return OwnRule(requiring_rule, CONDUCTORS, size, "main-bonding-jumper")
    if name_key == name.SYSTEM:
        size = "jumpers/main_bonding_jumper_size"
        return OwnRule("naming/system_bonding_jumper", CONDUCTORS, size, "system-bonding-jumper")
    if name_key == name.SUPPLY_SIDE:
        size = "naming/supply_side_bonding_jumper"
        return OwnRule(_asks_for_supply_side(side), CONDUCTORS, size, "supply-side-bonding-jumper")
    if name_key == name.EQUIPMENT_JUMPER:
        requiring_rule = "naming/receptacle_to_box" if pair == {"receptacle", "equipment"} else "raceways/continuity"
        return OwnRule(requiring_rule, DEVICE, "raceways/jumper_size", "equipment-bonding-jumper")
    if name_key == name.EQUIPMENT_CONDUCTOR:
        requiring_rule = "naming/separate_building" if side.place == BUILDING else "naming/equipment_conductor_types"
        size = "naming/equipment_grounding_conductor_size"
        return OwnRule(requiring_rule, DEVICE, size, "equipment-grounding-conductor")
    if name_key in (name.ELECTRODE_CONDUCTOR, name.ELECTRODE_JUMPER):
        starts = name_key == name.ELECTRODE_CONDUCTOR
        requiring_rule = _asks_for_electrode_conductor(side) if starts else _joins_electrodes(pair)
        size = "grounding/electrode_conductor_size"
        return OwnRule(requiring_rule, ELECTRODE_TABLE, size, "grounding-electrode-conductor")
    if name_key == name.METER_JUMPER:
        return OwnRule("naming/around_water_meter", SAME_AS_ON_PIPE, "naming/around_water_meter", None)
    if name_key == name.INTERSYSTEM:
        return OwnRule("naming/intersystem_bonding", OWN_ARTICLE, "naming/intersystem_bonding", None)
    if name_key == name.GROUNDED:
        return _grounded_conductor(side)
    return _piping_or_steel(pair, side, edition)


def _kept_apart(side: Side) -> str:
    if side.place == BUILDING:
        return "naming/separate_building"
    return "grounding/no_neutral_bond_on_load_side"


def _asks_for_supply_side(side: Side) -> str:
    if side.place == DERIVED:
        return "jumpers/derived_supply_side_jumper"
    if side.place == JOINED_GENERATOR:
        return "jumpers/generator_supply_side_jumper"
    return "naming/service_metal_bonded"


def _asks_for_electrode_conductor(side: Side) -> str:
    if side.place == DERIVED:
        return "grounding/electrode_conductor_of_derived_system"
    if side.place == BUILDING:
        return "grounding/electrode_conductor_at_separate_building"
    return "grounding/electrode_conductor_at_service"


def _joins_electrodes(pair: AbstractSet[str]) -> str:
    return "naming/supplemental_electrode" if "raceway" in pair else "naming/electrode_bonding_jumper"


def _grounded_conductor(side: Side) -> OwnRule:
    if side.place == DERIVED:
        requiring_rule = "naming/grounded_conductor_of_derived_system"
    elif side.place in ("service", SERVICE_DISCONNECT):
        requiring_rule = "grounding/grounded_conductor_at_service"
    else:
        requiring_rule = "naming/defined_grounded_conductor"
        return OwnRule(requiring_rule, LOAD_CARRIED, requiring_rule, None)
    return OwnRule(requiring_rule, CONDUCTORS, requiring_rule, "grounded-conductor")


def _piping_or_steel(pair: AbstractSet[str], side: Side, edition: str) -> OwnRule:
    if "other-piping" in pair:
        requiring_rule = "grounding/other_metal_piping_bond"
        return OwnRule(requiring_rule, DEVICE, requiring_rule, "water-pipe-bonding")
    if "water-pipe" not in pair:
        place = "_derived" if side.place == DERIVED else ""
        requiring_rule = f"grounding/structural_metal_bond{place}"
        return OwnRule(requiring_rule, CONDUCTORS, requiring_rule, "structural-metal-bonding")
    sized_by = CONDUCTORS
    if side.place == DERIVED:
        requiring_rule = "grounding/water_pipe_bond_derived_system"
    elif side.place == BUILDING:
        requiring_rule = "grounding/water_pipe_bond_separate_building"
        sized_by = rule(requiring_rule, edition).rows[0]["goes_by"]
    elif side.place == LOAD and "enclosure" in pair:
        requiring_rule, sized_by = "grounding/water_pipe_bond_isolated_unit", DEVICE
    else:
        requiring_rule = "grounding/water_pipe_bond"
    return OwnRule(requiring_rule, sized_by, requiring_rule, "water-pipe-bonding")


def sized_by_words(own: OwnRule, trace: Trace) -> Message:
    """Return the sentence that says what sizes the part."""
    section = trace.section(own.size)
    if own.calculator == "grounded-conductor":
        return message(
            "It is sized for the load it carries; the area of the hot conductors sets the minimum ({section}).",
            section=section,
        )
    if own.sized_by == CONDUCTORS:
        return message("It is sized from the area of the ungrounded (hot) conductors ({section}).", section=section)
    if own.sized_by == DEVICE:
        return message("It is sized from the rating of the upstream overcurrent device ({section}).", section=section)
    if own.sized_by == ELECTRODE_TABLE:
        return message(
            "It is sized from the hot conductors and the type of grounding electrode ({section}).", section=section
        )
    if own.sized_by == LOAD_CARRIED:
        return message("It is sized for the load it carries, as for any circuit conductor.")
    if own.sized_by == SAME_AS_ON_PIPE:
        return message(
            "The section gives no size ({section}). Common practice: the same size as the conductor that connects to "
            "the pipe.",
            section=section,
        )
    return message(
        "It is sized by the article for the communications system; {section} covers the termination.",
        section=section,
    )


def where_stated(entry: Name, own: OwnRule, trace: Trace) -> Message:
    """Return the sentence that says where the part is defined and where its own rule stands."""
    if own.requiring_rule == entry.defined:
        return message("Defined in {defined}.", defined=trace.section(entry.defined))
    return message(
        "Defined in {defined}; its rule is {asked}.",
        defined=trace.section(entry.defined),
        asked=trace.section(own.requiring_rule),
    )


def note_calculator(own: OwnRule, trace: Trace) -> None:
    """Note which calculator of the handbook sizes the part, if one does."""
    if own.calculator:
        named = CalculatorName(own.calculator, CALCULATOR_WORDS[own.calculator])
        trace.note(message("Calculator of this handbook: {calculator}.", calculator=named))
