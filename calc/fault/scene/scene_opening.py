"""Which breaker of the drawn scene opens on its fault, and its time-current picture."""

from __future__ import annotations

from dataclasses import dataclass

from calc.answer import Chart
from calc.fault.circuit.network import Solution
from calc.fault.device.device import Opening, opening
from calc.fault.device.device_band import device_band
from calc.fault.device.device_limits import BREAKER, FAST_REGION, Limits, limits
from calc.fault.device.time_current import time_current_chart
from calc.fault.scene.scene_of import RATINGS
from calc.fault.scene.scene_words import DEVICE_WORDS
from calc.messages import message
from calc.rounded import three_figures
from calc.trace import Trace

HOT_OF = {"branch": "branch-hot", "feeder": "feeder-hot-a", "supply": "supply-hot-a"}
AHEAD = {
    "machine": ("branch", "feeder", "supply"),
    "buried-elbow": ("branch", "feeder", "supply"),
    "panel": ("feeder", "supply"),
}
BEST_FIRST = ("assured", "likely", "slow", "not-assured", "does-not-open")
MIN_SHOWN = 0.005
OPENS = ("assured", "likely")
SMALLEST_SHOWN = 100  # a current below this part of the rating is left out of the picture; its title tells it


@dataclass(frozen=True)
class OpeningDevice:
    """A breaker ahead of the fault: its name in the scene, the current through it, ampere, and what it does."""

    device: str
    ampere: float
    opening: Opening


def what_opens(fault: str, solved: Solution, trace: Trace) -> OpeningDevice | None:
    """Return the breaker that opens most surely, and how surely; None where none here is ahead of the fault."""
    devices: list[OpeningDevice] = []
    for device in AHEAD.get(fault, ()):
        ampere, rating = abs(solved.currents[HOT_OF[device]]), RATINGS[device]
        found = opening(ampere / rating, BREAKER, rating)
        trace.step(
            message(
                "{device}: {ampere} A, {multiple} times its rating. {words}",
                device=DEVICE_WORDS[device],
                ampere=shown(ampere),
                multiple=shown(ampere / rating),
                words=found.words,
            ),
            cites=_rules_of(found.verdict, limits(BREAKER, rating)),
        )
        devices.append(OpeningDevice(device, ampere, found))
    return min(devices, key=lambda each: BEST_FIRST.index(each.opening.verdict), default=None)


def _rules_of(verdict: str, points: Limits) -> tuple[str, ...]:
    if verdict == "does-not-open":
        return tuple(point.rule for point in points.holds)
    if verdict == "likely":
        return (FAST_REGION,)
    return tuple(point.rule for point in (*points.holds, *points.opens))


def time_current_of(breaker: OpeningDevice, trace: Trace) -> Chart:
    """Return the time-current picture of a breaker and the current through it; what it is drawn from is cited."""
    rating = RATINGS[breaker.device]
    points = limits(BREAKER, rating)
    for point in (*points.holds, *points.opens):
        trace.cite(point.rule)
    series = device_band(points, BREAKER, rating, breaker.ampere or rating, inferred=False)
    if breaker.ampere < rating / SMALLEST_SHOWN:
        series = [each for each in series if each["key"] != "fault"]
    words = {"device": DEVICE_WORDS[breaker.device], "ampere": shown(breaker.ampere)}
    title = message("{device}, {ampere} A through it", **words)
    return time_current_chart(title, series)


def shown(value: float) -> str:
    """Return a number to three digits, no more than a model is good for.

    >>> shown(275.46), shown(0.0009), shown(1234.5)
    ('275', '0', '1,230')
    """
    return three_figures(value, MIN_SHOWN)
