"""The loop of one ground fault: its current, what opens, what stays on the metal, and how wire and raceway share it."""

from __future__ import annotations

from typing import Annotated

from calc.answer import Answer, Row, Table
from calc.declare import Mend, calculator, needed
from calc.fault import device_fields as devices
from calc.fault import loop_fields as ask
from calc.fault import return_path_fields as path
from calc.fault.caution import state_the_model
from calc.fault.device import opening
from calc.fault.device_limits import BREAKER
from calc.fault.loop import Loop, loop_of, loop_results
from calc.fault.ranges import Ranged, ranged
from calc.fault.return_path import driving_voltage
from calc.words import Sentence, say
from calc.working import Working, shown_number, three_figures

INPUT_WORDS = {
    "volt": say("voltage of the source"),
    "celsius": say("temperature of the wires"),
    "source": say("impedance of the source"),
    "steel": say("steel of the raceway and its joints"),
}


@calculator(
    "ground-fault-loop",
    name=say("Ground-fault loop"),
    purpose=say(
        "What a fault to metal drives, whether its device opens, and the voltage left on the metal until then."
    ),
    submit=say("Follow the fault"),
    example={
        "edition": "2023",
        "system": "120/240",
        "available": "2000",
        "conductor": "12",
        "return_conductor": "12",
        "length": "100 ft",
        "device": "20A",
    },
)
def ground_fault_loop(
    *,
    working: Working,
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
) -> Answer:
    """Give the current of a fault from one hot conductor to metal, how surely its device opens, and touch voltages.

    When: a grounded system up to 1000 V, one hot conductor, a wire or steel raceway or both back to where neutral and
    metal are joined. Three results are kept apart: lowest current for opening, highest for information, worst voltage.

    Parameters:
        device: rating, ampere, 1 to 10,000. device_kind: as in device_clearing; instantaneous_multiple: 2 to 50.
        conductor, return_conductor: size labels, "14" to "1000kcmil". length: feet one way, 1 to 100,000.
        system: such as "208Y/120", or voltage_to_ground: volt, 1 to 1000. One of them is needed.
        available: ampere line to ground where the run begins; None for a stiff source.
        conductor_metal, metal: "copper" or "aluminum".
        wiring: "wire", "raceway" or "both"; raceway: kind of steel raceway, trade_size: "1/2" to "4".
        joint: ohm of a loose joint in the raceway, or in the wire where there is none, 0 to 1000.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold lowest_ampere, likely_ampere, highest_ampere, verdict, multiple,
        touch_volt (worst, to earth), wire_share, raceway_share.
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: Chapter 9 Tables 8 and 9, physics of a steel tube, calc.fault.network, calc.fault.device.

    Example:
    >>> result = ground_fault_loop(
    ...     edition="2023", voltage_to_ground=120, device=20, conductor="12", return_conductor="12", length=100
    ... )
    >>> round(result.answer.values["likely_ampere"]), result.answer.values["verdict"]
    (326, 'likely')
    """
    volt = driving_voltage(system, voltage_to_ground, working)
    if wiring != "raceway":
        needed(return_conductor, "return_conductor")
    if wiring != "wire" and (raceway == path.NOT_GIVEN or trade_size == path.NOT_GIVEN):
        missing = "raceway" if raceway == path.NOT_GIVEN else "trade_size"
        raise Mend(missing, say("Choose it: the raceway is part of the way back."))
    loop = loop_of(
        volt=volt,
        available=available,
        out=(conductor, conductor_metal),
        back=(return_conductor, metal) if wiring != "raceway" else None,
        raceway=(raceway, trade_size) if wiring != "wire" else None,
        feet=length,
        joint=joint,
        working=working,
    )
    found = ranged(loop.inputs, lambda at: loop_results(loop, at))
    _record(loop, found, working)
    current = found.results["ampere"]
    seen = opening(current.low / device, device_kind, device, instantaneous_multiple)
    working.step(
        say(
            "For opening the lowest current counts: {ampere} A is {multiple} times {device} A. {words}",
            ampere=three_figures(current.low),
            multiple=three_figures(current.low / device),
            device=shown_number(device),
            words=seen.words,
        )
    )
    touch = found.results["touch"]
    _warn(seen.verdict, touch.high, joint, working)
    state_the_model(working, _assumptions(available))
    return Answer(
        name=say("Ground-fault loop"),
        headline=_headline(seen.verdict),
        detail=say(
            "{low} A at least, {high} A at most; up to {touch} V on the metal meanwhile",
            low=three_figures(current.low),
            high=three_figures(current.high),
            touch=three_figures(touch.high),
        ),
        basis=None,
        said=f"{seen.verdict}-{three_figures(current.low)}A-{three_figures(touch.high)}V".replace(",", ""),
        values={
            "lowest_ampere": current.low,
            "likely_ampere": current.likely,
            "highest_ampere": current.high,
            "multiple": current.low / device,
            "verdict": seen.verdict,
            "touch_volt": touch.high,
            "wire_share": found.results["wire"].likely,
            "raceway_share": found.results["raceway"].likely,
        },
        table=_table(found, loop),
    )


def _headline(verdict: str) -> Sentence:
    return {
        "assured": say("It opens"),
        "likely": say("It probably opens"),
        "slow": say("It opens, but slowly"),
        "not-assured": say("Not cleared"),
        "does-not-open": say("Not cleared"),
    }[verdict]


def _record(loop: Loop, found: Ranged, working: Working) -> None:
    at = {name: between.likely for name, between in loop.inputs.items()}
    solved = loop_results(loop, at)
    working.step(say("Likely current: voltage over the impedance out, back and in the source."), solved["ampere"], "A")
    shares = found.influence["ampere"]
    if shares:
        working.note(
            say(
                "What moves the current most: {inputs}.",
                inputs=", ".join(
                    f"{INPUT_WORDS[name]} {round(100 * share)} %" for name, share in shares if share >= 0.01
                ),
            )
        )


def _warn(verdict: str, touch: float, joint: float, working: Working) -> None:
    if verdict in ("not-assured", "does-not-open"):
        working.warn(
            say(
                "Nothing requires the device to open. Up to {touch} V stays on the metal until someone finds it.",
                touch=three_figures(touch),
            )
        )
    elif verdict == "slow":
        working.warn(
            say(
                "The device may take minutes or hours. Up to {touch} V is on the metal meanwhile.",
                touch=three_figures(touch),
            )
        )
    if joint:
        working.warn(say("A loose joint has no fixed resistance: it heats, opens, arcs. Make it tight and measure."))


def _table(found: Ranged, loop: Loop) -> Table:
    unit = {"ampere": "A", "touch": "V"}
    words = {"ampere": say("Fault current"), "touch": say("Voltage of the metal to earth and to the panel")}
    rows = [
        Row(
            {
                "what": words[name],
                "low": say("{value} {unit}", value=three_figures(found.results[name].low), unit=unit[name]),
                "likely": say("{value} {unit}", value=three_figures(found.results[name].likely), unit=unit[name]),
                "high": say("{value} {unit}", value=three_figures(found.results[name].high), unit=unit[name]),
            }
        )
        for name in ("ampere", "touch")
    ]
    if loop.back is not None and loop.raceway is not None:
        for name, label in (("wire", say("Share of the wire")), ("raceway", say("Share of the raceway"))):
            between = found.results[name]
            rows.append(
                Row(
                    {"what": label}
                    | {
                        key: say("{percent} %", percent=three_figures(100 * value))
                        for key, value in (("low", between.low), ("likely", between.likely), ("high", between.high))
                    }
                )
            )
    return Table(
        {"what": say("What"), "low": say("Lowest"), "likely": say("Likely"), "high": say("Highest")}, tuple(rows)
    )


def _assumptions(available: float | None) -> list[Sentence]:
    return [
        say("The fault is metal to metal, without an arc; an arc lowers the current further."),
        say("Neutral and metal are joined where the run begins. The earth carries nothing worth counting."),
        say("Wires between 25 and 75 °C; the source gives 95 to 100 percent of its voltage."),
        say("A stiff source: nothing ahead of the run holds the current back.")
        if available is None
        else say("The source holds back what its stated current says, added straight to the rest."),
        say("Steel of a raceway differs widely; every joint is tight but for the one entered."),
    ]
