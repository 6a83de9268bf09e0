"""Every bonding and grounding part of a building that a feeder or branch circuit supplies."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, Choice, calculator, require
from calc.data_file import Data
from calc.found.parts import PARTS
from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.grounding.size_for_circuit import BREAKS
from calc.jumpers.supply_side_size import PARALLEL
from calc.margin.declared import Margin
from calc.messages import message
from calc.schedule import fields
from calc.schedule.derived_source import ask_for_feeder_neutral
from calc.schedule.electrodes import add_electrodes
from calc.schedule.equipment_conductor import by_device_and_conductor
from calc.schedule.list_outputs import OUTPUTS
from calc.schedule.metal_parts import OF_FED_BUILDING, add_metal_parts, ask_for_building_systems
from calc.schedule.part_list import PartList
from calc.shared_fields import conductor_size, device_rating, one_of, yes_or_no
from calc.trace import Trace

SUPPLY = one_of(
    message("Supply to the building"),
    message("A feeder ends in a panel there. A multiwire branch circuit counts as one circuit."),
    (
        Choice("feeder", message("Feeder, or more than one branch circuit")),
        Choice("single-branch-circuit", message("One branch circuit")),
    ),
)
WIRES = one_of(
    message("Equipment grounding conductor with that supply"),
    message(
        "The wire or metal raceway that grounds equipment. Only an existing supply permitted by an older edition may "
        "lack it."
    ),
    (
        Choice("with-equipment-conductor", message("Installed or to be installed")),
        Choice("existing-without", message("Existing supply without one")),
    ),
)
DEVICE = device_rating(message("Upstream breaker or fuse"), message("In the building supplying this one."))
CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor of that supply"), message("For example 2 or 3/0.")
)
METAL_PATH = yes_or_no(
    message("Metal path between the two buildings"),
    message(
        "Water pipe, raceway, cable shield, fence: anything continuous bonded at both. Required for existing supplies."
    ),
)
GROUND_FAULT_PROTECTION = yes_or_no(
    message("Upstream ground-fault protection of equipment"), message(
        "At the service or on the feeder. Required for existing supplies."
    )
)


@calculator(
    "separate-building-schedule",
    name=message("Separate building schedule"),
    purpose=message(
        "The bonding and grounding parts of a building supplied from another building, sized, and what to check."
    ),
    submit=message("Build the schedule"),
    example={
        "edition": "2023",
        "device": "100",
        "conductor": "3",
        "electrodes": "rod",
        "metal_parts": "water-pipe",
    },
    outputs=OUTPUTS,
    site_check=PARTS,
    margin=Margin(
        ("conductor", "sets", "device", "piping_device"), breaks=dict.fromkeys(("device", "piping_device"), BREAKS)
    ),
)
def separate_building_schedule(
    *,
    trace: Trace,
    device: Annotated[float, DEVICE],
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, fields.SETS] = 1,
    conductor_metal: Annotated[str, fields.CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, fields.METAL] = "copper",
    raceways: Annotated[int | None, fields.RACEWAYS] = None,
    supply: Annotated[str, SUPPLY] = "feeder",
    wires: Annotated[str, WIRES] = "with-equipment-conductor",
    electrodes: Annotated[str | None, fields.ELECTRODES] = None,
    metal_parts: Annotated[str | None, fields.METAL_PARTS] = None,
    metal_path: Annotated[str | None, METAL_PATH] = None,
    ground_fault_protection: Annotated[str | None, GROUND_FAULT_PROTECTION] = None,
    piping_device: Annotated[float | None, fields.PIPING_DEVICE] = None,
    ring: Annotated[str | None, fields.RING] = None,
    minimum_conductor: Annotated[str | None, fields.MINIMUM] = None,
) -> Answer:
    """Return the bonding and grounding parts of a building fed by a feeder or branch circuit.

    What nothing entered decides is listed as not judged, with the question to answer.

    When: alternating current up to 1000 V, a grounded system, no service and no source of its own at the building.

    Parameters:
        device: ampere, 1 to 10,000, ahead of the supply. conductor: size label of its largest ungrounded conductor.
        sets: conductors in parallel a phase, raceways: in how many raceways or cables, each 1 to 30.
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        supply: "feeder" or "single-branch-circuit". wires: "with-equipment-conductor" or "existing-without".
        electrodes: as in service_schedule; needed but for one branch circuit with an equipment grounding conductor.
        metal_parts: as in service_schedule; piping_device: ampere, needed for "other-metal".
        metal_path, ground_fault_protection: "yes" or "no", needed for an old supply; either forbids its neutral bond.
        minimum_conductor: size label that would do, needed where the one that runs is larger than the device asks for.
        ring: size label of the ring's copper conductor, needed for a ring.
        found: on site: "main bonding jumper: 6 copper; ..." by part; the answer then holds a verdict on each.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold parts and sizes (by part), its table one row a part.
    Raises: nothing; bad or missing input ends as `fix`.
    Source: the calculators of the parts; 250.32.

    Example:
    >>> result = separate_building_schedule(edition="2023", device="100", conductor="3", electrodes="rod")
    >>> result.answer.values["sizes"]["equipment-grounding-conductor"]
    '8-copper'
    """
    raceways = fields.raceways_of(sets, raceways)
    parts = PartList(trace)
    feeding = {"conductor": conductor, "sets": sets, "conductor_metal": conductor_metal, "metal": metal}
    old_supply = wires == "existing-without"
    old_way = old_supply and not _forbids_the_old_way(metal_path, ground_fault_protection)
    own_metal = conductor_metal if old_way else metal
    by_device = by_device_and_conductor(
        device, own_metal, conductor, minimum_conductor, conductor_metal, sets, trace.edition
    )
    if old_supply and not old_way:
        trace.warn(
            message(
                "The exception for existing supplies does not apply here: there is a metal path between the buildings, "
                "or ground-fault protection upstream ({section}). Run an equipment grounding conductor and separate "
                "the neutral from metal.",
                section=trace.section("grounding/separate_building_existing_feeder"),
            )
        )
    if old_way:
        _add_old_way(parts, by_device | {"raceways": raceways})
    else:
        _add_equipment_conductor(parts, by_device | {"raceways": raceways})
        if supply == "feeder":
            ask_for_feeder_neutral(parts, message("Supplying building"), message("This building"))
    spared = supply == "single-branch-circuit" and not old_way
    if spared:
        trace.note(
            message(
                "One branch circuit with an equipment grounding conductor: no grounding electrode is required here "
                "({section}).",
                section=trace.section("grounding/separate_building_single_branch_circuit"),
            )
        )
    if fields.chosen(electrodes) or not spared:
        trace.cite("grounding/separate_building_electrodes")
        add_electrodes(
            parts,
            require(electrodes, "electrodes"),
            message("Grounding bar of the building's disconnect"),
            feeding | {"place": "separate-building", "ring": ring},
        )
    add_metal_parts(
        parts,
        metal_parts,
        message("Grounding bar or enclosure of the building's disconnect"),
        "water-separate-building",
        {"supply": "feeder-or-branch"},
        feeding,
        device,
        piping_device,
        OF_FED_BUILDING,
    )
    ask_for_building_systems(parts, message("Enclosure of the building's disconnect"))
    return parts.answer(message("Separate building schedule"), message("for this building"))


def _forbids_the_old_way(metal_path: str | None, ground_fault_protection: str | None) -> bool:
    """Tell whether an old supply must lose its neutral bond. Raises: FieldError for what only the reader can see."""
    if require(metal_path, "metal_path") == "yes":
        return True
    return require(ground_fault_protection, "ground_fault_protection") == "yes"


def _add_equipment_conductor(parts: PartList, inputs: Data) -> None:
    parts.size(
        "equipment-grounding-conductor",
        equipment_grounding_conductor,
        inputs,
        part=message("Equipment grounding conductor"),
        start=message("Grounding bar of the supplying building"),
        end=message("Grounding bar of this building's disconnect"),
        why=message("Carries fault current back and opens the overcurrent device there."),
    )
    parts.never(
        "neutral-bond",
        "naming/separate_building",
        part=message("Neutral-to-ground bond in this building"),
        start=message("Neutral bar"),
        end=message("Enclosure or grounding bar"),
        why=message("Neutral current would flow on the equipment grounding conductor and all metal between."),
    )


def _add_old_way(parts: PartList, inputs: Data) -> None:
    parts.trace.cite("grounding/separate_building_existing_neutral")
    parts.size(
        "grounded-conductor",
        equipment_grounding_conductor,
        inputs,
        part=message("Grounded conductor (neutral) of the existing supply, at least"),
        start=message("Neutral bar of the supplying building"),
        end=message("Neutral bar of this building's disconnect, bonded to its metal"),
        why=message(
            "It carries fault current back, so it must be no smaller than the equipment grounding conductor it "
            "replaces, or than its load requires."
        ),
        shown=lambda answer: message(
            "{size}; in parallel {least} AWG or larger",
            size=answer.in_one_line,
            least=parts.trace.cite(PARALLEL).value,
        )
        if inputs["sets"] > 1
        else answer.in_one_line,
    )
    parts.trace.warn(
        message(
            "Only an existing supply may stay this way, with no metal path between the buildings and no ground-fault "
            "protection upstream ({section}). A new one requires an equipment grounding conductor.",
            section=parts.trace.section("grounding/separate_building_existing_feeder"),
        )
    )
