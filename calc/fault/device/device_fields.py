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
    BREAKER: message("Inverse-time circuit breaker"),
    FUSE: message("Fuse without time delay"),
    FUSE_TIME_DELAY: message("Time-delay fuse"),
    "iec-b": message("IEC household breaker, type B"),
    "iec-c": message("IEC household breaker, type C"),
    "iec-d": message("IEC household breaker, type D"),
    EQUIPMENT_PROTECTION: message("Ground-fault protection of equipment"),
    INTERRUPTER: message("GFCI, class A"),
}
DEVICE_KIND = one_of(
    message("Type of device"),
    message("The one that should open. IEC breakers show a letter ahead of the rating, like B16."),
    tuple(Choice(kind, words) for kind, words in KIND_WORDS.items()),
)
DEVICE = device_rating(
    message("Rating of the device"),
    message("For ground-fault protection of equipment, enter its setting. A GFCI needs none."),
)
FAULT_CURRENT = quantity(
    message("Fault current"),
    message(
        "The lowest the fault can drive: long run, warm conductors, weak source. For a GFCI, the leakage, such as 30 "
        "mA."
    ),
    "A",
    MIN_AMPERE,
    MAX_AMPERE,
    example="275",
)
INSTANTANEOUS_MULTIPLE = quantity(
    message("Instantaneous pickup (× rating)"),
    message(
        "A multiple of the breaker's rating, from its own published curve or its dial. Leave empty if you have neither."
    ),
    "x",
    MIN_MULTIPLE,
    MAX_MULTIPLE,
    example="10",
)
INSTANTANEOUS_READ = one_of(
    message("Where that pickup comes from"),
    message("The right edge of the curve includes the tolerance. A dial setting does not."),
    (
        Choice(NOT_SURE, message("Not sure")),
        Choice(CURVE, message("The right edge of its published curve")),
        Choice(SETTING, message("The setting on its dial")),
    ),
    rare=True,
)
AVAILABLE = quantity(
    message("Highest available fault current at the device"),
    message("From the marking on the equipment or a calculation. The interrupting rating is checked against it."),
    "A",
    1,
    MAX_AMPERE,
    example="10000",
)
INTERRUPTING_RATING = quantity(
    message("Interrupting rating of the device"),
    message("Marked on the device, often as AIC or in kA."),
    "A",
    1,
    MAX_AMPERE,
    example="10 kA",
)
VOLTAGE_TO_GROUND = quantity(
    message("Voltage to ground"),
    message("Only to find the largest impedance of the fault loop. Leave empty if you don't need that."),
    "V",
    1,
    MAX_VOLT,
    example="120",
)
FUSE_CLASS = one_of(
    message("Fuse class"),
    message("Marked on the fuse. Some classes are tested at other points."),
    (
        Choice("general", message("Another class, such as G, H, J, R or T")),
        Choice("c", message("Class C")),
        Choice("cc", message("Class CC")),
        Choice("k", message("Class K")),
    ),
    rare=True,
)
ESTIMATE = yes_or_no(
    message("Add a time estimate"),
    message("An engineering inference from a field test of breakers. It is not a rating."),
)
