"""What an answer about a pool deck must say: people first, what metal changes, what the model leaves out."""

from __future__ import annotations

from calc.messages import message
from calc.rounded import about, at_most, three_figures
from calc.touch.deck.deck_fields import RING, SHELL
from calc.touch.deck.deck_profile import Profile
from calc.trace import Trace, marked_section

PERIMETER = "places/pool_perimeter"
TESTS = "places/deck_tests"
PLACE = "planes/pool_ring_distance"


def warn_of_water(trace: Trace) -> None:
    """Say what to do when anyone feels it, and that no voltage here is harmless in water."""
    trace.warn(
        message(
            "If anyone feels a tingle, get everyone out of the water and off the deck, away from metal. Have the "
            "power cut, keep people away, and call a qualified electrician and the utility."
        ),
        grave=True,
    )
    trace.warn(
        message(
            "A current far too small to open a device can stop a swimmer's muscles. No figure here says that anyone "
            "may swim."
        )
    )
    trace.warn(
        message(
            "This does not choose the metal of a deck. The code rule ({section}) and the authority having "
            "jurisdiction decide.",
            section=trace.section(PERIMETER),
        )
    )


def warn_of_steps(
    arrangement: str, profile: Profile, bare: Profile, off: float, rise: float, trace: Trace
) -> bool:
    """Say when metal in the deck makes a step larger than nothing in it would. Gives whether it does.

    off: how far the solution may be off, percent of the rise; "up to" counts it.
    """
    if arrangement == SHELL:
        return False
    inside = profile.inside.part > bare.inside.part
    if inside:
        trace.warn(
            message(
                "This metal raises the step inside the deck: up to {volt} V from foot to foot. With nothing in the "
                "deck it is {bare} V.",
                volt=at_most((profile.inside.part + off / 100) * rise),
                bare=about(bare.inside.part * rise),
            )
        )
    if profile.across.part > bare.across.part:
        trace.warn(
            message(
                "Anyone who steps off the edge of the deck gets up to {volt} V from foot to foot. With nothing in "
                "the deck it is {bare} V.",
                volt=at_most((profile.across.part + off / 100) * rise),
                bare=about(bare.across.part * rise),
            )
        )
    return inside


def note_of_one_wire(arrangement: str, out: float, trace: Trace) -> None:
    """Tell what full-size tests found at one wire, and where the code puts it."""
    if arrangement != RING:
        return
    trace.warn(
        message(
            "Full-size tests with one wire around the pool found more than {current} mA through a person during a "
            "120 V fault ({source}).",
            current=trace.cite(TESTS).value,
            source=trace.section(TESTS),
        )
    )
    place = trace.cite(PLACE)
    row = place.rows[0]
    if not row["least"] <= out <= row["most"]:
        trace.warn(
            message(
                "Where the code permits one wire, it is {least} to {most} in from the inside wall ({section}).",
                least=row["least"],
                most=row["most"],
                section=marked_section(place),
            )
        )


def note_the_model(arrangement: str, shell_too: bool, off: float, rise: float, trace: Trace) -> None:
    """Say what the numbers are, and what they leave out."""
    trace.note(message("This is a model for teaching and checking. It measures nothing on site."))
    trace.note(
        message(
            "Bonding does not remove the rise. A fault holds it until a device opens. A voltage from the utility's "
            "neutral stays all day, and no device opens for it."
        )
    )
    trace.note(
        message(
            "This is what a meter reads with no one there. In uniform soil with no slab, it is the upper bound of "
            "what a person gets. Someone wet from the pool gets the same as with a hand on bonded metal."
        )
    )
    trace.note(
        message(
            "In uniform soil the percentages of the rise do not depend on resistivity, so the form does not ask for "
            "it. The current into the earth does."
        )
    )
    if arrangement != SHELL:
        trace.note(
            message(
                "A dry slab above the metal leaves several times the voltage shown, up to nearly the full rise. It "
                "also holds the current back, until its surface is wet."
            )
        )
    trace.note(message("Left out: an insulating shell, the water, and the slab as a separate layer."))
    if arrangement != SHELL and not shell_too:
        trace.note(message("Only metal in the deck is included, as beside a vinyl or fiberglass shell."))
    trace.note(
        message(
            "Solved in pieces, it may be off by {percent} percent of the rise: {volt} V, up or down.",
            percent=off,
            volt=three_figures(off / 100 * rise),
        )
    )
    trace.note(message("Assumed: wires bare, joined at every crossing, and with no break."))
    trace.note(
        message("Assumed: wires across a side spaced as close to the entered spacing as divides the side evenly.")
    )
