"""The size behind a device, as the circuit conductors change it: larger with theirs, and no larger than they are.

Equipment grounding conductors, load-side jumpers and the bonds of buried metal share it, so that one circuit has one
answer. Where larger conductors are installed than the device asks for, and nobody said why, it has two. So it has
where they are so small that the device does not protect them, and nobody said what allows them.
"""

from __future__ import annotations

from typing import NamedTuple

from calc.conductors.ampacity import AMPACITY_RULE
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.grounding.least_hot_conductor import COOL_TERMINALS, SMALL, least_hot_conductor, least_with_cool_terminals
from calc.grounding.not_larger_than_circuit import CIRCUIT, not_larger_than_circuit
from calc.grounding.proportional_increase import (
    INCREASE,
    in_proportion,
    increased_size,
    note_qualified_person,
    say_that_it_does_not_count,
)
from calc.grounding.size_by_device import TABLE, size_by_device
from calc.known import known
from calc.messages import message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace, shown_number

MOTORS = ("motor", "motor-instantaneous-trip")
BREAKS = (TABLE, AMPACITY_RULE, SMALL, COOL_TERMINALS)  # their figures are the only ratings at which a size changes


class HotConductors(NamedTuple):
    """The conductors of one circuit: size labels or None, metal, sets in parallel, in how many raceways.

    reason: "any" or "ambient-or-bundling"; circuit: as the fields name it; limits: whether they limit the size.
    """

    installed: str | None
    minimum: str | None = None
    metal: str = "copper"
    sets: int = 1
    raceways: int = 1
    reason: str = "any"
    circuit: str = "feeder-or-branch"
    limits: bool = True


class Sized(NamedTuple):
    """The size label, and a smaller one that holds on a condition.

    unless_increased: where the hot conductors were not made larger on purpose; if_small_allowed: where a rule, as
    for motors, allows hot conductors so small behind the device.
    """

    size: str
    unless_increased: str | None = None
    if_small_allowed: str | None = None


def size_for_circuit(device: float, metal: str, hot: HotConductors, trace: Trace) -> Sized:
    """Return the smallest size of `metal` behind `device` ampere for the circuit `hot`.

    Raises: NotCovered beyond the tables. Source: 250.122(A), (B), (F).
    """
    base = size_by_device(device, metal, trace)
    if hot.minimum:
        grown = increased_size(base, hot.minimum, known(hot.installed), hot.reason, trace)
        return _limited(grown, base, device, metal, hot, trace)
    least = hot.installed and least_hot_conductor(device, hot.metal, hot.sets, trace.edition)
    if not hot.installed or not least or area(hot.installed, trace.edition) <= area(least, trace.edition):
        _note_motor(hot, trace)
        return _limited(base, base, device, metal, hot, trace)
    if hot.reason == "ambient-or-bundling":
        say_that_it_does_not_count(trace)
        return Sized(_no_larger(base, metal, hot, trace))
    return _either(base, least, device, metal, hot, trace)


def _either(base: str, least: str, device: float, metal: str, hot: HotConductors, trace: Trace) -> Sized:
    """Return both sizes, the larger one first, and ask which of them it is."""
    aside = Trace(trace.edition)
    kept = _no_larger(base, metal, hot, aside)
    if _terminals_may_ask_for(hot, device, trace.edition):
        return _usual(kept, base, least, metal, hot, trace)
    grown = _no_larger(in_proportion(base, least, known(hot.installed), trace)[0], metal, hot, trace)
    if area(grown, trace.edition) <= area(kept, trace.edition):
        return Sized(kept)
    trace.step(
        message(
            "A {device} A device does not require a hot conductor larger than {least} {metal}.",
            device=shown_number(device),
            least=shown_size(least),
            metal=METAL_WORDS[hot.metal],
        ),
        shown_size(least),
        "",
        (AMPACITY_RULE, SMALL),
    )
    note_qualified_person(trace)
    return Sized(grown, kept)


def _terminals_may_ask_for(hot: HotConductors, device: float, edition: str) -> bool:
    """Tell whether terminals for 60 °C alone may be why the hot conductors are as large as they are."""
    cool = least_with_cool_terminals(device, hot.metal, edition) if hot.sets == 1 else None
    return cool is not None and area(known(hot.installed), edition) <= area(cool, edition)


def _usual(kept: str, base: str, least: str, metal: str, hot: HotConductors, trace: Trace) -> Sized:
    """Return the size without an increase, and note the other one: 50 A behind 6 AWG is everyday work."""
    aside, installed = Trace(trace.edition), known(hot.installed)
    grown = _no_larger(in_proportion(base, least, installed, aside)[0], metal, hot, aside)
    _no_larger(base, metal, hot, trace)
    if area(grown, trace.edition) > area(kept, trace.edition):
        words = {"least": shown_size(least), "installed": shown_size(installed)}
        trace.reading(message("where {least} is the minimum and {installed} was run on purpose", **words), grown)
        trace.note(
            message(
                "{installed} is no more than 60 °C terminals require ({cool}). If {least} is the minimum and "
                "{installed} was run on purpose, it is {grown} {metal} ({section}).",
                cool=trace.section(COOL_TERMINALS),
                least=shown_size(least),
                installed=shown_size(installed),
                grown=shown_size(grown),
                metal=METAL_WORDS[metal],
                section=trace.section(INCREASE),
            )
        )
    return Sized(kept)


def _note_motor(hot: HotConductors, trace: Trace) -> None:
    if hot.installed and hot.circuit in MOTORS:
        trace.note(
            message(
                "A motor may require smaller conductors than its overcurrent device suggests. If the hot conductors "
                "were upsized, enter the minimum size: this conductor increases with them ({section}).",
                section=trace.section(INCREASE),
            )
        )


def _limited(size: str, base: str, device: float, metal: str, hot: HotConductors, trace: Trace) -> Sized:
    """Return `size` no larger than the circuit conductors, but no smaller than `base` where all of them together are.

    An ordinary circuit has none so small: the device would not protect them. To follow them down would make a slip,
    or bad work, the reason for a thin path.
    """
    if hot.circuit == "feeder-or-branch" and hot.installed and hot.limits:
        edition = trace.edition
        smaller = _no_larger(size, metal, hot, Trace(edition))
        if max(area(smaller, edition), area(hot.installed, edition) * hot.sets) < area(base, edition):
            _say_that_they_are_small(device, hot, trace)
            return Sized(base, if_small_allowed=smaller)
    return Sized(_no_larger(size, metal, hot, trace))


def _say_that_they_are_small(device: float, hot: HotConductors, trace: Trace) -> None:
    least = least_hot_conductor(device, hot.metal, hot.sets, trace.edition)
    trace.step(
        message(
            "It is not required to be larger than the circuit conductors ({section}), but {installed} is smaller than "
            "a {device} A device requires: {least}. Check both. Motors, taps and other listed uses have their own "
            "rules.",
            section=trace.section(CIRCUIT),
            installed=shown_size(known(hot.installed)),
            device=shown_number(device),
            least=message("{size} {metal}", size=shown_size(least), metal=METAL_WORDS[hot.metal]) if least else message(
                "more"
            ),
        ),
        cites=(CIRCUIT, AMPACITY_RULE, SMALL),
    )


def _no_larger(size: str, metal: str, hot: HotConductors, trace: Trace) -> str:
    """Return `size` no larger than the circuit conductors ask for, where they are known and limit it."""
    if hot.installed and hot.limits:
        tap = hot.circuit == "feeder-tap"
        return not_larger_than_circuit(size, metal, hot.installed, hot.metal, hot.sets, hot.raceways, tap, trace)
    section = trace.section(CIRCUIT)
    if hot.installed:
        trace.note(
            message(
                "It is not required to be larger than the circuit conductors ({section}); that limit is not applied "
                "here.",
                section=section,
            )
        )
        return size
    trace.reading(message("Upsized hot conductors make it larger: they were not entered."))
    trace.note(
        message(
            "It is not required to be larger than the circuit conductors ({section}); that limit is not applied here. "
            "Hot conductors upsized, for example for voltage drop, make it larger ({increase}): enter them.",
            section=section,
            increase=trace.section(INCREASE),
        )
    )
    return size
