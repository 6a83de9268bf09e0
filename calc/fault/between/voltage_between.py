"""What a meter shows between two metal parts, apart and bonded, and what a body across them takes."""

from __future__ import annotations

from typing import Annotated

from calc.answer import Answer
from calc.calculator import FieldError, calculator, require
from calc.electrodes.entered import number_for_code
from calc.fault.between import between_fields as ask
from calc.fault.between.between_circuit import BetweenVoltages, Parts, between_voltages
from calc.fault.between.between_outputs import OUTPUTS
from calc.fault.between.between_shown import (
    BETWEEN,
    ONE_EARTH,
    TWO_EARTH,
    bars_of,
    body_values,
    people_of,
    table_of,
    values_of,
    volt_of,
    volt_words,
    worst_of,
)
from calc.fault.between.between_words import BODY, say_what_it_means, show_the_steps
from calc.messages import Message, message
from calc.touch.shock.people import told_at_a_glance
from calc.trace import Trace

FIGURES = 4  # decimals of a volt that links carry
NAME = message("Voltage between two parts")


@calculator(
    "voltage-between",
    name=NAME,
    purpose=message(
        "What a meter shows between two metal parts with a leak or stray voltage, with and without a bond."
    ),
    submit=message("See the readings"),
    example={
        "edition": "2023",
        "cause": "leak",
        "leak_ampere": "10 mA",
        "one_earth_ohm": "10,000 ohm",
        "two_neutral_ohm": "0.1 ohm",
    },
    outputs=OUTPUTS,
)
def voltage_between(
    *,
    trace: Trace,
    cause: Annotated[str, ask.CAUSE] = ask.LEAK,
    leak_ampere: Annotated[float | None, ask.LEAK_AMPERE] = None,
    leak_ohm: Annotated[float | None, ask.LEAK_OHM] = None,
    voltage: Annotated[float, ask.VOLTAGE] = 120,
    neutral_volt: Annotated[float | None, ask.NEUTRAL_VOLT] = None,
    one_neutral_ohm: Annotated[float | None, ask.ONE_NEUTRAL] = None,
    one_earth_ohm: Annotated[float | None, ask.ONE_EARTH] = None,
    two_neutral_ohm: Annotated[float | None, ask.TWO_NEUTRAL] = None,
    two_earth_ohm: Annotated[float | None, ask.TWO_EARTH] = None,
    bond_ohm: Annotated[float, ask.BOND] = 0.01,
    neutral_ohm: Annotated[float, ask.NEUTRAL_OHM] = 10,
) -> Answer:
    """Return the voltage between two metal parts and of each to remote earth, apart and bonded, and a body's current.

    When: a leak that lasts, or a utility's voltage on the neutral, at 60 Hz on a grounded system. Not for people or
    animals in water, for the short time until a fault is cleared, or for parts with reactance that counts.

    Parameters:
        cause: "leak" or "utility". voltage: V, 1 to 1000. leak_ampere: A, with part one solidly bonded, or leak_ohm.
        neutral_volt: V of the neutral to remote earth, for "utility".
        one_neutral_ohm, one_earth_ohm, two_neutral_ohm, two_earth_ohm: ohm of each path, None for no path.
        bond_ohm: of the bond between the parts, 0.0001 to 1000. neutral_ohm: of the neutral to earth, for a leak.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold, each for apart_ and bonded_: between_volt, one_volt, two_volt and
        neutral_volt (to remote earth), leak_ampere, bond_ampere, and the mA between_body, one_body and two_body of a
        body of 1000 ohm and between_body_wet, one_body_wet and two_body_wet of one of 500. Of people as shock-limits
        counts them: apart_between_milliampere_wet_few to _shod_most, and milliampere_worst of all, apart and bonded.
    Raises: nothing; bad or missing input, and a part without any path, end as `fix`.
    Source: nodal analysis, calc.fault.circuit.network; IEC 60479-1 and IEEE 80 (body); Dalziel (let-go).

    Example:
    >>> result = voltage_between(leak_ohm=12000, one_earth_ohm=10000, two_neutral_ohm="0.1")
    >>> round(result.answer.values["apart_between_volt"], 1), result.answer.values["bonded_between_volt"] < 0.001
    (54.6, True)
    """
    parts = Parts(
        volt=voltage if cause == ask.LEAK else require(neutral_volt, "neutral_volt"),
        leak=_leak(leak_ampere, leak_ohm, voltage, trace) if cause == ask.LEAK else None,
        neutral_earth=neutral_ohm,
        one_neutral=one_neutral_ohm,
        one_earth=one_earth_ohm,
        two_neutral=two_neutral_ohm,
        two_earth=two_earth_ohm,
        bond=bond_ohm,
    )
    _no_part_without_a_path(parts)
    body = trace.cite(BODY).rows[0]
    ohms = (body["usual"], body["low"])
    apart, bonded = between_voltages(parts, False, ohms), between_voltages(parts, True, ohms)
    people = people_of(apart, trace), people_of(bonded, trace)
    worst = worst_of(*people)
    show_the_steps(parts, apart, bonded, body["usual"], people[0], trace)
    say_what_it_means(parts, apart, bonded, body["usual"], worst, trace)
    return Answer(
        name=NAME,
        headline=message(
            "{apart} between them, {bonded} once bonded; up to {earth} to earth",
            apart=volt_of(apart),
            bonded=volt_of(bonded),
            earth=volt_words(max(found.volts[pair] for found in (apart, bonded) for pair in (ONE_EARTH, TWO_EARTH))),
        ),
        detail=_detail(bonded, worst, trace),
        basis=BODY,
        answer_code="-".join(f"{number_for_code(round(found.volts[BETWEEN], FIGURES))}V" for found in (apart, bonded)),
        values=values_of("apart", apart, ohms) | values_of("bonded", bonded, ohms) | body_values(*people),
        table=table_of(apart, bonded, body["usual"], people),
        charts=(bars_of(apart, bonded),),
    )


def _detail(bonded: BetweenVoltages, worst: float, trace: Trace) -> Message:
    return message(
        "{people} Bonded, {one} and {two} remain to remote earth.",
        people=told_at_a_glance(worst, False, trace),
        one=volt_of(bonded, ONE_EARTH),
        two=volt_of(bonded, TWO_EARTH),
    )


def _leak(ampere: float | None, ohm: float | None, volt: float, trace: Trace) -> float:
    if ohm is not None and ampere is not None:
        raise FieldError("leak_ohm", message("Enter the leakage current or the leakage resistance, not both."))
    if ohm is not None:
        return ohm
    return trace.compute(
        message("The leak as a resistance."), "volt / ampere", "ohm", volt=volt, ampere=require(ampere, "leak_ampere")
    )


def _no_part_without_a_path(parts: Parts) -> None:
    floats = message("This part has no path at all. Enter its ohms to earth; even a dry stand or floor has some.")
    if parts.leak is None and parts.one_neutral is None and parts.one_earth is None:
        raise FieldError("one_earth_ohm", floats)
    if parts.two_neutral is None and parts.two_earth is None:
        raise FieldError("two_earth_ohm", floats)
    if parts.leak is None and parts.one_neutral is None and parts.two_neutral is None:
        raise FieldError(
            "one_neutral_ohm", message("Neither part connects to the neutral. Enter the ohms of the one that does.")
        )
