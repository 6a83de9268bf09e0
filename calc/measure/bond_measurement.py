"""What readings of a bond's resistance prove: pass, joined by something, investigate, or that nothing can be told."""

from __future__ import annotations

from typing import Annotated

from calc.answer import Answer
from calc.calculator import FieldError, calculator, require
from calc.electrodes.entered import number_for_code
from calc.margin.declared import Margin
from calc.measure import bond_fields as ask
from calc.measure.bond_expected import CONDUCTIVITY, expected_bond, joint_rule, one_strand_left
from calc.measure.bond_outputs import OUTPUTS
from calc.measure.bond_reading import MILLI, Readings, measured, shown_ohm
from calc.measure.bond_verdict import JOINED, PASS, STOP, detail, headline, rounded, verdict_of
from calc.messages import message
from calc.trace import Trace

FEW_JOINTS = 2  # one at each end of a bond
NAME = message("Resistance of a bond")
HIGH = "measure/high_current"


@calculator(
    "bond-measurement",
    name=NAME,
    purpose=message(
        "What a bond's resistance reading proves. First: de-energized, isolated, tested for absence of voltage, and "
        "free of current before any bond is opened."
    ),
    submit=message("Check the reading"),
    example={
        "edition": "2023",
        "method": "four-wire",
        "dead": "yes",
        "conductor": "6",
        "length": "20ft",
        "joints": "2",
        "beside": "no",
        "reading": "9.398 mohm",
        "reverse_reading": "9.402 mohm",
        "current": "10A",
        "meter_percent": "1",
    },
    outputs=OUTPUTS,
    margin=Margin(("reading",), verdict="verdict"),
)
def bond_measurement(
    *,
    trace: Trace,
    method: Annotated[str, ask.METHOD],
    dead: Annotated[str, ask.DEAD] = "no",
    conductor: Annotated[str | None, ask.CONDUCTOR] = None,
    metal: Annotated[str, ask.METAL] = "copper",
    length: Annotated[float, ask.LENGTH],
    celsius: Annotated[float, ask.CELSIUS] = 20,
    joints: Annotated[int, ask.JOINTS] = 2,
    joint_kind: Annotated[str, ask.JOINT_KIND] = ask.OF_WIRE,
    beside: Annotated[str, ask.BESIDE] = "yes",
    reading: Annotated[float | None, ask.READING] = None,
    lead_spread: Annotated[float | None, ask.LEAD_SPREAD] = None,
    reverse_reading: Annotated[float | None, ask.REVERSE] = None,
    current: Annotated[float | None, ask.CURRENT] = None,
    drop: Annotated[float | None, ask.DROP] = None,
    drop_off: Annotated[float, ask.DROP_OFF] = 0,
    lead_ohm: Annotated[float, ask.LEAD_OHM] = 0,
    digit: Annotated[float, ask.DIGIT] = 0,
    meter_percent: Annotated[float, ask.METER_PERCENT] = 0,
    limit: Annotated[str, ask.LIMIT] = ask.NO_LIMIT,
    limit_ohm: Annotated[float | None, ask.LIMIT_OHM] = None,
) -> Answer:
    """Judge a bond's resistance by its own wire and tight joints, and by a published limit where one is chosen.

    When: direct current through a dead bond or grounding path. Not for impedance at 60 Hz, electrodes in the earth,
    or a live circuit.

    Parameters:
        method: "two-wire", "four-wire", "voltage-drop" or "bond-tester". dead: "yes" or "no".
        conductor: size label, None for a bare joint; metal: "copper" or "aluminum"; length: ft, 0 to 5000.
        celsius: of the wire, -40 to 90. joints: 0 to 200; joint_kind: "wire" or "raceway".
        beside: "yes" or "no", other metal in parallel.
        reading, reverse_reading: ohm, 0 to 1000. lead_ohm, lead_spread, digit: ohm.
        meter_percent: 0 to 50; 0 stands for an error that is not known, and a usual one is counted.
        current: ampere, 0.0001 to 2000. drop, drop_off: volt, 0 to 300.
        limit: "none", "ground-path", "patient-receptacle", "appliance-cord", "aircraft-bond", "military-bond" or
            "own" with limit_ohm.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold verdict ("pass", "joined" by the bond or by what is beside it,
        "investigate", "cannot-tell", "lower-than-the-wire" or "stop"), milliohm_low, milliohm and milliohm_high as
        measured, expected_low and expected_high of a sound bond, and limit_milliohm (None for none).
    Raises: nothing; bad or missing input ends as `fix`.
    Source: Ohm's law; resistance by ASTM B258 and Chapter 9 Table 8; rules measure/*.

    Example:
    >>> result = bond_measurement(method="four-wire", dead="yes", conductor="6", length=20, reading="0.0093",
    ...     reverse_reading="0.0095", beside="no")
    >>> result.answer_code
    'pass-9.4-milliohm'
    """
    _say_first_that_it_is_dead(trace)
    readings = Readings(method, reading, reverse_reading, lead_ohm, lead_spread, current, drop, drop_off, digit,
                     meter_percent)  # fmt: skip
    resistance = measured(readings, trace)
    if not length and not joints:
        raise FieldError(
            "joints", message("Nothing to compare with. Enter the joints that were measured, or a length of wire.")
        )
    wire = require(conductor, "conductor") if length else conductor
    sound, alone = expected_bond(wire, metal, length, celsius, joints, joint_kind, trace)
    most = _limit(limit, limit_ohm, trace)
    verdict = STOP if dead == "no" else verdict_of(resistance, sound, alone, most, limit in ask.BELOW_THE_LIMIT)
    if verdict == PASS and beside == "yes":
        verdict = JOINED
    if verdict != STOP:
        _note_what_it_cannot_see(readings, wire, metal, celsius, trace)
    if verdict == PASS and rounded(resistance.milliohm.high) > rounded(sound.likely):
        trace.warn(
            message(
                "It passes only by the allowance for a poor joint. With tight joints, {likely} is likely: look at "
                "each joint.",
                likely=shown_ohm(sound.likely),
            )
        )
    if verdict in (PASS, JOINED):
        _note_one_bad_joint(joints, resistance.milliohm.high - alone, sound.high - alone, trace)
    if most is not None and most < alone:
        trace.warn(message("The wire alone has more than that limit. No bond of this length can meet it."))
    return Answer(
        name=NAME,
        headline=headline(verdict, resistance.milliohm),
        detail=detail(verdict, resistance, sound, most, readings, trace),
        basis=ask.LIMIT_RULES.get(limit, CONDUCTIVITY if length else joint_rule(joint_kind)),
        answer_code=verdict if verdict == STOP else f"{verdict}-{number_for_code(resistance.milliohm.likely)}-milliohm",
        values={
            "verdict": verdict,
            "milliohm_low": resistance.milliohm.low,
            "milliohm": resistance.milliohm.likely,
            "milliohm_high": resistance.milliohm.high,
            "expected_low": sound.low,
            "expected_high": sound.high,
            "limit_milliohm": most,
        },
    )


def _say_first_that_it_is_dead(trace: Trace) -> None:
    trace.warn(
        message(
            "First: de-energized, isolated, tested for absence of voltage. If anyone felt a tingle, keep people away "
            "and find the cause before you test."
        ),
        grave=True,
    )
    trace.warn(
        message(
            "Open a grounding electrode conductor or a bond only with the service de-energized and the conductor "
            "tested free of current. Put it back before the service is energized."
        ),
        grave=True,
    )


def _note_one_bad_joint(joints: int, over: float, allowed: float, trace: Trace) -> None:
    """Note that one of many joints may have what all together are allowed. over, allowed: milliohm above the wire."""
    if joints > FEW_JOINTS and over > allowed / joints:
        trace.note(
            message(
                "One of the {joints} joints may have everything over the wire's own resistance, {over}. Test each "
                "joint by itself too.",
                joints=joints,
                over=shown_ohm(over),
            ),
            grave=True,
        )


def _limit(limit: str, entered: float | None, trace: Trace) -> float | None:
    """Return the limit chosen, milliohm, or None."""
    if limit == ask.NO_LIMIT:
        return None
    if limit == ask.OWN_LIMIT:
        return MILLI * require(entered, "limit_ohm")
    stated = trace.cite(ask.LIMIT_RULES[limit])
    trace.step(
        message(
            "Published limit, for {where}: {ohm} ({section}).",
            where=stated.applies,
            ohm=shown_ohm(MILLI * stated.value),
            section=stated.section,
        ),
        MILLI * stated.value,
        "milliohm",
        (stated.key,),
    )
    return MILLI * stated.value


def _note_what_it_cannot_see(
    readings: Readings, conductor: str | None, metal: str, celsius: float, trace: Trace
) -> None:
    least = trace.cite(HIGH).value
    if readings.current is None or readings.current < least:
        trace.warn(
            message(
                "Low current cannot see a bond held by one strand. Look at it, pull on it, or test it with {least} A "
                "or more.",
                least=least,
            )
        )
    if conductor:
        one_strand_left(conductor, metal, celsius, trace)
    if readings.method == ask.TWO_WIRE:
        trace.note(message("The range is likely, not guaranteed: the leads may once be worse than in five tries."))
    trace.note(message("Resistance says nothing about size: a short, thin wire reads well and melts in a fault."))
    trace.note(message("Tinned wire reads a few percent higher."))
