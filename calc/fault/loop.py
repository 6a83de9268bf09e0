"""The circuit of one ground fault: source, hot conductor out, wire and raceway back, as a network with ranges."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from calc.conductors.impedance import impedance
from calc.declare import NotCovered
from calc.fault.network import solve
from calc.fault.ranges import Between
from calc.fault.return_path import CONDUCTIVITY_RULE, RANGE_RULE, REACTANCE_RULE, RESISTANCE_RULE
from calc.raceways.return_impedance import between, return_impedance
from calc.words import say
from calc.working import Working

Wire = tuple[str, str]


@dataclass(frozen=True)
class Loop:
    """One loop: sizes with metals, feet, and the ranges of what is not known for sure."""

    volt: float
    source_ohm: float
    out: Wire
    back: Wire | None
    raceway: tuple[str, str] | None
    feet: float
    joint: float
    inputs: Mapping[str, Between]


def loop_of(*, volt, available, out, back, raceway, feet, joint, working: Working) -> Loop:
    """Give the loop, citing what its figures rest on. Raises: NotCovered for a size without a listed impedance."""
    for key in (RESISTANCE_RULE, REACTANCE_RULE, CONDUCTIVITY_RULE):
        working.cite(key)
    rows = {row["length"]: row for row in working.cite(RANGE_RULE).rows}
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
            working.cite(key)
        inputs["steel"] = Between(0, 1, 2)  # places in the low, likely and high impedance of the steel
    loop = Loop(volt, source_ohm, out, back, raceway, feet, joint, inputs)
    try:
        loop_results(loop, {name: between.likely for name, between in inputs.items()})
    except KeyError:
        raise NotCovered(
            say("No impedance is listed for a size and metal entered. The list has 14 AWG to 1000 kcmil, with gaps."),
            say("{section}", section=working.section(RESISTANCE_RULE)),
        ) from None
    return loop


def loop_results(loop: Loop, at: Mapping[str, float]) -> dict[str, float]:
    """Give ampere (fault current), touch (volt on the metal), wire and raceway (shares of the current, 0 to 1).

    at: volt, celsius and, with a raceway, steel from 0 (low) over 1 (likely) to 2 (high).
    """
    around = "steel" if loop.raceway else "nonmetallic"
    branches = [
        ("out", "source", "machine", impedance(*loop.out, around, at["celsius"]) * loop.feet),
    ]
    if loop.back:
        joint = 0 if loop.raceway else loop.joint
        branches.append(("wire", "machine", "E", impedance(*loop.back, around, at["celsius"]) * loop.feet + joint))
    if loop.raceway:
        steel = between(return_impedance(*loop.raceway), at["steel"])
        branches.append(("raceway", "machine", "E", steel * loop.feet + loop.joint))
    solved = solve(branches, [("supply", "source", "E", at["volt"], loop.source_ohm)])
    current = solved.currents["out"]
    return {
        "ampere": abs(current),
        "touch": abs(solved.voltages["machine"]),
        "wire": abs(solved.currents.get("wire", 0)) / abs(current),
        "raceway": abs(solved.currents.get("raceway", 0)) / abs(current),
    }
