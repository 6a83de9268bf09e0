"""Wire for the surface around a pool: how much of it, from the length and width of the pool."""

from __future__ import annotations

import math

from calc.equipotential import pool_fields as ask
from calc.equipotential.pool_perimeter import WIDTH
from calc.messages import message
from calc.trace import Trace, marked_section, shown_number

RING_DISTANCE, RING_DEPTH = "planes/pool_ring_distance", "planes/pool_ring_depth"
MESH, ALLOWANCE = "planes/pool_grid_spacing", "planes/wire_allowance"


def ring_feet(length: float, width: float, trace: Trace) -> float:
    """Return the feet of one wire around a pool of `length` by `width` feet, laid as far out as it may lie."""
    limits = trace.cite(RING_DISTANCE).rows[0]
    around = trace.compute(
        message("Four straight sides, plus twice the distance out at each square corner. A round pool takes less."),
        "2 * (long + wide) + 8 * out / 12",
        "ft",
        (RING_DISTANCE,),
        long=length,
        wide=width,
        out=limits["most"],
    )
    return _with_allowance(around, trace)


def grid_feet(length: float, width: float, trace: Trace) -> float:
    """Return the feet of wire in a copper grid around a pool of `length` by `width` feet, as far out as it counts."""
    reach = trace.cite(WIDTH).value
    area = trace.compute(
        message("Surface to bond, in square feet: the outer rectangle less the pool."),
        "(long + 2 * reach) * (wide + 2 * reach) - long * wide",
        "ft²",
        (WIDTH,),
        long=length,
        wide=width,
        reach=reach,
    )
    wire = trace.compute(
        message("Wire of the mesh both ways, and one more along the wall."),
        "2 * area * 12 / mesh + 2 * (long + wide)",
        "ft",
        (MESH,),
        area=area,
        mesh=trace.cite(MESH).value,
        long=length,
        wide=width,
    )
    return _with_allowance(wire, trace)


def _with_allowance(feet: float, trace: Trace) -> float:
    return trace.compute(
        message("With the allowance for splices, tails and turns."),
        "measured * (1 + more / 100)",
        "ft",
        (ALLOWANCE,),
        measured=feet,
        more=trace.cite(ALLOWANCE).value,
    )


def list_materials(way: str, feet: float | None, trace: Trace) -> None:
    """Note what to bring: wire by its size and length, and what joins it. way: how the surface is bonded, or "open"."""
    size = trace.cite("places/pool_bonding_conductor").value
    metals = " / ".join(row["metal"] for row in trace.cite("planes/pool_conductor_materials").rows)
    if feet is not None:
        words = {"feet": shown_number(math.ceil(round(feet, 6))), "size": size}
        if way == ask.GRID:
            trace.note(message("Bring: {feet} ft of {size} AWG bare solid copper for the grid.", **words))
        else:
            trace.note(message("Bring: {feet} ft of {size} AWG bare solid copper for one ring.", **words))
    trace.note(
        message("Bring: {size} AWG {metals} for the runs to lights, rails, metal and pump.", size=size, metals=metals)
    )
    trace.note(
        message(
            "Bring: clamps and splices listed for the use ({means}), suitable for wet, corrosive locations ({wet}).",
            means=trace.section("places/connection_means"),
            wet=trace.section("places/pool_terminals"),
        )
    )
    if way == ask.RING:
        near, deep = trace.cite(RING_DISTANCE).rows[0], trace.cite(RING_DEPTH).rows[0]
        trace.note(
            message(
                "Run the ring {near} to {far} in from the inside wall, {least} to {most} in below the base of the "
                "surface ({section}).",
                near=near["least"],
                far=near["most"],
                section=marked_section(trace.cite(RING_DISTANCE)),
                **deep,
            )
        )


BEFORE_THE_POUR = (
    message("Check 1: the shell. Bare bars are tied at their crossings; a grid lies where bars are coated or missing."),
    message("Check 2: the surface. Steel, mesh, grid or wire goes all around, at its distance and depth."),
    message("Check 3: the ties from that surface to a conductive shell, spread evenly."),
    message("Check 4: lights. A wire on the outside of each metal shell, and the jumper inside a nonmetallic conduit."),
    message("Check 5: sockets of ladders and rails, before concrete hides them."),
    message("Check 6: fence posts, frames and pipes nearby."),
    message("Check 7: tails to the pump, the heater and the cover's motor, long enough to reach."),
    message("Check 8: what touches the water. Then tug each clamp and photograph it. Nobody sees it after the pour."),
)


def list_checks(trace: Trace) -> None:
    """Note the order in which to look at it before anyone pours."""
    for words in BEFORE_THE_POUR:
        trace.note(words)
