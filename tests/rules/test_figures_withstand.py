"""The constants of conductors in a fault against texts and figures read apart from the rules.

Constants of IEC 60364-5-54 on an engineering page of 2021-08-23; ICEA P-32-382 for copper in a university problem.
"""

from math import log, sqrt

from calc.editions import EDITIONS
from calc.rulebook import rule


def figures(name, edition):
    stated = rule(f"fault/{name}", edition)
    return list(stated.rows) or stated.value


def test_heating_constants_are_those_of_the_page_and_give_its_prefactors():
    """The page prints 226, 148 and 78 before the root of the logarithm."""
    for edition in EDITIONS:
        rows = figures("conductor_heating", edition)
        constants = [tuple(row.values()) for row in rows]
        assert constants == [
            ("copper", 234.5, 3.45e-3, 17.241e-6),
            ("aluminum", 228, 2.5e-3, 28.264e-6),
            ("steel", 202, 3.8e-3, 138e-6),
        ]
        assert [round(sqrt(heat * (zero + 20) / rho)) for _, zero, heat, rho in constants] == [226, 148, 78]


def test_damage_curves_have_the_constants_of_the_problem_and_of_the_reference_list():
    for edition in EDITIONS:
        assert figures("damage_curve_copper", edition) == [{"constant": 0.0297, "inferred_zero": 234}]
        assert figures("damage_curve_aluminum", edition) == [{"constant": 0.0125, "inferred_zero": 228}]
        assert rule("fault/damage_curve_aluminum", edition).mark == "memory"


def test_the_fusing_formula_has_its_three_constants():
    for edition in EDITIONS:
        assert figures("fusing_formula", edition) == [{"divisor": 33, "inferred_zero": 234, "melting": 1083}]


def test_limits_are_those_behind_the_printed_multipliers():
    """One ampere for each 42.25 cmil for 5 s is 150 °C; 1.70, 2.40, 2.94 cmil for 1, 2, 3 cycles are 250 °C."""
    for edition in EDITIONS:
        assert figures("withstand_limit", edition) == [
            {"limit": "thermoplastic", "celsius": 150},
            {"limit": "thermoset", "celsius": 250},
            {"limit": "bolted-joint", "celsius": 250},
        ]
        assert figures("withstand_start", edition) == 75
    for end, cmil, second in ((150, 42.25, 5), (250, 1.70, 1 / 60), (250, 2.40, 2 / 60), (250, 2.94, 3 / 60)):
        by_curve = sqrt(second / (0.0297 / log(10) * log((end + 234) / (75 + 234))))
        assert abs(by_curve / cmil - 1) < 0.002


def test_the_formulas_hold_from_a_tenth_of_a_second_to_five():
    for edition in EDITIONS:
        assert figures("adiabatic_shortest", edition) == 0.1
        assert figures("adiabatic_longest", edition) == 5
