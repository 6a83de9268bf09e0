"""The longest run at which a ground fault still brings the device the current that is asked for."""

from __future__ import annotations

from typing import Annotated

import calc.fault.return_path.return_path_fields as ask
from calc.calculator import Answer, calculator
from calc.fault.caution import state_the_model
from calc.fault.likely_slip import remark_on_device
from calc.fault.return_path.longest_outputs import OUTPUTS
from calc.fault.return_path.longest_words import detail_of, headline_of, others_of, within
from calc.fault.return_path.return_path import PARTS, WHICH, driving_voltage, feet, paths, ranked, wires
from calc.known import known
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.rounded import THREE, at_least, three_figures
from calc.trace import Trace, shown_number

PRACTICE = "fault/return_path_multiple"


@calculator(
    "longest-return-path",
    name=message("Longest ground-fault return path"),
    purpose=message(
        "How long a run can be and still let a fault to metal draw the current you want through the breaker or fuse."
    ),
    submit=message("Find the length"),
    example={
        "edition": "2023",
        "system": "120/240",
        "device": "20A",
        "conductor": "12",
        "wiring": "electrical-metallic-tubing",
        "trade_size": "1/2",
    },
    outputs=OUTPUTS,
    margin=Margin(("length",), verdict="within"),
)
def longest_return_path(
    *,
    trace: Trace,
    device: Annotated[float, ask.DEVICE],
    conductor: Annotated[str, ask.CONDUCTOR],
    system: Annotated[str, ask.SYSTEM] = ask.NOT_GIVEN,
    voltage_to_ground: Annotated[float | None, ask.VOLTAGE] = None,
    multiple: Annotated[float, ask.MULTIPLE] = ask.MULTIPLE_OF_PRACTICE,
    conductor_metal: Annotated[str, ask.CONDUCTOR_METAL] = "copper",
    wiring: Annotated[str, ask.WIRING] = "wire-in-nonmetallic",
    return_conductor: Annotated[str | None, ask.RETURN_CONDUCTOR] = None,
    metal: Annotated[str, ask.METAL] = "copper",
    trade_size: Annotated[str, ask.TRADE_SIZE] = ask.NOT_GIVEN,
    length: Annotated[float | None, ask.LENGTH] = None,
    arc: Annotated[float, ask.ARC] = 0,
    available: Annotated[float | None, ask.AVAILABLE] = None,
    spacing: Annotated[float | None, ask.SPACING] = None,
) -> Answer:
    """Return the shortest, the likely and the longest run at which a fault still brings the current asked for.

    When: one hot conductor and one way back, grounded systems, 60 Hz, up to 1000 V to ground. Not for parallel
    sets, ungrounded or impedance-grounded systems, flexible or aluminum raceway as the way back.

    Parameters:
        device: rating, ampere, 1 to 10,000. multiple: fault current over rating, 1 to 100.
        conductor, return_conductor: size labels, "14" to "1000kcmil"; return_conductor only for a wire back.
        system: such as "208Y/120"; voltage_to_ground: volt, 1 to 1000. One of them is needed; entered, it counts.
        conductor_metal, metal: "copper" or "aluminum", of the hot conductor and of the wire back.
        wiring: "wire-in-nonmetallic", "wire-in-steel", the raceway that is the way back, or "wire-apart" with spacing:
            feet between hot conductor and wire, 0.1 to 1000.
        trade_size: "1/2" to "4", for a raceway. length: ft, a run to judge, or None.
        arc: volt lost in the arc, 0 to 1000. available: least ampere line to ground at the device, or None.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold shortest_ft, likely_ft, longest_ft, current_ampere, within; with no
        available current entered shortest_with_source_ft, with no arc entered shortest_with_arc_ft (else None).
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: Chapter 9 Tables 4 and 9 (2017), physics of a steel tube, trade practice for multiple and arc.

    Example:
    >>> result = longest_return_path(
    ...     edition="2023", voltage_to_ground=120, device=20, conductor="12", return_conductor="12"
    ... )
    >>> [result.answer.values[name] for name in ("shortest_ft", "likely_ft", "longest_ft")]
    [284, 326, 357]
    """
    volt = driving_voltage(system, voltage_to_ground, trace)
    ampere = trace.compute(
        message("The fault current wanted, as a multiple of the rating."),
        "multiple * rating",
        "A",
        (PRACTICE,),
        multiple=multiple,
        rating=device,
    )
    source = 0.0
    if available is not None:
        source = trace.compute(
            message("Impedance of the source and the wires ahead of the run, added straight to the rest."),
            "voltage / available",
            "Ω",
            voltage=volt,
            available=available,
        )
    ways = paths(wiring, (conductor, conductor_metal), (return_conductor, metal), trade_size, spacing, trace)
    # The source adds straight, not as a phasor, and the arc takes its voltage off first: never too long.
    found: dict[str, int] = {}
    for way in ways:
        length_of_way = trace.compute(
            message(
                "{which}: wires at {celsius} °C, out and back {ohm} Ω per 1000 ft.",
                which=WHICH[way.which],
                celsius=way.celsius,
                ohm=three_figures(1000 * abs(way.ohm_per_foot)),
            ),
            "((voltage * share - arc) / current - source) / path * thousand",
            "ft",
            ("fault/wire_and_voltage_range",),
            voltage=volt,
            share=way.voltage_share,
            arc=arc,
            current=ampere,
            source=source,
            path=1000 * abs(way.ohm_per_foot),
            thousand=1000,
        )
        found[way.which] = feet(length_of_way)
    trace.note(
        message(
            "Likely {likely} ft, at best {high} ft. Plan on the shortest.",
            likely=at_least(found["likely"], THREE),
            high=at_least(found["high"], THREE),
        ),
        grave=True,
    )
    losses = ranked(ways, volt, arc, source, ampere)
    if losses:
        trace.note(
            message(
                "What makes the shortest shorter than the likely one, biggest effect first: {parts}.",
                parts=", ".join(f"{PARTS[part]} ({shown_number(feet(lost))} ft)" for part, lost in losses),
            )
        )
    back = (known(return_conductor), metal) if wiring in ask.WIRE_IN else None
    shown_wires, at = wires((conductor, conductor_metal), back, steel=False), (volt, arc, ampere)
    others = others_of(ways[0], volt, arc, available, ampere, trace)
    remark_on_device(device, conductor, conductor_metal, trace)
    _warn(found, length, multiple, wiring, trace)
    state_the_model(trace, _assumptions(wiring, arc, available))
    return Answer(
        name=message("Longest ground-fault return path"),
        headline=headline_of(found, length, available, ways[0], at),
        detail=detail_of(found, length, available, others, ampere, shown_wires),
        basis=PRACTICE,
        answer_code=f"{found['low']}ft-{found['likely']}ft-{found['high']}ft",
        values={
            "shortest_ft": found["low"],
            "likely_ft": found["likely"],
            "longest_ft": found["high"],
            "current_ampere": ampere,
            "within": within(found, length),
            "shortest_with_source_ft": others.with_source,
            "shortest_with_arc_ft": others.with_arc,
        },
    )


def _warn(found: dict[str, int], length: float | None, multiple: float, wiring: str, trace: Trace) -> None:
    verdict = within(found, length)
    run = shown_number(length or 0)
    if verdict == "yes":
        trace.note(message("Your {feet} ft is within the shortest of the three.", feet=run))
    elif verdict == "not-sure":
        trace.warn(
            message("Your {feet} ft is longer than the shortest. The fault may draw less current. Measure.", feet=run)
        )
    elif verdict == "no":
        trace.warn(
            message("Your {feet} ft is too long. Even at best, the fault draws less current than you want.", feet=run),
            grave=True,
        )
    if wiring in ask.RACEWAYS:
        trace.warn(message("One loose, painted or rusted fitting voids all three lengths."))
    usual = trace.cite(PRACTICE).value
    if multiple < usual:
        trace.warn(
            message(
                "Trade practice is at least {usual} times the rating. With less, a device may take minutes.",
                usual=usual,
            )
        )


def _assumptions(wiring: str, arc: float, available: float | None) -> list[Message]:
    made = [
        message("one fault at the far end, out on one wire, back on one path, 60 Hz."),
        message("the shortest length takes warm wires and low voltage, the longest cold wires and full voltage."),
        message("reaching this current does not say how fast the device opens."),
    ]
    if wiring in ask.RACEWAYS:
        made.append(
            message(
                "plain steel and tight joints every 10 ft; the impedance of steel changes with current, so the range "
                "is "
                "wide."
            )
        )
    if not arc:
        made.append(
            message("solid metal-to-metal contact. An arc takes {volt} V by trade practice.", volt=ask.ARC_OF_PRACTICE)
        )
    if available is None:
        made.append(message("an infinite source for the headline and the three lengths."))
    return made
