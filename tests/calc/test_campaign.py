"""Random and hostile inputs end in an answer, a field to mend or a case not covered, and show what readers can read."""

import pytest

from calc.registry import CALCULATORS
from tests.speed.crash_campaign import CHUNK, CHUNKS, ends_of, figures

SLICES = 10_000
EACH = CHUNK * CHUNKS // SLICES  # inputs a calculator in one slice


@pytest.mark.slices(SLICES)
def test_a_slice_of_the_campaign_ends_without_a_crash(slice_number):
    for slug in CALCULATORS:
        ends = ends_of(slug, f"slice {slice_number}", EACH)
        assert ends.total() == EACH and not ends["crash"], slug


def test_figures_are_counted_as_a_reader_counts_them():
    counted = {"0.0125": 3, "12500": 3, "1.25": 3, "1.20": 3, "277": 3, "2772": 4, "0.5": 1, "1000": 1, "10.01": 4}
    assert {number: figures(number) for number in counted} == counted
