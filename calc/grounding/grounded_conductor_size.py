"""The size of a grounded conductor: by the way back for a fault, by the ampacity of a delta, by the neutral load."""

from __future__ import annotations

from collections.abc import Mapping

from calc.calculator import NotCovered
from calc.conductors.ampacity import AMPACITY_RULE, TABLE_COLUMN, ampacity, size_of_ampacity
from calc.conductors.area import AREA_RULE, area
from calc.conductors.size import shown_size
from calc.jumpers.supply_side_size import CAP, PARALLEL, supply_side_size, warn_of_small_parallel_conductors
from calc.messages import message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace

DERIVED = "grounding/derived_grounded_conductor"
LOAD = "naming/neutral_load"

Rules = Mapping[str, str]  # the rules of a place, by what they are asked for


def size_for_fault(
    conductor: str,
    sets: int,
    raceways: int,
    conductor_metal: str,
    metal: str,
    rules: Rules,
    corner: bool,
    trace: Trace,
) -> str:
    """Return the smallest size label of each grounded conductor, whatever its load.

    rules: a value of `RULES` of the place. corner: the system is a corner-grounded delta.
    Raises: NotCovered when no listed size is large enough. Source: `rules`.
    """
    each = sets // raceways
    if raceways > 1:
        _say_what_shares_a_raceway(each, raceways, rules, trace)
    if sets > 1 and each == 1:
        warn_of_small_parallel_conductors(conductor, trace)
    trace.cite(rules["single"])
    if corner:
        size = _size_of_delta(conductor, each, conductor_metal, metal, rules, trace)
    else:
        size = _size_by_table(conductor, each, conductor_metal, metal, rules, trace)
    if raceways > 1:
        return _at_least(size, rules["each"], trace)
    return _at_least(size, PARALLEL, trace) if corner and sets > 1 else size


def larger_for_load(size: str, load_size: str | None, rules: Rules, corner: bool, trace: Trace) -> str:
    """Return the larger of `size` and the size label that the load needs. Source: naming/neutral_load, or `rules`."""
    load_rule = rules["delta"] if corner else LOAD
    if load_size is None:
        if corner:
            return size  # it carries what a hot conductor carries, so any load of theirs
        trace.reading(message("The neutral load was not checked: it may require a larger conductor."))
        trace.note(
            message(
                "The neutral load was not calculated. If it requires a larger conductor, use the larger one "
                "({section}).",
                section=trace.section(load_rule),
            )
        )
        return size
    if area(load_size, trace.edition) <= area(size, trace.edition):
        trace.step(
            message(
                "The load requires {load}; use the larger of the two: {size}.",
                load=shown_size(load_size),
                size=shown_size(size),
            ),
            shown_size(size),
            "",
            (load_rule,),
        )
        return size
    trace.step(
        message("The load requires more: {load}. Use the larger of the two.", load=shown_size(load_size)),
        shown_size(load_size),
        "",
        (load_rule,),
    )
    return load_size


def _say_what_shares_a_raceway(each: int, raceways: int, rules: Rules, trace: Trace) -> None:
    if each == 1:
        trace.step(
            message("{raceways} raceways, one set in each: size each from its own hot conductor.", raceways=raceways),
            cites=(rules["each"],),
        )
        return
    trace.step(
        message(
            "{raceways} raceways, {each} sets in each: size each from the total of its own hot conductors.",
            raceways=raceways,
            each=each,
        ),
        cites=(rules["each"],),
    )


def _size_by_table(
    conductor: str, each: int, conductor_metal: str, metal: str, rules: Rules, trace: Trace
) -> str:
    derived_cap = rules["needed"] == DERIVED and trace.cite(DERIVED).value == "stated"
    cap_rule = DERIVED if derived_cap else CAP
    try:
        return supply_side_size(conductor, each, conductor_metal, metal, trace, cap_rule)
    except NotCovered as outside:
        raise NotCovered(
            outside.why,
            message(
                "Choose the same material as the hot conductors, or divide the sets among more raceways, with a "
                "grounded conductor in each ({section}).",
                section=trace.section(rules["each"]),
            ),
        ) from None


def _size_of_delta(
    conductor: str, each: int, conductor_metal: str, metal: str, rules: Rules, trace: Trace
) -> str:
    if each > 1:  # with a conductor to each set, all of them together are far over the table
        return _size_that_carries_as_much(conductor, conductor_metal, metal, rules, trace)
    by_table = _size_by_table(conductor, each, conductor_metal, metal, rules, trace)
    carrying = _size_that_carries_as_much(conductor, conductor_metal, metal, rules, trace)
    if area(carrying, trace.edition) >= area(by_table, trace.edition):
        return carrying
    trace.step(
        message("The table requires more: {size}. Use the larger of the two.", size=shown_size(by_table)),
        shown_size(by_table),
        "",
        (rules["single"],),
    )
    return by_table


def _size_that_carries_as_much(
    conductor: str, conductor_metal: str, metal: str, rules: Rules, trace: Trace
) -> str:
    if TABLE_COLUMN[metal] == TABLE_COLUMN[conductor_metal]:
        trace.step(
            message("Its ampacity must be at least that of a hot conductor: {size}.", size=shown_size(conductor)),
            shown_size(conductor),
            "",
            (rules["delta"],),
        )
        return conductor
    carried = ampacity(conductor, conductor_metal, trace.edition)
    equal = carried and size_of_ampacity(carried, metal, trace.edition)
    if not equal:
        raise NotCovered(
            message(
                "No listed {metal} size has the ampacity of {size} {supply}.",
                metal=METAL_WORDS[metal],
                size=shown_size(conductor),
                supply=METAL_WORDS[conductor_metal],
            ),
            message(
                "Choose the same material as the hot conductors ({section}).", section=trace.section(rules["delta"])
            ),
        )
    trace.step(
        message(
            "Its ampacity must be at least that of a hot conductor: {size} {supply} is good for {carried} A at 75 °C, "
            "{equal} {metal} for {ampere} A.",
            size=shown_size(conductor),
            supply=METAL_WORDS[conductor_metal],
            carried=carried,
            equal=shown_size(equal),
            metal=METAL_WORDS[metal],
            ampere=ampacity(equal, metal, trace.edition),
        ),
        shown_size(equal),
        "",
        (rules["delta"], AMPACITY_RULE),
    )
    return equal


def _at_least(size: str, floor_rule: str, trace: Trace) -> str:
    floor = trace.cite(floor_rule).value
    if area(size, trace.edition) >= area(floor, trace.edition):
        return size
    trace.step(
        message("In parallel, each must be {floor} or larger.", floor=shown_size(floor)),
        shown_size(floor),
        "",
        (floor_rule, AREA_RULE),
    )
    return floor
