"""Take a bond away and watch: what a fault drives, what opens, and what stays on the metal."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated

from calc.answer import Answer, Chart, Line, Row, Table
from calc.calculator import calculator
from calc.data_file import Data
from calc.fault.caution import state_the_model
from calc.fault.circuit.network import Solution
from calc.fault.device.device import shown_time
from calc.fault.scene import scene_fields as ask
from calc.fault.scene.lost_neutral import Legs, legs_of, legs_words, warn_of_the_legs
from calc.fault.scene.scene import EARTH, PARTS, solved_scene
from calc.fault.scene.scene_circuit import assumptions, show_the_circuit
from calc.fault.scene.scene_notes import say_what_happens
from calc.fault.scene.scene_of import RATINGS, scene_of
from calc.fault.scene.scene_opening import OPENS, OpeningDevice, shown, time_current_of, what_opens
from calc.fault.scene.scene_outputs import OUTPUTS
from calc.fault.scene.scene_words import PART_IN_PICTURE, PART_IN_SENTENCE, PART_WORDS
from calc.messages import Message, message
from calc.trace import Trace, shown_number

OTHERS = ("service", "panel", "machine")
MIN_NAMED = 0.01  # A or V; less than this is told as such, not as none
INSIDE = ("dirt-", "source-a", "source-b")  # branches of the model that the drawing does not show


@calculator(
    "take-a-bond-away",
    name=message("Take a bond away"),
    purpose=message(
        "A drawn circuit: remove, loosen or double a bond and see the fault current, what opens, and every voltage."
    ),
    submit=message("See what happens"),
    example={"edition": "2023", "fault": "machine", "missing": "main-bonding-jumper"},
    outputs=OUTPUTS,
)
def take_a_bond_away(
    *,
    trace: Trace,
    fault: Annotated[str, ask.FAULT] = "machine",
    missing: Annotated[str | None, ask.MISSING] = None,
    added: Annotated[str | None, ask.ADDED] = None,
    touched: Annotated[str, ask.TOUCHED] = "none",
    source: Annotated[str, ask.SOURCE] = "utility",
    loose: Annotated[str | None, ask.LOOSE] = None,
    loose_ohm: Annotated[float, ask.LOOSE_OHM] = 1,
    feeder_path: Annotated[str, ask.FEEDER_PATH] = "wire",
    branch_path: Annotated[str, ask.BRANCH_PATH] = "wire",
    loads: Annotated[str, ask.LOADS] = "off",
    person_ohm: Annotated[float, ask.PERSON_OHM] = 1000,
    electrode_ohm: Annotated[float, ask.ELECTRODE_OHM] = 25,
    supply_length: Annotated[float, ask.SUPPLY_LENGTH] = 75,
    feeder_length: Annotated[float, ask.FEEDER_LENGTH] = 50,
    branch_length: Annotated[float, ask.BRANCH_LENGTH] = 50,
) -> Answer:
    """Return the fault current of a drawn circuit, which device sees it, and the voltage of every metal part.

    When: to teach and to check reasoning. The circuit is fixed but for what the fields change: 120 V to ground,
    2/0 aluminum supply, 6 AWG feeder behind 60 A, 12 AWG branch circuit behind 20 A. Not for choosing a device.

    Parameters:
        fault: "none", "supply-raceway", "service", "panel", "machine" or "buried-elbow".
        missing, loose: bonds with commas: "main-bonding-jumper", "supply-side-bonding-jumper", "feeder-return",
            "branch-return", "supply-neutral", "feeder-neutral". loose_ohm: 0.001 to 1000.
        added: "neutral-bond-at-panel", "machine-electrode", "electrode-on-enclosure", with commas.
        touched: a part someone touches; person_ohm: 100 to 100,000.
        source: "utility" or "transformer". loads: "on" or "off".
        feeder_path: "wire", "raceway", "both"; branch_path: "wire", "flexible-raceway", "both".
        electrode_ohm: 0.1 to 10,000; supply_length, feeder_length, branch_length: feet, 1 to 2000.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold fault_ampere, verdict, device, volts (by part), currents (by
        branch of the drawing), leg_volts (lighter and heavier, loads on, with a neutral missing or loose); its
        table the voltage of every part to earth and to other parts.
    Raises: nothing; bad input ends as `fix`.
    Source: nodal analysis, calc.fault.circuit.network; impedances of Chapter 9; openings of calc.fault.device.device.

    Example:
    >>> result = take_a_bond_away(edition="2023", fault="machine", missing="main-bonding-jumper")
    >>> result.answer.values["verdict"], round(result.answer.values["volts"]["machine"])
    ('does-not-open', 120)
    """
    fields: Data = dict(
        source=source, fault=fault, missing=missing, loose=loose, loose_ohm=loose_ohm, added=added, touched=touched,
        person_ohm=person_ohm, feeder_path=feeder_path, branch_path=branch_path, loads=loads,
        electrode_ohm=electrode_ohm, supply_length=supply_length, feeder_length=feeder_length,
        branch_length=branch_length, edition=trace.edition,
    )  # fmt: skip
    scene = scene_of(**fields)
    show_the_circuit(scene, source, trace)
    solved = solved_scene(scene)
    ampere = abs(solved.currents.get("fault", 0))
    breaker = what_opens(fault, solved, trace)
    volts = {part: abs(solved.voltages[part]) for part in PARTS}
    highest = max(volts, key=lambda part: volts[part])
    say_what_happens(fault, breaker, solved, highest, touched, trace)
    legs = legs_of(fields, solved)
    if legs:
        warn_of_the_legs(legs, trace)
    state_the_model(trace, assumptions(source, "on" if legs else loads, electrode_ohm))
    verdict = breaker.opening.verdict if breaker else ("no-fault" if fault == "none" else "does-not-open")
    return Answer(
        name=message("Take a bond away"),
        headline=_headline(fault, breaker, legs),
        detail=_detail(fault, ampere, volts, highest, breaker, legs, (touched, person_ohm)),
        basis=None,
        answer_code=f"{verdict}-{shown(ampere).replace(',', '')}A-{shown(volts[highest])}V",
        values={
            "fault_ampere": ampere,
            "verdict": verdict,
            "device": breaker.device if breaker else "none",
            "leg_volts": {"lighter": legs.lighter, "heavier": legs.heavier} if legs else None,
            "volts": {part: round(volt, 6) for part, volt in volts.items()},
            "currents": {
                name: round(abs(current), 6) for name, current in solved.currents.items() if not name.startswith(INSIDE)
            },
        },
        table=_voltages(solved),
        charts=(_bars(volts), *([time_current_of(breaker, trace)] if breaker else [])),
    )


def _headline(fault: str, breaker: OpeningDevice | None, legs: Legs | None) -> Message:
    if fault == "none" and legs:
        return message("No fault, but a lost neutral") if legs.missing else message("No fault, but a loose neutral")
    if fault == "none":
        return message("No fault")
    if breaker is None:
        return message("No breaker here opens")
    if breaker.opening.verdict == "does-not-open":
        return message("No breaker opens")
    if breaker.opening.verdict in OPENS:
        return message("The {rating} A breaker probably opens", rating=RATINGS[breaker.device])
    if breaker.opening.verdict == "slow":
        return message("The {rating} A breaker opens, but late", rating=RATINGS[breaker.device])
    return message("No breaker is sure to open")


def _detail(
    fault: str,
    ampere: float,
    volts: Mapping[str, float],
    highest: str,
    breaker: OpeningDevice | None,
    legs: Legs | None,
    touch: tuple[str, float],
) -> Message:
    """Return the current, the worst metal, how long the breaker may take, and who or what else shares in it."""
    touched, ohm = touch
    volt = shown(volts[highest]) if volts[highest] >= MIN_NAMED else message("under {least}", least=MIN_NAMED)
    metal = message("highest: {volt} V to earth on {part}", volt=volt, part=PART_IN_SENTENCE[highest])
    parts = [message("On metal, {metal}", metal=metal)]
    if fault != "none":
        flowing = message("{ampere} A of fault current", ampere=shown(ampere))
        if ampere < MIN_NAMED:
            flowing = message("Fault current under {ampere} A", ampere=MIN_NAMED)
        parts = [flowing, metal]
    if breaker and breaker.opening.slowest_second:
        parts.append(message("the breaker's standard allows {time}", time=shown_time(breaker.opening.slowest_second)))
    if touched != "none":
        parts.append(message("a person of {ohm} ohm is in the circuit", ohm=shown_number(ohm)))
    if legs:
        parts.append(legs_words(legs))
    return message("{parts}", parts="; ".join(map(str, parts)))


def _voltages(solved: Solution) -> Table:
    headings = {"part": message("Metal part"), "earth": message("To earth")}
    headings |= {part: message("To {part}", part=PART_IN_SENTENCE[part]) for part in OTHERS}
    rows: list[Row] = []
    for part in PARTS:
        cells = {"part": PART_WORDS[part], "earth": _volt(solved, part, EARTH)}
        rows.append(Row(cells | {other: _volt(solved, part, other) for other in OTHERS}))
    return Table(headings, tuple(rows))


def _volt(solved: Solution, one: str, other: str) -> Message:
    return message("{volt} V", volt=shown(abs(solved.voltages[one] - solved.voltages[other])))


def _bars(volts: dict[str, float]) -> Chart:
    points = tuple((float(place), round(volt, 2)) for place, volt in enumerate(volts.values()))
    return Chart(
        "voltages",
        "bars",
        message("Voltage of each metal part to earth"),
        message("Metal part"),
        message("Volts to earth"),
        message("{across}: {up} V", across="{across}", up="{up}"),
        (Line(message("Volts to earth"), points),),
        tuple(PART_IN_PICTURE[part] for part in volts),
    )
