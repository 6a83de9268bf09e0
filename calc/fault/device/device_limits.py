"""What published standards say of an overcurrent device: up to where it carries, from where it opens, how fast."""

from __future__ import annotations

from dataclasses import dataclass
from math import inf

from calc.data_file import Data
from calc.rulebook import undated

BREAKER, FUSE, FUSE_TIME_DELAY = "inverse-time-breaker", "fuse", "fuse-time-delay"
HOUSEHOLD = ("iec-b", "iec-c", "iec-d")
EQUIPMENT_PROTECTION, INTERRUPTER = "ground-fault-protection", "ground-fault-interrupter"
KINDS = (BREAKER, FUSE, FUSE_TIME_DELAY, *HOUSEHOLD, EQUIPMENT_PROTECTION, INTERRUPTER)
FUSE_CLASSES = ("general", "c", "cc", "k")
FAST_REGION = "fault/fast_region"
INSTANTANEOUS_TIME = "fault/breaker_instantaneous_time"
INTERRUPTER_RULE = "fault/interrupter_class_a"
TOLERANCE_RULE = "fault/instantaneous_tolerance"
CURVE, SETTING, NOT_SURE = "curve", "setting", "not-sure"
HERTZ = 60  # the cycles that the rules count


@dataclass(frozen=True)
class Point:
    """One published point: a multiple of the rating, a time in seconds, and the rule that states it."""

    multiple: float
    second: float
    rule: str


@dataclass(frozen=True)
class Limits:
    """What binds a device, by multiples of its rating.

    `holds`: up to the multiple it does not open before the second (infinite: not at all). `opens`: from
    the multiple on it is open by the second. `likely_from`, `assured_from`: multiples, None where there is none.
    """

    holds: tuple[Point, ...]
    opens: tuple[Point, ...]
    likely_from: float | None = None
    assured_from: float | None = None


def limits(
    device_kind: str, rating: float, instantaneous_multiple: float | None = None, fuse_class: str = "general"
) -> Limits:
    """Return the limits of a device of `rating` ampere; for ground-fault protection the rating is its setting.

    device_kind: one of KINDS. instantaneous_multiple: of a breaker, from its own curve. fuse_class: one of
    FUSE_CLASSES. A device outside its standard has no point at which it opens. Raises: ValueError.
    Source: the rules that each point names.

    >>> [(point.multiple, point.second) for point in limits("inverse-time-breaker", 20).opens]
    [(1.35, 3600), (2, 120)]
    """
    if device_kind not in KINDS or fuse_class not in FUSE_CLASSES:
        raise ValueError(f"{device_kind}, {fuse_class}")
    if not 0 < rating < inf:
        raise ValueError(rating)
    if device_kind == BREAKER:
        return _of_breaker(rating, instantaneous_multiple)
    if device_kind in (FUSE, FUSE_TIME_DELAY):
        return _of_fuse(rating, fuse_class, device_kind == FUSE_TIME_DELAY)
    if device_kind in HOUSEHOLD:
        return _of_household_breaker(rating, device_kind)
    return _of_equipment_protection(rating) if device_kind == EQUIPMENT_PROTECTION else _of_interrupter(rating)


def interrupter_second(milliampere: float) -> float:
    """Return the longest time, s, in which a class A interrupter opens at a current from its trip level up, mA.

    Source: rule fault/interrupter_class_a.

    >>> round(interrupter_second(6), 2), round(interrupter_second(1000), 3)
    (5.59, 0.025)
    """
    row = rows(INTERRUPTER_RULE)[0]
    return (row["curve"] / min(milliampere, row["through"])) ** row["exponent"]


def fast_region(opens: str) -> float:
    """Return the multiple from which a device without a curve is thought to open "in-seconds" or "at-once"."""
    return next(row["multiple"] for row in rows(FAST_REGION) if row["opens"] == opens)


def instantaneous_second() -> float:
    """Return the usual longest clearing time, s, of a breaker in its instantaneous region."""
    return max(row["cycle"] for row in rows(INSTANTANEOUS_TIME)) / HERTZ


def sure_multiple(instantaneous: float, read: str) -> float:
    """Return the multiple from which a breaker surely opens at once: a setting may act late by its tolerance.

    read: where the multiple was read: CURVE, the right edge of the published curve, has the tolerance in it; SETTING
    or NOT_SURE. Source: rule fault/instantaneous_tolerance.

    >>> sure_multiple(10, "curve"), sure_multiple(10, "setting")
    (10, 14.0)
    """
    late = rows(TOLERANCE_RULE)[0]["high"]
    return instantaneous if read == CURVE else instantaneous * (100 + late) / 100


def rows(key: str) -> tuple[Data, ...]:
    """Return the rows of a rule that no edition of the code changes."""
    return undated(key).rows


def value(key: str) -> float:
    """Return the value of a rule that no edition of the code changes."""
    return undated(key).value


def _of_breaker(rating: float, instantaneous_multiple: float | None) -> Limits:
    opens = [
        *_first_row(("fault/breaker_at_135_percent_small", "fault/breaker_at_135_percent"), rating),
        *_first_row(("fault/breaker_at_200_percent_small", "fault/breaker_at_200_percent"), rating),
    ]
    if instantaneous_multiple:
        opens.append(Point(instantaneous_multiple, instantaneous_second(), INSTANTANEOUS_TIME))
    return Limits(_carries("fault/breaker_holds"), tuple(opens), fast_region("in-seconds"), instantaneous_multiple)


def _of_fuse(rating: float, fuse_class: str, time_delay: bool) -> Limits:
    if fuse_class == "c":
        opens = _first_row(("fault/fuse_class_c",), rating)
    else:
        opens = [
            *_first_row(("fault/fuse_at_135_percent",), rating),
            *_first_row(("fault/fuse_at_200_percent",), rating),
        ]
    holds = _carries("fault/fuse_holds")
    if time_delay:
        own = {"cc": ("fault/fuse_delay_hold_class_cc",), "k": ("fault/fuse_delay_hold_class_k",)}.get(fuse_class, ())
        holds += tuple(_first_row((*own, "fault/fuse_delay_hold"), rating))
    return Limits(holds, tuple(opens), fast_region("in-seconds"))


def _of_household_breaker(rating: float, kind: str) -> Limits:
    slow, middle = "fault/household_breaker_opens", "fault/household_breaker_at_255_percent"
    held = _carries("fault/household_breaker_holds")
    opens = [*_first_row((slow,), rating), *_first_row((middle,), rating)]
    if not opens:
        return Limits(held, ())
    magnetic = "fault/household_breaker_magnetic"
    at_once = next(row for row in rows(magnetic) if row["type"] == kind)
    opens.append(Point(at_once["opens"], at_once["second"], magnetic))
    band = rows(middle)[0]
    holds = (
        *held,
        Point(band["multiple"], band["least_second"], middle),
        Point(at_once["holds"], at_once["second"], magnetic),
    )
    return Limits(holds, tuple(opens), assured_from=at_once["opens"])


def _of_equipment_protection(setting: float) -> Limits:
    key = "fault/equipment_ground_fault_delay"
    delay = rows(key)[0]
    from_multiple = delay["ampere"] / setting
    held = (Point(1, inf, "fault/equipment_ground_fault_setting"),)
    return Limits(held, (Point(from_multiple, delay["second"], key),), 1, from_multiple)


def _of_interrupter(rating: float) -> Limits:
    row = rows(INTERRUPTER_RULE)[0]
    held, trips, last = (row[name] / 1000 / rating for name in ("holds", "opens", "through"))
    return Limits(
        (Point(held, inf, INTERRUPTER_RULE),),
        (
            Point(trips, interrupter_second(row["opens"]), INTERRUPTER_RULE),
            Point(last, interrupter_second(row["through"]), INTERRUPTER_RULE),
        ),
        assured_from=trips,
    )


def _carries(key: str) -> tuple[Point, ...]:
    return (Point(value(key), inf, key),)


def _first_row(keys: tuple[str, ...], rating: float) -> list[Point]:
    """Return the point of the first row, over the rules in order, that a rating falls into, or none."""
    for key in keys:
        for row in rows(key):
            if row.get("over_ampere", 0) < rating <= row.get("through_ampere", inf):
                return [Point(row["multiple"], row["second"], key)]
    return []
