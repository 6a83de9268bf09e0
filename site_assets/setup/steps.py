"""How a setup step runs a program, and how it gives up."""

from __future__ import annotations

import os
import shlex
import subprocess
import sys
from collections.abc import Iterable
from typing import NoReturn

from site_assets.setup.paths import ROOT, WINDOWS, variables


def report(sentence: str) -> None:
    """Tell the person waiting what is going on."""
    print(sentence, file=sys.stderr, flush=True)


def stop(reason: str, *commands: str) -> NoReturn:
    """End with the reason and the exact commands to type."""
    lines = [f"Stopped: {reason}"]
    if commands:
        lines.append("Type this, then run the same command again:")
        lines += [f"    {command}" for command in commands]
    sys.exit("\n".join(lines))


def typed(arguments: Iterable[object]) -> str:
    """The command as a person would type it."""
    words = [str(argument) for argument in arguments]
    return subprocess.list2cmdline(words) if WINDOWS else shlex.join(words)


def succeeds(arguments: Iterable[object], **more_variables: object) -> bool:
    """Whether the program ran and ended well; what it printed goes to the terminal."""
    try:
        # Standard output belongs to the command the reader asked for.
        done = subprocess.run(
            [str(argument) for argument in arguments],
            cwd=ROOT,
            env=variables(**more_variables),
            stdin=subprocess.DEVNULL,
            stdout=sys.stderr,
            check=False,
        )
    except OSError as error:
        report(str(error))
        return False
    return done.returncode == 0


def printed(arguments: Iterable[object], *, timeout: float = 60, **more_variables: object) -> str | None:
    """What the program printed, or None when it is missing, fails or hangs."""
    try:
        done = subprocess.run(
            [str(argument) for argument in arguments],
            cwd=ROOT,
            env=variables(**more_variables),
            stdin=subprocess.DEVNULL,
            capture_output=True,
            text=True,
            timeout=timeout,
            check=False,
        )
    except (OSError, subprocess.TimeoutExpired):
        return None
    return done.stdout.strip() if done.returncode == 0 else None


def is_root() -> bool:
    """Whether this is the system's administrator account."""
    return hasattr(os, "geteuid") and os.geteuid() == 0
