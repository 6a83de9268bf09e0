"""The built site in a real browser. CHROMIUM names the browser; the test command finds one or stops."""

import os
from pathlib import Path

import pytest
from playwright.sync_api import sync_playwright

from site_assets.build.serve import Server

SITE = Path(__file__).parents[2] / "site"
PHONE = {"width": 390, "height": 844}
# A page without a link's inputs starts its calculator once the device has nothing else to do.
NEVER_IDLE = "window.requestIdleCallback = () => 0"
TURNS = 3


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items):
    """Let the tests in a browser take turns, but for campaigns, of which every run has a slice."""
    for item in items:
        if Path(__file__).parent in item.path.parents and not item.get_closest_marker("slices"):
            item.add_marker(pytest.mark.turns(TURNS))


@pytest.fixture(scope="session")
def site_folder() -> Path:
    """Return the folder of the built site."""
    assert (SITE / "index.html").is_file(), "build the site first: python3 -m site_assets build"
    return SITE


@pytest.fixture(scope="session")
def browser():
    """Yield a running Chromium."""
    with sync_playwright() as playwright:
        chromium = playwright.chromium.launch(
            executable_path=os.environ["CHROMIUM"], args=os.environ.get("CHROMIUM_ARGS", "").split()
        )
        yield chromium
        chromium.close()


@pytest.fixture(scope="session")
def site(site_folder):
    """Yield the address of the site, served under a sub-path."""
    with Server(site_folder, base="/handbook/here/") as server:
        yield server.address


@pytest.fixture
def page(browser):
    """Yield a phone-sized page of a new reader; it fails the test on any error or blocked load."""
    context = browser.new_context(viewport=PHONE, service_workers="block")
    page = context.new_page()
    faults = watch(page)
    yield page
    context.close()
    assert not faults


def context_for_reading(browser, **options):
    """Return the browser of a new reader whose device is never idle: only a link or a press starts a calculator.

    Pages look as they do before one starts; starting it takes seconds of each page that is only looked at.
    """
    context = browser.new_context(service_workers="block", **options)
    context.add_init_script(NEVER_IDLE)
    return context


def choose_edition(page, edition: str) -> None:
    """Pick an edition, as a reader does."""
    page.click(".frame-bar > .edition")
    page.click(f"[data-choose-edition='{edition}']")


def watch(page) -> list[str]:
    """Return a list that fills with the page's errors: scripts, console, content policy."""
    faults: list[str] = []
    page.on("pageerror", lambda error: faults.append(f"script: {error}"))
    page.on("console", lambda message: faults.append(f"console: {message.text}") if message.type == "error" else None)
    return faults


def fill_jumper_form(page, conductor, sets="1"):
    """Fill all that a bonding jumper's form asks first: copper on both sides, a wire."""
    page.fill("[name=conductor]", conductor)
    page.fill("[name=sets]", sets)
    for name in ("conductor_metal", "metal"):
        page.check(f"[name={name}][value=copper]")
    page.select_option("[name=form]", "wire")
