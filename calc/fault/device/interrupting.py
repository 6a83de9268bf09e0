"""Whether a device may interrupt a current at all: that is judged before it is asked how fast it opens."""

from __future__ import annotations

from calc.calculator import FieldError, NotCovered
from calc.fault.device.device_limits import FUSE, FUSE_TIME_DELAY, HOUSEHOLD, value
from calc.messages import Message, message
from calc.trace import Trace, shown_number

INTERRUPTING = "fault/interrupting_rating"
UNMARKED = {
    FUSE: "fault/fuse_unmarked_interrupting",
    FUSE_TIME_DELAY: "fault/fuse_unmarked_interrupting",
    **dict.fromkeys(HOUSEHOLD, "fault/household_breaker_least_interrupting"),
}
UNMARKED_BREAKER = "fault/breaker_unmarked_interrupting"
SMALLEST_INTERRUPTER = "fault/interrupter_smallest_rating"
INTERRUPTER_VOLTAGE = "fault/interrupter_class_a_voltage"


def unmarked(device_kind: str) -> str:
    """Return the rule that states what a device without a mark interrupts; a switch counts as a breaker."""
    return UNMARKED.get(device_kind, UNMARKED_BREAKER)


def beyond_interrupting(
    device_kind: str, fault_current: float, available: float | None, rating: float | None, trace: Trace
) -> Message | None:
    """Return why the device must not interrupt the current, or None where it may. Records what was held against what.

    available: highest at its terminals, ampere; rating: interrupting rating, ampere. Each is None where it is not
    known. Raises: FieldError for a rating that is needed: the current is above what a device without a mark interrupts.
    """
    most = max(fault_current, available or 0)
    least = value(unmarked(device_kind))
    words = {"most": shown_number(round(most, 3)), "rating": shown_number(rating or least)}
    if rating is None and most > least:
        raise FieldError(
            "interrupting_rating",
            message(
                "Enter the rating marked on the device: up to {most} A may flow. With no marking, count on {rating} "
                "A ({section}).",
                section=trace.section(unmarked(device_kind)),
                **words,
            ),
        )
    if most > (rating or least):
        trace.note(message("Only a series combination tested and marked for that current may be used there instead."))
        return message(
            "It is rated to interrupt {rating} A ({section}), and {most} A may flow. It may burst instead of opening",
            section=trace.section(INTERRUPTING),
            **words,
        )
    if rating is None:
        trace.step(
            message("Interrupting rating first: every such device can interrupt {most} A.", **words),
            cites=(unmarked(device_kind),),
        )
    else:
        trace.step(
            message("Interrupting rating first: {rating} A is enough for {most} A.", **words), cites=(INTERRUPTING,)
        )
    if available is None:
        trace.note(
            message(
                "The interrupting rating must cover the highest available fault current at the device ({section}). "
                "Enter that current to have it checked.",
                section=trace.section(INTERRUPTING),
            )
        )
    return None


def beyond_interrupter(
    fault_current: float, device: float | None, volt: float | None, trace: Trace
) -> Message | None:
    """Return why a class A interrupter is not the one to clear this fault, or None where it is.

    device: its rating, ampere, None for the smallest; volt: to ground. Raises: NotCovered above its voltage.
    """
    most_volt = value(INTERRUPTER_VOLTAGE)
    if volt is not None and volt > most_volt:
        raise NotCovered(
            message("Class A GFCIs are for circuits up to {most} V.", most=shown_number(most_volt)),
            message("{section}, and the classes above it.", section=trace.section(INTERRUPTER_VOLTAGE)),
        )
    rating = device or trace.cite(SMALLEST_INTERRUPTER).value
    if fault_current <= rating:
        return None
    return message(
        "A {rating} A GFCI is made for leakage, and {ampere} A is a short circuit. The breaker or fuse must clear "
        "it: check that one",
        ampere=shown_number(round(fault_current, 3)),
        rating=shown_number(rating),
    )
