"""What live ground means for people: what to do first, what cover is, what a breaker does, what is assumed."""

from __future__ import annotations

from calc.fault.caution import state_the_model
from calc.messages import message
from calc.rounded import at_most
from calc.touch.shock.lasting_current import warn_of_a_lasting_current
from calc.touch.surface.surface_fields import WET
from calc.trace import Trace

ASSUMPTIONS = (
    message("the soil is the same all around and far down, with no slab or paving on it"),
    message("the whole voltage is on the metal; what the source's own electrodes take is left out"),
    message("no other metal is near, and plastic isolates its ends"),
    message("the hand is on metal at the voltage of remote earth"),
)


def feel_a_tingle(trace: Trace) -> None:
    """Warn first of all what to do when someone feels something."""
    trace.warn(
        message(
            "If anyone feels a tingle, or an animal shies: keep people and animals away and touch nothing there. "
            "Shut the power off from well away, and call the utility or a qualified person."
        ),
        grave=True,
    )


def state_what_it_means(leak: float, device: float, milliampere: float, feet: str, trace: Trace) -> None:
    """Record warnings and notes. leak: most ampere. milliampere: most through a body."""
    feel_a_tingle(trace)
    most = message("{most} mA", most=at_most(milliampere))
    if not warn_of_a_lasting_current(milliampere, most, trace):
        trace.warn(
            message(
                "Up to {most} through a body here. Being startled, or a fall, can still hurt you. Nearer the metal "
                "or on wetter soil there is more.",
                most=most,
            )
        )
    trace.note(
        message(
            "{inches} in of cover is a rule for when an elbow needs no bond ({section}, {other}). It does not keep "
            "voltage off the soil above.",
            inches=trace.cite("raceways/elbow_cover_service").rows[0]["inches"],
            section=trace.section("raceways/elbow_cover_service"),
            other=trace.section("raceways/elbow_cover_other"),
        )
    )
    trace.note(message("A breaker carries its rating indefinitely. A leak below that lasts until someone finds it."))
    if leak > device:
        trace.note(message("In the wettest soil the leak may pass the rating. Nothing assures that the breaker opens."))
    trace.note(message("Wet soil over rock can have more voltage on it than this."))
    trace.note(
        message(
            "Bond the metal to the source, with the power off. Then a breaker opens, and the soil is live only until "
            "it does."
        )
    )
    trace.note(message("Metal connected to the live part has its full voltage. A hand on that is worse."))
    if feet == WET:
        trace.note(message("Wet bare feet are taken as no resistance."))
    trace.warn(message("In water, and for livestock, far less can harm: this is not for pools, docks or farm animals."))
    state_the_model(trace, ASSUMPTIONS)
