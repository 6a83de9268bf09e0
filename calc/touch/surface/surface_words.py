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
    message("nothing else of metal is near, and plastic closes off its ends"),
    message("the other hand is on metal that has the voltage of far earth"),
)


def feel_a_tingle(trace: Trace) -> None:
    """Warn first of all what to do when someone feels something."""
    trace.warn(
        message(
            "Anyone feels a tingle, or an animal shies: keep people and animals away and touch nothing there. Switch "
            "the supply off from a place apart, and call the utility or a qualified person."
        )
    )


def state_what_it_means(leak: float, device: float, milliampere: float, feet: str, trace: Trace) -> None:
    """Record warnings and notes. leak: most ampere. milliampere: most through a body."""
    feel_a_tingle(trace)
    most = message("{most} mA", most=at_most(milliampere))
    if not warn_of_a_lasting_current(milliampere, most, trace):
        trace.warn(
            message(
                "Up to {most} through a body here. A start or a fall can still hurt. Nearer the metal or on wetter "
                "ground there is more.",
                most=most,
            )
        )
    trace.note(
        message(
            "{inches} in of cover is a rule for when an elbow needs no bond ({section}, {other}). It does not make the "
            "ground above dead.",
            inches=trace.cite("raceways/elbow_cover_service").rows[0]["inches"],
            section=trace.section("raceways/elbow_cover_service"),
            other=trace.section("raceways/elbow_cover_other"),
        )
    )
    trace.note(message("A breaker carries its rating for good. A leak below it lasts until someone finds it."))
    if leak > device:
        trace.note(message("In the wettest soil the leak may pass the rating. Nothing assures that the breaker opens."))
    trace.note(message("Wet soil over rock can put more voltage on the ground than this."))
    trace.note(
        message(
            "Bond the metal to the source, with the supply off. Then a breaker opens, and the ground is live only "
            "until it does."
        )
    )
    trace.note(message("Metal joined to the live part has all of its voltage. A hand on that is worse."))
    if feet == WET:
        trace.note(message("Wet bare feet count as nothing."))
    trace.warn(message("In water, and for livestock, far less can harm: this is not for pools, docks or farm animals."))
    state_the_model(trace, ASSUMPTIONS)
