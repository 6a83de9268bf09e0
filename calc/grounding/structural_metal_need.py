"""Which structural metal needs a bond: a building frame, exposed, and what spares it."""

from __future__ import annotations

from calc.declare import Choice
from calc.vocabulary import one_of, yes_or_no
from calc.words import Sentence, say
from calc.working import Working

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
    say("What the bond belongs to"),
    say("A building is bonded to what feeds it. A transformer or generator of its own adds a bond."),
    (
        Choice("service", say("A building with a service")),
        Choice("feeder-or-branch", say("A building fed by a feeder or branch circuit")),
        Choice("separately-derived-system", say("Transformer or generator of its own")),
        Choice("common-electrode-conductor", say("Several such sources on one grounding electrode conductor")),
    ),
)
FRAME = one_of(
    say("The metal"),
    say("Beams, columns and trusses joined to each other make a frame. A single lintel or post does not."),
    (
        Choice("interconnected", say("Joined to form the building frame")),
        Choice("not-interconnected", say("Single pieces, not joined to a frame")),
    ),
)
EXPOSED = yes_or_no(
    say("Exposed"), say("It can be seen or reached. Behind panels or fireproofing the authority judges.")
)
BONDED = yes_or_no(
    say("Already grounded or bonded on purpose"),
    say("By a wire or connection made for it, not by chance contact."),
)
ENERGIZED = yes_or_no(
    say("Likely to become energized"),
    say("Wiring or equipment runs on it or in it, so that a fault could reach it."),
)
ELECTRODE = one_of(
    say("What grounds the source"),
    say("It counts for a transformer or generator that is a source of its own."),
    (
        Choice("other", say("Something else than this frame or the water piping")),
        Choice("structural-metal", say("The steel of this building in the ground is its electrode")),
        Choice("structural-metal-as-conductor", say("This frame is the conductor to its electrode")),
        Choice("water-pipe", say("Water piping is its electrode, bonded to the frame in the area served")),
        Choice(
            "water-pipe-as-conductor",
            say("Water piping is the conductor to its electrode, bonded to the frame in the area served"),
        ),
    ),
    rare=True,
)


def why_no_bond(
    supply: str, frame: str, exposed: str, bonded: str, energized: str, electrode: str, working: Working
) -> list[Sentence]:
    """Give why this metal needs no bond, nothing where it needs one; the parameters are values of the fields above."""
    section = working.section(RULE_OF[supply])
    why = []
    if frame == "not-interconnected":
        why.append(say("It is not joined to form a building frame ({section}).", section=section))
    if exposed == "no":
        why.append(say("It is not exposed ({section}).", section=section))
    if supply in ("service", "feeder-or-branch"):
        if bonded == "yes":
            why.append(say("It is already grounded or bonded on purpose ({section}).", section=section))
        if energized == "no":
            why.append(say("It is not likely to become energized ({section}).", section=section))
        return why
    if bonded == "yes" or energized == "no":
        working.step(
            say("A bond to the service, or no fault in sight, spares a building, not a source of its own."),
            cites=(RULE_OF[supply],),
        )
    if supply == "separately-derived-system":
        why += _spared_by_its_electrode(electrode, working)
    return why


def _spared_by_its_electrode(electrode: str, working: Working) -> list[Sentence]:
    if electrode == "other":
        return []
    rule_key = BY_FRAME if electrode.startswith("structural-metal") else BY_PIPING
    sparing = working.cite(rule_key)
    if electrode.endswith("-as-conductor") and sparing.rows[0]["used_as"] == "electrode":
        working.warn(
            say(
                "The {edition} edition spares the bond where this metal is the electrode ({section}); of the conductor "
                "to the electrode it says nothing. Ask the authority.",
                edition=working.edition,
                section=sparing.section,
            )
        )
        return []
    if rule_key == BY_FRAME:
        return [say("The steel itself grounds this source ({section}).", section=sparing.section)]
    return [
        say(
            "Water piping grounds this source and is bonded to the frame in the area served ({section}).",
            section=sparing.section,
        )
    ]
