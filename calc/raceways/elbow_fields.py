"""What is asked about a metal elbow in a run of nonmetallic raceway."""

from __future__ import annotations

from dataclasses import replace

from calc import places
from calc.declare import Choice
from calc.vocabulary import SETS as PARALLEL_SETS
from calc.vocabulary import conductor_size, device_rating, metal_of, one_of, quantity
from calc.words import say

MOST_INCHES = 1000

CIRCUIT = one_of(
    say("Conductors in the run"),
    say("Service conductors have a stricter rule. A derived system is a transformer or generator of its own."),
    (
        Choice("service", say("Service conductors")),
        Choice(
            "derived-system",
            say("From a derived system, ahead of its first overcurrent device"),
            places.also_called("derived-system"),
        ),
        Choice("feeder-or-branch", say("A feeder or branch circuit, past an overcurrent device")),
    ),
)
COVER = quantity(
    say("Cover over the elbow at its shallowest point"),
    say("In inches, from the top of the metal to finished grade or slab. Where it turns up, measure there."),
    "in",
    0,
    MOST_INCHES,
    example=say("18 in or 460 mm"),
)
CONCRETE = quantity(
    say("Concrete around the elbow where it is thinnest"),
    say("In inches, on every side of the metal. Leave it empty if there is none."),
    "in",
    0,
    MOST_INCHES,
    example=say("2 in or 50 mm"),
)
JOINED = one_of(
    say("What the elbow joins"),
    say("A metal riser or box at one end brings the metal out of the ground."),
    (
        Choice("nonmetallic", say("Nonmetallic raceway at both ends")),
        Choice("metal", say("A metal raceway, riser or box at one end")),
    ),
)
CONDUCTOR = conductor_size(
    say("Largest ungrounded (hot) conductor in this raceway"),
    say("It sizes the bond of service and derived conductors, and can change that of a feeder. Or leave it empty."),
)
SETS = replace(PARALLEL_SETS, hint=say("Conductors side by side in each phase, in this raceway."))
CONDUCTOR_METAL = metal_of(say("Metal of that conductor"))
DEVICE = device_rating(
    say("Overcurrent device ahead"),
    say("It sizes the bond of a feeder or branch circuit. Leave it empty to learn only whether to bond."),
)
METAL = metal_of(say("Metal of the jumper"))
