"""Finds ngspice, the circuit simulator that the tests compare with, or brings it."""

from __future__ import annotations

import os
import shutil

from site_assets.setup.debian import debian_command, installs
from site_assets.setup.steps import printed, stop

# On Windows the plain name opens a window.
NAMES = ("ngspice_con", "ngspice")


def simulator_variables() -> dict[str, str]:
    """NGSPICE, the path of the simulator."""
    return {"NGSPICE": ngspice()}


def ngspice() -> str:
    """The path of an ngspice that starts; stops when there is none and none can be brought."""
    named = os.environ.get("NGSPICE")
    if named:
        return named if starts(named) else stop(f"NGSPICE names {named}, which does not start.")
    return present() or from_debian() or stop("no ngspice for the tests.", *commands())


def present() -> str | None:
    """An ngspice that is already on the machine, else None."""
    found = (shutil.which(name) for name in NAMES)
    return next((path for path in found if path and starts(path)), None)


def starts(path: str) -> bool:
    """Whether the simulator runs."""
    return "ngspice" in (printed([path, "--version"]) or "")


def from_debian() -> str | None:
    """Debian's own ngspice, where we may install it; else None."""
    return present() if installs("ngspice") else None


def commands() -> list[str]:
    """What to type to get ngspice on this machine, or what to set when no command is known."""
    if shutil.which("apt-get"):
        return [debian_command("ngspice")]
    if shutil.which("brew"):
        return ["brew install ngspice"]
    return ["set NGSPICE to the path of an installed ngspice"]
