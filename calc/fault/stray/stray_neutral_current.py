"""Neutral current that runs over metal: a second bond at a panel, or two houses on one metal water main."""

from __future__ import annotations

from typing import Annotated

from calc.answer import Answer, Row, Table
from calc.calculator import Choice, NotCovered, calculator
from calc.conductors.impedance import impedance
from calc.fault.between.between_shown import MIN_VOLT
from calc.fault.caution import state_the_model
from calc.fault.likely_slip import remark_on_load
from calc.fault.return_path.return_path import CONDUCTIVITY_RULE, REACTANCE_RULE, RESISTANCE_RULE
from calc.fault.stray.stray_circuit import VOLT, Stray, stray_of
from calc.fault.stray.stray_notes import say_what_to_do
from calc.fault.stray.stray_outputs import OUTPUTS
from calc.messages import Message, message
from calc.rounded import three_figures
from calc.shared_fields import METAL_WORDS, conductor_size, metal_of, one_of, quantity, yes_or_no
from calc.trace import Trace, shown_number

HOT = 75
WHERE = one_of(
    message("Where neutral current gets onto metal"),
    message(""),
    (
        Choice("second-bond", message("Neutral bonded to metal in a panel downstream of the service")),
        Choice("shared-water-main", message("Two houses on one transformer and one metal water main")),
    ),
)
LOAD = quantity(
    message("Load current"), message("What returns on the neutral, for example 20."), "A", 0.1, 2000, example="20"
)
NEUTRAL = conductor_size(message("Neutral"), message("Of the feeder to the panel, or of each house's service."))
METAL = metal_of(message("Conductor material"))
LENGTH = quantity(
    message("Length"), message("Of the feeder, or of each service. One way."), "ft", 1, 5000, example="100 ft"
)
GROUNDING = conductor_size(
    message("Equipment grounding conductor"), message("Run with that neutral. Only for a second bond in a panel.")
)
PIPE = quantity(
    message("Resistance of a metal pipe or raceway in parallel"),
    message("0 if none. Between two houses: the water main, for example 0.01."),
    "ohm",
    0,
    1000,
    example="0.05",
)
OPEN = yes_or_no(
    message("Open neutral upstream"),
    message("Then all of it flows on metal. Two houses: the neutral of the house with the load."),
    rare=False,
)


@calculator(
    "stray-neutral-current",
    name=message("Stray neutral current"),
    purpose=message(
        "How much neutral current flows on grounding conductors, raceways and pipes, and why no one notices."
    ),
    submit=message("Find the current"),
    example={
        "edition": "2023",
        "load": "20",
        "neutral": "4",
        "length": "100 ft",
        "grounding_conductor": "8",
        "pipe": "0.05",
    },
    outputs=OUTPUTS,
)
def stray_neutral_current(
    *,
    trace: Trace,
    load: Annotated[float, LOAD],
    neutral: Annotated[str, NEUTRAL],
    length: Annotated[float, LENGTH],
    where: Annotated[str, WHERE] = "second-bond",
    grounding_conductor: Annotated[str | None, GROUNDING] = None,
    pipe: Annotated[float, PIPE] = 0,
    neutral_open: Annotated[str, OPEN] = "no",
    metal: Annotated[str, METAL] = "copper",
) -> Answer:
    """Return the neutral current that runs over metal, and the voltage that metal shows.

    When: a 120 V load, one second bond in a panel, or two houses that share a transformer and a metal water main.

    Parameters:
        load: ampere, 0.1 to 2000. neutral, grounding_conductor: size labels, "14" to "1000kcmil".
        length: feet one way, 1 to 5000. metal: "copper" or "aluminum", of both conductors.
        where: "second-bond" or "shared-water-main". pipe: ohm, 0 to 1000, 0 for none.
        neutral_open: "yes" with that neutral broken.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold metal_ampere, neutral_ampere, grounding_ampere,
        pipe_ampere; metal_volt (against the source's neutral), load_volt, break_volt (across an open neutral), gap_volt
        (across the second bond or the main once opened), other_leg_volt (120/240 V, its loads light).
    Raises: nothing; bad input ends as `fix`, a case without a metal path as `not_covered`.
    Source: nodal analysis, calc.fault.circuit.network; Chapter 9 Table 9; 250.6, 250.24, 250.142.

    Example:
    >>> result = stray_neutral_current(
    ...     edition="2023", load=20, neutral="4", length=100, grounding_conductor="8", pipe=0.05
    ... )
    >>> round(result.answer.values["metal_ampere"], 1), round(result.answer.values["neutral_ampere"], 1)
    (10.0, 10.0)
    """
    for key in (RESISTANCE_RULE, REACTANCE_RULE, CONDUCTIVITY_RULE):
        trace.cite(key)
    houses = where == "shared-water-main"
    if not pipe and (houses or grounding_conductor is None):
        raise NotCovered(
            message("Without a grounding conductor or a pipe there is no metal for the current to flow on."),
            message("Enter the equipment grounding conductor, or the resistance of the pipe."),
        )

    def ohm(size: str) -> complex:
        try:
            return impedance(size, metal, "nonmetallic", HOT) * length
        except KeyError:
            raise NotCovered(
                message(
                    "No impedance is listed for this size and metal. The list has 14 AWG to 1000 kcmil, with gaps."
                ),
                message("{section}", section=trace.section(RESISTANCE_RULE)),
            ) from None

    broken = neutral_open == "yes"
    grounding = ohm(grounding_conductor) if grounding_conductor and not houses else None
    stray = stray_of(houses, VOLT / load, ohm(neutral), grounding, pipe, broken)
    currents = stray.currents
    trace.step(
        message(
            "A load of {load} A at {volt} V gets {left} V here and draws {drawn} A.",
            load=shown_number(load),
            volt=VOLT,
            left=three_figures(stray.load),
            drawn=three_figures(currents["load"]),
        )
    )
    trace.step(
        message(
            "Of {load} A, {neutral} A returns on the neutral and {metal} A on metal. They add as phasors; the "
            "magnitudes may not add up.",
            load=three_figures(currents["load"]),
            neutral=three_figures(currents["neutral"]),
            metal=three_figures(currents["bond"]),
        ),
        currents["bond"],
        "A",
        ("grounding/no_neutral_bond_on_load_side",),
    )
    remark_on_load(load, neutral, metal, trace)
    say_what_to_do(broken, houses, stray, trace)
    state_the_model(trace, _assumptions(houses, metal))
    return Answer(
        name=message("Stray neutral current"),
        headline=_headline(broken, currents["bond"]),
        detail=_detail(broken, stray),
        basis=None,
        answer_code=f"{three_figures(currents['bond']).replace(',', '')}A-{three_figures(stray.metal)}V",
        values={
            "metal_ampere": currents["bond"],
            "neutral_ampere": currents["neutral"],
            "grounding_ampere": currents["grounding"],
            "pipe_ampere": currents["pipe"],
            "metal_volt": stray.metal,
            "load_volt": stray.load,
            "break_volt": stray.broken,
            "gap_volt": stray.gap,
            "other_leg_volt": stray.other_leg,
        },
        table=_table(currents, houses),
    )


def _headline(broken: bool, ampere: float) -> Message:
    shown = three_figures(ampere)
    if broken:
        return message("Open neutral, {ampere} A on metal", ampere=shown)
    return message("{ampere} A on metal", ampere=shown)


def _detail(broken: bool, stray: Stray) -> Message:
    volt = three_figures(stray.metal) if stray.metal >= MIN_VOLT else message("under {least}", least=MIN_VOLT)
    words = {"load": three_figures(stray.currents["load"]), "volt": volt}
    if not broken:
        return message("of {load} A, with {volt} V on the metal", **words)
    return message(
        "Power off first, then repair the neutral. {volt} V on the metal, {broken} V across the break; up to {leg} V "
        "on the other leg of a 120/240 V supply.",
        broken=three_figures(stray.broken),
        leg=three_figures(stray.other_leg),
        **words,
    )


def _table(currents: dict[str, float], houses: bool) -> Table:
    words = {
        "neutral": message("Neutral"),
        "grounding": message("Equipment grounding conductor"),
        "pipe": message("Water main and the neighbor's neutral") if houses else message("Pipe or raceway"),
    }
    rows = [
        Row({"path": words[name], "current": message("{ampere} A", ampere=three_figures(currents[name]))})
        for name in words
        if not (houses and name == "grounding")
    ]
    return Table({"path": message("Path"), "current": message("Current")}, tuple(rows))


def _assumptions(houses: bool, metal: str) -> list[Message]:
    return [
        message(
            "A 120 V resistive load; {metal} conductors at 75 °C in nonmetallic raceway.",
            metal=METAL_WORDS[metal],
        ),
        message("Each bond has one milliohm; the earth carries next to nothing."),
        message("Both houses have identical service neutrals.")
        if houses
        else message("Hot conductors are left out; no metal shares their current."),
    ]
