"""What an estimate of an electrode says: its range, what it takes for granted, and what it is worth."""

from __future__ import annotations

import math

from calc.electrodes.electrode_shape import Shape
from calc.fault.circuit.ranges import Between
from calc.known import known
from calc.messages import Message, message
from calc.rounded import about, at_least, at_most
from calc.trace import Trace, marked_section, shown_number

SEASON = "electrodes/season"
LONGEST_ROD = "electrodes/longest_rod"
MIN_LENGTH = {
    "rod": "places/rod_electrode",
    "ring": "places/ring_electrode",
    "concrete-encased": "places/concrete_encased_electrode",
}
MIN_PLATE = "places/plate_electrode"
SIDES = 2  # of a plate, both in the soil


def headline_of(ohm: Between, known: bool) -> Message:
    """Return the range in two digits; a known soil is that of one day."""
    if known:
        return message(
            "About {likely} ohm in the soil as entered, up to {high} ohm when it is dry or frozen",
            likely=about(ohm.likely),
            high=at_most(ohm.high),
        )
    return message(
        "{likely} ohm likely, {low} to {high} ohm possible",
        likely=about(ohm.likely),
        low=at_least(ohm.low),
        high=at_most(ohm.high),
    )


def too_small(electrode: str, length: float | None, width: float | None, trace: Trace) -> Message | None:
    """Return that the code does not count this as an electrode; None where it may. length, width: ft."""
    if electrode in MIN_LENGTH:
        least = trace.cite(MIN_LENGTH[electrode])
        if known(length) >= least.value:
            return None
        words = {"feet": least.value, "section": marked_section(least)}
        return message("Too short to qualify as an electrode: the code requires {feet} ft ({section}).", **words)
    if electrode != "plate":
        return None
    least = trace.cite(MIN_PLATE)
    if round(SIDES * known(length) * known(width), 9) >= least.value:
        return None
    words = {"area": least.value, "section": marked_section(least)}
    return message(
        "Too small to qualify as an electrode: the code requires {area} ft² in the soil ({section}).", **words
    )


def detail_of(form: Shape, electrode: str, concrete_resistivity: float | None) -> Message:
    """Return what the range takes for granted, and that only a measurement tells."""
    if form.worst is not None:
        return message("The first is a round ring, the last a very narrow one. An estimate. Only a measurement tells.")
    if electrode == "concrete-encased" and concrete_resistivity is None:
        return message("While its concrete stays damp; dry, it has many times more. Only a measurement tells.")
    return message("An estimate. Only a measurement tells.")


def remark_on_length(electrode: str, length: float | None, trace: Trace) -> None:
    """Warn of a rod longer than any usual one: soil is seldom alike so far down."""
    longest = trace.cite(LONGEST_ROD).value if electrode == "rod" else math.inf
    if length is not None and length > longest:
        trace.warn(
            message(
                "A rod of {feet} ft is longer than the usual {most} ft, and soil is seldom uniform that far down. "
                "Check the length.",
                feet=shown_number(length),
                most=longest,
            )
        )


def note_what_it_is_worth(electrode: str, rods: int, trace: Trace) -> None:
    """Note what season does, where one electrode may stand alone, and that none clears a fault."""
    season = trace.cite(SEASON).rows[0]
    trace.note(
        message(
            "Season, rain and frost change the resistance of one electrode {least} to {most} times.",
            least=season["least"],
            most=season["most"],
        )
    )
    if electrode in ("rod", "plate") and rods == 1:
        limit = trace.cite("grounding/rod_needs_second")
        trace.note(
            message(
                "A single rod, pipe or plate goes without a second electrode only where it measures {limit} ohm or "
                "less ({section}). An estimate is not enough.",
                limit=limit.value,
                section=limit.section,
            )
        )
    trace.note(
        message(
            "No electrode clears a fault on ordinary circuits, however good: the earth is never the fault path "
            "({section}).",
            section=trace.section("naming/auxiliary_electrode"),
        ),
        grave=True,
    )


def assumptions_of(electrode: str) -> tuple[Message, ...]:
    """Return what is assumed of the soil and of this electrode."""
    own = {
        "rod": message("each rod begins at the surface and stands upright"),
        "ring": message("the ring is level"),
        "buried-wire": message("the wire is straight and level"),
        "plate": message("the plate or strip lies flat"),
        "concrete-encased": message("one bar along the middle of a straight footing, its concrete as a round shell"),
    }
    return (message("the soil is the same all around and far down"), own[electrode])
