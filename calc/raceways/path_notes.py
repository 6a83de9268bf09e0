"""What an answer on a raceway as grounding path implies on site."""

from __future__ import annotations

from calc.messages import Message, message
from calc.raceways.kind import BEFORE_VOLTAGE_LIMITS, FLEXIBLE, NOT_LISTED
from calc.rulebook import every_edition
from calc.trace import Trace, shown_number

VOLTAGE_LIMITS = "raceways/voltage_limits_of_kinds"
NO_LIMITS = "none"


def conditions_of_path(raceway: str) -> Message:
    """Return what a yes for `raceway` rests on, in the words that stand beside it."""
    if raceway == "flexible-metallic-tubing":
        return message("listed fittings, all tight, in an ordinary location")
    if raceway in FLEXIBLE:
        return message(
            "listed fittings, all tight, nothing moves or vibrates, no stainless steel, an ordinary location"
        )
    return message("listed fittings, every joint tight, in an ordinary location")


def notes_on_path(raceway: str, listed: str | None, trace: Trace) -> None:
    """Note what a yes for `raceway` leans on; `listed` is None where its listing was not asked about."""
    if listed is None and raceway in NOT_LISTED:
        trace.note(message("Assumed: listed, identified or built as this type must be. See less common cases."))
    trace.note(
        message(
            "A local ordinance may prohibit it and require a wire in every raceway. "
            "Ask the authority having jurisdiction."
        )
    )
    trace.note(
        message(
            "Whatever the list permits, the path must carry the fault current and open the overcurrent device "
            "({section}).",
            section=trace.section("raceways/effective_path"),
        )
    )


def notes_on_metal(raceway: str, trace: Trace) -> None:
    """Note what holds for the metal of `raceway` whatever the answer: joints, voltage to ground."""
    section = trace.section
    limited = [stated.edition for stated in every_edition(VOLTAGE_LIMITS) if stated.value != NO_LIMITS]
    if trace.edition in limited and raceway not in BEFORE_VOLTAGE_LIMITS:
        trace.warn(
            message(
                "The {edition} edition adds voltage limits for some types to the list ({section}). Their values were "
                "not seen and are not checked here.",
                edition=limited[0],
                section=section("raceways/nonmetallic_raceway"),
            )
        )
    if raceway == "nonmetallic-raceway":
        return
    trace.note(
        message(
            "Use fittings approved for it, make every joint tight ({joints}), and remove paint at contact surfaces "
            "({continuity}).",
            joints=section("raceways/fittings_and_joints"),
            continuity=section("raceways/continuity"),
        )
    )
    trace.note(
        message(
            "Over 250 V to ground, entries to boxes and enclosures require better bonding ({section}).",
            section=section("raceways/over_250_volts_to_ground"),
        ),
        grave=True,
    )
    if raceway == "armored-cable":
        trace.note(
            message(
                "The armor qualifies only with the bonding strip under it along its whole length ({section}).",
                section=section("raceways/armored_cable_strip"),
            ),
            grave=True,
        )
    if raceway == "mineral-insulated-copper":
        trace.note(
            message("The copper sheath is the path ({section}).", section=section("raceways/mineral_insulated_sheath"))
        )


def notes_on_wire(raceway: str, flexibility: str, trace: Trace) -> None:
    """Note how the wire or jumper is installed where `raceway` may not be the path."""
    section = trace.section
    trace.note(
        message(
            "The wire is not required to be larger than the circuit conductors; upsized circuit conductors can make it "
            "larger ({section}).",
            section=section("naming/equipment_grounding_conductor_size"),
        )
    )
    if raceway not in FLEXIBLE:
        return
    if raceway != "flexible-metallic-tubing" and flexibility == "needed":
        movement = trace.cite("raceways/flexibility_after_installation")
        if movement.value == "wire":
            trace.note(
                message(
                    "Where it moves or vibrates, the {edition} edition calls for a wire, not a jumper outside "
                    "({section}).",
                    edition=trace.edition,
                    section=movement.section,
                )
            )
            return
    longest = trace.cite("raceways/jumper_outside_longest")
    trace.note(
        message(
            "A bonding jumper of the same size ({size}) may be used instead of the wire: inside, or outside, routed "
            "with the raceway and no longer than {longest} ft ({section}).",
            size=section("raceways/jumper_size"),
            longest=shown_number(longest.value),
            section=longest.section,
        )
    )
