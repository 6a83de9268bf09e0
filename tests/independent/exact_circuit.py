"""Voltages of a circuit with fifty digits: every current an unknown of its own, solved as one full matrix."""

import mpmath

DIGITS = 50


def exact_solution(circuit, reference="E"):
    """Return volt by node and ampere by branch and source, for (branches, sources, couplings) as `solve` takes them.

    Equations: at each node the currents sum to zero; over each branch the voltage is that of its own impedance and of
    those coupled with it; over each source it is the emf less what its impedance takes.
    """
    branches, sources, couplings = circuit
    with mpmath.workdps(DIGITS):
        parts = [*((*branch[:3], 0, branch[3]) for branch in branches), *sources]
        nodes = list(dict.fromkeys(node for _, start, end, *_ in parts for node in (start, end) if node != reference))
        row_of_node = {node: place for place, node in enumerate(nodes)}
        row_of_part = {part[0]: len(nodes) + place for place, part in enumerate(parts)}
        size = len(nodes) + len(parts)
        matrix, right = mpmath.zeros(size, size), mpmath.zeros(size, 1)
        driving = {source[0] for source in sources}
        for name, start, end, emf, impedance in parts:
            row = row_of_part[name]
            # A source's current leaves it at its first node, a branch's enters at its first node.
            outward = -1 if name in driving else 1
            for node, sign in ((start, 1), (end, -1)):
                if node != reference:
                    matrix[row, row_of_node[node]] += sign
                    matrix[row_of_node[node], row] += sign * outward
            matrix[row, row] -= outward * mpmath.mpmathify(impedance)
            right[row] = mpmath.mpmathify(emf)
        for first, second, mutual in couplings:
            matrix[row_of_part[first], row_of_part[second]] -= mpmath.mpmathify(mutual)
            matrix[row_of_part[second], row_of_part[first]] -= mpmath.mpmathify(mutual)
        found = mpmath.lu_solve(matrix, right)
        voltages = {reference: 0j, **{node: complex(found[place]) for node, place in row_of_node.items()}}
        return voltages, {name: complex(found[place]) for name, place in row_of_part.items()}
