"""What the plan of a plane beside water asks: the water, the equipment, distances, and what is planned or found."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import SMALLEST, one_of, quantity, yes_or_no

BODY, DOCK, FLOATING, SHIP = "body", "dock", "floating-building", "ship"
WATER = one_of(
    message("Type of water"),
    message("Pools, spas and fountains have their own plan."),
    (
        Choice(BODY, message("Pond, lake, canal, fish farm, treatment basin")),
        Choice(DOCK, message("Dock, marina or boatyard, with its shore power")),
        Choice(FLOATING, message("Floating building")),
        Choice(SHIP, message("Ship or boat")),
    ),
)
SERVICE, DISCONNECT, CONTROLLED = "service", "disconnect", "controlled"
EQUIPMENT = one_of(
    message("Equipment outdoors"),
    message("What stands near the water, on land or on the dock."),
    (
        Choice(SERVICE, message("Service equipment that controls equipment in or on the water")),
        Choice(DISCONNECT, message("Disconnect that controls equipment in or on the water")),
        Choice(CONTROLLED, message("Equipment that it controls: a pump, a lift, a light")),
    ),
)
METAL = yes_or_no(
    message("Metal within reach that may become live"),
    message("A metal enclosure or metal controls that people can touch."),
    rare=False,
)
DISTANCE = quantity(
    message("Distance to the water"),
    message("Horizontally, to the shoreline at high water or the edge of the dock."),
    "ft",
    0,
    10_000,
    example="8",
    finest=SMALLEST,
)
VOLTAGE = quantity(
    message("Voltage to ground"), message(
        "Of the system that feeds it, for example 120 or 277 V."
    ), "V", 1, 1000, example="277"
)
REACH = quantity(
    message("Plane: how far it reaches out"),
    message("From below the equipment, wherever a person could stand and touch it. Leave empty if there is none."),
    "in",
    0,
    1200,
    example="36 in",
    finest=SMALLEST,
)
DEPTH = quantity(
    message("Plane: how deep under the walking surface"),
    message("0 if it is on the surface."),
    "in",
    0,
    120,
    example="3 in",
    finest=SMALLEST,
    rare=True,
)
WET_METAL = yes_or_no(
    message("Metal that touches the water, piping or tanks"), message("Ladders, frames, rails, pipes."), rare=False
)
