"""What is asked about an overcurrent device and the fault it must clear."""

from __future__ import annotations

from calc.calculator import Choice
from calc.fault.device.device_limits import (
    BREAKER,
    CURVE,
    EQUIPMENT_PROTECTION,
    FUSE,
    FUSE_TIME_DELAY,
    INTERRUPTER,
    NOT_SURE,
    SETTING,
)
from calc.messages import message
from calc.shared_fields import device_rating, one_of, quantity, yes_or_no

MIN_AMPERE, MAX_AMPERE = 0.001, 200_000
MIN_MULTIPLE, MAX_MULTIPLE = 2, 50
MAX_VOLT = 1000

KIND_WORDS = {
    BREAKER: message("Circuit breaker, inverse time"),
    FUSE: message("Fuse without time delay"),
    FUSE_TIME_DELAY: message("Time-delay fuse"),
    "iec-b": message("IEC household breaker, type B"),
    "iec-c": message("IEC household breaker, type C"),
    "iec-d": message("IEC household breaker, type D"),
    EQUIPMENT_PROTECTION: message("Ground-fault protection of equipment"),
    INTERRUPTER: message("GFCI, class A"),
}
DEVICE_KIND = one_of(
    message("Kind of device"),
    message("The one that should open. IEC breakers carry their letter before the rating, like B16."),
    tuple(Choice(kind, words) for kind, words in KIND_WORDS.items()),
)
DEVICE = device_rating(
    message("Rating of the device"),
    message("For ground-fault protection of equipment enter its setting. A GFCI needs none."),
)
FAULT_CURRENT = quantity(
    message("Fault current"),
    message(
        "The lowest one the fault can drive: long hot conductors, weak source. For a GFCI the leak, such as 30 mA."
    ),
    "A",
    MIN_AMPERE,
    MAX_AMPERE,
    example="275",
)
INSTANTANEOUS_MULTIPLE = quantity(
    message("Opens at once from"),
    message(
        "A multiple of the breaker's rating, from its own published curve or its dial. Leave it empty without either."
    ),
    "x",
    MIN_MULTIPLE,
    MAX_MULTIPLE,
    example="10",
)
INSTANTANEOUS_READ = one_of(
    message("That multiple is"),
    message("The right edge of the curve has its tolerance in it. A dial has not."),
    (
        Choice(NOT_SURE, message("Not sure")),
        Choice(CURVE, message("The right edge of its published curve")),
        Choice(SETTING, message("The setting on its dial")),
    ),
    rare=True,
)
AVAILABLE = quantity(
    message("Highest fault current available at the device"),
    message("From the mark on the equipment or from a calculation. Its interrupting rating is held against it."),
    "A",
    1,
    MAX_AMPERE,
    example="10000",
)
INTERRUPTING_RATING = quantity(
    message("Interrupting rating of the device"),
    message("It is marked on the device, often as AIC or in kA."),
    "A",
    1,
    MAX_AMPERE,
    example="10 kA",
)
VOLTAGE_TO_GROUND = quantity(
    message("Voltage to ground"),
    message("For the largest impedance of the fault loop. Leave it empty if that is not asked."),
    "V",
    1,
    MAX_VOLT,
    example="120",
)
FUSE_CLASS = one_of(
    message("Class of the fuse"),
    message("It stands on the fuse. Some classes are judged at other points."),
    (
        Choice("general", message("Another class, such as G, H, J, R or T")),
        Choice("c", message("Class C")),
        Choice("cc", message("Class CC")),
        Choice("k", message("Class K")),
    ),
    rare=True,
)
ESTIMATE = yes_or_no(
    message("Add an estimate of the time"),
    message("An engineering inference from a field test of breakers. It is no rating."),
)
