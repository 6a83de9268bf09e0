"""One host, one browser and the versions that can be published, for all cases of a run."""

import pytest

from tests.browser.faults.stage import Stage
from tests.browser.faults.versions import make_versions


@pytest.fixture(scope="session")
def versions(site_folder, tmp_path_factory):
    """Return the versions of the handbook by name."""
    return make_versions(site_folder, tmp_path_factory.mktemp("versions"))


@pytest.fixture(scope="session")
def stage(browser, versions, tmp_path_factory, request):
    """Yield the stage on which cases follow one another."""
    thorough = request.config.option.long
    made = Stage(browser, versions, tmp_path_factory.mktemp("profiles"), thorough=thorough)
    yield made
    made.close()
