"""Every bonding and grounding part of a generator; its neutral and its breaker decide their names."""

from __future__ import annotations

from dataclasses import replace
from typing import Annotated

from calc.calculator import Answer, Choice, calculator, require
from calc.found.parts import PARTS
from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.grounding.size_for_circuit import BREAKS
from calc.known import known
from calc.margin.declared import Margin
from calc.messages import message
from calc.schedule import fields
from calc.schedule.derived_source import ask_for_outdoor_source
from calc.schedule.electrodes import add_electrodes
from calc.schedule.equipment_conductor import by_device_and_conductor
from calc.schedule.generator_rows import GENERATOR, add_joined_neutral, add_own_system, ask_whether_it_is_fixed
from calc.schedule.list_outputs import OUTPUTS
from calc.schedule.metal_parts import add_derived_metal
from calc.schedule.part_list import PartList
from calc.shared_fields import conductor_size, device_rating, one_of
from calc.trace import Trace

NEUTRAL = one_of(
    message("Transfer switch and neutral"),
    message(
        "A switch with one more pole than hot conductors usually switches the neutral. Its nameplate or drawing says "
        "so."
    ),
    (
        Choice("switched", message("Neutral is switched")),
        Choice("joined", message("Neutral is not switched: solidly connected to the service neutral")),
    ),
)
BREAKER = one_of(
    message("Breaker or fuse at the generator"),
    message("An overcurrent device at the generator that protects the conductors leaving it."),
    (
        Choice("yes", message("Yes")),
        Choice("no", message("No")),
    ),
)
CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor from the generator"), message("For example 3/0 or 500 kcmil.")
)
DEVICE = device_rating(
    message("Rating of the breaker or fuse at the generator"), message("Leave it empty if there is none.")
)
ELECTRODES = replace(
    fields.ELECTRODES,
    hint=message("Required only with a switched neutral: all electrodes present at the building, bonded together."),
)
METAL_PARTS = replace(
    fields.METAL_PARTS, hint=message("With a switched neutral: metal in the area the generator serves.")
)
BOND = one_of(
    message("Location of the system bonding jumper"),
    message("With a switched neutral and no breaker or fuse at the generator: at one of the two, never both."),
    (
        Choice("source", message("At the generator")),
        Choice("first-disconnect", message("In the first disconnect after it")),
    ),
    rare=True,
)


@calculator(
    "generator-schedule",
    name=message("Generator schedule"),
    purpose=message(
        "What to bond at a generator and its transfer switch, what not to bond, and what is left to check."
    ),
    submit=message("Build the schedule"),
    example={
        "edition": "2023",
        "neutral": "switched",
        "breaker": "no",
        "conductor": "500kcmil",
        "electrodes": "rod",
    },
    outputs=OUTPUTS,
    site_check=PARTS,
    margin=Margin(
        ("conductor", "sets", "device", "piping_device"), breaks=dict.fromkeys(("device", "piping_device"), BREAKS)
    ),
)
def generator_schedule(
    *,
    trace: Trace,
    neutral: Annotated[str, NEUTRAL],
    breaker: Annotated[str, BREAKER],
    device: Annotated[float | None, DEVICE] = None,
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, fields.SETS] = 1,
    conductor_metal: Annotated[str, fields.CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, fields.METAL] = "copper",
    raceways: Annotated[int | None, fields.RACEWAYS] = None,
    electrodes: Annotated[str | None, ELECTRODES] = None,
    metal_parts: Annotated[str | None, METAL_PARTS] = None,
    place: Annotated[str, BOND] = "source",
    piping_device: Annotated[float | None, fields.PIPING_DEVICE] = None,
    ring: Annotated[str | None, fields.RING] = None,
    minimum_conductor: Annotated[str | None, fields.MINIMUM] = None,
) -> Answer:
    """Return the bonding and grounding parts of a permanently installed generator, and what must not be there.

    What nothing entered decides is listed as not judged, with the question to answer.

    When: alternating current up to 1000 V, solidly grounded. Portable sets, ungrounded and impedance-grounded
    generators are left out.

    Parameters:
        neutral: "switched" (a source of its own) or "joined" (not one).
        breaker: "yes" with an overcurrent device at the generator; device: its ampere, 1 to 10,000, then needed.
        conductor: size label of the largest ungrounded conductor from the generator, "18" to "2000kcmil".
        sets: conductors in parallel a phase, raceways: in how many raceways or cables, each 1 to 30.
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        electrodes: as in service_schedule, needed with a switched neutral; ring: size label of a ring's conductor.
        metal_parts: "water-pipe", "structural-metal", "other-metal", with commas; listed with a switched neutral.
        piping_device: ampere, 1 to 10,000, then needed for "other-metal".
        minimum_conductor: size label that would do, needed where the one that runs is larger than the device asks for.
        place: "source" or "first-disconnect", where a switched neutral is bonded; at the source with a device there.
        found: on site: "main bonding jumper: 6 copper; ..." by part; the answer then holds a verdict on each.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold parts and sizes (by part), its table one row a part.
    Raises: nothing; bad or missing input ends as `fix`.
    Source: the calculators of the parts; 250.30, 250.35, Article 100.

    Example:
    >>> result = generator_schedule(edition="2023", neutral="joined", breaker="yes", conductor="3/0", device="200")
    >>> result.answer.values["sizes"]["equipment-grounding-conductor"], result.answer.values["sizes"]["neutral-bond"]
    ('6-copper', 'none')
    """
    raceways = fields.raceways_of(sets, raceways)
    parts = PartList(trace)
    supply = {"conductor": conductor, "sets": sets, "conductor_metal": conductor_metal, "metal": metal}
    protected, switched = breaker == "yes", neutral == "switched"
    if switched:
        require(electrodes, "electrodes")
        add_own_system(parts, supply, place, raceways, protected)
    else:
        add_joined_neutral(parts, supply, raceways, protected)
    if protected:
        trace.cite("grounding/generator_with_device")
        by_device = by_device_and_conductor(
            require(device, "device"), metal, conductor, minimum_conductor, conductor_metal, sets, trace.edition
        )
        parts.size(
            "equipment-grounding-conductor",
            equipment_grounding_conductor,
            by_device | {"raceways": raceways},
            part=message("Equipment grounding conductor"),
            start=message("Generator: frame and grounding bar"),
            end=message("Transfer switch: grounding bar"),
            why=message(
                "On the load side of the overcurrent device at the generator, that device determines the name and the "
                "size."
            ),
        )
    if switched:
        bonded = message("Point of the system bonding jumper")
        electrodes = known(electrodes)
        add_electrodes(parts, electrodes, bonded, supply | {"place": "separately-derived-system", "ring": ring})
        add_derived_metal(parts, metal_parts, bonded, electrodes.split(","), supply, piping_device)
        ask_for_outdoor_source(parts, GENERATOR)
    elif fields.chosen(metal_parts):
        trace.note(message("The neutral is not switched: the service bonds to piping and steel serve here too."))
    ask_whether_it_is_fixed(parts)
    return parts.answer(message("Generator schedule"), message("for this generator"))
