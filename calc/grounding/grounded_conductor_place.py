"""Where a grounded conductor runs decides what sizes it: to a service disconnect, from a derived system, a feeder."""

from __future__ import annotations

from calc.calculator import Choice, NotCovered
from calc.messages import message
from calc.scope import FigureOf, OutOfScope, SectionOf
from calc.shared_fields import one_of
from calc.trace import Trace

PLACE = one_of(
    message("Where the grounded conductor runs"),
    message("At a transformer or generator the bond is its system bonding jumper, from the neutral to metal."),
    (
        Choice("service-disconnect", message("To a service disconnect")),
        Choice("first-disconnect", message("Transformer or generator, bond in its first disconnect")),
        Choice("source", message("Transformer or generator, bond at the source")),
        Choice("feeder-panel", message("In a feeder: to a panel or another building")),
    ),
)
SYSTEM_GROUNDING = one_of(
    message("How the system is grounded"),
    message(
        "Nearly every system has a grounded neutral. A corner-grounded delta has three wires, one of them grounded."
    ),
    (
        Choice("solidly-grounded", message("A grounded neutral, or one grounded wire of a single-phase system")),
        Choice("corner-grounded", message("Three-phase three-wire delta with one grounded phase wire")),
        Choice("ungrounded", message("Ungrounded: no conductor tied to earth")),
        Choice("impedance-grounded", message("Grounded through an impedance")),
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
        message("In a feeder the neutral is not the way back for a fault. Another rule sets its least size."),
        message(
            "Look under grounded conductor of a feeder ({section}): no smaller than the equipment grounding "
            "conductor would be, and the load counts ({load}). In parallel, {least} or larger ({parallel}).",
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
            "With the bond at the source, the fault comes back on the supply-side bonding jumper. The neutral past "
            "it goes by its load; {section} sizes it only where the bond is not at the source.",
            section=SectionOf("grounding/derived_grounded_conductor"),
        ),
        message(
            "Look under neutral load ({load}) and supply-side bonding jumper ({jumper}). With a bond at both "
            "places, look under {both}.",
            load=SectionOf("naming/neutral_load"),
            jumper=SectionOf("naming/supply_side_bonding_jumper"),
            both=SectionOf("jumpers/system_jumper_at_two_places"),
        ),
        ("supply-side-bonding-jumper",),
    ),
    OutOfScope(
        "system_grounding",
        "ungrounded",
        message("An ungrounded system has no grounded conductor."),
        message(
            "Look under ungrounded system ({section}): its metal is still bonded together and connected to the "
            "electrodes.",
            section=SectionOf(UNGROUNDED, "place"),
        ),
    ),
    OutOfScope(
        "system_grounding",
        "impedance-grounded",
        message(
            "In an impedance-grounded system the fault current is limited, and other rules size the conductor "
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
            message("Parallel sets ({sets}) do not share {raceways} raceways equally.", sets=sets, raceways=raceways),
            message(
                "Look under parallel conductors ({section}): each raceway holds the same number of conductors. Check "
                "the numbers of sets and raceways.",
                section=trace.section("conductors/parallel_raceways_alike"),
            ),
        )
