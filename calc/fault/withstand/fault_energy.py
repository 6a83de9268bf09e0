"""The energy of a fault that heats a jumper, A²·s: from current and time, or as the maker of the device states it."""

from __future__ import annotations

from calc.calculator import FieldError, NotCovered
from calc.fault.device.device import DOES_NOT_OPEN, opening, shown_time
from calc.fault.device.device_limits import NOT_SURE, TOLERANCE_RULE, limits, sure_multiple
from calc.fault.device.device_notes import require_one_device
from calc.fault.withstand.adiabatic import offset_factor
from calc.messages import CalculatorName, message
from calc.trace import Trace, shown_number

OPENING = CalculatorName("device-clearing", message("breaker or fuse opening time"))
LARGEST_RATIO = "fault/largest_x_over_r"
LONGEST, SHORTEST = "fault/adiabatic_longest", "fault/adiabatic_shortest"


def time_to_open(
    clearing_time: float | None,
    device_kind: str,
    device: float | None,
    instantaneous_multiple: float | None,
    fault_current: float,
    trace: Trace,
) -> float:
    """Return the time, s, that the fault lasts: the one typed, else the longest that the device's standard allows.

    Raises: FieldError where neither is there or the standard allows more than the formulas hold for; NotCovered where
    the device may carry the current for good.
    """
    if clearing_time is not None:
        trace.step(message("Time until the device opens, as entered."), clearing_time, "s")
        return clearing_time
    if device is None:
        raise FieldError("clearing_time")
    require_one_device(device_kind, device, instantaneous_multiple, "general", trace)
    multiple = trace.compute(
        message("The fault current as a multiple of the rating or setting."),
        "fault_current / rating",
        "×",
        fault_current=fault_current,
        rating=device,
    )
    sure = instantaneous_multiple
    if sure:
        trace.cite(TOLERANCE_RULE)
        sure = sure_multiple(sure, NOT_SURE)  # the later opening heats more
    result = opening(multiple, device_kind, device, sure)
    bounds = limits(device_kind, device, sure)
    bound = [point.rule for point in bounds.opens if point.second == result.slowest_second] or [bounds.holds[0].rule]
    trace.step(result.words, cites=(bound[-1],))
    if result.verdict == DOES_NOT_OPEN:
        raise NotCovered(
            message("The device can carry this current indefinitely. No jumper size makes up for that."),
            message("See {opening}, and repair the ground-fault current path.", opening=OPENING),
        )
    longest = trace.cite(LONGEST).value
    if result.slowest_second is None:
        raise FieldError(
            "clearing_time", message("No published time is known here. Enter the time from the device's curve.")
        )
    if result.slowest_second > longest:
        raise FieldError(
            "clearing_time",
            message(
                "The device's standard promises no better than {time} here. Enter the time from its own curve.",
                time=shown_time(result.slowest_second),
            ),
        )
    trace.step(
        message(
            "Longest time that the standard of the device, or the curve entered, allows."
        ), result.slowest_second, "s"
    )
    return result.slowest_second


def fault_energy(fault_current: float, second: float, trace: Trace) -> float:
    """Return the energy, A²·s, of a constant current over a time for which the formulas hold.

    Raises: NotCovered for a longer time, FieldError for a shorter one: then the maker's figure is needed.
    """
    longest, shortest = trace.cite(LONGEST).value, trace.cite(SHORTEST).value
    if second > longest:
        raise NotCovered(
            message(
                "The formulas hold up to {longest} s; over {time}, heat escapes.",
                longest=longest,
                time=shown_time(second),
            ),
            message("See {opening}: a fault must be cleared faster than this.", opening=OPENING),
        )
    if second < shortest:
        raise FieldError(
            "let_through",
            message(
                "It opens in less than {shortest} s. Enter the device's let-through I²t from the manufacturer.",
                shortest=shortest,
            ),
        )
    trace.step(
        message(
            "From {shortest} s to {longest} s the formulas hold.", shortest=shortest, longest=shown_number(longest)
        ),
        cites=(SHORTEST, LONGEST),
    )
    return trace.compute(
        message("Energy of the fault, current squared times time."),
        "fault_current * fault_current * time",
        "A²s",
        fault_current=fault_current,
        time=second,
    )


def with_offset(bare: float, second: float, x_over_r: float | None, trace: Trace) -> float:
    """Return the energy with the offset of the first cycles, the most that X/R or the largest usual one allows."""
    taken = trace.cite(LARGEST_RATIO).value if x_over_r is None else x_over_r
    return trace.compute(
        message("The first cycles are offset; at X/R {ratio} that adds to the energy.", ratio=shown_number(taken)),
        "energy * offset_factor",
        "A²s",
        (LARGEST_RATIO,) if x_over_r is None else (),
        energy=bare,
        offset_factor=offset_factor(second, taken),
    )
