"""Chromium, by Playwright, which drives it in all the other tests of pages."""

from __future__ import annotations

from collections.abc import Generator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Error

from tests.browser.conftest import watch
from tests.browser.engines.window import ENTER, PATIENCE, Refused, Window


class Chromium(Window):
    """A window of the Chromium that runs."""

    name = "chromium"

    def __init__(self, browser: Browser) -> None:
        self.context = browser.new_context()
        self.page = self.context.new_page()
        self.page.set_default_timeout(PATIENCE * 1000)
        self.told = watch(self.page)

    def run(self, body: str, *arguments: object) -> Any:
        """Return what the body of an async function returns in the page; `arguments` are its."""
        function = f"(given) => (async function () {{ {body} }}).apply(null, given)"
        with carried_out():
            return self.page.evaluate(function, list(arguments))

    def go(self, address: str) -> None:
        """Start to go to an address."""
        self.page.goto(address, wait_until="commit")

    def again(self) -> None:
        """Start to load the page again."""
        self.page.reload(wait_until="commit")

    def back(self) -> None:
        """Go back as the browser's own button does."""
        self.page.go_back(wait_until="commit")

    def click(self, selector: str) -> None:
        """Press an element as a reader does."""
        with carried_out():
            self.page.locator(selector).first.click(no_wait_after=True)

    def type(self, selector: str, text: str) -> None:
        """Press keys in a field, ENTER among them."""
        with carried_out():
            self.page.locator(selector).first.press_sequentially(text.replace(ENTER, ""))
            if ENTER in text:
                self.page.keyboard.press("Enter")

    def resize(self, width: int, height: int) -> None:
        """Give the window this size."""
        self.page.set_viewport_size({"width": width, "height": height})

    def picture(self, path: Path) -> None:
        """Keep what is seen as a PNG."""
        self.page.screenshot(path=path)

    def faults(self) -> list[str]:
        """Return the errors of pages since this was last asked."""
        told = self.told.copy()
        self.told.clear()
        return told

    def close(self) -> None:
        """Close the window; the browser runs on for other tests."""
        self.context.close()


@contextmanager
def carried_out() -> Generator[None]:
    """Raise Refused where Playwright raises an error of its own."""
    try:
        yield
    except Error as error:
        raise Refused(str(error)) from None
