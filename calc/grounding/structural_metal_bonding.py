"""The bond of a metal building frame: whether it is needed, its size, and where it lands."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, NotCovered, calculator, require
from calc.conductors.area import area
from calc.conductors.least import refuse_below_service, refuse_below_wiring
from calc.conductors.size import shown_size
from calc.found.verdict import SIZE
from calc.grounding import structural_metal_need as ask
from calc.grounding.aluminum_near_earth import OF_BONDS, warn_of_aluminum_near_earth
from calc.grounding.bond_cap import capped_supply_side_size
from calc.grounding.electrode_conductor_notes import words_of_run
from calc.grounding.structural_metal_landing import note_frame_landing
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import Output
from calc.shared_fields import SETS, conductor_size, metal_of
from calc.shared_outputs import reasons, wire
from calc.trace import Trace

CONDUCTOR = conductor_size(
    message("Largest ungrounded (hot) conductor"),
    message("Of the service, of the feeder to the building, or of the source. Required where a bond is required."),
)
CONDUCTOR_METAL = metal_of(message("Hot conductor material"))
METAL = metal_of(message("Bonding jumper material"))


@calculator(
    "structural-metal-bonding",
    name=message("Structural metal bonding"),
    purpose=message(
        "Whether a metal building frame must be bonded, the minimum bonding jumper size, and where it may connect."
    ),
    submit=message("Size the bond"),
    example={"edition": "2023", "conductor": "500kcmil", "sets": "3"},
    outputs=(
        Output("needed", message("Whether the frame must be bonded"), "yes-no"),
        *wire(message("Minimum size of the bonding jumper to the frame"), when=message("where a bond is required")),
        reasons(message("Why no bond is required"), when=message("where none is required")),
    ),
    site_check=SIZE,
    margin=Margin(("conductor", "sets")),
)
def structural_metal_bonding(
    *,
    trace: Trace,
    supply: Annotated[str, ask.SUPPLY] = "service",
    conductor: Annotated[str | None, CONDUCTOR] = None,
    sets: Annotated[int, SETS] = 1,
    conductor_metal: Annotated[str, CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, METAL] = "copper",
    frame: Annotated[str, ask.FRAME] = "interconnected",
    exposed: Annotated[str, ask.EXPOSED] = "yes",
    energized: Annotated[str, ask.ENERGIZED] = "yes",
    bonded: Annotated[str, ask.BONDED] = "no",
    electrode: Annotated[str, ask.ELECTRODE] = "other",
) -> Answer:
    """Return whether a metal building frame needs a bond, its smallest size, and where it may land.

    When: structural metal of a building, alternating current up to 1000 V. Not for steel as a grounding electrode,
    nor for the bond to a common grounding electrode conductor, whose size the code does not state.

    Parameters:
        supply: "service", "feeder-or-branch", "separately-derived-system" or "common-electrode-conductor".
        conductor: size label of the largest ungrounded conductor; needed where a bond is needed.
        sets: conductors in parallel a phase, 1 to 30 (a limit of this calculator, not of the code).
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        frame: "interconnected" or "not-interconnected". exposed, energized, bonded: "yes" or "no".
        electrode: what grounds a source of its own, such as "structural-metal", "water-pipe" or "other".
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold needed, and reasons or size, metal, area_cmil.
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: 250.104(C), (D)(2) and (D)(3), Table 250.102(C)(1).

    Example:
    >>> result = structural_metal_bonding(edition="2023", conductor="500kcmil", sets=3)
    >>> result.answer.values["size"], result.answer.values["area_cmil"]
    ('3/0', 167800)
    """
    why = ask.why_no_bond(supply, frame, exposed, bonded, energized, electrode, trace)
    if why:
        return _no_bond(why, supply, energized, trace)
    if supply == "common-electrode-conductor":
        section = trace.section(ask.OF_COMMON)
        raise NotCovered(
            message(
                "In the area served, the frame is bonded to the common grounding electrode conductor, and then not to "
                "each source ({section}). The edition states no size for that bond.",
                section=section,
            ),
            message(
                "Look under grounding electrode conductor for the common conductor ({section}) and ask the authority "
                "having jurisdiction.",
                section=trace.section("grounding/electrode_conductor_common_to_derived_systems"),
            ),
            "grounding-electrode-conductor",
        )
    conductor = require(conductor, "conductor")
    refuse = refuse_below_service if supply == "service" else refuse_below_wiring
    refuse(conductor, conductor_metal, trace)
    if supply == "feeder-or-branch":
        trace.step(
            message(
                "The rule names the table, not which conductors to use. Here it is sized from the hot conductors that "
                "feed the building."
            ),
            cites=(ask.OF_BUILDING,),
        )
    derived = supply == "separately-derived-system"
    cap_rule = "grounding/structural_metal_bond_derived_cap" if derived else "grounding/structural_metal_bond_cap"
    size = capped_supply_side_size(conductor, sets, conductor_metal, metal, trace, cap_rule)
    note_frame_landing(supply, trace)
    warn_of_aluminum_near_earth(metal, OF_BONDS, trace)
    return Answer(
        name=message("Bonding jumper to the building frame"),
        headline=message("{size}", size=shown_size(size)),
        detail=words_of_run(size, metal, trace),
        basis="jumpers/supply_side_size",
        answer_code=f"{size}-{metal}",
        values={"needed": True, "size": size, "metal": metal, "area_cmil": area(size, trace.edition)},
    )


def _no_bond(why: list[Message], supply: str, energized: str, trace: Trace) -> Answer:
    for reason in why:
        trace.step(reason)
    if energized == "no" and supply in ("service", "feeder-or-branch"):
        trace.note(
            message(
                "The authority having jurisdiction decides whether it is likely to become energized. Wiring on it "
                "makes that likely."
            )
        )
    trace.note(
        message(
            "Only this rule does not require a bond. Equipment on the steel still needs its equipment grounding "
            "conductor, and other rules connect steel that is a grounding electrode."
        )
    )
    return Answer(
        name=message("Bonding jumper to the building frame"),
        headline=message("No bond required"),
        detail=why[0],
        basis=ask.RULE_OF[supply],
        answer_code="no-bond",
        values={"needed": False, "reasons": [str(reason) for reason in why]},
    )
