"""Whether a breaker, fuse or ground-fault device opens on a fault current, and how long it may take."""

from __future__ import annotations

from math import inf
from typing import Annotated

from calc.calculator import Answer, calculator, require
from calc.fault.caution import state_the_model
from calc.fault.device import device_fields as ask
from calc.fault.device.device import BEYOND, FIELD_TEST, LIKELY, Opening, inferred_second, opening, shown_time
from calc.fault.device.device_band import device_band
from calc.fault.device.device_limits import (
    BREAKER,
    EQUIPMENT_PROTECTION,
    FAST_REGION,
    HOUSEHOLD,
    INSTANTANEOUS_TIME,
    INTERRUPTER,
    INTERRUPTER_RULE,
    NOT_SURE,
    TOLERANCE_RULE,
    Limits,
    limits,
    rows,
    sure_multiple,
)
from calc.fault.device.device_notes import note_the_device, require_one_device
from calc.fault.device.device_outputs import OUTPUTS
from calc.fault.device.device_words import HEADLINES, in_short
from calc.fault.device.interrupting import beyond_interrupter, beyond_interrupting
from calc.fault.device.loop_limit import loop_limit_step
from calc.fault.device.time_current import time_current_chart
from calc.margin.declared import Margin
from calc.messages import message
from calc.trace import Trace, shown_of_model

DISCONNECTION = "fault/disconnection_time"


@calculator(
    "device-clearing",
    name=message("Breaker or fuse opening time"),
    purpose=message("Whether the breaker or fuse opens on a fault current, and how long its standard lets it take."),
    submit=message("Check the device"),
    example={"edition": "2023", "device": "20", "fault_current": "275", "voltage_to_ground": "120"},
    outputs=OUTPUTS,
    margin=Margin(("fault_current",), verdict="verdict"),
)
def device_clearing(
    *,
    trace: Trace,
    device_kind: Annotated[str, ask.DEVICE_KIND] = BREAKER,
    device: Annotated[float | None, ask.DEVICE] = None,
    fault_current: Annotated[float, ask.FAULT_CURRENT],
    instantaneous_multiple: Annotated[float | None, ask.INSTANTANEOUS_MULTIPLE] = None,
    voltage_to_ground: Annotated[float | None, ask.VOLTAGE_TO_GROUND] = None,
    fuse_class: Annotated[str, ask.FUSE_CLASS] = "general",
    estimate: Annotated[str, ask.ESTIMATE] = "no",
    instantaneous_read: Annotated[str, ask.INSTANTANEOUS_READ] = NOT_SURE,
    available: Annotated[float | None, ask.AVAILABLE] = None,
    interrupting_rating: Annotated[float | None, ask.INTERRUPTING_RATING] = None,
) -> Answer:
    """Return whether an overcurrent or ground-fault device opens on a fault current, and its longest time.

    When: one device and the lowest fault current through it, 60 Hz, up to 1000 V. Not for electronic trip
    units with settings of their own, relays, direct current: their curves alone speak.

    Parameters:
        device_kind: "inverse-time-breaker", "fuse", "fuse-time-delay", "iec-b", "iec-c", "iec-d",
            "ground-fault-protection" or "ground-fault-interrupter".
        device: rating, or setting of ground-fault protection, ampere; needed for all but the interrupter.
        fault_current: ampere, 0.001 to 200,000. voltage_to_ground: volt, 1 to 1000, for the loop impedance.
        instantaneous_multiple: of a breaker, from its own curve, 2 to 50 times its rating.
        instantaneous_read: "curve" (its right edge), "setting" or "not-sure".
        available: highest current at its terminals, interrupting_rating: marked on it; ampere, to 200,000.
        fuse_class: "general", "c", "cc" or "k". estimate: "yes" adds the engineering inference.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold verdict, multiple, fault_current, slowest_second,
        estimate_second, largest_loop_ohm (each None where there is none) and series, for a picture.
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: UL 489, UL 248, UL 943, IEC 60898-1, 230.95(A); BS 7671 for the loop impedance.

    Example:
    >>> result = device_clearing(edition="2023", device="20", fault_current="40")
    >>> result.answer.values["verdict"], result.answer.values["slowest_second"]
    ('slow', 120)
    """
    rating = trace.cite(INTERRUPTER_RULE).rows[0]["opens"] / 1000 if device_kind == INTERRUPTER else None
    rating = rating or require(device, "device")
    require_one_device(device_kind, rating, instantaneous_multiple, fuse_class, trace)
    if device_kind == INTERRUPTER:
        beyond = beyond_interrupter(fault_current, device, voltage_to_ground, trace)
    else:
        beyond = beyond_interrupting(device_kind, fault_current, available, interrupting_rating, trace)
    multiple = trace.compute(
        message("The fault current as a multiple of the rating or setting."),
        "fault_current / rating",
        "×",
        fault_current=fault_current,
        rating=rating,
    )
    sure = instantaneous_multiple and sure_multiple(instantaneous_multiple, instantaneous_read)
    if sure:
        trace.cite(TOLERANCE_RULE)
    bounds = limits(device_kind, rating, sure, fuse_class)
    _show_the_points(bounds, device_kind, trace)
    result = opening(multiple, device_kind, rating, sure, fuse_class)
    if beyond:
        result = Opening(BEYOND, beyond, None)
    trace.step(result.words, *_time_of(result.slowest_second), cites=_basis_of_verdict(result.verdict, device_kind))
    estimated = _estimate(multiple, rating, device_kind, trace) if estimate == "yes" else None
    loop = _loop(bounds, rating, device_kind, voltage_to_ground, trace)
    note_the_device(device_kind, rating, fuse_class, trace)
    state_the_model(
        trace,
        (
            message("the current stays what was entered until the device opens"),
            message("the device is the one named, in good order, and wired per its instructions"),
        ),
    )
    short = in_short(result, device_kind, multiple, fuse_class, instantaneous_multiple, instantaneous_read)
    series = device_band(bounds, device_kind, rating, fault_current, inferred=estimated is not None)
    return Answer(
        name=message("Breaker or fuse opening time"),
        headline=HEADLINES[result.verdict],
        detail=beyond or short,
        basis=(bounds.opens or bounds.holds)[-1].rule,
        answer_code=result.verdict,
        values={
            "verdict": result.verdict,
            "multiple": multiple,
            "slowest_second": result.slowest_second,
            "estimate_second": estimated,
            "largest_loop_ohm": loop,
            "series": series,
        },
        charts=(time_current_chart(message("Time and current of this device"), series),),
    )


def _show_the_points(bounds: Limits, device_kind: str, trace: Trace) -> None:
    for point in bounds.holds:
        words = message(
            "It can carry up to {multiple} times its rating or setting indefinitely.",
            multiple=shown_of_model(point.multiple),
        )
        if point.second < inf:
            words = message(
                "Up to {multiple} times, it holds for at least {time}.",
                multiple=shown_of_model(point.multiple),
                time=shown_time(point.second),
            )
        trace.step(words, cites=(point.rule,))
    for point in bounds.opens:
        words = message(
            "At {multiple} times and up: {time} at most.",
            multiple=shown_of_model(point.multiple),
            time=shown_time(point.second),
        )
        if point.rule == INSTANTANEOUS_TIME:
            words = message(
                "At {multiple} times and up, its curve opens it at once: usually {time}.",
                multiple=shown_of_model(point.multiple),
                time=shown_time(point.second),
            )
        trace.step(words, cites=(point.rule,))
    if device_kind == INTERRUPTER:
        trace.step(message("Between these it is faster with more current."), cites=(INTERRUPTER_RULE,))


def _basis_of_verdict(verdict: str, device_kind: str) -> tuple[str, ...]:
    return (FAST_REGION,) if verdict == LIKELY and device_kind != EQUIPMENT_PROTECTION else ()


def _time_of(second: float | None) -> tuple[float | None, str]:
    return (None, "") if second is None else (float(f"{second:.3g}"), "s at most")


def _estimate(multiple: float, rating: float, device_kind: str, trace: Trace) -> float | None:
    second = inferred_second(multiple, rating) if device_kind == BREAKER else None
    if second is None:
        trace.note(message("No estimate: it covers breakers up to 400 A, at three times their rating and up."))
        return None
    row = next(row for row in rows(FIELD_TEST) if rating <= row["through_ampere"])
    trace.step(
        message(
            "Estimate, an engineering inference and not a rating: the longest time of a field test, reduced by the "
            "square."
        ),
    )
    trace.compute(
        message("It assumes constant heat (I²t). The manufacturer's curve governs, not this."),
        "field_time * (field_multiple / multiple) * (field_multiple / multiple)",
        "s",
        (FIELD_TEST,),
        field_time=row["second"],
        field_multiple=row["multiple"],
        multiple=multiple,
    )
    return second


def _loop(
    bounds: Limits, rating: float, device_kind: str, voltage_to_ground: float | None, trace: Trace
) -> float | None:
    if device_kind not in (BREAKER, *HOUSEHOLD):
        return None
    if bounds.assured_from is None or voltage_to_ground is None:
        return None
    words = message("Largest impedance of the whole fault loop at which it opens at once.")
    loop = loop_limit_step(voltage_to_ground, bounds.assured_from, rating, words, trace)
    if device_kind in HOUSEHOLD:
        row = next((row for row in trace.cite(DISCONNECTION).rows if voltage_to_ground <= row["through_volt"]), None)
        if row:
            trace.note(
                message(
                    "Under IEC rules a final circuit at this voltage opens within {second} s ({section}).",
                    second=row["second"],
                    section=trace.section(DISCONNECTION),
                )
            )
    return loop
