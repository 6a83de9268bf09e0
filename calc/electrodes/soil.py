"""The resistivity of the soil: known, read with four pins, or the range of its kind."""

from __future__ import annotations

import math

from calc.declare import needed
from calc.electrodes.electrode_fields import SOIL_WORDS
from calc.electrodes.entered import OHM_METRE, shown
from calc.fault.ranges import Between
from calc.units import convert
from calc.words import say
from calc.working import Working

KINDS_OF_SOIL = "electrodes/soil_resistivity"


def soil_resistivity(
    soil: str, resistivity: float | None, pin_spacing: float | None, pin_ohm: float | None, working: Working
) -> Between:
    """Give the resistivity of the soil, ohm·m, and record where it comes from.

    Raises: Mend when what this way of telling needs was left out.
    """
    if soil == "resistivity":
        value = float(needed(resistivity, "resistivity"))
        working.step(say("Resistivity of the soil, as entered."), value, "ohm·m")
        _remark_on(value, working)
        return Between(value, value, value)
    if soil == "four-pin":
        spacing = convert(needed(pin_spacing, "pin_spacing"), "ft", "m")
        return _read_with_four_pins(spacing, float(needed(pin_ohm, "pin_ohm")), working)
    row = next(row for row in working.cite(KINDS_OF_SOIL).rows if row["soil"] == soil)
    low, likely, high = (convert(row[part], "ohmcm", OHM_METRE) for part in ("low", "likely", "high"))
    working.step(
        say(
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


def least_resistivity(working: Working) -> float:
    """Give the least resistivity that any soil had, ohm·m."""
    return convert(min(row["low"] for row in working.cite(KINDS_OF_SOIL).rows), "ohmcm", OHM_METRE)


def _read_with_four_pins(spacing: float, reading: float, working: Working) -> Between:
    value = working.compute(
        say("Resistivity from four pins in a line at even spacing, in meters."),
        "2 * pi * spacing * reading",
        "ohm·m",
        pi=math.pi,
        spacing=spacing,
        reading=reading,
    )
    _remark_on(value, working)
    part = working.cite("electrodes/pin_depth").value
    working.note(
        say(
            "Four pins: none deeper than {deepest} ft here, {percent} percent of the spacing. The reading tells of the "
            "soil down to about the spacing; take several spacings.",
            deepest=shown(convert(spacing, "m", "ft") * part),
            percent=shown(100 * part),
        )
    )
    return Between(value, value, value)


def _remark_on(value: float, working: Working) -> None:
    """Warn of a resistivity past all that were measured in soils: most often a wrong unit."""
    low = least_resistivity(working)
    high = convert(max(row["high"] for row in working.cite(KINDS_OF_SOIL).rows), "ohmcm", OHM_METRE)
    if not low <= value <= high:
        working.warn(
            say(
                "{value} ohm·m is outside the {low} to {high} ohm·m that soils had. Check the unit: 1 ohm·m is "
                "100 ohm-cm.",
                value=shown(value),
                low=shown(low),
                high=shown(high),
            )
        )
