"""The shape of the electrode entered, once its measures are inside what the formulas hold for."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.calculator import FieldError, NotCovered, require
from calc.conductors.area import area
from calc.electrodes import shape
from calc.electrodes.entered import shown
from calc.messages import Message, message
from calc.trace import Trace
from calc.units import convert

ROUNDING = 1e-9
FEWEST_AROUND = 2  # two rods have no figure between them
LIMITS = "electrodes/formula_limits"
TOGETHER = "electrodes/rods_together"


@dataclass(frozen=True)
class Measures:
    """What was entered of the electrode: lengths in ft, diameter in inches, None where left out."""

    electrode: str
    length: float | None
    diameter: float | None
    conductor: str | None
    rods: int
    spacing: float | None
    layout: str
    depth: float | None
    width: float | None
    height: float | None


@dataclass(frozen=True)
class Shape:
    """The shape of the metal, 1/m, of the concrete around it, if any, and of the worst form that it may have."""

    metal: float
    concrete: float | None = None
    worst: float | None = None


def electrode_shape(asked: Measures, trace: Trace) -> Shape:
    """Return the shape of the electrode, recorded. Raises: FieldError for what is missing, NotCovered past a limit."""
    length = _metres(asked.length, "length")
    if asked.rods > 1 and asked.electrode != "rod":
        raise FieldError(
            "rods", message("Several electrodes together are figured only for rods and pipes. Enter 1 here.")
        )
    if asked.electrode == "rod":
        return Shape(_rods(asked, length, trace))
    depth = _metres(asked.depth, "depth")
    if asked.electrode == "plate":
        return Shape(_plate(length, _metres(asked.width, "width"), depth, trace))
    radius = _radius(asked, trace)
    _stay_slender(length, radius, trace)
    _stay_buried(radius, depth)
    if asked.electrode == "ring":
        return _ring(asked, length, radius, depth, trace)
    value = shape.wire(length, radius, depth)
    trace.step(message("Ohms of the metal in soil of 1 ohm·m: a level line and its mirror image."), value, "1/m")
    if asked.electrode == "buried-wire":
        return Shape(value)
    return Shape(value, _footing(asked, length, radius, depth, trace))


def _rods(asked: Measures, length: float, trace: Trace) -> float:
    radius = convert(require(asked.diameter, "diameter"), "in", "m") / 2
    _stay_slender(length, radius, trace)
    alone = shape.rod(length, radius)
    trace.step(
        message("Ohms of one rod in soil of 1 ohm·m: a line and its mirror image."),
        alone,
        "1/m",
        cites=(LIMITS,),
    )
    if asked.rods == 1:
        return alone
    spacing = _metres(asked.spacing, "spacing")
    least = _limit("spacing-by-diameter", trace)
    if _less(spacing, least * 2 * radius):
        raise _past_limit(message("rods closer than {least} of their diameters", least=least))
    together = shape.rods(length, radius, spacing, asked.rods, asked.layout)
    trace.step(
        message(
            "The same for {count} rods, each in the field of the others: {percent} percent of one rod.",
            count=asked.rods,
            percent=shown(100 * together / alone),
        ),
        together,
        "1/m",
    )
    if asked.rods > FEWEST_AROUND and asked.layout == "line":
        around = shape.rods(length, radius, spacing, asked.rods, "circle")
        trace.note(
            message(
                "Around a closed shape, {count} rods have {percent} percent of one rod, not {line}.",
                count=asked.rods,
                percent=shown(100 * around / alone),
                line=shown(100 * together / alone),
            )
        )
    _compare_with_the_table(asked.rods, together / alone * asked.rods, trace)
    rule_spacing = trace.cite("grounding/rod_spacing")
    if asked.spacing < rule_spacing.value:
        trace.warn(
            message(
                "Rods that supplement each other must be at least {least} ft apart ({section}).",
                least=rule_spacing.value,
                section=rule_spacing.section,
            )
        )
    return together


def _compare_with_the_table(count: int, computed: float, trace: Trace) -> None:
    row = next((row for row in trace.cite(TOGETHER).rows if row["rods"] == count), None)
    if row:
        trace.step(
            message(
                "For comparison: a published factor for {count} rods one rod length apart is {factor}. Computed with "
                "the spacing entered it is {computed}.",
                count=count,
                factor=row["factor"],
                computed=shown(computed),
            ),
            cites=(TOGETHER,),
        )


def _ring(asked: Measures, length: float, radius: float, depth: float, trace: Trace) -> Shape:
    """A circle has the least resistance of all rings of its wire, one laid to and fro in a line the most."""
    if asked.width is not None:
        short = _metres(asked.width, "width")
        long = length / 2 - short
        if min(long, short) < _limit("spacing-by-diameter", trace) * 2 * radius:
            raise FieldError(
                "width", message("The wire goes around: enter one side of the ring, less than half of the wire.")
            )
        value = shape.rectangle(max(long, short), min(long, short), radius, depth)
        trace.step(
            message(
                "Ohms of the ring in soil of 1 ohm·m: {long} by {short} ft and its mirror image.",
                long=shown(convert(max(long, short), "m", "ft")),
                short=shown(convert(min(long, short), "m", "ft")),
            ),
            value,
            "1/m",
        )
        return Shape(value)
    value = shape.ring(length, radius, depth)
    trace.step(message("Ohms of the ring in soil of 1 ohm·m: a circle and its mirror image."), value, "1/m")
    worst = shape.wire(length / 2, radius, depth)
    trace.step(message("At most, for a ring so narrow that it is a line half as long as the wire."), worst, "1/m")
    return Shape(value, worst=worst)


def _plate(one: float, other: float, depth: float, trace: Trace) -> float:
    long, short = max(one, other), min(one, other)
    least = _limit("depth-by-radius", trace)
    if _less(depth, least * min(math.sqrt(long * short / math.pi), short)):
        raise _past_limit(
            message("a plate nearer to the surface than the radius of a disc of its area, or than its width")
        )
    if long > _limit("strip-length-by-width", trace) * short * (1 + ROUNDING):
        value = shape.strip(long, short, depth)
        words = message("Ohms of the strip in soil of 1 ohm·m: a wire with a quarter of its width as radius.")
    else:
        value = shape.plate(long, short, depth)
        words = message("Ohms of the plate in soil of 1 ohm·m: an oval disc of its area and its mirror image.")
    trace.step(words, value, "1/m", cites=(LIMITS,))
    return value


def _footing(asked: Measures, length: float, radius: float, depth: float, trace: Trace) -> float:
    width, height = _metres(asked.width, "width"), _metres(asked.height, "height")
    outside = math.sqrt(width * height / math.pi)
    if outside <= radius:
        raise FieldError(
            "width", message("The concrete is thinner than the metal in it. Enter its whole width and height.")
        )
    if _less(depth, height / 2):
        raise FieldError("depth", message("The footing would stick out of the soil. Enter the depth of its middle."))
    _stay_slender(length, outside, trace)
    value = shape.wire(length, outside, depth)
    trace.step(
        message(
            "The same of the outside of the footing, taken as round, {ft} ft thick.",
            ft=shown(convert(2 * outside, "m", "ft")),
        ),
        value,
        "1/m",
    )
    return value


def _radius(asked: Measures, trace: Trace) -> float:
    if asked.diameter is not None:
        return convert(asked.diameter, "in", "m") / 2
    if asked.conductor is None:
        raise FieldError("diameter", message("Enter the diameter, or the size of the wire."))
    mils = math.sqrt(area(asked.conductor, trace.edition))
    trace.step(message("Diameter of the wire, from its area."), mils / 1000, "in", cites=("conductors/area",))
    return convert(mils, "mil", "m") / 2


def _stay_slender(length: float, radius: float, trace: Trace) -> None:
    least = _limit("length-by-diameter", trace)
    if _less(length, least * 2 * radius):
        raise _past_limit(message("an electrode shorter than {least} of its diameters", least=least))


def _stay_buried(radius: float, depth: float) -> None:
    if depth <= radius:
        raise FieldError(
            "depth", message("It would lie on the surface. Enter the depth of its middle, more than its thickness.")
        )


def _less(metres: float, least: float) -> bool:
    """Tell whether a length is below a limit by more than conversion of units makes."""
    return metres < least * (1 - ROUNDING)


def _limit(limit: str, trace: Trace) -> float:
    return next(row["least"] for row in trace.cite(LIMITS).rows if row["limit"] == limit)


def _past_limit(what: Message) -> NotCovered:
    return NotCovered(
        message("The formulas used here do not hold for {what}.", what=what),
        message("Measure it, or have it solved in small pieces (look under “method of moments, grounding”)."),
    )


def _metres(feet: float | None, field: str) -> float:
    return convert(require(feet, field), "ft", "m")
