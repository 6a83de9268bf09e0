"""Whether a device opens on a fault, and how long it may take: what published standards allow one to say."""

from __future__ import annotations

from dataclasses import dataclass
from math import inf

from calc.fault.device.device_limits import (
    BREAKER,
    EQUIPMENT_PROTECTION,
    FAST_REGION,
    INTERRUPTER,
    Limits,
    fast_region,
    interrupter_second,
    limits,
    rows,
)
from calc.known import known
from calc.messages import Message, message
from calc.trace import shown_number

DOES_NOT_OPEN, NOT_ASSURED, SLOW, LIKELY, ASSURED = "does-not-open", "not-assured", "slow", "likely", "assured"
BEYOND = "beyond-rating"  # more than the device may interrupt: calc.fault.device.interrupting
VERDICTS = (DOES_NOT_OPEN, NOT_ASSURED, SLOW, LIKELY, ASSURED)
FIELD_TEST = "fault/breaker_field_test"
MINUTE, HOUR = 60, 3600
_HAIR = 1e-9  # a current divided by a rating may miss a multiple by its last digit


@dataclass(frozen=True)
class Opening:
    """How surely a device opens: one of VERDICTS, plain words, and the longest time, s, that its standard allows.

    For ground-fault protection of equipment that time is its delay; its disconnect adds its own.
    """

    verdict: str
    words: Message
    slowest_second: float | None


def opening(
    multiple_of_rating: float,
    device_kind: str,
    rating: float,
    instantaneous_multiple: float | None = None,
    fuse_class: str = "general",
) -> Opening:
    """Return whether a device opens at a multiple of its rating, and the longest time its standard allows.

    multiple_of_rating: fault current over rating, 0 or more. device_kind, rating, ampere, instantaneous_multiple,
    fuse_class: see `limits`. A larger multiple never gives a weaker verdict. Raises: ValueError.

    >>> opening(13.8, "inverse-time-breaker", 20).verdict, opening(13.8, "inverse-time-breaker", 20, 10).verdict
    ('likely', 'assured')
    """
    if not 0 <= multiple_of_rating < inf:
        raise ValueError(multiple_of_rating)
    bounds = limits(device_kind, rating, instantaneous_multiple, fuse_class)
    reached = (point.second for point in bounds.opens if _reaches(multiple_of_rating, point.multiple))
    slowest = min(reached, default=None)
    verdict = _verdict(multiple_of_rating, bounds, slowest)
    if device_kind == INTERRUPTER and verdict == ASSURED:
        slowest = interrupter_second(multiple_of_rating * rating * 1000)
    at_once = (
        device_kind == BREAKER
        and instantaneous_multiple is None
        and _reaches(multiple_of_rating, fast_region("at-once"))
    )
    return Opening(verdict, _words(verdict, slowest, device_kind, at_once), slowest)


def holds_from(verdict: str, found: Limits) -> float:
    """Return the least multiple of the rating that has this verdict of SLOW, LIKELY or ASSURED.

    >>> holds_from("slow", limits("inverse-time-breaker", 20)), holds_from("likely", limits("fuse", 20))
    (1.35, 5)
    """
    if verdict == ASSURED:
        return known(found.assured_from)
    if verdict == SLOW:
        return found.opens[0].multiple
    return max([known(found.likely_from), *(point.multiple for point in found.holds)])


def bounding_rules(result: Opening, found: Limits) -> tuple[str, ...]:
    """Return the rules that the time or the verdict of an opening rests on."""
    if result.slowest_second is None:
        return (found.holds[0].rule,)
    bounds = [point.rule for point in found.opens if point.second == result.slowest_second]
    return (*(bounds[-1:] or [found.opens[-1].rule]), *((FAST_REGION,) if result.verdict == LIKELY else ()))


def inferred_second(multiple_of_rating: float, rating: float) -> float | None:
    """Return how long a breaker may take if it just passed a field test: an engineering inference, never a rating.

    The test's longest time at its multiple, shorter by the square of the current. None below that multiple or
    where no time is listed for the rating. Source: rule fault/breaker_field_test.

    >>> inferred_second(5, 20), inferred_second(2, 20)
    (18.0, None)
    """
    row = next((row for row in rows(FIELD_TEST) if rating <= row["through_ampere"]), None)
    if row is None or not _reaches(multiple_of_rating, row["multiple"]):
        return None
    return row["second"] * row["multiple"] ** 2 / multiple_of_rating**2


def shown_time(second: float) -> Message:
    """Return a time as it is said: hours, minutes or seconds.

    >>> str(shown_time(7200)), str(shown_time(120)), str(shown_time(0.05))
    ('2 h', '2 min', '0.05 s')
    """
    if second >= HOUR:
        return message("{hours} h", hours=shown_number(second / HOUR))
    if second > MINUTE:
        return message("{minutes} min", minutes=shown_number(round(second / MINUTE, 1)))
    return message("{seconds} s", seconds=shown_number(float(f"{second:.3g}")))


def _verdict(multiple: float, found: Limits, slowest: float | None) -> str:
    if found.assured_from and _reaches(multiple, found.assured_from):
        return ASSURED
    held = [point.second for point in found.holds if _reaches(point.multiple, multiple)]
    if inf in held:
        return DOES_NOT_OPEN
    if found.likely_from and not held and _reaches(multiple, found.likely_from):
        return LIKELY
    return NOT_ASSURED if slowest is None else SLOW


def _reaches(multiple: float, limit: float) -> bool:
    return multiple >= limit * (1 - _HAIR)


def _words(verdict: str, slowest: float | None, device_kind: str, at_once: bool) -> Message:
    if verdict == DOES_NOT_OPEN:
        return message("It can carry this current indefinitely. The fault remains.")
    if verdict == NOT_ASSURED:
        return message("Nothing published requires it to open. Treat the fault as not cleared.")
    if verdict == ASSURED:
        time = shown_time(known(slowest))
        if device_kind == EQUIPMENT_PROTECTION:
            return message(
                "Its delay is {time} at most, then the disconnect takes its own time to open.", time=time
            )
        if device_kind == BREAKER:
            return message("By its curve it opens at once, usually within {time}.", time=time)
        return message("It opens within {time}.", time=time)
    if device_kind == EQUIPMENT_PROTECTION:
        return message("It is set to open, but at this current the code does not limit its delay. Read its setting.")
    allowed = (
        message("Its standard allows {time}.", time=shown_time(slowest)) if slowest else message(
            "No published time is known."
        )
    )
    if verdict == SLOW:
        return message("It opens, but slowly. {allowed} Read its published curve.", allowed=allowed)
    if at_once:
        return message("It probably opens at once. {allowed} Its published curve must confirm it.", allowed=allowed)
    return message("It probably opens in seconds. {allowed} Its published curve decides.", allowed=allowed)
