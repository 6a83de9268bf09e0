"""A source as it was entered: what is missing or contradicts itself is asked for, and the working is recorded."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.calculator import FieldError, require
from calc.fault.source.source_fields import TOLERANCE_RULE
from calc.fault.source.sources import (
    HALF_WINDING,
    UNLIMITED,
    Source,
    generator_source,
    given_current_source,
    transformer_source,
)
from calc.messages import message
from calc.systems import SPLIT, SYSTEMS, UNGROUNDED
from calc.trace import Trace, shown_number


@dataclass(frozen=True)
class SourceEntered:
    """The fields of a source by their names; see `calc.fault.source.source_fields`."""

    system: str
    source: str
    kva: float | None
    percent_z: float | None
    percent_r: float | None
    percent_x: float | None
    x_over_r: float | None
    tolerance: float
    utility_kva: float | None
    utility_current: float | None
    primary_voltage: float | None
    utility_x_over_r: float | None
    three_phase_current: float | None
    line_to_ground_current: float | None
    subtransient: float | None
    zero_sequence: float | None


def sources_entered(entered: SourceEntered, trace: Trace) -> list[Source]:
    """Return the sources that the fields may mean: one, or more where a ratio X/R is left out.

    A sum of impedances is least where their angles differ most, and angles run from none to a right angle, so
    the largest current of every kind stands at one of these ends. Raises: FieldError.
    """
    build = {"transformer": _transformer, "given-current": _given, "generator": _generator}[entered.source]
    return build(entered, trace)


def _ends(x_over_r: float | None) -> tuple[float, ...]:
    return (UNLIMITED, 0.0) if x_over_r is None else (x_over_r,)


def _transformer(entered: SourceEntered, trace: Trace) -> list[Source]:
    kva = require(entered.kva, "kva")
    percents = _percents(entered, trace)
    utility = _utility_kva(entered, trace)
    if SYSTEMS[entered.system].kind == SPLIT:
        factor = {row["part"]: row["factor"] for row in trace.cite(HALF_WINDING).rows}
        trace.step(
            message(
                "Half of the winding alone, line to neutral: {resistance} times the resistance and {reactance} times "
                "the reactance, in percent on its own voltage.",
                resistance=factor["resistance"],
                reactance=factor["reactance"],
            ),
            cites=(HALF_WINDING,),
        )
    ratios = _ends(entered.utility_x_over_r) if utility < UNLIMITED else (UNLIMITED,)
    return [
        transformer_source(entered.system, kva, *percent, utility, ratio) for percent in percents for ratio in ratios
    ]


def _percents(entered: SourceEntered, trace: Trace) -> list[tuple[float, float]]:
    """Return resistance and reactance in percent, lowered by the tolerance, for each ratio that may be."""
    share = (100 - entered.tolerance) / 100
    if entered.percent_r is not None or entered.percent_x is not None:
        if entered.percent_z is not None:
            raise FieldError("percent_z", message("Leave this empty, or leave the resistance and reactance empty."))
        plate_r, plate_x = require(entered.percent_r, "percent_r"), require(entered.percent_x, "percent_x")
        plate = math.hypot(plate_r, plate_x)
        if plate == 0:
            raise FieldError("percent_x")
        ends = [(share * plate_r, share * plate_x)]
    else:
        plate = require(entered.percent_z, "percent_z")
        ends = [_split(share * plate, ratio) for ratio in _ends(entered.x_over_r)]
    trace.compute(
        message("Lowest impedance of the transformer: the nameplate value less its tolerance."),
        "plate * (100 - tolerance) / 100",
        "%",
        (TOLERANCE_RULE,),
        plate=plate,
        tolerance=entered.tolerance,
    )
    return ends


def _split(percent: float, x_over_r: float) -> tuple[float, float]:
    if x_over_r == UNLIMITED:
        return 0.0, percent
    resistance = percent / math.hypot(1, x_over_r)
    return resistance, resistance * x_over_r


def _utility_kva(entered: SourceEntered, trace: Trace) -> float:
    if entered.utility_current is None:
        if entered.utility_kva is None:
            trace.step(message("The utility is taken as infinite: it adds no impedance."))
            return UNLIMITED
        trace.step(message("Short-circuit power of the utility."), entered.utility_kva, "kVA")
        return entered.utility_kva
    if entered.utility_kva is not None:
        raise FieldError("utility_current", message("Leave this empty, or leave the short-circuit power empty."))
    phases = 1 if SYSTEMS[entered.system].kind == SPLIT else math.sqrt(3)
    return trace.compute(
        message("Short-circuit power of the utility."),
        "phase_factor * primary_voltage * utility_current / 1000",
        "kVA",
        phase_factor=phases,
        primary_voltage=require(entered.primary_voltage, "primary_voltage"),
        utility_current=entered.utility_current,
    )


def _given(entered: SourceEntered, trace: Trace) -> list[Source]:
    lines, to_ground = entered.three_phase_current, entered.line_to_ground_current
    kind = SYSTEMS[entered.system].kind
    if kind == UNGROUNDED and to_ground is not None:
        raise FieldError(
            "line_to_ground_current", message("Leave this empty: this system has no ground-fault return path.")
        )
    if to_ground is None or kind == UNGROUNDED:
        require(lines, "three_phase_current")
    if lines is not None:
        trace.step(
            message("Known fault current, line to line or three phase: {current} A.", current=shown_number(lines)),
            lines,
            "A",
        )
    if to_ground is not None:
        trace.step(message("Known ground-fault current: {current} A.", current=shown_number(to_ground)), to_ground, "A")
    try:
        return [given_current_source(entered.system, to_ground, lines, ratio) for ratio in _ends(entered.x_over_r)]
    except ValueError:
        raise FieldError("line_to_ground_current") from None


def _generator(entered: SourceEntered, trace: Trace) -> list[Source]:
    kva, reactance = require(entered.kva, "kva"), require(entered.subtransient, "subtransient")
    trace.step(message("Subtransient reactance, which governs the first cycles."), reactance, "%")
    return [generator_source(entered.system, kva, reactance, entered.zero_sequence)]
