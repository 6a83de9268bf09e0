"""Writes standard_library.txt and first_modules.txt: what a page can reach, and what a first answer needs of it.

    python -m site_assets.runtime.standard_library

Starts a bundle with the whole library under Node, imports and calls everything, and keeps the modules of the standard
library that this brought in; then answers the first calculators, and notes what those alone import.
"""

from __future__ import annotations

import json
import subprocess
import tempfile
from collections.abc import Iterable
from pathlib import Path

from calc.data_file import Data
from site_assets.build import runtime
from site_assets.setup.paths import PINS, node

EVERY_ARCHIVE = (*runtime.FIRST, *runtime.LATER)


def run(program: str, folder: Path, archives: Iterable[str] = EVERY_ARCHIVE) -> Data:
    """Run a Python program on a bundle's archives under Node: `value`, and `start` and `run` in milliseconds."""
    command = [
        node(),
        PINS / "under_node.mjs",
        runtime.PYODIDE / "pyodide.mjs",
        folder,
        json.dumps(runtime.empty_lock()),
        *(folder / name for name in archives),
    ]
    done = subprocess.run(
        [str(word) for word in command], input=program, capture_output=True, text=True, timeout=300, check=False
    )
    if done.returncode:
        raise RuntimeError(done.stdout + done.stderr)
    return json.loads(done.stdout.splitlines()[-1])


def reach(folder: Path, extras: Iterable[str] = ()) -> Data:
    """What the bundle in the folder imports and what it misses; see reach.py."""
    program = (PINS / "reach.py").read_text(encoding="utf-8")
    return json.loads(run(f"extras = {list(extras)!r}\n{program}", folder)["value"])


def first(folder: Path, archives: Iterable[str] = EVERY_ARCHIVE) -> list[str]:
    """The modules of the archives that the first calculators import; see first.py."""
    program = (PINS / "first.py").read_text(encoding="utf-8")
    return json.loads(run(f"slugs = {runtime.contents()['first']!r}\n{program}", folder, archives)["value"])


def main() -> None:
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch) / "bundle"
        runtime.make(folder, runtime.archive_sources(None))
        reached = reach(folder, runtime.contents()["extras"])
        needed = first(folder)
    if reached["missing"]:
        raise SystemExit("\n".join(f"{name}: {why}" for name, why in reached["missing"].items()))
    library = {runtime.module_name(name) for name in runtime.standard_library(None)}
    kept = sorted(library.intersection(reached["modules"]))
    runtime.STANDARD_LIBRARY.write_text("\n".join(kept) + "\n", encoding="utf-8")
    runtime.FIRST_MODULES.write_text("\n".join(needed) + "\n", encoding="utf-8")
    print(f"{len(kept)} of {len(library)} modules are kept, {len(needed)} modules come first.")


if __name__ == "__main__":
    main()
