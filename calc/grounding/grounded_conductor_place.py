"""Where a grounded conductor runs decides what sizes it: to a service disconnect, from a derived system, a feeder."""

from __future__ import annotations

from calc.calculator import Choice, NotCovered
from calc.messages import message
from calc.scope import FigureOf, OutOfScope, SectionOf
from calc.shared_fields import one_of
from calc.trace import Trace

PLACE = one_of(
    message("Where the grounded conductor runs"),
    message("At a transformer or generator, “bond” means the system bonding jumper, from the neutral to metal."),
    (
        Choice("service-disconnect", message("To a service disconnect")),
        Choice("first-disconnect", message("From a transformer or generator, bonded in its first disconnect")),
        Choice("source", message("From a transformer or generator, bonded at the source")),
        Choice("feeder-panel", message("In a feeder: to a panel or another building")),
    ),
)
SYSTEM_GROUNDING = one_of(
    message("How the system is grounded"),
    message(
        "Nearly every system has a grounded neutral. A corner-grounded delta has three wires, with one phase grounded."
    ),
    (
        Choice("solidly-grounded", message("Grounded neutral, or one grounded conductor of a single-phase system")),
        Choice("corner-grounded", message("Three-phase, three-wire corner-grounded delta")),
        Choice("ungrounded", message("Ungrounded: no system conductor grounded")),
        Choice("impedance-grounded", message("Impedance grounded")),
    ),
    rare=True,
)
RULES = {
    "service-disconnect": {
        "needed": "grounding/grounded_conductor_at_service",
        "single": "grounding/grounded_conductor_single_raceway",
        "each": "grounding/grounded_conductor_in_each_raceway",
        "delta": "grounding/grounded_conductor_of_delta",
        "impedance": "grounding/grounded_conductor_of_impedance",
    },
    "first-disconnect": {
        "needed": "grounding/derived_grounded_conductor",
        "single": "grounding/derived_grounded_conductor_single_raceway",
        "each": "grounding/derived_grounded_conductor_in_each_raceway",
        "delta": "grounding/derived_grounded_conductor_of_delta",
        "impedance": "grounding/derived_grounded_conductor_of_impedance",
    },
}
UNGROUNDED = {"service-disconnect": "naming/ungrounded_service", "first-disconnect": "naming/ungrounded_derived_system"}


IMPEDANCE = {place: rules["impedance"] for place, rules in RULES.items()}

OUT_OF_SCOPE = (
    OutOfScope(
        "place",
        "feeder-panel",
        message(
            "In a feeder, the neutral is not the ground-fault return path. Another rule sets its minimum size."
        ),
        message(
            "Look under grounded conductor of a feeder ({section}): no smaller than the equipment grounding "
            "conductor would be, and large enough for the load ({load}). In parallel, {least} or larger "
            "({parallel}).",
            section=SectionOf("naming/feeder_grounded_conductor"),
            load=SectionOf("naming/neutral_load"),
            least=FigureOf("conductors/parallel_minimum", "AWG"),
            parallel=SectionOf("conductors/parallel_minimum"),
        ),
        ("equipment-grounding-conductor",),
    ),
    OutOfScope(
        "place",
        "source",
        message(
            "With the system bonding jumper at the source, fault current returns on the supply-side bonding "
            "jumper. Downstream, the neutral is sized for its load; {section} sizes it only where that jumper is "
            "not at the source.",
            section=SectionOf("grounding/derived_grounded_conductor"),
        ),
        message(
            "Look under neutral load ({load}) and supply-side bonding jumper ({jumper}). With a system bonding "
            "jumper at both places, look under {both}.",
            load=SectionOf("naming/neutral_load"),
            jumper=SectionOf("naming/supply_side_bonding_jumper"),
            both=SectionOf("jumpers/system_jumper_at_two_places"),
        ),
        ("supply-side-bonding-jumper",),
    ),
    OutOfScope(
        "system_grounding",
        "ungrounded",
        message("An ungrounded system does not have a grounded conductor."),
        message(
            "Look under ungrounded system ({section}): its metal must still be bonded together and connected to "
            "the grounding electrodes.",
            section=SectionOf(UNGROUNDED, "place"),
        ),
    ),
    OutOfScope(
        "system_grounding",
        "impedance-grounded",
        message(
            "In an impedance-grounded system, the fault current is limited, and other rules size the conductor "
            "({section}).",
            section=SectionOf(IMPEDANCE, "place"),
        ),
        message(
            "Look under impedance-grounded system ({section}); over 1000 V under {over}.",
            section=SectionOf("naming/impedance_grounding"),
            over=SectionOf("naming/impedance_grounding_over_1000_volts"),
        ),
    ),
)


def require_equal_raceways(sets: int, raceways: int | None, trace: Trace) -> None:
    """Raise NotCovered where `sets` conductors a phase do not share `raceways` raceways equally."""
    if raceways and sets % raceways:
        raise NotCovered(
            message(
                "{sets} sets in parallel do not divide evenly into {raceways} raceways.", sets=sets, raceways=raceways
            ),
            message(
                "Look under parallel conductors ({section}): each raceway must hold the same number of conductors. "
                "Check the number of sets and of raceways.",
                section=trace.section("conductors/parallel_raceways_alike"),
            ),
        )
