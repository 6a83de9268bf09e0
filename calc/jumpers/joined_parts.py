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
                "Make the ends electrically continuous with a bonding jumper or with a fitting that does it "
                "({section}).",
                section=section("raceways/loosely_jointed"),
            )
        )
    elif joins == "receptacle":
        trace.step(
            message("From a receptacle to its metal box: size the jumper from the branch-circuit overcurrent device."),
            cites=("raceways/receptacle_jumper",),
        )
        trace.note(
            message(
                "No jumper is required with bare metal contact at a surface-mounted box, with a self-grounding "
                "receptacle, with a listed floor box, or with an isolated-ground receptacle that has its own grounding "
                "wire ({section}).",
                section=section("raceways/receptacle_without_jumper"),
            )
        )
    elif joins == "flexible-raceway":
        _note_flexible_raceways(routing, trace)


def _note_flexible_raceways(routing: str, trace: Trace) -> None:
    trace.note(
        message(
            "To see whether the flexible raceway may serve as the fault path without a jumper, look under {path} "
            "({section}).",
            path=CalculatorName("raceway-as-grounding-path", message("raceway as grounding path")),
            section=trace.section("raceways/nonmetallic_raceway"),
        )
    )
    moves = trace.cite("raceways/flexibility_after_installation")
    if routing != "inside" and moves.value == "wire":
        trace.warn(
            message(
                "Where it moves or vibrates, the {edition} edition calls for a wire with the circuit, not a jumper "
                "outside ({section}).",
                edition=trace.edition,
                section=moves.section,
            )
        )
