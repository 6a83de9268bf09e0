"""What else the reader must know about a named part at this place: landings, exceptions, traps."""

from __future__ import annotations

from collections.abc import Set as AbstractSet

from calc.identify import classify as name
from calc.identify.supply_or_load_side import (
    BUILDING,
    DERIVED,
    JOINED_GENERATOR,
    LOAD,
    SERVICE,
    SERVICE_DISCONNECT,
    Side,
)
from calc.messages import message
from calc.trace import Trace


def note_place(name_key: str, pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    """Note the landings, exceptions and traps of a name between `pair` on one side."""
    if name_key == name.NO_CONDUCTOR:
        _kept_apart(pair, side, trace)
    elif name_key == name.MAIN:
        trace.note(
            message(
                "Install one in each service disconnect enclosure, in one piece ({section}).",
                section=trace.section("jumpers/main_bonding_jumper_required"),
            )
        )
    elif name_key == name.SYSTEM:
        trace.note(
            message(
                "At one location only, at the source or in the first disconnect ({section}). Two of them put neutral "
                "current on metal.",
                section=trace.section("naming/system_bonding_jumper"),
            ),
            grave=True,
        )
    elif name_key == name.SUPPLY_SIDE:
        _supply_side(pair, side, trace)
    elif name_key == name.EQUIPMENT_JUMPER and pair == {"receptacle", "equipment"}:
        trace.note(
            message(
                "It is part of the equipment grounding path and connects a device to the box. A snap switch has its "
                "own rule ({section}).",
                section=trace.section("places/switch_grounding"),
            )
        )
    elif name_key == name.EQUIPMENT_CONDUCTOR:
        _equipment_conductor(pair, side, trace)
    elif name_key in (name.ELECTRODE_CONDUCTOR, name.ELECTRODE_JUMPER):
        _electrodes(name_key, pair, side, trace)
    elif name_key == name.PIPING_JUMPER:
        _piping_or_steel(pair, side, trace)


def _kept_apart(pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    trace.note(
        message(
            "A second neutral-to-ground connection puts load current on metal that people touch ({section}).",
            section=trace.section("naming/objectionable_current"),
        ),
        grave=True,
    )
    trace.note(
        message(
            "Is one there? "
            "First check that the neutral and the grounding path are intact: that connection may be all they have. "
            "De-energize, lock out/tag out and test for absence of voltage before you remove it."
        ),
        grave=True,
    )
    if side.place == BUILDING:
        trace.note(
            message(
                "Only a feeder installed without an equipment grounding conductor under an older edition has an "
                "exception ({section}).",
                section=trace.section("naming/separate_building"),
            )
        )
        trace.note(
            message(
                "So has a feeder from an outdoor source with a second system bonding jumper ({section}).",
                section=trace.section("jumpers/system_jumper_at_two_places"),
            )
        )
    if not pair & {"equipment", "enclosure"}:
        return
    if side.place == JOINED_GENERATOR:
        trace.note(
            message(
                "The only permitted connection is in the service disconnect enclosure ({section}).",
                section=trace.section("jumpers/main_bonding_jumper_required"),
            )
        )
    elif side.place == LOAD:
        trace.note(
            message(
                "The same applies downstream of the system bonding jumper of a transformer or generator ({section}).",
                section=trace.section("grounding/no_neutral_bond_past_system_jumper"),
            )
        )
        trace.note(
            message(
                "Exceptions: existing range and dryer circuits, and meter enclosures immediately adjacent to the "
                "service disconnect, each under conditions ({section}).",
                section=trace.section("naming/load_side_exceptions"),
            )
        )


def _supply_side(pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    if "neutral" in pair:
        trace.note(
            message(
                "Up to and in the service disconnect enclosure, the neutral itself may be used to bond metal "
                "({section}).",
                section=trace.section("naming/grounded_conductor_bonds_supply_side"),
            )
        )
    if side.place == SERVICE_DISCONNECT and "raceway" in pair:
        trace.note(
            message(
                "This is for the raceway containing the service conductors. At a raceway leaving on the load side of "
                "the device, it is an equipment bonding jumper ({section}).",
                section=trace.section("raceways/jumper_size"),
            )
        )
    if side.place == SERVICE:
        trace.note(
            message(
                "A jumper in a meter enclosure or wireway ahead of the disconnects has this name, even where it "
                "connects to the neutral."
            )
        )


def _equipment_conductor(pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    if side.place == SERVICE_DISCONNECT:
        trace.note(message("This is for load equipment. Enter a service meter enclosure or wireway as an enclosure."))
    if "neutral" in pair:
        trace.warn(
            message(
                "This wire may start at the neutral bar only in the enclosure with the main or system bonding jumper "
                "({section}). Everywhere else, keep neutral and ground separate.",
                section=trace.section("naming/grounded_conductor_bonds_supply_side"),
            )
        )
    elif pair == {"enclosure"}:
        trace.note(
            message(
                "A short jumper that only bridges a gap is an equipment bonding jumper. It is sized from the same "
                "overcurrent device ({section}).",
                section=trace.section("raceways/jumper_size"),
            )
        )


def _electrodes(name_key: str, pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    if name_key == name.ELECTRODE_JUMPER and "raceway" in pair:
        trace.note(
            message(
                "The electrode that supplements a ground rod may be bonded to a nonflexible grounded service raceway "
                "({section}).",
                section=trace.section("naming/supplemental_electrode"),
            )
        )
    elif name_key == name.ELECTRODE_JUMPER:
        trace.note(
            message(
                "All grounding electrodes at a building must be bonded together ({section}).",
                section=trace.section("naming/electrodes_joined"),
            )
        )
    elif side.place == SERVICE_DISCONNECT and "enclosure" in pair:
        trace.note(
            message(
                "It connects to the grounding bar only where the main bonding jumper is a wire or busbar; otherwise to "
                "the neutral bar ({section}).",
                section=trace.section("grounding/electrode_conductor_landing"),
            )
        )
    elif side.place == DERIVED:
        trace.note(
            message(
                "It starts at the point where the system bonding jumper is ({section}).",
                section=trace.section("grounding/electrode_conductor_of_derived_system"),
            )
        )
    elif side.place == SERVICE and "enclosure" in pair:
        trace.note(
            message(
                "At a grounded service it starts at the grounded conductor ({section}).",
                section=trace.section("grounding/electrode_conductor_at_service"),
            )
        )


def _piping_or_steel(pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    if side.place == DERIVED and "enclosure" in pair and "other-piping" not in pair:
        trace.note(
            message(
                "It connects to the grounded conductor at the point where the grounding electrode conductor connects "
                "({section}).",
                section=trace.section("grounding/water_pipe_bond_derived_system"),
            )
        )
    elif side.place == LOAD and pair == {"water-pipe", "enclosure"}:
        trace.note(
            message(
                "Only at the panel of a unit whose piping is isolated by nonmetallic pipe ({section}).",
                section=trace.section("grounding/water_pipe_bond_isolated_unit"),
            )
        )
    elif pair == {"water-pipe", "structural-metal"} and side.place != DERIVED:
        trace.note(
            message(
                "This applies where the steel is an electrode in use; otherwise bond each separately ({section}).",
                section=trace.section(
                    "grounding/water_pipe_bond_separate_building"
                    if side.place == BUILDING
                    else "grounding/water_pipe_bond"
                ),
            )
        )
    elif "other-piping" in pair and "equipment" in pair:
        trace.note(
            message(
                "The equipment grounding conductor of the appliance may serve as this bond ({section}).",
                section=trace.section("grounding/other_metal_piping_bond"),
            )
        )
