"""Gets uv, the program that makes the Python environment."""

from __future__ import annotations

import re
import shutil
import sys

from site_assets.setup.debian import debian_command
from site_assets.setup.paths import PINS, TOOLS
from site_assets.setup.steps import printed, report, stop, succeeds, typed

# The first release with `uv venv --clear`.
OLDEST_UV = (0, 8, 0)


def uv() -> str:
    """A recent uv: the machine's own, or the pinned one in .tools."""
    own = shutil.which("uv")
    if own and version(own) >= OLDEST_UV:
        return own
    return pinned() or install()


def version(program: str) -> tuple[int, ...]:
    """The version a uv reports, as numbers; (0, 0, 0) when it does not run."""
    numbers = re.search(r"(\d+)\.(\d+)\.(\d+)", printed([program, "--version"]) or "")
    return tuple(int(number) for number in numbers.groups()) if numbers else (0, 0, 0)


def pinned() -> str | None:
    """The pinned uv when it is in place and runs, else None."""
    (wanted,) = re.findall(r"^uv==(\S+)", (PINS / "uv.txt").read_text(encoding="utf-8"), re.MULTILINE)
    wanted_version = tuple(int(number) for number in wanted.split("."))
    program = shutil.which("uv", path=str(TOOLS / "uv" / "bin"))
    return program if program and version(program) == wanted_version else None


def install() -> str:
    """Let pip put the pinned uv in .tools, checked by its hash; its path."""
    if printed([sys.executable, "-m", "pip", "--version"]) is None:
        stop(f"{sys.executable} has no pip.", pip_command())
    report("Fetching uv ...")
    shutil.rmtree(TOOLS / "uv", ignore_errors=True)
    command = [
        sys.executable, "-m", "pip",
        # Neither the user's settings nor the system's packages are touched.
        "--isolated", "install", "--target", TOOLS / "uv",
        "--require-hashes", "--no-deps", "--only-binary", ":all:", "--no-cache-dir",
        "--quiet", "--no-input", "--disable-pip-version-check", "--root-user-action", "ignore",
        "--requirement", PINS / "uv.txt",
    ]  # fmt: skip
    program = pinned() if succeeds(command) else None
    return program or stop("uv could not be fetched.", typed(command))


def pip_command() -> str:
    """How to get pip on this machine."""
    if shutil.which("apt-get"):
        return debian_command("python3-pip")
    return typed([sys.executable, "-m", "ensurepip", "--user"])
