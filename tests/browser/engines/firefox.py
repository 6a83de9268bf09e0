"""Firefox, by Marionette: its own way of taking WebDriver commands, which needs no program between."""

from __future__ import annotations

import contextlib
import json
import os
import shutil
import socket
import subprocess
import tempfile
import time
from pathlib import Path
from typing import Any

from tests.browser.engines.webdriver import CAPABILITIES, WebDriver
from tests.browser.engines.window import PATIENCE, PAUSE, Refused

PREFERENCES = {
    "marionette.port": 0,  # a free one
    "browser.startup.homepage_override.mstone": "ignore",
    "datareporting.policy.dataSubmissionEnabled": False,
    "app.normandy.enabled": False,
    "browser.shell.checkDefaultBrowser": False,
}
ERRORS = """
  const errors = Services.console.getMessageArray()
    .filter((each) => each instanceof Ci.nsIScriptError && !(each.flags & Ci.nsIScriptError.warningFlag))
    .filter(({ sourceName }) => sourceName.startsWith("http"))
    .map(({ errorMessage, sourceName }) => `${sourceName}: ${errorMessage}`);
  Services.console.reset();
  return errors;
"""


class Firefox(WebDriver):
    """A headless Firefox with a profile of its own; FIREFOX names the program."""

    name = "firefox"

    def __init__(self) -> None:
        self.profile = Path(tempfile.mkdtemp())
        lines = [f"user_pref({json.dumps(name)}, {json.dumps(value)});" for name, value in PREFERENCES.items()]
        (self.profile / "user.js").write_text("\n".join(lines))
        self.process = subprocess.Popen(
            [
                os.environ["FIREFOX"], "--headless", "--no-remote", "--profile", str(self.profile),
                "--marionette", "--remote-allow-system-access",
            ],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )  # fmt: skip
        self.connection = socket.create_connection(("127.0.0.1", self._port()))
        self.answers = self.connection.makefile("rb")
        self._receive()  # who it is
        self.command("NewSession", **CAPABILITIES)

    def _port(self) -> int:
        file = self.profile / "MarionetteActivePort"
        end = time.monotonic() + PATIENCE
        while not (file.exists() and file.read_text().strip()):
            assert time.monotonic() < end, "Firefox did not start"
            time.sleep(PAUSE)
        return int(file.read_text())

    def _receive(self) -> Any:
        length = b""
        while (character := self.answers.read(1)) != b":":
            assert character, "Firefox is gone"
            length += character
        return json.loads(self.answers.read(int(length)))

    def command(self, command: str, **parameters: object) -> Any:
        """Return what Firefox answers to a WebDriver command, or to one of Marionette's own."""
        name = command if ":" in command else f"WebDriver:{command}"
        message = json.dumps([0, 0, name, parameters]).encode()
        self.connection.sendall(b"%d:%s" % (len(message), message))
        _, _, error, answer = self._receive()
        if error:
            raise Refused(f"{command}: {error['error']}: {error['message']}")
        return answer.get("value", answer) if isinstance(answer, dict) else answer

    def faults(self) -> list[str]:
        """Return the errors of pages in Firefox's own console: scripts and content policy."""
        self.command("Marionette:SetContext", value="chrome")
        errors: list[str] = self.command("ExecuteScript", script=ERRORS, args=[])
        self.command("Marionette:SetContext", value="content")
        return errors

    def close(self) -> None:
        """End Firefox, and forget its profile."""
        with contextlib.suppress(Refused, AssertionError, OSError):
            self.command("Marionette:Quit", flags=["eForceQuit"])
        self.connection.close()
        self.process.wait()
        shutil.rmtree(self.profile, ignore_errors=True)
