"""What the plan of a plane beside water asks: the water, the equipment, distances, and what is planned or found."""

from __future__ import annotations

from calc.declare import Choice
from calc.vocabulary import SMALLEST, one_of, quantity, yes_or_no
from calc.words import say

BODY, DOCK, FLOATING, SHIP = "body", "dock", "floating-building", "ship"
WATER = one_of(
    say("Which water"),
    say("Pools, spas and fountains have a plan of their own."),
    (
        Choice(BODY, say("Pond, lake, canal, fish farm, treatment basin")),
        Choice(DOCK, say("Dock, marina or boatyard, with its shore power")),
        Choice(FLOATING, say("Floating building")),
        Choice(SHIP, say("Ship or boat")),
    ),
)
SERVICE, DISCONNECT, CONTROLLED = "service", "disconnect", "controlled"
EQUIPMENT = one_of(
    say("Equipment outdoors"),
    say("What stands near the water, on land or on the dock."),
    (
        Choice(SERVICE, say("Service equipment that controls equipment in or on the water")),
        Choice(DISCONNECT, say("Disconnect that controls equipment in or on the water")),
        Choice(CONTROLLED, say("Equipment that it controls: a pump, a lift, a light")),
    ),
)
METAL = yes_or_no(
    say("Metal in reach that may become live"),
    say("A metal enclosure or metal controls that people can touch."),
    rare=False,
)
DISTANCE = quantity(
    say("Distance to the water"),
    say("Sideways, to the shoreline at high water or the edge of the dock."),
    "ft",
    0,
    10_000,
    example="8",
    finest=SMALLEST,
)
VOLTAGE = quantity(
    say("Voltage to ground"), say("Of the system that feeds it, for example 120 or 277 V."), "V", 1, 1000, example="277"
)
REACH = quantity(
    say("Plane: how far it reaches out"),
    say("From below the equipment, wherever a person could stand and touch it. Empty if there is none."),
    "in",
    0,
    1200,
    example="36 in",
    finest=SMALLEST,
)
DEPTH = quantity(
    say("Plane: how deep under the walking surface"),
    say("0 if it lies on it."),
    "in",
    0,
    120,
    example="3 in",
    finest=SMALLEST,
    rare=True,
)
WET_METAL = yes_or_no(
    say("Metal that touches the water, piping or tanks"), say("Ladders, frames, rails, pipes."), rare=False
)
