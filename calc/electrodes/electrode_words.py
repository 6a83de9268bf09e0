"""What an estimate of an electrode says: its range, what it takes for granted, and what it is worth."""

from __future__ import annotations

import math

from calc.electrodes.electrode_shape import Shape
from calc.fault.ranges import Between
from calc.rounded import about, at_least, at_most
from calc.words import Sentence, say
from calc.working import Working, marked_section, shown_number

SEASON = "electrodes/season"
LONGEST_ROD = "electrodes/longest_rod"
LEAST_LENGTH = {
    "rod": "places/rod_electrode",
    "ring": "places/ring_electrode",
    "concrete-encased": "places/concrete_encased_electrode",
}
LEAST_PLATE = "places/plate_electrode"
SIDES = 2  # of a plate, both in the soil


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


def too_small(electrode: str, length: float | None, width: float | None, working: Working) -> Sentence | None:
    """Give that the code does not count this as an electrode; None where it may. length, width: ft."""
    if electrode in LEAST_LENGTH:
        least = working.cite(LEAST_LENGTH[electrode])
        if length >= least.value:
            return None
        words = {"feet": least.value, "section": marked_section(least)}
        return say("Too short to count as an electrode: the code asks {feet} ft ({section}).", **words)
    if electrode != "plate":
        return None
    least = working.cite(LEAST_PLATE)
    if round(SIDES * length * width, 9) >= least.value:
        return None
    words = {"area": least.value, "section": marked_section(least)}
    return say("Too small to count as an electrode: the code asks {area} ft² in the soil ({section}).", **words)


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
