"""The verdict on a bond's resistance and its words: pass, joined, investigate, or that nothing can be told."""

from __future__ import annotations

from calc.fault.circuit.ranges import Between
from calc.measure.bond_fields import TWO_WIRE
from calc.measure.bond_reading import DECIMALS, ERROR, Measured, Readings, shown_ohm, shown_range
from calc.messages import Message, message
from calc.trace import Trace

PASS, JOINED, INVESTIGATE, CANNOT_TELL = "pass", "joined", "investigate", "cannot-tell"
BESIDE, STOP = "lower-than-the-wire", "stop"


def verdict_of(measured: Measured, sound: Between, alone: float, limit: float | None, below: bool) -> str:
    """Return what a reading proves of the path. alone: the wire's own milliohm; below: at the limit is over it."""
    if not measured.steady:
        return CANNOT_TELL
    ohm = measured.milliohm
    low, read, high = rounded(ohm.low), rounded(ohm.likely), rounded(ohm.high)
    least, most = rounded(alone), rounded(sound.high)
    if limit is None or most < limit:
        below = False
    else:
        most = rounded(limit)
    if high < most or (high == most and not below):
        return BESIDE if read < least else PASS  # a coarse meter must not turn too little into a pass
    return INVESTIGATE if low > most or (low == most and below) else CANNOT_TELL


def rounded(milliohm: float) -> float:
    """Return a resistance as fine as it can be entered, so that one at a limit is at it."""
    return round(milliohm, DECIMALS)


def headline(verdict: str, ohm: Between) -> Message:
    """Return the verdict in a few words; ohm: as measured, milliohm."""
    if verdict == STOP:
        return message("Not checked: de-energize it first")
    if verdict == CANNOT_TELL:
        return message("This meter cannot tell")
    if verdict == PASS:
        return message("Pass: {ohm}", ohm=shown_ohm(ohm.likely))
    if verdict == JOINED:
        return message("Connected, but not shown by what: {ohm}", ohm=shown_ohm(ohm.likely))
    return message("Investigate: {ohm}", ohm=shown_ohm(ohm.likely))


def detail(
    verdict: str, measured: Measured, sound: Between, limit: float | None, readings: Readings, trace: Trace
) -> Message:
    """Return why, with the range measured and what is wanted at most; limit: milliohm, None for none."""
    low, high = shown_range(measured.milliohm)
    words = {
        "low": low,
        "high": high,
        "least": shown_ohm(sound.low),
        "most": shown_ohm(sound.high if limit is None else min(sound.high, limit)),
    }
    if verdict == STOP:
        return message("A reading taken with voltage or current present is worthless, and taking it is dangerous.")
    if not measured.steady:
        return message(
            "Forward and reverse differ too much. Wait until the joints are at one temperature, and check that no "
            "current flows."
        )
    if verdict == BESIDE:
        return message(
            "It reads less than the wire alone has, and is between {low} and {high}. Other metal is in parallel, or "
            "a size or length is wrong.",
            **words,
        )
    if verdict == CANNOT_TELL and not readings.meter_percent:
        return message(
            "With {percent} percent error it may be anywhere from {low} to {high}; the limit is {most}. Enter the "
            "meter's own accuracy.",
            percent=trace.cite(ERROR).value,
            **words,
        )
    if verdict == CANNOT_TELL and readings.method == TWO_WIRE:
        return message("It may be anywhere from {low} to {high}; the limit is {most}. Use a four-wire meter.", **words)
    if verdict == CANNOT_TELL:
        return message("It may be anywhere from {low} to {high}; the limit is {most}. Use a finer meter.", **words)
    if verdict == JOINED:
        return message(
            "The bond itself may be broken and other metal carry the test: look along its whole length. It is "
            "between {low} and {high}; the limit is {most}.",
            **words,
        )
    return message("It is between {low} and {high}; the limit is {most}.", **words)
