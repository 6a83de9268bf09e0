"""The first of three stages: docs and calc become plain Markdown and files, which any generator can take.

What comes out is a project of its own below `.expanded`: its `mkdocs.yml`, the Markdown in `pages` with every call
filled, and the kit. No generator is asked and none has to know of us. By itself: `python -m site_assets.build.expand`.
"""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import jinja2

from site_assets.build.assets import prepare_assets
from site_assets.build.first_mentions import with_first_mentions_explained
from site_assets.build.front_matter import joined, parted
from site_assets.build.marks_key import with_marks_key
from site_assets.build.page_data import DOCS, ROOMS, PageDataError, page_data
from site_assets.build.page_frame import framed
from site_assets.build.page_parts import PageParts
from site_assets.build.runtime_list import FOLDER
from site_assets.build.search_settings import search_settings
from site_assets.build.settings import FILE, settings
from site_assets.setup.paths import ROOT

EXPANDED = ".expanded"
PAGES = "pages"
# What ends a sentence or leads on after a worked case goes into its button.
_AFTER_CASE = re.compile(r'(<a class="case"[^>]*>[^<]*)</a>([:.,;])')
CALLS = jinja2.Environment(undefined=jinja2.StrictUndefined, autoescape=False)
SETTINGS = """# Made by the build: the settings of the handbook, for a generator that takes the pages as they are here.
INHERIT: ../mkdocs.yml
docs_dir: pages
hooks: []
watch: []
theme:
  custom_dir: ../site_assets/templates
  variant: classic
validation:
  links:
    # The frame, which is filled in last, has anchors too; the tests follow every link of the finished site.
    anchors: ignore
"""


def expand(root: Path = ROOT) -> Path:
    """Make the expanded project of the handbook at `root` and return its folder. Raises: PageDataError."""
    folder = root / EXPANDED
    kit = prepare_assets(root)
    for made in ("kit", FOLDER):
        shutil.rmtree(folder / made, ignore_errors=True)
    kit.copy_to(folder)
    menu = settings(root).menu
    written = {folder / FILE: SETTINGS}
    for file in sorted(DOCS.rglob("*.md")):
        name = file.relative_to(DOCS).with_suffix("").as_posix()
        written[folder / PAGES / f"{name}.md"] = expanded(name, file.read_text(encoding="utf-8"), menu)
    for file in (folder / PAGES).rglob("*.md"):
        if file not in written:
            file.unlink()
    for file, content in written.items():
        _write(file, content)
    return folder


def expanded(name: str, page: str, menu: tuple[str, ...]) -> str:
    """Return a page of `docs`, "parts/bonding" and so on, with all that readers see and all that later stages need.

    Raises: PageDataError.
    """
    own, markdown = parted(page)
    parts = PageParts(name, menu)
    try:
        filled = _AFTER_CASE.sub(r"\1\2</a>", CALLS.from_string(framed(name, markdown)).render(parts.calls()))
    except jinja2.TemplateError as error:
        raise PageDataError(f"{name}.md: {error}") from error
    told = search_settings(name, own | _cautions(name))
    return joined(told, with_marks_key(with_first_mentions_explained(name, filled)))


def _cautions(name: str) -> dict[str, list[str]]:
    """Return the cautions of a part or a place; other pages name their own at their head."""
    return {"cautions": list(page_data(name).cautions)} if name.partition("/")[0] in ROOMS else {}


def _write(file: Path, content: str) -> None:
    """Write a file unless it is so already: a generator that watches the folder then has nothing to do."""
    if not file.is_file() or file.read_text(encoding="utf-8") != content:
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(content, encoding="utf-8")


if __name__ == "__main__":
    print(expand())
