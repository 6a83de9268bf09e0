"""What is asked about a current that a clamp meter shows on a grounding conductor, a pipe or a whole feeder."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import one_of, quantity, whole_number, yes_no_or_unknown

ELECTRODE, PIPE, GROUNDING, FEEDER = (
    "electrode-conductor",
    "water-pipe-bond",
    "equipment-grounding-conductor",
    "feeder-together",
)
AT_THE_SERVICE = (ELECTRODE, PIPE)
MAX_AMPERE = 10_000


WHERE = one_of(
    message("What the jaws are around"),
    message("Clamp the conductor as it is. Never open it."),
    (
        Choice(ELECTRODE, message("Grounding electrode conductor")),
        Choice(PIPE, message("Bond to the water pipe, or the pipe itself")),
        Choice(GROUNDING, message("Equipment grounding conductor, raceway or jumper")),
        Choice(FEEDER, message("All hot conductors and the neutral of a feeder together")),
    ),
)
AMPERE = quantity(
    message("Steady current"),
    message("In amps unless you add the unit: 12 mA is 0.012."),
    "A",
    0,
    MAX_AMPERE,
    example=message("2.6 or 12 mA"),
    zero=False,
)
EMPTY = quantity(
    message("Zero reading (empty jaws nearby)"),
    message("At the same place, beside the conductor. It shows what other conductors nearby do to the meter."),
    "A",
    0,
    MAX_AMPERE,
    example="0.02",
)
OFF = quantity(
    message("With the main switched off"),
    message("Or with this feeder's or circuit's own breaker off. Leave empty if you have not looked yet."),
    "A",
    0,
    MAX_AMPERE,
    example="0.1",
)
FOLLOWS = yes_no_or_unknown(
    message("Does it follow the load"),
    message("Switch one large 120 V load on and off and watch. A 240 V load needs no neutral."),
)
WATER_MAIN = yes_no_or_unknown(
    message("Does a metal water main connect to the neighbors"),
    message("Metal from house to house, with no plastic in between."),
)
APPLIANCES = whole_number(
    message("Appliances downstream of this point"),
    message("Those with electronics, heaters or motors. Their filters always leak a little."),
    0,
    10_000,
)
DIGIT = quantity(
    message("Meter resolution"), message("Its last digit, on the range used."), "A", 0, 100, example="0.01", rare=True
)
METER_PERCENT = quantity(
    message("Meter accuracy, ± percent of the reading"), message(
        "From its data sheet."
    ), "%", 0, 50, example="2", rare=True
)
