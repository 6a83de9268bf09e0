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
                "A bonding jumper from the raceway or enclosure to the grounded service conductor is also permitted "
                "({section}).",
                section=section(SERVICE),
            )
        )
    if place == "service" and fitting == "shoulder-connector" and knockout == "right-size":
        trace.warn(
            message(
                "Some read {section} to mean that a threadless connector made up tight is enough. Its locknut is a "
                "standard one, so this answer uses the stricter reading. Ask the authority having jurisdiction.",
                section=section(SERVICE),
            )
        )
    if need not in (ORDINARY, JUMPER_IF_PATH) and place != "service":
        trace.note(
            message(
                "An equipment grounding conductor in the raceway does not replace this bonding: {section} has no such "
                "exception.",
                section=section(OVER),
            ),
            grave=True,
        )
    if need == ORDINARY and place == "derived-system":
        trace.note(
            message(
                "There is no overcurrent device ahead of it here. Where the raceway itself is the supply-side bonding "
                "jumper, it must not be flexible ({section}).",
                section=section("raceways/supply_side_raceway"),
            )
        )
    trace.note(
        message(
            "Use the fitting made for the raceway or cable, fully seated and tight, with paint removed at contact "
            "surfaces ({paint}). Raceway and boxes must form one continuous path ({joined}).",
            paint=section("raceways/continuity"),
            joined=section("raceways/joined_raceways"),
        )
    )


def _note_size(place: str, trace: Trace) -> None:
    if place == "load-side":
        trace.note(
            message(
                "Size the jumper from the upstream overcurrent device: look under {jumper} ({section}).",
                jumper=CalculatorName("equipment-bonding-jumper", message("equipment bonding jumper")),
                section=trace.section("raceways/jumper_size"),
            )
        )
        return
    trace.note(
        message(
            "Size the jumper from the hot conductors in the raceway: look under {jumper} ({section}).",
            jumper=CalculatorName("supply-side-bonding-jumper", message("supply-side bonding jumper")),
            section=trace.section("naming/supply_side_bonding_jumper"),
        )
    )
