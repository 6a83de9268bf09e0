"""Electrodes solved in small pieces, and the voltages of a three-point test: a second route that shares no code.

A rod: many short pieces, each with a current of its own, all at one voltage (method of moments). A disc and its
mirror image: Love's integral equation by the midpoint rule. Resistances in soil of 1 ohm·m; lengths in m.
"""

import itertools
import math


def solved(rows, right):
    """Solve full equations by elimination with the largest pivots."""
    rows = [[*row, value] for row, value in zip(rows, right, strict=True)]
    size = len(rows)
    for step in range(size):
        best = max(range(step, size), key=lambda row: abs(rows[row][step]))
        rows[step], rows[best] = rows[best], rows[step]
        for row in range(step + 1, size):
            factor = rows[row][step] / rows[step][step]
            rows[row] = [value - factor * above for value, above in zip(rows[row], rows[step], strict=True)]
    found = [0.0] * size
    for step in reversed(range(size)):
        known = sum(rows[step][place] * found[place] for place in range(step + 1, size))
        found[step] = (rows[step][size] - known) / rows[step][step]
    return found


def rod_in_pieces(length, radius, pieces=20):
    """A rod from the surface down; pieces are short near its lower end."""
    ends = [length * math.sin(math.pi * step / (2 * pieces)) for step in range(pieces + 1)]

    def field(start, end, depth):
        return math.asinh((end - depth) / radius) - math.asinh((start - depth) / radius)

    rows = []
    for above, below in itertools.pairwise(ends):
        depth = (above + below) / 2
        rows.append(
            [
                (field(start, end, depth) + field(-end, -start, depth)) / (4 * math.pi * (end - start))
                for start, end in itertools.pairwise(ends)
            ]
        )
    return 1 / sum(solved(rows, [1.0] * pieces))


def buried_disc(radius, depth, pieces=80):
    """A flat level disc, exact but for the midpoint rule."""
    apart, step = 2 * depth / radius, 2 / pieces
    places = [-1 + step * (piece + 0.5) for piece in range(pieces)]
    rows = [
        [
            (one == other) + apart * step / math.pi / (apart**2 + (places[one] - places[other]) ** 2)
            for other in range(pieces)
        ]
        for one in range(pieces)
    ]
    return 1 / (8 * radius) / (step * sum(solved(rows, [1.0] * pieces)) / 2)


def three_point_reading(ohm, soil, length, probe, share):
    """What a tester reads for a rod of `ohm`, its current probe at `probe`, the other at `share` of the way."""
    near, far = share * probe, (1 - share) * probe
    away = math.asinh(length / probe) / length + math.asinh(length / near) / length - 1 / far
    return ohm - soil / (2 * math.pi) * away
