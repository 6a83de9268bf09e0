"""The kit: scripts and styles of one build, in a folder named by what is in them, and the runtime beside it.

A changed script or style makes another folder, so no browser ever mixes those of two builds. The runtime's files stand
in folders of their own; which of them belong together says `runtime/files.json`, and to which pages.
"""

from __future__ import annotations

import hashlib
import shutil
from dataclasses import dataclass
from pathlib import Path

from site_assets.build.runtime import build_runtime
from site_assets.build.runtime_list import FOLDER, write_list
from site_assets.setup.paths import NODE_MODULES

ASSETS = Path(__file__).parent.parent
OWN = ("scripts", "styles", "icons", "fonts")
# The last rule of every style sheet: one that was cut on its way has it not (scripts/unanswered.js).
SHEET_END = "\n.end-of-sheet { }\n"
CHARTS = tuple(NODE_MODULES / "uplot" / name for name in ("dist/uPlot.esm.js", "dist/uPlot.min.css", "LICENSE"))


@dataclass(frozen=True)
class Assets:
    """One build's kit: its id, and where the runtime was made."""

    id: str
    made: Path

    @property
    def folder(self) -> str:
        """The kit's folder in the site."""
        return f"kit/{self.id}"

    def copy_to(self, site: Path) -> None:
        """Copy the kit to where it stands in the folder of a site."""
        shutil.copytree(self.made, site / FOLDER)
        for name in OWN:
            shutil.copytree(ASSETS / name, site / self.folder / name)
        charts = site / self.folder / "charts"
        charts.mkdir()
        for file in CHARTS:
            shutil.copyfile(file, charts / file.name)
        for sheet in (site / self.folder).rglob("*.css"):
            with sheet.open("a", encoding="utf-8", newline="\n") as end:
                end.write(SHEET_END)


def prepare_assets(root: Path) -> Assets:
    """Make the runtime below `root`/.cache and name the kit by the scripts and styles that will be in it."""
    made = root / ".cache" / "kit-runtime"
    shutil.rmtree(made, ignore_errors=True)
    write_list(made, build_runtime(made, root / ".cache"))
    seen = hashlib.sha256(SHEET_END.encode())
    for name in OWN:
        for file in sorted((ASSETS / name).rglob("*")):
            if file.is_file():
                seen.update(file.relative_to(ASSETS).as_posix().encode() + file.read_bytes())
    for file in CHARTS:
        seen.update(file.read_bytes())
    return Assets(seen.hexdigest()[:12], made)
