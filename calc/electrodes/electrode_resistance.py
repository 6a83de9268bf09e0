"""What resistance to the earth an electrode may have, before anyone measures it."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.electrodes import electrode_fields as ask
from calc.electrodes.electrode_outputs import OUTPUTS
from calc.electrodes.electrode_shape import LIMITS, Measures, Shape, electrode_shape
from calc.electrodes.electrode_words import (
    SEASON,
    assumptions_of,
    detail_of,
    headline_of,
    note_what_it_is_worth,
    remark_on_length,
    too_small,
)
from calc.electrodes.entered import number_for_code, shown
from calc.electrodes.shape import encased
from calc.electrodes.soil import KINDS_OF_SOIL, soil_resistivity
from calc.fault.caution import state_the_model
from calc.fault.circuit.ranges import Between
from calc.messages import message
from calc.trace import Trace

NAME = message("Resistance of an electrode")
CONCRETE = "electrodes/concrete_resistivity"


@calculator(
    "electrode-resistance",
    name=NAME,
    purpose=message("The resistance to earth that a rod, rods, ring, plate, wire or footing may have in a given soil."),
    submit=message("Estimate it"),
    example={
        "edition": "2023",
        "electrode": "rod",
        "soil": "clay",
        "length": "8ft",
        "diameter": "5/8in",
        "rods": "2",
        "spacing": "8ft",
    },
    outputs=OUTPUTS,
)
def electrode_resistance(
    *,
    trace: Trace,
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
    """Return the resistance of an electrode to remote earth in even soil: low, likely and high.

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
    >>> result.answer_code, round(result.answer.values["ohm_likely"], 1)
    ('39.9-ohm', 39.9)
    """
    around = soil_resistivity(soil, resistivity, pin_spacing, pin_ohm, trace)
    measures = Measures(electrode, length, diameter, conductor, rods, spacing, layout, depth, width, height)
    form = electrode_shape(measures, trace)
    known = soil not in ask.SOIL_WORDS
    ohm = _resistance(_through_the_year(around, known, trace), form, concrete_resistivity, trace)
    remark_on_length(electrode, length, trace)
    note_what_it_is_worth(electrode, rods, trace)
    state_the_model(trace, assumptions_of(electrode))
    return Answer(
        name=NAME,
        headline=headline_of(ohm, known),
        detail=too_small(electrode, length, width, trace) or detail_of(form, electrode, concrete_resistivity),
        basis=LIMITS if known else KINDS_OF_SOIL,
        answer_code=f"{number_for_code(ohm.likely)}-ohm",
        values={
            "ohm_low": ohm.low,
            "ohm_likely": ohm.likely,
            "ohm_high": ohm.high,
            "soil_ohm_metre": around.likely,
            "shape_per_metre": form.metal,
        },
    )


def _resistance(around: Between, form: Shape, concrete_resistivity: float | None, trace: Trace) -> Between:
    if form.concrete is None:
        likely = trace.compute(
            message("Resistance to remote earth."), "soil * shape", "ohm", soil=around.likely, shape=form.metal
        )
        resistance = Between(around.low * form.metal, likely, around.high * (form.worst or form.metal))
    else:
        concrete = _concrete(concrete_resistivity, trace)
        likely = trace.compute(
            message("Resistance to remote earth: soil outside the footing, concrete inside it."),
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
        resistance = Between(low, likely, high)
    if resistance.low != resistance.high:
        trace.step(
            message(
                "From the low end of the range to the high end: {low} to {high} ohm.",
                low=shown(resistance.low),
                high=shown(resistance.high),
            )
        )
    return resistance


def _concrete(entered: float | None, trace: Trace) -> Between:
    if entered is not None:
        return Between(entered, entered, entered)
    row = trace.cite(CONCRETE).rows[0]
    trace.step(
        message(
            "Concrete in damp ground: {low} to {high} ohm·m, {likely} ohm·m taken as likely.",
            low=row["low"],
            high=row["high"],
            likely=row["likely"],
        ),
        cites=(CONCRETE,),
    )
    return Between(row["low"], row["likely"], row["high"])


def _through_the_year(around: Between, known: bool, trace: Trace) -> Between:
    """Return the soil's range: what was entered is that of one day; a kind of soil spans wet and dry places already."""
    if not known:
        return around
    season = trace.cite(SEASON).rows[0]
    trace.step(
        message(
            "Season, rain and frost change it {least} to {most} times.", least=season["least"], most=season["most"]
        ),
        around.likely * season["most"],
        "ohm·m",
        (SEASON,),
    )
    return Between(around.low, around.likely, around.high * season["most"])
