"""May this metal raceway or cable be the equipment grounding conductor, and if not, which wire does it need?"""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.found.verdict import SIZE
from calc.grounding.parallel_runs import size_in_tray
from calc.grounding.size_by_device import size_by_device
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import Output
from calc.raceways import path_fields as ask
from calc.raceways.flexible_path import NOT_GIVEN, device_and_size, length_in_path, movement_and_core, small_piece
from calc.raceways.kind import CABLES, FLEXIBLE, KIND_WORDS, NOT_LISTED, RACEWAY, named_in
from calc.raceways.listed import listing
from calc.raceways.path_notes import conditions_of_path, notes_on_metal, notes_on_path, notes_on_wire
from calc.raceways.tray_path import tray
from calc.scope import OutOfScope, SectionOf, require_scope
from calc.shared_fields import METAL_WORDS, metal_of
from calc.shared_outputs import reasons, wire
from calc.trace import Trace

METAL = metal_of(message("Wire or jumper material"))

OUT_OF_SCOPE = (
    OutOfScope(
        "side",
        "supply-side",
        message("Ahead of the first overcurrent device, this is not an equipment grounding conductor."),
        message(
            "Look under supply-side bonding jumper ({section}). A separately derived system may use a nonflexible "
            "metal raceway ({raceway}); a flexible one requires a wire.",
            section=SectionOf("naming/supply_side_bonding_jumper"),
            raceway=SectionOf("raceways/supply_side_raceway"),
        ),
        ("supply-side-bonding-jumper",),
    ),
    OutOfScope(
        "location",
        "hazardous",
        message("A hazardous location has additional requirements for every raceway and fitting."),
        message(
            "Look under bonding in hazardous locations ({section}) and the article of the class.",
            section=SectionOf("raceways/hazardous_location"),
        ),
    ),
    OutOfScope(
        "location",
        "patient-care",
        message(
            "A patient care space requires both a metal raceway that qualifies as a fault path and an insulated "
            "copper wire."
        ),
        message("Look under patient care spaces ({section}).", section=SectionOf("raceways/patient_care_space")),
    ),
)


@calculator(
    "raceway-as-grounding-path",
    name=message("Raceway as grounding path"),
    purpose=message(
        "Whether a raceway or cable may serve as the equipment grounding conductor, and the wire size if it may not."
    ),
    submit=message("Check the raceway"),
    example={
        "edition": "2023",
        "raceway": "flexible-metal-conduit",
        "device": "30A",
        "trade_size": "1/2",
        "length": "4ft",
    },
    outputs=(
        Output("may", message("Whether the raceway may serve as the equipment grounding conductor"), "yes-no"),
        reasons(message("Why it may not")),
        *wire(
            message("Minimum size of the equipment grounding conductor required instead"),
            when=message("where it may not serve"),
        ),
    ),
    site_check=SIZE,
    margin=Margin(("device", "length")),
)
def raceway_as_grounding_path(
    *,
    trace: Trace,
    raceway: Annotated[str, RACEWAY],
    device: Annotated[float, ask.DEVICE],
    trade_size: Annotated[str, ask.TRADE_SIZE] = NOT_GIVEN,
    length: Annotated[float | None, ask.LENGTH] = None,
    flexibility: Annotated[str, ask.FLEXIBILITY] = "not-needed",
    fittings: Annotated[str, ask.FITTINGS] = "listed",
    metal: Annotated[str, METAL] = "copper",
    listed: Annotated[str | None, ask.LISTED] = None,
    small_flexible: Annotated[str, ask.SMALL_FLEXIBLE] = "no",
    stainless: Annotated[str, ask.STAINLESS] = "no",
    tray_metal: Annotated[str, ask.TRAY_METAL] = "steel",
    tray_area: Annotated[float | None, ask.TRAY_AREA] = None,
    qualified: Annotated[str, ask.QUALIFIED] = "no",
    side: Annotated[str, ask.SIDE] = "load-side",
    location: Annotated[str, ask.LOCATION] = "ordinary",
) -> Answer:
    """Tell whether a raceway or cable may be the equipment grounding conductor; every condition must hold.

    When: raceways and cables behind an overcurrent device, up to 1000 V. Not ahead of the first
    device, not in hazardous locations or patient care spaces: those end as not covered.

    Parameters:
        raceway: a kind, such as "flexible-metal-conduit". device: rating ahead, 1 to 10,000 A.
        trade_size: "3/8" to "6", length: all flexible pieces in the path, ft; needed for flexible conduit.
        flexibility: "not-needed" or "needed" after installation. fittings: "listed" or "not-listed".
        listed: "yes" or "no"; needed for metal-clad cable, else taken as "yes".
        small_flexible, stainless, qualified: "yes" or "no".
        tray_metal: "steel" or "aluminum". tray_area: in², needed for a tray.
        metal: of the wire that is needed if it fails.
        side: "load-side" or "supply-side". location: "ordinary", "hazardous" or "patient-care".
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.

    Returns: a Result; `values` hold may, reasons and, where it fails, size, metal, area_cmil.
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: 250.118, 250.102(E)(2), 250.120(A), 332.108, 392.60, Table 250.122.

    Example:
    >>> result = raceway_as_grounding_path(
    ...     edition="2023", raceway="flexible-metal-conduit", device="30A", trade_size="1/2", length="4ft")
    >>> result.answer_code, result.answer.values["size"]
    ('may-not', '10')
    """
    require_scope(OUT_OF_SCOPE, trace, side=side, location=location)
    basis = named_in(raceway)
    trace.step(
        message(
            "{kind}: checked against the list of permitted equipment grounding conductors.",
            kind=KIND_WORDS[raceway],
        ),
        cites=(basis,),
    )
    against: list[Message] = []
    if raceway == "nonmetallic-raceway":
        against.append(message("It is not metal. A wire must be the ground-fault return path."))
    elif raceway == "mineral-insulated-steel":
        section = trace.section("raceways/mineral_insulated_sheath")
        against.append(message("The sheath is steel ({section}).", section=section))
    elif raceway in FLEXIBLE:
        against += device_and_size(raceway, trade_size, device, trace)
        against += length_in_path(length, trace)
        against += small_piece(raceway, trade_size, small_flexible, trace)
        against += movement_and_core(raceway, flexibility, stainless, trace)
    elif raceway == "cable-tray":
        against += tray(tray_metal, tray_area, device, qualified, trace)
    if fittings == "not-listed" and raceway != "nonmetallic-raceway":
        section = trace.section("raceways/fittings_and_joints")
        against.append(message("Fittings are not listed, or are loose or missing ({section}).", section=section))
    if raceway in NOT_LISTED:
        against += listing(raceway, listed)
    for reason in against:
        trace.step(message("Fails: {reason}", reason=reason))
    notes_on_metal(raceway, trace)
    name = message("Raceway as grounding path")
    if not against:
        notes_on_path(raceway, listed, trace)
        detail = message(
            "{kind} may serve as the equipment grounding conductor here: {conditions}.",
            kind=KIND_WORDS[raceway],
            conditions=conditions_of_path(raceway),
        )
        return Answer(name, message("Yes"), detail, basis, "may", {"may": True, "reasons": []})
    size = size_by_device(device, metal, trace)
    in_cable = size
    if raceway == "cable-tray":
        size = size_in_tray(size, trace)
    notes_on_wire(raceway, flexibility, trace)
    values = {
        "may": False,
        "reasons": [str(reason) for reason in against],
        "size": size,
        "metal": metal,
        "area_cmil": area(size, trace.edition),
    }
    words = {"size": shown_size(size), "metal": METAL_WORDS[metal], "reasons": _joined(against)}
    if size != in_cable:
        detail = message(
            "Wire required: {size} {metal} as a single conductor in the tray, {in_cable} in a multiconductor cable. "
            "{reasons}",
            in_cable=shown_size(in_cable),
            **words,
        )
    elif raceway in CABLES:
        detail = message("Use a cable with an equipment grounding conductor in it: {size} {metal}. {reasons}", **words)
    else:
        detail = message("Wire required: {size} {metal}. {reasons}", **words)
    return Answer(name, message("No"), detail, basis, "may-not", values)


def _joined(sentences: list[Message]) -> Message:
    first, *rest = sentences
    return message("{first} {rest}", first=first, rest=_joined(rest)) if rest else first


