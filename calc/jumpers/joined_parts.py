"""What else holds for the parts that an equipment bonding jumper joins."""

from __future__ import annotations

from calc.messages import CalculatorName, message
from calc.trace import Trace


def note_what_it_joins(joins: str, routing: str, trace: Trace) -> None:
    """Note what the parts ask for: flexible raceways, expansion fittings, receptacles.

    joins: "raceway", "flexible-raceway", "expansion-fitting" or "receptacle"; routing: as in `jumper_route`.
    """
    section = trace.section
    if joins == "expansion-fitting":
        trace.note(
            message(
                "The ends are made continuous by a jumper or by a fitting that does it ({section}).",
                section=section("raceways/loosely_jointed"),
            )
        )
    elif joins == "receptacle":
        trace.step(
            message("From a receptacle to its metal box: the device of the circuit counts."),
            cites=("raceways/receptacle_jumper",),
        )
        trace.note(
            message(
                "No jumper is needed with bare metal contact at a surface box, a self-grounding receptacle, a listed "
                "floor box, or an isolated-ground receptacle with its own wire ({section}).",
                section=section("raceways/receptacle_without_jumper"),
            )
        )
    elif joins == "flexible-raceway":
        _note_flexible_raceways(routing, trace)


def _note_flexible_raceways(routing: str, trace: Trace) -> None:
    trace.note(
        message(
            "Whether the flexible raceway may be the path without a jumper: look under {path} ({section}).",
            path=CalculatorName("raceway-as-grounding-path", message("raceway as grounding path")),
            section=trace.section("raceways/nonmetallic_raceway"),
        )
    )
    moves = trace.cite("raceways/flexibility_after_installation")
    if routing != "inside" and moves.value == "wire":
        trace.warn(
            message(
                "Where it moves or vibrates, the {edition} edition names a wire with the circuit, not a jumper "
                "outside ({section}).",
                edition=trace.edition,
                section=moves.section,
            )
        )
