"""The supply systems that calculators know: what each is called, how it is connected and its nominal voltages."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.field import Choice
from calc.messages import Message, message

SPLIT, WYE, HIGH_LEG, CORNER, UNGROUNDED = "split-phase", "wye", "high-leg", "corner-grounded", "ungrounded"


@dataclass(frozen=True)
class System:
    """A supply: nominal volts from line to line and from a leg to ground, and how it is connected.

    Without a grounded wire `voltage_to_ground` is that from line to line. The high leg of a delta has more than the
    others: rule raceways/voltage_to_ground_of_system. `also`: what it is called in the links of other calculators.
    """

    label: Message
    line_voltage: float
    voltage_to_ground: float
    kind: str
    also: tuple[str, ...] = ()


SYSTEMS = {
    "120/240": System(message("120/240 V 1Ø 3W"), 240, 120, SPLIT),
    "208Y/120": System(message("208Y/120 V 3Ø 4W"), 208, 208 / math.sqrt(3), WYE),
    "480Y/277": System(message("480Y/277 V 3Ø 4W"), 480, 480 / math.sqrt(3), WYE),
    "600Y/347": System(message("600Y/347 V 3Ø 4W"), 600, 600 / math.sqrt(3), WYE),
    "240/120-high-leg": System(message("120/240 V 3Ø 4W high-leg delta"), 240, 120, HIGH_LEG, ("240-high-leg-delta",)),
    "240-corner": System(
        message("240 V 3Ø 3W corner-grounded delta"), 240, 240, CORNER, ("240-corner-grounded-delta",)
    ),
    "240-ungrounded": System(message("240 V 3Ø 3W ungrounded delta"), 240, 240, UNGROUNDED, ("240-ungrounded-delta",)),
    "480-corner": System(
        message("480 V 3Ø 3W corner-grounded delta"), 480, 480, CORNER, ("480-corner-grounded-delta",)
    ),
    "480-ungrounded": System(message("480 V 3Ø 3W ungrounded delta"), 480, 480, UNGROUNDED, ("480-ungrounded-delta",)),
}
# No calculator has figures for these; they are choices so that the reader is told where to look.
OTHER_SYSTEMS = {
    "impedance-grounded": message("Impedance grounded"),
    "over-1000": message("Over 1000 V"),
    "direct-current": message("Direct current"),
}


def system_called(value: str) -> System:
    """Return the system that any calculator calls `value`. Raises: KeyError for no system.

    >>> system_called("240-high-leg-delta") == system_called("240/120-high-leg")
    True
    """
    if value in SYSTEMS:
        return SYSTEMS[value]
    found = [system for system in SYSTEMS.values() if value in system.also]
    if not found:
        raise KeyError(value)
    return found[0]


def system_choices(*values: str) -> tuple[Choice, ...]:
    """Return the choices of a calculator that calls its systems so; it reads the other calculators' names too."""
    return tuple(_choice(value) for value in values)


def _choice(value: str) -> Choice:
    if value in OTHER_SYSTEMS:
        return Choice(value, OTHER_SYSTEMS[value])
    system = system_called(value)
    names = (*(name for name, each in SYSTEMS.items() if each is system), *system.also)
    return Choice(value, system.label, tuple(name for name in names if name != value))
