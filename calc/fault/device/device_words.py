"""What a device does, in words: one headline and one short sentence for each opening, whoever asks."""

from __future__ import annotations

from calc.fault.device.device import (
    ASSURED,
    BEYOND,
    DOES_NOT_OPEN,
    LIKELY,
    NOT_ASSURED,
    SLOW,
    Opening,
    shown_time,
)
from calc.fault.device.device_limits import BREAKER, EQUIPMENT_PROTECTION, INTERRUPTER, SETTING, rows, sure_multiple
from calc.fault.device.device_notes import FUSES
from calc.known import known
from calc.messages import Message, message
from calc.trace import shown_number

CLASS_C = "fault/fuse_class_c"
HEADLINES = {
    BEYOND: message("Do not count on it"),
    DOES_NOT_OPEN: message("Does not open"),
    NOT_ASSURED: message("Might not open"),
    SLOW: message("Opens slowly"),
    LIKELY: message("Probably opens"),
    ASSURED: message("Opens"),
}


def in_short(
    result: Opening, device_kind: str, multiple: float, fuse_class: str, instantaneous: float | None, read: str
) -> Message:
    """Return what stands beside the headline: how long the device may take, and what else must be so.

    multiple: of the fault current; the others: as they were entered, see calc.fault.device.device_clearing.
    """
    short = _in_short(result, device_kind)
    more = _in_the_band(multiple, instantaneous, read, result) or _of_class_c(multiple, device_kind, fuse_class, result)
    return message("{short}. {more}", short=short, more=more) if more else short


def _in_short(result: Opening, device_kind: str) -> Message:
    if result.verdict == DOES_NOT_OPEN:
        return message("It can carry this current indefinitely")
    if result.verdict == NOT_ASSURED:
        return message("Nothing published requires it to: treat the fault as not cleared")
    if result.verdict == ASSURED:
        return _of_assured(shown_time(known(result.slowest_second)), device_kind)
    if device_kind == EQUIPMENT_PROTECTION:
        return message("The code does not limit its delay at this current")
    if result.slowest_second is None:
        return message("Only its published curve says when")
    return message("Its standard allows {time}; only its curve says less", time=shown_time(result.slowest_second))


def _of_class_c(multiple: float, device_kind: str, fuse_class: str, result: Opening) -> Message | None:
    first = rows(CLASS_C)[0]["multiple"]
    if device_kind in FUSES and fuse_class == "general" and result.verdict == SLOW and multiple < first:
        return message("A class C fuse is not required to open below {first} times", first=first)
    return None


def _in_the_band(multiple: float, instantaneous: float | None, read: str, result: Opening) -> Message | None:
    if instantaneous is None or result.verdict == ASSURED or multiple < instantaneous:
        return None
    words = {"typed": shown_number(instantaneous), "sure": shown_number(round(sure_multiple(instantaneous, read), 2))}
    if read == SETTING:
        return message(
            "Sure to open at once only from {sure} times up: a setting of {typed} may act that high", **words
        )
    return message(
        "At once if {typed} times is the right edge of its curve; if it is a setting, only from {sure} times up",
        **words,
    )


def _of_assured(time: Message, device_kind: str) -> Message:
    if device_kind == BREAKER:
        return message("At once by its curve, usually within {time}", time=time)
    if device_kind == EQUIPMENT_PROTECTION:
        return message("Ground faults only: a delay of {time} at most, plus its own time to open", time=time)
    if device_kind == INTERRUPTER:
        return message("On leakage to ground, within {time}. It does not see a fault between two wires", time=time)
    return message("Within {time}", time=time)
