"""A window of a browser as the tests know it, whichever engine is in it."""

from __future__ import annotations

import time
from pathlib import Path
from typing import Any

PATIENCE = 240  # seconds; on a loaded machine WebKit alone takes a minute to start the calculator
PAUSE = 0.03
# All that the form asks first but the size: copper on both sides, a wire, and so many sets.
CHOOSE_REST = """
for (const name of ["conductor_metal", "metal"]) document.querySelector(`[name=${name}][value=copper]`).click();
for (const [name, value] of [["form", "wire"], ["sets", arguments[0]]]) {
  const field = document.querySelector(`[name=${name}]`);
  field.value = value;
  for (const kind of ["input", "change"]) field.dispatchEvent(new Event(kind, { bubbles: true }));
}"""
ENTER = "\n"
# A page that goes takes this mark with it.
LEAVE = "window.left = true"
# Read to its foot. No wait for its scripts: a test may hold one back, and Firefox calls the page loading all the while.
ARRIVED = "return !window.left && location.href !== 'about:blank' && document.querySelector('.page-foot')"


class Refused(Exception):
    """A command that the browser did not carry out: the element is not there, or the page is going."""


class Window:
    """One window of one browser. An engine gives `name` and the commands that are not written here."""

    name: str

    def run(self, body: str, *arguments: object) -> Any:
        """Return what the body of an async function returns in the page; `arguments` are its. Raises: Refused."""
        raise NotImplementedError

    def go(self, address: str) -> None:
        """Start to go to an address."""
        raise NotImplementedError

    def again(self) -> None:
        """Start to load the page again."""
        raise NotImplementedError

    def back(self) -> None:
        """Go back as the browser's own button does."""
        raise NotImplementedError

    def click(self, selector: str) -> None:
        """Press an element as a reader does."""
        raise NotImplementedError

    def type(self, selector: str, text: str) -> None:
        """Press keys in a field, ENTER among them."""
        raise NotImplementedError

    def resize(self, width: int, height: int) -> None:
        """Give the window this size."""
        raise NotImplementedError

    def picture(self, path: Path) -> None:
        """Keep what is seen as a PNG."""
        raise NotImplementedError

    def faults(self) -> list[str]:
        """Return the errors of pages since this was last asked; WebKit tells of none."""
        raise NotImplementedError

    def close(self) -> None:
        """End the browser, and all that was started for it."""
        raise NotImplementedError

    def open(self, address: str) -> None:
        """Go to an address, and wait until its page is read whole; its scripts may still be on their way."""
        self.run(LEAVE)
        self.go(address)
        self.wait(ARRIVED)

    def reload(self) -> None:
        """Load the page again, and wait as `open` does."""
        self.run(LEAVE)
        self.again()
        self.wait(ARRIVED)

    def wait(self, body: str, *arguments: object) -> Any:
        """Return what the body returns once that is true."""
        end = time.monotonic() + PATIENCE
        while True:
            try:
                found = self.run(body, *arguments)
            except Refused:  # between two pages nobody answers
                found = None
            if found:
                return found
            assert time.monotonic() < end, f"{self.name}: never true: {body} {arguments}"
            time.sleep(PAUSE)

    def text(self, selector: str) -> str:
        """Return the words of an element once it is there and has some."""
        found: str = self.wait("return document.querySelector(arguments[0])?.textContent.trim()", selector)
        return found
