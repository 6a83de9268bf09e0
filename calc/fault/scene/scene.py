"""A source, a service, a panel, a machine and the bonds between them, as a circuit whose bonds can be taken away.

Ahead of the first disconnect: the metal raceway of the supply. Behind it a feeder to a panel, a branch circuit to a
machine, two loads on the two halves of the source, electrodes, and whoever touches a part.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field

from calc.fault.circuit.network import Solution, solve

GOOD_JOINT = 0.0005  # ohm; a tight bond is not zero, and this much changes no answer
FAULT = 0.001
EARTH = "E"
PARTS = ("supply-raceway", "service", "panel", "machine", "buried-elbow")


@dataclass(frozen=True)
class Scene:
    """What the circuit is made of, ohm and volt; bonds by name, None where one is missing.

    runs: impedance of each conductor by branch name. electrodes: ohm to earth by name. None where there is none.
    fault: a part of `PARTS` that a hot conductor touches, or None. person: ohm from `touched` to earth, or None.
    """

    volt: float
    source: complex
    degrees: float
    runs: Mapping[str, complex | None]
    bonds: Mapping[str, complex | None]
    electrodes: Mapping[str, float | None]
    loads: Mapping[str, complex | None]
    fault: str | None = None
    touched: str | None = None
    person: float | None = None
    elbow_to_earth: float = field(default=100.0)


def solved_scene(scene: Scene) -> Solution:
    """Return the voltage of every node against remote earth, and the current of every branch by name.

    Parts that nothing holds to the rest float with the soil: they have a megohm of damp dirt to earth.
    Raises: CircuitError. Source: nodal analysis, see calc.fault.circuit.network.
    """
    branches = [
        *((name, *ENDS[name], value) for name, value in scene.runs.items() if value is not None),
        *((name, *ENDS[name], value) for name, value in scene.bonds.items() if value is not None),
        *((name, *ENDS[name], value) for name, value in scene.electrodes.items() if value is not None),
        *((name, *ENDS[name], value) for name, value in scene.loads.items() if value is not None),
        *((f"dirt-{node}", node, EARTH, DIRT) for node in FLOATING),
        ("elbow-soil", "buried-elbow", EARTH, scene.elbow_to_earth),
    ]
    if scene.fault:
        branches.append(("fault", FAULT_FROM[scene.fault], scene.fault, FAULT))
    if scene.touched and scene.person:
        branches.append(("person", scene.touched, EARTH, scene.person))
    turn = complex(math.cos(math.radians(scene.degrees)), math.sin(math.radians(scene.degrees)))
    sources = [
        ("source-a", "source-hot-a", "source-neutral", scene.volt, scene.source),
        ("source-b", "source-hot-b", "source-neutral", scene.volt * turn, scene.source),
    ]
    return solve(branches, sources, reference=EARTH)


DIRT = 1e6
FLOATING = (*PARTS[:-1], "service-neutral", "source-neutral", "panel-neutral")
FAULT_FROM = {
    "supply-raceway": "service-hot-a",
    "service": "service-hot-a",
    "panel": "panel-hot-a",
    "machine": "machine-hot",
    "buried-elbow": "machine-hot",
}
ENDS = {
    "supply-hot-a": ("source-hot-a", "service-hot-a"),
    "supply-hot-b": ("source-hot-b", "service-hot-b"),
    "supply-neutral": ("service-neutral", "source-neutral"),
    "feeder-hot-a": ("service-hot-a", "panel-hot-a"),
    "feeder-hot-b": ("service-hot-b", "panel-hot-b"),
    "feeder-neutral": ("panel-neutral", "service-neutral"),
    "branch-hot": ("panel-hot-a", "machine-hot"),
    "main-bonding-jumper": ("service", "service-neutral"),
    "supply-side-bonding-jumper": ("supply-raceway", "service"),
    "feeder-grounding-conductor": ("panel", "service"),
    "feeder-raceway": ("panel", "service"),
    "branch-grounding-conductor": ("machine", "panel"),
    "flexible-raceway": ("machine", "panel"),
    "neutral-bond-at-panel": ("panel", "panel-neutral"),
    "source-electrode": ("source-neutral", EARTH),
    "service-electrode": ("service-neutral", EARTH),
    "electrode-on-enclosure": ("service", EARTH),
    "machine-electrode": ("machine", EARTH),
    "load-a": ("panel-hot-a", "panel-neutral"),
    "load-b": ("panel-hot-b", "panel-neutral"),
}
