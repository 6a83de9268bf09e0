"""Every bonding and grounding part of a transformer that is a source of its own."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, Choice, calculator, require
from calc.found.parts import PARTS
from calc.grounding.electrode_limit import ELECTRODE_CHOICES
from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.grounding.size_for_circuit import BREAKS
from calc.grounding.supply_conductors import shown_set
from calc.margin.declared import Margin
from calc.messages import message
from calc.schedule import fields
from calc.schedule.derived_source import add_derived_source, ask_for_outdoor_source
from calc.schedule.equipment_conductor import INCREASE
from calc.schedule.list_outputs import OUTPUTS
from calc.schedule.metal_parts import add_derived_metal
from calc.schedule.part_list import PartList
from calc.schedule.secondary import (
    KVA,
    SYSTEM,
    secondary_conductor,
    secondary_current,
    warn_of_a_large_device,
)
from calc.schedule.transformer_rows import add_electrode, add_primary, ask_for_conductor
from calc.shared_fields import METAL_WORDS, conductor_size, device_rating, one_of
from calc.trace import Trace

DEVICE = device_rating(
    message("First secondary breaker or fuse"), message("The breaker or fuse where the secondary conductors terminate.")
)
CONDUCTOR = conductor_size(
    message("Secondary ungrounded (hot) conductor"),
    message("Leave it empty for the smallest size with the ampacity of the device at 75 °C."),
)
BOND = one_of(
    message("Location of the system bonding jumper"),
    message("At one of the two, never both."),
    (
        Choice("source", message("At the transformer")),
        Choice("first-disconnect", message("In the first disconnect")),
    ),
)
ELECTRODE = one_of(message("Electrode"), message("Electrode the conductor connects to."), ELECTRODE_CHOICES)
PRIMARY_DEVICE = device_rating(
    message("Primary breaker or fuse"),
    message("Used to size the equipment grounding conductor to the transformer. Leave it empty if a raceway serves."),
)


@calculator(
    "transformer-schedule",
    name=message("Transformer schedule"),
    purpose=message(
        "The bonding and grounding parts of a transformer (separately derived system), sized, and what to check."
    ),
    submit=message("Build the schedule"),
    example={
        "edition": "2023",
        "kva": "75",
        "system": "208Y/120",
        "device": "225",
        "conductor": "4/0",
        "electrode": "structural-metal",
        "metal_parts": "water-pipe,structural-metal",
    },
    outputs=OUTPUTS,
    site_check=PARTS,
    margin=Margin(
        ("conductor", "sets", "device", "primary_device", "piping_device"),
        breaks=dict.fromkeys(("device", "primary_device", "piping_device"), BREAKS),
    ),
)
def transformer_schedule(
    *,
    trace: Trace,
    kva: Annotated[float, KVA],
    system: Annotated[str, SYSTEM] = "208Y/120",
    device: Annotated[float, DEVICE],
    conductor: Annotated[str | None, CONDUCTOR] = None,
    sets: Annotated[int, fields.SETS] = 1,
    conductor_metal: Annotated[str, fields.CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, fields.METAL] = "copper",
    place: Annotated[str, BOND] = "source",
    raceways: Annotated[int | None, fields.RACEWAYS] = None,
    electrode: Annotated[str | None, ELECTRODE] = None,
    metal_parts: Annotated[str | None, fields.METAL_PARTS] = None,
    common_conductor: Annotated[str, fields.COMMON] = "no",
    primary_device: Annotated[float | None, PRIMARY_DEVICE] = None,
    piping_device: Annotated[float | None, fields.PIPING_DEVICE] = None,
    ring: Annotated[str | None, fields.RING] = None,
) -> Answer:
    """Return the bonding and grounding parts of one transformer, primary to first disconnect of the secondary.

    What nothing entered decides is listed as not judged, with the question to answer.

    When: a transformer with a solidly grounded secondary up to 1000 V that is separately derived. Ungrounded and
    impedance-grounded secondaries, over 1000 V and direct current are not covered. Ampacity is the 75 °C column
    before any correction, and only there to size the jumpers.

    Parameters:
        kva: rating, kVA, 0.05 to 10,000; system: secondary voltages and phases.
        device: ampere, 1 to 10,000, the first device on the secondary.
        conductor: size label of the secondary ungrounded conductor; None for the smallest that carries the device.
        sets: conductors in parallel a phase, raceways: in how many raceways or cables, each 1 to 30.
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        place: "source" or "first-disconnect", where the neutral is bonded.
        electrode: as in grounding_electrode_conductor, needed; ring: size label of a ring's conductor.
        common_conductor: "yes" where several sources share one grounding electrode conductor.
        metal_parts: "water-pipe", "structural-metal", "other-metal", with commas; piping_device: ampere, needed for
            "other-metal". primary_device: ampere, where a wire-type equipment grounding conductor comes with it.
        found: on site: "main bonding jumper: 6 copper; ..." by part; the answer then holds a verdict on each.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold parts and sizes (by part), its table one row a part.
    Raises: nothing; bad or missing input ends as `fix`, other systems as `not_covered`.
    Source: the calculators of the parts; 240.21(C), 450.3(B), Table 310.16 (2017: 310.15(B)(16)).

    Example:
    >>> result = transformer_schedule(edition="2023", kva="75", device="225", conductor="4/0", electrode="water-pipe")
    >>> result.answer.values["sizes"]["system-bonding-jumper"]
    '2-copper'
    """
    raceways = fields.raceways_of(sets, raceways)
    current = secondary_current(kva, system, trace)
    warn_of_a_large_device(device, current, trace)
    taken = conductor is None
    conductor = secondary_conductor(conductor, sets, conductor_metal, device, trace)
    electrode = require(electrode, "electrode")
    parts = PartList(trace)
    supply = {"conductor": conductor, "sets": sets, "conductor_metal": conductor_metal, "metal": metal}
    shared = common_conductor == "yes"
    bonded = message("Point of the system bonding jumper")

    add_primary(parts, primary_device, metal)
    add_derived_source(parts, supply, place, raceways, message("Transformer"))
    add_electrode(parts, electrode, supply | {"ring": ring}, shared, bonded)
    add_derived_metal(parts, metal_parts, bonded, [electrode], supply, piping_device, shared=shared)
    parts.size(
        "equipment-grounding-conductor-secondary",
        equipment_grounding_conductor,
        {"device": device, "metal": metal},
        part=message(
            "Equipment grounding conductors downstream of the first disconnect, where this is the upstream device"
        ),
        start=message("First disconnect"),
        end=message("Metal of the equipment it feeds"),
        why=message(
            "On the load side of the first overcurrent device, that device determines the size. It must be increased "
            "where that circuit's hot conductors are upsized ({section}).",
            section=trace.section(INCREASE),
        ),
    )
    ask_for_outdoor_source(parts, message("Transformer"))
    if not taken:
        return parts.answer(message("Transformer schedule"), message("for this transformer"))
    ask_for_conductor(parts, conductor, sets, conductor_metal, device)
    return parts.answer(
        message("Transformer schedule"),
        message(
            "for this transformer with {conductor} {metal} secondary conductors, which were assumed",
            conductor=shown_set(sets, conductor),
            metal=METAL_WORDS[conductor_metal],
        ),
    )

