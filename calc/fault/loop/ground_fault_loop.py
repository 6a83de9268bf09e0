"""The loop of one ground fault: its current, what opens, what stays on the metal, and how wire and raceway share it."""

from __future__ import annotations

import math
from typing import Annotated

from calc.answer import Answer, Row, Table
from calc.calculator import FieldError, calculator, require
from calc.fault.caution import state_the_model
from calc.fault.circuit.ranges import Ranged, ranged
from calc.fault.device import device_fields as devices
from calc.fault.device.device import bounding_rules
from calc.fault.device.device_limits import BREAKER, NOT_SURE, TOLERANCE_RULE, limits, sure_multiple
from calc.fault.device.device_notes import require_one_device
from calc.fault.device.device_words import HEADLINES, in_short
from calc.fault.likely_slip import remark_on_device
from calc.fault.loop import loop_fields as ask
from calc.fault.loop.loop import Loop, loop_of, loop_results
from calc.fault.loop.loop_conditions import Device, conditions, least_available, through_an_arc
from calc.fault.loop.loop_notes import assumptions, note_the_loop
from calc.fault.loop.loop_outputs import OUTPUTS
from calc.fault.return_path import return_path_fields as path
from calc.fault.return_path.return_path import driving_voltage, wires
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.rounded import THREE, at_least, at_most, three_figures
from calc.trace import Trace, shown_number

INPUT_WORDS = {
    "volt": message("voltage of the source"),
    "celsius": message("temperature of the wires"),
    "source": message("impedance of the source"),
    "arc": message("the arc"),
    "steel": message("steel of the raceway and its joints"),
}


@calculator(
    "ground-fault-loop",
    name=message("Ground-fault loop"),
    purpose=message(
        "The current in a fault to metal, whether the breaker or fuse opens, and the voltage on the metal until then."
    ),
    submit=message("Follow the fault"),
    example={
        "edition": "2023",
        "system": "120/240",
        "available": "2000",
        "conductor": "12",
        "return_conductor": "12",
        "length": "100 ft",
        "device": "20A",
    },
    outputs=OUTPUTS,
    margin=Margin(("length",), verdict="verdict", close=0.005),
)
def ground_fault_loop(
    *,
    trace: Trace,
    device: Annotated[float, ask.DEVICE],
    conductor: Annotated[str, path.CONDUCTOR],
    length: Annotated[float, ask.LENGTH],
    system: Annotated[str, path.SYSTEM] = path.NOT_GIVEN,
    voltage_to_ground: Annotated[float | None, path.VOLTAGE] = None,
    available: Annotated[float | None, ask.AVAILABLE] = None,
    conductor_metal: Annotated[str, path.CONDUCTOR_METAL] = "copper",
    wiring: Annotated[str, ask.WIRING] = "wire",
    return_conductor: Annotated[str | None, ask.RETURN_CONDUCTOR] = None,
    metal: Annotated[str, path.METAL] = "copper",
    raceway: Annotated[str, ask.RACEWAY] = path.NOT_GIVEN,
    trade_size: Annotated[str, path.TRADE_SIZE] = path.NOT_GIVEN,
    joint: Annotated[float, ask.JOINT] = 0,
    device_kind: Annotated[str, ask.DEVICE_KIND] = BREAKER,
    instantaneous_multiple: Annotated[float | None, devices.INSTANTANEOUS_MULTIPLE] = None,
    instantaneous_read: Annotated[str, devices.INSTANTANEOUS_READ] = NOT_SURE,
    fuse_class: Annotated[str, devices.FUSE_CLASS] = "general",
    arc: Annotated[float, path.ARC] = 0,
    spacing: Annotated[float | None, ask.SPACING] = None,
) -> Answer:
    """Return the current of a fault from one hot conductor to metal, how surely its device opens, and touch voltages.

    When: a grounded system up to 1000 V, one hot conductor, a wire or steel raceway or both back to where neutral and
    metal are joined. Three results are kept apart: lowest current for opening, highest for information, worst voltage.

    Parameters:
        device: rating, ampere, 1 to 10,000. device_kind, fuse_class, instantaneous_multiple, instantaneous_read: as in
            device_clearing.
        conductor, return_conductor: size labels, "14" to "1000kcmil". length: feet one way, 1 to 100,000.
        system: such as "208Y/120", or voltage_to_ground: volt, 1 to 1000. One of them is needed.
        available: least ampere line to ground where the run begins; None where it is not known.
        conductor_metal, metal: "copper" or "aluminum".
        wiring: "wire", "raceway", "both" or "wire-apart"; raceway: kind of steel raceway, trade_size: "1/2" to "4".
        spacing: feet between hot conductor and a wire apart, 0.1 to 1000. arc: volt lost in the arc, 0 to 1000.
        joint: ohm of a loose joint in the raceway, or in the wire where there is none, 0 to 1000.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold lowest_ampere, likely_ampere, highest_ampere, verdict, multiple,
        slowest_second, touch_volt (worst, metal to panel), wire_share, raceway_share; least_available_ampere (for the
        verdict), arc_ampere and arc_verdict (through an arc, where none was entered).
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: Chapter 9 Tables 8 and 9, physics of a steel tube and of parallel wires, calc.fault.device.device.

    Example:
    >>> result = ground_fault_loop(
    ...     edition="2023", voltage_to_ground=120, device=20, conductor="12", return_conductor="12", length=100
    ... )
    >>> round(result.answer.values["likely_ampere"]), result.answer.values["verdict"]
    (326, 'likely')
    """
    volt = driving_voltage(system, voltage_to_ground, trace)
    require_one_device(device_kind, device, instantaneous_multiple, fuse_class, trace)
    steel, wire = wiring in ("raceway", "both"), wiring != "raceway"
    back = (require(return_conductor, "return_conductor"), metal) if wire else None
    if steel and path.NOT_GIVEN in (raceway, trade_size):
        missing = "raceway" if raceway == path.NOT_GIVEN else "trade_size"
        raise FieldError(missing, message("Choose it: the raceway is part of the return path."))
    loop = loop_of(
        volt=volt,
        available=available,
        out=(conductor, conductor_metal),
        back=back,
        raceway=(raceway, trade_size) if steel else None,
        feet=length,
        joint=joint,
        spacing=require(spacing, "spacing") if wiring == path.APART else None,
        arc=arc,
        trace=trace,
    )
    found = ranged(loop.inputs, lambda at: loop_results(loop, at))
    _record(loop, found, trace)
    sure = instantaneous_multiple and sure_multiple(instantaneous_multiple, instantaneous_read)
    judged = Device(device_kind, device, sure, fuse_class, limits(device_kind, device, sure, fuse_class))
    current, touch = found.results["ampere"], found.results["touch"]
    seen = judged.opening(current.low)
    cites = (*bounding_rules(seen, judged.limits), *((TOLERANCE_RULE,) if sure else ()))
    trace.step(
        message(
            "The lowest current decides whether it opens: {ampere} A is {multiple} times {device} A. {words}",
            ampere=at_least(current.low, THREE),
            multiple=three_figures(current.low / device),
            device=shown_number(device),
            words=seen.words,
        ),
        cites=cites,
    )
    low_volt = loop.inputs["volt"].low
    least = least_available(judged, seen, current.low, volt, low_volt - arc, loop.source_ohm)
    arcing = None if arc else through_an_arc(judged, current.low, low_volt, trace.edition)
    told = conditions(None if available else least, seen, arcing)
    if told:
        trace.cite(path.ARC_RULE)
    short = in_short(
        seen, device_kind, current.low / device, fuse_class, instantaneous_multiple, instantaneous_read
    )
    remark_on_device(device, conductor, conductor_metal, trace)
    note_the_loop(seen, current.high, touch.high, joint, device_kind, trace)
    state_the_model(trace, assumptions(available, arc, wiring))
    return Answer(
        name=message("Ground-fault loop"),
        headline=HEADLINES[seen.verdict],
        detail=_detail(short, loop, found, told),
        basis=None,
        answer_code=f"{seen.verdict}-{at_least(current.low, THREE)}A-{at_most(touch.high, THREE)}V".replace(",", ""),
        values={
            "lowest_ampere": current.low,
            "likely_ampere": current.likely,
            "highest_ampere": current.high,
            "multiple": current.low / device,
            "verdict": seen.verdict,
            "slowest_second": seen.slowest_second,
            "touch_volt": touch.high,
            "wire_share": found.results["wire"].likely,
            "raceway_share": found.results["raceway"].likely,
            "least_available_ampere": None if least == math.inf else least,
            "arc_ampere": arcing and arcing.ampere,
            "arc_verdict": arcing and arcing.seen.verdict,
        },
        table=_table(found, loop),
    )


def _detail(short: Message, loop: Loop, found: Ranged, told: list[Message]) -> Message:
    """Return how long it takes, the currents with the wires they are for, the voltage, and when it is another case."""
    current = found.results["ampere"]
    flowing = message(
        "{low} to {high} A, {wires}",
        low=at_least(current.low, THREE),
        high=at_most(current.high, THREE),
        wires=wires(loop.out, loop.back, loop.raceway is not None),
    )
    if not loop.source_ohm:
        flowing = message("With an infinite source, {flowing}", flowing=flowing)
    touch = message("Up to {touch} V from metal to panel", touch=at_most(found.results["touch"].high, THREE))
    return message("{parts}.", parts=". ".join(map(str, [short, flowing, touch, *told])))


def _record(loop: Loop, found: Ranged, trace: Trace) -> None:
    at = {name: between.likely for name, between in loop.inputs.items()}
    solved = loop_results(loop, at)
    words = message("Likely current: voltage divided by the impedance out, back and in the source.")
    trace.step(words, solved["ampere"], "A")
    shares = found.influence["ampere"]
    if shares:
        trace.note(
            message(
                "What changes the current most: {inputs}.",
                inputs=", ".join(
                    f"{INPUT_WORDS[name]} {round(100 * share)} %" for name, share in shares if share >= 0.01
                ),
            )
        )


def _table(found: Ranged, loop: Loop) -> Table:
    unit = {"ampere": "A", "touch": "V"}
    words = {"ampere": message("Fault current"), "touch": message("Voltage of the metal to the panel")}
    rows = [
        Row(
            {
                "what": words[name],
                "low": message("{value} {unit}", value=at_least(found.results[name].low, THREE), unit=unit[name]),
                "likely": message("{value} {unit}", value=three_figures(found.results[name].likely), unit=unit[name]),
                "high": message("{value} {unit}", value=at_most(found.results[name].high, THREE), unit=unit[name]),
            }
        )
        for name in ("ampere", "touch")
    ]
    if loop.back is not None and loop.raceway is not None:
        for name, label in (("wire", message("Share on the wire")), ("raceway", message("Share on the raceway"))):
            between = found.results[name]
            rows.append(
                Row(
                    {"what": label}
                    | {
                        key: message("{percent} %", percent=three_figures(100 * value))
                        for key, value in (("low", between.low), ("likely", between.likely), ("high", between.high))
                    }
                )
            )
    return Table(
        {
            "what": message("What"), "low": message("Lowest"), "likely": message("Likely"), "high": message("Highest")
        }, tuple(
            rows
        )
    )
