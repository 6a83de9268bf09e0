"""Readers of the built site in Chromium, Firefox and WebKitGTK. The test command finds the programs or stops.

A test that takes `reader` runs in one engine a run, in another with another commit, and with `--long` in all three:
`pytestmark = pytest.mark.slices(len(ENGINES))`.
"""

from __future__ import annotations

import zlib
from dataclasses import dataclass

import pytest

from site_assets.build.serve import Server
from tests.browser.engines.chromium import Chromium
from tests.browser.engines.firefox import Firefox
from tests.browser.engines.webkit import WebKit
from tests.browser.engines.window import Window

ENGINES = ("chromium", "firefox", "webkit")
SUB_PATH = "/handbook/here/"


@dataclass(frozen=True)
class Reader:
    """A window, and the host whose pages are read in it."""

    window: Window
    server: Server

    def open(self, path: str) -> None:
        """Open a page of the handbook."""
        self.window.open(self.server.address + path)


@pytest.fixture(scope="session")
def window_of(browser):
    """Yield a function that gives the window of an engine; an engine is started once, when it is first wanted."""
    makers = {"chromium": lambda: Chromium(browser), "firefox": Firefox, "webkit": WebKit}
    started: dict[str, Window] = {}

    def window(name: str) -> Window:
        if name not in started:
            started[name] = makers[name]()
        return started[name]

    yield window
    for each in started.values():
        each.close()


@pytest.fixture
def engine(request, slice_number) -> str:
    """Return the engine of this test in this slice; not every test has the same."""
    return ENGINES[(slice_number + zlib.crc32(request.node.originalname.encode())) % len(ENGINES)]


@pytest.fixture
def reader(window_of, engine, site_folder):
    """Yield a new reader: a host with a port of its own has storage of its own. The test fails on any page's error."""
    window = window_of(engine)
    with Server(site_folder, SUB_PATH) as server:
        window.faults()
        yield Reader(window, server)
        window.go("about:blank")
        faults = window.faults()
    assert faults == []
