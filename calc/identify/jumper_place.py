"""Where a jumper is decides its name; a main bonding jumper is in a service disconnect enclosure only."""

from __future__ import annotations

from calc.calculator import Choice, NotCovered
from calc.messages import message
from calc.shared_fields import one_of
from calc.trace import Trace

PLACE = one_of(
    message("Where the jumper is"),
    message("The name of a jumper depends on where it is."),
    (
        Choice("service-disconnect", message("In a service disconnect enclosure")),
        Choice("ahead-of-service-disconnects", message("In a meter or wireway ahead of several service disconnects")),
        Choice("feeder-panel", message("In a panel fed by a feeder")),
        Choice("separate-building", message("In a building fed by a feeder from another building")),
        Choice("separately-derived-system", message("At a transformer or generator that is a source of its own")),
    ),
)
SYSTEM_GROUNDING = one_of(
    message("How the system is grounded"),
    message("Nearly every service is solidly grounded: the utility ties one conductor, mostly the neutral, to earth."),
    (
        Choice("solidly-grounded", message("Solidly grounded")),
        Choice("ungrounded", message("Ungrounded: no conductor tied to earth")),
        Choice("impedance-grounded", message("Grounded through an impedance")),
    ),
    rare=True,
)


def stay_with_main_bonding_jumpers(place: str, system_grounding: str, trace: Trace) -> None:
    """Raise NotCovered, with the name to look under, where the part is no main bonding jumper.

    place, system_grounding: values of `PLACE` and `SYSTEM_GROUNDING`.
    """
    section = trace.section
    if place == "ahead-of-service-disconnects":
        raise NotCovered(
            message("A jumper ahead of several service disconnects is not a main bonding jumper."),
            message(
                "Look under supply-side bonding jumper ({section}). It goes by the conductors that feed the wireway.",
                section=section("naming/supply_side_bonding_jumper"),
            ),
            "supply-side-bonding-jumper",
        )
    if place == "feeder-panel":
        raise NotCovered(
            message(
                "A panel fed by a feeder has no main bonding jumper. Its neutral stays apart from its metal "
                "({section}).",
                section=section("grounding/no_neutral_bond_on_load_side"),
            ),
            message(
                "Look under equipment grounding conductor ({section}). It goes by the overcurrent device ahead.",
                section=section("naming/equipment_grounding_conductor_size"),
            ),
            "equipment-grounding-conductor",
        )
    if place == "separate-building":
        raise NotCovered(
            message(
                "A building fed by a feeder has no main bonding jumper. The neutral stays apart from the metal there."
            ),
            message(
                "Look under equipment grounding conductor of a separate building ({section}). Old three-wire feeders "
                "have an exception there.",
                section=section("naming/separate_building"),
            ),
            "equipment-grounding-conductor",
            "separate-building-schedule",
        )
    if place == "separately-derived-system":
        raise NotCovered(
            message("At a separately derived system this jumper has another name and other places to stand."),
            message(
                "Look under system bonding jumper ({section}). It goes by the derived conductors.",
                section=section("naming/system_bonding_jumper"),
            ),
            "system-bonding-jumper",
        )
    if system_grounding == "ungrounded":
        raise NotCovered(
            message("An ungrounded system has no grounded conductor for a main bonding jumper to join."),
            message(
                "Look under grounding of an ungrounded service ({section}): its metal is still bonded together and "
                "connected to the electrodes.",
                section=section("naming/ungrounded_service"),
            ),
        )
    if system_grounding == "impedance-grounded":
        raise NotCovered(
            message("In an impedance-grounded system the impedance stands where a main bonding jumper would."),
            message("Look under impedance-grounded system ({section}).", section=section("naming/impedance_grounding")),
        )
