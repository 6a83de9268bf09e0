"""Sources: each against an outside number, a second way of working it out, and its limits."""

import cmath
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.fault.circuit.network import solve
from calc.fault.source.sources import (
    at_angle,
    at_end_of_run,
    generator_source,
    given_current_source,
    line_to_ground_current,
    line_to_ground_impedance,
    line_to_line_current,
    line_to_line_impedance,
    split_phase_source,
    three_phase_current,
    transformer_source,
    utility_source,
)
from calc.systems import SYSTEMS

RUN_500_KCMIL = complex(0.029, 0.048) / 10  # 100 ft
MVA_100 = 100_000
THREE_PHASE = [name for name in SYSTEMS if name != "120/240"]
GROUNDED = [name for name in SYSTEMS if "ungrounded" not in name]


def iec(percent, resistance, kva):
    """Return kva, %R, %X, utility kVA of a case by IEC 60909: 1.1 at the utility, K_T = 0.95 × 1.05 / (1 + 0.6 x)."""
    x = math.sqrt(percent**2 - resistance**2)
    factor = 0.95 * 1.05 / (1 + 0.6 * x / 100)
    return kva, factor * resistance, factor * x, MVA_100 / 1.1


def currents(source):
    return three_phase_current(source), line_to_line_current(source), line_to_ground_current(source)


# Made with pandapower 3.5.6 calc_sc: 12.47 kV utility of 100 MVA, X/R 8; Dyn; voltage factor 1.05.
# At the end of 100 ft, 0.029 + j0.048 ohm per 1000 ft and Z0 = 4 Z1.
@pytest.mark.parametrize(
    ("system", "case", "terminals", "end"),
    [
        ("480Y/277", (5, 1.2, 500), (11709.36, 10140.61, 12119), (9624, 8335, 8347)),
        ("208Y/120", (2, 1.2, 150), (20613.06, 17851, 21096.64), (10759.12, 9317.67, 7338.51)),
    ],
)
def test_a_delta_wye_transformer_gives_the_currents_of_a_published_program(system, case, terminals, end):
    source = transformer_source(system, *iec(*case), 8)
    for seen, expected in zip(currents(source), terminals, strict=True):
        assert 1.05 * seen == pytest.approx(expected, rel=5e-5)
    for seen, expected in zip(currents(at_end_of_run(source, RUN_500_KCMIL, RUN_500_KCMIL)), end, strict=True):
        assert 1.05 * seen == pytest.approx(expected, rel=5e-5)
    exact = {11709.36: 0, 10140.61: 1, 20613.06: 0, 21096.64: 2}
    for expected, place in exact.items():
        if expected in terminals:
            assert 1.05 * currents(source)[place] == pytest.approx(expected, rel=1e-6)
    for place, expected in enumerate(end):
        if expected != round(expected):
            there = currents(at_end_of_run(source, RUN_500_KCMIL, RUN_500_KCMIL))[place]
            assert 1.05 * there == pytest.approx(expected, rel=1e-6)


def test_north_american_practice_gives_the_same_case_without_factors():
    """Plain sequence arithmetic, voltage factor 1: the same program's numbers less its factors."""
    source = transformer_source("480Y/277", 500, 1.2, math.sqrt(25 - 1.44), MVA_100, 8)
    assert currents(source) == pytest.approx((10940.95, 9475.14, 11280.97), rel=1e-5)
    end = at_end_of_run(source, RUN_500_KCMIL, RUN_500_KCMIL)
    assert currents(end) == pytest.approx((9022.5, 7813.71, 7824.79), rel=1e-5)


# Made with ngspice 39 from separate leakages: primary 0.5 R + j 0.8 X, each half R + j 0.4 X on its own base.
# Runs out and back, ohm per 1000 ft a conductor: 2/0 AWG 0.159 + j0.043, 4/0 AWG 0.100 + j0.041, aluminum.
@pytest.mark.parametrize(
    ("source", "run", "line_to_line", "line_to_neutral"),
    [
        (split_phase_source(75, 0.68, 1.22), 0, 22374.0, 35027.91),
        (split_phase_source(25, 1.2, 1.6, 20_000, 8), 0, 4938.11, 7620.41),
        (split_phase_source(50, 1.1, 1.67), (0.100 + 0.041j) / 10, 5625.18, 4221.94),
    ],
)
def test_a_center_tapped_transformer_gives_the_currents_of_a_circuit_program(
    source, run, line_to_line, line_to_neutral
):
    end = at_end_of_run(source, run, run)
    assert line_to_line_current(end) == pytest.approx(line_to_line, rel=1e-5)
    assert line_to_ground_current(end) == pytest.approx(line_to_neutral, rel=1e-5)


def test_line_to_neutral_is_more_at_the_terminals_and_less_at_the_end():
    """25 kVA, 1.2 + j1.6 %: 5208 and 7916 A at the terminals, 3567 and 3122 A after 75 ft of 2/0 AWG aluminum."""
    source = split_phase_source(25, 1.2, 1.6)
    assert line_to_line_current(source) == pytest.approx(5208, abs=0.5)
    assert line_to_ground_current(source) == pytest.approx(7916, abs=0.5)
    run = 0.075 * (0.159 + 0.043j)
    end = at_end_of_run(source, run, run)
    assert line_to_line_current(end) == pytest.approx(3567, abs=0.5)
    assert line_to_ground_current(end) == pytest.approx(3122, abs=0.5)


def test_a_multiple_for_line_to_neutral_is_never_applied_after_the_run():
    """1.5 times the line-to-line current at the end is 5350 A, far above the 3122 A that flow."""
    run = 0.075 * (0.159 + 0.043j)
    end = at_end_of_run(split_phase_source(25, 1.2, 1.6), run, run)
    assert line_to_ground_current(end) < line_to_line_current(end)
    assert line_to_ground_current(end) < 0.6 * 1.5 * line_to_line_current(end)


# Limits by sympy: all resistance 4/3, all reactance 5/3. Between: 2 x sqrt(1 + 1) / sqrt(1.5 x 1.5 + 1.2 x 1.2)
# = 2.828427 / 1.920937 at X/R 1, 2 x sqrt(5) / sqrt(2.25 + 5.76) at X/R 2.
@pytest.mark.parametrize(
    ("percent_r", "percent_x", "ratio"), [(2, 0, 4 / 3), (0, 2, 5 / 3), (1, 1, 1.472421), (1, 2, 1.58015)]
)
def test_the_ratio_of_line_to_neutral_follows_the_angle_of_the_transformer(percent_r, percent_x, ratio):
    source = split_phase_source(37.5, percent_r, percent_x)
    seen = line_to_ground_current(source) / line_to_line_current(source)
    assert seen == pytest.approx(ratio, rel=1e-5)


def three_like_units(resistance, reactance, utility):
    """Return a closed delta of 1:1 units A-C (tapped at E), A-B, B-C as a circuit of coupled windings, all in ohm.

    Leakage of a unit on 240 V: half the resistance and 0.8 of the reactance in its primary, the rest in its
    secondary, which the tapped unit has in two like halves.
    """
    core = 1e4j
    primary = complex(0.5 * resistance, 0.8 * reactance)
    secondary = complex(0.5 * resistance, 0.2 * reactance)
    branches = [(f"utility {phase}", f"S{phase}", f"P{phase}", utility) for phase in "ABC"]
    couplings = []
    for start, end in (("A", "B"), ("B", "C")):
        pair = start + end
        branches.append((f"primary {pair}", f"P{start}", f"P{end}", primary + core))
        branches.append((f"secondary {pair}", start, end, secondary + core))
        couplings.append((f"primary {pair}", f"secondary {pair}", core))
    branches.append(("primary AC", "PA", "PC", primary + core))
    branches.append(("upper half", "A", "E", secondary / 2 + core / 4))
    branches.append(("lower half", "E", "C", secondary / 2 + core / 4))
    couplings += [("primary AC", half, core / 2) for half in ("upper half", "lower half")]
    couplings.append(("upper half", "lower half", core / 4))
    volt = 240 / math.sqrt(3)
    sources = [
        (f"source {phase}", f"S{phase}", "E", cmath.rect(volt, -math.radians(120 * turn)), 1e-9)
        for turn, phase in enumerate("ABC")
    ]
    return branches, sources, couplings


@pytest.mark.parametrize("utility", [1e-7, complex(0.002, 0.01)])
@pytest.mark.parametrize(("resistance", "reactance"), [(0.02, 0.05), (0.03, 0.01)])
@pytest.mark.parametrize("fault", ["line to ground", "line to line"])
def test_a_closed_delta_with_a_high_leg_gives_the_currents_of_its_windings(resistance, reactance, utility, fault):
    branches, sources, couplings = three_like_units(resistance, reactance, utility)
    ends = {"line to ground": ("A", "E"), "line to line": ("A", "C")}[fault]
    solved = solve([*branches, ("fault", *ends, 1e-7)], sources, couplings)
    kva = 3 * 240**2 / 1000  # a base on which percent over 100 is ohm of one unit
    utility_kva = 240**2 / abs(utility) / 1000
    ratio = utility.imag / utility.real if isinstance(utility, complex) else 0
    source = transformer_source("240/120-high-leg", kva, 100 * resistance, 100 * reactance, utility_kva, ratio)
    seen = {"line to ground": line_to_ground_current, "line to line": line_to_line_current}[fault](source)
    assert seen == pytest.approx(abs(solved.currents["fault"]), rel=1e-3)


def test_the_high_leg_itself_drives_less_to_ground_than_a_120_volt_line():
    branches, sources, couplings = three_like_units(0.02, 0.05, 1e-7)
    flowing = {
        phase: abs(solve([*branches, ("fault", phase, "E", 1e-7)], sources, couplings).currents["fault"])
        for phase in "AB"
    }
    assert flowing["B"] < flowing["A"]


def test_a_ground_fault_on_a_corner_grounded_delta_is_one_between_two_lines():
    source = transformer_source("240-corner", 75, 1.5, 3)
    assert line_to_ground_impedance(source) == pytest.approx(line_to_line_impedance(source))
    end = at_end_of_run(source, 0.01 + 0.002j, 0.01 + 0.002j)
    assert line_to_ground_current(end) == pytest.approx(line_to_line_current(end))


@pytest.mark.parametrize("system", ["240-ungrounded", "480-ungrounded"])
def test_the_first_fault_of_an_ungrounded_system_has_no_way_back(system):
    source = transformer_source(system, 75, 1.5, 3)
    for each in (source, at_end_of_run(source, 0.1, 0.1), given_current_source(system, None, 5000)):
        assert line_to_ground_current(each) == 0
        assert line_to_ground_impedance(each) == complex(math.inf, 0)
        assert line_to_line_current(each) > 0


@pytest.mark.parametrize("system", THREE_PHASE)
def test_line_to_line_is_0_866_of_three_phase(system):
    source = transformer_source(system, 112.5, 1, 3, 50_000, 6)
    assert line_to_line_current(source) == pytest.approx(math.sqrt(3) / 2 * three_phase_current(source))


def test_a_delta_wye_transformer_gives_more_to_ground_than_three_phase_behind_a_weak_utility():
    """The utility's zero sequence does not pass the delta."""
    source = transformer_source("480Y/277", 1000, 1, 5, 20_000, 8)
    assert line_to_ground_current(source) > 1.05 * three_phase_current(source)
    unlimited = transformer_source("480Y/277", 1000, 1, 5)
    assert line_to_ground_current(unlimited) == pytest.approx(three_phase_current(unlimited))


def test_a_generator_is_its_subtransient_reactance():
    """100 kVA, 208 V, X''d 12 %: 277.6 A / 0.12 = 2313 A; with X0 4 %: 3 x 277.6 / (0.12 + 0.12 + 0.04) = 2974 A."""
    source = generator_source("208Y/120", 100, 12, 4)
    assert three_phase_current(source) == pytest.approx(2313.1, rel=1e-4)
    assert line_to_ground_current(source) == pytest.approx(2974.0, rel=1e-4)


def test_a_generator_without_zero_sequence_gives_the_most_to_ground():
    unknown, known = generator_source("208Y/120", 100, 12), generator_source("208Y/120", 100, 12, 4)
    assert line_to_ground_current(unknown) > line_to_ground_current(known)
    assert line_to_ground_current(unknown) == pytest.approx(1.5 * three_phase_current(unknown))
    single = generator_source("120/240", 20, 10)
    assert line_to_line_current(single) == pytest.approx(833.33, rel=1e-4)
    assert line_to_ground_current(single) == pytest.approx(2 * line_to_line_current(single))


def test_a_generator_with_a_high_leg_is_refused():
    with pytest.raises(ValueError, match="high-leg"):
        generator_source("240/120-high-leg", 100, 12)


@pytest.mark.parametrize("system", GROUNDED)
def test_stated_currents_come_back(system):
    lines, to_ground = 9000, 7700
    source = given_current_source(system, to_ground, lines, 3)
    assert line_to_ground_current(source) == pytest.approx(to_ground)
    seen = line_to_line_current(source) if system == "120/240" else three_phase_current(source)
    assert seen == pytest.approx(lines)
    alone = given_current_source(system, line_to_ground_current=to_ground, x_over_r=3)
    assert line_to_ground_current(alone) == pytest.approx(to_ground)


def test_a_three_phase_current_alone_gives_a_wye_the_same_current_to_ground():
    source = given_current_source("208Y/120", three_phase_current=22_000, x_over_r=2)
    assert line_to_ground_current(source) == pytest.approx(22_000)


@pytest.mark.parametrize(
    ("system", "lines", "to_ground", "held"),
    [
        ("208Y/120", 10_000, 15_000, True),
        ("208Y/120", 10_000, 15_200, False),
        ("120/240", 10_000, 20_000, True),
        ("120/240", 10_000, 20_200, False),
        ("240-corner", 10_000, 8_660, True),
        ("240-corner", 10_000, 8_800, False),
    ],
)
def test_two_currents_that_no_source_has_together_are_refused(system, lines, to_ground, held):
    if held:
        assert line_to_ground_current(given_current_source(system, to_ground, lines, 3)) == pytest.approx(to_ground)
    else:
        with pytest.raises(ValueError, match=system):
            given_current_source(system, to_ground, lines, 3)


def test_no_current_at_all_is_refused():
    for system in SYSTEMS:
        with pytest.raises(ValueError, match=system):
            given_current_source(system)


@pytest.mark.parametrize("system", THREE_PHASE)
def test_a_utility_gives_its_power_over_root_three_times_the_voltage(system):
    source = utility_source(system, 5000, 4)
    assert three_phase_current(source) == pytest.approx(5_000_000 / math.sqrt(3) / source.line_voltage)


def test_an_unknown_system_is_an_error():
    for build in (transformer_source, utility_source, generator_source):
        with pytest.raises(KeyError):
            build("120/208", 75, 1, 1) if build is transformer_source else build("120/208", 75, 1)


PERCENT = st.floats(0.1, 20)


@given(st.sampled_from(GROUNDED), PERCENT, PERCENT, st.floats(1000, 1e6), st.floats(0, 1), st.floats(0, 1))
def test_a_longer_run_or_a_weaker_utility_never_raises_a_current(system, r, x, utility, line, back):
    stiff, weak = transformer_source(system, 75, r, x), transformer_source(system, 75, r, x, utility, 5)
    run = at_end_of_run(weak, complex(line, line / 3), complex(back, back / 3))
    for current in (three_phase_current, line_to_line_current, line_to_ground_current):
        assert current(stiff) >= current(weak) >= current(run) * (1 - 1e-12)


@given(st.sampled_from(GROUNDED), st.floats(0.5, 10), st.floats(0, math.pi / 2), st.floats(0, 1), st.floats(0, 1))
def test_no_angle_of_the_transformer_gives_more_than_its_ends(system, percent, angle, resistance, reactance):
    run = complex(resistance, reactance) / 20
    inside, *ends = [
        at_end_of_run(transformer_source(system, 75, percent * math.cos(each), percent * math.sin(each)), run, run)
        for each in (angle, 0, math.pi / 2)
    ]
    for current in (three_phase_current, line_to_line_current, line_to_ground_current):
        assert current(inside) <= max(map(current, ends)) * (1 + 1e-12)


def test_an_angle_without_resistance_is_all_reactance():
    assert at_angle(2, math.inf) == 2j
    assert at_angle(2, 0) == 2
