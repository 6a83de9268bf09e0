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
        message("It connects the neutral to the metal enclosure in a service disconnect."),
        "naming/defined_main_bonding_jumper",
    ),
    name.SYSTEM: Name(
        message("System bonding jumper"),
        message("It connects the neutral of a separately derived system to metal, at one location."),
        "naming/defined_system_bonding_jumper",
    ),
    name.SUPPLY_SIDE: Name(
        message("Supply-side bonding jumper"),
        message(
            "It bonds metal ahead of the first overcurrent device, so fault current there can return to the source."
        ),
        "naming/defined_supply_side_bonding_jumper",
    ),
    name.EQUIPMENT_JUMPER: Name(
        message("Equipment bonding jumper"),
        message("It connects two parts of the equipment grounding path on the load side of an overcurrent device."),
        "naming/defined_equipment_bonding_jumper",
    ),
    name.EQUIPMENT_CONDUCTOR: Name(
        message("Equipment grounding conductor"),
        message(
            "It runs with the circuit and carries fault current back from the equipment, so the overcurrent device "
            "opens."
        ),
        "naming/defined_equipment_grounding_conductor",
    ),
    name.ELECTRODE_CONDUCTOR: Name(
        message("Grounding electrode conductor"),
        message("It connects the system or the enclosure to a grounding electrode."),
        "naming/defined_grounding_electrode_conductor",
    ),
    name.ELECTRODE_JUMPER: Name(
        message("Bonding jumper between grounding electrodes"),
        message("It connects one grounding electrode to the others, so all form one system."),
        "naming/defined_bonding_conductor",
    ),
    name.METER_JUMPER: Name(
        message("Bonding jumper around the water meter"),
        message("It keeps the path through the pipe continuous when the meter or filter is removed."),
        "naming/defined_bonding_conductor",
    ),
    name.GROUNDED: Name(
        message("Grounded conductor"),
        message("Usually the neutral: a circuit conductor that carries load current."),
        "naming/defined_grounded_conductor",
    ),
    name.PIPING_JUMPER: Name(
        message("Bonding jumper to piping or building steel"),
        message("It bonds piping or steel that may become energized to the electrical system."),
        "naming/defined_bonding_conductor",
    ),
    name.INTERSYSTEM: Name(
        message("Intersystem bonding conductor"),
        message(
            "It connects telephone, cable TV and antenna grounding to the power system ground at an intersystem "
            "bonding termination."
        ),
        "naming/defined_bonding_conductor",
    ),
}
