"""Where a supply-side bonding jumper is: ahead of the first overcurrent device, never past it."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.scope import OutOfScope, SectionOf
from calc.shared_fields import one_of

AT_SERVICE = ("service-raceway", "ahead-of-service-disconnects")

SUPPLY_JUMPER_PLACE = one_of(
    message("Location of the jumper"),
    message("Ahead of the first breaker or fuse it has this name. On the load side, it has another name."),
    (
        Choice("service-raceway", message("Service raceway, meter or other enclosure ahead of the service disconnect")),
        Choice(
            "ahead-of-service-disconnects", message("Meter enclosure or wireway ahead of several service disconnects")
        ),
        Choice(
            "separately-derived-system",
            message("Separately derived system (transformer or generator), to its first disconnect"),
        ),
        Choice(
            "generator-joined-neutral",
            message("Generator without a breaker, neutral connected to the service neutral, to the first disconnect"),
        ),
        Choice("service-disconnect", message("Neutral to metal in a service disconnect enclosure")),
        Choice("derived-neutral", message("Neutral to metal at a transformer or generator")),
        Choice("feeder-or-branch", message("Load side of a breaker or fuse: feeder, branch circuit, another building")),
        Choice("generator-with-breaker", message("Load side of a breaker at the generator")),
    ),
)


OUT_OF_SCOPE = (
    OutOfScope(
        "place",
        "service-disconnect",
        message("The jumper from the neutral to metal in a service disconnect enclosure has another name."),
        message(
            "Look under main bonding jumper ({section}). It is sized from the service conductors too.",
            section=SectionOf("jumpers/main_bonding_jumper_required"),
        ),
        ("main-bonding-jumper",),
    ),
    OutOfScope(
        "place",
        "derived-neutral",
        message("The jumper from the neutral of a transformer or generator to metal has another name."),
        message(
            "Look under system bonding jumper ({section}). It is sized from the derived ungrounded conductors too.",
            section=SectionOf("naming/system_bonding_jumper"),
        ),
        ("system-bonding-jumper",),
    ),
    OutOfScope(
        "place",
        "feeder-or-branch",
        message("On the load side of the first overcurrent device, there is no supply-side bonding jumper."),
        message(
            "For a wire run with the circuit, look under equipment grounding conductor ({conductor}); for a jumper "
            "between metal parts, under equipment bonding jumper ({jumper}). Both are sized from the overcurrent "
            "device.",
            conductor=SectionOf("naming/equipment_grounding_conductor_size"),
            jumper=SectionOf("raceways/jumper_size"),
        ),
        ("equipment-grounding-conductor", "equipment-bonding-jumper"),
    ),
    OutOfScope(
        "place",
        "generator-with-breaker",
        message(
            "The breaker at the generator is the first overcurrent device. Everything downstream is the load side."
        ),
        message(
            "Look under equipment grounding conductor ({section}). It is sized from that breaker, not from the "
            "conductors.",
            section=SectionOf("naming/equipment_grounding_conductor_size"),
        ),
        ("equipment-grounding-conductor",),
    ),
    OutOfScope(
        "system_grounding",
        "impedance-grounded",
        message("An impedance-grounded system has its own bonding rules."),
        message("Look under impedance-grounded system ({section}).", section=SectionOf("naming/impedance_grounding")),
    ),
)
