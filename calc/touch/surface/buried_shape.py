"""The metal entered as a shape in the ground, once its measures are inside what the formulas hold for."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.calculator import FieldError, NotCovered, require
from calc.electrodes.entered import shown
from calc.messages import message
from calc.touch.surface import buried_metal
from calc.touch.surface.buried_metal import Buried
from calc.trace import Trace
from calc.units import convert

LIMITS = "touch/buried_limits"
BENDS = "touch/elbow_bend"
OUTSIDE = "raceways/tube_dimensions"
STEEL = "rigid-metal-conduit"
LEVEL, UPRIGHT = "level", "upright"
ONLY_WAY = "only"  # a run and a fitting lie in no other
ROUNDING = 1e-9


@dataclass(frozen=True)
class BuriedMetal:
    """Buried metal, measures in m. along: the length of a run or the radius of a bend, 0 for a fitting."""

    shape: str
    radius: float
    along: float
    ways: tuple[str, ...]
    thickest: float  # its radius by the depth of its middle, past which the formulas do not hold


def metal_entered(
    shape: str,
    trade_size: str,
    length: float | None,
    diameter: float | None,
    bend: float | None,
    lies: str,
    trace: Trace,
) -> BuriedMetal:
    """Return the metal entered: length in ft, diameter and bend in inches. Raises: FieldError; NotCovered if short."""
    limits = {row["limit"]: row["value"] for row in trace.cite(LIMITS).rows}
    thickest = limits["radius-by-depth"]
    if shape == "fitting":
        return BuriedMetal(shape, convert(require(diameter, "diameter"), "in", "m") / 2, 0.0, (ONLY_WAY,), thickest)
    outside = next(
        row["outside"]
        for row in trace.cite(OUTSIDE).rows
        if (row["raceway"], row["trade_size"]) == (STEEL, trade_size)
    )
    trace.step(message("Outside diameter of the conduit."), outside, "in", (OUTSIDE,))
    radius = convert(outside, "in", "m") / 2
    if shape == "elbow":
        along = convert(_bend(bend, trade_size, outside, trace), "in", "m")
        ways = (LEVEL, UPRIGHT) if lies == "unknown" else (lies,)
        return BuriedMetal(shape, radius, along, ways, thickest)
    along = convert(require(length, "length"), "ft", "m")
    if along < limits["length-by-diameter"] * 2 * radius * (1 - ROUNDING):
        raise NotCovered(
            message("The run is shorter than {least} of its diameters.", least=limits["length-by-diameter"]),
            message("Choose “a fitting or box” and enter its widest dimension."),
        )
    return BuriedMetal(shape, radius, along, (ONLY_WAY,), thickest)


def _bend(entered: float | None, trade_size: str, outside: float, trace: Trace) -> float:
    if entered is None:
        radius = next(row["radius"] for row in trace.cite(BENDS).rows if row["trade_size"] == trade_size)
        trace.step(message("Usual radius of the bend, to the middle of the conduit."), radius, "in", (BENDS,))
        return radius
    if entered < outside:
        raise FieldError(
            "bend", message(
                "The bend must be wider than the conduit is thick. Enter {least} in or more.", least=outside
            )
        )
    return entered


def ways_in_the_ground(metal: BuriedMetal, cover: float) -> dict[str, Buried]:
    """Return the metal under a cover, m, for each way it may lie; none of them where it is too thick for its depth."""
    middle = cover + metal.radius
    if metal.radius / middle > metal.thickest * (1 + ROUNDING):
        return {}
    if metal.shape == "fitting":
        return {ONLY_WAY: buried_metal.ball(metal.radius, middle)}
    if metal.shape == "pipe":
        return {ONLY_WAY: buried_metal.pipe(metal.along, metal.radius, middle)}
    elbows = {
        LEVEL: lambda: buried_metal.level_elbow(metal.along, metal.radius, middle),
        UPRIGHT: lambda: buried_metal.upright_elbow(metal.along, metal.radius, cover),
    }
    return {way: elbows[way]() for way in metal.ways}


def too_shallow(metal: BuriedMetal) -> NotCovered:
    """Return why metal as near to the surface as this has no answer, and from which cover on it has one."""
    least = metal.radius / metal.thickest - metal.radius
    inches = math.ceil(convert(least, "m", "in") * 100) / 100
    return NotCovered(
        message(
            "This close to the surface, the current crowds to one side of the metal, and the formulas no longer "
            "hold. For this metal they hold from {inches} in of cover.",
            inches=shown(inches),
        ),
        message("Count on the full voltage of the metal on the soil over it. Keep people and animals away."),
    )
