"""The time-current picture of a device: what published points say of it, and the fault current."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from calc.answer import Chart, Line
from calc.messages import Message, message


def time_current_chart(title: Message, series: Iterable[Mapping[str, Any]]) -> Chart:
    """Return the picture of series as `calc.fault.device.device_band.device_band` gives them, logarithmic both ways.

    >>> series = [{"words": "The fault current", "points": [[275, 0.01], [275, 10000]]}]
    >>> time_current_chart(message("20 A breaker"), series).lines[0].points
    ((275, 0.01), (275, 10000))
    """
    lines = tuple(Line(each["words"], tuple(tuple(point) for point in each["points"])) for each in series)
    point = message("{across} A, {up} s", across="{across}", up="{up}")
    return Chart("time-current", "logarithmic", title, message("Current, A"), message("Time, s"), point, lines)
