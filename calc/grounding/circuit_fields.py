"""What is asked about a circuit: its conductors, how they run, what protects them."""

from __future__ import annotations

from calc.conductors.arrangement import raceways_of
from calc.declare import Choice
from calc.vocabulary import MOST_AMPERE, conductor_size, device_rating, metal_of, one_of, quantity, whole_number
from calc.words import say

MOST_CIRCUITS = 100


DEVICE = device_rating(
    say("Breaker or fuse ahead"),
    say("Its rating, for example 200 A. An adjustable one counts at its highest."),
)
METAL = metal_of(say("Metal of the equipment grounding conductor"))
INSTALLED = conductor_size(
    say("Hot conductor installed"),
    say("Size of one of them, for example 3/0. Leave it empty if it is not known."),
)
MINIMUM = conductor_size(
    say("Smallest hot conductor that would do"),
    say("Only where a larger one was run, as for voltage drop. Count ambient temperature and bundling in first."),
)
CONDUCTOR_METAL = metal_of(say("Metal of the hot conductors"))
INCREASE = one_of(
    say("Why the hot conductors are larger"),
    say("Voltage drop, spare capacity, what was on the truck: all count. Ambient temperature and bundling do not."),
    (
        Choice("any", say("Voltage drop or any other reason")),
        Choice("ambient-or-bundling", say("Only ambient temperature or bundling")),
    ),
    rare=True,
)
RACEWAYS = raceways_of(say("In how many raceways or cables the sets run."))
WIRING = one_of(
    say("The conductors run in"),
    say("Multiconductor cables carry an equipment grounding conductor of their own."),
    (
        Choice("raceway", say("Raceway")),
        Choice("cable", say("Multiconductor cable")),
        Choice("cable-tray", say("Cable tray, single conductors")),
    ),
    rare=True,
)
CIRCUITS = whole_number(
    say("Circuits that share this conductor"),
    say("Enter the largest of their devices and the conductors behind it."),
    1,
    MOST_CIRCUITS,
    rare=True,
)
CIRCUIT = one_of(
    say("The circuit is"),
    say("With a tap, enter the device ahead of the feeder and the tap conductors."),
    (
        Choice("feeder-or-branch", say("A feeder or branch circuit")),
        Choice("feeder-tap", say("A tap of a feeder")),
        Choice("motor", say("A motor circuit with fuses or an inverse-time breaker")),
        Choice("motor-instantaneous-trip", say("A motor circuit with an instantaneous-trip breaker")),
        Choice("flexible-cord", say("A flexible cord or fixture wire")),
        Choice("service", say("Service conductors, with no device ahead")),
    ),
    rare=True,
)
MOTOR = one_of(
    say("Kind of motor"),
    say("It matters behind an instantaneous-trip breaker only."),
    (
        Choice("ac", say("Alternating current, no wound rotor")),
        Choice("wound-rotor-or-dc", say("Wound rotor or direct current")),
    ),
    rare=True,
)
MOTOR_CURRENT = quantity(
    say("Full-load current of the motor"),
    say("From the table of the code, not from the plate. It is needed behind an instantaneous-trip breaker only."),
    "A",
    0.1,
    MOST_AMPERE,
    example="65",
    rare=True,
)
