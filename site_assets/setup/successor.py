"""Brings the generator that the long tests build the handbook with too, into an environment of its own."""

from __future__ import annotations

import os
from pathlib import Path

from site_assets.setup.environment import interpreter
from site_assets.setup.paths import PINS, TOOLS, WINDOWS
from site_assets.setup.steps import printed, report, stop, succeeds, typed
from site_assets.setup.uv import uv

ENVIRONMENT = TOOLS / "successor"
PINNED = PINS / "successor.txt"
READY = ENVIRONMENT / "ready"


def successor_variables() -> dict[str, str]:
    """SUCCESSOR, the path of a Python that has the generator."""
    return {"SUCCESSOR": successor()}


def successor() -> str:
    """The path of a Python that has the generator; stops when it cannot be brought."""
    named = os.environ.get("SUCCESSOR")
    if named:
        return named if starts(named) else stop(f"SUCCESSOR names {named}, which has no zensical.")
    python = ENVIRONMENT / ("Scripts/python.exe" if WINDOWS else "bin/python")
    if not (READY.exists() and READY.read_text() == PINNED.read_text()):
        install(uv(), python)
    return str(python)


def starts(python: str) -> bool:
    """Whether this Python has the generator."""
    return bool(printed([python, "-m", "zensical", "--version"]))


def install(program: str, python: Path) -> None:
    """Exactly the pinned packages, each checked by its hash."""
    report("Fetching the generator that the long tests compare with ...")
    make = [program, "venv", "--quiet", "--clear", "--python", interpreter(program), ENVIRONMENT]
    fill = [program, "pip", "sync", "--quiet", "--python", python, "--require-hashes", "--no-build", PINNED]
    for command in (make, fill):
        if not succeeds(command):
            stop("the generator that the long tests compare with could not be fetched.", typed(command))
    READY.write_text(PINNED.read_text())
