"""What is asked about a current that a clamp meter shows on a grounding conductor, a pipe or a whole feeder."""

from __future__ import annotations

from calc.declare import Choice
from calc.vocabulary import one_of, quantity, whole_number, yes_no_or_unknown
from calc.words import say

ELECTRODE, PIPE, GROUNDING, FEEDER = (
    "electrode-conductor",
    "water-pipe-bond",
    "equipment-grounding-conductor",
    "feeder-together",
)
AT_THE_SERVICE = (ELECTRODE, PIPE)
MOST_AMPERE = 10_000


WHERE = one_of(
    say("What the jaws are around"),
    say("Close them on a conductor as it is. Never open it."),
    (
        Choice(ELECTRODE, say("Grounding electrode conductor")),
        Choice(PIPE, say("Bond to the water pipe, or the pipe itself")),
        Choice(GROUNDING, say("Equipment grounding conductor, raceway or jumper")),
        Choice(FEEDER, say("All hot conductors and the neutral of a feeder together")),
    ),
)
AMPERE = quantity(
    say("Steady current"),
    say("In ampere unless you add the unit: 12 mA is 0.012."),
    "A",
    0,
    MOST_AMPERE,
    example=say("2.6 or 12 mA"),
    zero=False,
)
EMPTY = quantity(
    say("With the jaws closed on nothing there"),
    say("At the same place, beside the conductor. It shows what other conductors near by do to the meter."),
    "A",
    0,
    MOST_AMPERE,
    example="0.02",
)
OFF = quantity(
    say("With the main switched off"),
    say("Or with this feeder's or circuit's own device off. Leave it empty if you have not looked yet."),
    "A",
    0,
    MOST_AMPERE,
    example="0.1",
)
FOLLOWS = yes_no_or_unknown(
    say("Does it follow the load"),
    say("Switch one large 120 V load on and off and watch. A 240 V load needs no neutral."),
)
WATER_MAIN = yes_no_or_unknown(
    say("Does a metal water main join the neighbors"), say("Metal from house to house, with no plastic in between.")
)
APPLIANCES = whole_number(
    say("Appliances behind this point"),
    say("Those with electronics, heaters or motors. Their filters always leak a little."),
    0,
    10_000,
)
DIGIT = quantity(say("Last digit of the meter"), say("On the range used."), "A", 0, 100, example="0.01", rare=True)
METER_PERCENT = quantity(
    say("Error of the meter in percent of the reading"), say("From its data sheet."), "%", 0, 50, example="2", rare=True
)
