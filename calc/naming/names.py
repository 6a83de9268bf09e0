"""The names: what each is called, what the part does, and where the book defines it."""

from __future__ import annotations

from typing import NamedTuple

from calc.naming import which_name as name
from calc.words import Sentence, say


class Name(NamedTuple):
    """A name: its label, what the part does in one line, and the rule that defines it."""

    label: Sentence
    does: Sentence
    defined: str


NAMES = {
    name.MAIN: Name(
        say("Main bonding jumper"),
        say("It ties the neutral to the metal in a service disconnect enclosure."),
        "naming/defined_main_bonding_jumper",
    ),
    name.SYSTEM: Name(
        say("System bonding jumper"),
        say("It ties the neutral of a separately derived system to the metal, at one place."),
        "naming/defined_system_bonding_jumper",
    ),
    name.SUPPLY_SIDE: Name(
        say("Supply-side bonding jumper"),
        say("It bonds metal ahead of the first overcurrent device, so that a fault there finds its way back."),
        "naming/defined_supply_side_bonding_jumper",
    ),
    name.EQUIPMENT_JUMPER: Name(
        say("Equipment bonding jumper"),
        say("It bridges two pieces of the equipment grounding path, past an overcurrent device."),
        "naming/defined_equipment_bonding_jumper",
    ),
    name.EQUIPMENT_CONDUCTOR: Name(
        say("Equipment grounding conductor"),
        say("It runs with the circuit and carries the fault current of the equipment back, so that the device opens."),
        "naming/defined_equipment_grounding_conductor",
    ),
    name.ELECTRODE_CONDUCTOR: Name(
        say("Grounding electrode conductor"),
        say("It connects the system or the enclosure to an electrode in the earth."),
        "naming/defined_grounding_electrode_conductor",
    ),
    name.ELECTRODE_JUMPER: Name(
        say("Bonding jumper of the electrodes"),
        say("It joins one electrode to the others, so that all are one system."),
        "naming/defined_bonding_conductor",
    ),
    name.METER_JUMPER: Name(
        say("Bonding jumper around the water meter"),
        say("It keeps the path over the pipe whole when the meter or filter is taken out."),
        "naming/defined_bonding_conductor",
    ),
    name.GROUNDED: Name(
        say("Grounded conductor"),
        say("Mostly the neutral: a circuit conductor that carries load current."),
        "naming/defined_grounded_conductor",
    ),
    name.PIPING_JUMPER: Name(
        say("Bonding jumper of piping or building steel"),
        say("It ties piping or steel that may become live to the electrical system."),
        "naming/defined_bonding_conductor",
    ),
    name.INTERSYSTEM: Name(
        say("Intersystem bonding conductor"),
        say("It ties telephone, cable and antenna grounding to that of the power system, through a termination."),
        "naming/defined_bonding_conductor",
    ),
}
