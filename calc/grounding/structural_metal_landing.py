"""Where the bond of a building frame may land, and how it is installed."""

from __future__ import annotations

from calc.grounding.structural_metal_need import OF_BUILDING, OF_DERIVED
from calc.messages import message
from calc.trace import Trace


def note_frame_landing(supply: str, trace: Trace) -> None:
    """Note where the bond of `supply` (a value of the calculator's field) may be connected, and how."""
    section = trace.section
    if supply == "separately-derived-system":
        trace.note(
            message(
                "Run it from the grounded conductor of the source, at the point where the grounding electrode "
                "conductor is joined, to the frame in the area served ({section}).",
                section=section(OF_DERIVED),
            )
        )
        trace.note(
            message("Each such source has its own bond. Water piping in the same area is bonded too, by another item.")
        )
        return
    if supply == "service":
        trace.note(
            message(
                "Land it on the service equipment enclosure or on the grounded conductor at the service ({section}).",
                section=section(OF_BUILDING),
            )
        )
    else:
        trace.note(
            message(
                "Land it on the enclosure of the building's own disconnect ({section}).", section=section(OF_BUILDING)
            )
        )
        trace.warn(
            message(
                "Not on the neutral there: in a building fed by a feeder it stays apart from metal ({section}).",
                section=section("naming/separate_building"),
            )
        )
    _note_existing_conductor(trace)
    trace.note(
        message(
            "The joint stays accessible. Some welded or pressed joints on fireproofed steel need not be ({section}).",
            section=section("grounding/structural_metal_joint"),
        )
    )
    trace.note(
        message(
            "Secure and protect it like a grounding electrode conductor. Steel pipe around it is bonded to it at both "
            "ends ({section}).",
            section=section("grounding/structural_metal_bond_installation"),
        )
    )


def _note_existing_conductor(trace: Trace) -> None:
    existing = trace.cite("grounding/structural_metal_existing_conductor")
    if existing.rows[0]["measure"] == "table":
        trace.note(
            message(
                "A grounding electrode conductor will do too, or an electrode in use, where its conductor is no "
                "smaller than the table of these jumpers asks for ({section}).",
                section=existing.section,
            )
        )
    else:
        trace.note(
            message(
                "A grounding electrode conductor will do too, or an electrode in use, where its conductor is large "
                "enough ({section}).",
                section=existing.section,
            )
        )
