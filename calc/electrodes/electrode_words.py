"""What an estimate of an electrode says: its range, what it takes for granted, and what it is worth."""

from __future__ import annotations

import math

from calc.electrodes.electrode_shape import Shape
from calc.fault.ranges import Between
from calc.rounded import about, at_least, at_most
from calc.words import Sentence, say
from calc.working import Working, shown_number

SEASON = "electrodes/season"
LONGEST_ROD = "electrodes/longest_rod"


def headline_of(ohm: Between, known: bool) -> Sentence:
    """Give the range in two digits; a known soil is that of one day."""
    if known:
        return say(
            "About {likely} ohm in the soil as entered, up to {high} ohm when it is dry or frozen",
            likely=about(ohm.likely),
            high=at_most(ohm.high),
        )
    return say(
        "{likely} ohm likely, {low} to {high} ohm possible",
        likely=about(ohm.likely),
        low=at_least(ohm.low),
        high=at_most(ohm.high),
    )


def detail_of(form: Shape, electrode: str, concrete_resistivity: float | None) -> Sentence:
    """Give what the range takes for granted, and that only a measurement tells."""
    if form.worst is not None:
        return say("The first is a round ring, the last a very narrow one. An estimate. Only a measurement tells.")
    if electrode == "concrete-encased" and concrete_resistivity is None:
        return say("While its concrete stays damp; dry, it has many times more. Only a measurement tells.")
    return say("An estimate. Only a measurement tells.")


def remark_on_length(electrode: str, length: float | None, working: Working) -> None:
    """Warn of a rod longer than any usual one: soil is seldom alike so far down."""
    longest = working.cite(LONGEST_ROD).value if electrode == "rod" else math.inf
    if length is not None and length > longest:
        working.warn(
            say(
                "A rod of {feet} ft is longer than the usual {most} ft, and soil is seldom alike so far down. Check "
                "the length.",
                feet=shown_number(length),
                most=longest,
            )
        )


def note_what_it_is_worth(electrode: str, rods: int, working: Working) -> None:
    """Note what season does, where one electrode may stand alone, and that none clears a fault."""
    season = working.cite(SEASON).rows[0]
    working.note(
        say(
            "Season, rain and frost move the resistance of one electrode {least} to {most} times.",
            least=season["least"],
            most=season["most"],
        )
    )
    if electrode in ("rod", "plate") and rods == 1:
        limit = working.cite("grounding/rod_needs_second")
        working.note(
            say(
                "A single rod, pipe or plate stands without a second electrode only where it measures {limit} ohm or "
                "less ({section}). An estimate does not count.",
                limit=limit.value,
                section=limit.section,
            )
        )
    working.note(
        say(
            "No electrode clears a fault on ordinary circuits, however good: the earth is never the fault path "
            "({section}).",
            section=working.section("naming/auxiliary_electrode"),
        )
    )


def assumptions_of(electrode: str) -> tuple[Sentence, ...]:
    """Give what is assumed of the soil and of this electrode."""
    own = {
        "rod": say("each rod begins at the surface and stands upright"),
        "ring": say("the ring is level"),
        "buried-wire": say("the wire is straight and level"),
        "plate": say("the plate or strip lies flat"),
        "concrete-encased": say("one bar along the middle of a straight footing, its concrete as a round shell"),
    }
    return (say("the soil is the same all around and far down"), own[electrode])
