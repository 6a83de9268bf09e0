"""Writes files of the tree, all of them or none, and lends a copy of the calculators to try a change on."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Generator, Mapping
from contextlib import contextmanager
from pathlib import Path

ROOT = Path(__file__).parents[2]
RULES = Path("calc/rules")
SECTIONS = Path("tests/rules/sections")
CASES = Path("tests/cases")
_CALCULATED_WITH = ("calc", "tests/cases")


class RefusedError(Exception):
    """What was asked cannot be done; the message says why and what to do."""


def text_of(path: Path) -> str:
    """Return the text of a file of the tree, by its path from the root."""
    return (ROOT / path).read_text(encoding="utf-8")


def write_whole(texts: Mapping[Path, str]) -> None:
    """Write every file, or leave all of them as they were when one cannot be written. Raises: OSError."""
    written = {path: ROOT / path for path in texts}
    before = {path: file.read_bytes() if file.exists() else None for path, file in written.items()}
    parts = {path: file.with_name(f"{file.name}.{os.getpid()}.part") for path, file in written.items()}
    try:
        for path, text in texts.items():
            written[path].parent.mkdir(parents=True, exist_ok=True)
            parts[path].write_text(text, encoding="utf-8")
        for path, part in parts.items():
            part.replace(written[path])
    except BaseException:
        for path, file in written.items():
            if (data := before[path]) is not None:
                file.write_bytes(data)
            else:
                file.unlink(missing_ok=True)
        raise
    finally:
        for part in parts.values():
            part.unlink(missing_ok=True)


@contextmanager
def copy_with(texts: Mapping[Path, str]) -> Generator[Path]:
    """Lend a copy of the calculators and their worked cases in which `texts` are written already."""
    with tempfile.TemporaryDirectory() as scratch:
        copy = Path(scratch)
        for place in _CALCULATED_WITH:
            shutil.copytree(ROOT / place, copy / place, ignore=shutil.ignore_patterns("__pycache__"))
        for path, text in texts.items():
            (copy / path).parent.mkdir(parents=True, exist_ok=True)
            (copy / path).write_text(text, encoding="utf-8")
        yield copy


def run_in(copy: Path, *arguments: str) -> str:
    """Return what `python -m calc` prints in a copy. Raises: RefusedError, with the last line of what went wrong."""
    done = subprocess.run(
        [sys.executable, "-m", "calc", *arguments], cwd=copy, capture_output=True, encoding="utf-8", check=False
    )
    if done.returncode:
        said = (done.stderr.strip() or done.stdout.strip()).splitlines()
        if said[0].startswith("Traceback"):
            raise RefusedError(f"The calculators stop on these rules ({said[-1]}): look for a size or a word mistyped.")
        raise RefusedError(said[-1])
    return done.stdout
