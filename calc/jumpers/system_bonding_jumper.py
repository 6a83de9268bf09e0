"""The system bonding jumper: the link between grounded conductor and metal of a separately derived system."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.conductors.area import area
from calc.conductors.least import refuse_below_wiring
from calc.found.verdict import SIZE
from calc.identify.system_jumper_place import (
    DERIVED_SYSTEM_GROUNDING,
    OUT_OF_SCOPE,
    SYSTEM_JUMPER_PLACE,
)
from calc.jumpers.jumper_form import FORM_OF_SYSTEM_JUMPER, jumper_form
from calc.jumpers.supply_side_size import supply_side_size
from calc.margin.declared import Margin
from calc.messages import message
from calc.output import Output, as_entered
from calc.scope import require_scope
from calc.shared_fields import MAX_SETS, conductor_size, metal_of, whole_number
from calc.shared_outputs import wire
from calc.trace import Trace

MAX_ENCLOSURES = 30
SEVERAL = "jumpers/several_derived_enclosures"
STANDS = {
    "source": "jumpers/system_jumper_at_source",
    "first-disconnect": "jumpers/system_jumper_at_first_disconnect",
}

CONDUCTOR = conductor_size(
    message("Largest secondary or generator ungrounded (hot) conductor"),
    message("On the secondary of the transformer or from the generator, for example 3/0 or 500 kcmil."),
)
SETS = whole_number(
    message("Sets in parallel"),
    message(
        "Number of conductors in parallel per phase. If the source feeds several disconnects, count the sets to all of "
        "them."
    ),
    1,
    MAX_SETS,
)
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
METAL = metal_of(message("Jumper material"))
ENCLOSURES = whole_number(
    message("Number of disconnect enclosures fed by this source"),
    message("Separate first-disconnect enclosures the source feeds directly."),
    1,
    MAX_ENCLOSURES,
    rare=True,
)


@calculator(
    "system-bonding-jumper",
    name=message("System bonding jumper"),
    purpose=message(
        "Minimum system bonding jumper size for a separately derived system, with the section for each step."
    ),
    submit=message("Size the jumper"),
    example={"edition": "2023", "conductor": "400kcmil", "sets": "3", "conductor_metal": "copper", "metal": "copper"},
    outputs=(
        *wire(message("Minimum size of the system bonding jumper")),
        as_entered("form", FORM_OF_SYSTEM_JUMPER),
        Output("place", message("Location of the jumper"), "choice", choices=tuple(STANDS)),
        as_entered("enclosures", ENCLOSURES),
    ),
    site_check=SIZE,
    margin=Margin(("conductor", "sets")),
)
def system_bonding_jumper(
    *,
    trace: Trace,
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, SETS] = 1,
    conductor_metal: Annotated[str, CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, METAL] = "copper",
    place: Annotated[str, SYSTEM_JUMPER_PLACE] = "source",
    system_grounding: Annotated[str, DERIVED_SYSTEM_GROUNDING] = "solidly-grounded",
    enclosures: Annotated[int, ENCLOSURES] = 1,
    form: Annotated[str, FORM_OF_SYSTEM_JUMPER] = "wire",
) -> Answer:
    """Return the smallest system bonding jumper of a separately derived system.

    When: a solidly grounded transformer or generator of its own, up to 1000 V, jumper at the source or
    in the first disconnect. Not for services, feeder panels, an unswitched neutral, ungrounded or
    impedance-grounded systems, or two places at once: those end as not covered, with where to look.

    Parameters:
        conductor: size label of the largest derived ungrounded conductor, "18" to "2000kcmil".
        sets: conductors in parallel a phase, 1 to 30 (a limit of this calculator, not of the code).
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        place: where the jumper is. system_grounding: how the derived system is grounded.
        enclosures: first-disconnect enclosures supplied, 1 to 30. At the source, `sets` counts all of
            them; at the first disconnect, `conductor` and `sets` serve this one enclosure.
        form: "wire", "busbar", "strap" or "screw".
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold size, metal, area_cmil, form, place, enclosures.
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: 250.30(A)(1), 250.28, Table 250.102(C)(1), Chapter 9 Table 8.

    Example:
    >>> result = system_bonding_jumper(edition="2023", conductor="400kcmil", sets=3)
    >>> result.answer.values["size"], result.answer.values["area_cmil"]
    ('3/0', 167800)
    """
    require_scope(OUT_OF_SCOPE, trace, place=place, system_grounding=system_grounding)
    refuse_below_wiring(conductor, conductor_metal, trace)
    trace.cite("naming/system_bonding_jumper")
    if enclosures > 1:
        _say_which_conductors_count(place, enclosures, sets, trace)
    size = supply_side_size(conductor, sets, conductor_metal, metal, trace)
    trace.cite("jumpers/main_bonding_jumper_size")
    headline, detail = jumper_form(form, size, metal, trace, "grounding/derived_electrode_conductor_landing")
    _note_where_it_stands(place, trace)
    return Answer(
        name=message("System bonding jumper"),
        headline=headline,
        detail=detail,
        basis="jumpers/supply_side_size",
        answer_code=f"{size}-{metal}",
        values={
            "size": size,
            "metal": metal,
            "area_cmil": area(size, trace.edition),
            "form": form,
            "place": place,
            "enclosures": enclosures,
        },
    )


def _say_which_conductors_count(place: str, enclosures: int, sets: int, trace: Trace) -> None:
    if place == "first-disconnect":
        trace.step(
            message(
                "{enclosures} enclosures, each with its own jumper, sized from the conductors that serve that "
                "enclosure. The conductors entered serve this one.",
                enclosures=enclosures,
            ),
            cites=(SEVERAL,),
        )
        return
    trace.step(
        message(
            "One jumper at the source for {enclosures} enclosures: add up the conductors to all of them. The sets "
            "entered are the total.",
            enclosures=enclosures,
        ),
        cites=(SEVERAL,),
    )
    if sets < enclosures:
        trace.warn(
            message(
                "{enclosures} enclosures but sets in parallel: {sets}. Each enclosure needs at least one set. Enter "
                "the total sets to all enclosures ({section}).",
                enclosures=enclosures,
                sets=sets,
                section=trace.section(SEVERAL),
            )
        )


def _note_where_it_stands(place: str, trace: Trace) -> None:
    joined = (
        message(
            "At the source, it connects the neutral to the enclosure and the supply-side bonding jumper ({section}).",
            section=trace.section(STANDS[place]),
        )
        if place == "source"
        else message(
            "At the first disconnect, it connects the neutral to the enclosure, the supply-side bonding jumper and the "
            "equipment grounding conductors ({section}).",
            section=trace.section(STANDS[place]),
        )
    )
    trace.note(joined)
    trace.note(
        message(
            "Install it in one piece, unspliced, within one enclosure ({section}). Downstream of it, keep the neutral "
            "isolated from metal ({past}).",
            section=trace.section("naming/system_bonding_jumper"),
            past=trace.section("grounding/no_neutral_bond_past_system_jumper"),
        ),
        grave=True,
    )
    trace.note(
        message(
            "If the source is outside the building it feeds, it needs its own grounding electrode connection at the "
            "source, and a system bonding jumper at that connection ({section}).",
            section=trace.section("jumpers/outdoor_source"),
        )
    )
