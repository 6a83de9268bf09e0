"""The jumper that bonds a metal elbow: its name, its size where it can be known, where it lands and how it runs."""

from __future__ import annotations

from calc.conductors.least import refuse_below_service, refuse_below_wiring
from calc.grounding.size_for_circuit import HotConductors, Sized, size_for_circuit
from calc.jumpers.supply_side_size import CAP, DERIVED_CAP, supply_side_size
from calc.messages import Message, message
from calc.trace import Trace, shown_number

SUPPLY_SIDE = "supply-side bonding jumper"
LOAD_SIDE = "equipment bonding jumper"
NAME_WORDS = {SUPPLY_SIDE: message("supply-side bonding jumper"), LOAD_SIDE: message("equipment bonding jumper")}


def jumper_of(circuit: str) -> str:
    """Return the name of the jumper: ahead of the first overcurrent device, or past one."""
    return LOAD_SIDE if circuit == "feeder-or-branch" else SUPPLY_SIDE


def size_of_bond(
    circuit: str,
    conductor: str | None,
    sets: int,
    conductor_metal: str,
    device: float | None,
    metal: str,
    trace: Trace,
) -> Sized | None:
    """Return the size of the jumper, or None where the field that sizes it was left out.

    Raises: NotCovered beyond the tables, FieldError for conductors too small. Source: 250.102(C) by conductors,
    250.102(D) by device.
    """
    if circuit == "feeder-or-branch":
        refuse_below_wiring(conductor, conductor_metal, trace)
        trace.cite("raceways/jumper_size")
        hot = HotConductors(conductor, metal=conductor_metal, sets=sets)
        return None if device is None else size_for_circuit(device, metal, hot, trace)
    trace.cite("naming/supply_side_bonding_jumper")
    if conductor is None:
        return None
    refuse = refuse_below_service if circuit == "service" else refuse_below_wiring
    refuse(conductor, conductor_metal, trace)
    cap_rule = DERIVED_CAP if circuit == "derived-system" else CAP
    return Sized(supply_side_size(conductor, sets, conductor_metal, metal, trace, cap_rule))


def how_to_size(circuit: str) -> Message:
    """Return the sentence that says what sizes the jumper, where it is not sized."""
    if circuit == "feeder-or-branch":
        return message("Size it from the upstream overcurrent device.")
    return message("Size it from the hot conductors in this raceway.")


def note_the_bond(circuit: str, joined: str, trace: Trace) -> None:
    """Note where the jumper lands and how it runs."""
    section = trace.section
    if circuit == "service":
        trace.note(
            message(
                "Connect it to the grounded conductor, or in an ungrounded system to the grounding electrode conductor "
                "({section}).",
                section=section("raceways/service_raceway_connected"),
            )
        )
    elif circuit == "derived-system":
        trace.note(
            message(
                "It bonds the metal on the supply side of the separately derived system ({section}).",
                section=section("raceways/other_raceway_connected"),
            )
        )
    else:
        trace.note(
            message(
                "Connect it to the equipment grounding conductor of the circuit ({section}).",
                section=section("raceways/other_raceway_connected"),
            )
        )
    if joined == "metal":
        trace.note(message("A metal raceway that is bonded and has tight joints may bond the elbow. Check that."))
    longest = trace.cite("raceways/jumper_outside_longest")
    trace.note(
        message(
            "A jumper outside must be no longer than {longest} ft and must follow the raceway ({section}); at outdoor "
            "poles it may be longer ({pole}).",
            longest=shown_number(longest.value),
            section=longest.section,
            pole=section("jumpers/jumper_outside_at_poles"),
        )
    )
