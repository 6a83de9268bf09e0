"""What is asked about metal in the ground that is live, and about who stands over it."""

from __future__ import annotations

from dataclasses import replace

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import SMALLEST, device_rating, one_of, quantity, trade_size

SIZES = ("1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "4")
WET, BARE, SHOD = "wet", "bare", "shod"

SHAPE = one_of(
    message("Buried metal"),
    message("Steel conduit: by its outside diameter. Plastic at its ends isolates it from other metal."),
    (
        Choice("elbow", message("A conduit elbow (quarter bend)")),
        Choice("pipe", message("A straight level run of conduit")),
        Choice("fitting", message("A fitting or box, taken as round")),
    ),
)
COVER = replace(
    quantity(
        message("Cover over the metal at its shallowest point"),
        message("From the top of the metal to the surface. In inches or feet."),
        "in",
        0.25,
        240,
        example="18 in",
    ),
    slider=(1, 72, "in"),
)
VOLTAGE = quantity(
    message("Voltage of the metal"), message("To ground: 120 V, 277 V or another."), "V", 1, 1000, example="120"
)
DISTANCE = quantity(
    message("Distance of the person"),
    message("Along the surface, from the point with the most voltage. 0 is right over it."),
    "ft",
    0,
    100,
    example="3",
    finest=SMALLEST,
)
TRADE_SIZE = trade_size(message("Trade size"), message("Of an elbow or a run."), SIZES)
LENGTH = quantity(message("Length of the run"), message("Needed for a straight run."), "ft", 0.1, 1000, example="10")
DIAMETER = quantity(
    message("Width of the fitting"), message(
        "Needed for a fitting: its widest dimension."
    ), "in", 0.5, 60, example="4 in"
)
FEET = one_of(
    message("Feet of the person"),
    message("Their hand is on metal that is bonded to the source."),
    (
        Choice(WET, message("Bare and wet")),
        Choice(BARE, message("Bare on the soil")),
        Choice(SHOD, message("In shoes")),
    ),
)
DEVICE = device_rating(
    message("Upstream breaker or fuse"), message("Leave 15 to compare with a small household breaker."), rare=True
)
LIES = one_of(
    message("Elbow orientation"),
    message("Both ways are shown if nobody knows."),
    (
        Choice("unknown", message("Not known")),
        Choice("level", message("Flat, both ends level")),
        Choice("upright", message("One end turned up (stub-up)")),
    ),
    rare=True,
)
BEND = quantity(
    message("Radius of the bend"),
    message("To the centerline of the conduit. Leave empty for the usual radius of its size."),
    "in",
    1,
    120,
    example="9.5 in",
    rare=True,
)
