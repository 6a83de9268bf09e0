"""The figures of the available fault current against texts read apart from the rules."""

from calc.editions import EDITIONS
from calc.rulebook import rule


def test_half_of_a_winding_has_one_and_a_half_the_resistance_and_1_2_times_the_reactance():
    """A distribution-engineering textbook's 25 kVA example, R 1.4 %, X 1.2 %: the half is 2.1 and 1.44 %."""
    for edition in EDITIONS:
        factor = {row["part"]: row["factor"] for row in rule("fault/half_winding", edition).rows}
        assert set(factor) == {"resistance", "reactance"}
        assert round(1.4 * factor["resistance"], 6) == 2.1 and round(1.2 * factor["reactance"], 6) == 1.44


def test_what_is_practice_is_marked_so_and_stands_at_the_high_side():
    """Nine tenths of the plate; motors at six times, above the usual four and the five of large motors; 20 °C."""
    for name, expected in (("transformer_tolerance", 10), ("motor_contribution", 6), ("cold_conductor", 20)):
        for edition in EDITIONS:
            stated = rule(f"fault/{name}", edition)
            assert (stated.value, stated.mark) == (expected, "practice")
