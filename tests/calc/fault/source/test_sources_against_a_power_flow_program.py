"""Wye sources against pandapower, live: three phase, line to line, line to ground, at the terminals and after a run.

That program follows IEC 60909, whose factors multiply impedances and voltage. They are put into what is compared:
the utility's power divided by c, the transformer's impedance times K_T, the voltage times c.
"""

import math
import random

import pytest

from calc.fault.source.sources import (
    at_end_of_run,
    line_to_ground_current,
    line_to_line_current,
    three_phase_current,
    transformer_source,
    utility_source,
)
from tests.independent.power_flow_program import (
    HIGH_VOLTAGE,
    KINDS,
    LOW_VOLTAGE,
    Supply,
    short_circuit_currents,
    transformer_factor,
)

SYSTEMS = {"208Y/120": 208, "480Y/277": 480}
CURRENTS = {
    "three_phase": three_phase_current,
    "line_to_line": line_to_line_current,
    "line_to_ground": line_to_ground_current,
}
ALLOWED = 1e-9
COUNT = 60


def random_supply(chance):
    """Return a supply of any usual size; every third has no transformer."""
    percent_z = chance.uniform(1, 8)
    return Supply(
        line_voltage=chance.choice(list(SYSTEMS.values())),
        utility_kva=10 ** chance.uniform(4, 6.5),
        utility_x_over_r=chance.uniform(0.5, 30),
        kva=chance.choice((None, 10 ** chance.uniform(1, 3.5), 10 ** chance.uniform(1, 3.5))),
        percent_z=percent_z,
        percent_r=percent_z * chance.uniform(0.05, 0.95),
        line=complex(10 ** chance.uniform(-5, 0), 10 ** chance.uniform(-5, 0)),
        back=complex(10 ** chance.uniform(-5, 0), 10 ** chance.uniform(-5, 0)),
    )


def source_of(supply):
    """Return our source with the factors of the standard in it, but for that of the voltage."""
    system = {volt: name for name, volt in SYSTEMS.items()}[supply.line_voltage]
    if supply.kva is None:
        return utility_source(system, supply.utility_kva / LOW_VOLTAGE, supply.utility_x_over_r)
    factor = transformer_factor(supply)
    return transformer_source(
        system,
        supply.kva,
        factor * supply.percent_r,
        factor * math.sqrt(supply.percent_z**2 - supply.percent_r**2),
        supply.utility_kva / HIGH_VOLTAGE,
        supply.utility_x_over_r,
    )


@pytest.fixture(scope="module")
def supplies():
    chance = random.Random(60909)
    return [random_supply(chance) for _ in range(COUNT)]


@pytest.fixture(scope="module")
def theirs(supplies):
    return short_circuit_currents(supplies)


@pytest.mark.parametrize("place", ["terminals", "end"])
@pytest.mark.parametrize("kind", KINDS)
def test_a_source_drives_the_current_that_the_program_finds(kind, place, supplies, theirs, record_property):
    worst = 0.0
    for supply, found in zip(supplies, theirs, strict=True):
        source = source_of(supply)
        if place == "end":
            source = at_end_of_run(source, supply.line, supply.back)
        expected = found[place][kind]
        difference = abs(LOW_VOLTAGE * CURRENTS[kind](source) - expected) / expected
        assert difference <= ALLOWED, supply
        worst = max(worst, difference)
    record_property("worst_difference", worst)
    print(f"{kind}, {place}: {len(supplies)} supplies, worst {worst:.1e}")


def test_the_program_notices_a_zero_sequence_that_is_left_as_the_positive_one(supplies, theirs):
    """At the end of a run, the way back counts three times; taken once, most currents to ground come out too high."""
    too_high = 0
    for supply, found in zip(supplies, theirs, strict=True):
        wrong = at_end_of_run(source_of(supply), supply.line, supply.back / 3)
        too_high += LOW_VOLTAGE * line_to_ground_current(wrong) > found["end"]["line_to_ground"] * (1 + ALLOWED)
    assert too_high > COUNT / 2
