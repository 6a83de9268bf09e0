"""The fields of the ground-fault loop that no other calculator has."""

from __future__ import annotations

from calc.calculator import Choice
from calc.fault.device.device_fields import KIND_WORDS
from calc.fault.device.device_limits import INTERRUPTER
from calc.fault.return_path.return_path_fields import NOT_GIVEN, RACEWAYS, spacing
from calc.messages import message
from calc.raceways.kind import kind_choices
from calc.shared_fields import conductor_size, device_rating, one_of, quantity

DEVICE = device_rating(message("Overcurrent device"), message("The one that should open, for example 20 A."))
DEVICE_KIND = one_of(
    message("Kind of device"),
    message("IEC breakers carry their letter before the rating, like B16."),
    tuple(Choice(kind, words) for kind, words in KIND_WORDS.items() if kind != INTERRUPTER),
    rare=True,
)
LENGTH = quantity(
    message("Length of the run"),
    message("One way, from where neutral and metal are joined."),
    "ft",
    1,
    100_000,
    example="150 ft",
)
AVAILABLE = quantity(
    message("Least fault current available where the run begins"),
    message("Line to ground. Left out, the answer tells how much must be available."),
    "A",
    1,
    1_000_000,
    example="5000",
)
WIRING = one_of(
    message("The way back"),
    message("What carries the fault current back."),
    (
        Choice("wire", message("A grounding wire")),
        Choice("raceway", message("The steel raceway")),
        Choice("both", message("Wire and steel raceway")),
        Choice("wire-apart", message("A wire apart from its circuit")),
    ),
)
SPACING = spacing()
RETURN_CONDUCTOR = conductor_size(
    message("Equipment grounding wire"), message("Only when a wire is part of the way back.")
)
RACEWAY = one_of(
    message("Kind of steel raceway"),
    message("Only when it is part of the way back."),
    (
        Choice(NOT_GIVEN, message("Not needed: a wire alone is the way back")),
        *kind_choices(*RACEWAYS),
    ),
)
JOINT = quantity(
    message("Loose joint in the way back"),
    message("Ohms of a locknut or lug that is not tight. 0 when all is tight."),
    "ohm",
    0,
    1000,
    example="0.5",
    rare=True,
)
