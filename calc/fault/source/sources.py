"""What feeds a fault: a utility, a transformer, a generator or a stated current, as impedances in sequence.

Positive and negative sequence are taken as equal. A single-phase source is written in the same form, so that
line to line is twice `positive` and line to ground a third of twice `positive` and `zero`, whatever the system.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from calc.rulebook import undated
from calc.systems import CORNER, HIGH_LEG, SPLIT, SYSTEMS, UNGROUNDED, WYE, System

HALF_WINDING = "fault/half_winding"
UNLIMITED = math.inf
HALF = 1 / 2  # of the winding from line to neutral


@dataclass(frozen=True)
class Source:
    """What stands behind a fault: nominal volts, and impedances of positive and zero sequence in ohm.

    `voltage_to_ground` drives a fault to ground; on an ungrounded system `zero` is infinite and none flows.
    """

    voltage_to_ground: float
    line_voltage: float
    positive: complex
    zero: complex


def line_to_ground_impedance(source: Source) -> complex:
    """Return the loop impedance of a fault to ground, ohm: the current is `voltage_to_ground` by its magnitude."""
    if math.isinf(abs(source.zero)):
        return complex(math.inf, 0)
    return (2 * source.positive + source.zero) / 3


def line_to_line_impedance(source: Source) -> complex:
    """Return the loop impedance of a fault between two lines, ohm: the current is `line_voltage` by its magnitude."""
    return 2 * source.positive


def three_phase_current(source: Source) -> float:
    """Return the current of a fault of all three phases, ampere; it has no meaning on a single-phase source."""
    return _current(source.line_voltage / math.sqrt(3), source.positive)


def line_to_line_current(source: Source) -> float:
    """Return the current of a fault between two lines, ampere."""
    return _current(source.line_voltage, line_to_line_impedance(source))


def line_to_ground_current(source: Source) -> float:
    """Return the current of a fault from a line to ground or to the neutral, ampere."""
    return _current(source.voltage_to_ground, line_to_ground_impedance(source))


def at_end_of_run(source: Source, line: complex, back: complex) -> Source:
    """Return the source as seen at the end of a run: `line` and `back` are one line and the way back, ohm.

    >>> line_to_ground_impedance(at_end_of_run(Source(120, 208, 1j, 1j), 1, 2))
    (3+1j)
    """
    return replace(source, positive=source.positive + line, zero=source.zero + line + 3 * back)


def utility_source(system: str, kva: float, x_over_r: float) -> Source:
    """Return a source of `kva` short-circuit power at the system's own voltage, its phases and neutral alike.

    Single phase: volts times amperes from line to line; a fault of one half then draws twice that current, the
    most that is possible. Raises: KeyError for an unknown system.
    """
    supply = SYSTEMS[system]
    return _source(supply, at_angle(_ohm(supply, kva), x_over_r), 0, zero_like_positive=True)


def transformer_source(
    system: str,
    kva: float,
    percent_r: float,
    percent_x: float,
    utility_kva: float = UNLIMITED,
    utility_x_over_r: float = UNLIMITED,
) -> Source:
    """Return a transformer behind a utility, seen from its secondary.

    kva: of the transformer, or of a bank of like units together. percent_r, percent_x: on that rating.
    utility_kva: short-circuit power at the primary, infinite for an unlimited utility.
    A wye secondary has a delta primary: the utility's zero sequence does not pass. A delta with a high leg
    is closed. A single-phase 120/240 secondary has interlaced halves, see `split_phase_source`.
    Raises: KeyError for an unknown system.
    """
    supply = SYSTEMS[system]
    base = _ohm(supply, kva)
    transformer = complex(percent_r, percent_x) / 100 * base
    utility = 0 if math.isinf(utility_kva) else at_angle(_ohm(supply, utility_kva), utility_x_over_r)
    return _source(supply, utility, transformer)


def split_phase_source(
    kva: float,
    percent_r: float,
    percent_x: float,
    utility_kva: float = UNLIMITED,
    utility_x_over_r: float = UNLIMITED,
) -> Source:
    """Return a 120/240 V transformer with a center tap, its plate values those of the full winding.

    One half alone has 1.5 times the resistance and 1.2 times the reactance, in percent of the half's own base.
    """
    return transformer_source("120/240", kva, percent_r, percent_x, utility_kva, utility_x_over_r)


def generator_source(system: str, kva: float, subtransient_percent: float, zero_percent: float | None = None) -> Source:
    """Return a generator by its subtransient reactance; without its zero sequence, the least that can be.

    The least is none on a wye. On a 120/240 V winding it is two halves so well coupled that a fault of one
    draws the current of one turn in two: twice the current from line to line.
    Raises: KeyError for an unknown system; ValueError for a delta with a high leg.
    """
    supply = SYSTEMS[system]
    if supply.kind == HIGH_LEG:
        raise ValueError(system)
    reactance = complex(0, subtransient_percent / 100 * _ohm(supply, kva))
    if supply.kind == SPLIT:
        return _single_phase(supply, reactance, reactance * HALF**2)
    if supply.kind == WYE:
        zero = complex(0, (zero_percent or 0) / 100 * _ohm(supply, kva))
        return _three_phase(supply, reactance, zero)
    return _source(supply, reactance, 0)


def given_current_source(
    system: str,
    line_to_ground_current: float | None = None,
    three_phase_current: float | None = None,
    x_over_r: float = UNLIMITED,
) -> Source:
    """Return the source that drives stated currents; at least one is needed.

    three_phase_current: on a single-phase system, the current from line to line. Where only it is stated, a wye
    has the same current to ground and the other systems are taken as a transformer. Where only the current to
    ground is stated, the lines are found the same way.
    Raises: KeyError for an unknown system; ValueError for no current, or two that no source has together.
    """
    supply = SYSTEMS[system]
    lines = None
    if three_phase_current is not None:
        volt = supply.line_voltage if supply.kind == SPLIT else supply.line_voltage / math.sqrt(3)
        lines = at_angle(volt / three_phase_current, x_over_r)
    if line_to_ground_current is None or supply.kind == UNGROUNDED:
        if lines is None:
            raise ValueError(system)
        return _like_transformer(supply, lines)
    to_ground = at_angle(supply.voltage_to_ground / line_to_ground_current, x_over_r)
    if lines is None:
        return _like_transformer(supply, _lines_behind(supply, to_ground))
    if abs(to_ground) < abs(lines) * MIN_TO_GROUND[supply.kind] * (1 - ROUNDED):
        raise ValueError(system)
    if supply.kind == SPLIT:
        return _single_phase(supply, lines, to_ground)
    return _three_phase(supply, lines, 3 * to_ground - 2 * lines)


def at_angle(ohm: float, x_over_r: float) -> complex:
    """Return an impedance by its magnitude, ohm, and its ratio of reactance to resistance; infinite: all reactance.

    >>> at_angle(5, 0.75)
    (4+3j)
    """
    if math.isinf(x_over_r):
        return complex(0, ohm)
    resistance = ohm / math.hypot(1, x_over_r)
    return complex(resistance, resistance * x_over_r)


ROUNDED = 0.005  # stated currents are rounded, so two may miss their limit by a little
# The least impedance to ground as a part of that of the lines: a quarter of the winding where its halves are
# coupled without a leak; two thirds where the zero sequence is none; at a corner, both lines.
MIN_TO_GROUND = {SPLIT: 1 / 4, WYE: 2 / 3, HIGH_LEG: 2 / 4, CORNER: 2}


def _current(volt: float, impedance: complex) -> float:
    return volt / abs(impedance)


def _ohm(supply: System, kva: float) -> float:
    """Return the impedance, ohm, that draws `kva` at the line voltage."""
    return supply.line_voltage**2 / (kva * 1000)


def _three_phase(supply: System, positive: complex, zero: complex) -> Source:
    return Source(supply.voltage_to_ground, supply.line_voltage, positive, zero)


def _single_phase(supply: System, line_to_line: complex, line_to_neutral: complex) -> Source:
    return _three_phase(supply, line_to_line / 2, 3 * line_to_neutral - line_to_line)


def _source(supply: System, utility: complex, transformer: complex, *, zero_like_positive: bool = False) -> Source:
    """Return the source of a utility and a transformer, both in ohm at the line voltage."""
    positive = utility + transformer
    if supply.kind == SPLIT:
        return _single_phase(supply, positive, (utility + _half_winding(transformer)) * HALF**2)
    if supply.kind == HIGH_LEG:
        return _three_phase(supply, positive, 3 * _high_leg(utility, transformer) - 2 * positive)
    if supply.kind == CORNER:
        return _three_phase(supply, positive, 4 * positive)  # a fault to ground is one between two lines
    if supply.kind == UNGROUNDED:
        return _three_phase(supply, positive, complex(math.inf, 0))
    return _three_phase(supply, positive, positive if zero_like_positive else transformer)


def _half_winding(winding: complex) -> complex:
    """Return what one half of a winding with a center tap has, as the full winding's would be on the half's base."""
    factor = {row["part"]: row["factor"] for row in undated(HALF_WINDING).rows}
    return complex(factor["resistance"] * winding.real, factor["reactance"] * winding.imag)


def _high_leg(utility: complex, transformer: complex) -> complex:
    """Return the loop from a line of the tapped winding to its tap, in a closed delta of three like units.

    One unit has three times the bank's impedance on the line voltage. The two other units in series carry a sixth
    of the fault current to the line, which takes a twelfth of the unit's impedance off the half winding alone.
    The utility sees half the current between two lines, and the half winding half of their drop.
    """
    unit = 3 * transformer
    return _half_winding(unit) * HALF**2 - unit / 12 + utility / 2


def _like_transformer(supply: System, lines: complex) -> Source:
    return _source(supply, 0, lines, zero_like_positive=True)


def _lines_behind(supply: System, to_ground: complex) -> complex:
    """Return the line impedance of the transformer that has this loop to ground: each part is in proportion."""
    unit = line_to_ground_impedance(_like_transformer(supply, complex(1, 1)))
    return complex(to_ground.real / unit.real, to_ground.imag / unit.imag)
