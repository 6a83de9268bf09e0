"""A circuit of impedances and sources, solved for the voltage of every node and the current of every branch.

Complex nodal analysis at one frequency. Nodes that nothing but zero ohms parts are one node;
the matrix is kept sparse and taken apart in the order that fills it least.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from calc.fault.circuit.elimination import Admittances, SingularMatrixError, inverse, node_voltages
from calc.messages import Message, message

Branch = tuple[str, str, str, complex]
Source = tuple[str, str, str, complex, complex]
Coupling = tuple[str, str, complex]
Ends = tuple[str, str]
MAX_NAMED = 5


class CircuitError(ValueError):
    """A circuit that has no single answer; the sentence names the parts."""

    def __init__(self, words: Message):
        super().__init__(str(words))
        self.words = words


@dataclass(frozen=True)
class Solution:
    """Voltages by node, volt, against the reference; currents by branch and source, ampere. All are phasors.

    A branch's current runs from its first node to its second; a source's leaves it at its first node.
    """

    voltages: Mapping[str, complex]
    currents: Mapping[str, complex]


def solve(
    branches: Iterable[Branch], sources: Iterable[Source], couplings: Iterable[Coupling] = (), reference: str = "E"
) -> Solution:
    """Return the voltage of every node and the current of every branch and source.

    branches: (name, from, to, impedance in ohm); zero ohm joins two nodes.
    sources: (name, from, to, emf in volt, impedance in ohm); the emf raises `from` above `to`.
    couplings: (branch, branch, mutual impedance in ohm), dots at the `from` ends. reference: the node of zero volt.
    Raises: CircuitError, with names: a name twice, a bad value, an island, an open source, a loop of zero ohms.
    Source: nodal analysis; impedances of coupled branches inverted together.

    >>> solved = solve([("load", "a", "E", 10)], [("supply", "a", "E", 120, 2)])
    >>> solved.voltages["a"], solved.currents["load"]
    ((100+0j), (10+0j))
    """
    branches, sources, couplings = list(branches), list(sources), list(couplings)
    _check(branches, sources, couplings, reference)
    potential = _Joined(branches, sources, reference)
    finite = [each for each in branches if each[3] != 0]
    real = [each for each in sources if each[4] != 0]
    admittances = _admittances(finite, couplings)

    mesh: dict[str, dict[str, complex]] = defaultdict(dict)
    driven: dict[tuple[str, str], complex] = defaultdict(complex)
    ends = {name: (start, end) for name, start, end, _ in finite}
    for (first, second), admittance in admittances.items():
        _stamp(mesh, driven, potential, ends[first], ends[second], admittance)
    for _, start, end, emf, impedance in real:
        _stamp(mesh, driven, potential, (start, end), (start, end), 1 / impedance)
        driven[potential.root(start), potential.root(end)] += emf / impedance
    for root in potential.roots():
        mesh[root]  # a node alone is a node too
    ground = potential.root(reference)
    try:
        of_root = node_voltages(dict(mesh), driven, ground)
    except SingularMatrixError as stuck:
        raise CircuitError(
            message("The circuit has no single answer at {node}: its impedances cancel there.", node=stuck.node)
        ) from None
    lift = potential.above_root(reference)
    voltages = {node: of_root[potential.root(node)] + potential.above_root(node) - lift for node in potential.nodes}

    def drop(name: str) -> complex:
        start, end = ends[name]
        return voltages[start] - voltages[end]

    currents: dict[str, complex] = defaultdict(complex)
    for (first, second), admittance in admittances.items():
        currents[first] += admittance * drop(second)
    for name, start, end, emf, impedance in real:
        currents[name] = (emf - (voltages[start] - voltages[end])) / impedance
    leaving = _leaving(finite, real, currents)
    currents |= potential.currents_of_joints(leaving)
    order = [each[0] for each in (*branches, *sources)]
    return Solution(voltages, {name: currents[name] for name in order})


def _stamp(
    mesh: Admittances, driven: dict[Ends, complex], potential: _Joined, own_ends: Ends, other_ends: Ends, value: complex
) -> None:
    """Add the current that the voltage between `other_ends` drives from the first of `own_ends` to the second.

    Between a branch and itself, or two coupled ones, that is admittances between pairs of nodes: no node's own sum
    is kept. What a joint lifts a node above its root drives a current that is known.
    """
    for own, own_sign in zip(own_ends, (1, -1), strict=True):
        for other, other_sign in zip(other_ends, (1, -1), strict=True):
            row, column = potential.root(own), potential.root(other)
            if row != column:
                mesh[row][column] = mesh[row].get(column, 0j) - value * own_sign * other_sign
                mesh[column].setdefault(row, 0j)
    first, second = map(potential.root, own_ends)
    lift = potential.above_root(other_ends[0]) - potential.above_root(other_ends[1])
    driven[first, second] -= value * lift


def _admittances(branches: list[Branch], couplings: list[Coupling]) -> dict[tuple[str, str], complex]:
    """Return the admittance of each branch and between coupled ones: their impedance matrix, inverted."""
    own = {name: complex(impedance) for name, _, _, impedance in branches}
    mutual: dict[str, dict[str, complex]] = defaultdict(dict)
    for first, second, impedance in couplings:
        mutual[first][second] = mutual[second][first] = complex(impedance)
    found = {(name, name): 1 / impedance for name, impedance in own.items() if name not in mutual}
    seen: set[str] = set()
    for name in mutual:
        if name in seen:
            continue
        group = _reached(name, mutual)
        seen |= set(group)
        size = {name: math.sqrt(abs(own[name])) for name in group}
        rows = [
            [(own[one] if one == other else mutual[one].get(other, 0j)) / size[one] / size[other] for other in group]
            for one in group
        ]
        try:
            inverted = inverse(rows)
        except SingularMatrixError:
            raise CircuitError(
                message("The couplings of {branches} leave no single current.", branches=", ".join(group[:MAX_NAMED]))
            ) from None
        found |= {
            (row, column): inverted[i][j] / size[row] / size[column]
            for i, row in enumerate(group)
            for j, column in enumerate(group)
        }
    return found


def _reached(start: str, neighbors: Mapping[str, Mapping[str, complex]]) -> list[str]:
    found, waiting = [start], [start]
    while waiting:
        for each in neighbors[waiting.pop()]:
            if each not in found:
                found.append(each)
                waiting.append(each)
    return found


def _leaving(branches: list[Branch], sources: list[Source], currents: Mapping[str, complex]) -> dict[str, complex]:
    """Return the current that leaves each node through finite impedances."""
    leaving: dict[str, complex] = defaultdict(complex)
    for name, start, end, _ in branches:
        leaving[start] += currents[name]
        leaving[end] -= currents[name]
    for name, start, end, _, _ in sources:
        leaving[start] -= currents[name]
        leaving[end] += currents[name]
    return leaving


class _Joined:
    """Nodes that zero ohms or a source without impedance hold together, each at a known voltage above its root."""

    def __init__(self, branches: list[Branch], sources: list[Source], reference: str):
        joints = [(name, start, end, 0j) for name, start, end, impedance in branches if impedance == 0]
        joints += [(name, start, end, complex(emf)) for name, start, end, emf, impedance in sources if impedance == 0]
        named = [node for _, start, end, *_ in (*branches, *sources) for node in (start, end)]
        self.nodes = list(dict.fromkeys([reference, *named]))
        self._root = {node: node for node in self.nodes}
        self._above = dict.fromkeys(self.nodes, 0j)
        self._joints = joints
        self._neighbors: dict[str, list[tuple[str, str, complex]]] = defaultdict(list)
        for name, start, end, emf in joints:
            self._neighbors[start].append((name, end, -emf))
            self._neighbors[end].append((name, start, emf))
        self._tree: list[tuple[str, str, str]] = []  # joint, node, its parent; parents first
        reached: set[str] = set()
        used: set[str] = set()
        for root in self.nodes:
            if root not in reached:
                self._spread(root, reached, used)
        loop = [name for name, *_ in joints if name not in used]
        if loop:
            raise CircuitError(
                message(
                    "{parts} closes a loop of zero ohms, so its current cannot be told. Give it some ohms.",
                    parts=", ".join(loop[:MAX_NAMED]),
                )
            )

    def _spread(self, root: str, reached: set[str], used: set[str]) -> None:
        reached.add(root)
        waiting = [root]
        while waiting:
            node = waiting.pop()
            for name, other, step in self._neighbors[node]:
                if other in reached:
                    continue
                reached.add(other)
                used.add(name)
                self._root[other] = root
                self._above[other] = self._above[node] + step
                self._tree.append((name, other, node))
                waiting.append(other)

    def root(self, node: str) -> str:
        return self._root[node]

    def above_root(self, node: str) -> complex:
        return self._above[node]

    def roots(self) -> list[str]:
        return [node for node in self.nodes if self._root[node] == node]

    def currents_of_joints(self, leaving: Mapping[str, complex]) -> dict[str, complex]:
        """Return the current of each joint, so that what leaves a node through impedances comes in through joints."""
        brought = dict(leaving)
        ends = {name: (start, emf) for name, start, _, emf in self._joints}
        sources = {name for name, _, _, emf in self._joints if emf != 0}
        currents: dict[str, complex] = {}
        for name, node, parent in reversed(self._tree):
            inward = brought.get(node, 0j)  # from the parent to this node
            brought[parent] = brought.get(parent, 0j) + inward
            along = inward if ends[name][0] == parent else -inward
            currents[name] = -along if name in sources else along
        return currents


def _check(branches: list[Branch], sources: list[Source], couplings: list[Coupling], reference: str) -> None:
    names = [each[0] for each in (*branches, *sources)]
    if len(set(names)) != len(names):
        seen: set[str] = set()
        twice = next(name for name in names if name in seen or seen.add(name))
        raise CircuitError(message("{name} is there twice.", name=twice))
    for name, start, end, *values in (*branches, *sources):
        if start == end:
            raise CircuitError(message("{name} has both its ends at {node}.", name=name, node=start))
        if not all(math.isfinite(part) for value in values for part in (complex(value).real, complex(value).imag)):
            raise CircuitError(message("{name} has a value that is no finite number.", name=name))
        if complex(values[-1]).real < 0:
            raise CircuitError(message("{name} has less than zero ohms.", name=name))
    finite = {name for name, _, _, impedance in branches if impedance != 0}
    for first, second, impedance in couplings:
        if first == second or first not in finite or second not in finite:
            raise CircuitError(
                message("A coupling needs two branches with ohms: {first} and {second}.", first=first, second=second)
            )
        if not (math.isfinite(complex(impedance).real) and math.isfinite(complex(impedance).imag)):
            raise CircuitError(
                message("The coupling of {first} and {second} is no finite number.", first=first, second=second)
            )
    _check_open_sources(branches, sources, reference)
    _check_islands(branches, sources, reference)


def _check_open_sources(branches: list[Branch], sources: list[Source], reference: str) -> None:
    touching: dict[str, int] = defaultdict(int)
    for _, start, end, *_ in (*branches, *sources):
        touching[start] += 1
        touching[end] += 1
    for name, start, end, *_ in sources:
        for node in (start, end):
            if touching[node] == 1 and node != reference:
                raise CircuitError(
                    message("The source {name} is open: nothing else is connected at {node}.", name=name, node=node)
                )


def _check_islands(branches: list[Branch], sources: list[Source], reference: str) -> None:
    neighbors: dict[str, list[str]] = defaultdict(list)
    for _, start, end, *_ in (*branches, *sources):
        neighbors[start].append(end)
        neighbors[end].append(start)
    reached, waiting = {reference}, [reference]
    while waiting:
        for node in neighbors[waiting.pop()]:
            if node not in reached:
                reached.add(node)
                waiting.append(node)
    island = [node for node in neighbors if node not in reached]
    if island:
        raise CircuitError(
            message(
                "Nothing connects {nodes} to {reference}. Connect this island, or leave it out.",
                nodes=", ".join(island[:MAX_NAMED]),
                reference=reference,
            )
        )
