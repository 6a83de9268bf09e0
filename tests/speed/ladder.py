"""How the circuit solver grows: ladders of up to 4,000 nodes, timed, with the memory they take.

A ladder has as many neighbors a node however long it is, so twice the nodes should take twice the time and memory.
"""

import statistics
import time
import tracemalloc

from calc.fault.circuit.network import solve
from tests.speed.row import Row

SHORTEST, LONGER = 500, (1000, 2000, 4000)
ROUNDS = 3
SAME = 1.25  # about 1


def ladder(nodes: int):
    """Return branches and sources of a ladder fed at one end: a rail of impedances, a rung to earth at each node."""
    rail = [(f"rail {each}", f"n{each}", f"n{each + 1}", 0.1 + 0.05j) for each in range(nodes - 1)]
    rungs = [(f"rung {each}", f"n{each}", "E", 25 + each % 7) for each in range(nodes)]
    return [*rail, *rungs], [("supply", "n0", "E", 120, 0.01)]


def seconds(nodes: int) -> float:
    """Time one solution, the median of a few."""
    circuit = ladder(nodes)
    taken = []
    for _ in range(ROUNDS):
        started = time.perf_counter()
        solve(*circuit)
        taken.append(time.perf_counter() - started)
    return statistics.median(taken)


def bytes_at_most(nodes: int) -> int:
    """Return the most memory that one solution holds at a time, beside the circuit itself."""
    circuit = ladder(nodes)
    tracemalloc.start()
    solve(*circuit)
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    return most


def rows():
    """Yield time and memory a node of long ladders as ratios to those of the shortest."""
    second, memory = seconds(SHORTEST) / SHORTEST, bytes_at_most(SHORTEST) / SHORTEST
    for nodes in LONGER:
        name = f"a node of a circuit, ladder of {nodes:,} / {SHORTEST} nodes"
        taken, held = seconds(nodes) / nodes, bytes_at_most(nodes) / nodes
        yield Row(f"{name}, time", taken / second, "", SAME, f"{1000 * nodes * taken:.0f} ms")
        yield Row(f"{name}, memory", held / memory, "", SAME, f"{nodes * held / 1e6:.1f} MB")
