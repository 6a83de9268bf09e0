"""A pool deck in small equal pieces, by numpy: a second route beside the one of the calculator.

Every wire is cut into equal short pieces, each with its own current; the voltage is averaged over two points of each
piece (the calculator sets it at one point of long spans and of bundles of wires). Lengths in ft, depth downward;
voltages as parts of the rise. One quarter of a rectangular pool: mirror images about both middle lines and the surface.
"""

import math

import numpy

GAUSS = 0.5 / math.sqrt(3)
MIRRORS = [numpy.array((x, y, z)) for x in (1, -1) for y in (1, -1) for z in (1, -1)]


def ring(width, length, out, depth):
    """One wire around the pool, `out` from its wall: the two pieces of it in a quarter."""
    x, y = width / 2 + out, length / 2 + out
    return [((x, 0, depth), (x, y, depth)), ((0, y, depth), (x, y, depth))]


def mesh(width, length, reach, cell, depth):
    """Wires along both sides through the corner, and wires across that end at the water, none on a middle line."""
    lines = []
    for step in range(round(reach / cell) + 1):
        x, y = width / 2 + step * cell, length / 2 + step * cell
        lines += [((x, 0, depth), (x, length / 2 + reach, depth)), ((0, y, depth), (width / 2 + reach, y, depth))]
    for at in numpy.arange(cell / 2, length / 2, cell):
        lines.append(((width / 2, at, depth), (width / 2 + reach, at, depth)))
    for at in numpy.arange(cell / 2, width / 2, cell):
        lines.append(((at, length / 2, depth), (at, length / 2 + reach, depth)))
    return lines


def solved(wires, diameter, piece):
    """Return a function of (x, y) for the touch voltage, and ohms in soil of 1 ohm·m; `wires`: lists of lines."""
    start, end = [], []
    for ends in wires:
        one, other = (numpy.asarray(end, float) for end in ends)
        count = max(2, 2 * round(numpy.linalg.norm(other - one) / piece / 2))
        cuts = one + numpy.linspace(0, 1, count + 1)[:, None] * (other - one)
        start.append(cuts[:-1])
        end.append(cuts[1:])
    start, end = numpy.concatenate(start), numpy.concatenate(end)
    rows = sum(
        _voltage(start + share * (end - start), start, end, diameter / 2) / 2 for share in (0.5 - GAUSS, 0.5 + GAUSS)
    )
    current = numpy.linalg.solve(rows, numpy.ones(len(rows)))

    def touch(x, y):
        return 1 - float((_voltage(numpy.array([[x, y, 0.0]]), start, end, diameter / 2) @ current)[0])

    return touch, 1 / (4 * current.sum() * 0.3048)


def _voltage(places, start, end, radius):
    """Return the voltage at each place of 1 ampere from each piece and its mirror images, soil of 1 ohm·m, per ft."""
    return sum(_of_pieces(places, start * mirror, end * mirror, radius) for mirror in MIRRORS)


def _of_pieces(places, start, end, radius):
    length = numpy.linalg.norm(end - start, axis=1)
    along = (end - start) / length[:, None]
    away = places[:, None, :] - start[None, :, :]
    forward = numpy.einsum("psx,sx->ps", away, along)
    sideways = numpy.maximum(numpy.sqrt(numpy.maximum((away**2).sum(2) - forward**2, 0)), radius)
    return (numpy.arcsinh(forward / sideways) + numpy.arcsinh((length - forward) / sideways)) / length / 4 / math.pi
