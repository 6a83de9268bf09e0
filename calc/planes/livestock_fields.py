"""What the plan of a plane under livestock asks: the floor, the metal, the wire, the way out, and a reading."""

from __future__ import annotations

from calc.declare import Choice
from calc.planes.animal_contact import OPEN, WITH_RESISTOR
from calc.vocabulary import SMALLEST, UNKNOWN, one_of, quantity, yes_no_or_unknown, yes_or_no
from calc.words import say

INDOOR_CONCRETE, OUTDOOR_SLAB, SLATTED, DIRT = "indoor-concrete", "outdoor-slab", "slatted", "dirt"
AREA = one_of(
    say("Where the animals stand"),
    say("Where they reach the metal."),
    (
        Choice(INDOOR_CONCRETE, say("Concrete floor indoors")),
        Choice(OUTDOOR_SLAB, say("Concrete slab outdoors")),
        Choice(SLATTED, say("Slatted floor on supports")),
        Choice(DIRT, say("Dirt or another floor without concrete")),
    ),
)
POULTRY = "poultry"
ANIMALS = one_of(
    say("Animals"), say(""), (Choice("livestock", say("Cattle, pigs, horses, sheep")), Choice(POULTRY, say("Poultry")))
)
METAL = yes_or_no(
    say("Metal within their reach that may become live"),
    say("A waterer, feeder, gate or pipe near or with electrical equipment."),
    rare=False,
)
STEEL, NONE = "steel", "none"
PLANE = one_of(
    say("Metal in the floor"),
    say(""),
    (
        Choice(STEEL, say("Mesh, bars or grid, all tied together")),
        Choice(NONE, say("None")),
        Choice(UNKNOWN, say("Not known")),
    ),
)
TIED = yes_no_or_unknown(
    say("Metal above tied to the plane"), say("Stanchions, gates, feeders, waterers, pipes.")
)
WAY_OUT = one_of(
    say("Where animals step off the plane"),
    say("A doorway or a ramp."),
    (
        Choice("gradient", say("Rods or wires make the step gentle")),
        Choice("plain", say("The plane just ends")),
        Choice(NONE, say("They step off nowhere")),
    ),
)
VOLT = quantity(
    say("Measured voltage, hoof to metal"),
    say("AC volts from a plate on the wet floor to the metal. Empty if not measured."),
    "V",
    0,
    1000,
    example="0.5",
    finest=SMALLEST,
)
METER = one_of(
    say("The meter was read"),
    say(""),
    (
        Choice(WITH_RESISTOR, say("With a resistor across its leads")),
        Choice(OPEN, say("Without a resistor")),
    ),
)
RESISTOR = quantity(
    say("That resistor"),
    say("500 ohm stands for a cow. Another one reads another current."),
    "ohm",
    100,
    10_000,
    example="500",
)
