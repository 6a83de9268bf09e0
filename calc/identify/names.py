"""The names: what each is called, what the part does, and where the book defines it."""

from __future__ import annotations

from typing import NamedTuple

from calc.identify import classify as name
from calc.messages import Message, message


class Name(NamedTuple):
    """A name: its label, what the part does in one line, and the rule that defines it."""

    label: Message
    does: Message
    defined: str


NAMES = {
    name.MAIN: Name(
        message("Main bonding jumper"),
        message("It ties the neutral to the metal in a service disconnect enclosure."),
        "naming/defined_main_bonding_jumper",
    ),
    name.SYSTEM: Name(
        message("System bonding jumper"),
        message("It ties the neutral of a separately derived system to the metal, at one place."),
        "naming/defined_system_bonding_jumper",
    ),
    name.SUPPLY_SIDE: Name(
        message("Supply-side bonding jumper"),
        message("It bonds metal ahead of the first overcurrent device, so that a fault there finds its way back."),
        "naming/defined_supply_side_bonding_jumper",
    ),
    name.EQUIPMENT_JUMPER: Name(
        message("Equipment bonding jumper"),
        message("It bridges two pieces of the equipment grounding path, past an overcurrent device."),
        "naming/defined_equipment_bonding_jumper",
    ),
    name.EQUIPMENT_CONDUCTOR: Name(
        message("Equipment grounding conductor"),
        message(
            "It runs with the circuit and carries the fault current of the equipment back, so that the device opens."
        ),
        "naming/defined_equipment_grounding_conductor",
    ),
    name.ELECTRODE_CONDUCTOR: Name(
        message("Grounding electrode conductor"),
        message("It connects the system or the enclosure to an electrode in the earth."),
        "naming/defined_grounding_electrode_conductor",
    ),
    name.ELECTRODE_JUMPER: Name(
        message("Bonding jumper of the electrodes"),
        message("It joins one electrode to the others, so that all are one system."),
        "naming/defined_bonding_conductor",
    ),
    name.METER_JUMPER: Name(
        message("Bonding jumper around the water meter"),
        message("It keeps the path over the pipe whole when the meter or filter is taken out."),
        "naming/defined_bonding_conductor",
    ),
    name.GROUNDED: Name(
        message("Grounded conductor"),
        message("Mostly the neutral: a circuit conductor that carries load current."),
        "naming/defined_grounded_conductor",
    ),
    name.PIPING_JUMPER: Name(
        message("Bonding jumper of piping or building steel"),
        message("It ties piping or steel that may become live to the electrical system."),
        "naming/defined_bonding_conductor",
    ),
    name.INTERSYSTEM: Name(
        message("Intersystem bonding conductor"),
        message("It ties telephone, cable and antenna grounding to that of the power system, through a termination."),
        "naming/defined_bonding_conductor",
    ),
}
