"""What the measures share of browsers."""

import os
from contextlib import contextmanager

from playwright.sync_api import sync_playwright

from site_assets.setup.browser import chromium


@contextmanager
def started_browser():
    """Yield a running Chromium."""
    as_root = hasattr(os, "geteuid") and os.geteuid() == 0
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=["--no-sandbox"] if as_root else [])
        yield browser
        browser.close()
