"""Voltages of the nodes of a network of admittances, and the inverse of a small full matrix.

The nodes are taken out one by one: a node's star of admittances becomes a mesh between its neighbors. Nothing is
subtracted on the way, so admittances of very different sizes keep all their digits. Currents that are driven stay
between pairs of nodes: what is driven inside a part of the circuit can then not seem to leave it.
"""

from __future__ import annotations

import heapq
import math
from collections import defaultdict
from collections.abc import Mapping, Sequence

TINY = 1e-13
REFINEMENTS = 2

Admittances = dict[str, dict[str, complex]]
Driven = Mapping[tuple[str, str], complex]
Star = tuple[str, complex, dict[str, complex]]  # a node, the sum of its admittances, each by its neighbor
Core = tuple[list[str], list[list[complex]]]  # nodes, and the inverse of their matrix


class SingularMatrixError(ValueError):
    """Equations without a single solution; `node` is the unknown that cannot be told."""

    def __init__(self, node: str = ""):
        super().__init__(node)
        self.node = node


def inverse(rows: Sequence[Sequence[complex]]) -> list[list[complex]]:
    """Return the inverse of a full matrix by elimination with the largest pivots. Raises: SingularMatrixError.

    >>> inverse([[2, 0], [0, 4]])
    [[(0.5+0j), 0j], [0j, (0.25+0j)]]
    """
    size = len(rows)
    left = [list(map(complex, row)) for row in rows]
    right = [[complex(i == j) for j in range(size)] for i in range(size)]
    largest = max(abs(value) for row in left for value in row)
    for column in range(size):
        pivot = max(range(column, size), key=lambda row: abs(left[row][column]))
        if abs(left[pivot][column]) <= TINY * largest:
            raise SingularMatrixError
        left[column], left[pivot] = left[pivot], left[column]
        right[column], right[pivot] = right[pivot], right[column]
        scale = 1 / left[column][column]
        left[column] = [value * scale for value in left[column]]
        right[column] = [value * scale for value in right[column]]
        for row in range(size):
            factor = left[row][column]
            if row != column and factor:
                left[row] = [value - factor * top for value, top in zip(left[row], left[column], strict=True)]
                right[row] = [value - factor * top for value, top in zip(right[row], right[column], strict=True)]
    return right


def node_voltages(admittances: Admittances, driven: Driven, ground: str) -> dict[str, complex]:
    """Return the voltage of each node against `ground`, volt.

    admittances: siemens between two nodes, named from both sides; driven: ampere into the first of two nodes from
    the second, beside what their admittance carries.
    Raises: SingularMatrixError. The node with the fewest neighbors goes first, so memory grows with the branches there
    are. Source: star-mesh transformation; refined with the current that is left over at each node.

    >>> node_voltages({"a": {"E": 0.1}, "E": {"a": 0.1}}, {("a", "E"): 2.0}, "E")
    {'E': 0j, 'a': (20+0j)}
    """
    stars, rest = _stars(admittances, ground)
    core = _core_inverse(rest, ground)
    voltages = _voltages(stars, core, driven, ground)
    for _ in range(REFINEMENTS):
        correction = _voltages(stars, core, _left_over(admittances, voltages, driven), ground)
        voltages = {node: voltage + correction[node] for node, voltage in voltages.items()}
    return voltages


def _left_over(admittances: Admittances, voltages: Mapping[str, complex], driven: Driven) -> Driven:
    """Return the current between each pair of nodes; a solution would bring as much into each node as out of it."""
    left = dict(driven)
    for node, star in admittances.items():
        for other, admittance in star.items():
            if node < other:
                left[node, other] = left.get((node, other), 0j) + admittance * (voltages[other] - voltages[node])
    return left


def _stars(admittances: Admittances, ground: str) -> tuple[list[Star], Admittances]:
    """Return (node, sum, star) of each node taken out, in that order, and what could not be taken out."""
    mesh = {node: dict(star) for node, star in admittances.items()}
    queue = [(len(star), node) for node, star in mesh.items() if node != ground]
    heapq.heapify(queue)
    stars: list[Star] = []
    while queue:
        count, node = heapq.heappop(queue)
        if node not in mesh or len(mesh[node]) != count:
            continue  # a later entry of the queue counts
        star = mesh[node]
        total = complex(math.fsum(y.real for y in star.values()), math.fsum(y.imag for y in star.values()))
        if abs(total) <= TINY * max(map(abs, star.values()), default=0.0):
            continue  # stays until a neighbor changes it
        del mesh[node]
        others = list(star.items())
        for place, (one, admittance) in enumerate(others):
            del mesh[one][node]
            for other, further in others[:place]:
                joined = mesh[one].get(other, 0j) + admittance * further / total
                mesh[one][other] = mesh[other][one] = joined
        for one, _ in others:
            if one != ground:
                heapq.heappush(queue, (len(mesh[one]), one))
        stars.append((node, total, star))
    return stars, mesh


def _core_inverse(rest: Admittances, ground: str) -> Core:
    """Return the nodes that no star could take out, and the inverse of their matrix."""
    nodes = [node for node in rest if node != ground]
    if not nodes:
        return [], []
    rows = [
        [sum(rest[row].values()) if row == column else -rest[row].get(column, 0j) for column in nodes] for row in nodes
    ]
    try:
        return nodes, inverse(rows)
    except SingularMatrixError:
        raise SingularMatrixError(nodes[0]) from None


def _voltages(stars: Sequence[Star], core: Core, driven: Driven, ground: str) -> dict[str, complex]:
    into: dict[str, dict[str, complex]] = defaultdict(dict)

    def drive(node: str, other: str, current: complex) -> None:
        into[node][other] = into[node].get(other, 0j) + current
        into[other][node] = into[other].get(node, 0j) - current

    for (node, other), current in driven.items():
        drive(node, other, complex(current))
    arriving: dict[str, complex] = {}
    for node, total, star in stars:
        currents = into.pop(node, {})
        arriving[node] = sum(currents.values())
        others = list(star.keys() | currents.keys())
        for other in currents:
            del into[other][node]
        for place, one in enumerate(others):
            for other in others[:place]:
                if one in currents or other in currents:
                    crossed = star.get(one, 0j) * currents.get(other, 0j) - star.get(other, 0j) * currents.get(one, 0j)
                    drive(one, other, crossed / total)
    nodes, inverted = core
    voltages = {ground: 0j}
    for node, row in zip(nodes, inverted, strict=True):
        voltages[node] = sum(each * sum(into[other].values()) for other, each in zip(nodes, row, strict=True))
    for node, total, star in reversed(stars):
        flowing = sum(admittance * voltages[other] for other, admittance in star.items())
        voltages[node] = (arriving[node] + flowing) / total
    return voltages
