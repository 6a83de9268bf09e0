"""The longest way back in words: its headline, and what a real source and an arc leave of it."""

from __future__ import annotations

from dataclasses import dataclass

import calc.fault.return_path.return_path_fields as ask
from calc.fault.return_path.return_path import Path, feet
from calc.known import known
from calc.messages import Message, message
from calc.rounded import THREE, at_least, at_most
from calc.trace import Trace, shown_number

SOURCE_MULTIPLE = 10  # of the current wanted: an example of a source, no rule


@dataclass(frozen=True)
class Others:
    """The shortest length, ft, with a source of so many ampere and through an arc of so many volt; None if entered."""

    source_ampere: float
    with_source: int | None
    arc_volt: float
    with_arc: int | None


def others_of(
    way: Path, volt: float, arc: float, available: float | None, ampere: float, trace: Trace
) -> Others:
    """Return the shortest length by the other source and through an arc. way: the worst one; volt, ampere as wanted."""
    source_ampere, arc_volt = SOURCE_MULTIPLE * ampere, trace.cite(ask.ARC_RULE).value
    source = volt / available if available else 0.0
    return Others(
        source_ampere,
        None if available else feet(way.reach(volt, arc, volt / source_ampere, ampere)),
        arc_volt,
        None if arc else feet(way.reach(volt, arc_volt, source, ampere)),
    )


def headline_of(
    found: dict[str, int], length: float | None, available: float | None, way: Path, at: tuple[float, float, float]
) -> Message:
    """Return whether the run to judge, ft, brings the current, else the shortest length; `at`: volt, arc, ampere."""
    volt, arc, ampere = at
    judged = within(found, length)
    words = {"feet": shown_number(length or 0), "ampere": shown_number(ampere)}
    if judged == "not-asked":
        return _shortest(found, available)
    if judged == "no":
        return message("Your {feet} ft run is too long for {ampere} A", **words)
    if judged == "not-sure":
        return message("Your {feet} ft run might not deliver {ampere} A", **words)
    if available is not None:
        return message("Your {feet} ft run delivers {ampere} A", **words)
    needed = way.available(volt, arc, ampere, known(length))
    if needed is None:
        return message("Your {feet} ft run delivers {ampere} A with an infinite source only", **words)
    return message(
        "Your {feet} ft run delivers {ampere} A where {needed} A or more is available",
        needed=at_most(needed, THREE),
        **words,
    )


def detail_of(
    found: dict[str, int], length: float | None, available: float | None, others: Others, ampere: float, wire: Message
) -> Message:
    """Return what a real source and an arc leave of the shortest length, and the current and wires that it is for."""
    told = [] if length is None else [_shortest(found, available)]
    if length is None and others.with_source is not None and found["low"]:
        told.append(
            message(
                "With {ampere} A available, {feet} ft",
                ampere=shown_number(others.source_ampere),
                feet=at_least(others.with_source, THREE),
            )
        )
    if others.with_arc is not None and found["low"]:
        told.append(
            message(
                "Through an arc, by trade practice {volt} V, {feet} ft",
                volt=shown_number(others.arc_volt),
                feet=at_least(others.with_arc, THREE),
            )
        )
    told.append(message("{ampere} A, {wire}", ampere=shown_number(ampere), wire=wire))
    return message("{told}.", told=". ".join(map(str, told)))


def _shortest(found: dict[str, int], available: float | None) -> Message:
    """Return the shortest length, and for which source it is where none was entered."""
    if not found["high"]:
        return message("Not at any length")
    if not found["low"]:
        return message("No length is sure")
    shown = at_least(found["low"], THREE)
    if available is None:
        return message("Up to {feet} ft with an infinite source", feet=shown)
    return message("Up to {feet} ft", feet=shown)


def within(found: dict[str, int], length: float | None) -> str:
    """Return whether a run to judge is within the shortest of the lengths: yes, not-sure, no or not-asked."""
    if length is None:
        return "not-asked"
    return "yes" if length <= found["low"] else "not-sure" if length <= found["high"] else "no"
