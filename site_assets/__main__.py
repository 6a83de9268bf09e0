"""The project's commands: build, serve, book and test, from a bare machine."""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
from collections.abc import Iterable

if sys.version_info < (3, 11):  # noqa: UP036 (a bare machine may have an older one)
    sys.exit("Stopped: python3 is older than 3.11. Start this with Python 3.11 or newer.")

from site_assets.setup.browser import browser_variables
from site_assets.setup.engines import engine_variables
from site_assets.setup.environment import FOR_THE_SITE, FOR_THE_TESTS, prepare
from site_assets.setup.paths import ROOT, SITE, WINDOWS, environment_python, variables
from site_assets.setup.simulator import simulator_variables
from site_assets.setup.successor import successor_variables


def main(arguments: list[str]) -> int:
    """Run the command; its exit code."""
    parser = argparse.ArgumentParser(prog="python3 -m site_assets", description=__doc__)
    commands = parser.add_subparsers(dest="command", required=True)
    commands.add_parser("build", help="build the handbook into the folder site")
    serve = commands.add_parser("serve", help="build the handbook, serve it and print its address")
    serve.add_argument("--port", type=int, default=8000, help="the next free one is taken (default 8000)")
    book = commands.add_parser("book", help="build the handbook, then bind it as one file to print: site/handbook.pdf")
    book.add_argument("--edition", help="one that the rules know (default: the one shown until one is chosen)")
    book.add_argument("--paper", default="Letter", help="Letter or A4 (default Letter)")
    commands.add_parser("test", help="build, then run all tests", epilog="Further arguments go to pytest.")
    chosen, rest = parser.parse_known_args(arguments)
    if rest and chosen.command != "test":
        parser.error(f"unknown: {' '.join(rest)}")

    prepare(FOR_THE_TESTS if chosen.command == "test" else FOR_THE_SITE)
    if chosen.command == "build":
        return build()
    if chosen.command == "serve":
        return build() or become("site_assets.build.serve", SITE, "--port", chosen.port)
    if chosen.command == "book":
        words = (*(("--edition", chosen.edition) if chosen.edition else ()), "--paper", chosen.paper)
        return build() or become("site_assets.build.book", SITE, *words, **browser_variables())
    programs = {**browser_variables(), **engine_variables(), **simulator_variables()}
    if "--long" in rest:
        programs |= successor_variables()
    # By file: the pinned pytest-xdist does not see groups under the pinned pytest. Three workers for two cores, because
    # a test in a browser waits for half of its time.
    workers = 3 * (os.cpu_count() or 2) // 2
    return build() or become("pytest", "-n", workers, "--dist", "loadfile", *rest, **programs)


def build() -> int:
    """Build the site; 0 when it worked."""
    # Not --quiet, which keeps warnings from --strict too. The theme's banner says nothing about this site.
    return run("mkdocs", "build", "--strict", NO_MKDOCS_2_WARNING="1")


def run(module: str, *arguments: object, **more_variables: object) -> int:
    """Run a module in the project's environment; its exit code."""
    done = subprocess.run(command(module, arguments), cwd=ROOT, env=variables(**more_variables), check=False)
    return done.returncode


def become(module: str, *arguments: object, **more_variables: object) -> int:
    """Run a module in place of this program, so that what ends one ends the other."""
    if WINDOWS:
        return run(module, *arguments, **more_variables)
    os.chdir(ROOT)
    words = command(module, arguments)
    return os.execve(words[0], words, variables(**more_variables))  # noqa: S606 (the words are ours)


def command(module: str, arguments: Iterable[object]) -> list[str]:
    return [str(word) for word in (environment_python(), "-m", module, *arguments)]


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        sys.exit(130)
