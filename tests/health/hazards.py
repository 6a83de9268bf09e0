"""Bring each hazard of the safety case back, in a copy, and see that the test named for it fails.

    python -m tests.health.hazards                      count the hazards
    python -m tests.health.hazards --prove              prove every stop
    python -m tests.health.hazards --prove ID [ID ...]  prove some: main-bonding-jumper/breaker-sizes-it, or all of
                                                        main-bonding-jumper
    python -m tests.health.hazards --prove --from ID    go on from one

First every named test must pass as the code stands, in one run. Then each mutant is put into a temporary copy of
the code and its test must fail there; for a test in a browser the site of the copy is built with it. The tree itself
is never touched. Exit status: 0 when all are proved, else 1.
"""

import argparse
import contextlib
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path

import hypothesis  # noqa: F401  loaded once, before the runs fork
import pytest

from site_assets.build.hazard_data import Hazard, hazards
from site_assets.setup.browser import browser_variables

ROOT = Path(__file__).parents[2]
COPIED = ("calc", "docs", "site_assets", "tests", "pyproject.toml", "mkdocs.yml", "LICENSE", ".python-version")
SHARED = (".venv", ".tools")
IN_A_BROWSER = "tests/browser/"  # these read the built site
OURS = ("calc", "site_assets", "tests")
LONGEST = 300  # s; a mutant that never ends has proved nothing
QUIET = ("-q", "-x", "-p", "no:cacheprovider", "-p", "no:xdist", "-p", "no:playwright", "--no-header", "--no-summary")


def prove(chosen: Iterable[Hazard]) -> list[str]:
    """Prove the stops of `chosen`, say each as it comes, and return what is not proved and why."""
    chosen = list(chosen)
    with copy_of_the_code() as copy:
        began = time.monotonic()
        if any(reads_site(hazard) for hazard in chosen):
            os.environ |= {name: str(value) for name, value in browser_variables().items()}
            if not builds(copy):
                return ["the site cannot be built as the code stands"]
        if run(copy, sorted({hazard.test for hazard in chosen}), keep_compiled=True) != 0:
            return ["a named test does not pass, or is not there, as the code stands"]
        print(f"every named test passes as the code stands ({time.monotonic() - began:.0f} s)", flush=True)
        left = []
        for number, hazard in enumerate(chosen, start=1):
            why = survives(copy, hazard)
            print(f"{number} of {len(chosen)} {hazard.key}: {why or 'proved'}", flush=True)
            left += [f"{hazard.key}: {why}"] if why else []
    return left


def survives(copy: Path, hazard: Hazard) -> str:
    """Return why bringing a hazard back in the copy proves nothing, or "" when its test fails there."""
    try:
        with mutated(copy / hazard.file, hazard):
            if reads_site(hazard) and not builds(copy):
                return "the site cannot be built with it back"
            status = run(copy, [hazard.test])
    except ValueError as error:
        return str(error)
    told = {1: "", 0: f"{hazard.test} passes with it back"}
    return told.get(status, f"its test does not run with it back ({status})")


def reads_site(hazard: Hazard) -> bool:
    """Return whether the test of a hazard reads the built site."""
    return hazard.test.startswith(IN_A_BROWSER)


def builds(copy: Path) -> bool:
    """Build the site of the copy; return whether it could be built."""
    command = [sys.executable, "-m", "mkdocs", "build", "--strict", "--quiet"]
    environment = {**os.environ, "PYTHONPATH": str(copy), "NO_MKDOCS_2_WARNING": "1"}
    return subprocess.run(command, cwd=copy, env=environment, check=False).returncode == 0


@contextlib.contextmanager
def mutated(file: Path, hazard: Hazard) -> Iterator[None]:
    """Put the mutant of a hazard into a file of the copy, and the file back afterwards with its time of writing."""
    written, times = file.read_text(encoding="utf-8"), file.stat()
    if written.count(hazard.old) != 1:
        raise ValueError(f"its old text stands {written.count(hazard.old)} times in {hazard.file}, not once")
    file.write_text(written.replace(hazard.old, hazard.new), encoding="utf-8")
    try:
        yield
    finally:
        file.write_text(written, encoding="utf-8")
        os.utime(file, ns=(times.st_atime_ns, times.st_mtime_ns))


@contextlib.contextmanager
def copy_of_the_code() -> Iterator[Path]:
    """Yield a temporary copy of all that tests read."""
    with tempfile.TemporaryDirectory(prefix="hazards-") as folder:
        copy = Path(folder)
        for name in COPIED:
            if (ROOT / name).is_dir():
                shutil.copytree(ROOT / name, copy / name, ignore=shutil.ignore_patterns("__pycache__", ".hypothesis"))
            else:
                shutil.copy2(ROOT / name, copy / name)
        for name in SHARED:
            (copy / name).symlink_to(ROOT / name)
        yield copy


def run(copy: Path, tests: list[str], *, keep_compiled: bool = False) -> int:
    """Return the exit status of tests in the copy: 0 passed, 1 failed, another where they could not run."""
    return forked(lambda: _run_here(copy, tests, keep_compiled))


def _run_here(copy: Path, tests: list[str], keep_compiled: bool) -> int:
    os.chdir(copy)
    for name in [name for name in sys.modules if name.partition(".")[0] in OURS]:
        del sys.modules[name]  # the parent's are those of the tree
    sys.path[:] = [str(copy), *(path for path in sys.path if path and Path(path).resolve() != ROOT)]
    os.environ["PYTHONPATH"] = str(copy)
    os.environ.pop("PYTEST_ADDOPTS", None)
    sys.dont_write_bytecode = not keep_compiled
    return int(pytest.main([*QUIET, f"--rootdir={copy}", *tests]))


def forked(work: Callable[[], int]) -> int:
    """Return what `work` returns in a process of its own; 99 where it fails or never ends."""
    child = os.fork()
    if child == 0:
        status = 99
        try:
            signal.alarm(LONGEST)
            if not os.environ.get("HAZARDS_LOUD"):
                silence = os.open(os.devnull, os.O_WRONLY)
                os.dup2(silence, 1)
                os.dup2(silence, 2)
            status = work()
        finally:
            os._exit(status)
    _, ended = os.waitpid(child, 0)
    return os.waitstatus_to_exitcode(ended) if os.WIFEXITED(ended) else 99


def chosen_by(names: list[str], start: str | None) -> list[Hazard]:
    """Return the hazards of these keys or subjects, all without any, from `start` on. Raises: SystemExit."""
    known = {each.key for each in hazards()} | {each.of for each in hazards()}
    unknown = [name for name in (*names, *([start] if start else [])) if name not in known]
    if unknown:
        raise SystemExit(f"no hazard is called {', '.join(unknown)}")
    found = [each for each in hazards() if not names or {each.key, each.of} & set(names)]
    first = next((place for place, each in enumerate(found) if start in (each.key, each.of)), 0) if start else 0
    return found[first:]


def main(arguments: list[str]) -> int:
    """Count or prove; return the exit status."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--prove", nargs="*", metavar="ID")
    parser.add_argument("--from", dest="start", metavar="ID")
    asked = parser.parse_args(arguments)
    chosen = chosen_by(asked.prove or [], asked.start)
    if asked.prove is None:
        for kind, count in Counter(each.kind for each in chosen).items():
            print(f"{kind}: {count} hazards of {len({each.of for each in chosen if each.kind == kind})}")
        return 0
    began = time.monotonic()
    left = prove(chosen)
    print(*left, sep="\n")
    proved = 0 if left and left[0].endswith("as the code stands") else len(chosen) - len(left)
    print(f"{proved} of {len(chosen)} proved in {time.monotonic() - began:.0f} s")
    return int(bool(left))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
