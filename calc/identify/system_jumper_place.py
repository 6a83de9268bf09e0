"""Where a system bonding jumper stands: at the source of a separately derived system or its first disconnect."""

from __future__ import annotations

from calc.calculator import Choice
from calc.identify.jumper_place import WAYS_OF_GROUNDING
from calc.messages import message
from calc.scope import OutOfScope, SectionOf
from calc.shared_fields import one_of

SYSTEM_JUMPER_PLACE = one_of(
    message("Location of the jumper"),
    message("A separately derived system (transformer or generator) has this jumper at one location, never at two."),
    (
        Choice("source", message("At the source")),
        Choice("first-disconnect", message("In the first disconnect after the source")),
        Choice("both", message("At the source and in the first disconnect")),
        Choice("unswitched-neutral", message("At a generator with its neutral connected to the service neutral")),
        Choice("service-disconnect", message("In a service disconnect enclosure")),
        Choice("feeder-panel", message("In a panel downstream of the first disconnect")),
    ),
)
DERIVED_SYSTEM_GROUNDING = one_of(
    message("How the separately derived system is grounded"),
    message("Solidly grounded: one conductor, usually the neutral, is connected to ground without an impedance."),
    WAYS_OF_GROUNDING,
    rare=True,
)


OUT_OF_SCOPE = (
    OutOfScope(
        "place",
        "service-disconnect",
        message("In a service disconnect enclosure this jumper has another name."),
        message(
            "Look under main bonding jumper ({section}). It is sized from the service conductors.",
            section=SectionOf("jumpers/main_bonding_jumper_required"),
        ),
        ("main-bonding-jumper",),
    ),
    OutOfScope(
        "place",
        "feeder-panel",
        message(
            "Downstream of the system bonding jumper, the neutral must stay isolated from metal ({section}). There "
            "is no jumper.",
            section=SectionOf("grounding/no_neutral_bond_past_system_jumper"),
        ),
        message(
            "Look under equipment grounding conductor ({section}). It is sized from the upstream overcurrent "
            "device.",
            section=SectionOf("naming/equipment_grounding_conductor_size"),
        ),
        ("equipment-grounding-conductor",),
    ),
    OutOfScope(
        "place",
        "unswitched-neutral",
        message(
            "A source whose neutral stays connected to the service neutral is not a separately derived system "
            "({section}). Do not bond neutral to metal at the generator.",
            section=SectionOf("naming/same_system_as_service"),
        ),
        message(
            "Look under main bonding jumper ({main}). With an overcurrent device at the generator, look also "
            "under equipment grounding conductor ({equipment}); without one, under supply-side "
            "bonding jumper ({supply}).",
            main=SectionOf("jumpers/main_bonding_jumper_required"),
            equipment=SectionOf("naming/equipment_grounding_conductor_size"),
            supply=SectionOf("naming/supply_side_bonding_jumper"),
        ),
        ("main-bonding-jumper", "equipment-grounding-conductor", "supply-side-bonding-jumper"),
    ),
    OutOfScope(
        "system_grounding",
        "ungrounded",
        message("An ungrounded system has no grounded conductor for a system bonding jumper to connect."),
        message(
            "Look under ungrounded separately derived system ({section}): its metal must still be bonded together "
            "and connected to the grounding electrodes.",
            section=SectionOf("naming/ungrounded_derived_system"),
        ),
    ),
    OutOfScope(
        "system_grounding",
        "impedance-grounded",
        message(
            "In an impedance-grounded system, the grounding impedance takes the place of a system bonding jumper."
        ),
        message("Look under impedance-grounded system ({section}).", section=SectionOf("naming/impedance_grounding")),
    ),
    OutOfScope(
        "place",
        "both",
        message(
            "A system bonding jumper goes at one location only ({section}). With two, neutral current flows on "
            "metal.",
            section=SectionOf("naming/system_bonding_jumper"),
        ),
        message(
            "Keep one. Only a feeder from an outdoor source may have both, where that creates no parallel path: "
            "look under {section}.",
            section=SectionOf("jumpers/system_jumper_at_two_places"),
        ),
    ),
)
