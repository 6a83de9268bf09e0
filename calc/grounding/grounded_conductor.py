"""The grounded conductor: mostly the neutral, and ahead of the first device the way back for a fault."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.conductors.area import area
from calc.conductors.arrangement import arrangements, raceways_of
from calc.conductors.least import refuse_below_service, refuse_below_wiring
from calc.conductors.size import shown_size
from calc.data_file import Data
from calc.found.verdict import SIZE
from calc.grounding.grounded_conductor_place import (
    OUT_OF_SCOPE,
    PLACE,
    RULES,
    SYSTEM_GROUNDING,
    require_equal_raceways,
)
from calc.grounding.grounded_conductor_size import larger_for_load, size_for_fault
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.rulebook import every_edition
from calc.scope import require_scope
from calc.shared_fields import MAX_SETS, METAL_WORDS, conductor_size, metal_of, whole_number
from calc.shared_outputs import how_many, wire
from calc.trace import Trace

MAX_ENCLOSURES = max(stated.value for stated in every_edition("services/disconnects_maximum"))

CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor"),
    message("The one feeding this disconnect, for example 3/0 or 500 kcmil."),
)
SETS = whole_number(
    message("Sets in parallel"), message(
        "Number of conductors in parallel per phase, all raceways together."
    ), 1, MAX_SETS
)
RACEWAYS = raceways_of(message("Number of raceways or cables the sets are run in. Each one has a grounded conductor."))
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
METAL = metal_of(message("Grounded conductor material"))
LOAD_SIZE = conductor_size(
    message("Size required for the neutral load"),
    message("Of each grounded conductor. This handbook does not calculate it. Leave it empty if it is not known."),
)
ENCLOSURES = whole_number(
    message("Number of disconnect enclosures"),
    message("Separate enclosures with a disconnect fed by the service or source. Count a listed assembly as one."),
    1,
    MAX_ENCLOSURES,
    rare=True,
)


@calculator(
    "grounded-conductor",
    name=message("Grounded conductor"),
    purpose=message(
        "Minimum size of the grounded conductor (usually the neutral) to a service disconnect or from a transformer."
    ),
    submit=message("Size the conductor"),
    example={"edition": "2023", "conductor": "3/0", "sets": "2", "raceways": "2", "metal": "copper"},
    outputs=(
        *wire(message("Minimum size of the grounded conductor")),
        how_many(),
    ),
    site_check=SIZE,
    margin=Margin(("conductor", "sets")),
)
def grounded_conductor(
    *,
    trace: Trace,
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, SETS] = 1,
    raceways: Annotated[int | None, RACEWAYS] = None,
    conductor_metal: Annotated[str, CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, METAL] = "copper",
    load_size: Annotated[str | None, LOAD_SIZE] = None,
    place: Annotated[str, PLACE] = "service-disconnect",
    system_grounding: Annotated[str, SYSTEM_GROUNDING] = "solidly-grounded",
    enclosures: Annotated[int, ENCLOSURES] = 1,
) -> Answer:
    """Return the smallest grounded conductor brought to a service disconnect or from a separately derived system.

    When: grounded systems up to 1000 V; of derived systems those whose system bonding jumper is in the first
    disconnect. Not for feeders, ungrounded or impedance-grounded systems: those end as not covered. The
    neutral load is not computed; give the size it needs as `load_size`.

    Parameters:
        conductor: size label of the largest ungrounded conductor, "18" to "2000kcmil".
        sets: conductors in parallel a phase, raceways: how many raceways or cables share them, each 1 to 30; left
            out, the answer gives one for all sets together and one for each set.
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        load_size: size label that the neutral load needs, of each conductor; left out where not known.
        place: "service-disconnect", "first-disconnect", "source" or "feeder-panel".
        system_grounding: "solidly-grounded", "corner-grounded", "ungrounded" or "impedance-grounded".
        enclosures: disconnect enclosures, 1 to 6; `conductor` serves this one.
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold size, metal, area_cmil, count (None where the
    number of raceways is open).
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: 250.24(C) (2017, 2020) or (D) (2023), 250.30(A)(3), Table 250.102(C)(1), Chapter 9 Table 8.

    Example:
    >>> result = grounded_conductor(edition="2023", conductor="3/0", sets=2, raceways=2)
    >>> result.answer.values["size"], result.answer.values["count"]
    ('1/0', 2)
    """
    require_scope(OUT_OF_SCOPE, trace, place=place, system_grounding=system_grounding)
    require_equal_raceways(sets, raceways, trace)
    refuse = refuse_below_service if place == "service-disconnect" else refuse_below_wiring
    refuse(conductor, conductor_metal, trace)
    if enclosures > 1:
        trace.step(
            message(
                "{enclosures} enclosures, each with its own grounded conductor. The hot conductors entered serve "
                "this one.",
                enclosures=enclosures,
            ),
            cites=(RULES[place]["needed"],),
        )
    corner = system_grounding == "corner-grounded"
    # In a corner-grounded delta one runs with each set, however they share raceways.
    first, *others = (raceways or sets,) if corner else arrangements(sets, raceways)
    hot = (conductor, sets)
    metals = (conductor_metal, metal, RULES[place], corner)
    count = None if others else sets if corner else first
    size = size_for_fault(*hot, first, *metals, trace)
    _note_why_and_where(place, trace)
    size = larger_for_load(size, load_size, RULES[place], corner, trace)
    detail = _detail(METAL_WORDS[metal], sets, first, corner, bool(load_size))
    for number in others:
        aside = Trace(trace.edition)
        each = larger_for_load(size_for_fault(*hot, number, *metals, aside), load_size, RULES[place], corner, aside)
        size, detail = _one_or_each(size, each, metal, number, RULES[place], trace)
        detail = detail if load_size else message("{least}. The neutral load may require a larger one", least=detail)
    if not corner:
        trace.note(
            message(
                "Calculated as a neutral. The grounded phase conductor of a corner-grounded delta carries as much as a "
                "hot conductor ({section}).",
                section=trace.section(RULES[place]["delta"]),
            )
        )
    return Answer(
        name=message("Grounded conductor"),
        headline=message("{size}", size=shown_size(size)),
        detail=detail,
        basis=RULES[place]["needed"],
        answer_code=f"{size}-{metal}",
        values={"size": size, "metal": metal, "area_cmil": area(size, trace.edition), "count": count},
    )


def _detail(metal: Message, sets: int, raceways: int, corner: bool, load_given: bool) -> Message:
    if corner and sets > 1:
        return message("{metal} or larger, one with each of the {sets} sets", metal=metal, sets=sets)
    if raceways > 1:
        least = message(
            "{metal} or larger, one in each of {raceways} raceways or cables", metal=metal, raceways=raceways
        )
    else:
        least = message("{metal} or larger, with the hot conductors", metal=metal)
    return least if corner or load_given else message("{least}. The neutral load may require a larger one", least=least)


def _one_or_each(size: str, each: str, metal: str, raceways: int, rules: Data, trace: Trace):
    """Return the larger size and the words where nobody said in how many raceways the sets run."""
    words = dict(metal=METAL_WORDS[metal], raceways=raceways, size=shown_size(size), each=shown_size(each))
    trace.step(
        message(
            "The number of raceways was not entered. All sets in one raceway: {size}. One set in each of {raceways} "
            "raceways: {each}.",
            **words,
        ),
        cites=(rules["single"], rules["each"]),
    )
    if area(each, trace.edition) > area(size, trace.edition):
        trace.reading(message("if all sets are in one raceway"), size)
        return each, message(
            "{metal} or larger in each of {raceways} raceways, one set in each; {size} if all sets are in one raceway",
            **words,
        )
    trace.reading(message("where each of {raceways} raceways has its own, with one set in each", **words), each)
    return size, message(
        "{metal} or larger if all sets are in one raceway; {each} in each of {raceways} raceways, one set in each",
        **words,
    )


def _note_why_and_where(place: str, trace: Trace) -> None:
    section = trace.section(RULES[place]["needed"])
    if place == "first-disconnect":
        trace.note(
            message(
                "The system bonding jumper is in the first disconnect, so this conductor carries fault current back to "
                "the source, whatever its load ({section}).",
                section=section,
            )
        )
        return
    trace.note(
        message(
            "It is required even where no load uses the neutral: it is the ground-fault return path ({section}).",
            section=section,
        )
    )
    trace.note(
        message(
            "Run it to each service disconnect, where the main bonding jumper connects it to the enclosure "
            "({section}). In one listed assembly, it may connect to the common bus ({assembly}).",
            section=section,
            assembly=trace.section("grounding/grounded_conductor_to_listed_assembly"),
        )
    )
