"""The cases that take none of the names: why, and where to look."""

from __future__ import annotations

from collections.abc import Callable

from calc.calculator import NotCovered
from calc.messages import message
from calc.trace import Trace


def _utility_source(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("The utility bonds and grounds the neutral point of its own transformer."),
        message(
            "At the service, choose the grounded conductor instead: look under grounded conductor brought to the "
            "service ({section}).",
            section=section("grounding/grounded_conductor_at_service"),
        ),
        "grounded-conductor",
    )


def _receptacle_ahead_of_device(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("Receptacles and switches are never ahead of the first overcurrent device."),
        message(
            "Choose the load side of a breaker or fuse, and look under receptacle and its box ({section}).",
            section=section("naming/receptacle_to_box"),
        ),
    )


def _source_to_equipment(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("Do not run a wire from the neutral of a source to the metal of load equipment."),
        message(
            "Choose the enclosure at each end: first the jumper at the source, then look under equipment grounding "
            "conductor ({section}).",
            section=section("naming/equipment_grounding_conductor_size"),
        ),
        "equipment-grounding-conductor",
    )


def _communications_to_neutral(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("Telephone, cable TV or antenna bonding does not connect to the neutral bar."),
        message(
            "Look under intersystem bonding termination ({section}): it is outside the enclosure, at the service or "
            "disconnect.",
            section=section("naming/intersystem_bonding"),
        ),
    )


def _communications_elsewhere(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message(
            "Telephone, cable TV and antenna systems are bonded at the service or the building disconnect, not here."
        ),
        message(
            "Look under intersystem bonding termination ({section}).", section=section("naming/intersystem_bonding")
        ),
    )


def _communications_landing(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message(
            "This is not one of the locations for an intersystem bonding termination for telephone, cable TV or "
            "antenna systems."
        ),
        message(
            "Look under intersystem bonding termination ({section}) and the article of the communications system.",
            section=section("naming/intersystem_bonding"),
        ),
    )


def _electrode_at_equipment(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message(
            "A grounding electrode here is an auxiliary one. It does not carry fault current back to the source and "
            "does not replace an equipment grounding conductor."
        ),
        message(
            "Look under auxiliary grounding electrode ({section}). An existing circuit without an equipment grounding "
            "conductor has its own rule ({old}).",
            section=section("naming/auxiliary_electrode"),
            old=section("naming/old_circuit_without_equipment_conductor"),
        ),
        "equipment-grounding-conductor",
    )


def _pipe_to_pipe(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("Piping or steel connected only to other piping or steel is not bonded to the electrical system."),
        message(
            "Look under other metal piping ({piping}) and building steel ({steel}): they list where each "
            "bond connects.",
            piping=section("grounding/other_metal_piping_bond"),
            steel=section("grounding/structural_metal_bond"),
        ),
        "water-pipe-bonding",
        "structural-metal-bonding",
    )


def _pipes_and_steel_are_no_path(section: Callable[[str], str]) -> NotCovered:
    return NotCovered(
        message("Pipes and building steel must be bonded, but they are not an equipment grounding conductor."),
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
        message("The bond to piping or building steel does not connect here."),
        message(
            "Look under metal water piping ({piping}) and building steel ({steel}): they list where each "
            "bond connects.",
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
