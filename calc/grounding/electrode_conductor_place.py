"""Where a grounding electrode conductor starts decides which section asks for it, and whether there is one."""

from __future__ import annotations

from calc.calculator import Choice, NotCovered
from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.grounding.electrode_limit import electrode_limit
from calc.messages import message
from calc.shared_fields import METAL_WORDS, one_of
from calc.trace import Trace

SEVERAL_DERIVED = "several-derived-systems"
COMMON = "grounding/electrode_conductor_common_to_derived_systems"
SMALLER = "grounding/electrode_conductor_common_to_small_electrodes"
_SECTIONS = {
    "service-disconnect": "grounding/electrode_conductor_at_service",
    "separate-building": "grounding/electrode_conductor_at_separate_building",
    "separately-derived-system": "grounding/electrode_conductor_of_derived_system",
    SEVERAL_DERIVED: COMMON,
}
_UNGROUNDED = {
    "service-disconnect": "grounding/electrode_conductor_at_ungrounded_service",
    "separately-derived-system": "grounding/electrode_conductor_of_ungrounded_derived_system",
    SEVERAL_DERIVED: "grounding/electrode_conductor_of_ungrounded_derived_system",
}
PLACE = one_of(
    message("Where the conductor starts"),
    message("The size is based on the supply conductors there."),
    (
        Choice("service-disconnect", message("At a service")),
        Choice("separate-building", message("At a building supplied by a feeder from another building")),
        Choice("separately-derived-system", message("At a transformer or generator (separately derived system)")),
        Choice(SEVERAL_DERIVED, message("Common to several transformers or generators")),
        Choice("feeder-panel", message("At a panel supplied by a feeder in the same building")),
    ),
)


def name_the_place(place: str, system_grounding: str, other_conductors: str | None, trace: Trace) -> None:
    """Cite the section that asks for the conductor. Raises: NotCovered where no such conductor starts."""
    if place == "feeder-panel":
        raise NotCovered(
            message("No grounding electrode conductor starts at a panel supplied by a feeder in the same building."),
            message(
                "Look under equipment grounding conductor ({section}). It is sized from the upstream overcurrent "
                "device.",
                section=trace.section("naming/equipment_grounding_conductor_size"),
            ),
            "equipment-grounding-conductor",
        )
    if system_grounding == "impedance-grounded":
        raise NotCovered(
            message(
                "In an impedance-grounded system, the grounding impedance is between the system and the electrode."
            ),
            message(
                "Look under impedance-grounded system ({section}).",
                section=trace.section("naming/impedance_grounding"),
            ),
        )
    if place == "separately-derived-system" and other_conductors:
        raise NotCovered(
            message(
                "One separately derived system has one grounding electrode conductor, sized from all of its ungrounded "
                "conductors."
            ),
            message(
                "Enter only its own conductors and sets ({section}). For several systems, choose the location common "
                "to them.",
                section=trace.section(_SECTIONS[place]),
            ),
        )
    trace.cite(_SECTIONS[place])
    if system_grounding == "ungrounded" and place in _UNGROUNDED:
        trace.cite(_UNGROUNDED[place])
    if other_conductors and place != SEVERAL_DERIVED:
        trace.step(
            message(
                "Several disconnects share one conductor: it is sized from the sum of their ungrounded conductors, "
                "each tap from its own."
            ),
            cites=("grounding/electrode_conductor_several_disconnects",),
        )
        trace.note(
            message(
                "Instead of taps, each disconnect may have its own grounding electrode conductor, the same size as its "
                "tap, or one may start in a wireway ahead of them and be sized from the conductors there ({section}).",
                section=trace.section("grounding/electrode_conductor_each_disconnect"),
            )
        )


def common_size(electrodes: list[str], ring: str | None, metal: str, trace: Trace) -> str:
    """Return the size of the conductor that several derived systems share."""
    size = trace.cite(COMMON).rows[0][TABLE_COLUMN[metal]]
    trace.step(
        message(
            "The common conductor for several separately derived systems: {size} {metal}, however small the systems "
            "are.",
            size=shown_size(size),
            metal=METAL_WORDS[metal],
        ),
        shown_size(size),
        "",
        (COMMON,),
    )
    limits = [limit for each in electrodes if (limit := electrode_limit(each, ring, metal, trace))]
    if len(limits) < len(electrodes) or trace.cite(SMALLER).value != "permitted":
        return size
    smaller = max((limit[0] for limit in limits), key=lambda each: area(each, trace.edition))
    if area(smaller, trace.edition) >= area(size, trace.edition):
        return size
    trace.step(
        message(
            "Only these types of electrodes are present: it is not required to be larger than {size}.",
            size=shown_size(smaller),
        ),
        shown_size(smaller),
        "",
        (SMALLER, *(limit[1] for limit in limits)),
    )
    trace.reading(message("where the building has a water pipe, structural metal or another electrode"), size)
    trace.warn(
        message(
            "This applies only where the building has no water pipe, structural metal or other electrode ({section}). "
            "With one of them: {size}.",
            section=trace.section(SMALLER),
            size=shown_size(size),
        )
    )
    return smaller
