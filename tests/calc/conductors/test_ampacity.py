"""The size of another metal with equivalent ampacity, at its boundaries.

75 °C values: Table 310.15(B)(16) of 2017 and Table 310.16 of 2023.
"""

import pytest

from calc.conductors.ampacity import ampacity, size_of_ampacity


@pytest.mark.parametrize(
    ("ampere", "size"),
    [
        (334, "400kcmil"),
        (335, "400kcmil"),
        (336, "500kcmil"),
        (380, "500kcmil"),
        (381, "600kcmil"),
        (665, "2000kcmil"),
    ],
)
def test_copper_of_equivalent_ampacity_carries_at_least_as_much(ampere, size):
    assert size_of_ampacity(ampere, "copper", "2023") == size


def test_above_the_last_ampacity_there_is_no_size():
    assert size_of_ampacity(666, "copper", "2023") is None
    assert size_of_ampacity(561, "aluminum", "2023") is None


def test_copper_clad_aluminum_is_read_in_the_aluminum_column():
    assert ampacity("600kcmil", "copper-clad-aluminum", "2023") == 340


def test_the_smallest_copper_has_no_aluminum_ampacity():
    assert ampacity("14", "aluminum", "2023") is None
