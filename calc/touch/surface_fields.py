"""What is asked about metal in the ground that is live, and about who stands over it."""

from __future__ import annotations

from dataclasses import replace

from calc.declare import Choice
from calc.vocabulary import SMALLEST, device_rating, one_of, quantity, trade_size
from calc.words import say

SIZES = ("1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "4")
WET, BARE, SHOD = "wet", "bare", "shod"

SHAPE = one_of(
    say("What lies in the ground"),
    say("Steel conduit counts by its outside. Plastic at its ends holds it apart from other metal."),
    (
        Choice("elbow", say("A quarter bend of conduit")),
        Choice("pipe", say("A straight level run of conduit")),
        Choice("fitting", say("A fitting or box, counted as round")),
    ),
)
COVER = quantity(
    say("Cover over the metal at its shallowest point"),
    say("From the top of the metal to the surface. In inches or feet."),
    "in",
    0.25,
    240,
    example="18 in",
)
COVER = replace(COVER, slider=(1, 72, "in"))
VOLTAGE = quantity(say("Voltage of the metal"), say("To ground: 120 V, 277 V or another."), "V", 1, 1000, example="120")
DISTANCE = quantity(
    say("Distance of the person"),
    say("Along the ground, from the point with the most voltage. 0 is right over it."),
    "ft",
    0,
    100,
    example="3",
    finest=SMALLEST,
)
TRADE_SIZE = trade_size(say("Trade size"), say("Of an elbow or a run."), SIZES)
LENGTH = quantity(say("Length of the run"), say("Needed for a straight run."), "ft", 0.1, 1000, example="10")
DIAMETER = quantity(
    say("Width of the fitting"), say("Needed for a fitting: its widest measure."), "in", 0.5, 60, example="4 in"
)
FEET = one_of(
    say("Feet of the person"),
    say("Their other hand is on metal that is bonded to the source."),
    (
        Choice(WET, say("Bare and wet")),
        Choice(BARE, say("Bare on the soil")),
        Choice(SHOD, say("In shoes")),
    ),
)
DEVICE = device_rating(
    say("Overcurrent device ahead"), say("Leave 15 to compare with a small household breaker."), rare=True
)
LIES = one_of(
    say("How the elbow lies"),
    say("Both ways are shown if no one knows."),
    (
        Choice("unknown", say("Not known")),
        Choice("level", say("Flat, both ends level")),
        Choice("upright", say("One end turned up")),
    ),
    rare=True,
)
BEND = quantity(
    say("Radius of the bend"),
    say("To the middle of the conduit. Leave it empty for the usual radius of its size."),
    "in",
    1,
    120,
    example="9.5 in",
    rare=True,
)
