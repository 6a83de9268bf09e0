"""The circuits of stray neutral current: a second bond past the service, and two houses on one metal water main."""

from __future__ import annotations

from dataclasses import dataclass

from calc.fault.circuit.network import Branch, Solution, solve

VOLT = 120
BOND = 0.001  # ohm, a bond in an enclosure
PATHS = ("load", "neutral", "grounding", "pipe", "bond")


@dataclass(frozen=True)
class Stray:
    """Currents by path, ampere, and voltages, volt, all magnitudes.

    metal: of the metal against the source's neutral; load: left for the load; broken: across the break of the neutral,
    0 where it is sound; gap: across the second bond, or the main, once that is opened; other_leg: from the other hot
    conductor of a 120/240 V supply to this neutral, its own loads taken as light.
    """

    currents: dict[str, float]
    metal: float
    load: float
    broken: float
    gap: float
    other_leg: float


def stray_of(
    houses: bool, load: float, neutral: complex, grounding: complex | None, pipe: float, broken: bool
) -> Stray:
    """Return the currents and voltages for a load of so many ohm; impedances in ohm, pipe 0 for none."""
    if houses:
        solved = _two_houses(load, neutral, pipe, broken)
    else:
        solved = _second_bond(load, neutral, grounding, pipe, broken)
    at_bar = solved.voltages["own-neutral" if houses else "panel-neutral"]
    return Stray(
        currents={name: abs(solved.currents.get(name, 0)) for name in PATHS},
        metal=abs(solved.voltages["metal"]),
        load=abs(VOLT - at_bar),
        broken=abs(at_bar) if broken else 0.0,
        gap=VOLT if broken else abs(VOLT * neutral / (load + neutral)),
        other_leg=abs(VOLT + at_bar),
    )


def _second_bond(load: float, neutral: complex, grounding: complex | None, pipe: float, broken: bool) -> Solution:
    branches: list[Branch] = [("load", "hot", "panel-neutral", load), ("bond", "panel-neutral", "metal", BOND)]
    if not broken:
        branches.append(("neutral", "panel-neutral", "E", neutral))
    if grounding is not None:
        branches.append(("grounding", "metal", "E", grounding))
    if pipe:
        branches.append(("pipe", "metal", "E", pipe))
    return solve(branches, [("supply", "hot", "E", VOLT, 0)])


def _two_houses(load: float, neutral: complex, pipe: float, broken: bool) -> Solution:
    """The house with the load bonds its neutral to the main; the neighbor's bond and neutral lead back."""
    branches = [
        ("load", "hot", "own-neutral", load),
        ("bond", "own-neutral", "metal", BOND),
        ("pipe", "metal", "neighbor-metal", pipe),
        ("neighbor-bond", "neighbor-metal", "neighbor-neutral", BOND),
        ("neighbor-neutral", "neighbor-neutral", "E", neutral),
    ]
    if not broken:
        branches.append(("neutral", "own-neutral", "E", neutral))
    return solve(branches, [("supply", "hot", "E", VOLT, 0)])
