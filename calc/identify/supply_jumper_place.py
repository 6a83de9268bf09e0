"""Where a supply-side bonding jumper is: ahead of the first overcurrent device, never past it."""

from __future__ import annotations

from calc.calculator import Choice, NotCovered
from calc.messages import message
from calc.shared_fields import one_of
from calc.trace import Trace

AT_SERVICE = ("service-raceway", "ahead-of-service-disconnects")

SUPPLY_JUMPER_PLACE = one_of(
    message("Where the jumper is"),
    message("Ahead of the first fuse or breaker it has this name. Past it, the part has another name."),
    (
        Choice("service-raceway", message("Service raceway, meter or other enclosure ahead of the service disconnect")),
        Choice("ahead-of-service-disconnects", message("Meter or wireway ahead of several service disconnects")),
        Choice(
            "separately-derived-system",
            message("Transformer or generator that is a source of its own, to its first disconnect"),
        ),
        Choice(
            "generator-joined-neutral",
            message("Generator without a breaker, neutral joined to that of the service, to the first disconnect"),
        ),
        Choice("service-disconnect", message("Neutral to metal in a service disconnect enclosure")),
        Choice("derived-neutral", message("Neutral to metal at a transformer or generator")),
        Choice("feeder-or-branch", message("Past a fuse or breaker: a feeder, a branch circuit, another building")),
        Choice("generator-with-breaker", message("Past a breaker at the generator")),
    ),
)


def stay_with_the_supply_side(place: str, system_grounding: str, trace: Trace) -> None:
    """Raise NotCovered, with the name to look under, where the part is no supply-side bonding jumper.

    place: a value of `SUPPLY_JUMPER_PLACE`; system_grounding: how the system is grounded.
    """
    section = trace.section
    if place == "service-disconnect":
        raise NotCovered(
            message("The jumper from the neutral to metal in a service disconnect enclosure has another name."),
            message(
                "Look under main bonding jumper ({section}). It goes by the service conductors too.",
                section=section("jumpers/main_bonding_jumper_required"),
            ),
            "main-bonding-jumper",
        )
    if place == "derived-neutral":
        raise NotCovered(
            message("The jumper from the neutral of a transformer or generator to metal has another name."),
            message(
                "Look under system bonding jumper ({section}). It goes by the derived conductors too.",
                section=section("naming/system_bonding_jumper"),
            ),
            "system-bonding-jumper",
        )
    if place == "feeder-or-branch":
        raise NotCovered(
            message("Past the first overcurrent device there is no supply-side bonding jumper."),
            message(
                "For a wire with the circuit look under equipment grounding conductor ({conductor}); for a jumper "
                "between metal parts, under equipment bonding jumper ({jumper}). Both go by the overcurrent device.",
                conductor=section("naming/equipment_grounding_conductor_size"),
                jumper=section("raceways/jumper_size"),
            ),
            "equipment-grounding-conductor",
            "equipment-bonding-jumper",
        )
    if place == "generator-with-breaker":
        raise NotCovered(
            message("The breaker at the generator is the first overcurrent device. Past it is the load side."),
            message(
                "Look under equipment grounding conductor ({section}). It goes by that breaker, not by the conductors.",
                section=section("naming/equipment_grounding_conductor_size"),
            ),
            "equipment-grounding-conductor",
        )
    if system_grounding == "impedance-grounded":
        raise NotCovered(
            message("An impedance-grounded system has bonding rules of its own."),
            message("Look under impedance-grounded system ({section}).", section=section("naming/impedance_grounding")),
        )
