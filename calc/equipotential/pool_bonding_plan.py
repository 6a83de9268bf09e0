"""What is bonded at a pool, spa or fountain, with what, and what to look at before the pour."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, FieldError, calculator
from calc.equipotential import pool_fields as ask
from calc.equipotential import pool_parts as pool
from calc.equipotential.not_a_pool import OUT_OF_SCOPE
from calc.equipotential.other_waters import FOUNTAIN_GROUNDING, add_fountain, add_tub
from calc.equipotential.plan import ASK, BOND, CHANGE, Plan
from calc.equipotential.plan_outputs import POOL
from calc.equipotential.pool_materials import grid_feet, list_checks, list_materials, ring_feet
from calc.equipotential.pool_perimeter import (
    WAYS,
    WAYS_AMENDED,
    add_surfaces,
    add_ties,
    add_wall,
    allowed_ways,
    spared,
    usable_ways,
)
from calc.known import known
from calc.messages import message
from calc.rulebook import rule
from calc.scope import require_scope
from calc.trace import Trace

NAME = message("Pool bonding plan")
POOL_GROUNDING = "places/pool_equipment_grounding"


@calculator(
    "pool-bonding-plan",
    name=NAME,
    purpose=message("Which parts of a pool must be bonded and which not, and with what wire, before anyone pours."),
    submit=message("Make the plan"),
    example={
        "edition": "2020",
        "kind": "in-ground-conductive",
        "parts": "rebar,metal-light,ladder,pump",
        "surfaces": "paved,unpaved",
        "way": "ring",
        "fence": "4ft",
        "door": "9ft",
        "water_contact": "part",
        "pool_length": "32ft",
        "pool_width": "16ft",
    },
    outputs=POOL,
)
def pool_bonding_plan(
    *,
    trace: Trace,
    kind: Annotated[str, ask.KIND],
    parts: Annotated[str | None, ask.THERE] = None,
    surfaces: Annotated[str | None, ask.SURFACES] = None,
    way: Annotated[str, ask.WAY] = ask.OPEN,
    fence: Annotated[float | None, ask.FENCE_FEET] = None,
    door: Annotated[float | None, ask.DOOR_FEET] = None,
    piping: Annotated[float | None, ask.PIPING_FEET] = None,
    raceway: Annotated[float | None, ask.RACEWAY_FEET] = None,
    other_metal: Annotated[float | None, ask.OTHER_FEET] = None,
    water_contact: Annotated[str, ask.WATER_CONTACT] = ask.BY_NONE,
    pool_length: Annotated[float | None, ask.POOL_LENGTH] = None,
    pool_width: Annotated[float | None, ask.POOL_WIDTH] = None,
    amendment: Annotated[str, ask.AMENDMENT] = "yes",
    barrier: Annotated[str | None, ask.BARRIER] = None,
    other_height: Annotated[float | None, ask.OTHER_HEIGHT] = None,
    height_from: Annotated[str, ask.HEIGHT_FROM] = ask.NOT_GIVEN,
    wall_height: Annotated[float | None, ask.WALL_HEIGHT] = None,
    water_area: Annotated[float | None, ask.WATER_AREA] = None,
    listed_spa: Annotated[str, ask.LISTED_SPA] = "no",
    rim_height: Annotated[float | None, ask.RIM_HEIGHT] = None,
) -> Answer:
    """Return each part of a pool, spa, tub or fountain: bond it or not, why, and the section.

    When: permanent pools, spas and hot tubs, fountains, fixed therapeutic tubs. Not for storable pools, portable
    tubs, whirlpool bathtubs, pool lifts, natural waters or ships. It computes no voltage: see which parts are joined,
    not how well it works.

    Parameters:
        kind: "in-ground-conductive", "in-ground-nonconductive", "above-ground", "storable", "spa-outdoors",
            "spa-indoors", "fountain", "therapeutic-tub", "therapeutic-portable" or "hydromassage".
        parts: what is there, with commas, such as "rebar,metal-light,ladder,pump".
        surfaces: "paved", "unpaved", "off-earth", with commas. way: "open", "steel", "mesh", "grid", "ring".
        fence, door, piping, raceway, other_metal: ft sideways from the inside wall, 0 to 1000; None for none.
        other_height: ft of other_metal; height_from: "water" or "structure", needed where that height spares it.
        barrier: which of them one keeps out of reach.
        wall_height: ft of a permanent wall. water_contact: "part", "surface" or "none". water_area: in² of "surface".
        listed_spa: "yes" or "no"; rim_height: in, needed for a listed spa outdoors.
        pool_length, pool_width: ft, 1 to 1000, both or none. amendment: "yes" or "no", of April 2023.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold decisions (by part), bond and parts (how many) and wire_feet (None
        without length and width), its table one row a part.
    Raises: nothing; bad or missing input ends as `fix`; a storable pool, a portable tub and a whirlpool bathtub as
        `not_covered`.
    Source: 680.26, 680.42(B), 680.43, 680.53 or 680.54, 680.62(B) of the edition; rule planes/wire_allowance.

    Example:
    >>> result = pool_bonding_plan(edition="2020", kind="in-ground-conductive", parts="rebar,pump", fence=5)
    >>> result.answer.values["decisions"]["fence"], result.answer.values["decisions"]["pump"]
    ('bond', 'bond')
    """
    _warn(kind, amendment, trace)
    require_scope(OUT_OF_SCOPE, trace, kind=kind)
    _both_or_none(pool_length, pool_width)
    plan, there, behind = Plan(trace), _listed(parts), _listed(barrier)
    near = {ask.FENCE: fence, ask.DOOR: door, ask.PIPING: piping, ask.RACEWAY: raceway, ask.OTHER_METAL: other_metal}
    near = {key: feet for key, feet in near.items() if feet is not None}
    if kind == ask.FOUNTAIN:
        add_fountain(there, near, behind, plan)
    elif kind in ask.LIKE_A_TUB:
        add_tub(kind, there, listed_spa, near, behind, plan)
    else:
        pool.add_shell(kind, there, plan)
    listed = listed_spa == "yes" and kind in (ask.SPA_OUTDOORS, ask.SPA_INDOORS)
    feet = None
    if kind in (*ask.LIKE_A_POOL, ask.SPA_INDOORS) and not spared(kind, listed_spa, rim_height, plan):
        add_surfaces(surfaces, way, amendment, plan)
        add_wall(wall_height, plan)
        if kind in ask.LIKE_A_POOL:
            add_ties(pool.is_conductive(kind, there), plan)
        if pool_length is not None:
            feet = _wire(way, surfaces, amendment, pool_length, known(pool_width), plan)
    if kind in ask.LIKE_A_POOL:
        left = pool.add_listed_spa(there, plan) if listed else there
        for add in (pool.add_lights, pool.add_fittings, pool.add_equipment):
            add(left, plan)
        pool.add_near_metal(near, other_height, height_from, there, behind, plan)
    if kind in (*ask.LIKE_A_POOL, ask.SPA_INDOORS):
        pool.add_water(water_contact, water_area, pool.LISTED[kind] if listed else None, plan)
    if asked := plan.count(ASK):
        trace.warn(
            message(
                "Not decided here: {asked}. Ask the authority having jurisdiction (AHJ) about these before anyone "
                "pours.",
                asked=asked,
            )
        )
    _note(kind, way, feet, trace)
    return _answer(kind, feet, plan)


def _listed(text: str | None) -> list[str]:
    return text.split(",") if text else []


def _both_or_none(length: float | None, width: float | None) -> None:
    if length is None and width is not None:
        raise FieldError("pool_length")
    if width is None and length is not None:
        raise FieldError("pool_width")


def _wire(way: str, surfaces: str | None, amendment: str, length: float, width: float, plan: Plan) -> float | None:
    """Return the feet of wire around the pool, None where none of its surfaces takes wire in this way."""
    _, ways = allowed_ways(amendment, plan)
    listed = surfaces.split(",") if surfaces else (ask.PAVED, ask.UNPAVED)
    usable = {each for surface in listed for each in usable_ways(surface, ways)}
    if way == ask.GRID and ask.GRID in usable:
        return grid_feet(length, width, plan.trace)
    if way in (ask.RING, ask.OPEN) and ask.RING in usable:
        return ring_feet(length, width, plan.trace)
    return None


def _answer(kind: str, feet: float | None, plan: Plan) -> Answer:
    count, change, parts = plan.count(BOND), plan.count(CHANGE), len(plan.decisions)
    if not parts:
        headline = message("No part was entered")
    elif change:
        headline = message("Bond {count} of {parts} parts, change {change}", count=count, parts=parts, change=change)
    else:
        headline = message("Bond {count} of {parts} parts", count=count, parts=parts)
    if not parts:
        detail = message("enter what is there")
    elif kind == ask.FOUNTAIN:
        detail = message("to the equipment grounding conductor of the fountain's circuit")
    else:
        detail = message(
            "with solid copper, {size} AWG or larger", size=plan.trace.cite("places/pool_bonding_conductor").value
        )
    return Answer(
        name=NAME,
        headline=headline,
        detail=detail,
        basis=None,
        answer_code=plan.answer_code or "none",
        values={"bond": count, "parts": parts, "wire_feet": feet, "decisions": plan.decisions},
        table=plan.table,
    )


def _warn(kind: str, amendment: str, trace: Trace) -> None:
    trace.warn(
        message(
            "If anyone feels a tingle: everyone out without touching metal, and nobody goes back in. Shut the power "
            "off from a dry place, and call the utility: it may come in from outside."
        ),
        grave=True,
    )
    if kind not in (*ask.LIKE_A_POOL, ask.SPA_INDOORS):
        return
    printed, amended = rule(WAYS, trace.edition), rule(WAYS_AMENDED, trace.edition)
    if amendment == "no" and printed.rows != amended.rows:
        trace.warn(
            message(
                "An amendment of April 2023 changed the rule for the surface around the pool. Ask which text is "
                "adopted before you pour."
            )
        )
    elif (amended if amendment == "yes" else printed).mark == "memory":
        trace.warn(
            message(
                "The surface around the pool: we have not seen the text. Read the one adopted where you work before "
                "you pour."
            )
        )


def _note(kind: str, way: str, feet: float | None, trace: Trace) -> None:
    trace.note(
        message(
            "Bonding keeps parts near one voltage. It opens no breaker: motors and lights also need their equipment "
            "grounding conductor ({section}).",
            section=trace.section(FOUNTAIN_GROUNDING if kind == ask.FOUNTAIN else POOL_GROUNDING),
        ),
        grave=True,
    )
    trace.note(message("Never connect the neutral to any of this."), grave=True)
    if kind == ask.FOUNTAIN:
        trace.note(
            message(
                "Does it share water with a pool, or do people walk in it? Then make a pool plan too ({section}).",
                section=trace.section("planes/fountain_as_pool"),
            )
        )
        return
    if kind == ask.THERAPEUTIC_TUB:
        trace.note(
            message(
                "A permanent therapeutic pool follows the pool rules ({section}). Choose it by its shell.",
                section=trace.section("planes/therapeutic_pool"),
            )
        )
    if kind in ask.LIKE_A_TUB:
        trace.note(message("Threaded metal piping or a common metal frame may serve as the bond."))
    list_materials(way, feet, trace)
    list_checks(trace)
