"""What voltage a bonded pool leaves between hand and deck, and between two feet, at a rise of its metal."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Annotated

from calc.answer import Answer
from calc.calculator import NotCovered, calculator
from calc.electrodes.entered import number_for_code
from calc.messages import message
from calc.touch.deck import deck_fields as ask
from calc.touch.deck.deck import DECK_WIDTH, FINENESS, LIMITS, Deck, Metal, compared_metals
from calc.touch.deck.deck_comparison import compared_in_parts
from calc.touch.deck.deck_notes import note_of_one_wire, note_the_model, warn_of_steps, warn_of_water
from calc.touch.deck.deck_outputs import OUTPUTS
from calc.touch.deck.deck_profile import CORNER, SIDE, Profile, profile_of
from calc.touch.deck.deck_shown import (
    LOOKED_AT,
    record_steps,
    record_touch,
    touch_chart,
)
from calc.touch.deck.deck_words import detail_of, headline_of, note_people_and_place, step_current
from calc.touch.shock.people import WET, people_at, people_values, record_people
from calc.trace import Trace, shown_number

NAME = message("Voltage on a pool deck")


@calculator(
    "deck-voltage",
    name=NAME,
    purpose=message(
        "Touch and step voltage on a pool deck when the bonded metal rises: with nothing in the deck, one wire, a "
        "grid or a mesh."
    ),
    submit=message("Compare the decks"),
    example={
        "edition": "2023",
        "arrangement": "ring",
        "rise": "120V",
        "pool_length": "32ft",
        "pool_width": "16ft",
        "distance": "3ft",
        "ring_distance": "18in",
    },
    outputs=OUTPUTS,
)
def deck_voltage(
    *,
    trace: Trace,
    arrangement: Annotated[str, ask.ARRANGEMENT] = "ring",
    rise: Annotated[float, ask.RISE],
    pool_length: Annotated[float, ask.POOL_LENGTH] = 32,
    pool_width: Annotated[float, ask.POOL_WIDTH] = 16,
    distance: Annotated[float, ask.DISTANCE] = 3,
    ring_distance: Annotated[float, ask.RING_DISTANCE] = 18,
    depth: Annotated[float | None, ask.DEPTH] = None,
    mesh_width: Annotated[float, ask.MESH_WIDTH] = 3,
    spacing: Annotated[float | None, ask.SPACING] = None,
    conductor: Annotated[str | None, ask.CONDUCTOR] = None,
    step: Annotated[str, ask.STEP] = "3ft",
    form: Annotated[str, ask.FORM] = "rectangle",
    shell: Annotated[str, ask.SHELL_TOO] = "no",
    shell_depth: Annotated[float, ask.SHELL_DEPTH] = 4,
    detail: Annotated[str, ask.DETAIL] = "quick",
) -> Iterator[Answer]:
    """Return touch and step voltages on the deck of a rectangular pool whose bonded metal stands at a voltage.

    When: an in-ground pool in even soil, all its metal joined. Not for choosing what bonds a deck, for round or bent
    pools, or for what a slab and an insulating shell change.

    Parameters:
        arrangement: "shell" (nothing in the deck), "ring", "grid" (copper) or "mesh" (steel).
        rise: V of the bonded metal to remote earth, 0.1 to 1000.
        pool_length, pool_width: ft, 6 to 200. distance: ft from the wall, 0 to 20.
        ring_distance: inches from the inside wall, 0 to 120. depth: inches of the metal chosen, 0 to 48.
        mesh_width: ft from the wall, 0.25 to 40. spacing: inches, 2 to 18.
        conductor: size label of the copper chosen. step: "2ft" or "3ft", the longest. form: "rectangle" or "other".
        shell: "yes" counts the shell beside the deck's metal. shell_depth: ft, 0.5 to 20. detail: "quick" or "fine".
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold touch_volt and touch_percent (highest within 3 ft, or as far as the
        mesh, square corners too), touch_volt_most (of that and volt_at_distance the higher, with how far the solution
        may be off), worst_ft, worst_line ("side" or "corner"), volt_at_distance, at_ft with side_volts and
        corner_volts, step_inside_volt, step_across_volt, step_raised (against nothing in the deck),
        step_milliampere_most (through wet legs), compared (the same of every arrangement) and milliampere_wet_few to
        milliampere_shod_most, of few people and of the most at touch_volt_most.
    Raises: nothing; bad input ends as `fix`, other forms and metal past the solution's limits as `not_covered`.
    Source: method of moments for thin wires in a half space; 680.26(B)(2).

    Example:
    >>> result = deck_voltage(arrangement="ring", rise=120, ring_distance=24, depth=6)
    >>> round(result.answer.values["side_volts"][2] / 120, 2)
    0.35
    """
    if form != "rectangle":
        raise NotCovered(
            message("Only a rectangular pool is solved here."),
            message("Have it solved with field-analysis software or measured on site by a qualified person."),
        )
    strip = max(mesh_width, trace.cite(DECK_WIDTH).value)
    deck = Deck(
        min(pool_length, pool_width) / 2,
        max(pool_length, pool_width) / 2,
        mesh_width,
        strip,
        ring_distance,
        depth,
        spacing,
        conductor,
        shell_depth,
        shell == "yes",
        FINENESS[detail],
    )
    warn_of_water(trace)
    metals = compared_metals(deck, arrangement, trace)

    def profile_of_metal(metal: Metal) -> Profile:
        return profile_of(metal.bundles, deck, ask.STEPS[step], distance)

    profile, bare = profile_of_metal(metals[arrangement]), profile_of_metal(metals[ask.SHELL])
    part, line, away = profile.worst
    record_touch(metals[arrangement], profile, rise, trace)
    touch = trace.compute(
        message("Highest within {width} ft of the wall and at the tips of its corners.", width=shown_number(strip)),
        "rise * part",
        "V",
        cites=(DECK_WIDTH,),
        rise=rise,
        part=part,
    )
    there = trace.compute(
        message("At {ft} ft from the wall, side or corner, whichever is more.", ft=shown_number(distance)),
        "rise * part",
        "V",
        rise=rise,
        part=max(profile.at.values()),
    )
    record_steps(profile, rise, trace)
    off = metals[arrangement].off
    most = trace.compute(
        message("The higher of the two, plus what the solution may be off, at most."),
        "higher + off * rise / 100",
        "V",
        (LIMITS,),
        higher=max(touch, there),
        off=off,
        rise=rise,
    )
    most = min(rise, most)
    people = people_at(most, trace)
    record_people(people, trace)
    step_most = step_current(profile, off, rise, trace)
    note_people_and_place(people, metals[arrangement], profile, trace)
    raised = warn_of_steps(arrangement, profile, bare, off, rise, trace)
    note_of_one_wire(arrangement, ring_distance, trace)
    note_the_model(arrangement, shell == "yes", off, rise, trace)
    solved = {arrangement: profile, ask.SHELL: bare}
    answer = Answer(
        name=NAME,
        headline=headline_of(most, deck, distance, there > touch),
        detail=detail_of(people[WET].most, step_most, metals[arrangement], rise, trace),
        basis=LIMITS,
        answer_code=f"{number_for_code(touch)}-volt",
        values={
            "touch_volt": touch,
            "touch_volt_most": most,
            "touch_percent": 100 * part,
            "worst_ft": away,
            "worst_line": line,
            "volt_at_distance": there,
            "at_ft": LOOKED_AT,
            "side_volts": [rise * profile.touch(SIDE, ft) for ft in LOOKED_AT],
            "corner_volts": [rise * profile.touch(CORNER, ft) for ft in LOOKED_AT],
            "step_inside_volt": rise * profile.inside.part,
            "step_across_volt": rise * profile.across.part,
            "step_raised": raised,
            "step_milliampere_most": step_most,
            **people_values(people),
        },
        charts=(touch_chart(metals, solved, arrangement, rise),),
    )
    yield from compared_in_parts(answer, metals, solved, profile_of_metal, rise, strip)
