"""The circuit of two metal parts, solved bonded and apart, with and without a body across them."""

from __future__ import annotations

from dataclasses import dataclass

from calc.fault.circuit.network import Branch, Solution, Source, solve

EARTH, NEUTRAL, ONE, TWO, HOT = "E", "neutral", "one", "two", "hot"
TOUCHES = ((ONE, TWO), (ONE, EARTH), (TWO, EARTH))


@dataclass(frozen=True)
class Parts:
    """Ohm of each path, None for one that is not there, and what drives the circuit.

    volt: of the hot conductor to neutral, or with no leak of the neutral to remote earth. leak: ohm from the hot
    conductor to part one, None for a utility's voltage. neutral_earth counts for a leak only.
    """

    volt: float
    leak: float | None
    neutral_earth: float
    one_neutral: float | None
    one_earth: float | None
    two_neutral: float | None
    two_earth: float | None
    bond: float


@dataclass(frozen=True)
class BetweenVoltages:
    """What meters show, volt by pair of nodes; leak and bond: ampere; bodies: ampere by pair, then by ohm."""

    volts: dict[tuple[str, str], float]
    neutral_volt: float
    leak: float
    bond: float
    bodies: dict[tuple[str, str], dict[float, float]]

    def behind(self, pair: tuple[str, str]) -> float:
        """Return the ohms that stand before a body across a pair: what holds back more than its own."""
        ohm, ampere = min(self.bodies[pair].items())
        return max(0.0, self.volts[pair] / ampere - ohm) if ampere else 0.0


def between_voltages(parts: Parts, bonded: bool, body_ohms: tuple[float, ...]) -> BetweenVoltages:
    """Return the readings between the parts and to remote earth, and the current through a body there.

    body_ohms: each tried across each pair in turn, as one more branch of the circuit.
    """
    branches, sources = _circuit(parts, bonded)
    solved = solve(branches, sources, reference=EARTH)
    bodies = {
        pair: {
            ohm: abs(solve([*branches, ("body", *pair, ohm)], sources, reference=EARTH).currents["body"])
            for ohm in body_ohms
        }
        for pair in TOUCHES
    }
    return BetweenVoltages(
        volts={pair: _between(solved, *pair) for pair in TOUCHES},
        neutral_volt=_between(solved, NEUTRAL, EARTH),
        leak=abs(solved.currents.get("leak", 0)),
        bond=abs(solved.currents.get("bond", 0)),
        bodies=bodies,
    )


def _circuit(parts: Parts, bonded: bool) -> tuple[list[Branch], list[Source]]:
    paths = (
        ("leak", HOT, ONE, parts.leak),
        ("one-neutral", ONE, NEUTRAL, parts.one_neutral),
        ("one-earth", ONE, EARTH, parts.one_earth),
        ("two-neutral", TWO, NEUTRAL, parts.two_neutral),
        ("two-earth", TWO, EARTH, parts.two_earth),
        ("bond", ONE, TWO, parts.bond if bonded else None),
        ("neutral-earth", NEUTRAL, EARTH, None if parts.leak is None else parts.neutral_earth),
    )
    branches: list[Branch] = [(name, start, end, ohm) for name, start, end, ohm in paths if ohm is not None]
    if parts.leak is None:
        return branches, [("utility", NEUTRAL, EARTH, parts.volt, 0)]
    return branches, [("supply", HOT, NEUTRAL, parts.volt, 0)]


def _between(solved: Solution, start: str, end: str) -> float:
    return abs(solved.voltages[start] - solved.voltages[end])
