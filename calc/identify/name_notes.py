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


def note_place(given: str, pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    """Note the landings, exceptions and traps of a name between `pair` on one side."""
    if given == name.NO_CONDUCTOR:
        _kept_apart(pair, side, trace)
    elif given == name.MAIN:
        trace.note(
            message(
                "One in each service disconnect enclosure, in one piece ({section}).",
                section=trace.section("jumpers/main_bonding_jumper_required"),
            )
        )
    elif given == name.SYSTEM:
        trace.note(
            message(
                "At one place only, at the source or in the first disconnect ({section}). Two put neutral current "
                "on metal.",
                section=trace.section("naming/system_bonding_jumper"),
            )
        )
    elif given == name.SUPPLY_SIDE:
        _supply_side(pair, side, trace)
    elif given == name.EQUIPMENT_JUMPER and pair == {"receptacle", "equipment"}:
        trace.note(
            message(
                "It is part of the equipment grounding path, and joins a piece of it to the box. A snap switch has its "
                "own rule ({section}).",
                section=trace.section("places/switch_grounding"),
            )
        )
    elif given == name.EQUIPMENT_CONDUCTOR:
        _equipment_conductor(pair, side, trace)
    elif given in (name.ELECTRODE_CONDUCTOR, name.ELECTRODE_JUMPER):
        _electrodes(given, pair, side, trace)
    elif given == name.PIPING_JUMPER:
        _piping_or_steel(pair, side, trace)


def _kept_apart(pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    trace.note(
        message(
            "A second joint puts load current on metal that people touch ({section}).",
            section=trace.section("naming/objectionable_current"),
        )
    )
    trace.note(
        message(
            "Is one there? See first that neutral and grounding path are whole: the joint may be all they have. Taking "
            "it out is dead work: supply off, locked out, proven dead."
        )
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
                "The one joint is in the service disconnect enclosure ({section}).",
                section=trace.section("jumpers/main_bonding_jumper_required"),
            )
        )
    elif side.place == LOAD:
        trace.note(
            message(
                "The same holds past the system bonding jumper of a transformer or generator ({section}).",
                section=trace.section("grounding/no_neutral_bond_past_system_jumper"),
            )
        )
        trace.note(
            message(
                "Exceptions: old range and dryer circuits, and meter enclosures right beside the service disconnect, "
                "each under conditions ({section}).",
                section=trace.section("naming/load_side_exceptions"),
            )
        )


def _supply_side(pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    if "neutral" in pair:
        trace.note(
            message(
                "Up to and in the service disconnect enclosure the neutral itself may bond metal ({section}).",
                section=trace.section("naming/grounded_conductor_bonds_supply_side"),
            )
        )
    if side.place == SERVICE_DISCONNECT and "raceway" in pair:
        trace.note(
            message(
                "This is for the raceway that brings the service conductors. At one that leaves past the device it is "
                "an equipment bonding jumper ({section}).",
                section=trace.section("raceways/jumper_size"),
            )
        )
    if side.place == SERVICE:
        trace.note(
            message(
                "A jumper in a meter or wireway ahead of the disconnects has this name, even where neutral is joined."
            )
        )


def _equipment_conductor(pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    if side.place == SERVICE_DISCONNECT:
        trace.note(message("This is for load equipment. A meter or wireway of the service counts as an enclosure."))
    if "neutral" in pair:
        trace.warn(
            message(
                "Only in the enclosure with the main or system bonding jumper may this wire start at the neutral bar "
                "({section}). Everywhere else keep the two apart.",
                section=trace.section("naming/grounded_conductor_bonds_supply_side"),
            )
        )
    elif pair == {"enclosure"}:
        trace.note(
            message(
                "A short link that only bridges a gap is an equipment bonding jumper. The same rating sizes it "
                "({section}).",
                section=trace.section("raceways/jumper_size"),
            )
        )


def _electrodes(given: str, pair: AbstractSet[str], side: Side, trace: Trace) -> None:
    if given == name.ELECTRODE_JUMPER and "raceway" in pair:
        trace.note(
            message(
                "A further electrode beside a rod may land on a nonflexible grounded service raceway ({section}).",
                section=trace.section("naming/supplemental_electrode"),
            )
        )
    elif given == name.ELECTRODE_JUMPER:
        trace.note(
            message(
                "All electrodes at a building are joined ({section}).",
                section=trace.section("naming/electrodes_joined"),
            )
        )
    elif side.place == SERVICE_DISCONNECT and "enclosure" in pair:
        trace.note(
            message(
                "On the grounding bar only where the main bonding jumper is a wire or bus; else on the neutral bar "
                "({section}).",
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
                "It lands on the grounded conductor, at the point where the grounding electrode conductor is "
                "({section}).",
                section=trace.section("grounding/water_pipe_bond_derived_system"),
            )
        )
    elif side.place == LOAD and pair == {"water-pipe", "enclosure"}:
        trace.note(
            message(
                "Only the panel of a unit whose piping is set apart by nonmetallic pipe ({section}).",
                section=trace.section("grounding/water_pipe_bond_isolated_unit"),
            )
        )
    elif pair == {"water-pipe", "structural-metal"} and side.place != DERIVED:
        trace.note(
            message(
                "It counts where the steel is an electrode in use; else bond each on its own ({section}).",
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
                "The equipment grounding conductor of the appliance may be this bond ({section}).",
                section=trace.section("grounding/other_metal_piping_bond"),
            )
        )
