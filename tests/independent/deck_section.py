"""A section through a deck by finite volumes, by scipy: no thin wires, no mirror images, layers and walls as they come.

Two dimensions: a pool long beyond its ends. Small square cells at the metal, growing ones farther out. A cell held at
the rise acts as a round wire of 0.208 of its side. Lengths in m; voltages as parts of the rise.
"""

import math

import numpy
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

WIRE_BY_CELL = math.exp(-math.pi / 2)  # radius that a held point of a square grid stands for
FOOT = 0.3048


def edges(parts, fine, reach, growth):
    """Return cell edges from 0: growing toward `parts` (low, high), fine in it, growing beyond to `reach`."""
    low, high = parts
    inner = numpy.arange(low, high + fine / 2, fine)
    out, step = [inner[-1]], fine
    while out[-1] < reach:
        step *= growth
        out.append(out[-1] + step)
    back, step = [low], fine
    while back[-1] > 0:
        step *= growth
        back.append(back[-1] - step)
    if len(back) > 1:
        back = [place for place in back[1:] if place > step / 2] + [0.0]
        return numpy.concatenate([back[::-1], inner, out[1:]])
    return numpy.concatenate([inner, out[1:]])


def touch(wires, radius, wall, insulating, reach, offsets, slab=(0.0, 1.0)):
    """Return the touch voltage at `offsets` from the wall. `wires`: (x, depth); `wall`: x of the wall; 0 V at `reach`.

    insulating: nothing flows through x = wall, else the pool is soil and x = 0 its middle line. slab: (thickness,
    resistivity by that of the soil).
    """
    fine = radius / WIRE_BY_CELL
    begin = wall if insulating else 0.0
    deepest = max(depth for _, depth in wires)
    near, far = max(min(x for x, _ in wires) - begin - 10 * fine, 0.0), max(x for x, _ in wires) - begin + 30 * fine
    x_edges = begin + edges((near, max(far, wall - begin + 1.0)), fine, reach, 1.08)
    z_edges = edges((0.0, max(deepest, slab[0]) + 20 * fine), fine, reach, 1.08)
    dx, dz = numpy.diff(x_edges), numpy.diff(z_edges)
    x, z = x_edges[:-1] + dx / 2, z_edges[:-1] + dz / 2
    resistivity = numpy.where(z < slab[0], slab[1], 1.0)
    held = {(int(numpy.abs(x - at).argmin()), int(numpy.abs(z - depth).argmin())) for at, depth in wires}
    voltage = _solved(dx, dz, resistivity, held)
    # The surface is half a cell above the first row; nothing flows up, so its voltage is the same.
    return [1 - float(numpy.interp(wall + away, x, voltage[:, 0])) for away in offsets]


def _solved(dx, dz, resistivity, held):
    columns, layers = len(dx), len(dz)
    number = numpy.arange(columns * layers).reshape(columns, layers)
    sideways = dz[None, :] / resistivity[None, :] / ((dx[:-1] + dx[1:]) / 2)[:, None]
    half = dz * resistivity / 2
    downward = dx[:, None] / (half[:-1] + half[1:])[None, :]
    one = numpy.concatenate([number[:-1].ravel(), number[:, :-1].ravel()])
    other = numpy.concatenate([number[1:].ravel(), number[:, 1:].ravel()])
    between = numpy.concatenate([sideways.ravel(), downward.ravel()])
    outward = numpy.zeros((columns, layers))
    outward[-1] += dz / resistivity / (dx[-1] / 2)
    outward[:, -1] += dx / (dz[-1] * resistivity[-1] / 2)
    right = numpy.zeros(columns * layers)
    for column, layer in held:
        outward[column, layer] += 1e9
        right[number[column, layer]] = 1e9
    diagonal = outward.ravel().copy()
    numpy.add.at(diagonal, one, between)
    numpy.add.at(diagonal, other, between)
    everything = numpy.arange(columns * layers)
    matrix = coo_matrix(
        (
            numpy.concatenate([diagonal, -between, -between]),
            (numpy.concatenate([everything, one, other]), numpy.concatenate([everything, other, one])),
        )
    ).tocsc()
    return spsolve(matrix, right).reshape(columns, layers)
