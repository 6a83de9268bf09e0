"""A reader of a copy of the site that a test may publish again, break, slow down or take away."""

import shutil

import pytest
from playwright.sync_api import expect

from site_assets.build.precache import write_service_worker
from site_assets.build.serve import Server
from tests.browser.offline.published import SUB_PATH

# A busy machine saves and loads slowly; only a test that fails waits this long.
expect.set_options(timeout=60_000)


@pytest.fixture
def folder(site_folder, tmp_path):
    """A copy of the built site that a test may publish again or break."""
    copy = tmp_path / "site"
    shutil.copytree(site_folder, copy)
    write_service_worker(copy, "first")
    return copy


@pytest.fixture
def server(folder):
    with Server(folder, SUB_PATH) as running:
        yield running


@pytest.fixture
def context(browser):
    opened = browser.new_context()
    opened.set_default_timeout(60_000)
    yield opened
    opened.close()


@pytest.fixture
def page(context, server):
    opened = context.new_page()
    opened.goto(server.address)
    return opened
