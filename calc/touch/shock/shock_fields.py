"""What is asked about a shock: the voltage across the body, its path, the skin, and whether it ends."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import one_of, quantity, yes_or_no

DRY, WATER_WET, SALT_WET, IN_WATER = "dry", "water-wet", "salt-water-wet", "in-water"
HAND_HAND, HAND_FEET, HANDS_FEET, FOOT_FOOT = "hand-hand", "hand-feet", "hands-feet", "foot-foot"

VOLTAGE = quantity(
    message("Voltage across the body"),
    message("From where the current enters to where it leaves."),
    "V",
    0.1,
    1000,
    example="120",
)
PATH = one_of(
    message("Path through the body"),
    message(""),
    (
        Choice(HAND_FEET, message("One hand to both feet")),
        Choice(HAND_HAND, message("Hand to hand")),
        Choice(HANDS_FEET, message("Both hands to both feet")),
        Choice(FOOT_FOOT, message("Foot to foot, in a step")),
    ),
)
CONDITION = one_of(
    message("Skin"),
    message("Treat sweat as salt water. Someone in the water is a separate case."),
    (
        Choice(WATER_WET, message("Wet with fresh water")),
        Choice(DRY, message("Dry")),
        Choice(SALT_WET, message("Wet with salt water or sweat")),
        Choice(IN_WATER, message("In the water: pool, spa, lake, bath")),
    ),
)
CLEARS = yes_or_no(
    message("Does a device clear the fault"),
    message("No, if nothing is known to open. Stray voltage does not stop."),
    rare=False,
)
TIME = quantity(
    message("Time until it opens"),
    message("Needed if a device clears it. For example 0.1 s or 6 cycles."),
    "s",
    0.001,
    3600,
    example=message("0.1 s or 6 cycles"),
)
