"""What is asked about a metal elbow in a run of nonmetallic raceway."""

from __future__ import annotations

from dataclasses import replace

from calc import places
from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import SETS as PARALLEL_SETS
from calc.shared_fields import conductor_size, device_rating, metal_of, one_of, quantity

MAX_INCHES = 1000

CIRCUIT = one_of(
    message("Conductors in the run"),
    message("Service conductors have a stricter rule. A separately derived system is a transformer or generator."),
    (
        Choice("service", message("Service conductors")),
        Choice(
            "derived-system",
            message("From a separately derived system, ahead of its first overcurrent device"),
            places.also_called("derived-system"),
        ),
        Choice("feeder-or-branch", message("Feeder or branch circuit, on the load side of an overcurrent device")),
    ),
)
COVER = quantity(
    message("Cover over the elbow at the shallowest point"),
    message("In inches, from the top of the metal to finished grade or slab. Where it turns up, measure there."),
    "in",
    0,
    MAX_INCHES,
    example=message("18 in or 460 mm"),
)
CONCRETE = quantity(
    message("Concrete around the elbow at the thinnest point"),
    message("In inches, on every side of the metal. Leave it empty if there is no concrete."),
    "in",
    0,
    MAX_INCHES,
    example=message("2 in or 50 mm"),
)
JOINED = one_of(
    message("Raceway at the ends of the elbow"),
    message("A metal riser or box at one end brings the metal above grade."),
    (
        Choice("nonmetallic", message("Nonmetallic raceway at both ends")),
        Choice("metal", message("A metal raceway, riser or box at one end")),
    ),
)
CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor in this raceway"),
    message(
        "Used to size the bond for service and separately derived conductors, and may change the bond for a feeder. Or "
        "leave it empty."
    ),
)
SETS = replace(PARALLEL_SETS, hint=message("Number of conductors in parallel per phase in this raceway."))
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
DEVICE = device_rating(
    message("Upstream breaker or fuse"),
    message(
        "Used to size the bond for a feeder or branch circuit. Leave it empty to see only whether a bond is required."
    ),
)
METAL = metal_of(message("Jumper material"))
