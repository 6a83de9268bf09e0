"""What is asked about an electrode in the earth: its form, its measures and the soil."""

from __future__ import annotations

from calc.calculator import Choice
from calc.electrodes.entered import OHM_METRE
from calc.messages import message
from calc.shared_fields import conductor_size, one_of, quantity, whole_number

MAX_RODS = 24

ELECTRODE_WORDS = {
    "rod": message("Rod or pipe"),
    "ring": message("Ring of bare wire"),
    "buried-wire": message("Straight bare wire in a trench"),
    "plate": message("Plate"),
    "concrete-encased": message("Bar or wire in a concrete footing"),
}
SOIL_WORDS = {
    "fill": message("Fill of ash, cinders or brine waste"),
    "clay": message("Clay, shale or loam"),
    "clay-with-gravel": message("Clay or loam with sand and gravel in it"),
    "gravel": message("Gravel, sand or stones, little clay"),
}

ELECTRODE = one_of(
    message("Electrode"), message(""), tuple(Choice(value, words) for value, words in ELECTRODE_WORDS.items())
)
SOIL = one_of(
    message("Soil"),
    message("Soil types vary widely. A four-pin (Wenner) reading on site is much better."),
    (
        *(Choice(value, words) for value, words in SOIL_WORDS.items()),
        Choice("resistivity", message("I know its resistivity")),
        Choice("four-pin", message("I have a four-pin reading")),
    ),
)
RESISTIVITY = quantity(
    message("Resistivity of the soil"), message("Needed if you know it."), OHM_METRE, 0.1, 1_000_000, example="100"
)
PIN_SPACING = quantity(
    message("Spacing of the four pins"),
    message("From pin to pin. It also tells how deep the test looks."),
    "ft",
    0.5,
    1000,
    example="20",
)
PIN_OHM = quantity(
    message("Reading of the four-pin test"), message("What the meter shows."), "ohm", 0.0001, 1_000_000, example="2"
)
LENGTH = quantity(
    message("Length"),
    message("Of a rod in the earth, of the whole wire or bar, or of one side of a plate."),
    "ft",
    0.1,
    5000,
    example="8",
)
DIAMETER = quantity(
    message("Diameter"),
    message("Of the rod, wire or bar. For a wire you can enter its size instead."),
    "in",
    0.05,
    60,
    example="5/8 in",
)
CONDUCTOR = conductor_size(
    message("Wire size"), message("For a ring, a buried wire, or wire in concrete, instead of a diameter."), rare=True
)
RODS = whole_number(message("Rods or pipes"), message("Identical and bonded together."), 1, MAX_RODS)
SPACING = quantity(message("Spacing of the rods"), message("From each rod to the next."), "ft", 0.1, 1000, example="16")
LAYOUT = one_of(
    message("Rod layout"),
    message("A closed shape is taken as a circle."),
    (Choice("line", message("In a straight line")), Choice("circle", message("Around a closed shape"))),
    rare=True,
)
DEPTH = quantity(
    message("Depth"), message(
        "From the surface to the middle of the wire, plate or footing."
    ), "ft", 0.01, 300, example="2.5"
)
WIDTH = quantity(
    message("Width"),
    message(
        "The other side of a plate, the width of a footing, or one side of a ring. If empty, a ring may have any shape."
    ),
    "ft",
    0.05,
    1000,
    example="12 in",
)
HEIGHT = quantity(
    message("Height of the footing"), message("Of its concrete, top to bottom."), "ft", 0.05, 100, example="12 in"
)
CONCRETE_RESISTIVITY = quantity(
    message("Resistivity of the concrete"),
    message("Leave empty to see the range of a damp footing. Dry concrete has many times more."),
    OHM_METRE,
    1,
    10_000_000,
    example="100",
    rare=True,
)
