"""The resistivity of the soil: known, read with four pins, or the range of its kind."""

from __future__ import annotations

import math

from calc.calculator import require
from calc.electrodes.electrode_fields import SOIL_WORDS
from calc.electrodes.entered import OHM_METRE, shown
from calc.fault.circuit.ranges import Between
from calc.messages import message
from calc.trace import Trace
from calc.units import convert

KINDS_OF_SOIL = "electrodes/soil_resistivity"


def soil_resistivity(
    soil: str, resistivity: float | None, pin_spacing: float | None, pin_ohm: float | None, trace: Trace
) -> Between:
    """Return the resistivity of the soil, ohm·m, and record where it comes from.

    Raises: FieldError when what this way of telling needs was left out.
    """
    if soil == "resistivity":
        value = float(require(resistivity, "resistivity"))
        trace.step(message("Resistivity of the soil, as entered."), value, "ohm·m")
        _remark_on(value, trace)
        return Between(value, value, value)
    if soil == "four-pin":
        spacing = convert(require(pin_spacing, "pin_spacing"), "ft", "m")
        return _read_with_four_pins(spacing, float(require(pin_ohm, "pin_ohm")), trace)
    row = next(row for row in trace.cite(KINDS_OF_SOIL).rows if row["soil"] == soil)
    low, likely, high = (convert(row[part], "ohmcm", OHM_METRE) for part in ("low", "likely", "high"))
    trace.step(
        message(
            "{soil}: {low} to {high} ohm·m were measured, on average {likely} ohm·m.",
            soil=SOIL_WORDS[soil],
            low=shown(low),
            high=shown(high),
            likely=shown(likely),
        ),
        likely,
        "ohm·m",
        cites=(KINDS_OF_SOIL,),
    )
    return Between(low, likely, high)


def least_resistivity(trace: Trace) -> float:
    """Return the least resistivity that any soil had, ohm·m."""
    return convert(min(row["low"] for row in trace.cite(KINDS_OF_SOIL).rows), "ohmcm", OHM_METRE)


def _read_with_four_pins(spacing: float, reading: float, trace: Trace) -> Between:
    value = trace.compute(
        message("Resistivity from four pins in a line at even spacing, in meters."),
        "2 * pi * spacing * reading",
        "ohm·m",
        pi=math.pi,
        spacing=spacing,
        reading=reading,
    )
    _remark_on(value, trace)
    part = trace.cite("electrodes/pin_depth").value
    trace.note(
        message(
            "Four pins: none deeper than {deepest} ft here, {percent} percent of the spacing. The reading covers the "
            "soil down to about the spacing; take several spacings.",
            deepest=shown(convert(spacing, "m", "ft") * part),
            percent=shown(100 * part),
        )
    )
    return Between(value, value, value)


def _remark_on(value: float, trace: Trace) -> None:
    """Warn of a resistivity past all that were measured in soils: most often a wrong unit."""
    low = least_resistivity(trace)
    high = convert(max(row["high"] for row in trace.cite(KINDS_OF_SOIL).rows), "ohmcm", OHM_METRE)
    if not low <= value <= high:
        trace.warn(
            message(
                "{value} ohm·m is outside the {low} to {high} ohm·m measured in soils. Check the unit: 1 ohm·m is "
                "100 ohm-cm.",
                value=shown(value),
                low=shown(low),
                high=shown(high),
            )
        )
