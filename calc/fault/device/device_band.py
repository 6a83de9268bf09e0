"""The band that published points leave a device, as series for a time-current picture on logarithmic scales."""

from __future__ import annotations

from calc.data_file import Data
from calc.fault.device.device import FIELD_TEST, inferred_second
from calc.fault.device.device_limits import BREAKER, INTERRUPTER, INTERRUPTER_RULE, Limits, interrupter_second, rows
from calc.messages import Message, message

SHORTEST, LONGEST = 0.01, 10_000  # s; the ends of the picture's time scale
END_MULTIPLE = 100
CURVE_POINTS = 12


def device_band(found: Limits, device_kind: str, rating: float, fault_current: float, *, inferred: bool) -> list[Data]:
    """Return the series of a time-current picture: each a key, its words and its points [ampere, second].

    "stays-closed": below and left of it the device may not open. "open-by": above it the device is open, as its
    standard or its typed curve says. "inferred": the engineering inference, where asked for. "fault": the current.
    Between the first two nothing published says when it opens.
    """
    last = max((point.multiple for point in found.opens), default=1)
    end = 2 * max(END_MULTIPLE / 2 * rating, last * rating, fault_current)
    series = [
        _series("stays-closed", message("Stays closed below and left of this line"), _lower_edge(found, rating)),
        _series("open-by", message("Open above and right of this line"), _upper_edge(found, device_kind, rating, end)),
        _series("fault", message("The fault current"), [[fault_current, SHORTEST], [fault_current, LONGEST]]),
    ]
    if inferred and device_kind == BREAKER:
        points = _inference(rating, end)
        series.append(_series("inferred", message("Engineering inference, not a rating"), points))
    return [each for each in series if each["points"]]


def _series(key: str, words: Message, points: list[list[float]]) -> Data:
    return {"key": key, "words": str(words), "points": [[float(f"{each:.6g}") for each in point] for point in points]}


def _lower_edge(found: Limits, rating: float) -> list[list[float]]:
    """Return the line under which the device stays closed: down in steps as the current grows."""
    points: list[list[float]] = []
    for place, point in enumerate(found.holds):
        second = min(point.second, LONGEST)
        after = found.holds[place + 1].second if place + 1 < len(found.holds) else SHORTEST
        points += [[point.multiple * rating, second], [point.multiple * rating, min(after, LONGEST)]]
    return points


def _upper_edge(found: Limits, device_kind: str, rating: float, end: float) -> list[list[float]]:
    """Return the line above which the device is open: each point holds until the next one."""
    if device_kind == INTERRUPTER:
        return _interrupter_curve(end)
    if not found.opens:
        return []
    points = [[found.opens[0].multiple * rating, LONGEST]]
    for place, point in enumerate(found.opens):
        last = found.opens[place + 1].multiple * rating if place + 1 < len(found.opens) else end
        points += [[point.multiple * rating, point.second], [last, point.second]]
    return points


def _interrupter_curve(end: float) -> list[list[float]]:
    row = rows(INTERRUPTER_RULE)[0]
    ratio = (row["through"] / row["opens"]) ** (1 / CURVE_POINTS)
    milliampere = [row["opens"] * ratio**step for step in range(CURVE_POINTS + 1)]
    curve = [[each / 1000, interrupter_second(each)] for each in milliampere]
    return [[curve[0][0], LONGEST], *curve, [max(end, curve[-1][0]), curve[-1][1]]]


def _inference(rating: float, end: float) -> list[list[float]]:
    first = rows(FIELD_TEST)[0]["multiple"]
    multiples = [first * (end / rating / first) ** (step / CURVE_POINTS) for step in range(CURVE_POINTS + 1)]
    timed = [(multiple, inferred_second(multiple, rating)) for multiple in multiples]
    return [[multiple * rating, max(second, SHORTEST)] for multiple, second in timed if second]
