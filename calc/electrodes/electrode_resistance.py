"""What resistance to the earth an electrode may have, before anyone measures it."""

from __future__ import annotations

import math
from typing import Annotated

from calc.declare import Answer, calculator
from calc.electrodes import electrode_fields as ask
from calc.electrodes.electrode_shape import LIMITS, Measures, Shape, electrode_shape
from calc.electrodes.entered import said_number, shown
from calc.electrodes.shape import encased
from calc.electrodes.soil import KINDS_OF_SOIL, soil_resistivity
from calc.fault.caution import state_the_model
from calc.fault.ranges import Between
from calc.rounded import about, at_least, at_most
from calc.words import Sentence, say
from calc.working import Working, shown_number

NAME = say("Resistance of an electrode")
CONCRETE = "electrodes/concrete_resistivity"
SEASON = "electrodes/season"
LONGEST_ROD = "electrodes/longest_rod"


@calculator(
    "electrode-resistance",
    name=NAME,
    purpose=say("What resistance to the earth a rod, rods, ring, plate, wire or footing may have in a soil."),
    submit=say("Estimate it"),
    example={
        "edition": "2023",
        "electrode": "rod",
        "soil": "clay",
        "length": "8ft",
        "diameter": "5/8in",
        "rods": "2",
        "spacing": "8ft",
    },
)
def electrode_resistance(
    *,
    working: Working,
    electrode: Annotated[str, ask.ELECTRODE] = "rod",
    soil: Annotated[str, ask.SOIL],
    resistivity: Annotated[float | None, ask.RESISTIVITY] = None,
    pin_spacing: Annotated[float | None, ask.PIN_SPACING] = None,
    pin_ohm: Annotated[float | None, ask.PIN_OHM] = None,
    length: Annotated[float | None, ask.LENGTH] = None,
    diameter: Annotated[float | None, ask.DIAMETER] = None,
    conductor: Annotated[str | None, ask.CONDUCTOR] = None,
    rods: Annotated[int, ask.RODS] = 1,
    spacing: Annotated[float | None, ask.SPACING] = None,
    layout: Annotated[str, ask.LAYOUT] = "line",
    depth: Annotated[float | None, ask.DEPTH] = None,
    width: Annotated[float | None, ask.WIDTH] = None,
    height: Annotated[float | None, ask.HEIGHT] = None,
    concrete_resistivity: Annotated[float | None, ask.CONCRETE_RESISTIVITY] = None,
) -> Answer:
    """Give the resistance of an electrode to remote earth in even soil: low, likely and high.

    When: one electrode, or rods joined together, in soil that is the same all around. Not for layered soil,
    electrodes of different kinds joined together, or whole water systems and building frames.

    Parameters:
        electrode: "rod" (or pipe), "ring", "buried-wire", "plate" or "concrete-encased".
        soil: a kind of soil ("fill", "clay", "clay-with-gravel", "gravel"), "resistivity" or "four-pin".
        resistivity: ohm·m, 0.1 to 1,000,000. pin_spacing: ft, and pin_ohm: ohm, of a four-pin reading.
        length: ft, of a rod in the earth, of the whole wire or bar, or of one side of a plate.
        diameter: inches, of the rod, wire or bar; conductor: size label of a wire instead.
        rods: 1 to 24, and spacing: ft from each to the next; layout: "line" or "circle".
        depth: ft to the middle of a wire, plate or footing. width: ft, the other side of a plate, of a footing, or one
        side of a rectangular ring, None for a ring of any form.
        height: ft, of a footing. concrete_resistivity: ohm·m, None for the range of a damp footing.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold ohm_low, ohm_likely, ohm_high (a known soil when it is dry or frozen,
        a ring of unknown width as narrow as can be), soil_ohm_metre (likely) and shape_per_metre (of the metal).
    Raises: nothing; bad or missing input ends as `fix`, measures past the formulas' limits as `not_covered`.
    Source: H. B. Dwight 1936, average potential of lines; US Bureau of Standards Report 108; 250.53(A)(2) Exception.

    Example:
    >>> result = electrode_resistance(soil="resistivity", resistivity=100, length=8, diameter="5/8")
    >>> result.said, round(result.answer.values["ohm_likely"], 1)
    ('39.9-ohm', 39.9)
    """
    around = soil_resistivity(soil, resistivity, pin_spacing, pin_ohm, working)
    measures = Measures(electrode, length, diameter, conductor, rods, spacing, layout, depth, width, height)
    form = electrode_shape(measures, working)
    known = soil not in ask.SOIL_WORDS
    ohm = _resistance(_through_the_year(around, known, working), form, concrete_resistivity, working)
    _remark_on(electrode, length, working)
    _note_what_it_is_worth(electrode, rods, working)
    state_the_model(working, _assumptions(electrode))
    return Answer(
        name=NAME,
        headline=_headline(ohm, known),
        detail=_detail(form, electrode, concrete_resistivity),
        basis=LIMITS if known else KINDS_OF_SOIL,
        said=f"{said_number(ohm.likely)}-ohm",
        values={
            "ohm_low": ohm.low,
            "ohm_likely": ohm.likely,
            "ohm_high": ohm.high,
            "soil_ohm_metre": around.likely,
            "shape_per_metre": form.metal,
        },
    )


def _resistance(around: Between, form: Shape, concrete_resistivity: float | None, working: Working) -> Between:
    if form.concrete is None:
        likely = working.compute(
            say("Resistance to remote earth."), "soil * shape", "ohm", soil=around.likely, shape=form.metal
        )
        found = Between(around.low * form.metal, likely, around.high * (form.worst or form.metal))
    else:
        concrete = _concrete(concrete_resistivity, working)
        likely = working.compute(
            say("Resistance to remote earth: soil outside the footing, concrete inside it."),
            "soil * outside + concrete * (metal - outside)",
            "ohm",
            soil=around.likely,
            concrete=concrete.likely,
            metal=form.metal,
            outside=form.concrete,
        )
        low, high = (
            encased(soil, each, form.metal, form.concrete)
            for soil, each in ((around.low, concrete.low), (around.high, concrete.high))
        )
        found = Between(low, likely, high)
    if found.low != found.high:
        working.step(
            say(
                "From the low end of the range to the high end: {low} to {high} ohm.",
                low=shown(found.low),
                high=shown(found.high),
            )
        )
    return found


def _concrete(entered: float | None, working: Working) -> Between:
    if entered is not None:
        return Between(entered, entered, entered)
    row = working.cite(CONCRETE).rows[0]
    working.step(
        say(
            "Concrete in damp ground: {low} to {high} ohm·m, {likely} ohm·m taken as likely.",
            low=row["low"],
            high=row["high"],
            likely=row["likely"],
        ),
        cites=(CONCRETE,),
    )
    return Between(row["low"], row["likely"], row["high"])


def _through_the_year(around: Between, known: bool, working: Working) -> Between:
    """Give the soil's range: what was entered is that of one day; a kind of soil spans wet and dry places already."""
    if not known:
        return around
    season = working.cite(SEASON).rows[0]
    working.step(
        say("Season, rain and frost move it {least} to {most} times.", least=season["least"], most=season["most"]),
        around.likely * season["most"],
        "ohm·m",
        (SEASON,),
    )
    return Between(around.low, around.likely, around.high * season["most"])


def _headline(ohm: Between, known: bool) -> Sentence:
    if known:
        return say(
            "About {likely} ohm in the soil as entered, up to {high} ohm when it is dry or frozen",
            likely=about(ohm.likely),
            high=at_most(ohm.high),
        )
    return say(
        "{likely} ohm likely, {low} to {high} ohm possible",
        likely=about(ohm.likely),
        low=at_least(ohm.low),
        high=at_most(ohm.high),
    )


def _detail(form: Shape, electrode: str, concrete_resistivity: float | None) -> Sentence:
    if form.worst is not None:
        return say("The first is a round ring, the last a very narrow one. An estimate. Only a measurement tells.")
    if electrode == "concrete-encased" and concrete_resistivity is None:
        return say("While its concrete stays damp; dry, it has many times more. Only a measurement tells.")
    return say("An estimate. Only a measurement tells.")


def _remark_on(electrode: str, length: float | None, working: Working) -> None:
    """Warn of a rod longer than any usual one: soil is seldom alike so far down."""
    longest = working.cite(LONGEST_ROD).value if electrode == "rod" else math.inf
    if length is not None and length > longest:
        working.warn(
            say(
                "A rod of {feet} ft is longer than the usual {most} ft, and soil is seldom alike so far down. Check "
                "the length.",
                feet=shown_number(length),
                most=longest,
            )
        )


def _note_what_it_is_worth(electrode: str, rods: int, working: Working) -> None:
    season = working.cite(SEASON).rows[0]
    working.note(
        say(
            "Season, rain and frost move the resistance of one electrode {least} to {most} times.",
            least=season["least"],
            most=season["most"],
        )
    )
    if electrode in ("rod", "plate") and rods == 1:
        limit = working.cite("grounding/rod_needs_second")
        working.note(
            say(
                "A single rod, pipe or plate stands without a second electrode only where it measures {limit} ohm or "
                "less ({section}). An estimate does not count.",
                limit=limit.value,
                section=limit.section,
            )
        )
    working.note(
        say(
            "No electrode clears a fault on ordinary circuits, however good: the earth is never the fault path "
            "({section}).",
            section=working.section("naming/auxiliary_electrode"),
        )
    )


def _assumptions(electrode: str) -> tuple[Sentence, ...]:
    own = {
        "rod": say("each rod begins at the surface and stands upright"),
        "ring": say("the ring is level; without its width it may have any form, and a narrow one has more than a circle"),
        "buried-wire": say("the wire is straight and level"),
        "plate": say("the plate or strip lies flat"),
        "concrete-encased": say("one bar along the middle of a straight footing, its concrete as a round shell"),
    }
    return (say("the soil is the same all around and far down"), own[electrode])
