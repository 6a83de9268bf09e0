"""How long a body bears a current: the zones of time and current, and the limit for a shock that ends."""

from __future__ import annotations

import math
from collections.abc import Iterable
from itertools import pairwise

from calc.answer import Chart, Line
from calc.fault.device.device_limits import INTERRUPTER_RULE, interrupter_second
from calc.messages import Message, message
from calc.rulebook import Rule
from calc.touch.shock.body import Currents
from calc.touch.shock.lasting_current import PERCEPTION
from calc.trace import Trace

ZONES = "touch/time_zones"
LIMIT = "touch/fibrillation_limit"
CURVE_WORDS = {
    "b": message("Muscles may cramp from here"),
    "c1": message("The heart may fibrillate from here"),
    "c2": message("About 1 in 20 hearts fibrillate here"),
}
ZONE_NAMES = {"b": "AC-2", "c1": "AC-3", "c2": "AC-4.1"}
UNFELT, WORST = "AC-1", "AC-4.2"
SPREAD_LEAST = 1.02  # a shock that is alike in all people still shows in a picture


def zone_of(milliampere: float, second: float, trace: Trace) -> str:
    """Return the zone of a shock: "AC-1" not felt, "AC-2" felt, "AC-3" cramps, "AC-4.1" and "AC-4.2" the heart.

    second: any; times outside the curves count as at their ends, where the current they allow is known.
    """
    if milliampere <= trace.cite(PERCEPTION).value:
        return UNFELT
    book = trace.cite(ZONES)
    return next((name for curve, name in ZONE_NAMES.items() if milliampere <= curve_at(book, curve, second)), WORST)


def curve_at(book: Rule, curve: str, second: float) -> float:
    """Return the current, mA, of a curve of the rule touch/time_zones at a time."""
    points = points_of(book, curve)
    second = min(max(second, points[0][0]), points[-1][0])
    near, far = next((one, other) for one, other in pairwise(points) if second <= other[0])
    part = math.log(second / near[0]) / math.log(far[0] / near[0])
    return near[1] * (far[1] / near[1]) ** part


def points_of(book: Rule, curve: str) -> list[tuple[float, float]]:
    """Return the points of a curve: time, s, and current, mA."""
    return [(row["second"], row["milliampere"]) for row in book.rows if row["curve"] == curve]


def fibrillation_limit(second: float, trace: Trace) -> float | None:
    """Return the current, mA, that 99.5 percent of hearts of 50 kg people withstand; None for a time it does not hold.

    Only for a shock that ends after `second`.
    """
    row = min(trace.cite(LIMIT).rows, key=lambda row: row["kilogram"])
    if not row["least_second"] <= second <= row["most_second"]:
        trace.step(
            message(
                "The fibrillation limit holds from {least} to {most} s only, so it says nothing here.",
                least=row["least_second"],
                most=row["most_second"],
            ),
            cites=(LIMIT,),
        )
        return None
    return trace.compute(
        message("Fibrillation limit of a person of {kilogram} kg for a shock that ends.", kilogram=row["kilogram"]),
        "constant / root_of_seconds",
        "mA",
        (LIMIT,),
        constant=row["milliampere"],
        root_of_seconds=math.sqrt(second),
    )


def longest_for_the_limit(trace: Trace) -> float:
    """Return the longest time, s, for which the fibrillation limit holds; after that a shock counts as lasting."""
    return min(row["most_second"] for row in trace.cite(LIMIT).rows)


def interrupter_time(milliampere: float, trace: Trace) -> float | None:
    """Return the longest time, s, in which a class A ground-fault interrupter opens; None below its trip level."""
    row = trace.cite(INTERRUPTER_RULE).rows[0]
    return interrupter_second(milliampere) if milliampere >= row["opens"] else None


def zone_chart(currents: Currents, second: float, trace: Trace) -> Chart:
    """Return the picture of the zones with the shock as a line from few people to the most, at its time."""
    book = trace.cite(ZONES)
    curves = (Line(words, _turned(points_of(book, curve))) for curve, words in CURVE_WORDS.items())
    return _chart("time-zones", message("The shock among the zones of time and current"), currents, second, curves)


def limit_chart(currents: Currents, second: float, trace: Trace) -> Chart:
    """Return the picture of the limits for a shock that ends, with the curve of a class A interrupter."""
    lines: list[Line] = []
    for row in trace.cite(LIMIT).rows:
        ends = (row["least_second"], row["most_second"])
        points = [(each, round(row["milliampere"] / math.sqrt(each), 1)) for each in ends]
        lines.append(Line(message("Fibrillation limit, {kilogram} kg", kilogram=row["kilogram"]), _turned(points)))
    row = trace.cite(INTERRUPTER_RULE).rows[0]
    trips = [(round(interrupter_second(each), 4), each) for each in (row["opens"], row["through"])]
    lines.append(Line(message("A Class A GFCI opens by here"), _turned(trips)))
    return _chart("shock-limits", message("The shock beside the limits for one that ends"), currents, second, lines)


def _chart(key: str, title: Message, currents: Currents, second: float, lines: Iterable[Line]) -> Chart:
    low, high = round(currents.few, 3), round(max(currents.most, currents.few * SPREAD_LEAST), 3)
    shock = Line(message("This shock, from those who get least to those who get most"), ((low, second), (high, second)))
    return Chart(
        key,
        "logarithmic",
        title,
        message("Current, mA"),
        message("Time, s"),
        message("{across} mA, {up} s", across="{across}", up="{up}"),
        (shock, *lines),
    )


def _turned(points: Iterable[tuple[float, float]]) -> tuple[tuple[float, float], ...]:
    return tuple((milliampere, second) for second, milliampere in points)
