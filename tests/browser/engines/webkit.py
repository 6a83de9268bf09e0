"""WebKitGTK, by the driver that Debian packs with its small browser; it needs a screen, so one is made for it."""

from __future__ import annotations

import json
import os
import socket
import subprocess
import time
from http import HTTPStatus
from http.client import HTTPConnection
from typing import Any

from tests.browser.engines.webdriver import CAPABILITIES, WebDriver
from tests.browser.engines.window import PATIENCE, PAUSE, Refused

SCREEN = "1400x1000x24"
# Command -> method and path; {id} is taken from its parameters.
PATHS = {
    "NewSession": ("POST", ""),
    "DeleteSession": ("DELETE", ""),
    "Navigate": ("POST", "/url"),
    "Back": ("POST", "/back"),
    "Refresh": ("POST", "/refresh"),
    "ExecuteScript": ("POST", "/execute/sync"),
    "FindElement": ("POST", "/element"),
    "ElementClick": ("POST", "/element/{id}/click"),
    "ElementSendKeys": ("POST", "/element/{id}/value"),
    "SetWindowRect": ("POST", "/window/rect"),
    "TakeScreenshot": ("GET", "/screenshot"),
    "Print": ("POST", "/print"),
}


class WebKit(WebDriver):
    """A window of WebKitGTK on a screen of its own; WEBKIT_DRIVER and XVFB name the programs."""

    name = "webkit"

    def __init__(self) -> None:
        self.screen = subprocess.Popen(
            [os.environ["XVFB"], "-displayfd", "1", "-screen", "0", SCREEN, "-nolisten", "tcp"],
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
        )
        assert self.screen.stdout
        display = f":{self.screen.stdout.readline().decode().strip()}"
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            port = free.getsockname()[1]
        self.process = subprocess.Popen(
            [os.environ["WEBKIT_DRIVER"], f"--port={port}"],
            # Its sandbox does not work for root, and only our own pages are opened.
            env={**os.environ, "DISPLAY": display, "WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS": "1"},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        self.port, self.session = port, "/session"
        self._wait_for_driver()
        self.session += "/" + self.command("NewSession", capabilities={"alwaysMatch": CAPABILITIES})["sessionId"]

    def _wait_for_driver(self) -> None:
        end = time.monotonic() + PATIENCE
        while socket.socket().connect_ex(("127.0.0.1", self.port)):
            assert time.monotonic() < end, "WebKit's driver did not start"
            time.sleep(PAUSE)

    def command(self, command: str, **parameters: object) -> Any:
        """Return what WebKit answers to a WebDriver command."""
        method, path = PATHS[command]
        body = json.dumps(parameters) if method == "POST" else None
        connection = HTTPConnection("127.0.0.1", self.port)
        try:
            connection.request(method, self.session + path.format(**parameters), body)
            answer = connection.getresponse()
            value = json.load(answer)["value"]
        finally:
            connection.close()
        if answer.status != HTTPStatus.OK:
            raise Refused(f"{command}: {value['error']}: {value.get('message')}")
        return value

    def faults(self) -> list[str]:
        """Return none: WebKit's driver hands on nothing of the console."""
        return []

    def close(self) -> None:
        """End the browser, its driver and the screen."""
        try:
            self.command("DeleteSession")
        finally:
            for program in (self.process, self.screen):
                program.terminate()
                program.wait()
