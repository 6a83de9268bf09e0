"""What is asked about a pool and the metal in its deck."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import SMALLEST, conductor_size, one_of, quantity, yes_or_no

SHELL, RING, GRID, MESH = "shell", "ring", "grid", "mesh"
ARRANGEMENTS = (SHELL, RING, GRID, MESH)
ARRANGEMENT_WORDS = {
    SHELL: message("Nothing in the deck: only the shell below is bonded"),
    RING: message("One copper wire around the pool"),
    GRID: message("A grid of copper wire along the pool"),
    MESH: message("Steel mesh in the deck, all around"),
}
STEPS = {"2ft": 2, "3ft": 3}

ARRANGEMENT = one_of(
    message("Bonded metal in the deck"),
    message("The answer compares all four."),
    tuple(Choice(value, words) for value, words in ARRANGEMENT_WORDS.items()),
)
RISE = quantity(
    message("Voltage of the bonded metal to remote earth"),
    message("In a fault, or what the utility's neutral leaves on it all day. Measured to a rod far away, or assumed."),
    "V",
    0.1,
    1000,
    example="120",
)
POOL_LENGTH = quantity(message("Length of the pool"), message("Of the water."), "ft", 6, 200, example="32")
POOL_WIDTH = quantity(message("Width of the pool"), message("Of the water."), "ft", 6, 200, example="16")
DISTANCE = quantity(
    message("Distance from the wall where someone stands"),
    message("With a hand on bonded metal, or wet from the pool."),
    "ft",
    0,
    20,
    example="3",
    finest=SMALLEST,
)
RING_DISTANCE = quantity(
    message("Distance of the wire from the wall"),
    message("From the inside wall out to the one copper wire."),
    "in",
    0,
    120,
    example="18 in",
    finest=SMALLEST,
)
DEPTH = quantity(
    message("Depth of the metal in the deck"),
    message("From the surface that feet stand on. Below a slab, add the slab."),
    "in",
    0,
    48,
    example="4 in",
    finest=SMALLEST,
)
MESH_WIDTH = quantity(
    message("How far mesh or grid goes out from the wall"),
    message("The highest voltages are searched out to 3 ft from the wall, or this far if it is more."),
    "ft",
    0.25,
    40,
    example="3",
)
SPACING = quantity(
    message("Spacing of mesh or grid"), message(
        "From wire to wire, of the one chosen above."
    ), "in", 2, 18, example="12 in"
)
CONDUCTOR = conductor_size(message("Size of the copper wire"), message("Of the one wire or the grid."), rare=True)
STEP = one_of(
    message("Longest step"),
    message("A shorter step may be worse. It is searched too."),
    (Choice("2ft", message("2 ft")), Choice("3ft", message("3 ft"))),
    rare=True,
)
FORM = one_of(
    message("Shape of the pool"),
    message(""),
    (
        Choice("rectangle", message("Rectangle")),
        Choice("other", message("Round, oval, freeform or with a spa beside it")),
    ),
    rare=True,
)
SHELL_TOO = yes_or_no(
    message("Include the metal of the shell"),
    message("Vinyl and fiberglass have none. Without it, the touch voltage comes out higher."),
)
SHELL_DEPTH = quantity(
    message("Depth of the shell's metal"),
    message("It is taken as one wire around the pool at this depth."),
    "ft",
    0.5,
    20,
    example="4",
    rare=True,
)
DETAIL = one_of(
    message("Accuracy of the solution"),
    message("Fine takes several times as long."),
    (Choice("quick", message("Quick")), Choice("fine", message("Fine"))),
    rare=True,
)
