"""What an engine cannot do is stated here and looked at: the day it can, the test fails, and more can be asked."""

from __future__ import annotations

import base64
import io
from unicodedata import normalize

import pytest
from pypdf import PdfReader

from site_assets.build.serve import Server
from tests.browser.engines.conftest import ENGINES, SUB_PATH, Reader
from tests.browser.engines.test_core import ANSWER, CASE, FORM, SHOWN
from tests.browser.engines.window import Refused

ALL = set(ENGINES)
# What the handbook uses where it is there, how a page sees it, and the engines that have it.
USED = {
    "a service worker, which saves pages": ("navigator.serviceWorker", ALL),
    "storage of files by their address": ("globalThis.caches", ALL),
    "locks between tabs, so that one makes a snapshot": ("navigator.locks", ALL),
    "unpacking of what a host sends as it is": ("globalThis.DecompressionStream", ALL),
    "signals that end several waits": ("AbortSignal.any", ALL),
    "telling how much room there is": ("navigator.storage?.estimate", {"chromium", "firefox"}),
    "keeping what is saved when room is short": ("navigator.storage?.persist", {"chromium", "firefox"}),
    "telling when it has nothing else to do": ("globalThis.requestIdleCallback", {"chromium", "firefox"}),
    "telling how much memory the device has": ("navigator.deviceMemory", {"chromium"}),
    "telling that its reader wants to save data": ("navigator.connection", {"chromium"}),
    "asking to be installed": ("'onbeforeinstallprompt' in window", {"chromium"}),
}
pytestmark = pytest.mark.slices(len(ENGINES))

LOOK = "return Object.fromEntries(Object.entries({ %s }).map(([name, there]) => [name, Boolean(there)]))"


def test_an_engine_has_what_it_is_known_to_have_and_nothing_more(reader):
    reader.open(FORM)
    window = reader.window
    found = window.run(LOOK % ", ".join(f'"{name}": {seen}' for name, (seen, _) in USED.items()))
    assert found == {name: window.name in engines for name, (_, engines) in USED.items()}


@pytest.mark.long
def test_webkits_driver_makes_no_paper(window_of):
    """So its pages for paper are looked at on the screen; Firefox makes paper of a whole answer."""
    with pytest.raises(Refused, match="unknown command"):
        window_of("webkit").command("Print")


@pytest.mark.long
def test_firefox_makes_paper_of_an_answer_with_its_safety_and_link(window_of, site_folder):
    with Server(site_folder, SUB_PATH) as server:
        reader = Reader(window_of("firefox"), server)
        reader.open(FORM + CASE)
        assert reader.window.text(SHOWN) == ANSWER
        paper = PdfReader(io.BytesIO(base64.b64decode(reader.window.command("Print"))))
    words = normalize("NFKC", "".join(sheet.extract_text() for sheet in paper.pages))
    for each in (ANSWER, "lock out and tag out", "2023 edition", "edition=2023&conductor=500kcmil"):
        assert each in words
