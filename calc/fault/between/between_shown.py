"""The readings between two parts in words, in numbers for programs, as a list and as a picture."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from calc.answer import Chart, Line, Row, Table
from calc.electrodes.entered import shown
from calc.fault.between.between_circuit import ONE, TOUCHES, TWO, BetweenVoltages
from calc.messages import Message, message
from calc.touch.shock.body import Currents
from calc.touch.shock.people import BARE, SHOD, WET, people_at, people_values, range_words
from calc.trace import Trace, shown_number

BETWEEN, ONE_EARTH, TWO_EARTH = TOUCHES
MILLI = 1000
People = dict[tuple[str, str], dict[str, Currents]]  # by pair, then who
MIN_VOLT = 0.001
MIN_MILLIAMPERE = 0.001
DECIMALS = 9  # fewer than where machines begin to differ
PAIR_WORDS = {
    BETWEEN: message("Between the parts"),
    ONE_EARTH: message("Part one to remote earth"),
    TWO_EARTH: message("Part two to remote earth"),
}
BODY_WORDS = {
    BETWEEN: message("Through a body between the parts"),
    ONE_EARTH: message("Through a body from part one to earth"),
    TWO_EARTH: message("Through a body from part two to earth"),
}


def people_of(voltages: BetweenVoltages, trace: Trace) -> People:
    """Return what people draw, mA, from one hand to both feet across each pair: with what stands before them."""
    return {pair: people_at(voltages.volts[pair], trace, voltages.behind(pair)) for pair in TOUCHES}


def worst_of(*seen_people: People) -> float:
    """Return the most that anyone draws anywhere, mA."""
    return max(each[pair][WET].most for each in seen_people for pair in TOUCHES)


def volt_words(volt: float) -> Message:
    """Return a voltage as a meter shows it; never as nothing.

    >>> [str(volt_words(volt)) for volt in (54.57, 0.0016, 0.0)]
    ['54.6 V', '1.6 mV', 'less than 1 mV']
    """
    if volt < MIN_VOLT:
        return message("less than {least} mV", least=shown_number(MILLI * MIN_VOLT))
    return message("{volt} V", volt=shown(volt)) if volt >= 1 else message("{volt} mV", volt=shown(MILLI * volt))


def volt_of(voltages: BetweenVoltages, pair: tuple[str, str] = BETWEEN) -> Message:
    """Return the voltage of a pair in words."""
    return volt_words(voltages.volts[pair])


def milli_words(ampere: float) -> Message:
    """Return a current in words; never as nothing.

    >>> [str(milli_words(ampere)) for ampere in (3.43, 0.00845, 0.0)]
    ['3.43 A', '8.45 mA', 'less than 0.001 mA']
    """
    if MILLI * ampere < MIN_MILLIAMPERE:
        return message("less than {least} mA", least=shown_number(MIN_MILLIAMPERE))
    return (
        message("{ampere} A", ampere=shown(ampere))
        if ampere >= 1
        else message("{ampere} mA", ampere=shown(MILLI * ampere))
    )


def body_values(apart: People, bonded: People) -> dict[str, float]:
    """Return for programs what people draw across the parts while they are apart, and the most of all anywhere, mA."""
    values = people_values(apart[BETWEEN], "apart_between_") | {"milliampere_worst": worst_of(apart, bonded)}
    return {name: round(value, DECIMALS) for name, value in values.items()}


def values_of(how: str, voltages: BetweenVoltages, ohms: tuple[float, float]) -> dict[str, float]:
    """Return the readings for programs: volt, ampere, mA of fixed bodies. ohms: of the usual body and of 500 ohm."""
    values = {"neutral_volt": voltages.neutral_volt, "leak_ampere": voltages.leak, "bond_ampere": voltages.bond}
    for pair, name in {BETWEEN: "between", ONE_EARTH: ONE, TWO_EARTH: TWO}.items():
        values[f"{name}_volt"] = voltages.volts[pair]
        values[f"{name}_body"], values[f"{name}_body_wet"] = (MILLI * voltages.bodies[pair][ohm] for ohm in ohms)
    return {f"{how}_{name}": round(value, DECIMALS) for name, value in values.items()}


def table_of(apart: BetweenVoltages, bonded: BetweenVoltages, usual: float, people: tuple[People, People]) -> Table:
    """Return every reading, apart beside bonded. people: what they draw, apart and bonded."""

    def row(words: Message, reading: Callable[[BetweenVoltages], Message]) -> Row:
        return Row({"what": words, "apart": reading(apart), "bonded": reading(bonded)})

    def loaded(voltages: BetweenVoltages) -> Message:
        return volt_words(voltages.bodies[BETWEEN][usual] * usual)

    def through(pair: tuple[str, str]) -> Row:
        cells = {how: _ranges(each[pair]) for how, each in zip(("apart", "bonded"), people, strict=True)}
        return Row({"what": BODY_WORDS[pair], **cells})

    rows = [row(words, partial(volt_of, pair=pair)) for pair, words in PAIR_WORDS.items()]
    rows.append(row(message("Neutral to remote earth"), lambda voltages: volt_words(voltages.neutral_volt)))
    rows.append(row(message("Between the parts, {ohm} ohm across the meter", ohm=shown_number(usual)), loaded))
    rows += [through(pair) for pair in TOUCHES]
    return Table({"what": message("Reading"), "apart": message("Not bonded"), "bonded": message("Bonded")}, tuple(rows))


def _ranges(people: dict[str, Currents]) -> Message:
    if range_words(people[WET]) == range_words(people[BARE]):
        return range_words(people[WET])
    return message(
        "wet {wet}; dry and barefoot {bare}; in shoes {shod}",
        wet=range_words(people[WET]),
        bare=range_words(people[BARE]),
        shod=range_words(people[SHOD]),
    )


def bars_of(apart: BetweenVoltages, bonded: BetweenVoltages) -> Chart:
    """Return the three voltages, each apart and bonded, as bars; none is drawn as nothing."""
    names = (
        message("Between, not bonded"),
        message("Between, bonded"),
        message("One, not bonded"),
        message("One, bonded"),
        message("Two, not bonded"),
        message("Two, bonded"),
    )
    volts = [voltages.volts[pair] for pair in TOUCHES for voltages in (apart, bonded)]
    return Chart(
        "voltages",
        "bars",
        message("Voltage between the parts and of each to remote earth"),
        message("Reading"),
        message("Volts ({least} means that or less)", least=MIN_VOLT),
        message("{across}: {up} V", across="{across}", up="{up}"),
        (
            Line(
                message("Volts"), tuple(
                    (float(place), max(round(volt, 3), MIN_VOLT)) for place, volt in enumerate(volts)
                )
            ),
        ),
        names,
    )
