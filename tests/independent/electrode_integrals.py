"""Electrodes as integrals over the soil, by scipy: the voltage that a current spread along metal makes on it.

The surface of the earth mirrors the metal. Resistances in soil of 1 ohm·m; lengths in m. `even` routes take the
current as even along the metal and average its voltage; `pieces` let each piece carry its own current, all at one
voltage, which is nearer to nature and always lower.
"""

import math

import numpy
from scipy.integrate import dblquad, quad
from scipy.special import roots_legendre

EXACT = dict(epsabs=0, epsrel=1e-9)
WHOLE_SPACE = 4 * math.pi


def average_along(length, radius):
    """Return the average voltage, of 1 ampere spread along one line, on a parallel line `radius` away."""

    # Pairs of points by how far apart they are along the line: of distance t there are length - t.
    def at(t):
        return 2 * (length - t) / math.hypot(t, radius)

    near = [radius, min(100 * radius, length / 2)]
    return quad(at, 0, length, points=near, limit=500, **EXACT)[0] / length**2 / WHOLE_SPACE


def even_rod(length, radius):
    """Return a rod from the surface down: half of a line twice as long that carries twice the current."""
    return 2 * average_along(2 * length, radius)


def even_wire(length, radius, depth):
    """Return a level wire and its mirror image, twice the depth away."""
    return average_along(length, radius) + average_along(length, 2 * depth)


def even_ring(length, radius, depth):
    """Return a level circle of wire and its mirror image."""
    across = length / math.pi

    def around(away):
        def at(angle):
            return 1 / math.hypot(across * math.sin(angle / 2), away)

        return quad(at, 0, math.pi, points=[away / across], limit=500, **EXACT)[0] / math.pi / WHOLE_SPACE

    return around(radius) + around(2 * depth)


def even_rods_apart(length, distance):
    """Return the voltage on one rod of 1 ampere in another, both summed point by point in two dimensions."""

    def at(z, other):
        return 1 / math.hypot(z - other, distance) + 1 / math.hypot(z + other, distance)

    return dblquad(at, 0, length, 0, length, epsabs=0, epsrel=1e-9)[0] / length**2 / WHOLE_SPACE


def disc(radius, depth, points=200):
    """Return a flat level disc and its mirror image by Love's integral equation, exactly but for rounding."""
    apart = 2 * depth / radius
    places, weights = roots_legendre(points)
    kernel = apart / math.pi / (apart**2 + (places[:, None] - places[None, :]) ** 2)
    solved = numpy.linalg.solve(numpy.eye(points) + kernel * weights, numpy.ones(points))
    return 1 / (8 * radius) / (weights @ solved / 2)


def pieces(lines, radius, count=200):
    """Return straight wires ((x, y, z), (x, y, z)), z down from the surface, joined together, in `count` pieces each.

    Pieces are short near the ends, where most current leaves.
    """
    cuts = (1 - numpy.cos(numpy.linspace(0, math.pi, count + 1))) / 2
    start, end = [], []
    for one, other in lines:
        along = numpy.asarray(one) + cuts[:, None] * (numpy.asarray(other, float) - numpy.asarray(one))
        start.append(along[:-1])
        end.append(along[1:])
    start, end = numpy.concatenate(start), numpy.concatenate(end)
    mirror = numpy.array([1, 1, -1])
    middle = (start + end) / 2
    voltage = _of_pieces(middle, start, end, radius) + _of_pieces(middle, start * mirror, end * mirror, radius)
    return 1 / numpy.linalg.solve(voltage, numpy.ones(len(middle))).sum()


def _of_pieces(places, start, end, radius):
    """Return the voltage at each place of 1 ampere spread along each piece, seen from no nearer than `radius`."""
    length = numpy.linalg.norm(end - start, axis=1)
    along = (end - start) / length[:, None]
    from_start = places[:, None, :] - start[None, :, :]
    forward = numpy.einsum("psx,sx->ps", from_start, along)
    sideways = numpy.linalg.norm(from_start - forward[:, :, None] * along[None, :, :], axis=2)
    away = numpy.maximum(sideways, radius)
    return (numpy.arcsinh(forward / away) + numpy.arcsinh((length - forward) / away)) / length / WHOLE_SPACE


def plate_in_patches(length, width, depth, along=36, across=10):
    """Return a flat level rectangular plate and its mirror image in small rectangles, smaller toward the edges.

    Each carries a current of its own; the voltage is set in its middle. Of even charge it is known in closed form.
    """
    x, y = ((1 - numpy.cos(numpy.linspace(0, math.pi, count + 1))) / 2 for count in (along, across))
    near_x, near_y = (each.ravel() for each in numpy.meshgrid(length * x[:-1], width * y[:-1], indexing="ij"))
    far_x, far_y = (each.ravel() for each in numpy.meshgrid(length * x[1:], width * y[1:], indexing="ij"))
    at_x, at_y = (near_x + far_x) / 2, (near_y + far_y) / 2

    def voltage(down):
        def part(edge_x, edge_y):
            dx, dy = edge_x[None] - at_x[:, None], edge_y[None] - at_y[:, None]
            away = numpy.sqrt(dx * dx + dy * dy + down * down)
            level = dx * numpy.log(dy + away) + dy * numpy.log(dx + away)
            return level - down * numpy.arctan(dx * dy / (down * away)) if down else level

        whole = part(far_x, far_y) - part(near_x, far_y) - part(far_x, near_y) + part(near_x, near_y)
        return whole / ((far_x - near_x) * (far_y - near_y))[None] / WHOLE_SPACE

    return 1 / numpy.linalg.solve(voltage(0) + voltage(2 * depth), numpy.ones(len(at_x))).sum()
