"""What a verdict on a fault loop rests on where it was not entered: the current available, and no arc."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.fault.device.device import ASSURED, LIKELY, SLOW, Opening, holds_from, opening
from calc.fault.device.device_limits import Limits
from calc.fault.device.device_words import HEADLINES
from calc.fault.return_path.return_path_fields import ARC_RULE
from calc.messages import Message, message
from calc.rounded import THREE, at_least, rounded_up
from calc.rulebook import rule
from calc.trace import shown_number


@dataclass(frozen=True)
class Device:
    """A device as the verdict needs it: kind, rating, A, multiple from which it surely opens at once, class of fuse."""

    kind: str
    rating: float
    sure: float | None
    fuse_class: str
    limits: Limits

    def opening(self, ampere: float) -> Opening:
        """Return how surely it opens at a current, ampere."""
        return opening(ampere / self.rating, self.kind, self.rating, self.sure, self.fuse_class)


@dataclass(frozen=True)
class ThroughAnArc:
    """A fault that arcs: the volts it takes, its lowest current, ampere, and what the device does then."""

    volt: float
    ampere: float
    seen: Opening


def least_available(
    device: Device, seen: Opening, lowest: float, volt: float, low_volt: float, source_ohm: float
) -> float | None:
    """Return the fault current, ampere, that must be available ahead of the loop for the verdict to stay what it is.

    lowest: ampere behind a source of source_ohm. volt: nominal, low_volt: what drives the fault at its lowest. None
    where the verdict needs none. The source's impedance adds straight, so a source of this current always is enough;
    rounded up to three figures.
    """
    if seen.verdict not in (SLOW, LIKELY, ASSURED):
        return None
    limit = holds_from(seen.verdict, device.limits) * device.rating
    room = low_volt / limit - (low_volt / lowest - source_ohm)
    return rounded_up(volt / room) if room > 0 else math.inf


def through_an_arc(device: Device, lowest: float, low_volt: float, edition: str) -> ThroughAnArc:
    """Return what becomes of the lowest current when the fault arcs, by the allowance of trade practice."""
    arc = rule(ARC_RULE, edition).value
    ampere = lowest * max(0.0, low_volt - arc) / low_volt
    return ThroughAnArc(arc, ampere, device.opening(ampere))


def conditions(needed: float | None, seen: Opening, arcing: ThroughAnArc | None) -> list[Message]:
    """Return the sentences that say when the verdict is another one; none where it stays what it is."""
    told: list[Message] = []
    if needed is not None and math.isinf(needed):
        told.append(message("Only an infinite source gives that much"))
    elif needed is not None:
        told.append(
            message("True where {needed} A or more is available", needed=shown_number(needed))
        )
    if arcing and (arcing.seen.verdict, arcing.seen.slowest_second) != (seen.verdict, seen.slowest_second):
        told.append(
            message(
                "Through an arc, by trade practice {arc} V, as little as {ampere} A: {headline}",
                arc=shown_number(arcing.volt),
                ampere=at_least(arcing.ampere, THREE),
                headline=str(HEADLINES[arcing.seen.verdict]).lower(),
            )
        )
    return told
