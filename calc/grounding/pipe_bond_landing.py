"""Where the bond of metal piping may land, and how a thin one is run."""

from __future__ import annotations

from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.grounding.electrode_conductor_notes import UNPROTECTED
from calc.messages import message
from calc.trace import Trace


def note_landing(piping: str, trace: Trace) -> None:
    """Note where the bond of `piping` (a value of the calculator's field) may be connected."""
    section = trace.section
    if piping == "water":
        trace.note(
            message(
                "Connect it to the service equipment enclosure or to the grounded conductor at the service. A "
                "grounding electrode conductor that is large enough is permitted, or an electrode whose conductor is "
                "({section}).",
                section=section("grounding/water_pipe_bond"),
            )
        )
    elif piping == "water-isolated-unit":
        trace.note(
            message(
                "Connect it to the equipment grounding terminal bar of the panelboard or switchboard that feeds the "
                "unit, not of service equipment ({section}).",
                section=section("grounding/water_pipe_bond_isolated_unit"),
            )
        )
    elif piping == "water-separate-building":
        trace.note(
            message(
                "Connect it to the building's own disconnect enclosure, to the equipment grounding conductor run with "
                "the supply, or to a grounding electrode in use ({section}).",
                section=section("grounding/water_pipe_bond_separate_building"),
            )
        )
    elif piping == "water-derived-system":
        trace.note(
            message(
                "Run it from the grounded conductor, at the point where the grounding electrode conductor connects, to "
                "the nearest accessible point on the piping. It is not required under exceptions where the piping or "
                "the metal frame is the electrode ({section}).",
                section=section("grounding/water_pipe_bond_derived_system"),
            )
        )
    else:
        trace.note(
            message(
                "The equipment grounding conductor of that circuit may serve as the bond. Otherwise, connect it to the "
                "service equipment enclosure, the grounded conductor at the service, a grounding electrode conductor "
                "that is large enough, or an electrode whose conductor is ({section}).",
                section=section("grounding/other_metal_piping_bond"),
            )
        )
        trace.note(
            message(
                "Corrugated stainless steel tubing (CSST) may require an additional, larger bond: check the fuel gas "
                "code and the manufacturer's instructions."
            )
        )
    if piping in ("water", "other-metal"):
        trace.note(message("The connection to the pipe must be accessible."))


def note_protection(size: str, piping: str, trace: Trace) -> None:
    """Note that a bond smaller than 6 AWG runs protected, as a grounding electrode conductor does."""
    smallest = trace.cite(UNPROTECTED).value
    if piping == "other-metal" or area(size, trace.edition) >= area(smallest, trace.edition):
        return
    trace.note(
        message(
            "Smaller than {smallest}: run it in a raceway or cable armor ({jumpers}; {section}).",
            smallest=shown_size(smallest),
            jumpers=trace.section("raceways/jumper_protection"),
            section=trace.section(UNPROTECTED),
        )
    )
