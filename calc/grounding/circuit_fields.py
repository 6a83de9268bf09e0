"""What is asked about a circuit: its conductors, how they run, what protects them."""

from __future__ import annotations

from calc.calculator import Choice
from calc.conductors.arrangement import raceways_of
from calc.messages import message
from calc.shared_fields import MAX_AMPERE, conductor_size, device_rating, metal_of, one_of, quantity, whole_number

MAX_CIRCUITS = 100


DEVICE = device_rating(
    message("Upstream breaker or fuse"),
    message("Its rating, for example 200 A. For an adjustable breaker, enter the highest setting."),
)
METAL = metal_of(message("Equipment grounding conductor material"))
INSTALLED = conductor_size(
    message("Installed hot conductor size"),
    message("Size of one conductor, for example 3/0. Leave it empty if it is not known."),
)
MINIMUM = conductor_size(
    message("Minimum hot conductor size (before upsizing)"),
    message(
        "Only if you upsized, for example for voltage drop. Apply ambient temperature and bundling corrections first."
    ),
)
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
INCREASE = one_of(
    message("Reason the hot conductors are larger"),
    message(
        "Voltage drop, spare capacity and what was on the truck all count as upsizing. Ambient temperature and "
        "bundling corrections do not."
    ),
    (
        Choice("any", message("Voltage drop or any other reason")),
        Choice("ambient-or-bundling", message("Ambient temperature or bundling only")),
    ),
    rare=True,
)
RACEWAYS = raceways_of(message("Number of raceways or cables the sets are run in."))
WIRING = one_of(
    message("Wiring method"),
    message("Each multiconductor cable has its own equipment grounding conductor."),
    (
        Choice("raceway", message("Raceway")),
        Choice("cable", message("Multiconductor cable")),
        Choice("cable-tray", message("Cable tray, single conductors")),
    ),
    rare=True,
)
CIRCUITS = whole_number(
    message("Circuits sharing this conductor"),
    message("Enter the largest breaker or fuse among them, and the conductors it protects."),
    1,
    MAX_CIRCUITS,
    rare=True,
)
CIRCUIT = one_of(
    message("Type of circuit"),
    message("For a tap, enter the feeder breaker or fuse and the tap conductors."),
    (
        Choice("feeder-or-branch", message("Feeder or branch circuit")),
        Choice("feeder-tap", message("Feeder tap")),
        Choice("motor", message("Motor circuit with fuses or an inverse-time breaker")),
        Choice("motor-instantaneous-trip", message("Motor circuit with an instantaneous-trip breaker")),
        Choice("flexible-cord", message("Flexible cord or fixture wire")),
        Choice("service", message("Service conductors (no overcurrent device ahead)")),
    ),
    rare=True,
)
MOTOR = one_of(
    message("Type of motor"),
    message("Applies only with an instantaneous-trip breaker."),
    (
        Choice("ac", message("AC, not wound-rotor")),
        Choice("wound-rotor-or-dc", message("Wound-rotor or DC")),
    ),
    rare=True,
)
MOTOR_CURRENT = quantity(
    message("Motor full-load current"),
    message("From the code table, not from the nameplate. Required only with an instantaneous-trip breaker."),
    "A",
    0.1,
    MAX_AMPERE,
    example="65",
    rare=True,
)
