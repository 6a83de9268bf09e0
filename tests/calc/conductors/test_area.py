"""Areas and the next listed size: just below, at and just above every listed area."""

from itertools import pairwise

from calc.conductors.area import area, next_listed_size
from tests.independent.wire_gauge import listed_areas


def test_the_next_listed_size_is_the_size_itself_up_to_its_area_and_the_next_above_it():
    for (size, cmil), (larger, _) in pairwise(listed_areas().items()):
        assert next_listed_size(cmil - 0.5, "2023") == size
        assert next_listed_size(cmil, "2023") == size
        assert next_listed_size(cmil + 0.5, "2023") == larger


def test_above_the_largest_listed_size_there_is_none():
    assert next_listed_size(2_000_000, "2023") == "2000kcmil"
    assert next_listed_size(2_000_001, "2023") is None


def test_a_kcmil_size_is_its_area_even_where_it_is_not_listed():
    assert area("1100kcmil", "2023") == 1_100_000
