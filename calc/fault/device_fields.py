"""What is asked about an overcurrent device and the fault it must clear."""

from __future__ import annotations

from calc.declare import Choice
from calc.fault.device_limits import (
    BREAKER,
    CURVE,
    EQUIPMENT_PROTECTION,
    FUSE,
    FUSE_TIME_DELAY,
    INTERRUPTER,
    NOT_SURE,
    SETTING,
)
from calc.vocabulary import device_rating, one_of, quantity, yes_or_no
from calc.words import say

LEAST_AMPERE, MOST_AMPERE = 0.001, 200_000
LEAST_MULTIPLE, MOST_MULTIPLE = 2, 50
MOST_VOLT = 1000

KIND_WORDS = {
    BREAKER: say("Circuit breaker, inverse time"),
    FUSE: say("Fuse without time delay"),
    FUSE_TIME_DELAY: say("Time-delay fuse"),
    "iec-b": say("IEC household breaker, type B"),
    "iec-c": say("IEC household breaker, type C"),
    "iec-d": say("IEC household breaker, type D"),
    EQUIPMENT_PROTECTION: say("Ground-fault protection of equipment"),
    INTERRUPTER: say("GFCI, class A"),
}
DEVICE_KIND = one_of(
    say("Kind of device"),
    say("The one that should open. IEC breakers carry their letter before the rating, like B16."),
    tuple(Choice(kind, words) for kind, words in KIND_WORDS.items()),
)
DEVICE = device_rating(
    say("Rating of the device"),
    say("For ground-fault protection of equipment enter its setting. A GFCI needs none."),
)
FAULT_CURRENT = quantity(
    say("Fault current"),
    say("The lowest one the fault can drive: long hot conductors, weak source. For a GFCI the leak, such as 30 mA."),
    "A",
    LEAST_AMPERE,
    MOST_AMPERE,
    example="275",
)
INSTANTANEOUS_MULTIPLE = quantity(
    say("Opens at once from"),
    say("A multiple of the breaker's rating, from its own published curve or its dial. Leave it empty without either."),
    "x",
    LEAST_MULTIPLE,
    MOST_MULTIPLE,
    example="10",
)
INSTANTANEOUS_READ = one_of(
    say("That multiple is"),
    say("The right edge of the curve has its tolerance in it. A dial has not."),
    (
        Choice(NOT_SURE, say("Not sure")),
        Choice(CURVE, say("The right edge of its published curve")),
        Choice(SETTING, say("The setting on its dial")),
    ),
    rare=True,
)
AVAILABLE = quantity(
    say("Highest fault current available at the device"),
    say("From the mark on the equipment or from a calculation. Its interrupting rating is held against it."),
    "A",
    1,
    MOST_AMPERE,
    example="10000",
)
INTERRUPTING_RATING = quantity(
    say("Interrupting rating of the device"),
    say("It is marked on the device, often as AIC or in kA."),
    "A",
    1,
    MOST_AMPERE,
    example="10 kA",
)
VOLTAGE_TO_GROUND = quantity(
    say("Voltage to ground"),
    say("For the largest impedance of the fault loop. Leave it empty if that is not asked."),
    "V",
    1,
    MOST_VOLT,
    example="120",
)
FUSE_CLASS = one_of(
    say("Class of the fuse"),
    say("It stands on the fuse. Some classes are judged at other points."),
    (
        Choice("general", say("Another class, such as G, H, J, R or T")),
        Choice("c", say("Class C")),
        Choice("cc", say("Class CC")),
        Choice("k", say("Class K")),
    ),
    rare=True,
)
ESTIMATE = yes_or_no(
    say("Add an estimate of the time"),
    say("An engineering inference from a field test of breakers. It is no rating."),
)
