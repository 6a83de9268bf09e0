"""Where a system bonding jumper stands: at the source of a separately derived system or its first disconnect."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.scope import OutOfScope, SectionOf
from calc.shared_fields import one_of

SYSTEM_JUMPER_PLACE = one_of(
    message("Where the jumper is"),
    message("A transformer or generator that is a source of its own has this jumper at one place, never at two."),
    (
        Choice("source", message("At the source")),
        Choice("first-disconnect", message("In the first disconnect after the source")),
        Choice("both", message("At the source and in the first disconnect")),
        Choice("unswitched-neutral", message("At a generator whose neutral stays joined to that of the service")),
        Choice("service-disconnect", message("In a service disconnect enclosure")),
        Choice("feeder-panel", message("In a panel past the first disconnect")),
    ),
)
DERIVED_SYSTEM_GROUNDING = one_of(
    message("How the derived system is grounded"),
    message("Solidly grounded where one conductor, mostly the neutral, joins the metal and earth without impedance."),
    (
        Choice("solidly-grounded", message("Solidly grounded")),
        Choice("ungrounded", message("Ungrounded: no conductor tied to earth")),
        Choice("impedance-grounded", message("Grounded through an impedance")),
    ),
    rare=True,
)


OUT_OF_SCOPE = (
    OutOfScope(
        "place",
        "service-disconnect",
        message("In a service disconnect enclosure this jumper has another name."),
        message(
            "Look under main bonding jumper ({section}). It goes by the service conductors.",
            section=SectionOf("jumpers/main_bonding_jumper_required"),
        ),
        ("main-bonding-jumper",),
    ),
    OutOfScope(
        "place",
        "feeder-panel",
        message(
            "Past the system bonding jumper the neutral stays apart from metal ({section}). There is no jumper.",
            section=SectionOf("grounding/no_neutral_bond_past_system_jumper"),
        ),
        message(
            "Look under equipment grounding conductor ({section}). It goes by the overcurrent device ahead.",
            section=SectionOf("naming/equipment_grounding_conductor_size"),
        ),
        ("equipment-grounding-conductor",),
    ),
    OutOfScope(
        "place",
        "unswitched-neutral",
        message(
            "A source whose neutral stays joined to that of the service is not separately derived ({section}). "
            "Do not join neutral and metal at the generator.",
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
        message("An ungrounded system has no grounded conductor for a system bonding jumper to join."),
        message(
            "Look under ungrounded separately derived system ({section}): its metal is still bonded together "
            "and connected to the electrodes.",
            section=SectionOf("naming/ungrounded_derived_system"),
        ),
    ),
    OutOfScope(
        "system_grounding",
        "impedance-grounded",
        message("In an impedance-grounded system the impedance stands where a system bonding jumper would."),
        message("Look under impedance-grounded system ({section}).", section=SectionOf("naming/impedance_grounding")),
    ),
    OutOfScope(
        "place",
        "both",
        message(
            "A system bonding jumper stands at one place ({section}). At two places, neutral current runs over "
            "metal.",
            section=SectionOf("naming/system_bonding_jumper"),
        ),
        message(
            "Keep one. Only a feeder from an outdoor source may have both, where no parallel path arises: "
            "look under {section}.",
            section=SectionOf("jumpers/system_jumper_at_two_places"),
        ),
    ),
)
