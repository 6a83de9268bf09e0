"""The current through someone who stands on live ground with a hand on bonded metal: usual and at most."""

from __future__ import annotations

from calc.electrodes.entered import shown
from calc.fault.circuit.ranges import Between
from calc.messages import message
from calc.touch.shock.body import BODY, IMPEDANCE, MILLI, PATHS, currents_behind
from calc.touch.shock.shock_fields import HAND_FEET, WATER_WET
from calc.touch.surface.surface_fields import SHOD, WET
from calc.trace import Trace

FOOT = "touch/foot_resistance"
SHOE = "touch/shoe_resistance"


def current_through(volt: float, feet: str, around: Between, trace: Trace) -> tuple[float, float]:
    """Return the current from hand to both feet, mA: with the usual body and feet, and the most there may be.

    volt: between hand and feet. feet: "wet" adds nothing, "bare" the soil under both feet, "shod" shoes too, which
    count nothing for the most. around: the soil, ohm·m.
    """
    body = trace.cite(BODY).rows[0]
    soil, most_soil = 0.0, 0.0
    if feet != WET:
        foot = trace.cite(FOOT).value
        soil = trace.compute(
            message("Soil under two bare feet, next to each other."),
            "foot * soil / 2",
            "ohm",
            (FOOT,),
            foot=foot,
            soil=around.likely,
        )
        most_soil = foot * around.low / 2
    shoes = trace.cite(SHOE).rows[0]["high"] / 2 if feet == SHOD else 0.0
    if shoes:
        trace.step(message("Dry shoes, two next to each other. Wet or worn ones add nothing."), shoes, "ohm", (SHOE,))
    usual = trace.compute(
        message("Through a body of the usual resistance, for as long as it lasts."),
        "milli * volt / (body + soil + shoes)",
        "mA",
        (BODY,),
        milli=MILLI,
        volt=volt,
        body=body["usual"],
        soil=soil,
        shoes=shoes,
    )
    most = currents_behind(volt, HAND_FEET, WATER_WET, trace, most_soil).most
    trace.step(
        message(
            "At most, with wet skin of {body} ohm or less, {soil} ohm of soil and nothing for shoes.",
            body=body["low"],
            soil=shown(most_soil) if most_soil else "0",
        ),
        most,
        "mA",
        (BODY, IMPEDANCE, PATHS),
    )
    return usual, most
