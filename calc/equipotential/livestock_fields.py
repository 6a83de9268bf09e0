"""What the plan of a plane under livestock asks: the floor, the metal, the wire, the way out, and a reading."""

from __future__ import annotations

from calc.calculator import Choice
from calc.equipotential.animal_contact import OPEN, WITH_RESISTOR
from calc.messages import message
from calc.shared_fields import SMALLEST, UNKNOWN, one_of, quantity, yes_no_or_unknown, yes_or_no

INDOOR_CONCRETE, OUTDOOR_SLAB, SLATTED, DIRT = "indoor-concrete", "outdoor-slab", "slatted", "dirt"
AREA = one_of(
    message("Where the animals stand"),
    message("Where they reach the metal."),
    (
        Choice(INDOOR_CONCRETE, message("Concrete floor indoors")),
        Choice(OUTDOOR_SLAB, message("Concrete slab outdoors")),
        Choice(SLATTED, message("Slatted floor on supports")),
        Choice(DIRT, message("Dirt or another floor without concrete")),
    ),
)
POULTRY = "poultry"
ANIMALS = one_of(
    message("Animals"), message(""), (
        Choice("livestock", message("Cattle, pigs, horses, sheep")), Choice(POULTRY, message("Poultry"))
    )
)
METAL = yes_or_no(
    message("Metal within their reach that may become live"),
    message("A waterer, feeder, gate or pipe near or with electrical equipment."),
    rare=False,
)
STEEL, NONE = "steel", "none"
PLANE = one_of(
    message("Metal in the floor"),
    message(""),
    (
        Choice(STEEL, message("Mesh, bars or grid, all tied together")),
        Choice(NONE, message("None")),
        Choice(UNKNOWN, message("Not known")),
    ),
)
TIED = yes_no_or_unknown(
    message("Metal above bonded to the plane"), message("Stanchions, gates, feeders, waterers, pipes.")
)
WAY_OUT = one_of(
    message("Where animals step off the plane"),
    message("A doorway or a ramp."),
    (
        Choice("gradient", message("Rods or wires make the step gentle")),
        Choice("plain", message("The plane just ends")),
        Choice(NONE, message("They step off nowhere")),
    ),
)
VOLT = quantity(
    message("Measured voltage, hoof to metal"),
    message("AC volts from a plate on the wet floor to the metal. Empty if not measured."),
    "V",
    0,
    1000,
    example="0.5",
    finest=SMALLEST,
)
METER = one_of(
    message("How the meter was read"),
    message(""),
    (
        Choice(WITH_RESISTOR, message("With a resistor across its leads")),
        Choice(OPEN, message("Without a resistor")),
    ),
)
RESISTOR = quantity(
    message("Resistor"),
    message("500 ohm stands for a cow. A different resistor reads a different current."),
    "ohm",
    100,
    10_000,
    example="500",
)
