"""The equipment grounding conductor: the wire that carries a fault back to open the device ahead."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.conductors.area import area
from calc.conductors.arrangement import arrangements
from calc.conductors.size import shown_size
from calc.found.verdict import SIZE
from calc.grounding import circuit_fields as fields
from calc.grounding.aluminum_near_earth import OF_EQUIPMENT_CONDUCTORS, warn_of_aluminum_near_earth
from calc.grounding.either_size import ask_for_the_smallest, words_of
from calc.grounding.equipment_grounding_scope import (
    OUT_OF_SCOPE,
    device_that_counts,
    require_whole_conductors,
)
from calc.grounding.parallel_runs import count_of_conductors, size_in_tray
from calc.grounding.size_for_circuit import BREAKS, HotConductors, Sized, size_for_circuit
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import Output
from calc.scope import require_scope
from calc.shared_fields import METAL_WORDS, SETS
from calc.shared_outputs import how_many, unless_increased, wire
from calc.trace import Trace


@calculator(
    "equipment-grounding-conductor",
    name=message("Equipment grounding conductor"),
    purpose=message(
        "Minimum wire-type equipment grounding conductor size for a circuit, with the section for each step."
    ),
    submit=message("Size the conductor"),
    example={
        "edition": "2023",
        "device": "40",
        "metal": "copper",
        "installed_conductor": "6",
        "minimum_conductor": "8",
    },
    outputs=(
        *wire(message("Minimum size of the equipment grounding conductor")),
        how_many(),
        Output("device", message("Rating or setting that sizes it"), "number", "A"),
        unless_increased(),
    ),
    site_check=SIZE,
    margin=Margin(("device", "installed_conductor", "sets"), breaks={"device": BREAKS}),
)
def equipment_grounding_conductor(
    *,
    trace: Trace,
    device: Annotated[float, fields.DEVICE],
    metal: Annotated[str, fields.METAL] = "copper",
    installed_conductor: Annotated[str | None, fields.INSTALLED] = None,
    minimum_conductor: Annotated[str | None, fields.MINIMUM] = None,
    conductor_metal: Annotated[str, fields.CONDUCTOR_METAL] = "copper",
    sets: Annotated[int, SETS] = 1,
    raceways: Annotated[int | None, fields.RACEWAYS] = None,
    increase_reason: Annotated[str, fields.INCREASE] = "any",
    raceway: Annotated[str, fields.WIRING] = "raceway",
    circuits: Annotated[int, fields.CIRCUITS] = 1,
    circuit: Annotated[str, fields.CIRCUIT] = "feeder-or-branch",
    motor: Annotated[str, fields.MOTOR] = "ac",
    motor_current: Annotated[float | None, fields.MOTOR_CURRENT] = None,
) -> Answer:
    """Return the smallest wire-type equipment grounding conductor of one circuit.

    When: feeders, branch circuits, feeder taps and motor circuits up to 1000 V, on the load side of an
    overcurrent device. Not for service conductors, flexible cords or metal raceways used as the path.

    Parameters:
        device: rating of the overcurrent device, ampere, 1 to 10,000; of several circuits the largest.
        metal: of the equipment grounding conductor; conductor_metal: of the hot conductors. Each is
            "copper", "aluminum" or "copper-clad-aluminum".
        installed_conductor: size label of one hot conductor, where it is known; minimum_conductor: the
            smallest that would do after corrections, where the installed one is larger.
        increase_reason: "any" or "ambient-or-bundling".
        sets: conductors in parallel a phase, raceways: in how many raceways or cables, each 1 to 30; left out, the
            answer holds for all sets in one and for one in each.
        raceway: "raceway", "cable" or "cable-tray". circuits: circuits that share the conductor.
        circuit: "feeder-or-branch", "feeder-tap", "motor", "motor-instantaneous-trip", "flexible-cord", "service".
        motor: "ac" or "wound-rotor-or-dc"; motor_current: full-load current, ampere, needed there.
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold size, metal, area_cmil, device, count (None where the number of
        raceways is open), size_unless_increased (the same as size but where larger hot conductors are installed and
        nobody said why).
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: 250.122, Table 250.122, 250.120(B), 430.52, 240.6(A), Chapter 9 Table 8.

    Example:
    >>> written = {"device": "40A", "minimum_conductor": "8", "installed_conductor": "6"}
    >>> result = equipment_grounding_conductor(edition="2023", **written)
    >>> result.answer.values["size"], result.answer.values["area_cmil"]
    ('8', 16510)
    """
    require_scope(OUT_OF_SCOPE, trace, circuit=circuit)
    require_whole_conductors(installed_conductor, minimum_conductor, conductor_metal, sets, raceways, trace)
    device = device_that_counts(device, circuit, motor, motor_current, trace)
    if circuits > 1:
        trace.step(
            message(
                "{circuits} circuits share it: size it from the largest overcurrent device, the one entered.",
                circuits=circuits,
            ),
            cites=("grounding/several_circuits_one_conductor",),
        )
        if minimum_conductor:
            trace.warn(message("Work out the increase for each circuit separately and use the largest answer."))
    first, *others = (1,) if raceway == "cable-tray" and raceways is None else arrangements(sets, raceways)
    hot = HotConductors(
        installed_conductor,
        minimum_conductor,
        conductor_metal,
        sets,
        first,
        increase_reason,
        circuit,
        limits=circuits == 1,
    )
    sized = size_for_circuit(device, metal, hot, trace)
    ask_for_the_smallest(sized, hot, trace)
    count = None if others else count_of_conductors(sets, first, raceway, trace)
    if raceway == "cable-tray":
        sized = _in_tray(sized, trace)
    _note_what_it_implies(metal, trace)
    detail = _detail(metal, count)
    for number in others:
        each = size_for_circuit(device, metal, hot._replace(raceways=number), Trace(trace.edition))
        detail = _one_or_each(sized, each, metal, number, trace)
    return Answer(
        name=message("Equipment grounding conductor"),
        headline=message("{size}", size=shown_size(sized.size)),
        detail=words_of(sized, metal, hot, detail, trace),
        basis="grounding/equipment_grounding_size",
        answer_code=f"{sized.size}-{metal}",
        values={
            "size": sized.size,
            "metal": metal,
            "area_cmil": area(sized.size, trace.edition),
            "count": count,
            "device": device,
            "size_unless_increased": sized.unless_increased or sized.size,
        },
    )


def _detail(metal: str, count: int | None) -> Message:
    if count and count > 1:
        return message(
            "{metal} wire or larger, in each of {count} raceways or cables", metal=METAL_WORDS[metal], count=count
        )
    return message("{metal} wire or larger", metal=METAL_WORDS[metal])


def _one_or_each(sized: Sized, each: Sized, metal: str, raceways: int, trace: Trace) -> Message:
    """Return the words where nobody said in how many raceways the sets run: one conductor, or one in each."""
    words = dict(metal=METAL_WORDS[metal], raceways=raceways, size=shown_size(each.size))
    trace.step(
        message(
            "The number of raceways was not entered: one conductor for all sets, or a full-size one in each raceway."
        ),
        cites=("grounding/parallel_in_one_raceway", "grounding/parallel_in_several_raceways"),
    )
    if each.size == sized.size:
        return message(
            "{metal} wire or larger: one if all sets are in one raceway, otherwise one in each raceway or cable",
            **words,
        )
    trace.reading(message("where each of {raceways} raceways has its own, with one set in each", **words), each.size)
    return message(
        "{metal} wire or larger if all sets are in one raceway. With one set in each of {raceways} raceways: {size} in "
        "each",
        **words,
    )


def _in_tray(sized: Sized, trace: Trace) -> Sized:
    size = size_in_tray(sized.size, trace)
    smaller = [each and size_in_tray(each, Trace(trace.edition)) for each in sized[1:]]
    return Sized(size, *(each if each != size else None for each in smaller))


def _note_what_it_implies(metal: str, trace: Trace) -> None:
    warn_of_aluminum_near_earth(metal, OF_EQUIPMENT_CONDUCTORS, trace)
    trace.note(
        message(
            "This is the minimum size. If the effective ground-fault current path needs a larger one, the larger one "
            "is required ({section}).",
            section=trace.section("grounding/effective_fault_path"),
        )
    )
