"""What is asked about a shock: the voltage across the body, its path, the skin, and whether it ends."""

from __future__ import annotations

from calc.declare import Choice
from calc.vocabulary import one_of, quantity, yes_or_no
from calc.words import say

DRY, WATER_WET, SALT_WET, IN_WATER = "dry", "water-wet", "salt-water-wet", "in-water"
HAND_HAND, HAND_FEET, HANDS_FEET, FOOT_FOOT = "hand-hand", "hand-feet", "hands-feet", "foot-foot"

VOLTAGE = quantity(
    say("Voltage across the body"),
    say("From where the current enters to where it leaves."),
    "V",
    0.1,
    1000,
    example="120",
)
PATH = one_of(
    say("Path through the body"),
    say(""),
    (
        Choice(HAND_FEET, say("One hand to both feet")),
        Choice(HAND_HAND, say("Hand to hand")),
        Choice(HANDS_FEET, say("Both hands to both feet")),
        Choice(FOOT_FOOT, say("Foot to foot, in a step")),
    ),
)
CONDITION = one_of(
    say("Skin"),
    say("Sweat counts as salt water. Someone in water is another case."),
    (
        Choice(WATER_WET, say("Wet with fresh water")),
        Choice(DRY, say("Dry")),
        Choice(SALT_WET, say("Wet with salt water or sweat")),
        Choice(IN_WATER, say("In the water: pool, spa, lake, bath")),
    ),
)
CLEARS = yes_or_no(
    say("A device ends the fault"), say("No, if nothing is known to open. Stray voltage does not end."), rare=False
)
TIME = quantity(
    say("Time until it opens"),
    say("Needed if a device ends it. For example 0.1 s or 6 cycles."),
    "s",
    0.001,
    3600,
    example=say("0.1 s or 6 cycles"),
)
