"""What readings of a bond's resistance prove: pass, investigate, or that this meter cannot tell."""

from __future__ import annotations

from typing import Annotated

from calc.answer import Answer
from calc.declare import Mend, calculator, needed
from calc.electrodes.entered import said_number
from calc.fault.ranges import Between
from calc.measure import bond_fields as ask
from calc.measure.bond_expected import CONDUCTIVITY, JOINT, expected_bond, one_strand_left
from calc.measure.bond_reading import MILLI, Measured, Readings, measured, shown_ohm
from calc.words import Sentence, say
from calc.working import Working

NAME = say("Resistance of a bond")
HIGH = "measure/high_current"
PASS, INVESTIGATE, CANNOT_TELL, BESIDE, STOP = "pass", "investigate", "cannot-tell", "lower-than-the-wire", "stop"


@calculator(
    "bond-measurement",
    name=NAME,
    purpose=say(
        "What a bond's resistance reading proves. First: dead, isolated, proven dead, and free of current before any "
        "bond is opened."
    ),
    submit=say("Judge the reading"),
    example={
        "edition": "2023",
        "method": "four-wire",
        "dead": "yes",
        "conductor": "6",
        "length": "20ft",
        "joints": "2",
        "reading": "9.398 mohm",
        "reverse_reading": "9.402 mohm",
        "current": "10A",
        "meter_percent": "1",
    },
)
def bond_measurement(
    *,
    working: Working,
    method: Annotated[str, ask.METHOD],
    dead: Annotated[str, ask.DEAD] = "no",
    conductor: Annotated[str | None, ask.CONDUCTOR] = None,
    metal: Annotated[str, ask.METAL] = "copper",
    length: Annotated[float, ask.LENGTH],
    celsius: Annotated[float, ask.CELSIUS] = 20,
    joints: Annotated[int, ask.JOINTS] = 2,
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
        celsius: of the wire, -40 to 90. joints: 0 to 200. beside: "yes" or "no", other metal in parallel.
        reading, reverse_reading: ohm, 0 to 1000. lead_ohm, lead_spread, digit: ohm. meter_percent: 0 to 50.
        current: ampere, 0.0001 to 2000. drop, drop_off: volt, 0 to 300.
        limit: "none", "ground-path", "patient-receptacle", "appliance-cord", "aircraft-bond", "military-bond" or
            "own" with limit_ohm.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold verdict ("pass", "investigate", "cannot-tell",
        "lower-than-the-wire" or "stop"), milliohm_low, milliohm and milliohm_high as measured, expected_low and
        expected_high of a sound bond, and limit_milliohm (None for none).
    Raises: nothing; bad or missing input ends as `fix`.
    Source: Ohm's law; resistance by ASTM B258 and Chapter 9 Table 8; rules measure/*.

    Example:
    >>> result = bond_measurement(method="four-wire", dead="yes", conductor="6", length=20, reading="0.0093",
    ...     reverse_reading="0.0095")
    >>> result.said
    'pass-9.4-milliohm'
    """
    _say_first_that_it_is_dead(working)
    taken = Readings(method, reading, reverse_reading, lead_ohm, lead_spread, current, drop, drop_off, digit,
                     meter_percent)  # fmt: skip
    found = measured(taken, working)
    if not length and not joints:
        raise Mend("joints", say("Nothing to compare with. Enter the joints that were measured, or a length of wire."))
    wire = needed(conductor, "conductor") if length else conductor
    sound, alone = expected_bond(wire, metal, length, celsius, joints, working)
    most = _limit(limit, limit_ohm, working)
    verdict = STOP if dead == "no" else _verdict(found, sound, alone, most, limit in ask.BELOW_THE_LIMIT)
    if verdict != STOP:
        _note_what_it_cannot_see(taken, wire, metal, celsius, beside, verdict, working)
    if verdict == PASS and found.milliohm.high > sound.likely:
        working.warn(
            say(
                "It passes only by what a poor joint is allowed. Likely with tight ones is {likely}: look at each "
                "joint.",
                likely=shown_ohm(sound.likely),
            )
        )
    if most is not None and most < alone:
        working.warn(say("The wire alone has more than that limit. No bond of this length can meet it."))
    return Answer(
        name=NAME,
        headline=_headline(verdict, found.milliohm),
        detail=_detail(verdict, found, sound, most),
        basis=ask.LIMIT_RULES.get(limit, CONDUCTIVITY if length else JOINT),
        said=verdict if verdict == STOP else f"{verdict}-{said_number(found.milliohm.likely)}-milliohm",
        values={
            "verdict": verdict,
            "milliohm_low": found.milliohm.low,
            "milliohm": found.milliohm.likely,
            "milliohm_high": found.milliohm.high,
            "expected_low": sound.low,
            "expected_high": sound.high,
            "limit_milliohm": most,
        },
    )


def _say_first_that_it_is_dead(working: Working) -> None:
    working.warn(
        say(
            "First: dead, isolated, proven dead. If anyone felt a tingle, keep people away and find the cause before "
            "you test."
        )
    )
    working.warn(
        say(
            "Open an electrode's conductor or a bond only with the service de-energized and the conductor proven free "
            "of current. Put it back before the service is energized."
        )
    )


def _limit(limit: str, entered: float | None, working: Working) -> float | None:
    """Give the limit chosen, milliohm, or None."""
    if limit == ask.NO_LIMIT:
        return None
    if limit == ask.OWN_LIMIT:
        return MILLI * needed(entered, "limit_ohm")
    stated = working.cite(ask.LIMIT_RULES[limit])
    working.step(
        say(
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


def _verdict(found: Measured, sound: Between, alone: float, limit: float | None, below: bool) -> str:
    """Give the verdict; `below`: a reading at the limit itself is over it."""
    if not found.steady:
        return CANNOT_TELL
    low, high, least, most = (round(each, 9) for each in (found.milliohm.low, found.milliohm.high, alone, sound.high))
    if high < least:
        return BESIDE
    if limit is None or most < limit:
        below = False
    else:
        most = round(limit, 9)
    if high < most or (high == most and not below):
        return PASS
    return INVESTIGATE if low > most or (low == most and below) else CANNOT_TELL


def _headline(verdict: str, ohm: Between) -> Sentence:
    if verdict == STOP:
        return say("Not judged: make it dead first")
    if verdict == CANNOT_TELL:
        return say("This meter cannot tell")
    if verdict == PASS:
        return say("Pass: {ohm}", ohm=shown_ohm(ohm.likely))
    return say("Investigate: {ohm}", ohm=shown_ohm(ohm.likely))


def _detail(verdict: str, found: Measured, sound: Between, limit: float | None) -> Sentence:
    words = {
        "low": shown_ohm(found.milliohm.low),
        "high": shown_ohm(found.milliohm.high),
        "least": shown_ohm(sound.low),
        "most": shown_ohm(sound.high if limit is None else min(sound.high, limit)),
    }
    if verdict == STOP:
        return say("A reading taken with voltage or current there is worthless, and taking it is dangerous.")
    if not found.steady:
        return say(
            "Forward and reverse differ too much. Wait until the joints are at one temperature; prove no current."
        )
    if verdict == BESIDE:
        return say(
            "Less than the wire alone has: {low} to {high}. Other metal is beside it, or a size or length is wrong.",
            **words,
        )
    if verdict == CANNOT_TELL:
        return say("It may be anywhere from {low} to {high}; wanted is {most} at most. Use four leads.", **words)
    if found.milliohm.low == found.milliohm.high:
        return say("So says a meter taken as perfect; wanted is {most} at most.", **words)
    return say("It is between {low} and {high}; wanted is {most} at most.", **words)


def _note_what_it_cannot_see(
    taken: Readings, conductor: str | None, metal: str, celsius: float, beside: str, verdict: str, working: Working
) -> None:
    least = working.cite(HIGH).value
    if taken.current is None or taken.current < least:
        working.warn(
            say(
                "Low current cannot see a bond that one strand holds. Look at it, pull on it, or test it with {least} "
                "A or more.",
                least=least,
            )
        )
    if conductor:
        one_strand_left(conductor, metal, celsius, working)
    if beside == "yes" and verdict == PASS:
        working.warn(
            say(
                "This shows that the two parts are joined, not by what. The bond itself may be broken and the rest "
                "carry the test."
            )
        )
    if taken.method == ask.TWO_WIRE:
        working.note(say("The range is a likely one, not a bound: leads may be worse once than in five tries."))
    working.note(say("Resistance says nothing of size: a thin wire that is short reads well and melts in a fault."))
    working.note(say("Tinned wire has a few percent more."))
