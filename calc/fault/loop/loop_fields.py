"""The fields of the ground-fault loop that no other calculator has."""

from __future__ import annotations

from calc.calculator import Choice
from calc.fault.device.device_fields import KIND_WORDS
from calc.fault.device.device_limits import INTERRUPTER
from calc.fault.return_path.return_path_fields import NOT_GIVEN, RACEWAYS, spacing
from calc.messages import message
from calc.raceways.kind import kind_choices
from calc.shared_fields import conductor_size, device_rating, one_of, quantity

DEVICE = device_rating(message("Upstream breaker or fuse"), message("The one that should open, for example 20 A."))
DEVICE_KIND = one_of(
    message("Type of device"),
    message("IEC breakers show a letter ahead of the rating, like B16."),
    tuple(Choice(kind, words) for kind, words in KIND_WORDS.items() if kind != INTERRUPTER),
    rare=True,
)
LENGTH = quantity(
    message("Length of the run"),
    message("One way, from where neutral and metal are bonded."),
    "ft",
    1,
    100_000,
    example="150 ft",
)
AVAILABLE = quantity(
    message("Lowest available fault current where the run begins"),
    message("Line to ground. If left empty, the answer says how much must be available."),
    "A",
    1,
    1_000_000,
    example="5000",
)
WIRING = one_of(
    message("Ground-fault return path"),
    message("What carries the fault current back."),
    (
        Choice("wire", message("Equipment grounding wire")),
        Choice("raceway", message("Steel raceway")),
        Choice("both", message("Wire and steel raceway")),
        Choice("wire-apart", message("Grounding wire run apart from its circuit")),
    ),
)
SPACING = spacing()
RETURN_CONDUCTOR = conductor_size(
    message("Equipment grounding conductor"), message("Only when a wire is part of the return path.")
)
RACEWAY = one_of(
    message("Type of steel raceway"),
    message("Only when it is part of the return path."),
    (
        Choice(NOT_GIVEN, message("Not needed: a wire alone is the return path")),
        *kind_choices(*RACEWAYS),
    ),
)
JOINT = quantity(
    message("Loose joint in the return path"),
    message("Ohms of a locknut or lug that is not tight. 0 if all are tight."),
    "ohm",
    0,
    1000,
    example="0.5",
    rare=True,
)
