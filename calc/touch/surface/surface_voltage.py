"""The voltage on the ground over live buried metal, and what someone there may feel."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from calc.calculator import Answer, calculator
from calc.electrodes import electrode_fields as earth
from calc.electrodes.entered import number_for_code, shown
from calc.electrodes.soil import soil_resistivity
from calc.fault.circuit.ranges import Between
from calc.messages import Message, message
from calc.rounded import about, at_least, at_most
from calc.touch.surface import surface_fields as ask
from calc.touch.surface.buried_metal import Buried
from calc.touch.surface.buried_shape import LIMITS, metal_entered, too_shallow, ways_in_the_ground
from calc.touch.surface.standing import current_through
from calc.touch.surface.surface_outputs import OUTPUTS
from calc.touch.surface.surface_picture import WAY_WORDS, beside, comparison, cover_chart, distance_chart, spread
from calc.touch.surface.surface_words import state_what_it_means
from calc.trace import Trace
from calc.units import convert

NAME = message("Voltage on the soil over live metal")
STEP = "touch/step_length"
FEET_LOOKED_AT = 20
LOOKS_A_FOOT = 2


@calculator(
    "surface-voltage",
    name=NAME,
    purpose=message("The voltage on the soil over and beside live buried metal, and the leakage current nobody sees."),
    submit=message("See the voltage"),
    example={"edition": "2023", "cover": "18in", "soil": "resistivity", "resistivity": "100", "distance": "3ft"},
    outputs=OUTPUTS,
)
def surface_voltage(
    *,
    trace: Trace,
    shape: Annotated[str, ask.SHAPE] = "elbow",
    cover: Annotated[float, ask.COVER],
    voltage_to_ground: Annotated[float, ask.VOLTAGE] = 120,
    soil: Annotated[str, earth.SOIL],
    resistivity: Annotated[float | None, earth.RESISTIVITY] = None,
    pin_spacing: Annotated[float | None, earth.PIN_SPACING] = None,
    pin_ohm: Annotated[float | None, earth.PIN_OHM] = None,
    trade_size: Annotated[str, ask.TRADE_SIZE] = "2",
    length: Annotated[float | None, ask.LENGTH] = None,
    diameter: Annotated[float | None, ask.DIAMETER] = None,
    distance: Annotated[float, ask.DISTANCE] = 0,
    feet: Annotated[str, ask.FEET] = "wet",
    lies: Annotated[str, ask.LIES] = "unknown",
    bend: Annotated[float | None, ask.BEND] = None,
    device: Annotated[float, ask.DEVICE] = 15,
) -> Answer:
    """Return the voltage that live buried metal makes on the ground: over it, beside it, over a step, hand to feet.

    When: one piece of metal in soil that is the same all around, 60 Hz, with nothing else bonded to it. Not for
    layered soil, paving or a slab, metal nearer to the surface than the formulas hold for, or several pieces.

    Parameters:
        shape: "elbow", "pipe" (a straight level run) or "fitting" (round). cover: inches over its top, 0.25 to 240.
        voltage_to_ground: V of the metal, 1 to 1000.
        soil: "fill", "clay", "clay-with-gravel", "gravel", "resistivity" or "four-pin"; resistivity: ohm·m;
        pin_spacing: ft, and pin_ohm: ohm, of a four-pin reading.
        trade_size: "1/2" to "4". length: ft, of a run. diameter: inches, of a fitting.
        distance: ft along the ground, 0 to 100. feet: "wet", "bare" or "shod".
        lies: "unknown", "level" or "upright", and bend: inches, of an elbow. device: ampere, 1 to 10,000.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold volt_over_low and _high, volt_there_low and _high (hand to feet),
        step_volt (there), worst_step_volt, ohm_low and _high, leak_ampere_low, _likely and _high, milliampere_usual
        and milliampere_most (through a body).
    Raises: nothing; bad or missing input ends as `fix`, metal too thick for its depth as `not_covered`.
    Source: method of moments and images; IEEE 80 for body and feet; US Bureau of Standards Report 108 for soil.

    Example:
    >>> result = surface_voltage(cover=18, soil="resistivity", resistivity=100)
    >>> result.answer_code, round(result.answer.values["leak_ampere_high"], 1)
    ('32-to-37.6-volt', 1.2)
    """
    around = soil_resistivity(soil, resistivity, pin_spacing, pin_ohm, trace)
    metal = metal_entered(shape, trade_size, length, diameter, bend, lies, trace)
    ways = ways_in_the_ground(metal, convert(cover, "in", "m"))
    if not ways:
        raise too_shallow(metal)
    volt = voltage_to_ground
    leak = _leak(ways, around, volt, trace)
    ground = _on_the_ground(ways, volt, distance, trace)
    usual, most = current_through(ground.there[1], feet, around, trace)
    state_what_it_means(leak.high, device, most, feet, trace)
    return Answer(
        name=NAME,
        headline=_headline(ground.over, volt, distance, most),
        detail=_detail(leak, device),
        basis=LIMITS,
        answer_code=_answer_code(ground.over),
        values={
            "volt_over_low": ground.over[0],
            "volt_over_high": ground.over[1],
            "volt_there_low": ground.there[0],
            "volt_there_high": ground.there[1],
            "step_volt": ground.step,
            "worst_step_volt": ground.worst_step,
            "ohm_low": volt / leak.high,
            "ohm_high": volt / leak.low,
            "leak_ampere_low": leak.low,
            "leak_ampere_likely": leak.likely,
            "leak_ampere_high": leak.high,
            "milliampere_usual": usual,
            "milliampere_most": most,
        },
        table=comparison(metal, around.likely),
        charts=(distance_chart(ways, volt), cover_chart(metal, volt)),
    )


@dataclass(frozen=True)
class OnTheGround:
    """Volts on the ground, least and greatest of the ways the metal may lie: over it and where the person is."""

    over: tuple[float, float]
    there: tuple[float, float]
    step: float
    worst_step: float


def _leak(ways: dict[str, Buried], around: Between, volt: float, trace: Trace) -> Between:
    likely: list[float] = []
    for way, buried in ways.items():
        ohm = trace.compute(
            message("Resistance of the metal to the earth. {way}:", way=WAY_WORDS[way]),
            "soil * shape",
            "ohm",
            soil=around.likely,
            shape=buried.shape,
        )
        likely.append(trace.compute(message("Leakage current to earth."), "volt / ohm", "A", volt=volt, ohm=ohm))
    found = Between(min(likely) * around.likely / around.high, max(likely), max(likely) * around.likely / around.low)
    if around.low != around.high:
        reach = spread((found.low, found.high))
        trace.step(message("Over the whole range of this soil: {reach} A.", reach=reach))
    return found


def _on_the_ground(ways: dict[str, Buried], volt: float, distance: float, trace: Trace) -> OnTheGround:
    metre = convert(trace.cite(STEP).value, "m", "ft")
    over: list[float] = []
    there: list[float] = []
    steps: list[float] = []
    worst: list[float] = []
    for way, buried in ways.items():
        share = buried.share(buried.highest)
        over.append(
            trace.compute(
                message("Highest voltage on the soil, in any uniform soil. {way}:", way=WAY_WORDS[way]),
                "volt * share",
                "V",
                volt=volt,
                share=share,
            )
        )
        there.append(volt * beside(buried, distance))
        steps.append(_step(buried, volt, distance, metre))
        starts = [distance, *(count / LOOKS_A_FOOT for count in range(FEET_LOOKED_AT * LOOKS_A_FOOT + 1))]
        worst.append(max(_step(buried, volt, start, metre) for start in starts))
    found = OnTheGround((min(over), max(over)), (min(there), max(there)), max(steps), max(worst))
    feet = shown(distance) if distance else "0"
    trace.step(
        message(
            "At {feet} ft: {range} V from hand to feet, with a hand on bonded metal.", feet=feet, range=spread(there)
        ),
        found.there[1],
        "V",
    )
    trace.step(message("From there one step farther out, at most."), found.step, "V", (STEP,))
    trace.step(message("Over the worst step anywhere beside it, at most."), found.worst_step, "V")
    return found


def _step(buried: Buried, volt: float, feet: float, metre: float) -> float:
    near = convert(feet, "ft", "m") if feet else 0.0
    far = near + convert(metre, "ft", "m")
    middle = buried.highest
    return volt * max(abs(buried.share(middle + side * near) - buried.share(middle + side * far)) for side in (1, -1))


def _headline(over: tuple[float, float], volt: float, distance: float, most: float) -> Message:
    high = at_most(over[1])
    if float(high.replace(",", "")) > volt:
        high = shown(over[1])  # never more than the metal has
    range_words = _glance(at_least(over[0]), high, over)
    words = {"range": range_words, "volt": shown(volt), "most": at_most(most), "ft": shown(distance)}
    if distance:
        return message(
            "{range} V on the soil over metal at {volt} V, up to {most} mA through a body {ft} ft from there", **words
        )
    return message("{range} V on the soil over metal at {volt} V, up to {most} mA through a body there", **words)


def _detail(leak: Between, device: float) -> Message:
    words = {
        "likely": about(leak.likely),
        "range": _glance(about(leak.low), about(leak.high), (leak.low, leak.high)),
        "device": shown(device),
    }
    if leak.likely > device:
        return message("Not zero. {range} A leaks away. Do not count on a {device} A breaker to open.", **words)
    if leak.high > device:
        return message(
            "Not zero. Leakage {likely} A likely, {range} A possible. No {device} A breaker opens at {likely} A.",
            **words,
        )
    return message("Not zero. {range} A leaks away, and no {device} A breaker opens at that.", **words)


def _glance(low: str, high: str, values: tuple[float, float]) -> Message | str:
    """Return a range in two digits, which is all that soil gives; one number where three digits look alike too."""
    same = low == high or shown(values[0]) == shown(values[1])
    return high if same else message("{low} to {high}", low=low, high=high)


def _answer_code(over: tuple[float, float]) -> str:
    low, high = (number_for_code(volt) for volt in over)
    return f"{high}-volt" if low == high else f"{low}-to-{high}-volt"
