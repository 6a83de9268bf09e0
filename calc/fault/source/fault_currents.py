"""The currents of the kinds of fault at one place, recorded as they are computed, and as a list."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from calc.answer import Row, Table
from calc.fault.source.sources import Source, line_to_ground_impedance, line_to_line_impedance
from calc.messages import Message, message
from calc.rounded import THREE, at_most
from calc.systems import SPLIT, SYSTEMS, UNGROUNDED
from calc.trace import Trace
from calc.written import plain_number

MILLI = 1000


@dataclass(frozen=True)
class FaultCurrents:
    """Ampere for each kind of fault; `three_phase` is None on a single-phase system."""

    three_phase: float | None
    line_to_line: float
    line_to_ground: float

    @property
    def most(self) -> float:
        """The largest of them."""
        return max(self.three_phase or 0, self.line_to_line, self.line_to_ground)

    @property
    def values(self) -> dict[str, float]:
        """The currents under the published names that programs read, ampere to two decimals."""
        named = {
            "three_phase": self.three_phase,
            "line_to_line": self.line_to_line,
            "line_to_ground": self.line_to_ground,
        }
        return {name: round(value, 2) for name, value in named.items() if value is not None}


def fault_currents(
    sources: list[Source], system: str, voltage_factor: float, place: Message, trace: Trace
) -> FaultCurrents:
    """Return the most that the sources may drive at a place, and record the loop and the division of each kind.

    place: where, to begin a sentence. voltage_factor: the voltage as a multiple of the nominal one.
    """

    def current(kind: Message, volt: float, loops: list[complex]) -> float:
        loop = min(loops, key=abs)
        words = message("{place}, {kind}: {loop} mΩ.", place=place, kind=kind, loop=shown_impedance(loop))
        return trace.compute(
            words,
            "1000 * voltage_factor * voltage / milliohm",
            "A",
            exact=True,
            voltage_factor=voltage_factor,
            voltage=volt,
            milliohm=MILLI * abs(loop),
        )

    kind = SYSTEMS[system].kind
    volts = sources[0]
    three_phase = None
    if kind != SPLIT:
        each_phase = volts.line_voltage / math.sqrt(3)
        three_phase = current(message("three phase"), each_phase, [each.positive for each in sources])
    line_to_line = current(
        message("line to line"), volts.line_voltage, [line_to_line_impedance(each) for each in sources]
    )
    if kind == UNGROUNDED:
        trace.step(message("{place}, line to ground: no return path, so next to nothing flows.", place=place), 0, "A")
        return FaultCurrents(three_phase, line_to_line, 0.0)
    loops = [line_to_ground_impedance(each) for each in sources]
    return FaultCurrents(three_phase, line_to_line, current(to_ground_words(system), volts.voltage_to_ground, loops))


def to_ground_words(system: str) -> Message:
    """Return the name of a fault from one line to the grounded conductor."""
    return message("line to neutral") if SYSTEMS[system].kind == SPLIT else message("line to ground")


def fault_table(currents: Mapping[str, FaultCurrents], system: str) -> Table:
    """Return the currents as a list: a row for each kind of fault, a column for each place."""
    headings = {
        "fault": message("Fault"), "terminals": message("At the terminals"), "end": message("At the end of the run")
    }
    kinds = {
        "three_phase": message("Three phase"),
        "line_to_line": message("Line to line"),
        "line_to_ground": message("Line to neutral") if SYSTEMS[system].kind == SPLIT else message("Line to ground"),
    }
    rows: list[Row] = []
    for kind, words in kinds.items():
        flowing = {place: getattr(each, kind) for place, each in currents.items()}
        if None not in flowing.values():
            shown = {place: message("{current} A", current=at_most(each, THREE)) for place, each in flowing.items()}
            rows.append(Row({"fault": words} | shown))
    return Table({key: words for key, words in headings.items() if key == "fault" or key in currents}, tuple(rows))


def shown_impedance(ohm: complex) -> str:
    """Return an impedance as it is shown, in milliohm: resistance and reactance.

    >>> shown_impedance(0.0029 + 0.0048j)
    '2.9 + j 4.8'
    """
    resistance, reactance = (plain_number(float(f"{MILLI * part:.4g}")) for part in (ohm.real, ohm.imag))
    return f"{resistance} + j {reactance}"
