"""What is asked about a current that a clamp meter shows on a grounding conductor, a pipe or a whole feeder."""

from __future__ import annotations

from dataclasses import replace

from calc.declare import Choice, Field
from calc.fault.return_path_fields import number
from calc.measure.bond_fields import small
from calc.vocabulary import amount, one_of, whole_number
from calc.words import say
from calc.working import shown_number
from calc.written import plain_number

ELECTRODE, PIPE, GROUNDING, FEEDER = (
    "electrode-conductor",
    "water-pipe-bond",
    "equipment-grounding-conductor",
    "feeder-together",
)
AT_THE_SERVICE = (ELECTRODE, PIPE)
MOST_AMPERE = 10_000
UNKNOWN = "unknown"


def _perhaps(label, hint) -> Field:
    return one_of(
        label,
        hint,
        (Choice("yes", say("Yes")), Choice("no", say("No")), Choice(UNKNOWN, say("I do not know yet"))),
    )


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
AMPERE = replace(
    amount(
        say("Steady current"),
        say("In ampere unless you add the unit: 12 mA is 0.012."),
        say("Enter a current above 0, at most {most} A, for example 2.6 or 12 mA.", most=shown_number(MOST_AMPERE)),
        "A",
        0,
        MOST_AMPERE,
        zero=False,
    ),
    show=lambda value: f"{plain_number(value)} A",
)
EMPTY = small(
    say("With the jaws closed on nothing there"),
    say("At the same place, beside the conductor. It shows what other conductors near by do to the meter."),
    "A",
    MOST_AMPERE,
    "0.02",
)
OFF = small(
    say("With the main switched off"),
    say("Or with this feeder's or circuit's own device off. Leave it empty if you have not looked yet."),
    "A",
    MOST_AMPERE,
    "0.1",
)
FOLLOWS = _perhaps(
    say("Does it follow the load"),
    say("Switch one large 120 V load on and off and watch. A 240 V load needs no neutral."),
)
WATER_MAIN = _perhaps(
    say("Does a metal water main join the neighbors"), say("Metal from house to house, with no plastic in between.")
)
APPLIANCES = whole_number(
    say("Appliances behind this point"),
    say("Those with electronics, heaters or motors. Their filters always leak a little."),
    0,
    10_000,
)
DIGIT = small(say("Last digit of the meter"), say("On the range used."), "A", 100, "0.01", rare=True)
METER_PERCENT = number(
    say("Error of the meter in percent of the reading"), say("From its data sheet."), "%", 0, 50, rare=True
)
