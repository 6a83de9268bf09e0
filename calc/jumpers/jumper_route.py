"""How a bonding jumper runs: inside its raceway, or outside within a length and along the raceway."""

from __future__ import annotations

from calc.calculator import require
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.messages import Message, message
from calc.trace import Trace, shown_number

LONGEST = "raceways/jumper_outside_longest"
POLE = "jumpers/jumper_outside_at_poles"
PROTECTION = "raceways/jumper_protection"
UNPROTECTED = "grounding/electrode_conductor_unprotected"


def reasons_against_route(routing: str, length: float | None, along: str, trace: Trace) -> list[Message]:
    """Return what is wrong with the route, longest first: too long outside, not along the raceway.

    routing: "inside", "outside" or "outside-at-pole"; length: ft, needed outside; along: "yes" or "no".
    Raises: FieldError when the length is needed and left out. Source: rules named above.
    """
    if routing == "inside":
        trace.step(message("Inside the raceway, the length is not limited."), cites=("raceways/jumper_inside",))
        return []
    if routing == "outside-at-pole":
        trace.step(
            message("At an outdoor pole, a jumper outside may be longer and is not required to follow the raceway."),
            cites=(POLE,),
        )
        return []
    limit = trace.cite(LONGEST).value
    feet = require(length, "length")
    longest, shown = shown_number(limit), shown_number(feet)
    trace.step(
        message(
            "Outside, it must be no longer than {longest} ft and must follow the raceway. Entered: {length} ft.",
            longest=longest,
            length=shown,
        ),
        longest,
        "ft",
        (LONGEST,),
    )
    against: list[Message] = []
    if feet > limit:
        against.append(message(
            "It is {length} ft long outside, over the {longest} ft limit.",
            length=shown, longest=longest,
        ))
    if along == "no":
        against.append(message("Outside, it must follow the raceway."))
    return against


def note_the_route(size: str, routing: str, trace: Trace) -> None:
    """Note how a jumper of `size` is marked inside or protected outside."""
    if routing == "inside":
        trace.note(
            message(
                "Bare or green, and connected in boxes like an equipment grounding conductor ({section}).",
                section=trace.section("raceways/jumper_inside"),
            )
        )
        return
    if not note_small_wire_outside(size, trace):
        trace.note(
            message(
                "Outside: secure it, and protect it where it is exposed to physical damage ({section}).",
                section=trace.section(PROTECTION),
            )
        )


def note_small_wire_outside(size: str, trace: Trace) -> bool:
    """Note that a wire of `size` outside is too small to run unprotected; give whether it is."""
    smallest = trace.cite(UNPROTECTED).value
    if area(size, trace.edition) >= area(smallest, trace.edition):
        return False
    trace.note(
        message(
            "Outside and smaller than {smallest}: run it in a raceway or cable armor, as for a grounding electrode "
            "conductor ({jumper}; {size}).",
            smallest=shown_size(smallest),
            jumper=trace.section(PROTECTION),
            size=trace.section(UNPROTECTED),
        )
    )
    return True
