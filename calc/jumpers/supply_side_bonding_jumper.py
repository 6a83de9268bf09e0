"""The supply-side bonding jumper: the link between metal parts ahead of the first overcurrent device."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.conductors.area import area
from calc.conductors.arrangement import arrangements
from calc.conductors.least import refuse_below_service, refuse_below_wiring
from calc.conductors.size import shown_size
from calc.found.verdict import SIZE
from calc.grounding.aluminum_near_earth import OF_BONDS, warn_of_aluminum_near_earth
from calc.identify.jumper_place import SYSTEM_GROUNDING
from calc.identify.supply_jumper_place import AT_SERVICE, OUT_OF_SCOPE, SUPPLY_JUMPER_PLACE
from calc.jumpers import supply_jumper_fields as ask
from calc.jumpers.bus_area import bus_of_equal_area
from calc.jumpers.supply_jumper_notes import note_raceway_as_jumper, note_run, note_what_it_joins
from calc.jumpers.supply_side_size import CAP, DERIVED_CAP, supply_side_size
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import Output, as_entered, values_of
from calc.raceways.kind import KIND_WORDS
from calc.scope import require_scope
from calc.shared_fields import METAL_WORDS, SETS, conductor_size, metal_of
from calc.shared_outputs import wire
from calc.trace import Trace

SEVERAL = "jumpers/supply_side_jumper_in_several_raceways"
CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor"),
    message("Ahead of the first breaker or fuse, for example 3/0 or 500 kcmil."),
)
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
METAL = metal_of(message("Jumper material"))

ARRANGEMENTS = values_of(ask.ARRANGEMENT)


@calculator(
    "supply-side-bonding-jumper",
    name=message("Supply-side bonding jumper"),
    purpose=message(
        "Minimum bonding jumper size ahead of the first overcurrent device: one for all, or one per raceway."
    ),
    submit=message("Size the jumper"),
    example={"edition": "2023", "conductor": "400kcmil", "sets": "3", "raceways": "3"},
    outputs=(
        Output(
            "wire_needed", message("Whether a wire is required, or the raceway itself serves as the jumper"), "yes-no"
        ),
        *wire(message("Minimum size of the supply-side bonding jumper")),
        as_entered("form", ask.FORM),
        Output("arrangement", message("One per raceway, or one for all"), "choice", choices=ARRANGEMENTS),
        as_entered("raceways", ask.RACEWAYS, when=message("where it was entered")),
    ),
    site_check=SIZE,
    margin=Margin(("conductor", "sets")),
)
def supply_side_bonding_jumper(
    *,
    trace: Trace,
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, SETS] = 1,
    raceways: Annotated[int | None, ask.RACEWAYS] = None,
    arrangement: Annotated[str, ask.ARRANGEMENT] = "one-per-raceway",
    conductor_metal: Annotated[str, CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, METAL] = "copper",
    place: Annotated[str, SUPPLY_JUMPER_PLACE] = "service-raceway",
    form: Annotated[str, ask.FORM] = "wire",
    raceway: Annotated[str, ask.RACEWAY] = ask.NOT_GIVEN,
    run: Annotated[str, ask.RUN] = "inside",
    length: Annotated[float | None, ask.LENGTH] = None,
    system_grounding: Annotated[str, SYSTEM_GROUNDING] = "solidly-grounded",
) -> Answer:
    """Return the smallest supply-side bonding jumper, and whether the raceway itself may be it.

    When: ahead of the first overcurrent device of a service, a separately derived system or a generator,
    up to 1000 V. Not for main and system bonding jumpers, feeders, branch circuits or impedance-grounded
    systems: those end as not covered, with the name to look under.

    Parameters:
        conductor: size label of the largest ungrounded conductor, "18" to "2000kcmil".
        sets: conductors in parallel a phase, raceways: in how many raceways or cables, each 1 to 30; left out, the
            answer gives one for all sets together and one for each set.
        arrangement: "one-per-raceway" or "single" for all raceways.
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        place: where the jumper is. system_grounding: how the system is grounded.
        form: "wire", "busbar" or "raceway"; raceway: its kind, needed where it is to be the jumper.
        run: "inside", "outside" or "outside-at-pole"; length: of the jumper outside, ft, up to 1000.
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold wire_needed, size, metal, area_cmil, form, arrangement, raceways.
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: 250.102(C) and (E), Table 250.102(C)(1), 250.30(A)(2), 250.35(B), 250.92, 230.43, Chapter 9 Table 8.

    Example:
    >>> result = supply_side_bonding_jumper(edition="2023", conductor="400kcmil", sets=3, raceways=3)
    >>> result.answer.values["size"], result.answer.values["area_cmil"]
    ('1/0', 105600)
    """
    require_scope(OUT_OF_SCOPE, trace, place=place, system_grounding=system_grounding)
    refuse = refuse_below_service if place in AT_SERVICE else refuse_below_wiring
    refuse(conductor, conductor_metal, trace)
    trace.cite("naming/supply_side_bonding_jumper")
    against = ask.against_the_raceway(raceway, place, trace) if form == "raceway" else None
    wire_needed = form != "raceway" or against is not None
    if against:
        trace.step(message("The raceway does not qualify: {reason}", reason=against))
    if wire_needed:
        ask.require_length_within_limit(run, length, trace)
    first, *others = (raceways,) if arrangement == "single" else arrangements(sets, raceways)
    counted = _sets_that_count(sets, first, arrangement, trace)
    limit_rule = DERIVED_CAP if place == "separately-derived-system" else CAP
    size = supply_side_size(conductor, counted, conductor_metal, metal, trace, limit_rule)
    values = {
        "wire_needed": wire_needed,
        "size": size,
        "metal": metal,
        "area_cmil": area(size, trace.edition),
        "form": form,
        "arrangement": arrangement,
        "raceways": raceways,
    }
    name = message("Supply-side bonding jumper")
    basis = "jumpers/supply_side_size"
    note_what_it_joins(place, system_grounding, trace)
    if not wire_needed:
        rule_key = (
            "raceways/supply_side_raceway"
            if place == "separately-derived-system"
            else "jumpers/service_bonding_methods"
        )
        trace.step(message("{kind}: permitted as the jumper.", kind=KIND_WORDS[raceway]), cites=(rule_key,))
        note_raceway_as_jumper(place, trace)
        detail = message(
            "{kind} is the jumper. For a wire instead: {size} {metal} or larger",
            kind=KIND_WORDS[raceway],
            size=shown_size(size),
            metal=METAL_WORDS[metal],
        )
        return Answer(name, message("No wire required"), detail, basis, "raceway", values)
    note_run(run, place, size, form, trace)
    warn_of_aluminum_near_earth(metal, OF_BONDS, trace)
    detail = _detail(form, place, size, metal, first or 1, arrangement, trace)
    for number in others:
        each = supply_side_size(conductor, 1, conductor_metal, metal, Trace(trace.edition), limit_rule)
        detail = _one_or_each(size, each, detail, number, trace)
    if against:
        detail = message("{detail}. {reason}", detail=detail, reason=against)
    return Answer(name, message("{size}", size=shown_size(size)), detail, basis, f"{size}-{metal}", values)


def _sets_that_count(sets: int, raceways: int | None, arrangement: str, trace: Trace) -> int:
    if raceways is None or raceways == 1:
        return sets
    if arrangement == "single":
        trace.step(
            message(
                "One jumper for {raceways} raceways: add up the conductors of one phase in all of them.",
                raceways=raceways,
            ),
            cites=(SEVERAL,),
        )
        trace.note(
            message(
                "Run it from bushing to bushing, in one piece, to the ends of all {raceways} raceways.",
                raceways=raceways,
            )
        )
        return sets
    ask.require_whole_sets(sets, raceways, trace)
    in_each = sets // raceways
    trace.step(
        message(
            "Each of the {raceways} raceways has its own jumper, sized from the conductors of one phase in that "
            "raceway: {in_each} of {sets}.",
            raceways=raceways,
            in_each=in_each,
            sets=sets,
        ),
        in_each,
        "",
        (SEVERAL,),
    )
    return in_each


def _one_or_each(size: str, each: str, detail: Message, raceways: int, trace: Trace) -> Message:
    """Return the words where nobody said in how many raceways the sets run; `size` is for all sets together."""
    words = dict(size=shown_size(size), each=shown_size(each), raceways=raceways, detail=detail)
    trace.step(
        message(
            "The number of raceways was not entered. All sets in one raceway: {size}. One set in each of {raceways} "
            "raceways: {each}.",
            **words,
        ),
        cites=(SEVERAL,),
    )
    trace.reading(message("where each of {raceways} raceways has its own, with one set in each", **words), each)
    return message(
        "{detail}, if all sets are in one raceway or one jumper serves all of them; {each} for each of {raceways} "
        "raceways",
        **words,
    )


def _detail(
    form: str, place: str, size: str, metal: str, raceways: int, arrangement: str, trace: Trace
) -> Message:
    words = {"metal": METAL_WORDS[metal], "raceways": raceways}
    if place == "separately-derived-system":
        trace.cite("jumpers/derived_jumper_of_bus" if form == "busbar" else "jumpers/derived_jumper_of_wire")
    if form == "busbar":
        derived = place == "separately-derived-system"
        rule_key = "jumpers/derived_jumper_of_bus" if derived else "jumpers/supply_side_jumper_of_bus"
        square_inch, square_millimetre = bus_of_equal_area(size, rule_key, trace)
        return message(
            "{metal} wire, or a busbar with the same cross-section: {square_inch:.3f} in² "
            "({square_millimetre:.0f} mm²)",
            square_inch=square_inch,
            square_millimetre=square_millimetre,
            **words,
        )
    if raceways == 1:
        return message("{metal} wire or larger", **words)
    if arrangement == "single":
        return message("{metal} wire or larger, one for all {raceways} raceways", **words)
    return message("{metal} wire or larger, one for each of the {raceways} raceways", **words)
