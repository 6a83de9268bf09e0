"""Which structural metal needs a bond: a building frame, exposed, and what spares it."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import Message, message
from calc.shared_fields import one_of, yes_or_no
from calc.trace import Trace

OF_BUILDING = "grounding/structural_metal_bond"
OF_DERIVED = "grounding/structural_metal_bond_derived"
OF_COMMON = "grounding/structural_metal_common_conductor"
BY_FRAME = "grounding/structural_metal_spared_by_frame"
BY_PIPING = "grounding/structural_metal_spared_by_piping"
RULE_OF = {
    "service": OF_BUILDING,
    "feeder-or-branch": OF_BUILDING,
    "separately-derived-system": OF_DERIVED,
    "common-electrode-conductor": OF_COMMON,
}

SUPPLY = one_of(
    message("What the frame is bonded to"),
    message("The frame is bonded to what feeds the building. A separately derived system adds a bond."),
    (
        Choice("service", message("Building with a service")),
        Choice("feeder-or-branch", message("Building supplied by a feeder or branch circuit")),
        Choice("separately-derived-system", message("Separately derived system (transformer or generator)")),
        Choice(
            "common-electrode-conductor", message(
                "Several separately derived systems on one grounding electrode conductor"
            )
        ),
    ),
)
FRAME = one_of(
    message("Structural metal"),
    message("Interconnected beams, columns and trusses form a frame. A single lintel or post does not."),
    (
        Choice("interconnected", message("Interconnected to form the building frame")),
        Choice("not-interconnected", message("Single pieces, not connected to a frame")),
    ),
)
EXPOSED = yes_or_no(
    message("Exposed"),
    message("It can be seen or reached. Behind panels or fireproofing, the authority having jurisdiction decides."),
)
BONDED = yes_or_no(
    message("Intentionally grounded or bonded already"),
    message("By a wire or connection made for that purpose, not by chance contact."),
)
ENERGIZED = yes_or_no(
    message("Likely to become energized"),
    message("Wiring or equipment is on it or in it, so a fault could energize it."),
)
ELECTRODE = one_of(
    message("Grounding electrode of the source"),
    message("Applies to a separately derived system (transformer or generator)."),
    (
        Choice("other", message("Something other than this frame or the water piping")),
        Choice("structural-metal", message("The in-ground steel of this building is its electrode")),
        Choice("structural-metal-as-conductor", message("This frame is its grounding electrode conductor")),
        Choice("water-pipe", message("Water piping is its electrode, bonded to the frame in the area served")),
        Choice(
            "water-pipe-as-conductor",
            message("Water piping is its grounding electrode conductor, bonded to the frame in the area served"),
        ),
    ),
    rare=True,
)


def why_no_bond(
    supply: str, frame: str, exposed: str, bonded: str, energized: str, electrode: str, trace: Trace
) -> list[Message]:
    """Return why this metal needs no bond, nothing where it does; the parameters are values of the fields above."""
    section = trace.section(RULE_OF[supply])
    why: list[Message] = []
    if frame == "not-interconnected":
        why.append(message("It is not interconnected to form a building frame ({section}).", section=section))
    if exposed == "no":
        why.append(message("It is not exposed ({section}).", section=section))
    if supply in ("service", "feeder-or-branch"):
        if bonded == "yes":
            why.append(message("It is already intentionally grounded or bonded ({section}).", section=section))
        if energized == "no":
            why.append(message("It is not likely to become energized ({section}).", section=section))
        return why
    if bonded == "yes" or energized == "no":
        trace.step(
            message(
                "An existing bond to the service, or no likely fault, excuses the building's bond, not the bond to a "
                "separately derived system."
            ),
            cites=(RULE_OF[supply],),
        )
    if supply == "separately-derived-system":
        why += _spared_by_its_electrode(electrode, trace)
    return why


def _spared_by_its_electrode(electrode: str, trace: Trace) -> list[Message]:
    if electrode == "other":
        return []
    rule_key = BY_FRAME if electrode.startswith("structural-metal") else BY_PIPING
    sparing = trace.cite(rule_key)
    if electrode.endswith("-as-conductor") and sparing.rows[0]["used_as"] == "electrode":
        trace.warn(
            message(
                "The {edition} edition does not require the bond where this metal is the electrode ({section}); it "
                "does not mention the grounding electrode conductor. Ask the authority having jurisdiction.",
                edition=trace.edition,
                section=sparing.section,
            )
        )
        return []
    if rule_key == BY_FRAME:
        return [
            message(
                "The steel itself is the grounding electrode or conductor for this source ({section}).",
                section=sparing.section,
            )
        ]
    return [
        message(
            "Water piping is the grounding electrode or conductor for this source and is bonded to the frame in the "
            "area served ({section}).",
            section=sparing.section,
        )
    ]
