"""The bonding and grounding parts of a service."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, Choice, FieldError, calculator, require
from calc.found.parts import PARTS
from calc.grounding.grounded_conductor_place import SYSTEM_GROUNDING
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.grounding.size_for_circuit import BREAKS
from calc.grounding.supply_conductors import other_conductors, sets_of
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.rulebook import every_edition
from calc.schedule import fields
from calc.schedule.electrodes import add_electrodes
from calc.schedule.list_outputs import OUTPUTS
from calc.schedule.metal_parts import OF_BUILDING, add_metal_parts, ask_for_building_systems
from calc.schedule.part_list import PartList
from calc.schedule.service_disconnects import CORNER, add_disconnect, add_disconnects, add_supply_side, for_calculator
from calc.shared_fields import conductor_size, one_of
from calc.trace import Trace

MAX_DISCONNECTS = max(stated.value for stated in every_edition("services/disconnects_maximum"))

CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) service conductor"),
    message("The one that feeds the disconnect, or the wireway ahead of several, for example 3/0 or 500 kcmil."),
)
DISCONNECTS = other_conductors(
    message("Conductors to each disconnect, if there are several"),
    message("One entry for each enclosure. Leave it empty for a single disconnect."),
    MAX_DISCONNECTS,
)
DISCONNECT_RACEWAYS = one_of(
    message("Raceways for sets in parallel to one disconnect"),
    message(
        "Required where one of several disconnects has sets in parallel. Each raceway has its own grounded conductor."
    ),
    (
        Choice("one", message("All in one raceway or nipple")),
        Choice("each", message("Each set in its own raceway or cable")),
    ),
    rare=True,
)

@calculator(
    "service-schedule",
    name=message("Service schedule"),
    purpose=message("The bonding and grounding parts of a service, sized and placed, and what is left to check."),
    submit=message("Build the schedule"),
    example={
        "edition": "2023",
        "conductor": "500kcmil",
        "sets": "2",
        "raceways": "2",
        "electrodes": "water-pipe,concrete-encased,rod",
        "metal_parts": "water-pipe,structural-metal",
    },
    outputs=OUTPUTS,
    site_check=PARTS,
    margin=Margin(("conductor", "sets", "piping_device"), breaks={"piping_device": BREAKS}),
)
def service_schedule(
    *,
    trace: Trace,
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, fields.SETS] = 1,
    conductor_metal: Annotated[str, fields.CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, fields.METAL] = "copper",
    raceways: Annotated[int | None, fields.RACEWAYS] = None,
    raceway: Annotated[str, fields.RACEWAY] = "metal",
    electrodes: Annotated[str | None, fields.ELECTRODES] = None,
    metal_parts: Annotated[str | None, fields.METAL_PARTS] = None,
    disconnects: Annotated[str | None, DISCONNECTS] = None,
    piping_device: Annotated[float | None, fields.PIPING_DEVICE] = None,
    ring: Annotated[str | None, fields.RING] = None,
    system_grounding: Annotated[str, SYSTEM_GROUNDING] = "solidly-grounded",
    disconnect_raceways: Annotated[str | None, DISCONNECT_RACEWAYS] = None,
) -> Answer:
    """Return the bonding and grounding parts of a service: part, size, from, to, why, section.

    When: a service up to 1000 V, one to six disconnect enclosures. Voltage, phases and load are not asked: the
    conductors entered carry them. Each part is sized by its own calculator; a case that one does not cover is
    listed as not covered, what nothing entered decides as not judged.

    Parameters:
        conductor: size label of the largest ungrounded conductor ahead of the disconnects, "18" to "2000kcmil".
        sets: conductors in parallel a phase, 1 to 30; raceways: in how many raceways or cables, 1 to 30.
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        raceway: "metal" or "nonmetallic".
        electrodes: those present, with commas: "water-pipe", "structural-metal", "concrete-encased", "ring", "rod",
            "pipe", "plate", "other". ring: size label of the ring's copper conductor, needed for a ring.
        metal_parts: "water-pipe", "structural-metal", "other-metal", with commas; piping_device: ampere, 1 to
            10,000, needed for "other-metal".
        disconnects: conductors to each of several enclosures, "3/0,2x250kcmil"; None for a single one.
        disconnect_raceways: "one" or "each", needed where one of several disconnects has parallel sets.
        system_grounding: "solidly-grounded", "corner-grounded", "ungrounded" or "impedance-grounded".
        found: on site: "main bonding jumper: 6 copper; ..." by part; the answer then holds a verdict on each.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold parts and sizes (by part), its table one row a part.
    Raises: nothing; bad or missing input ends as `fix`.
    Source: the calculators of the parts; 250.50, 250.53.

    Example:
    >>> result = service_schedule(edition="2023", conductor="500kcmil", sets=2, raceways=2, electrodes="rod")
    >>> result.answer.values["sizes"]["main-bonding-jumper"]
    '2/0-copper'
    """
    electrodes = require(electrodes, "electrodes")
    raceways = fields.raceways_of(sets, raceways)
    parts = PartList(trace)
    fed_by = {"conductor": conductor, "sets": sets, "conductor_metal": conductor_metal, "metal": metal}
    supply = fed_by | {"raceways": raceways, "system_grounding": system_grounding}
    served = sets_of(disconnects)
    if len(served) == 1:
        raise FieldError(
            "disconnects", message(
                "Enter the conductors to two or more disconnects. Leave it empty for a single disconnect."
            )
        )
    bar = message("grounded phase bar") if system_grounding == CORNER else message("neutral bar")
    enclosure = message("Service enclosure or {bar}, or a grounding electrode conductor that is large enough", bar=bar)
    if system_grounding == "ungrounded":
        enclosure = message("Service enclosure, or a grounding electrode conductor that is large enough")

    add_supply_side(parts, supply, raceway, bool(served))
    if served:
        add_disconnects(parts, served, supply, disconnect_raceways, bar)
    else:
        add_disconnect(parts, supply, bar)
    _note_the_grounding(system_grounding, trace)
    first, *others = served or [(sets, conductor)]
    add_electrodes(
        parts,
        electrodes,
        _electrode_conductor_start(bool(served), system_grounding),
        for_calculator(grounding_electrode_conductor, supply)
        | {
            "conductor": first[1],
            "sets": first[0],
            "ring": ring,
            "other_conductors": ",".join(f"{count}x{size}" if count > 1 else size for count, size in others) or None,
        },
        "disconnects" if served else "conductor",
    )
    add_metal_parts(
        parts,
        metal_parts,
        enclosure,
        "water",
        {"supply": "service"},
        fed_by,
        None,
        piping_device,
        OF_BUILDING,
    )
    ask_for_building_systems(parts, message("Service enclosure, meter enclosure or grounding electrode conductor"))
    return parts.answer(message("Service schedule"), message("for this service"))


def _note_the_grounding(system_grounding: str, trace: Trace) -> None:
    """Name what a grounded conductor is taken for: a neutral, which a corner-grounded delta has not."""
    if system_grounding == "solidly-grounded":
        trace.note(
            message(
                "Assumed here: a system with a grounded neutral. In a corner-grounded delta, the grounded phase is as "
                "large as a hot conductor ({section}): choose it under how the system is grounded.",
                section=trace.section("grounding/grounded_conductor_of_delta"),
            )
        )


def _electrode_conductor_start(several: bool, system_grounding: str) -> Message:
    if several:
        return message("Taps from each disconnect to one common conductor")
    if system_grounding == "ungrounded":
        return message("Metal enclosure of the service conductors, up to and in the disconnect")
    if system_grounding == "impedance-grounded":
        return message("Grounded side of the impedance")
    if system_grounding == CORNER:
        return message("Grounded phase in the service disconnect, or another point ahead of it")
    return message("Neutral bar of the service disconnect, or another point of the neutral ahead of it")
