"""Buried metal a second way: charges spread over its whole skin (numpy), and a ball by its endless row of images.

A pipe is hollow and open; no line stands for it. Its skin is cut into small squares, each with a charge of its own.
Resistances in soil of 1 ohm·m; lengths in m; x across, y along, z down. Voltages as parts of the metal's.
"""

import math

import numpy

WHOLE_SPACE = 4 * math.pi
UP = numpy.array([1, 1, -1])


class Skin:
    """Metal as points on its skin, and what each lets out at 1 V."""

    def __init__(self, points, areas):
        mirrored = numpy.linalg.norm(points[:, None] - (points * UP)[None], axis=2)
        apart = numpy.linalg.norm(points[:, None] - points[None], axis=2)
        numpy.fill_diagonal(apart, 1)
        near = 1 / apart
        # A square on itself: the integral of 1 / r over it, by its area.
        numpy.fill_diagonal(near, 4 * math.log(1 + math.sqrt(2)) / numpy.sqrt(areas))
        self.points = points
        self.currents = numpy.linalg.solve((near + 1 / mirrored) / WHOLE_SPACE, numpy.ones(len(points)))

    @property
    def shape(self):
        return 1 / self.currents.sum()

    def share(self, x, y=0.0):
        return float((2 * self.currents / numpy.linalg.norm(self.points - [x, y, 0], axis=1)).sum() / WHOLE_SPACE)


def _around(centers, ways, radius, count):
    """Points on circles around each center, square to its way."""
    ways = ways / numpy.linalg.norm(ways, axis=1)[:, None]
    aside = numpy.where(numpy.abs(ways[:, 1:2]) < 0.5, [[0.0, 1.0, 0.0]], [[1.0, 0.0, 0.0]])
    aside = numpy.cross(ways, aside)
    aside /= numpy.linalg.norm(aside, axis=1)[:, None]
    other = numpy.cross(ways, aside)
    turns = 2 * math.pi * (numpy.arange(count) + 0.5) / count
    circle = numpy.cos(turns)[None, :, None] * aside[:, None] + numpy.sin(turns)[None, :, None] * other[:, None]
    return (centers[:, None] + radius * circle).reshape(-1, 3)


def _squares(length, radius):
    """How many squares along and around; fewer around a slender pipe."""
    around = 24 if length < 15 * radius else 16 if length < 45 * radius else 8
    return round(length * around / (2 * math.pi * radius)), around


def pipe(length, radius, depth):
    """A straight level pipe, `depth` to its middle."""
    along, around = _squares(length, radius)
    places = ((numpy.arange(along) + 0.5) / along - 0.5) * length
    zero = 0 * places
    points = _around(
        numpy.stack([zero, places, zero + depth], 1), numpy.stack([zero, zero + 1, zero], 1), radius, around
    )
    return Skin(points, numpy.full(len(points), length / along * 2 * math.pi * radius / around))


def elbow(bend, radius, cover, upright):
    """A quarter bend: flat under `cover`, or with its upper end under it and the other a bend deeper."""
    along, around = _squares(bend * math.pi / 2, radius)
    turns = (numpy.arange(along) + 0.5) / along * math.pi / 2
    zero = 0 * turns
    if upright:
        centers = numpy.stack([bend - bend * numpy.cos(turns), zero, cover + bend * numpy.sin(turns)], 1)
        ways = numpy.stack([numpy.sin(turns), zero, numpy.cos(turns)], 1)
    else:
        turns = turns - math.pi / 4
        centers = numpy.stack([bend * numpy.cos(turns), bend * numpy.sin(turns), zero + cover + radius], 1)
        ways = numpy.stack([-numpy.sin(turns), numpy.cos(turns), zero], 1)
    points = _around(centers, ways, radius, around)
    areas = numpy.full(len(points), bend * math.pi / 2 / along * 2 * math.pi * radius / around)
    return Skin(points, areas)


def ball(radius, depth, images=200):
    """A ball: (ohms in soil of 1 ohm·m, its share at any x). Each image of an image stays inside the ball."""
    strength, up = [radius], [0.0]
    for _ in range(images):
        away = 2 * depth - up[-1]
        strength.append(-strength[-1] * radius / away)
        up.append(radius * radius / away)

    def share(x):
        return sum(2 * each / math.hypot(x, depth - rise) for each, rise in zip(strength, up, strict=True))

    return 1 / (WHOLE_SPACE * sum(strength)), share
