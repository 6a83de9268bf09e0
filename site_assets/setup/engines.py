"""Finds the other two engines that the tests run in, Firefox ESR and WebKitGTK, or brings them."""

from __future__ import annotations

import os
import shutil
from dataclasses import dataclass
from typing import NoReturn

from site_assets.setup.debian import debian_command, installs
from site_assets.setup.steps import stop


@dataclass(frozen=True)
class Program:
    """A program that the tests need: the variable that holds its path, its names, and Debian's package of it."""

    variable: str
    names: tuple[str, ...]
    package: str

    def path(self) -> str | None:
        """Where it is on this machine: where the variable says, else among the programs; None when it is not there."""
        named = os.environ.get(self.variable)
        if named:
            return shutil.which(named) or stop(f"{self.variable} names {named}, which is no program.")
        return next((path for path in map(shutil.which, self.names) if path), None)


PROGRAMS = (
    Program("FIREFOX", ("firefox-esr", "firefox"), "firefox-esr"),
    # It brings WebKit's small browser with it.
    Program("WEBKIT_DRIVER", ("WebKitWebDriver",), "webkit2gtk-driver"),
    # That browser opens a window, and so needs a screen that a machine without one can have too.
    Program("XVFB", ("Xvfb",), "xvfb"),
)


def engine_variables() -> dict[str, str]:
    """FIREFOX, WEBKIT_DRIVER and XVFB, the paths of the programs; stops when one is missing and cannot be brought."""
    lacking = missing()
    if lacking and installs(*(program.package for program in lacking)):
        lacking = missing()
    if lacking:
        stop_for(lacking)
    return {program.variable: program.path() or "" for program in PROGRAMS}


def missing() -> list[Program]:
    """What is not on this machine."""
    return [program for program in PROGRAMS if not program.path()]


def stop_for(lacking: list[Program]) -> NoReturn:
    """End with the one line that brings what is missing, or with what to set where no line is known."""
    reason = f"the tests run in Firefox ESR and WebKitGTK too, and {' and '.join(each.names[0] for each in lacking)}"
    reason += " is not here." if len(lacking) == 1 else " are not here."
    if shutil.which("apt-get"):
        stop(reason, debian_command(*(program.package for program in lacking)))
    stop(reason, *(f"set {each.variable} to the path of an installed {each.names[0]}" for each in lacking))
