"""The kit: scripts, styles and runtime of one build, in a folder named by what is in them.

A changed file makes another folder, so no browser ever mixes the files of two builds.
"""

from __future__ import annotations

import hashlib
import shutil
from dataclasses import dataclass
from pathlib import Path

from calc.data_file import Data
from site_assets.build.runtime import ARCHIVE, build_runtime
from site_assets.setup.paths import NODE_MODULES

ASSETS = Path(__file__).parent.parent
OWN = ("scripts", "styles", "icons")
CHARTS = tuple(NODE_MODULES / "uplot" / name for name in ("dist/uPlot.esm.js", "dist/uPlot.min.css", "LICENSE"))


@dataclass(frozen=True)
class Assets:
    """One build's kit: its id, where it was made, and what `build_runtime` told of the runtime."""

    id: str
    made: Path
    runtime: Data

    @property
    def folder(self) -> str:
        """The kit's folder in the site."""
        return f"kit/{self.id}"

    def for_scripts(self, kit_url: str) -> Data:
        """Return what a page's script must know to start Python."""
        total = sum(file["size"] for file in self.runtime["files"])
        return {"folder": f"{kit_url}/runtime/", "library": ARCHIVE, "total": total, "lock": self.runtime["lock"]}

    def copy_to(self, site: Path) -> None:
        """Copy the kit to where it stands in the folder of a site."""
        shutil.copytree(self.made, site / self.folder / "runtime")
        for name in OWN:
            shutil.copytree(ASSETS / name, site / self.folder / name)
        charts = site / self.folder / "charts"
        charts.mkdir()
        for file in CHARTS:
            shutil.copyfile(file, charts / file.name)


def prepare_assets(root: Path) -> Assets:
    """Make the runtime below `root`/.cache and name the kit by all that will be in it."""
    made = root / ".cache" / "kit-runtime"
    shutil.rmtree(made, ignore_errors=True)
    runtime = build_runtime(made, root / ".cache")
    seen = hashlib.sha256(runtime["id"].encode())
    for name in OWN:
        for file in sorted((ASSETS / name).rglob("*")):
            if file.is_file():
                seen.update(file.relative_to(ASSETS).as_posix().encode() + file.read_bytes())
    for file in CHARTS:
        seen.update(file.read_bytes())
    return Assets(seen.hexdigest()[:12], made, runtime)
