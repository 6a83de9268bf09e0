"""What a supply-side bonding jumper implies on site: what it joins, how it is made up, where it runs."""

from __future__ import annotations

from calc.identify.supply_jumper_place import AT_SERVICE
from calc.jumpers.jumper_route import note_small_wire_outside
from calc.jumpers.supply_jumper_fields import OUTSIDE_LONGEST
from calc.messages import message
from calc.raceways.raceway_as_supply_jumper import bridged_as_path
from calc.trace import Trace


def note_what_it_joins(place: str, system_grounding: str, trace: Trace) -> None:
    """Note what the jumper at `place` joins and how, by how the system is grounded."""
    section = trace.section
    if place in AT_SERVICE:
        _note_service(place, system_grounding, trace)
    elif place == "separately-derived-system":
        trace.note(
            message(
                "Run it with the circuit conductors from the source enclosure to the first disconnect enclosure. If "
                "both are in one enclosure, it is not required ({section}).",
                section=section("jumpers/derived_supply_side_jumper"),
            )
        )
        trace.note(
            message(
                "It is not required between an outdoor source and the disconnect where system bonding jumpers are "
                "permitted at both ends ({section}).",
                section=section("jumpers/derived_jumper_not_needed"),
            )
        )
        if system_grounding == "ungrounded":
            trace.note(
                message(
                    "An ungrounded system requires this jumper too ({section}).",
                    section=section("naming/ungrounded_derived_system"),
                )
            )
    else:
        trace.note(
            message(
                "It connects the equipment grounding terminal of the generator to that of the first disconnect. Do not "
                "bond the neutral to metal at the generator ({section}).",
                section=section("jumpers/generator_supply_side_jumper"),
            ),
            grave=True,
        )


def _note_service(place: str, system_grounding: str, trace: Trace) -> None:
    section = trace.section
    trace.note(
        message(
            "It bonds metal raceways, meter enclosures and other enclosures that contain service conductors "
            "({section}).",
            section=section("jumpers/service_parts_bonded"),
        )
    )
    if system_grounding == "ungrounded":
        trace.note(
            message(
                "Without a grounded conductor, connect that metal to the grounding electrode conductor ({section}).",
                section=section("naming/ungrounded_service"),
            )
        )
    trace.note(
        message(
            "Standard locknuts and bushings alone are not enough. Use threaded hubs, tight threadless connectors, "
            "bonding locknuts or bonding bushings. Install bonding jumpers around oversized, concentric and eccentric "
            "knockouts ({section}).",
            section=section("jumpers/service_bonding_methods"),
        ),
        grave=True,
    )
    if place == "ahead-of-service-disconnects":
        trace.note(
            message(
                "It is sized from the conductors that feed the meter or wireway. Each disconnect still needs its own "
                "main bonding jumper ({section}).",
                section=section("jumpers/several_service_enclosures"),
            )
        )


def note_run(run: str, place: str, size: str, form: str, trace: Trace) -> None:
    """Note how a wire or bus, in place of a wire of `size`, is run, fastened and protected."""
    section = trace.section
    if run == "inside":
        trace.note(
            message(
                "Inside a raceway, identify it and connect it in boxes like an equipment grounding conductor "
                "({section}).",
                section=section("jumpers/jumper_inside_raceway"),
            )
        )
    elif run == "outside":
        longest = trace.cite(OUTSIDE_LONGEST)
        trace.note(
            message(
                "Outside, it must be no longer than {longest} ft and must follow the raceway ({section}).",
                longest=longest.value,
                section=longest.section,
            )
        )
    else:
        trace.note(
            message(
                "At an outdoor pole, it may be longer and is not required to follow the raceway ({section}).",
                section=section("jumpers/jumper_outside_at_poles"),
            )
        )
    if run != "inside" and form != "busbar":
        note_small_wire_outside(size, trace)
    if run != "inside" and place == "separately-derived-system":
        trace.warn(
            message(
                "From a separately derived system, the jumper runs with the circuit conductors ({section}). Ask the "
                "authority having jurisdiction before you run it outside their raceway.",
                section=section("jumpers/derived_supply_side_jumper"),
            )
        )
    trace.note(
        message(
            "Connect it with pressure connectors, lugs or other means listed in the code ({attached}). Where exposed, "
            "secure it and protect it from physical damage ({protected}).",
            attached=section("jumpers/bonding_jumper_attachment"),
            protected=section("jumpers/jumper_protection"),
        )
    )


def note_raceway_as_jumper(place: str, trace: Trace) -> None:
    """Note what the raceway itself must be like to be the jumper."""
    trace.note(
        message(
            "The raceway must be metal from enclosure to enclosure, with every joint tight and paint removed at "
            "contact surfaces ({section}).",
            section=trace.section("raceways/continuity"),
        )
    )
    if place not in AT_SERVICE:
        trace.note(bridged_as_path(trace))
