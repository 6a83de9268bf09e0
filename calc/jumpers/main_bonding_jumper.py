"""The main bonding jumper: the link between grounded conductor and metal in a service disconnect enclosure."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, Choice, calculator
from calc.conductors.area import area
from calc.conductors.least import refuse_below_service
from calc.conductors.size import shown_size
from calc.found.verdict import size_or_listed
from calc.identify.jumper_place import OUT_OF_SCOPE, PLACE, SYSTEM_GROUNDING
from calc.jumpers.jumper_form import FORM, jumper_form
from calc.jumpers.supply_side_size import supply_side_size
from calc.margin.declared import Margin
from calc.messages import message
from calc.output import as_entered
from calc.rulebook import every_edition
from calc.scope import require_scope
from calc.shared_fields import SETS, conductor_size, metal_of, one_of, whole_number
from calc.shared_outputs import wire
from calc.trace import Trace

MAX_ENCLOSURES = max(stated.value for stated in every_edition("services/disconnects_maximum"))

CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor"),
    message("The one feeding this enclosure, for example 3/0 or 500 kcmil."),
)
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
METAL = metal_of(message("Jumper material"))
CONDUCTOR_BASIS = one_of(
    message("Size entered"),
    message("Some services have no service conductors of their own. Then enter the size the load would require."),
    (Choice("installed", message("Installed size")), Choice("needed-for-load", message("Size the load would require"))),
    rare=True,
)
ENCLOSURES = whole_number(
    message("Number of service disconnect enclosures"),
    message("Separate enclosures with a service disconnect. Count a listed assembly of several as one."),
    1,
    MAX_ENCLOSURES,
    rare=True,
)


@calculator(
    "main-bonding-jumper",
    name=message("Main bonding jumper"),
    purpose=message(
        "Minimum main bonding jumper size for a service disconnect enclosure, with the section for each step."
    ),
    submit=message("Size the jumper"),
    example={"edition": "2023", "conductor": "500kcmil", "sets": "2", "conductor_metal": "copper", "metal": "copper"},
    outputs=(
        *wire(message("Minimum size of the main bonding jumper")),
        as_entered("form", FORM),
        as_entered("enclosures", ENCLOSURES),
    ),
    site_check=size_or_listed("jumpers/supplied_with_listed_equipment"),
    margin=Margin(("conductor", "sets")),
)
def main_bonding_jumper(
    *,
    trace: Trace,
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, SETS] = 1,
    conductor_metal: Annotated[str, CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, METAL] = "copper",
    place: Annotated[str, PLACE] = "service-disconnect",
    system_grounding: Annotated[str, SYSTEM_GROUNDING] = "solidly-grounded",
    enclosures: Annotated[int, ENCLOSURES] = 1,
    form: Annotated[str, FORM] = "wire",
    conductor_basis: Annotated[str, CONDUCTOR_BASIS] = "installed",
) -> Answer:
    """Return the smallest main bonding jumper of one service disconnect enclosure.

    When: a grounded system's service disconnect, up to 1000 V. Not for panels fed by a feeder,
    separately derived systems, wireways ahead of several disconnects, ungrounded or
    impedance-grounded systems: those end as not covered, with the name to look under.

    Parameters:
        conductor: size label of the largest ungrounded conductor, "18" to "2000kcmil".
        sets: conductors in parallel a phase, 1 to 30 (a limit of this calculator, not of the code).
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        place: where the jumper is. system_grounding: how the system is grounded.
        enclosures: separate service disconnect enclosures, 1 to 6; `conductor` serves this one.
        form: "wire", "busbar", "strap", "screw" or "supplied".
        conductor_basis: "installed", or "needed-for-load" where there are no service conductors.
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold size, metal, area_cmil, form, enclosures.
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: 250.24(B) (2017, 2020) or (C) (2023), 250.28, Table 250.102(C)(1), Chapter 9 Table 8.

    Example:
    >>> result = main_bonding_jumper(edition="2023", conductor="500kcmil", sets=2)
    >>> result.answer.values["size"], result.answer.values["area_cmil"]
    ('2/0', 133100)
    """
    require_scope(OUT_OF_SCOPE, trace, place=place, system_grounding=system_grounding)
    refuse_below_service(conductor, conductor_metal, trace)
    trace.cite("jumpers/main_bonding_jumper_required")
    if conductor_basis == "needed-for-load":
        trace.step(
            message(
                "There are no separate service conductors, so use the size the load would require: {size}.",
                size=shown_size(conductor),
            ),
            cites=("jumpers/no_service_conductors",),
        )
    if enclosures > 1:
        trace.step(
            message(
                "{enclosures} enclosures, each with its own jumper, sized from the conductors that serve that "
                "enclosure. The conductors entered serve this one.",
                enclosures=enclosures,
            ),
            cites=("jumpers/several_service_enclosures",),
        )
    size = supply_side_size(conductor, sets, conductor_metal, metal, trace)
    trace.cite("jumpers/main_bonding_jumper_size")
    headline, detail = jumper_form(form, size, metal, trace)
    trace.note(
        message(
            "Install one jumper in each service disconnect enclosure, in one piece, unspliced ({section}).",
            section=trace.section("jumpers/main_bonding_jumper_required"),
        ),
        grave=True,
    )
    return Answer(
        name=message("Main bonding jumper"),
        headline=headline,
        detail=detail,
        basis="jumpers/supply_side_size",
        answer_code=f"{size}-{metal}",
        values={
            "size": size,
            "metal": metal,
            "area_cmil": area(size, trace.edition),
            "form": form,
            "enclosures": enclosures,
        },
    )
