"""Where a jumper is decides its name; a main bonding jumper is in a service disconnect enclosure only."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.scope import OutOfScope, SectionOf
from calc.shared_fields import one_of

PLACE = one_of(
    message("Location of the jumper"),
    message("The name of a jumper depends on its location."),
    (
        Choice("service-disconnect", message("In a service disconnect enclosure")),
        Choice(
            "ahead-of-service-disconnects", message(
                "In a meter enclosure or wireway ahead of several service disconnects"
            )
        ),
        Choice("feeder-panel", message("In a panel supplied by a feeder")),
        Choice("separate-building", message("In a building supplied by a feeder from another building")),
        Choice("separately-derived-system", message("At a transformer or generator (separately derived system)")),
    ),
)
WAYS_OF_GROUNDING = (
    Choice("solidly-grounded", message("Solidly grounded")),
    Choice("ungrounded", message("Ungrounded: no system conductor grounded")),
    Choice("impedance-grounded", message("Impedance grounded")),
)
SYSTEM_GROUNDING = one_of(
    message("How the system is grounded"),
    message("Nearly every service is solidly grounded: the utility grounds one conductor, usually the neutral."),
    WAYS_OF_GROUNDING,
    rare=True,
)


OUT_OF_SCOPE = (
    OutOfScope(
        "place",
        "ahead-of-service-disconnects",
        message("A jumper ahead of several service disconnects is not a main bonding jumper."),
        message(
            "Look under supply-side bonding jumper ({section}). It is sized from the conductors that feed the "
            "wireway.",
            section=SectionOf("naming/supply_side_bonding_jumper"),
        ),
        ("supply-side-bonding-jumper",),
    ),
    OutOfScope(
        "place",
        "feeder-panel",
        message(
            "A panel supplied by a feeder does not get a main bonding jumper. Keep its neutral isolated from its "
            "metal ({section}).",
            section=SectionOf("grounding/no_neutral_bond_on_load_side"),
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
        "separate-building",
        message(
            "A building supplied by a feeder does not get a main bonding jumper. Keep the neutral isolated from "
            "the metal there."
        ),
        message(
            "Look under equipment grounding conductor of a separate building ({section}). Existing three-wire "
            "feeders have an exception there.",
            section=SectionOf("naming/separate_building"),
        ),
        ("equipment-grounding-conductor", "separate-building-schedule"),
    ),
    OutOfScope(
        "place",
        "separately-derived-system",
        message(
            "At a separately derived system, this jumper has a different name and different permitted locations."
        ),
        message(
            "Look under system bonding jumper ({section}). It is sized from the derived ungrounded conductors.",
            section=SectionOf("naming/system_bonding_jumper"),
        ),
        ("system-bonding-jumper",),
    ),
    OutOfScope(
        "system_grounding",
        "ungrounded",
        message("An ungrounded system has no grounded conductor for a main bonding jumper to connect."),
        message(
            "Look under grounding of an ungrounded service ({section}): its metal must still be bonded together "
            "and connected to the grounding electrodes.",
            section=SectionOf("naming/ungrounded_service"),
        ),
    ),
    OutOfScope(
        "system_grounding",
        "impedance-grounded",
        message(
            "In an impedance-grounded system, the grounding impedance takes the place of a main bonding jumper."
        ),
        message("Look under impedance-grounded system ({section}).", section=SectionOf("naming/impedance_grounding")),
    ),
)
