"""What is asked about an electrode in the earth: its form, its measures and the soil."""

from __future__ import annotations

from calc.declare import Choice
from calc.electrodes.entered import OHM_METRE
from calc.vocabulary import conductor_size, one_of, quantity, whole_number
from calc.words import say

MOST_RODS = 24

ELECTRODE_WORDS = {
    "rod": say("Rod or pipe"),
    "ring": say("Ring of bare wire"),
    "buried-wire": say("Straight bare wire in a trench"),
    "plate": say("Plate"),
    "concrete-encased": say("Bar or wire in a concrete footing"),
}
SOIL_WORDS = {
    "fill": say("Fill of ash, cinders or brine waste"),
    "clay": say("Clay, shale or loam"),
    "clay-with-gravel": say("Clay or loam with sand and gravel in it"),
    "gravel": say("Gravel, sand or stones, little clay"),
}

ELECTRODE = one_of(say("Electrode"), say(""), tuple(Choice(value, words) for value, words in ELECTRODE_WORDS.items()))
SOIL = one_of(
    say("Soil"),
    say("A kind of soil spans a wide range. A four-pin reading at the place is far better."),
    (
        *(Choice(value, words) for value, words in SOIL_WORDS.items()),
        Choice("resistivity", say("I know its resistivity")),
        Choice("four-pin", say("I have a four-pin reading")),
    ),
)
RESISTIVITY = quantity(
    say("Resistivity of the soil"), say("Needed if you know it."), OHM_METRE, 0.1, 1_000_000, example="100"
)
PIN_SPACING = quantity(
    say("Spacing of the four pins"),
    say("From pin to pin. It also tells how deep the test looks."),
    "ft",
    0.5,
    1000,
    example="20",
)
PIN_OHM = quantity(
    say("Reading of the four-pin test"), say("What the meter shows."), "ohm", 0.0001, 1_000_000, example="2"
)
LENGTH = quantity(
    say("Length"),
    say("Of a rod in the earth, of the whole wire or bar, or of one side of a plate."),
    "ft",
    0.1,
    5000,
    example="8",
)
DIAMETER = quantity(
    say("Diameter"),
    say("Of the rod, wire or bar. A wire may go by its size instead."),
    "in",
    0.05,
    60,
    example="5/8 in",
)
CONDUCTOR = conductor_size(
    say("Size of the wire"), say("For a ring, a buried wire, or wire in concrete, instead of a diameter."), rare=True
)
RODS = whole_number(say("Rods or pipes"), say("Alike and joined together."), 1, MOST_RODS)
SPACING = quantity(say("Spacing of the rods"), say("From each rod to the next."), "ft", 0.1, 1000, example="16")
LAYOUT = one_of(
    say("Rods stand"),
    say("A closed figure is counted as a circle."),
    (Choice("line", say("In a straight line")), Choice("circle", say("Along the edge of a closed figure"))),
    rare=True,
)
DEPTH = quantity(
    say("Depth"), say("From the surface to the middle of the wire, plate or footing."), "ft", 0.01, 300, example="2.5"
)
WIDTH = quantity(
    say("Width"),
    say("The other side of a plate, the width of a footing, or one side of a ring. Empty, a ring counts as any form."),
    "ft",
    0.05,
    1000,
    example="12 in",
)
HEIGHT = quantity(
    say("Height of the footing"), say("Of its concrete, top to bottom."), "ft", 0.05, 100, example="12 in"
)
CONCRETE_RESISTIVITY = quantity(
    say("Resistivity of the concrete"),
    say("Leave it empty to see the range of a damp footing. Dry concrete has many times more."),
    OHM_METRE,
    1,
    10_000_000,
    example="100",
    rare=True,
)
