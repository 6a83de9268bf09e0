"""A steel raceway as the way back: independent runs of the tube, its limits, and the published length."""

import cmath
import itertools
import math

import pytest

from calc.conductors.impedance import impedance
from calc.fault.circuit.network import solve
from calc.raceways.return_impedance import return_impedance, tube_impedance

EMT, IMC, RMC = "electrical-metallic-tubing", "intermediate-metal-conduit", "rigid-metal-conduit"
KINDS = (EMT, IMC, RMC)
TRADE_SIZES = ["1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4"]
# Inside and outside, in; permeability; ohm for 100 ft at 0.17 µΩm. Run with Bessel functions of arbitrary precision;
# finite differences agree. Tolerance 0.0006 ohm.
RUNS = [
    (0.622, 0.706, 100, 0.0919 + 0.0103j),
    (0.622, 0.706, 300, 0.0936 + 0.0308j),
    (0.622, 0.706, 800, 0.105 + 0.080j),
    (1.049, 1.163, 100, 0.0409 + 0.0083j),
    (1.049, 1.163, 300, 0.0434 + 0.0245j),
    (1.049, 1.163, 800, 0.0577 + 0.0590j),
    (0.632, 0.840, 100, 0.0365 + 0.0244j),
    (0.632, 0.840, 300, 0.055 + 0.063j),
    (0.632, 0.840, 800, 0.102 + 0.109j),
    (1.063, 1.315, 100, 0.0202 + 0.0172j),
    (1.063, 1.315, 300, 0.036 + 0.040j),
    (1.063, 1.315, 800, 0.0625 + 0.0645j),
    (2.083, 2.375, 100, 0.0103 + 0.0099j),
    (2.083, 2.375, 300, 0.0193 + 0.0205j),
    (2.083, 2.375, 800, 0.0324 + 0.0329j),
]


@pytest.mark.parametrize(("inside", "outside", "permeability", "ohm"), RUNS)
def test_the_tube_is_that_of_the_independent_runs(inside, outside, permeability, ohm):
    found = 100 * tube_impedance(inside, outside, 0.17, permeability)
    assert abs(found.real - ohm.real) <= 6e-4 and abs(found.imag - ohm.imag) <= 6e-4


def test_without_steel_the_tube_is_its_direct_current_resistance():
    """ρ L / A of a copper tube of 1 in inside and 1.1 in outside."""
    metre = 0.0254
    area = math.pi / 4 * (1.1**2 - 1.0**2) * metre**2
    assert tube_impedance(1.0, 1.1, 0.01724, 1).real == pytest.approx(0.01724e-6 * 0.3048 / area, rel=1e-3)


def test_in_very_magnetic_steel_the_wall_is_deep_and_the_impedance_that_of_a_flat_face():
    """sqrt(j omega mu rho) over the inner circumference, and half of rho over radius and circumference more."""
    omega_mu = 2 * math.pi * 60 * 5000 * 4e-7 * math.pi
    radius = 2.083 / 2 * 0.0254
    flat = cmath.sqrt(1j * omega_mu * 0.17e-6)
    expected = (flat - 0.17e-6 / (2 * radius)) / (2 * math.pi * radius) * 0.3048
    assert tube_impedance(2.083, 2.375, 0.17, 5000) == pytest.approx(expected, rel=1e-3)


@pytest.mark.parametrize(("inside", "outside"), [(1, 1), (1, 0.9), (1, 2), (1, 3)])
def test_what_is_no_thin_tube_is_refused(inside, outside):
    with pytest.raises(ValueError):
        tube_impedance(inside, outside, 0.17, 300)


@pytest.mark.parametrize("kind", KINDS)
def test_low_likely_high_stand_in_order_and_a_larger_raceway_never_has_more(kind):
    for trade_size in TRADE_SIZES:
        low, likely, high = (abs(ohm) for ohm in return_impedance(kind, trade_size))
        assert low < likely < high
    for smaller, larger in itertools.pairwise(TRADE_SIZES):
        for before, after in zip(return_impedance(kind, smaller), return_impedance(kind, larger), strict=True):
            assert after.real < before.real and abs(after) < abs(before)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("trade_size", TRADE_SIZES)
def test_the_range_is_at_least_as_wide_as_the_spread_of_steel_asks(kind, trade_size):
    """25 percent either way for tubing, 50 percent for conduit, about what is likely."""
    spread = 0.25 if kind == EMT else 0.5
    low, likely, high = (abs(ohm) for ohm in return_impedance(kind, trade_size))
    assert high >= (1 + spread) * likely
    assert low <= (1 - spread) * likely * 1.05


def test_the_published_length_of_half_inch_tubing_is_in_the_range_and_near_the_likely_one():
    """280 ft at five times 20 A with a 50 V arc, 12 AWG at 25 °C: (120 - 50) / 100 ohm over the loop of a foot."""
    wire = impedance("12", "copper", "steel", 25)
    longest, likely, shortest = (0.7 / abs(wire + back) for back in return_impedance(EMT, "1/2"))
    assert shortest < 280 < longest
    assert likely == pytest.approx(280, rel=0.1)


@pytest.mark.parametrize(("kind", "trade_size"), [(EMT, "5"), ("flexible-metal-conduit", "1/2"), (RMC, "3/8")])
def test_a_raceway_that_is_not_listed_is_refused(kind, trade_size):
    with pytest.raises(KeyError):
        return_impedance(kind, trade_size)


def test_with_all_current_coming_back_inside_no_coupling_is_left_between_wires_and_raceway():
    """The whole matrix of hot wire, grounding wire and tube, each to a distant reference, against three plain branches.

    Tube faces (Schelkunoff): inner, transfer, outer; around: the field outside; between: the field that both wires
    share.
    """
    inner, transfer, outer, around = 0.036 + 0.040j, 0.011 - 0.013j, 0.037 + 0.041j, 0.09j
    hot, ground, between = 0.02 + 0.011j, 0.05 + 0.012j, 0.004j
    common = inner + outer - 2 * transfer + around
    shared = outer - transfer + around
    sources = [("source", "hot", "panel", 120, 0.001)]
    ends = (("wire", "hot", "fault"), ("ground", "fault", "panel"), ("tube", "fault", "panel"))
    full = [(*end, ohm) for end, ohm in zip(ends, (hot + common, ground + common, outer + around), strict=True)]
    couplings = [("wire", "ground", -(between + common)), ("wire", "tube", -shared), ("ground", "tube", shared)]
    plain = [(*end, ohm) for end, ohm in zip(ends, (hot - between, ground - between, inner + between), strict=True)]
    whole = solve(full, sources, couplings, reference="panel").currents
    simple = solve(plain, sources, reference="panel").currents
    for name in ("wire", "ground", "tube"):
        assert whole[name] == pytest.approx(simple[name], rel=1e-9)
