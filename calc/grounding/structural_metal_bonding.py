"""The bond of a metal building frame: whether it is needed, its size, and where it lands."""

from __future__ import annotations

from typing import Annotated

from calc.conductors.area import area
from calc.conductors.least import refuse_below_service, refuse_below_wiring
from calc.conductors.size import shown_size
from calc.declare import Answer, NotCovered, calculator, needed
from calc.found.verdict import SIZE
from calc.grounding import structural_metal_need as ask
from calc.grounding.aluminum_near_earth import OF_BONDS, warn_of_aluminum_near_earth
from calc.grounding.bond_cap import capped_supply_side_size
from calc.grounding.electrode_conductor_notes import words_of_run
from calc.grounding.structural_metal_landing import note_frame_landing
from calc.margin.declared import Margin
from calc.output import Output
from calc.shared_outputs import reasons, wire
from calc.vocabulary import SETS, conductor_size, metal_of
from calc.words import Sentence, say
from calc.working import Working

CONDUCTOR = conductor_size(
    say("Largest ungrounded (hot) conductor"),
    say("Of the service, of the feeder to the building, or of the source. Needed where a bond is needed."),
)
CONDUCTOR_METAL = metal_of(say("Metal of that conductor"))
METAL = metal_of(say("Metal of the bonding jumper"))


@calculator(
    "structural-metal-bonding",
    name=say("Structural metal bonding"),
    purpose=say("Whether a metal building frame needs a bond, the smallest bonding jumper, and where it may land."),
    submit=say("Size the bond"),
    example={"edition": "2023", "conductor": "500kcmil", "sets": "3"},
    outputs=(
        Output("needed", say("Whether the frame needs a bond"), "yes-no"),
        *wire(say("Smallest bonding jumper of the frame"), when=say("where a bond is needed")),
        reasons(say("Why no bond is needed"), when=say("where none is needed")),
    ),
    site_check=SIZE,
    margin=Margin(("conductor", "sets")),
)
def structural_metal_bonding(
    *,
    working: Working,
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
    """Give whether a metal building frame needs a bond, its smallest size, and where it may land.

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
    why = ask.why_no_bond(supply, frame, exposed, bonded, energized, electrode, working)
    if why:
        return _no_bond(why, supply, energized, working)
    if supply == "common-electrode-conductor":
        section = working.section(ask.OF_COMMON)
        raise NotCovered(
            say(
                "In the area served, the frame has its bond to the common grounding electrode conductor, and then "
                "none to each source ({section}). The edition states no size for that bond.",
                section=section,
            ),
            say(
                "Look under grounding electrode conductor for the common conductor ({section}) and ask the authority.",
                section=working.section("grounding/electrode_conductor_common_to_derived_systems"),
            ),
            "grounding-electrode-conductor",
        )
    needed(conductor, "conductor")
    refuse = refuse_below_service if supply == "service" else refuse_below_wiring
    refuse(conductor, conductor_metal, working)
    if supply == "feeder-or-branch":
        working.step(
            say("The rule names the table, not the conductors. The hot conductors that feed the building count here."),
            cites=(ask.OF_BUILDING,),
        )
    derived = supply == "separately-derived-system"
    cap_rule = "grounding/structural_metal_bond_derived_cap" if derived else "grounding/structural_metal_bond_cap"
    size = capped_supply_side_size(conductor, sets, conductor_metal, metal, working, cap_rule)
    note_frame_landing(supply, working)
    warn_of_aluminum_near_earth(metal, OF_BONDS, working)
    return Answer(
        name=say("Bonding jumper to the building frame"),
        headline=say("{size}", size=shown_size(size)),
        detail=words_of_run(size, metal, working),
        basis="jumpers/supply_side_size",
        said=f"{size}-{metal}",
        values={"needed": True, "size": size, "metal": metal, "area_cmil": area(size, working.edition)},
    )


def _no_bond(why: list[Sentence], supply: str, energized: str, working: Working) -> Answer:
    for reason in why:
        working.step(reason)
    if energized == "no" and supply in ("service", "feeder-or-branch"):
        working.note(
            say("Whether it is likely to become energized is for the authority to judge. Wiring on it speaks for it.")
        )
    working.note(
        say(
            "Only this rule asks for no bond. Equipment on the steel keeps its equipment grounding conductor, and "
            "steel that is a grounding electrode is joined by other rules."
        )
    )
    return Answer(
        name=say("Bonding jumper to the building frame"),
        headline=say("No bond needed"),
        detail=why[0],
        basis=ask.RULE_OF[supply],
        said="no-bond",
        values={"needed": False, "reasons": [str(reason) for reason in why]},
    )
