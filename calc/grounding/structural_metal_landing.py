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
                "conductor connects, to the frame in the area served ({section}).",
                section=section(OF_DERIVED),
            )
        )
        trace.note(
            message(
                "Each separately derived system has its own bond. Water piping in the same area must be bonded too, "
                "under another item."
            )
        )
        return
    if supply == "service":
        trace.note(
            message(
                "Connect it to the service equipment enclosure or to the grounded conductor at the "
                "service ({section}).",
                section=section(OF_BUILDING),
            )
        )
    else:
        trace.note(
            message(
                "Connect it to the enclosure of the building's own disconnect ({section}).",
                section=section(OF_BUILDING),
            )
        )
        trace.warn(
            message(
                "Do not connect it to the neutral there: in a building supplied by a feeder, keep the neutral isolated "
                "from metal ({section}).",
                section=section("naming/separate_building"),
            )
        )
    _note_existing_conductor(trace)
    trace.note(
        message(
            "The connection must be accessible. Some welded or compression connections on fireproofed steel are "
            "excepted ({section}).",
            section=section("grounding/structural_metal_joint"),
        )
    )
    trace.note(
        message(
            "Secure and protect it like a grounding electrode conductor. Bond a steel raceway around it at both ends "
            "({section}).",
            section=section("grounding/structural_metal_bond_installation"),
        )
    )


def _note_existing_conductor(trace: Trace) -> None:
    existing = trace.cite("grounding/structural_metal_existing_conductor")
    if existing.rows[0]["measure"] == "table":
        trace.note(
            message(
                "It may also connect to a grounding electrode conductor, or to an electrode in use, if that conductor "
                "is no smaller than the bonding jumper table requires ({section}).",
                section=existing.section,
            )
        )
    else:
        trace.note(
            message(
                "It may also connect to a grounding electrode conductor, or to an electrode in use, if that conductor "
                "is large enough ({section}).",
                section=existing.section,
            )
        )
