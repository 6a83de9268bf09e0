"""Finds a Chromium for the tests, or brings one."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

from site_assets.setup.debian import debian_command, installs
from site_assets.setup.paths import WINDOWS, environment_python
from site_assets.setup.steps import is_root, printed, report, stop, succeeds, typed

NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "msedge")
FIXED_PLACES = (
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    r"C:\Program Files\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
)


def browser_variables() -> dict[str, str]:
    """CHROMIUM, the path of the browser, and CHROMIUM_ARGS, what it must be started with."""
    arguments = os.environ.get("CHROMIUM_ARGS", "").split()
    # Chromium's sandbox does not work for root.
    if is_root() and "--no-sandbox" not in arguments:
        arguments.append("--no-sandbox")
    return {"CHROMIUM": chromium(), "CHROMIUM_ARGS": " ".join(arguments)}


def chromium() -> str:
    """The path of a Chromium that starts; stops when there is none and none can be brought."""
    named = os.environ.get("CHROMIUM")
    if named:
        return named if starts(named) else stop(f"CHROMIUM names {named}, which does not start.")
    return present() or from_playwright() or from_debian() or stop("no Chromium for the tests.", chromium_command())


def present() -> str | None:
    """A browser that is already on the machine, else None."""
    candidates = [shutil.which(name) for name in NAMES] + [path for path in FIXED_PLACES if Path(path).exists()]
    return next((path for path in candidates if path and starts(path)), None)


def starts(path: str) -> bool:
    """Whether the browser runs; some systems put an empty stand-in under its name."""
    # On Windows the question for the version opens a window.
    return Path(path).exists() if WINDOWS else bool(printed([path, "--version"]))


def from_playwright() -> str | None:
    """The browser of the installed Playwright, fetched when missing; None when it cannot be had."""
    asked = "from playwright.sync_api import sync_playwright as p\nwith p() as q: print(q.chromium.executable_path)"
    path = printed([environment_python(), "-c", asked])
    if path and starts(path):
        return path
    report("Fetching Chromium for the tests ...")
    fetched = succeeds([environment_python(), "-m", "playwright", "install", "chromium"])
    return path if fetched and path and starts(path) else None


def from_debian() -> str | None:
    """Debian's own Chromium, where we may install it; else None."""
    return present() if installs("chromium") else None


def chromium_command() -> str:
    """How to get a Chromium on this machine."""
    if shutil.which("apt-get"):
        return debian_command("chromium")
    if shutil.which("brew"):
        return "brew install --cask chromium"
    return typed([environment_python(), "-m", "playwright", "install", "--with-deps", "chromium"])
