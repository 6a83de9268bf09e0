"""Draws our mark as PNG images: phones take no SVG for the icon of an installed page.

It reads what `icons/mark.svg` holds, rectangles, circles and paths of straight lines and curves, and refuses all else.
"""

from __future__ import annotations

import math
import re
import struct
import zlib
from collections.abc import Iterator
from xml.etree import ElementTree

type Point = tuple[float, float]
type Color = tuple[int, int, int]

ROUND = 96  # points of a circle, and of a curve
ROWS = 4  # lines that are looked at in each row of an image
_SPACE = "{http://www.w3.org/2000/svg}"
_COMMAND = re.compile(r"([MLHVCv])([^A-Za-z]*)")
_NUMBER = re.compile(r"-?\d*\.?\d+")


class IconError(Exception):
    """The mark holds something that is not drawn here."""


def icon_image(svg: str, size: int, share: float = 1.0) -> bytes:
    """Return a square PNG of a drawing, `size` pixels wide.

    `share` is how much of it the drawing takes, around the middle; the color of its first shape, the ground, fills the
    rest. Raises: IconError.
    """
    root = ElementTree.fromstring(svg)  # noqa: S314 (our own file)
    left, top, width, height = map(float, root.attrib["viewBox"].split())
    if width != height:
        raise IconError("the mark is not square")
    (_, ground), *shapes = (shape for element in root for shape in _shapes(element))
    scale = size * share / width
    margin = size * (1 - share) / 2
    rows = [[ground] * size for _ in range(size)]
    for outline, color in shapes:
        _fill(rows, [((x - left) * scale + margin, (y - top) * scale + margin) for x, y in outline], color)
    return _png(rows)


def _shapes(element: ElementTree.Element) -> Iterator[tuple[list[Point], Color]]:
    """Yield the outline of each part of an element, and its color."""
    kind, told = element.tag.removeprefix(_SPACE), element.attrib
    if kind == "rect":
        width, height = float(told["width"]), float(told["height"])
        yield [(0, 0), (width, 0), (width, height), (0, height)], _color(told["fill"])
    elif kind == "circle":
        across, down, radius = (float(told[name]) for name in ("cx", "cy", "r"))
        turns = (2 * math.pi * step / ROUND for step in range(ROUND))
        outline = [(across + radius * math.cos(turn), down + radius * math.sin(turn)) for turn in turns]
        yield outline, _color(told["fill"])
    elif kind == "path" and told.get("fill", "none") == "none":
        for line in _lines(told["d"]):
            yield _stroke(line, float(told["stroke-width"])), _color(told["stroke"])
    else:
        raise IconError(f"the mark has a {kind} that is not drawn here")


def _color(written: str) -> Color:
    digits = written.removeprefix("#")
    if len(digits) == 3:
        digits = "".join(digit * 2 for digit in digits)
    red, green, blue = bytes.fromhex(digits)
    return red, green, blue


def _lines(path: str) -> Iterator[list[Point]]:
    """Yield each line of a path as points, curves in short pieces."""
    if _COMMAND.sub("", path).strip():
        raise IconError(f"a path of the mark is not drawn here: {path}")
    line: list[Point] = []
    for command, written in _COMMAND.findall(path):
        numbers = [float(number) for number in _NUMBER.findall(written)]
        if command == "M":
            if line:
                yield line
            line = [(numbers[0], numbers[1])]
            continue
        across, down = line[-1]
        match command:
            case "L":
                line.append((numbers[0], numbers[1]))
            case "H":
                line.append((numbers[0], down))
            case "V":
                line.append((across, numbers[0]))
            case "v":
                line.append((across, down + numbers[0]))
            case _:
                line += _curve((across, down), *zip(numbers[::2], numbers[1::2], strict=True))
    yield line


def _curve(start: Point, first: Point, second: Point, end: Point) -> list[Point]:
    """Return points along a cubic curve, without its start."""
    points: list[Point] = []
    for step in range(1, ROUND + 1):
        t = step / ROUND
        weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3)
        x, y = (math.sumprod(weights, axis) for axis in zip(start, first, second, end, strict=True))
        points.append((x, y))
    return points


def _stroke(line: list[Point], width: float) -> list[Point]:
    """Return the outline of a line of this width that bends slowly and ends flat."""
    sides: tuple[list[Point], list[Point]] = ([], [])
    for place, (x, y) in enumerate(line):
        (x0, y0), (x1, y1) = line[max(place - 1, 0)], line[min(place + 1, len(line) - 1)]
        length = math.hypot(x1 - x0, y1 - y0)
        aside, down = (y0 - y1) / length * width / 2, (x1 - x0) / length * width / 2
        sides[0].append((x + aside, y + down))
        sides[1].append((x - aside, y - down))
    return sides[0] + sides[1][::-1]


def _fill(rows: list[list[Color]], outline: list[Point], color: Color) -> None:
    """Paint what an outline holds, its edges by how much of each pixel they cover."""
    edges = list(zip(outline, outline[1:] + outline[:1], strict=True))
    heights = [y for _, y in outline]
    for row in range(max(0, math.floor(min(heights))), min(len(rows), math.ceil(max(heights)))):
        covered = [0.0] * len(rows)
        for line in range(ROWS):
            y = row + (line + 0.5) / ROWS
            crossings = sorted(
                x0 + (y - y0) / (y1 - y0) * (x1 - x0) for (x0, y0), (x1, y1) in edges if (y0 <= y) != (y1 <= y)
            )
            for start, end in zip(crossings[::2], crossings[1::2], strict=True):
                for pixel in range(max(0, math.floor(start)), min(len(rows), math.ceil(end))):
                    covered[pixel] += (min(end, pixel + 1) - max(start, pixel)) / ROWS
        for pixel, part in enumerate(covered):
            if part:
                rows[row][pixel] = _mixed(rows[row][pixel], color, part)


def _mixed(below: Color, above: Color, part: float) -> Color:
    red, green, blue = (round(under + (over - under) * part) for under, over in zip(below, above, strict=True))
    return red, green, blue


def _png(rows: list[list[Color]]) -> bytes:
    pixels = b"".join(b"\0" + bytes(value for color in row for value in color) for row in rows)
    head = struct.pack(">IIBBBBB", len(rows), len(rows), 8, 2, 0, 0, 0)
    chunks = ((b"IHDR", head), (b"IDAT", zlib.compress(pixels, 9)), (b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(
        struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data)) for name, data in chunks
    )
