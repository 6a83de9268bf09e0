"""What an answer on a raceway as grounding path implies on site."""

from __future__ import annotations

from calc.raceways.kind import BEFORE_VOLTAGE_LIMITS, FLEXIBLE, NOT_LISTED
from calc.rulebook import every_edition
from calc.words import Sentence, say
from calc.working import Working, shown_number

VOLTAGE_LIMITS = "raceways/voltage_limits_of_kinds"
NO_LIMITS = "none"


def conditions_of_path(raceway: str) -> Sentence:
    """Give what a yes for `raceway` rests on, in the words that stand beside it."""
    if raceway == "flexible-metallic-tubing":
        return say("listed fittings, all tight, in an ordinary location")
    if raceway in FLEXIBLE:
        return say("listed fittings, all tight, nothing moves or vibrates, no stainless steel, an ordinary location")
    return say("listed fittings, every joint tight, in an ordinary location")


def notes_on_path(raceway: str, listed: str | None, working: Working) -> None:
    """Note what a yes for `raceway` leans on; `listed` is None where its listing was not asked about."""
    if listed is None and raceway in NOT_LISTED:
        working.note(say("It was taken as listed, identified or built as its kind must be: see less common cases."))
    working.note(say("A local ordinance may forbid it and ask for a wire in every raceway. Ask the authority."))
    working.note(
        say(
            "Whatever the list permits, the path must carry the fault current and open the device ({section}).",
            section=working.section("raceways/effective_path"),
        )
    )


def notes_on_metal(raceway: str, working: Working) -> None:
    """Note what holds for the metal of `raceway` whatever the answer: joints, voltage to ground."""
    section = working.section
    limited = [stated.edition for stated in every_edition(VOLTAGE_LIMITS) if stated.value != NO_LIMITS]
    if working.edition in limited and raceway not in BEFORE_VOLTAGE_LIMITS:
        working.warn(
            say(
                "The {edition} edition adds voltage limits for some kinds to the list ({section}). Their values were "
                "not seen and are not checked here.",
                edition=limited[0],
                section=section("raceways/nonmetallic_raceway"),
            )
        )
    if raceway == "nonmetallic-raceway":
        return
    working.note(
        say(
            "Fittings approved for it, every joint tight ({joints}), paint removed at contacts ({continuity}).",
            joints=section("raceways/fittings_and_joints"),
            continuity=section("raceways/continuity"),
        )
    )
    working.note(
        say(
            "Over 250 V to ground the entries need better bonding ({section}).",
            section=section("raceways/over_250_volts_to_ground"),
        )
    )
    if raceway == "armored-cable":
        working.note(
            say(
                "The armor counts with the bonding strip under it along its whole length ({section}).",
                section=section("raceways/armored_cable_strip"),
            )
        )
    if raceway == "mineral-insulated-copper":
        working.note(
            say("The copper sheath is the path ({section}).", section=section("raceways/mineral_insulated_sheath"))
        )


def notes_on_wire(raceway: str, flexibility: str, working: Working) -> None:
    """Note how the wire or jumper is installed where `raceway` may not be the path."""
    section = working.section
    working.note(
        say(
            "The wire need not be larger than the circuit conductors; larger circuit conductors can make it larger "
            "({section}).",
            section=section("naming/equipment_grounding_conductor_size"),
        )
    )
    if raceway not in FLEXIBLE:
        return
    if raceway != "flexible-metallic-tubing" and flexibility == "needed":
        named = working.cite("raceways/flexibility_after_installation")
        if named.value == "wire":
            working.note(
                say(
                    "Where it moves or vibrates the {edition} edition names a wire, not a jumper outside ({section}).",
                    edition=working.edition,
                    section=named.section,
                )
            )
            return
    longest = working.cite("raceways/jumper_outside_longest")
    working.note(
        say(
            "A bonding jumper of the same size ({size}) may stand in for the wire: inside, or outside along the "
            "raceway and at most {longest} ft long ({section}).",
            size=section("raceways/jumper_size"),
            longest=shown_number(longest.value),
            section=longest.section,
        )
    )
