"""The resistance that readings of a bond stand for, as a range."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.calculator import FieldError, require
from calc.electrodes.entered import shown
from calc.fault.circuit.ranges import Between
from calc.measure.bond_fields import FOUR_WIRE, TWO_WIRE, VOLTAGE_DROP
from calc.messages import Message, message
from calc.trace import Trace

MILLI = 1000
DECIMALS = 6  # decimals of a milliohm: as fine as a reading can be entered
REVERSAL, ERROR = "measure/reversal_difference", "measure/meter_error"


@dataclass(frozen=True)
class Readings:
    """What was read: ohm, volt, ampere and percent as the fields name them; None for one left out."""

    method: str
    reading: float | None
    reverse_reading: float | None
    lead_ohm: float
    lead_spread: float | None
    current: float | None
    drop: float | None
    drop_off: float
    digit: float
    meter_percent: float


@dataclass(frozen=True)
class Measured:
    """The resistance in milliohm; steady: whether readings in both directions agree well enough to count."""

    milliohm: Between
    steady: bool = True


def measured(readings: Readings, trace: Trace) -> Measured:
    """Return the resistance that readings stand for. Raises: FieldError for a reading that the method needs.

    Source: Ohm's law; two lead readings of one spread differ by the root of two of it.
    """
    if readings.method == TWO_WIRE:
        return _two_wire(readings, trace)
    if readings.method == FOUR_WIRE:
        return _four_wire(readings, trace)
    if readings.method == VOLTAGE_DROP:
        return _voltage_drop(readings, trace)
    require(readings.current, "current")
    reading = MILLI * require(readings.reading, "reading")
    trace.step(message("A bond tester shows the resistance itself."), reading, "milliohm")
    return Measured(_around(reading, _meter_error(readings, reading, trace)))


def shown_ohm(milliohm: float) -> Message:
    """Return a resistance in the unit it is read in.

    >>> str(shown_ohm(0.8)), str(shown_ohm(2500))
    ('0.8 milliohm', '2.5 ohm')
    """
    if milliohm < MILLI:
        return message("{value} milliohm", value=shown(milliohm))
    return message("{value} ohm", value=shown(milliohm / MILLI))


def shown_range(milliohm: Between) -> tuple[Message, Message]:
    """Return the ends of a range in the unit they are read in, rounded outward to two figures of its half.

    >>> low, high = shown_range(Between(21.7157, 50, 78.2843))
    >>> str(low), str(high)
    ('21 milliohm', '79 milliohm')
    """
    half = milliohm.high - milliohm.likely
    if half <= 0:
        return shown_ohm(milliohm.low), shown_ohm(milliohm.high)
    step = 10.0 ** (math.floor(math.log10(half)) - 1)
    low, high = (round(each / step, DECIMALS) for each in (milliohm.low, milliohm.high))
    return shown_ohm(math.floor(low) * step), shown_ohm(math.ceil(high) * step)


def _two_wire(readings: Readings, trace: Trace) -> Measured:
    spread = MILLI * require(readings.lead_spread, "lead_spread")
    if spread == 0 == readings.digit:
        raise FieldError(
            "lead_spread", message("No leads repeat that well. Enter at least the last digit that the meter shows.")
        )
    reading = MILLI * require(readings.reading, "reading")
    middle = trace.compute(
        message("The reading without the leads."),
        "reading - leads",
        "milliohm",
        reading=reading,
        leads=MILLI * readings.lead_ohm,
    )
    doubt = trace.compute(
        message("The leads vary twice, when nulled and when read. Together that is the square root of two times one."),
        "root_of_two * spread",
        "milliohm",
        root_of_two=2**0.5,
        spread=spread,
    )
    doubt += _meter_error(readings, reading, trace)
    if middle + doubt < 0:
        raise FieldError(
            "lead_ohm", message("The leads alone read more than leads and bond. Short the tips and read again.")
        )
    return Measured(_around(middle, doubt))


def _four_wire(readings: Readings, trace: Trace) -> Measured:
    forward = MILLI * require(readings.reading, "reading")
    reverse = MILLI * require(readings.reverse_reading, "reverse_reading")
    mean = trace.compute(
        message("The average of both directions. It cancels what warm joints of unlike metals add."),
        "(forward + reverse) / 2",
        "milliohm",
        forward=forward,
        reverse=reverse,
    )
    half = abs(forward - reverse) / 2
    if readings.current is not None:
        trace.compute(
            message("Voltage of the joints themselves, in microvolts."),
            "half_difference * current * thousand",
            "microvolt",
            half_difference=half,
            current=readings.current,
            thousand=1000,
        )
    most = trace.cite(REVERSAL).value
    trace.step(
        message(
            "Half the difference of the two is {half}. Above {most} percent of their average, the test proves nothing.",
            half=shown_ohm(half),
            most=most,
        ),
        cites=(REVERSAL,),
    )
    steady = round(100 * half, 9) <= round(most * mean, 9)
    return Measured(_around(mean, _meter_error(readings, mean, trace)), steady)


def _voltage_drop(readings: Readings, trace: Trace) -> Measured:
    drop = require(readings.drop, "drop")
    if drop < readings.drop_off:
        raise FieldError(
            "drop_off", message("More voltage with the current off than on. Find what drives it, and read again.")
        )
    ohm = trace.compute(
        message("Voltage drop ÷ current."),
        "(drop - drop_with_current_off) * thousand / current",
        "milliohm",
        drop=drop,
        drop_with_current_off=readings.drop_off,
        thousand=MILLI,
        current=require(readings.current, "current"),
    )
    return Measured(_around(ohm, _meter_error(readings, ohm, trace)))


def _meter_error(readings: Readings, reading: float, trace: Trace) -> float:
    """Return the meter's own error, milliohm: as entered, or a usual one, because no meter is perfect."""
    if readings.method != TWO_WIRE and reading == 0 == readings.digit:
        raise FieldError("digit", message("No bond has 0 ohm. Enter the last digit that the meter shows."))
    words, percent, rules = message("The meter's own error."), readings.meter_percent, ()
    if not percent:
        percent, rules = trace.cite(ERROR).value, (ERROR,)
        words = message(
            "The meter's accuracy is not entered: {percent} percent of the reading is used.", percent=percent
        )
    return trace.compute(
        words,
        "reading * percent / hundred + digit",
        "milliohm",
        rules,
        reading=reading,
        percent=percent,
        hundred=100,
        digit=MILLI * readings.digit,
    )


def _around(middle: float, doubt: float) -> Between:
    return Between(max(middle - doubt, 0), max(middle, 0), middle + doubt)
