"""What is asked about a pool and the metal in its deck."""

from __future__ import annotations

from calc.declare import Choice
from calc.electrodes.entered import entered
from calc.vocabulary import conductor_size, one_of, yes_or_no
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
RISE = entered(
    say("Voltage of the bonded metal to remote earth"),
    say("In a fault, or what the utility's neutral leaves on it all day. Measured to a rod far away, or assumed."),
    "V",
    0.1,
    1000,
    "120 V",
)
POOL_LENGTH = entered(say("Length of the pool"), say("Of its water."), "ft", 6, 200, "32 ft")
POOL_WIDTH = entered(say("Width of the pool"), say("Of its water."), "ft", 6, 200, "16 ft")
DISTANCE = entered(
    say("How far from the wall someone stands"),
    say("With a hand on bonded metal, or wet from the pool."),
    "ft",
    0,
    20,
    "3 ft",
)
RING_DISTANCE = entered(
    say("Wire from the wall"), say("From the inside wall out to the one copper wire."), "in", 0, 120, "18 in"
)
DEPTH = entered(
    say("Depth of the metal in the deck"),
    say("From the surface that feet stand on. Below a slab, add the slab."),
    "in",
    0,
    48,
    "4 in",
)
MESH_WIDTH = entered(
    say("How far mesh or grid reaches from the wall"),
    say("The highest voltages are sought to 3 ft from the wall, or as far as this if it is more."),
    "ft",
    0.25,
    40,
    "3 ft",
)
SPACING = entered(
    say("Spacing of mesh or grid"), say("From wire to wire, of the one chosen above."), "in", 2, 18, "12 in"
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
SHELL_DEPTH = entered(
    say("Depth of the shell's metal"),
    say("It is counted as one wire around the pool at this depth."),
    "ft",
    0.5,
    20,
    "4 ft",
    rare=True,
)
DETAIL = one_of(
    say("How finely it is solved"),
    say("Fine takes several times as long."),
    (Choice("quick", say("Quick")), Choice("fine", say("Fine"))),
    rare=True,
)
