"""What is asked about a circuit: its conductors, how they run, what protects them."""

from __future__ import annotations

from calc.calculator import Choice
from calc.conductors.arrangement import raceways_of
from calc.messages import message
from calc.shared_fields import MAX_AMPERE, conductor_size, device_rating, metal_of, one_of, quantity, whole_number

MAX_CIRCUITS = 100


DEVICE = device_rating(
    message("Breaker or fuse ahead"),
    message("Its rating, for example 200 A. An adjustable one counts at its highest."),
)
METAL = metal_of(message("Metal of the equipment grounding conductor"))
INSTALLED = conductor_size(
    message("Hot conductor installed"),
    message("Size of one of them, for example 3/0. Leave it empty if it is not known."),
)
MINIMUM = conductor_size(
    message("Smallest hot conductor that would do"),
    message("Only where a larger one was run, as for voltage drop. Count ambient temperature and bundling in first."),
)
CONDUCTOR_METAL = metal_of(message("Metal of the hot conductors"))
INCREASE = one_of(
    message("Why the hot conductors are larger"),
    message("Voltage drop, spare capacity, what was on the truck: all count. Ambient temperature and bundling do not."),
    (
        Choice("any", message("Voltage drop or any other reason")),
        Choice("ambient-or-bundling", message("Only ambient temperature or bundling")),
    ),
    rare=True,
)
RACEWAYS = raceways_of(message("In how many raceways or cables the sets run."))
WIRING = one_of(
    message("The conductors run in"),
    message("Multiconductor cables carry an equipment grounding conductor of their own."),
    (
        Choice("raceway", message("Raceway")),
        Choice("cable", message("Multiconductor cable")),
        Choice("cable-tray", message("Cable tray, single conductors")),
    ),
    rare=True,
)
CIRCUITS = whole_number(
    message("Circuits that share this conductor"),
    message("Enter the largest of their devices and the conductors behind it."),
    1,
    MAX_CIRCUITS,
    rare=True,
)
CIRCUIT = one_of(
    message("The circuit is"),
    message("With a tap, enter the device ahead of the feeder and the tap conductors."),
    (
        Choice("feeder-or-branch", message("A feeder or branch circuit")),
        Choice("feeder-tap", message("A tap of a feeder")),
        Choice("motor", message("A motor circuit with fuses or an inverse-time breaker")),
        Choice("motor-instantaneous-trip", message("A motor circuit with an instantaneous-trip breaker")),
        Choice("flexible-cord", message("A flexible cord or fixture wire")),
        Choice("service", message("Service conductors, with no device ahead")),
    ),
    rare=True,
)
MOTOR = one_of(
    message("Kind of motor"),
    message("It matters behind an instantaneous-trip breaker only."),
    (
        Choice("ac", message("Alternating current, no wound rotor")),
        Choice("wound-rotor-or-dc", message("Wound rotor or direct current")),
    ),
    rare=True,
)
MOTOR_CURRENT = quantity(
    message("Full-load current of the motor"),
    message("From the table of the code, not from the plate. It is needed behind an instantaneous-trip breaker only."),
    "A",
    0.1,
    MAX_AMPERE,
    example="65",
    rare=True,
)
