"""A conductor that gives off no heat: its temperature in time, from its own heat capacity and resistance, by scipy.

Constants of the annex to IEC 60364-5-54: resistance that is none at `-beta` °C, heat capacity in J/(K·mm³), resistivity
at 20 °C in ohm·mm.
"""

import math

from scipy.integrate import quad, solve_ivp

CONSTANTS = {
    "copper": (234.5, 3.45e-3, 17.241e-6),
    "aluminum": (228.0, 2.5e-3, 28.264e-6),
    "steel": (202.0, 3.8e-3, 138e-6),
}
MM2_PER_CMIL = math.pi / 4 * 0.0254**2
EXACT = dict(method="DOP853", rtol=1e-12, atol=1e-9)


def warming(metal, ampere, mm2):
    """Return the function of time and temperature that is degrees a second."""
    beta, heat, resistivity = CONSTANTS[metal]

    def rate(_, celsius):
        ohm_mm = resistivity * (beta + celsius[0]) / (beta + 20)
        return [(ampere / mm2) ** 2 * ohm_mm / heat]

    return rate


def end_celsius(metal, ampere, mm2, start, second):
    """Return the temperature after so many seconds."""
    return solve_ivp(warming(metal, ampere, mm2), (0, second), [start], **EXACT).y[0, -1]


def seconds_to(metal, ampere, mm2, start, end):
    """Return the time until a temperature is reached."""

    def reached(_, celsius):
        return celsius[0] - end

    reached.terminal = True
    solved = solve_ivp(warming(metal, ampere, mm2), (0, 1e9), [start], events=reached, first_step=1e-6, **EXACT)
    return solved.t_events[0][0]


def energy_to(constant, beta, start, end):
    """Return the energy, A²·s a square cmil, of a published curve constant·log10, added up degree by degree."""
    return quad(lambda celsius: constant / math.log(10) / (beta + celsius), start, end, epsabs=0, epsrel=1e-12)[0]
