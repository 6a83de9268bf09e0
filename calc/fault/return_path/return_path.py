"""Out and back of a ground fault: what drives it, and the impedance of each foot as low, likely and high."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from calc.calculator import FieldError, NotCovered, require
from calc.conductors.impedance import impedance
from calc.conductors.size import shown_size
from calc.fault.return_path.apart import impedance_apart
from calc.fault.return_path.return_path_fields import APART, NOT_GIVEN, UNGROUNDED, WIRE_IN
from calc.messages import Message, message
from calc.raceways.entry_bonding import voltage_of_entry
from calc.raceways.return_impedance import return_parts
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace

RANGE_RULE = "fault/wire_and_voltage_range"
RESISTANCE_RULE = "conductors/resistance_in_raceway"
REACTANCE_RULE = "conductors/reactance_in_raceway"
CONDUCTIVITY_RULE = "conductors/conductivity"
# Its two usual legs stand to ground as those of 120/240; the lower voltage counts, for the lower current.
LEGS_AS = {"240-high-leg-delta": "120/240"}
PARTS = {
    "wires": message("hot wires"),
    "voltage_share": message("low voltage"),
    "steel": message("the steel at its worst"),
    "joints": message("every joint at its worst"),
}
WHICH = {"low": message("Shortest"), "likely": message("Likely"), "high": message("Longest")}


@dataclass(frozen=True)
class Path:
    """Out and back for one of the three lengths: impedance for each foot of run, and share of the voltage there."""

    which: str
    celsius: float
    voltage_share: float
    wires: complex
    steel: complex
    joints: float

    @property
    def ohm_per_foot(self) -> complex:
        """Return out and back together."""
        return self.wires + self.steel + self.joints

    def reach(self, volt: float, arc: float, source_ohm: float, ampere: float) -> float:
        """Return the length, ft, at which `ampere` just flow; below 0 when they never do."""
        return ((volt * self.voltage_share - arc) / ampere - source_ohm) / abs(self.ohm_per_foot)

    def available(self, volt: float, arc: float, ampere: float, length: float) -> float | None:
        """Return the current, A, that must be available where the run begins for `ampere` to flow, None if never."""
        left = (volt * self.voltage_share - arc) / ampere - length * abs(self.ohm_per_foot)
        return volt / left if left > 0 else None


def wires(out: tuple[str, str], back: tuple[str, str] | None, steel: bool) -> Message:
    """Return the wires a current is for, each a size and a metal, and the raceway where it counts.

    >>> str(wires(("12", "copper"), ("12", "copper"), steel=False))
    '12 AWG copper both ways'
    """
    both = (out, back or out)
    pieces = [message("{size} {metal}", size=shown_size(size), metal=METAL_WORDS[metal]) for size, metal in both]
    if back is None:
        return message("{out} out, the raceway back", out=pieces[0])
    if steel:
        return message("{out} out, {back} and the raceway back", out=pieces[0], back=pieces[1])
    if back == out:
        return message("{out} both ways", out=pieces[0])
    return message("{out} out, {back} back", out=pieces[0], back=pieces[1])


def driving_voltage(system: str, voltage_to_ground: float | None, trace: Trace) -> float:
    """Return the voltage behind the fault, volt. Raises: NotCovered for an ungrounded system, FieldError for none."""
    if system in UNGROUNDED:
        raise NotCovered(
            message("In an ungrounded system the first fault to metal draws almost no current. No device opens."),
            message(
                "{section}, and the ground detectors that such a system needs.",
                section=trace.section("naming/ungrounded_service"),
            ),
        )
    if system in LEGS_AS:
        trace.note(message(
                "Figured from the two legs with the lower voltage to ground. A fault from the high leg draws more "
                "current and puts more voltage on the metal."
            ))
    return voltage_of_entry(LEGS_AS.get(system, system), voltage_to_ground, trace)


def paths(
    wiring: str,
    conductor: tuple[str, str],
    return_conductor: tuple[str | None, str],
    trade_size: str,
    spacing: float | None,
    trace: Trace,
) -> list[Path]:
    """Return the three paths, the shortest length first; size and metal of each wire as a pair; spacing in feet.

    Raises: FieldError for a size that this way back needs, NotCovered for a wire whose impedance is not listed.
    """
    around = WIRE_IN.get(wiring, "steel")
    spacing = require(spacing, "spacing") if wiring == APART else None
    wires = [conductor]
    backs: tuple[tuple[complex, float], ...] = ((0j, 0.0),) * 3
    if wiring in WIRE_IN:
        wires.append((require(return_conductor[0], "return_conductor"), return_conductor[1]))
    elif trade_size == NOT_GIVEN:
        raise FieldError("trade_size", message("Choose the trade size of the raceway."))
    else:
        backs = return_parts(wiring, trade_size)
        for key in ("raceways/tube_dimensions", "raceways/steel_as_return", "raceways/length_of_pipe"):
            trace.cite(key)
    for key in (RESISTANCE_RULE, REACTANCE_RULE, CONDUCTIVITY_RULE):
        trace.cite(key)
    found: list[Path] = []
    for row, back in zip(trace.cite(RANGE_RULE).rows, reversed(backs), strict=True):
        out = sum(_listed(wire, around, row["celsius"], spacing, trace) for wire in wires)
        found.append(Path(row["length"], row["celsius"], row["voltage_share"], out, *back))
    return found


def ranked(found: list[Path], volt: float, arc: float, source_ohm: float, ampere: float) -> list[tuple[str, float]]:
    """Return what shortens the likely run, alone, as in the shortest one: part and feet lost, the most first."""
    worst, likely = found[0], found[1]
    reach = likely.reach(volt, arc, source_ohm, ampere)
    lost = {
        part: reach - replace(likely, **{part: getattr(worst, part)}).reach(volt, arc, source_ohm, ampere)
        for part in PARTS
    }
    return sorted(((part, feet) for part, feet in lost.items() if feet > 0), key=lambda each: -each[1])


def feet(length: float) -> int:
    """Return a length in whole feet, never rounded up; 0 when the current never comes."""
    return max(0, math.floor(length + 1e-6))


def _listed(wire: tuple[str, str], around: str, celsius: float, spacing: float | None, trace: Trace) -> complex:
    try:
        return impedance_apart(*wire, celsius, spacing) if spacing else impedance(*wire, around, celsius)
    except KeyError:
        raise NotCovered(_unlisted(wire[1]), message("{section}", section=trace.section(RESISTANCE_RULE))) from None


def _unlisted(metal: str) -> Message:
    if metal == "copper-clad-aluminum":
        return message("No impedance of copper-clad aluminum is listed.")
    return message("No impedance is listed for this size and metal. The list has 14 AWG to 1000 kcmil, with gaps.")
