"""What current a voltage drives through a body, and what that does: let go, time, heart."""

from __future__ import annotations

from typing import Annotated

from calc.answer import Chart, Line
from calc.calculator import Answer, calculator, require
from calc.electrodes.entered import number_for_code
from calc.known import known
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.rounded import at_least, at_most
from calc.touch.shock import shock_fields as ask
from calc.touch.shock import shock_words as tell
from calc.touch.shock.body import IMPEDANCE, Currents, body_currents
from calc.touch.shock.lasting_current import LET_GO, lasting_verdict, least_let_go
from calc.touch.shock.shock_outputs import OUTPUTS
from calc.touch.shock.time_zones import (
    ZONES,
    curve_at,
    fibrillation_limit,
    interrupter_time,
    limit_chart,
    longest_for_the_limit,
    zone_chart,
    zone_of,
)
from calc.trace import Trace, shown_number

NAME = message("What a shock does")
HEART = ("AC-4.1", "AC-4.2")


@calculator(
    "shock-limits",
    name=NAME,
    purpose=message(
        "The current through a body at a voltage, whether a hand can let go, and how long a heart can take it."
    ),
    submit=message("See the current"),
    example={
        "edition": "2023",
        "voltage": "120V",
        "path": "hand-feet",
        "condition": "water-wet",
        "clears": "yes",
        "time": "0.1s",
    },
    outputs=OUTPUTS,
    margin=Margin(("voltage", "time"), verdict="verdict"),
)
def shock_limits(
    *,
    trace: Trace,
    voltage: Annotated[float, ask.VOLTAGE],
    path: Annotated[str, ask.PATH] = "hand-feet",
    condition: Annotated[str, ask.CONDITION] = "water-wet",
    clears: Annotated[str, ask.CLEARS] = "no",
    time: Annotated[float | None, ask.TIME] = None,
) -> Answer:
    """Return the current through a body, in few people, half and most, and what it does.

    When: 50 or 60 Hz, skin dry or wet, the voltage across the body known. Not for anyone in water, direct current,
    high frequency, defibrillators or patients. A limit by time is given only for a fault that clears.

    Parameters:
        voltage: V across the body, 0.1 to 1000. path: "hand-feet", "hand-hand", "hands-feet" or "foot-foot".
        condition: "water-wet", "dry", "salt-water-wet"; "in-water" is not covered.
        clears: "yes" if a device ends it; then time: s, 0.001 to 3600.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold milliampere_few, _half and _most, verdict ("can-kill",
        "cannot-let-go", "felt" or "hardly-felt"), zone (of the most, None unless it clears), limit_milliampere (None
        outside its times or unless it clears), let_go_milliampere, interrupter_second (at the most current) and
        interrupter_second_longest (at the least; None where it need not open).
    Raises: nothing; bad or missing input ends as `fix`, someone in water as `not_covered`.
    Source: IEC 60479-1 (body impedance, zones); Dalziel (let-go); IEEE 80 (fibrillation limit); UL 943 class A.

    Example:
    >>> result = shock_limits(voltage=120, condition="dry", path="hand-hand")
    >>> result.answer_code, round(result.answer.values["milliampere_half"])
    ('can-kill-131-milliampere', 76)
    """
    if condition == ask.IN_WATER:
        raise tell.in_the_water()
    second = require(time, "time") if clears == "yes" else None
    lasts = second is None or second > longest_for_the_limit(trace)
    tell.warn_first(condition, trace)
    currents = body_currents(voltage, path, condition, trace)
    tell.tell_of_letting_go(currents, path, trace)
    let_go = least_let_go(trace)
    if second is None:
        zone = limit = None
        verdict = lasting_verdict(currents.most, trace)
        charts = (_bars(currents, trace),)
        trace.note(message("Nothing stops it, so no time limit applies. Only letting go matters."))
        if time is not None:
            trace.note(message("The time entered is not used: it applies only if a device clears the fault."))
    else:
        zone = zone_of(currents.most, second, trace)
        trace.step(message("Zone of the most current and this time: {zone}.", zone=zone), zone, "", (ZONES,))
        limit = fibrillation_limit(second, trace)
        verdict = _ending(currents.most, let_go, zone, limit)
        if lasts:
            verdict = min(verdict, lasting_verdict(currents.most, trace), key=tell.WORST_FIRST.index)
        charts = (zone_chart(currents, second, trace), limit_chart(currents, second, trace))
    fastest, slowest = (interrupter_time(each, trace) for each in (currents.most, currents.few))
    tell.tell_of_interrupters(fastest, slowest, voltage, path, trace)
    tell.state_the_body(trace)
    return Answer(
        name=NAME,
        headline=_headline(currents, path, condition, second),
        detail=_detail(verdict, currents, _heart(limit, second, trace), lasts, path, trace),
        basis=IMPEDANCE,
        answer_code=f"{verdict}-{number_for_code(currents.most)}-milliampere",
        values={
            "milliampere_few": currents.few,
            "milliampere_half": currents.half,
            "milliampere_most": currents.most,
            "verdict": verdict,
            "zone": zone,
            "limit_milliampere": limit,
            "let_go_milliampere": let_go,
            "interrupter_second": fastest,
            "interrupter_second_longest": slowest,
        },
        charts=charts,
    )


def _ending(most: float, let_go: float, zone: str, limit: float | None) -> str:
    """Judge a shock that ends: it can kill past the lower of the heart's two limits."""
    if zone in HEART or (limit is not None and most > limit):
        return tell.CAN_KILL
    if most > let_go:
        return tell.CANNOT_LET_GO
    return tell.HARDLY_FELT if zone == "AC-1" else tell.FELT


def _heart(limit: float | None, second: float | None, trace: Trace) -> float | None:
    """Return the lower of the heart's two limits at a time, mA; None where the fibrillation limit does not hold."""
    return None if limit is None else min(limit, curve_at(trace.cite(ZONES), "c1", known(second)))


def _headline(currents: Currents, path: str, condition: str, second: float | None) -> Message:
    words = {"most": at_most(currents.most), "path": tell.PATH_WORDS[path], "skin": tell.SKIN_WORDS[condition]}
    if second is None:
        return message("Up to {most} mA {path}, {skin}, and it does not stop", **words)
    return message("Up to {most} mA {path}, {skin}, for {second} s", second=shown_number(second), **words)


def _detail(
    verdict: str, currents: Currents, heart: float | None, lasts: bool, path: str, trace: Trace
) -> Message:
    half = at_least(currents.half)
    many = currents.half > max(row["half"] for row in trace.cite(LET_GO).rows)
    held = tell.held(many, path)
    if verdict == tell.CAN_KILL:
        return message("It can kill. Half of people get more than {half} mA.", half=half)
    if verdict == tell.CANNOT_LET_GO and lasts:
        return message("{held}. Skin breaks down, the current grows, and it can kill.", held=held)
    if verdict == tell.CANNOT_LET_GO and heart is not None:
        return message(
            "{held}, half get more than {half} mA. Under {limit} mA few hearts fibrillate, if it stops in time.",
            held=held,
            half=half,
            limit=at_least(heart),
        )
    if verdict == tell.CANNOT_LET_GO:
        return message("{held}. Half of people get more than {half} mA.", held=held, half=half)
    if verdict == tell.FELT:
        return message(
            "It is felt. Less current holds a child than an adult. Being startled, a fall or water can turn it deadly."
        )
    return message("Hardly felt on land, but it shows that something is wrong.")


def _bars(currents: Currents, trace: Trace) -> Chart:
    """Return the currents beside those at which people can just let go."""
    women, men = trace.cite(LET_GO).rows
    bars = (
        (message("Most"), currents.most),
        (message("Half get more"), currents.half),
        (message("Few get less"), currents.few),
        (message("Men let go"), men["nearly_all"]),
        (message("Women let go"), women["nearly_all"]),
    )
    points = tuple((place, round(each, 3)) for place, (_, each) in enumerate(bars))
    return Chart(
        "let-go",
        "bars",
        message("The current beside let-go currents"),
        message(""),
        message("Current, mA"),
        message("{across}: {up} mA", across="{across}", up="{up}"),
        (Line(message("Current"), points),),
        tuple(words for words, _ in bars),
    )
