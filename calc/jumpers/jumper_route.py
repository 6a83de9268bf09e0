"""How a bonding jumper runs: inside its raceway, or outside within a length and along the raceway."""

from __future__ import annotations

from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.declare import needed
from calc.words import Sentence, say
from calc.working import Working, shown_number

LONGEST = "raceways/jumper_outside_longest"
POLE = "jumpers/jumper_outside_at_poles"
PROTECTION = "raceways/jumper_protection"
UNPROTECTED = "grounding/electrode_conductor_unprotected"


def reasons_against_route(routing: str, length: float | None, along: str, working: Working) -> list[Sentence]:
    """Give what is wrong with the route, longest first: too long outside, not along the raceway.

    routing: "inside", "outside" or "outside-at-pole"; length: ft, needed outside; along: "yes" or "no".
    Raises: Mend when the length is needed and left out. Source: rules named above.
    """
    if routing == "inside":
        working.step(say("Inside the raceway its length is not limited."), cites=("raceways/jumper_inside",))
        return []
    if routing == "outside-at-pole":
        working.step(say("At an outdoor pole it may be longer outside and need not follow the raceway."), cites=(POLE,))
        return []
    limit = working.cite(LONGEST).value
    given = needed(length, "length")
    longest, shown = shown_number(limit), shown_number(given)
    working.step(
        say(
            "Outside it is at most {longest} ft long and follows the raceway. The one entered: {length} ft.",
            longest=longest,
            length=shown,
        ),
        longest,
        "ft",
        (LONGEST,),
    )
    against = []
    if given > limit:
        against.append(say("It is {length} ft long outside; {longest} ft is the most.", length=shown, longest=longest))
    if along == "no":
        against.append(say("Outside it must follow the raceway."))
    return against


def note_the_route(size: str, routing: str, working: Working) -> None:
    """Note how a jumper of `size` is marked inside or protected outside."""
    if routing == "inside":
        working.note(
            say(
                "Bare or green, and joined in boxes like an equipment grounding conductor ({section}).",
                section=working.section("raceways/jumper_inside"),
            )
        )
        return
    if not note_small_wire_outside(size, working):
        working.note(
            say(
                "Outside: fasten it, and protect it where it may be hit ({section}).",
                section=working.section(PROTECTION),
            )
        )


def note_small_wire_outside(size: str, working: Working) -> bool:
    """Note that a wire of `size` outside is too small to run unprotected; give whether it is."""
    smallest = working.cite(UNPROTECTED).value
    if area(size, working.edition) >= area(smallest, working.edition):
        return False
    working.note(
        say(
            "Outside and smaller than {smallest}: run it in a raceway or armor, as the section on electrode "
            "conductors asks ({jumper}; {size}).",
            smallest=shown_size(smallest),
            jumper=working.section(PROTECTION),
            size=working.section(UNPROTECTED),
        )
    )
    return True
