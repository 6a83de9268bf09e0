"""The fields of the ground-fault loop that no other calculator has."""

from __future__ import annotations

from calc.declare import Choice
from calc.fault.device_fields import KIND_WORDS
from calc.fault.device_limits import INTERRUPTER
from calc.fault.return_path_fields import NOT_GIVEN, RACEWAYS, spacing
from calc.raceways.kind import kind_choices
from calc.vocabulary import conductor_size, device_rating, one_of, quantity
from calc.words import say

DEVICE = device_rating(say("Overcurrent device"), say("The one that should open, for example 20 A."))
DEVICE_KIND = one_of(
    say("Kind of device"),
    say("IEC breakers carry their letter before the rating, like B16."),
    tuple(Choice(kind, words) for kind, words in KIND_WORDS.items() if kind != INTERRUPTER),
    rare=True,
)
LENGTH = quantity(
    say("Length of the run"),
    say("One way, from where neutral and metal are joined."),
    "ft",
    1,
    100_000,
    example="150 ft",
)
AVAILABLE = quantity(
    say("Least fault current available where the run begins"),
    say("Line to ground. Left out, the answer tells how much must be available."),
    "A",
    1,
    1_000_000,
    example="5000",
)
WIRING = one_of(
    say("The way back"),
    say("What carries the fault current back."),
    (
        Choice("wire", say("A grounding wire")),
        Choice("raceway", say("The steel raceway")),
        Choice("both", say("Wire and steel raceway")),
        Choice("wire-apart", say("A wire apart from its circuit")),
    ),
)
SPACING = spacing()
RETURN_CONDUCTOR = conductor_size(say("Equipment grounding wire"), say("Only when a wire is part of the way back."))
RACEWAY = one_of(
    say("Kind of steel raceway"),
    say("Only when it is part of the way back."),
    (
        Choice(NOT_GIVEN, say("Not needed: a wire alone is the way back")),
        *kind_choices(*RACEWAYS),
    ),
)
JOINT = quantity(
    say("Loose joint in the way back"),
    say("Ohms of a locknut or lug that is not tight. 0 when all is tight."),
    "ohm",
    0,
    1000,
    example="0.5",
    rare=True,
)
