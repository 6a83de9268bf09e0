"""The available fault current: the most that can flow, for the interrupting ratings of equipment."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, NotCovered, calculator
from calc.conductors.size import shown_size
from calc.data_file import Data
from calc.fault.available.available_notes import note_the_limits
from calc.fault.available.available_outputs import OUTPUTS
from calc.fault.source import source_fields as ask
from calc.fault.source.fault_currents import FaultCurrents, fault_currents, fault_table
from calc.fault.source.run import run_entered
from calc.fault.source.source_entered import SourceEntered, sources_entered
from calc.fault.source.sources import MIN_TO_GROUND, at_end_of_run
from calc.fault.source.sources import line_to_ground_current as current_to_ground
from calc.known import known
from calc.messages import Message, message
from calc.rounded import THREE, at_most, rounded_up
from calc.rulebook import rule
from calc.shared_fields import METAL_WORDS, SETS
from calc.systems import HIGH_LEG, SYSTEMS, WYE
from calc.trace import Trace, shown_number
from calc.written import whole

INTERRUPTING = "fault/interrupting_rating"
MOTOR_RULE = "fault/motor_contribution"
LOOK_UNDER = {
    "over-1000": "naming/over_1000_volts",
    "direct-current": "naming/direct_current",
    "impedance-grounded": "naming/impedance_grounding",
}


@calculator(
    "available-fault-current",
    name=message("Available fault current"),
    purpose=message("The most fault current a source can deliver, at its terminals and at the end of a run."),
    submit=message("Find the fault current"),
    example={
        "edition": "2023",
        "system": "208Y/120",
        "kva": "75",
        "percent_z": "2.3",
        "conductor": "3/0",
        "conductor_metal": "copper",
        "length": "60ft",
    },
    outputs=OUTPUTS,
)
def available_fault_current(
    *,
    trace: Trace,
    system: Annotated[str, ask.SYSTEM],
    source: Annotated[str, ask.SOURCE] = "transformer",
    kva: Annotated[float | None, ask.KVA] = None,
    percent_z: Annotated[float | None, ask.PERCENT_Z] = None,
    three_phase_current: Annotated[float | None, ask.THREE_PHASE_CURRENT] = None,
    subtransient: Annotated[float | None, ask.SUBTRANSIENT] = None,
    conductor: Annotated[str | None, ask.CONDUCTOR] = None,
    conductor_metal: Annotated[str, ask.CONDUCTOR_METAL] = "copper",
    sets: Annotated[int, SETS] = 1,
    raceway: Annotated[str, ask.RACEWAY] = "nonmetallic",
    length: Annotated[float, ask.LENGTH] = 0,
    percent_r: Annotated[float | None, ask.PERCENT_R] = None,
    percent_x: Annotated[float | None, ask.PERCENT_X] = None,
    x_over_r: Annotated[float | None, ask.X_OVER_R] = None,
    tolerance: Annotated[float, ask.TOLERANCE] = ask.TOLERANCE_TAKEN,
    utility_kva: Annotated[float | None, ask.UTILITY_KVA] = None,
    utility_current: Annotated[float | None, ask.UTILITY_CURRENT] = None,
    primary_voltage: Annotated[float | None, ask.PRIMARY_VOLTAGE] = None,
    utility_x_over_r: Annotated[float | None, ask.UTILITY_X_OVER_R] = None,
    line_to_ground_current: Annotated[float | None, ask.LINE_TO_GROUND_CURRENT] = None,
    zero_sequence: Annotated[float | None, ask.ZERO_SEQUENCE] = None,
    return_conductor: Annotated[str | None, ask.RETURN_CONDUCTOR] = None,
    temperature: Annotated[float, ask.TEMPERATURE] = ask.COLD,
    motor_current: Annotated[float, ask.MOTOR_CURRENT] = 0,
    voltage_factor: Annotated[float, ask.VOLTAGE_FACTOR] = 1,
) -> Answer:
    """Return the most current that a fault can draw at the terminals of a source and at the end of a run.

    When: alternating current up to 1000 V, for interrupting and short-circuit current ratings. Not for the
    question whether a device opens: that needs the least current. Impedance-grounded systems end as not covered.

    Parameters:
        system: "120/240", "208Y/120", "480Y/277", "240/120-high-leg", "240-corner", "240-ungrounded",
            "480-ungrounded". source: "transformer", "given-current" or "generator".
        kva: rating of the transformer or generator, 0.5 to 10,000 kVA.
        percent_z, or percent_r and percent_x: of the plate, %; x_over_r: left out, the worst is taken.
        tolerance: % that the impedance may lie below the plate, 0 to 20.
        utility_kva, or utility_current and primary_voltage: at the primary; left out, unlimited.
        utility_x_over_r: left out, the worst is taken.
        three_phase_current, line_to_ground_current: known, A, 10 to 500,000; single phase: from line to line.
        subtransient, zero_sequence: reactances of a generator, %.
        conductor, conductor_metal, sets, raceway, length, return_conductor: the run, length one way in ft.
        temperature: of its conductors, -40 to 90 °C. motor_current: full-load current of running motors, A.
        voltage_factor: voltage over nominal, 0.9 to 1.15.

    Returns: a Result; `values` hold available_ampere (rounded up to three figures, with motors), place, motors;
        three_phase, line_to_line, line_to_ground at the terminals, the same with _at_end;
        line_to_ground_limit_at_end. All in A.
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: sequence components; Chapter 9, Table 9; 110.9, 110.24; rules below `fault`.

    Example:
    >>> result = available_fault_current(
    ...     edition="2023", system="480Y/277", kva=500, percent_z=5, tolerance=0)
    >>> result.answer_code, result.answer.values["three_phase"]
    ('12100A', 12028.13)
    """
    _require_solid_system(system, source, trace)
    run = run_entered(conductor, conductor_metal, sets, raceway, length, return_conductor, temperature, trace)
    entered = SourceEntered(
        system=system,
        source=source,
        kva=kva,
        percent_z=percent_z,
        percent_r=percent_r,
        percent_x=percent_x,
        x_over_r=x_over_r,
        tolerance=tolerance,
        utility_kva=utility_kva,
        utility_current=utility_current,
        primary_voltage=primary_voltage,
        utility_x_over_r=utility_x_over_r,
        three_phase_current=three_phase_current,
        line_to_ground_current=line_to_ground_current,
        subtransient=subtransient,
        zero_sequence=zero_sequence,
    )
    sources = sources_entered(entered, trace)
    currents = {"terminals": fault_currents(sources, system, voltage_factor, message("Terminals"), trace)}
    limit = None
    if run:
        ends = [at_end_of_run(each, run.line, run.back) for each in sources]
        currents["end"] = fault_currents(ends, system, voltage_factor, message("End of the run"), trace)
        limit = voltage_factor * max(current_to_ground(at_end_of_run(each, run.line, 0)) for each in sources)
    motors = _motors(motor_current, trace)
    place = "end" if run else "terminals"
    available = _rounded_up(currents[place].most + motors, trace)
    trace.note(
        message(
            "Devices that open a fault there need an interrupting rating of at least this ({section}).",
            section=trace.section(INTERRUPTING),
        )
    )
    note_the_limits(trace, system, source, raceway, currents, limit)
    values: Data = {"available_ampere": available, "place": place, "motors": motors}
    for where, flowing in currents.items():
        at = "_at_end" if where == "end" else ""
        values |= {f"{name}{at}": value for name, value in flowing.values.items()}
    if limit is not None:
        values["line_to_ground_limit_at_end"] = round(limit, 2)
    wires = (sets, known(conductor), conductor_metal) if run else None
    return Answer(
        name=message("Available fault current"),
        headline=message("{current} A", current=shown_number(available)),
        detail=_detail(wires, motor_current, _to_ground(entered, currents[place])),
        basis=None,
        answer_code=f"{available}A",
        values=values,
        table=fault_table(currents, system),
    )


def _detail(run: tuple[int, str, str] | None, motor_current: float, to_ground: float | None) -> Message:
    """Return the place, and what was taken for granted because nothing was entered."""
    place = message("at the terminals")
    if run:
        sets, size, metal = run
        place = message(
            "at the end of the run of {sets} × {size} {metal}",
            sets=sets,
            size=shown_size(size),
            metal=METAL_WORDS[metal],
        )
    parts = [place, *([] if motor_current else [message("no motors counted")])]
    if to_ground:
        words = message(
            "up to {ampere} A to ground, where only the three-phase current is known", ampere=at_most(to_ground, THREE)
        )
        parts.append(words)
    return message("{parts}", parts="; ".join(map(str, parts)))


def _to_ground(entered: SourceEntered, currents: FaultCurrents) -> float | None:
    """Return the most to ground of a wye whose current to ground was not entered: its zero sequence may be none."""
    left_open = entered.source == "given-current" and entered.line_to_ground_current is None
    if not left_open or SYSTEMS[entered.system].kind != WYE:
        return None
    return known(currents.three_phase) / MIN_TO_GROUND[WYE]


def _motors(current: float, trace: Trace) -> float:
    if not current:
        return 0
    return trace.compute(
        message("Running motors feed the fault for the first few cycles. An allowance for all of them, added in full."),
        "multiple * motor_current",
        "A",
        (MOTOR_RULE,),
        multiple=rule(MOTOR_RULE, trace.edition).value,
        motor_current=current,
    )


def _rounded_up(ampere: float, trace: Trace) -> float:
    rounded = whole(rounded_up(ampere))
    trace.step(message("The largest of them, with motors, rounded up to three figures."), rounded, "A", (INTERRUPTING,))
    return rounded


def _require_solid_system(system: str, source: str, trace: Trace) -> None:
    if system in LOOK_UNDER:
        raise NotCovered(
            message("This page covers AC up to 1000 V, solidly grounded or ungrounded."),
            message("See {section}.", section=trace.section(LOOK_UNDER[system])),
        )
    if source == "generator" and SYSTEMS[system].kind == HIGH_LEG:
        raise NotCovered(
            message("With a high leg, a generator's ground-fault current depends on how its windings are connected."),
            message("Ask the manufacturer for its fault current ({section}).", section=trace.section(INTERRUPTING)),
        )
