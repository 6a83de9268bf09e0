"""What goes with the answer about an entry: the size of the jumper, another way at a service, tight metal."""

from __future__ import annotations

from calc.messages import CalculatorName, message
from calc.raceways.entry_bonding import JUMPER, JUMPER_IF_PATH, ORDINARY, OVER, SERVICE
from calc.trace import Trace


def notes_on_entry(need: str, place: str, knockout: str, fitting: str | None, trace: Trace) -> None:
    """Note how the entry is made; `need` as calc.raceways.entry_bonding gives it, the rest as entered."""
    section = trace.section
    if need in (JUMPER, JUMPER_IF_PATH):
        _note_size(place, trace)
    if place == "service":
        trace.note(
            message(
                "Instead, a jumper may bond the raceway or enclosure to the grounded service conductor ({section}).",
                section=section(SERVICE),
            )
        )
    if place == "service" and fitting == "shoulder-connector" and knockout == "right-size":
        trace.warn(
            message(
                "Some read {section} so that a threadless connector made up tight is enough. Its locknut is an "
                "ordinary one, so this answer keeps to the stricter reading. Ask the authority.",
                section=section(SERVICE),
            )
        )
    if need not in (ORDINARY, JUMPER_IF_PATH) and place != "service":
        trace.note(
            message("A green wire inside does not spare it: {section} names no such exception.", section=section(OVER))
        )
    if need == ORDINARY and place == "derived-system":
        trace.note(
            message(
                "No device is ahead of it here. Where the raceway itself is the supply-side bonding jumper, it is not "
                "flexible ({section}).",
                section=section("raceways/supply_side_raceway"),
            )
        )
    trace.note(
        message(
            "Fitting made for it, seated, tight; paint removed where metal meets metal ({paint}). Raceway and boxes "
            "make one continuous path ({joined}).",
            paint=section("raceways/continuity"),
            joined=section("raceways/joined_raceways"),
        )
    )


def _note_size(place: str, trace: Trace) -> None:
    if place == "load-side":
        trace.note(
            message(
                "The jumper goes by the overcurrent device ahead: look under {jumper} ({section}).",
                jumper=CalculatorName("equipment-bonding-jumper", message("equipment bonding jumper")),
                section=trace.section("raceways/jumper_size"),
            )
        )
        return
    trace.note(
        message(
            "The jumper goes by the hot conductors in the raceway: look under {jumper} ({section}).",
            jumper=CalculatorName("supply-side-bonding-jumper", message("supply-side bonding jumper")),
            section=trace.section("naming/supply_side_bonding_jumper"),
        )
    )
