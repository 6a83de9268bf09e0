"""The cases that take none of the names: why, and where to look."""

from __future__ import annotations

from collections.abc import Callable

from calc.calculator import NotCovered
from calc.messages import message
from calc.trace import Trace


def _utility_source(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("The neutral point of the utility's transformer is the utility's to bond and ground."),
        message(
            "At the service, choose the grounded conductor instead: look under grounded conductor brought to the "
            "service ({section}).",
            section=section("grounding/grounded_conductor_at_service"),
        ),
        "grounded-conductor",
    )


def _receptacle_ahead_of_device(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("No receptacle or switch of a circuit is ahead of the first overcurrent device."),
        message(
            "Choose past a breaker or fuse, and look under receptacle and its box ({section}).",
            section=section("naming/receptacle_to_box"),
        ),
    )


def _source_to_equipment(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("No wire runs from the neutral of a source to the metal of load equipment."),
        message(
            "Choose the enclosure at each end: first the jumper at the source, then look under equipment grounding "
            "conductor ({section}).",
            section=section("naming/equipment_grounding_conductor_size"),
        ),
        "equipment-grounding-conductor",
    )


def _communications_to_neutral(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("The bonding of telephone, cable or antenna does not land on the neutral bar."),
        message(
            "Look under intersystem bonding termination ({section}): it stands outside, at the service or disconnect.",
            section=section("naming/intersystem_bonding"),
        ),
    )


def _communications_elsewhere(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("Telephone, cable and antenna are bonded at the service or the building disconnect, not here."),
        message(
            "Look under intersystem bonding termination ({section}).", section=section("naming/intersystem_bonding")
        ),
    )


def _communications_landing(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message(
            "This is not among the places where the bonding of telephone, cable or antenna lands at a termination."
        ),
        message(
            "Look under intersystem bonding termination ({section}) and the article of the communications system.",
            section=section("naming/intersystem_bonding"),
        ),
    )


def _electrode_at_equipment(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message(
            "An electrode here is an extra one. It takes no fault current back to the source and replaces no "
            "equipment grounding conductor."
        ),
        message(
            "Look under auxiliary grounding electrode ({section}). An old circuit without an equipment grounding "
            "conductor has a rule of its own ({old}).",
            section=section("naming/auxiliary_electrode"),
            old=section("naming/old_circuit_without_equipment_conductor"),
        ),
        "equipment-grounding-conductor",
    )


def _pipe_to_pipe(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("Piping or steel joined only to other piping or steel is not yet bonded to the electrical system."),
        message(
            "Look under other metal piping ({piping}) and building steel ({steel}): they list where each bond lands.",
            piping=section("grounding/other_metal_piping_bond"),
            steel=section("grounding/structural_metal_bond"),
        ),
        "water-pipe-bonding",
        "structural-metal-bonding",
    )


def _pipes_and_steel_are_no_path(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message(
            "Pipes and building steel are bonded, but they are not the equipment grounding conductor of equipment."
        ),
        message(
            "Run an equipment grounding conductor with the circuit. Look under building frame ({steel}) and "
            "piping ({piping}).",
            steel=section("naming/structure_is_no_equipment_conductor"),
            piping=section("grounding/water_pipe_bond"),
        ),
        "equipment-grounding-conductor",
    )


def _pipes_and_steel_elsewhere(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("The bond of piping or building steel does not land at this place."),
        message(
            "Look under metal water piping ({piping}) and building steel ({steel}): they list where each bond lands.",
            piping=section("grounding/water_pipe_bond"),
            steel=section("grounding/structural_metal_bond"),
        ),
        "water-pipe-bonding",
        "structural-metal-bonding",
    )


_OUTSIDE = {
    "utility-source": _utility_source,
    "receptacle-ahead-of-device": _receptacle_ahead_of_device,
    "source-to-equipment": _source_to_equipment,
    "communications-to-neutral": _communications_to_neutral,
    "communications-elsewhere": _communications_elsewhere,
    "communications-landing": _communications_landing,
    "electrode-at-equipment": _electrode_at_equipment,
    "pipe-to-pipe": _pipe_to_pipe,
    "pipes-and-steel-are-no-path": _pipes_and_steel_are_no_path,
    "pipes-and-steel-elsewhere": _pipes_and_steel_elsewhere,
}


def not_named(reason: str, trace: Trace) -> NotCovered:
    """Return the NotCovered of a reason that `which_name` raised."""
    return _OUTSIDE[reason](trace.section)
