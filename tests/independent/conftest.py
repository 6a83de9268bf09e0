"""One way to run a sweep: no case may differ, and the count of cases is reported."""

import pytest

from tests.independent.comparison import compare


@pytest.fixture
def sweep(record_property):
    """Compares every case and gives back the count, once no case differs."""

    def run(slug, cases, value="size"):
        count, differences = compare(slug, cases, value)
        record_property("compared", count)
        print(f"{slug}: {count} cases compared")
        assert differences[:20] == [], f"{len(differences)} of {count} differ"
        return count

    return run
