"""A window that takes the W3C's WebDriver commands; how they travel is each engine's own."""

from __future__ import annotations

import base64
from pathlib import Path
from typing import Any

from tests.browser.engines.window import ENTER, PATIENCE, Window

CAPABILITIES = {"pageLoadStrategy": "none", "timeouts": {"script": PATIENCE * 1000}}
ENTER_KEY = "\ue007"
REFERENCE = "element-6066-11e4-a52e-4f735466cecf"  # under this name WebDriver gives an element


class WebDriver(Window):
    """A window that is told by `command`, which an engine gives."""

    def command(self, command: str, **parameters: object) -> Any:
        """Return what the browser answers to a command. Raises: Refused."""
        raise NotImplementedError

    def run(self, body: str, *arguments: object) -> Any:
        """Return what the body of an async function returns in the page; `arguments` are its."""
        script = f"return (async function () {{ {body} }}).apply(null, arguments)"
        return self.command("ExecuteScript", script=script, args=list(arguments))

    def go(self, address: str) -> None:
        """Start to go to an address."""
        self.command("Navigate", url=address)

    def again(self) -> None:
        """Start to load the page again."""
        self.command("Refresh")

    def back(self) -> None:
        """Go back as the browser's own button does."""
        self.command("Back")

    def click(self, selector: str) -> None:
        """Press an element as a reader does."""
        self.command("ElementClick", id=self._element(selector))

    def type(self, selector: str, text: str) -> None:
        """Press keys in a field, ENTER among them."""
        self.command("ElementSendKeys", id=self._element(selector), text=text.replace(ENTER, ENTER_KEY))

    def resize(self, width: int, height: int) -> None:
        """Give the window this size."""
        self.command("SetWindowRect", width=width, height=height)

    def picture(self, path: Path) -> None:
        """Keep what is seen as a PNG."""
        path.write_bytes(base64.b64decode(self.command("TakeScreenshot")))

    def _element(self, selector: str) -> str:
        found: str = self.command("FindElement", using="css selector", value=selector)[REFERENCE]
        return found
