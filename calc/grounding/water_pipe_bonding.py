"""The bond of metal piping: water piping by what feeds the building, other piping by the circuit likely to reach it."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, Choice, calculator, require
from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import area
from calc.conductors.least import refuse_below_service, refuse_below_wiring
from calc.conductors.size import shown_size
from calc.found.verdict import SIZE
from calc.grounding.aluminum_near_earth import OF_BONDS, warn_of_aluminum_near_earth
from calc.grounding.bond_cap import capped_supply_side_size
from calc.grounding.electrode_conductor_notes import words_of_run
from calc.grounding.pipe_bond_landing import note_landing, note_protection
from calc.grounding.size_by_device import size_by_device
from calc.grounding.size_for_circuit import BREAKS
from calc.jumpers.supply_side_size import CAP, supply_side_size
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import as_entered
from calc.shared_fields import METAL_WORDS, SETS, conductor_size, device_rating, metal_of, one_of
from calc.shared_outputs import wire
from calc.trace import Trace

BUILDING = "grounding/water_pipe_bond_separate_building"
PIPING = one_of(
    message("Piping"),
    message(
        "Choose “one unit” where plastic pipe isolates its metal piping. A feeder may also be a branch circuit. A "
        "separately derived system is a transformer or generator."
    ),
    (
        Choice("water", message("Water: building with a service")),
        Choice("water-isolated-unit", message("Water: one unit, isolated by plastic pipe")),
        Choice("water-separate-building", message("Water: building supplied by a feeder")),
        Choice("water-derived-system", message("Water: area served by a separately derived system")),
        Choice("other-metal", message("Gas or other metal piping")),
    ),
)
CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor"),
    message(
        "Of the service, the separately derived system, or the feeder to the building. Leave it empty for one unit or "
        "for gas."
    ),
)
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
METAL = metal_of(message("Bonding jumper material"))
DEVICE = device_rating(
    message("Upstream breaker or fuse"),
    message(
        "For one unit: the one ahead of its panel. For a building with a feeder: the one for that feeder. For gas: the "
        "one for the circuit likely to energize the piping. Otherwise leave it empty."
    ),
)


@calculator(
    "water-pipe-bonding",
    name=message("Water pipe bonding"),
    purpose=message("Minimum bonding jumper size for water piping or other metal piping, and where it may connect."),
    submit=message("Size the bond"),
    example={"edition": "2023", "conductor": "500kcmil", "sets": "3"},
    outputs=(
        *wire(message("Minimum size of the bonding jumper to the piping")),
        as_entered("piping", PIPING),
    ),
    site_check=SIZE,
    margin=Margin(("conductor", "sets", "device"), breaks={"device": BREAKS}),
)
def water_pipe_bonding(
    *,
    trace: Trace,
    piping: Annotated[str, PIPING] = "water",
    conductor: Annotated[str | None, CONDUCTOR] = None,
    sets: Annotated[int, SETS] = 1,
    conductor_metal: Annotated[str, CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, METAL] = "copper",
    device: Annotated[float | None, DEVICE] = None,
) -> Answer:
    """Return the smallest bonding jumper to metal piping, and where it may land.

    When: metal piping in or on a building, alternating current up to 1000 V. Gas tubing may need a further bond
    under the fuel gas code, which this calculator does not size.

    Parameters:
        piping: "water", "water-isolated-unit", "water-separate-building", "water-derived-system" or "other-metal".
        conductor: size label of the largest ungrounded conductor; needed where the bond goes by conductors.
        sets: conductors in parallel a phase, 1 to 30 (a limit of this calculator, not of the code).
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        device: ampere, 1 to 10,000; needed where the bond goes by the overcurrent device.
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold size, metal, area_cmil, piping.
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: 250.104(A), (B) and (D)(1), Table 250.102(C)(1), 250.102(D), Table 250.122.

    Example:
    >>> result = water_pipe_bonding(edition="2023", conductor="500kcmil", sets=3)
    >>> result.answer.values["size"], result.answer.values["area_cmil"]
    ('3/0', 167800)
    """
    refuse_below_wiring(conductor, conductor_metal, trace)
    by_device = _goes_by_device(piping, trace)
    if by_device:
        size = size_by_device(require(device, "device"), metal, trace)
    else:
        conductor = require(conductor, "conductor")
        supply = (conductor, sets, conductor_metal, metal, trace)
        if piping == "water":
            refuse_below_service(conductor, conductor_metal, trace)
            trace.cite("grounding/water_pipe_bond")
            size = capped_supply_side_size(*supply, "grounding/water_pipe_bond_cap")
        elif piping == "water-derived-system":
            trace.cite("grounding/water_pipe_bond_derived_system")
            size = capped_supply_side_size(*supply, "grounding/water_pipe_bond_derived_cap")
        else:
            size = supply_side_size(*supply, BUILDING if sets == 1 else CAP)
    if piping == "water-separate-building":
        size = _not_larger_than_feeder(size, conductor, sets, conductor_metal, metal, by_device, trace)
    note_landing(piping, trace)
    note_protection(size, piping, trace)
    warn_of_aluminum_near_earth(metal, OF_BONDS, trace)
    return Answer(
        name=message("Bonding jumper to the piping"),
        headline=message("{size}", size=shown_size(size)),
        detail=_detail(size, metal, piping, trace),
        basis="grounding/equipment_grounding_size" if by_device else "jumpers/supply_side_size",
        answer_code=f"{size}-{metal}",
        values={"size": size, "metal": metal, "area_cmil": area(size, trace.edition), "piping": piping},
    )


def _detail(size: str, metal: str, piping: str, trace: Trace) -> Message:
    # Where the circuit's own equipment grounding conductor may be the bond, it runs as that one does.
    if piping == "other-metal":
        return message("{metal} wire or larger", metal=METAL_WORDS[metal])
    return words_of_run(size, metal, trace)


def _goes_by_device(piping: str, trace: Trace) -> bool:
    if piping == "water-isolated-unit":
        trace.cite("grounding/water_pipe_bond_isolated_unit")
    elif piping == "other-metal":
        trace.cite("grounding/other_metal_piping_bond")
    elif piping == "water-separate-building":
        return trace.cite(BUILDING).rows[0]["goes_by"] == "device"
    else:
        return False
    return True


def _not_larger_than_feeder(
    size: str,
    conductor: str | None,
    sets: int,
    conductor_metal: str,
    metal: str,
    by_device: bool,
    trace: Trace,
) -> str:
    # Whether one conductor or the set of a phase is meant is open; for sets the larger size stays.
    if conductor is None or sets > 1 or area(size, trace.edition) <= area(conductor, trace.edition):
        return size
    if TABLE_COLUMN[metal] != "copper" and TABLE_COLUMN[conductor_metal] == "copper":
        trace.warn(
            message(
                "The jumper is not required to be larger than the ungrounded conductors ({section}). Copper and "
                "aluminum of the same size do not have the same conductance, so this answer keeps the larger size.",
                section=trace.section(BUILDING),
            )
        )
        return size
    if by_device:
        # Its own device would not protect a hot conductor so small: a slip or bad work is no reason for a thin bond.
        trace.note(
            message(
                "It is not required to be larger than the hot conductors ({section}). {conductor} is small for this "
                "overcurrent device: check both. This answer keeps {size}.",
                section=trace.section(BUILDING),
                conductor=shown_size(conductor),
                size=shown_size(size),
            )
        )
        return size
    trace.step(
        message(
            "The jumper is not required to be larger than the ungrounded conductor: {size}.",
            size=shown_size(conductor),
        ),
        shown_size(conductor),
        "",
        (BUILDING,),
    )
    return conductor
