"""What the readings between two parts mean: the steps, what to do first, what a bond does and does not do."""

from __future__ import annotations

from calc.fault.between.between_circuit import BetweenVoltages, Parts
from calc.fault.between.between_shown import (
    BETWEEN,
    MILLI,
    MIN_MILLIAMPERE,
    MIN_VOLT,
    ONE_EARTH,
    TWO_EARTH,
    People,
    milli_words,
    volt_of,
    volt_words,
)
from calc.fault.caution import state_the_model
from calc.messages import message
from calc.rounded import at_most
from calc.touch.shock.lasting_current import warn_of_a_lasting_current
from calc.touch.shock.people import record_people
from calc.trace import Trace, shown_number

BODY = "touch/body_resistance"
ASSUMPTIONS = (
    message("no device opens: the leak or stray voltage lasts until someone finds it"),
    message("resistance only; where the reactance of wires and bonds matters, use the ground-fault loop"),
    message("each path to earth is far from the others and from the source's electrodes"),
    message("the person touching a part stands on remote earth; nearer the part, or in dry shoes, less flows"),
)


def show_the_steps(
    parts: Parts, apart: BetweenVoltages, bonded: BetweenVoltages, usual: float, people: People, trace: Trace
) -> None:
    """Record the readings apart and bonded, what a body changes, and the current of the leak."""
    for words, found in ((message("Not bonded"), apart), (message("Bonded"), bonded)):
        trace.step(
            message(
                "{how}: {between} between the parts, {one} and {two} to remote earth, the neutral {neutral}.",
                how=words,
                between=volt_of(found),
                one=volt_of(found, ONE_EARTH),
                two=volt_of(found, TWO_EARTH),
                neutral=volt_words(found.neutral_volt),
            ),
            found.volts[BETWEEN],
            "V",
        )
    trace.step(
        message(
            "A body of {ohm} ohm across the parts is one more branch: with no bond, {current} flows and {left} is "
            "left.",
            ohm=shown_number(usual),
            current=milli_words(apart.bodies[BETWEEN][usual]),
            left=volt_words(apart.bodies[BETWEEN][usual] * usual),
        ),
        MILLI * apart.bodies[BETWEEN][usual],
        "mA",
        (BODY,),
    )
    record_people(people[BETWEEN], trace)
    if parts.leak is not None:
        trace.step(
            message(
                "Leakage current: {apart} not bonded, {bonded} bonded.",
                apart=milli_words(apart.leak),
                bonded=milli_words(bonded.leak),
            ),
            bonded.leak,
            "A",
        )


def say_what_it_means(
    parts: Parts, apart: BetweenVoltages, bonded: BetweenVoltages, usual: float, worst: float, trace: Trace
) -> None:
    """Warn of the tingle, the body's current and what a bond leaves, and state what the model assumes."""
    trace.warn(
        message(
            "If anyone feels a tingle: keep people and animals away and touch neither part. Shut the power off from "
            "well away, and call the utility or a qualified person."
        ),
        grave=True,
    )
    most = message("{most} mA", most=at_most(max(worst, MIN_MILLIAMPERE)))
    if not warn_of_a_lasting_current(worst, most, trace):
        trace.warn(message("Through a body: {most} at most. Being startled, or a fall, can still hurt you.", most=most))
    trace.warn(message("In water, and for livestock, far less can do harm. No figure here is for them."))
    trace.warn(
        message(
            "With a bond of {ohm} ohm, {between} is left between the parts. The bond does not remove their voltage "
            "to earth: that is up to {volt}.",
            ohm=shown_number(parts.bond),
            between=volt_of(bonded),
            volt=volt_words(max(bonded.volts[ONE_EARTH], bonded.volts[TWO_EARTH])),
        )
    )
    if bonded.volts[TWO_EARTH] > apart.volts[TWO_EARTH] + MIN_VOLT:
        trace.warn(
            message(
                "The bond raises part two from {before} to {after} to earth. Bond all metal within reach, and back "
                "to the neutral at the service.",
                before=volt_of(apart, TWO_EARTH),
                after=volt_of(bonded, TWO_EARTH),
            )
        )
    if parts.leak is not None:
        trace.note(
            message(
                "{volt} V to neutral drives the leak, and the neutral has {neutral} ohm to earth.",
                volt=shown_number(parts.volt),
                neutral=shown_number(parts.neutral_earth),
            )
        )
        trace.note(
            message(
                "Once bonded, {ampere} flows. For whether a device opens at that, use the ground-fault loop.",
                ampere=milli_words(bonded.leak),
            )
        )
    if parts.leak is not None and parts.one_neutral is None and parts.two_neutral is None:
        trace.note(
            message(
                "No metal path leads back to the neutral here. A bond between the parts alone trips no breaker "
                "({section}).",
                section=trace.section("grounding/effective_fault_path"),
            ),
            grave=True,
        )
    trace.note(
        message(
            "An ordinary meter draws almost no current, so it shows even a weak leak in full. With {ohm} ohm across "
            "its leads, a weak one drops.",
            ohm=shown_number(usual),
        )
    )
    trace.note(
        message(
            "Body path: one hand to both feet, figured as in “What a shock does”, at the voltage left across it. Wet "
            "skin has no more than {wet} ohm. Soil adds nothing; shoes only lower the low end of the range.",
            wet=shown_number(trace.cite(BODY).rows[0]["low"]),
        )
    )
    state_the_model(trace, ASSUMPTIONS)
