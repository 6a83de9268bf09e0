"""The one figure of the drawn circuit that no text lists: a teaching figure, agreed with those who wrote the case."""

from calc.editions import EDITIONS
from calc.rulebook import rule


def test_the_flexible_raceway_of_the_drawn_circuit_has_half_an_ohm_and_says_that_no_text_lists_it():
    for edition in EDITIONS:
        stated = rule("fault/flexible_raceway_resistance", edition)
        assert (stated.value, stated.mark, stated.sources) == (0.5, "practice", ())
