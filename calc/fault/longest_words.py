"""The longest way back in words: its headline, and what a real source and an arc leave of it."""

from __future__ import annotations

from dataclasses import dataclass

import calc.fault.return_path_fields as ask
from calc.conductors.size import shown_size
from calc.fault.return_path import Path, feet
from calc.rounded import THREE, at_least, at_most
from calc.vocabulary import METAL_WORDS
from calc.words import Sentence, say
from calc.working import Working, shown_number

SOURCE_MULTIPLE = 10  # of the current wanted: an example of a source, no rule


@dataclass(frozen=True)
class Others:
    """The shortest length, ft, with a source of so many ampere and through an arc of so many volt; None if entered."""

    source_ampere: float
    with_source: int | None
    arc_volt: float
    with_arc: int | None


def others_of(
    way: Path, volt: float, arc: float, available: float | None, ampere: float, working: Working
) -> Others:
    """Give the shortest length by the other source and through an arc. way: the worst one; volt, ampere as wanted."""
    source_ampere, arc_volt = SOURCE_MULTIPLE * ampere, working.cite(ask.ARC_RULE).value
    source = volt / available if available else 0.0
    return Others(
        source_ampere,
        None if available else feet(way.reach(volt, arc, volt / source_ampere, ampere)),
        arc_volt,
        None if arc else feet(way.reach(volt, arc_volt, source, ampere)),
    )


def headline_of(found: dict[str, int], available: float | None) -> Sentence:
    """Give the shortest length, and for which source it is where none was entered."""
    if not found["high"]:
        return say("Not at any length")
    if not found["low"]:
        return say("No length is sure")
    shown = at_least(found["low"], THREE)
    if available is None:
        return say("Up to {feet} ft with an unlimited source", feet=shown)
    return say("Up to {feet} ft", feet=shown)


def detail_of(
    found: dict[str, int], length: float | None, others: Others, way: Path, at: tuple, wire: Sentence
) -> Sentence:
    """Give what a real source and an arc leave of the shortest length, and the other two lengths."""
    volt, arc, ampere = at
    told = []
    if others.with_source is not None and found["low"]:
        told.append(
            say(
                "With {ampere} A available {feet} ft",
                ampere=shown_number(others.source_ampere),
                feet=at_least(others.with_source, THREE),
            )
        )
        needed = way.available(volt, arc, ampere, length) if within(found, length) == "yes" else None
        if needed:
            told.append(say("Your run needs {ampere} A available", ampere=at_most(needed, THREE)))
    if others.with_arc is not None and found["low"]:
        told.append(
            say(
                "Through an arc, by trade practice {volt} V, {feet} ft",
                volt=shown_number(others.arc_volt),
                feet=at_least(others.with_arc, THREE),
            )
        )
    told.append(
        say(
            "Likely {likely} ft, at the very best {high} ft, for {ampere} A through {size}",
            likely=at_least(found["likely"], THREE),
            high=at_least(found["high"], THREE),
            ampere=shown_number(ampere),
            size=wire,
        )
    )
    return say("{told}.", told=". ".join(map(str, told)))


def through(out: tuple[str, str], back: tuple[str | None, str] | None) -> Sentence:
    """Give the wires in words: size and metal of the hot conductor and of the way back, None for the raceway."""
    hot = say("{size} {metal}", size=shown_size(out[0]), metal=METAL_WORDS[out[1]])
    if back is None:
        return say("{hot} and back on the raceway", hot=hot)
    return say("{hot} and back on {size} {metal}", hot=hot, size=shown_size(back[0]), metal=METAL_WORDS[back[1]])


def within(found: dict[str, int], length: float | None) -> str:
    """Give whether a run to judge is within the shortest of the lengths: yes, not-sure, no or not-asked."""
    if length is None:
        return "not-asked"
    return "yes" if length <= found["low"] else "not-sure" if length <= found["high"] else "no"
