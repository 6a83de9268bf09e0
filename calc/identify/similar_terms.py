"""For each name, the names that are mistaken for it, and what tells them apart."""

from __future__ import annotations

from calc.identify import classify as name
from calc.identify.names import NAMES
from calc.messages import Message, message
from calc.trace import Trace

_TO_ELECTRODE = message("that one runs to an electrode in the earth.")
_PAST_DEVICE = message("that one is past an overcurrent device and goes by its rating. Here none is ahead.")
_AHEAD_OF_DEVICE = message("that one is ahead of the first overcurrent device. Here one is ahead.")
_AT_SERVICE = message("that one ties neutral to metal, and only in a service disconnect enclosure.")
_AT_SOURCE = message("that one ties neutral to metal, and only at a source of its own or its first disconnect.")
_WITH_CIRCUIT = message("that one runs with a circuit to equipment.")
_METAL_TO_METAL = message("that one bonds metal parts ahead of the first overcurrent device.")

_NEAR = {
    name.MAIN: {
        name.SYSTEM: message("that one stands at a source of its own, such as a transformer. This is a service."),
        name.SUPPLY_SIDE: message(
            "that one joins metal to metal ahead of the device. This one joins neutral and metal."
        ),
        name.EQUIPMENT_CONDUCTOR: message("that one runs past an overcurrent device and goes by its rating."),
        name.ELECTRODE_CONDUCTOR: _TO_ELECTRODE,
    },
    name.SYSTEM: {
        name.MAIN: message("that one stands in a service disconnect enclosure. This source is no service."),
        name.SUPPLY_SIDE: message("that one joins the metal of the source to that of its first disconnect."),
        name.EQUIPMENT_CONDUCTOR: message("that one runs past an overcurrent device and goes by its rating."),
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
        name.ELECTRODE_CONDUCTOR: message("that one runs to an electrode. The earth is no path that opens a breaker."),
        name.GROUNDED: message("that one carries load current. This one carries current only in a fault."),
    },
    name.ELECTRODE_CONDUCTOR: {
        name.EQUIPMENT_CONDUCTOR: _WITH_CIRCUIT,
        name.ELECTRODE_JUMPER: message("that one joins one electrode to another."),
        name.MAIN: _AT_SERVICE,
        name.SUPPLY_SIDE: _METAL_TO_METAL,
    },
    name.ELECTRODE_JUMPER: {
        name.ELECTRODE_CONDUCTOR: message(
            "that one starts at the system or its enclosure. This one starts at an electrode."
        ),
        name.EQUIPMENT_JUMPER: message("that one bridges a gap in the path of a circuit, past an overcurrent device."),
        name.PIPING_JUMPER: message("that one ties in piping or steel that is not used as an electrode."),
    },
    name.METER_JUMPER: {
        name.ELECTRODE_CONDUCTOR: message("that one lands on the pipe. This one bridges a break in it."),
        name.PIPING_JUMPER: message(
            "that one ties the pipe to the electrical system. This one only keeps the pipe whole."
        ),
        name.EQUIPMENT_JUMPER: message("that one bridges a gap in the path of a circuit, past an overcurrent device."),
    },
    name.GROUNDED: {
        name.EQUIPMENT_CONDUCTOR: message("that one is grounded too, but carries current only in a fault."),
        name.ELECTRODE_CONDUCTOR: _TO_ELECTRODE,
        name.MAIN: message("that one ties this conductor to metal, at the service."),
        name.SYSTEM: message("that one ties this conductor to metal, at a source of its own."),
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
        name.EQUIPMENT_CONDUCTOR: message("that one lands on the grounding bar, never on the neutral here."),
        name.ELECTRODE_CONDUCTOR: message(
            "that one starts at the service, the source or a grounding bar, not at this neutral."
        ),
    },
}


def near_names(given: str) -> dict[str, Message]:
    """Return the names near a name with what tells each apart."""
    return _NEAR[given]


def note_near_names(given: str, trace: Trace) -> None:
    """Note for each near name why it is not the right one, with the section that defines it."""
    for near, reason in _NEAR[given].items():
        trace.note(
            message(
                "Not “{near}” ({section}): {reason}",
                near=NAMES[near].label,
                section=trace.section(NAMES[near].defined),
                reason=reason,
            )
        )
