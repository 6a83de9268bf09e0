"""Writes standard_library.txt: the modules of the standard library that a page can reach.

    python -m site_assets.runtime.standard_library

Starts a bundle with the whole library under Node, imports and calls everything, and
keeps the modules that this brought in.
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


def run(program: str, folder: Path) -> Data:
    """Run a Python program inside a bundle under Node: `value`, and `start` and `run` in milliseconds."""
    command = [
        node(),
        PINS / "under_node.mjs",
        runtime.PYODIDE / "pyodide.mjs",
        folder,
        json.dumps(runtime.empty_lock()),
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


def main() -> None:
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch) / "bundle"
        runtime.make(folder, runtime.archive_sources(None))
        reached = reach(folder, runtime.contents()["extras"])
    if reached["missing"]:
        raise SystemExit("\n".join(f"{name}: {why}" for name, why in reached["missing"].items()))
    library = {runtime.module_name(name) for name in runtime.standard_library(None)}
    kept = sorted(library.intersection(reached["modules"]))
    runtime.STANDARD_LIBRARY.write_text("\n".join(kept) + "\n", encoding="utf-8")
    print(f"{len(kept)} of {len(library)} modules are kept.")


if __name__ == "__main__":
    main()
