"""The circuit of one ground fault: source, hot conductor out, wire and raceway back, with the ranges of each."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from calc.calculator import NotCovered
from calc.conductors.impedance import impedance
from calc.fault.circuit.ranges import Between
from calc.fault.return_path.apart import impedance_apart
from calc.fault.return_path.return_path import CONDUCTIVITY_RULE, RANGE_RULE, REACTANCE_RULE, RESISTANCE_RULE
from calc.messages import message
from calc.raceways.return_impedance import between, return_impedance
from calc.trace import Trace

Wire = tuple[str, str]


@dataclass(frozen=True)
class Loop:
    """One loop: sizes with metals, feet, and the ranges of what is not known for sure.

    source_ohm: 0 where the current available is not known. spacing: feet between wires that run apart, None for a
    close group.
    """

    volt: float
    source_ohm: float
    out: Wire
    back: Wire | None
    raceway: tuple[str, str] | None
    feet: float
    joint: float
    spacing: float | None
    inputs: Mapping[str, Between]


def loop_of(
    *,
    volt: float,
    available: float | None,
    out: Wire,
    back: Wire | None,
    raceway: tuple[str, str] | None,
    feet: float,
    joint: float,
    spacing: float | None,
    arc: float,
    trace: Trace,
) -> Loop:
    """Return the loop, citing what its figures rest on. Raises: NotCovered for a size without a listed impedance."""
    for key in (RESISTANCE_RULE, REACTANCE_RULE, CONDUCTIVITY_RULE):
        trace.cite(key)
    rows = {row["length"]: row for row in trace.cite(RANGE_RULE).rows}
    shortest, likely, longest = (rows[name] for name in ("low", "likely", "high"))
    source_ohm = volt / available if available else 0.0
    inputs = {
        "volt": Between(
            volt * shortest["voltage_share"], volt * likely["voltage_share"], volt * longest["voltage_share"]
        ),
        "celsius": Between(longest["celsius"], likely["celsius"], shortest["celsius"]),
    }
    if raceway:
        for key in ("raceways/tube_dimensions", "raceways/steel_as_return", "raceways/length_of_pipe"):
            trace.cite(key)
        inputs["steel"] = Between(0, 1, 2)  # places in the low, likely and high impedance of the steel
    if available:
        inputs["source"] = Between(0, 1, 1)  # share of its impedance: what is entered is the least it gives
    if arc:
        inputs["arc"] = Between(0, arc, arc)
    loop = Loop(volt, source_ohm, out, back, raceway, feet, joint, spacing, inputs)
    try:
        loop_results(loop, {name: between.likely for name, between in inputs.items()})
    except KeyError:
        raise NotCovered(
            message(
                "No impedance is listed for a size and metal entered. The list has 14 AWG to 1000 kcmil, with gaps."
            ),
            message("{section}", section=trace.section(RESISTANCE_RULE)),
        ) from None
    return loop


def loop_results(loop: Loop, at: Mapping[str, float]) -> dict[str, float]:
    """Return ampere (fault current), touch (volt, metal to panel), wire and raceway (shares of the current, 0 to 1).

    at: volt, celsius and where they range: steel from 0 (low) over 1 (likely) to 2 (high), source 0 to 1, arc in volt.
    The source is in phase with the loop and the arc with the current: both take away the most that they can.
    """
    ways: dict[str, complex] = {}
    if loop.back:
        ways["wire"] = _wire(loop, loop.back, at) + (0 if loop.raceway else loop.joint)
    if loop.raceway:
        ways["raceway"] = between(return_impedance(*loop.raceway), at["steel"]) * loop.feet + loop.joint
    back = 1 / sum(1 / way for way in ways.values())
    loop_ohm = abs(_wire(loop, loop.out, at) + back) + loop.source_ohm * at.get("source", 1)
    ampere = max(0.0, at["volt"] - at.get("arc", 0)) / loop_ohm
    shares = {name: abs(back / ways[name]) if name in ways else 0.0 for name in ("wire", "raceway")}
    return {"ampere": ampere, "touch": ampere * abs(back)} | shares


def _wire(loop: Loop, wire: Wire, at: Mapping[str, float]) -> complex:
    if loop.spacing:
        return impedance_apart(*wire, at["celsius"], loop.spacing) * loop.feet
    return impedance(*wire, "steel" if loop.raceway else "nonmetallic", at["celsius"]) * loop.feet
