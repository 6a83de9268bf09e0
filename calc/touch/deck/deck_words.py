"""The answer about a pool deck in two lines to read at a glance, and what stands beside it as notes."""

from __future__ import annotations

from collections.abc import Mapping

from calc.messages import Message, message
from calc.rounded import at_most
from calc.touch.deck.deck import Deck, Metal
from calc.touch.deck.deck_fields import SHELL
from calc.touch.deck.deck_profile import Profile
from calc.touch.deck.deck_shown import LINE_WORDS
from calc.touch.shock.body import BODY, IMPEDANCE, PATHS, Currents, currents_behind
from calc.touch.shock.people import told_at_a_glance, told_in_short
from calc.touch.shock.shock_fields import FOOT_FOOT, WATER_WET
from calc.trace import Trace, shown_number


def headline_of(most: float, deck: Deck, distance: float, farther: bool) -> Message:
    """Return the highest voltage, V, and where. farther: not in the strip but where someone stands, `distance` ft."""
    words = {
        "volt": at_most(most),
        "width": shown_number(2 * deck.half_width),
        "length": shown_number(2 * deck.half_length),
        "ft": shown_number(distance if farther else deck.strip),
    }
    if farther:
        return message("Up to {volt} V from hand to deck {ft} ft from a {width} by {length} ft pool", **words)
    return message("Up to {volt} V from hand to deck within {ft} ft of a {width} by {length} ft pool", **words)


def step_current(profile: Profile, off: float, rise: float, trace: Trace) -> float:
    """Return the most current, mA, through wet legs over the largest step, and record it. off: percent of the rise."""
    part = max(profile.inside.part, profile.across.part) + off / 100
    most = currents_behind(min(rise, rise * part), FOOT_FOOT, WATER_WET, trace).most
    words = message("Through wet legs over the largest step, plus what the solution may be off, at most.")
    trace.step(words, most, "mA", (IMPEDANCE, PATHS, BODY))
    return most


def detail_of(touch: float, step: float, metal: Metal, rise: float, trace: Trace) -> Message:
    """Return what the most current, mA, of a touch or a step does to a wet body, and that a dry slab may leave more."""
    glance = told_at_a_glance(max(touch, step), step > touch, trace)
    if metal.arrangement == SHELL:
        return glance
    return message("{glance} A dry slab can leave the full {rise} V.", glance=glance, rise=shown_number(rise))


def note_people_and_place(people: Mapping[str, Currents], metal: Metal, profile: Profile, trace: Trace) -> None:
    """Note what each of the people takes, and on what metal and where it is worst."""
    _, line, away = profile.worst
    trace.note(told_in_short(people, trace))
    trace.note(
        message(
            "{metal}. Near the pool the worst place is {ft} ft {line}.",
            metal=metal.words,
            ft=shown_number(round(away, 1)),
            line=LINE_WORDS[line],
        )
    )
