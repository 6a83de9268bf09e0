"""For each name, the names that are mistaken for it, and what tells them apart."""

from __future__ import annotations

from calc.identify import classify as name
from calc.identify.names import NAMES
from calc.messages import Message, message
from calc.trace import Trace

_TO_ELECTRODE = message("that one runs to a grounding electrode.")
_PAST_DEVICE = message(
    "that one is on the load side of an overcurrent device and is sized from its rating. Here there is none ahead."
)
_AHEAD_OF_DEVICE = message("that one is ahead of the first overcurrent device. Here there is one ahead.")
_AT_SERVICE = message("that one connects neutral to metal, and only in a service disconnect enclosure.")
_AT_SOURCE = message(
    "that one connects neutral to metal, and only at a separately derived system or its first disconnect."
)
_WITH_CIRCUIT = message("that one runs with a circuit to equipment.")
_METAL_TO_METAL = message("that one bonds metal parts ahead of the first overcurrent device.")

_NEAR = {
    name.MAIN: {
        name.SYSTEM: message("that one is at a separately derived system, such as a transformer. This is a service."),
        name.SUPPLY_SIDE: message(
            "that one connects metal to metal ahead of the overcurrent device. This one connects neutral to metal."
        ),
        name.EQUIPMENT_CONDUCTOR: message(
            "that one is on the load side of an overcurrent device and is sized from its rating."
        ),
        name.ELECTRODE_CONDUCTOR: _TO_ELECTRODE,
    },
    name.SYSTEM: {
        name.MAIN: message("that one is in a service disconnect enclosure. This source is not a service."),
        name.SUPPLY_SIDE: message("that one connects the metal of the source to the metal of its first disconnect."),
        name.EQUIPMENT_CONDUCTOR: message(
            "that one is on the load side of an overcurrent device and is sized from its rating."
        ),
        name.ELECTRODE_CONDUCTOR: _TO_ELECTRODE,
    },
    name.SUPPLY_SIDE: {
        name.EQUIPMENT_JUMPER: _PAST_DEVICE,
        name.EQUIPMENT_CONDUCTOR: _PAST_DEVICE,
        name.MAIN: _AT_SERVICE,
        name.SYSTEM: _AT_SOURCE,
        name.ELECTRODE_CONDUCTOR: _TO_ELECTRODE,
    },
    name.EQUIPMENT_JUMPER: {
        name.SUPPLY_SIDE: _AHEAD_OF_DEVICE,
        name.EQUIPMENT_CONDUCTOR: message(
            "that one is the path that runs with the circuit. This one bridges a gap in it."
        ),
        name.MAIN: _AT_SERVICE,
    },
    name.EQUIPMENT_CONDUCTOR: {
        name.EQUIPMENT_JUMPER: message("that one bridges a gap in the path. This one is the path."),
        name.SUPPLY_SIDE: _AHEAD_OF_DEVICE,
        name.ELECTRODE_CONDUCTOR: message(
            "that one runs to a grounding electrode. The earth is not a path that will trip a breaker."
        ),
        name.GROUNDED: message("that one carries load current. This one carries current only during a fault."),
    },
    name.ELECTRODE_CONDUCTOR: {
        name.EQUIPMENT_CONDUCTOR: _WITH_CIRCUIT,
        name.ELECTRODE_JUMPER: message("that one connects one grounding electrode to another."),
        name.MAIN: _AT_SERVICE,
        name.SUPPLY_SIDE: _METAL_TO_METAL,
    },
    name.ELECTRODE_JUMPER: {
        name.ELECTRODE_CONDUCTOR: message(
            "that one starts at the system or its enclosure. This one starts at an electrode."
        ),
        name.EQUIPMENT_JUMPER: message(
            "that one bridges a gap in a circuit's equipment grounding path, on the load side of an overcurrent device."
        ),
        name.PIPING_JUMPER: message("that one bonds piping or steel that is not used as a grounding electrode."),
    },
    name.METER_JUMPER: {
        name.ELECTRODE_CONDUCTOR: message("that one connects to the pipe. This one bridges a break in it."),
        name.PIPING_JUMPER: message(
            "that one bonds the pipe to the electrical system. This one only keeps the pipe continuous."
        ),
        name.EQUIPMENT_JUMPER: message(
            "that one bridges a gap in a circuit's equipment grounding path, on the load side of an overcurrent device."
        ),
    },
    name.GROUNDED: {
        name.EQUIPMENT_CONDUCTOR: message("that one is grounded too, but carries current only during a fault."),
        name.ELECTRODE_CONDUCTOR: _TO_ELECTRODE,
        name.MAIN: message("that one connects this conductor to metal, at the service."),
        name.SYSTEM: message("that one connects this conductor to metal, at a separately derived system."),
    },
    name.PIPING_JUMPER: {
        name.ELECTRODE_CONDUCTOR: _TO_ELECTRODE,
        name.EQUIPMENT_CONDUCTOR: _WITH_CIRCUIT,
        name.SUPPLY_SIDE: message("that one bonds raceways and enclosures, not pipes or steel."),
    },
    name.INTERSYSTEM: {
        name.ELECTRODE_CONDUCTOR: message("that one grounds the power system."),
        name.EQUIPMENT_CONDUCTOR: _WITH_CIRCUIT,
        name.SUPPLY_SIDE: _METAL_TO_METAL,
    },
    name.NO_CONDUCTOR: {
        name.MAIN: _AT_SERVICE,
        name.SYSTEM: _AT_SOURCE,
        name.EQUIPMENT_CONDUCTOR: message("that one connects to the grounding bar, never to the neutral here."),
        name.ELECTRODE_CONDUCTOR: message(
            "that one starts at the service, the source or a grounding bar, not at this neutral."
        ),
    },
}


def near_names(name_key: str) -> dict[str, Message]:
    """Return the names near a name with what tells each apart."""
    return _NEAR[name_key]


def note_near_names(name_key: str, trace: Trace) -> None:
    """Note for each near name why it is not the right one, with the section that defines it."""
    for near, reason in _NEAR[name_key].items():
        trace.note(
            message(
                "Not “{near}” ({section}): {reason}",
                near=NAMES[near].label,
                section=trace.section(NAMES[near].defined),
                reason=reason,
            )
        )
