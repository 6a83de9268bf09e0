"""The grounding electrode conductor: from a service, a building or a derived system to a grounding electrode."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, Choice, calculator, require
from calc.conductors.area import area
from calc.conductors.least import refuse_below_service, refuse_below_wiring
from calc.conductors.size import shown_size
from calc.found.verdict import SIZE
from calc.grounding.electrode_conductor_notes import note_the_installation, words_of_run
from calc.grounding.electrode_conductor_place import PLACE, SEVERAL_DERIVED, common_size, name_the_place
from calc.grounding.electrode_conductor_size import electrode_conductor_size
from calc.grounding.electrode_limit import ELECTRODE_CHOICES, size_for_electrodes
from calc.grounding.supply_conductors import area_of, other_conductors, sets_of, shown_set
from calc.identify.jumper_place import SYSTEM_GROUNDING
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import Output
from calc.rulebook import every_edition
from calc.shared_fields import SETS, conductor_size, metal_of, one_of
from calc.shared_outputs import wire
from calc.trace import Trace

MAX_OTHERS = max(stated.value for stated in every_edition("services/disconnects_maximum")) - 1

CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor"),
    message("The one feeding this disconnect or coming from this transformer, for example 3/0 or 500 kcmil."),
)
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
METAL = metal_of(message("Grounding electrode conductor material"))
ELECTRODE = one_of(message("Electrode"), message("Electrode the conductor connects to."), ELECTRODE_CHOICES)
CONTINUES_TO = one_of(
    message("Continues to another electrode"),
    message("Another electrode on the same conductor. The one that requires the largest size decides."),
    (Choice("none", message("No other electrode")), *ELECTRODE_CHOICES),
    rare=True,
)
RING = conductor_size(
    message("Ground ring conductor size"),
    message("Its bare copper conductor, for example 2 or 4/0. Required only for a ground ring."),
    rare=True,
)
OTHERS = other_conductors(
    message("Supply conductors of the other disconnects or systems"),
    message("Where they share one grounding electrode conductor. Same material as above."),
    MAX_OTHERS,
)


@calculator(
    "grounding-electrode-conductor",
    name=message("Grounding electrode conductor"),
    purpose=message("Minimum grounding electrode conductor size, and its taps, with the section for each step."),
    submit=message("Size the conductor"),
    example={"edition": "2023", "conductor": "3/0", "other_conductors": "3/0,3/0", "electrode": "water-pipe"},
    outputs=(
        *wire(message("Minimum size of the grounding electrode conductor")),
        Output("taps", message("Minimum size of each tap, in the order entered"), "size", shape="list"),
    ),
    site_check=SIZE,
    margin=Margin(("conductor", "sets")),
)
def grounding_electrode_conductor(
    *,
    trace: Trace,
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, SETS] = 1,
    conductor_metal: Annotated[str, CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, METAL] = "copper",
    electrode: Annotated[str, ELECTRODE] = "water-pipe",
    continues_to: Annotated[str, CONTINUES_TO] = "none",
    ring: Annotated[str | None, RING] = None,
    place: Annotated[str, PLACE] = "service-disconnect",
    system_grounding: Annotated[str, SYSTEM_GROUNDING] = "solidly-grounded",
    other_conductors: Annotated[str | None, OTHERS] = None,
) -> Answer:
    """Return the smallest grounding electrode conductor, and each tap where several disconnects or systems share it.

    When: alternating current up to 1000 V: services, separate buildings, separately derived systems,
    grounded or ungrounded. Panels fed inside a building and impedance-grounded systems end as not covered.

    Parameters:
        conductor: size label of the largest ungrounded conductor, "18" to "2000kcmil".
        sets: conductors in parallel a phase, 1 to 30 (a limit of this calculator, not of the code).
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        electrode, continues_to: "water-pipe", "structural-metal", "concrete-encased", "ring", "rod", "pipe",
            "plate" or "other"; continues_to also "none".
        ring: size label of the ring's copper conductor, needed where an electrode is a ring.
        place: where it starts. system_grounding: how the system is grounded.
        other_conductors: sets to the other disconnects or systems, "3/0,2x250kcmil", at most 5; None for no others.
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold size, metal, area_cmil, taps (size labels, the first for `conductor`).
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: Table 250.66, 250.66(A) to (C), 250.64(A) to (D) and (F), 250.30(A)(5) and (6), 250.32(E), 250.24.

    Example:
    >>> result = grounding_electrode_conductor(edition="2023", conductor="3/0", other_conductors="3/0,3/0")
    >>> result.answer.values["size"], result.answer.values["taps"]
    ('1/0', ['4', '4', '4'])
    """
    name_the_place(place, system_grounding, other_conductors, trace)
    refuse = refuse_below_service if place == "service-disconnect" else refuse_below_wiring
    refuse(conductor, conductor_metal, trace)
    for _, size in sets_of(other_conductors):
        refuse_below_wiring(size, conductor_metal, trace, "other_conductors")
    electrodes = [electrode] if continues_to == "none" else [electrode, continues_to]
    if "ring" in electrodes:
        require(ring, "ring")
    supplies = [(sets, conductor), *sets_of(other_conductors)]
    shared = len(supplies) > 1 or place == SEVERAL_DERIVED

    areas = [area_of(*supply, trace.edition) for supply in supplies]
    table_size = None
    if place == SEVERAL_DERIVED:
        size = common_size(electrodes, ring, metal, trace)
    else:
        trace.step(
            message(
                "Area of the ungrounded conductors: {sets}.", sets=" + ".join(shown_set(*each) for each in supplies)
            ),
            sum(areas),
            "cmil",
            ("conductors/area",),
        )
        table_size = electrode_conductor_size(sum(areas), conductor_metal, metal, trace, sets)
        size = size_for_electrodes(table_size, electrodes, ring, metal, trace)
    if not shared and place == "service-disconnect":
        trace.note(
            message(
                "Calculated for one disconnect. A conductor shared by several is sized from all their supply "
                "conductors: enter the others ({section}).",
                section=trace.section("grounding/electrode_conductor_several_disconnects"),
            )
        )
    taps = [_tap(each, size, conductor_metal, metal, trace.edition) for each in areas] if shared else []
    for supply, tap in dict(zip(supplies, taps, strict=False)).items():
        trace.step(
            message(
                "Tap for {supply}, sized from its own conductors, not larger than the common conductor: {tap}.",
                supply=shown_set(*supply),
                tap=shown_size(tap),
            ),
            shown_size(tap),
            "",
            (
                "grounding/electrode_conductor_tap_of_derived_system"
                if place == SEVERAL_DERIVED
                else "grounding/electrode_conductor_several_disconnects",
                "grounding/electrode_conductor_size",
            ),
        )
    if table_size and table_size != size:
        trace.reading(message("where it continues to a water pipe or building steel"), table_size)
    if taps:
        trace.reading(message("Each tap has its own size. Check it separately."))
    note_the_installation(size, taps, metal, trace)
    return Answer(
        name=message("Common grounding electrode conductor") if shared else message("Grounding electrode conductor"),
        headline=message("{size}", size=shown_size(size)),
        detail=_detail(size, metal, taps, len(supplies), None if size == table_size else table_size, trace),
        basis="grounding/electrode_conductor_size",
        answer_code=f"{size}-{metal}",
        values={"size": size, "metal": metal, "area_cmil": area(size, trace.edition), "taps": taps},
    )


def _detail(
    size: str, metal: str, taps: list[str], supplies: int, table_size: str | None, trace: Trace
) -> Message:
    """Return the words beside the size; supplies: how many the taps were entered for.

    table_size: what the table asks for, where the electrodes ask for less.
    """
    if table_size:
        return message(
            "{detail}. For these electrodes only; {table} if it continues to a water pipe or building steel",
            detail=_detail(size, metal, taps, supplies, None, trace),
            table=shown_size(table_size),
        )
    run = words_of_run(size, metal, trace)
    if not taps:
        return run
    if supplies == 1:
        return message(
            "{run}; tap for this system {tap}, each other tap sized from its own conductors",
            run=run,
            tap=shown_size(taps[0]),
        )
    if len(set(taps)) == 1:
        return message("{run}; taps {tap} each", run=run, tap=shown_size(taps[0]))
    tap_sizes = ", ".join(shown_size(tap) for tap in taps)
    return message("{run}; taps {taps}, in the order entered", run=run, taps=tap_sizes)


def _tap(total: float, common: str, conductor_metal: str, metal: str, edition: str) -> str:
    """Return the size that a tap's own conductors ask for, never more than the conductor it joins."""
    size = electrode_conductor_size(total, conductor_metal, metal, Trace(edition))
    return min(size, common, key=lambda each: area(each, edition))
