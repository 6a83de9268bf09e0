"""Measures how the time of a build grows with its pages: one build as it is, one with ten times the pages.

Run: `.venv/bin/python -m tests.speed.build_time`. It prints the ratio beside its budget and judges nothing.
"""

import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from site_assets.setup.paths import ROOT, variables

TIMES = 10
BUDGET = 11
# A calculator has one page only.
COPIED = ("parts", "places")


def main() -> None:
    """Measure both and print the ratio."""
    with tempfile.TemporaryDirectory() as scratch:
        project = laid_out(Path(scratch))
        built(project)  # makes the runtime, which no page adds to
        once = built(project)
        pages = count(project)
        number = 1
        while (more := count(project)) < TIMES * pages:
            number += 1
            copy_pages(project, number)
        often = built(project)
    print(f"{pages} pages: {once:.1f} s; {more} pages: {often:.1f} s")
    print(f"{more / pages:.1f} x the pages take {often / once:.1f} x the time; budget {BUDGET} x for {TIMES} x")


def laid_out(folder: Path) -> Path:
    """Lay out a copy of the project whose pages may grow."""
    shutil.copytree(ROOT / "docs", folder / "docs")
    for shared in ("calc", "site_assets"):
        shutil.copytree(ROOT / shared, folder / shared, ignore=shutil.ignore_patterns("__pycache__"))
    for tools in (".tools", ".python-version", "pyproject.toml", "LICENSE"):
        (folder / tools).symlink_to(ROOT / tools)
    settings = (ROOT / "mkdocs.yml").read_text(encoding="utf-8")
    (folder / "mkdocs.yml").write_text(settings, encoding="utf-8")
    return folder


def copy_pages(project: Path, number: int) -> None:
    """Add one more copy of every page of a room, with the data beside it, and its line in the menu."""
    lines = []
    for room in COPIED:
        for page in sorted((ROOT / "docs" / room).glob("*.md")):
            name = f"{page.stem}-copy-{number}"
            shutil.copyfile(page, project / "docs" / room / f"{name}.md")
            if page.with_suffix(".toml").exists():
                shutil.copyfile(page.with_suffix(".toml"), project / "docs" / room / f"{name}.toml")
            lines.append(f"      - {name}: {room}/{name}.md\n")
    with (project / "mkdocs.yml").open("a", encoding="utf-8") as settings:
        settings.write(f"  - Copies {number}:\n{''.join(lines)}")


def count(project: Path) -> int:
    """Return how many pages a project has."""
    return sum(1 for _ in (project / "docs").rglob("*.md"))


def built(project: Path) -> float:
    """Build a project and give the seconds it took."""
    start = time.perf_counter()
    command = [sys.executable, "-m", "mkdocs", "build", "--quiet"]
    subprocess.run(command, cwd=project, env=variables(NO_MKDOCS_2_WARNING="1"), check=True)
    return time.perf_counter() - start


if __name__ == "__main__":
    main()
