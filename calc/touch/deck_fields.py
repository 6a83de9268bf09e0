"""What is asked about a pool and the metal in its deck."""

from __future__ import annotations

from calc.declare import Choice
from calc.vocabulary import SMALLEST, conductor_size, one_of, quantity, yes_or_no
from calc.words import say

SHELL, RING, GRID, MESH = "shell", "ring", "grid", "mesh"
ARRANGEMENTS = (SHELL, RING, GRID, MESH)
ARRANGEMENT_WORDS = {
    SHELL: say("Nothing in the deck: only the shell below is bonded"),
    RING: say("One copper wire around the pool"),
    GRID: say("A grid of copper wire along the pool"),
    MESH: say("Steel mesh in the deck, all around"),
}
STEPS = {"2ft": 2, "3ft": 3}

ARRANGEMENT = one_of(
    say("Bonded metal in the deck"),
    say("The answer compares all four."),
    tuple(Choice(value, words) for value, words in ARRANGEMENT_WORDS.items()),
)
RISE = quantity(
    say("Voltage of the bonded metal to remote earth"),
    say("In a fault, or what the utility's neutral leaves on it all day. Measured to a rod far away, or assumed."),
    "V",
    0.1,
    1000,
    example="120",
)
POOL_LENGTH = quantity(say("Length of the pool"), say("Of its water."), "ft", 6, 200, example="32")
POOL_WIDTH = quantity(say("Width of the pool"), say("Of its water."), "ft", 6, 200, example="16")
DISTANCE = quantity(
    say("How far from the wall someone stands"),
    say("With a hand on bonded metal, or wet from the pool."),
    "ft",
    0,
    20,
    example="3",
    finest=SMALLEST,
)
RING_DISTANCE = quantity(
    say("Wire from the wall"),
    say("From the inside wall out to the one copper wire."),
    "in",
    0,
    120,
    example="18 in",
    finest=SMALLEST,
)
DEPTH = quantity(
    say("Depth of the metal in the deck"),
    say("From the surface that feet stand on. Below a slab, add the slab."),
    "in",
    0,
    48,
    example="4 in",
    finest=SMALLEST,
)
MESH_WIDTH = quantity(
    say("How far mesh or grid reaches from the wall"),
    say("The highest voltages are sought to 3 ft from the wall, or as far as this if it is more."),
    "ft",
    0.25,
    40,
    example="3",
)
SPACING = quantity(
    say("Spacing of mesh or grid"), say("From wire to wire, of the one chosen above."), "in", 2, 18, example="12 in"
)
CONDUCTOR = conductor_size(say("Size of the copper wire"), say("Of the one wire or the grid."), rare=True)
STEP = one_of(
    say("Longest step"),
    say("A short step inside it may be the worst, and is sought too."),
    (Choice("2ft", say("2 ft")), Choice("3ft", say("3 ft"))),
    rare=True,
)
FORM = one_of(
    say("Form of the pool"),
    say(""),
    (Choice("rectangle", say("Rectangle")), Choice("other", say("Round, oval, bent or with a spa beside it"))),
    rare=True,
)
SHELL_TOO = yes_or_no(
    say("Count the metal of the shell as well"),
    say("Vinyl and fiberglass have none. Left out, the touch voltage comes out higher."),
)
SHELL_DEPTH = quantity(
    say("Depth of the shell's metal"),
    say("It is counted as one wire around the pool at this depth."),
    "ft",
    0.5,
    20,
    example="4",
    rare=True,
)
DETAIL = one_of(
    say("How finely it is solved"),
    say("Fine takes several times as long."),
    (Choice("quick", say("Quick")), Choice("fine", say("Fine"))),
    rare=True,
)
