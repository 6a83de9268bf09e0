"""What is asked about a metal elbow in a run of nonmetallic raceway."""

from __future__ import annotations

from dataclasses import replace

from calc import places
from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import conductor_size, device_rating, metal_of, one_of, quantity
from calc.shared_fields import SETS as PARALLEL_SETS

MAX_INCHES = 1000

CIRCUIT = one_of(
    message("Conductors in the run"),
    message("Service conductors have a stricter rule. A derived system is a transformer or generator of its own."),
    (
        Choice("service", message("Service conductors")),
        Choice(
            "derived-system",
            message("From a derived system, ahead of its first overcurrent device"),
            places.also_called("derived-system"),
        ),
        Choice("feeder-or-branch", message("A feeder or branch circuit, past an overcurrent device")),
    ),
)
COVER = quantity(
    message("Cover over the elbow at its shallowest point"),
    message("In inches, from the top of the metal to finished grade or slab. Where it turns up, measure there."),
    "in",
    0,
    MAX_INCHES,
    example=message("18 in or 460 mm"),
)
CONCRETE = quantity(
    message("Concrete around the elbow where it is thinnest"),
    message("In inches, on every side of the metal. Leave it empty if there is none."),
    "in",
    0,
    MAX_INCHES,
    example=message("2 in or 50 mm"),
)
JOINED = one_of(
    message("What the elbow joins"),
    message("A metal riser or box at one end brings the metal out of the ground."),
    (
        Choice("nonmetallic", message("Nonmetallic raceway at both ends")),
        Choice("metal", message("A metal raceway, riser or box at one end")),
    ),
)
CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor in this raceway"),
    message("It sizes the bond of service and derived conductors, and can change that of a feeder. Or leave it empty."),
)
SETS = replace(PARALLEL_SETS, hint=message("Conductors side by side in each phase, in this raceway."))
CONDUCTOR_METAL = metal_of(message("Metal of that conductor"))
DEVICE = device_rating(
    message("Overcurrent device ahead"),
    message("It sizes the bond of a feeder or branch circuit. Leave it empty to learn only whether to bond."),
)
METAL = metal_of(message("Metal of the jumper"))
