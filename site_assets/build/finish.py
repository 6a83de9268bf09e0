"""The last of three stages: the folder that a generator made becomes the handbook, whichever generator it was.

Frame, kit, schemas, content policy, service worker and what hosts are told go in.
By itself: `python -m site_assets.build.finish FOLDER`.
"""

from __future__ import annotations

import argparse
import hashlib
import shutil
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory
from urllib.parse import urlsplit

from site_assets.build.bill_of_materials import write_bill_of_materials
from site_assets.build.csp import apply_csp
from site_assets.build.disk import PAGES as ON_DISK
from site_assets.build.disk import write_disk_edition
from site_assets.build.expand import EXPANDED, PAGES
from site_assets.build.frame import Place, with_frame
from site_assets.build.front_matter import parted
from site_assets.build.host_files import write_host_files
from site_assets.build.notices import write_notices
from site_assets.build.precache import write_service_worker
from site_assets.build.runtime_list import FOLDER, bind_pages
from site_assets.build.schemas import write_schemas
from site_assets.build.search_index import write_search_index
from site_assets.build.settings import Settings, settings
from site_assets.build.theme import UNUSED, with_links_from_its_own_folder
from site_assets.build.web_manifest import write_manifest
from site_assets.setup.paths import ROOT

LOST = "404.html"


def finish(site: Path, root: Path = ROOT) -> None:
    """Finish a site made of the expanded project at `root`.

    Raises: FrameError, when a page has no place for its safety text; CspError, when one breaks the policy.
    """
    expanded = root / EXPANDED
    (kit,) = (expanded / "kit").iterdir()
    said = settings(root)
    generated = {file.relative_to(site): file.read_text(encoding="utf-8") for file in sorted(site.rglob("*.html"))}
    frame = Frame(expanded / PAGES, f"kit/{kit.name}", said)
    put_frames(site, generated, frame)
    shutil.copytree(kit, site / "kit" / kit.name)
    shutil.copytree(expanded / FOLDER, site / FOLDER)
    write_search_index(site, generated, expanded / PAGES)
    write_schemas(site)
    write_manifest(site, said)
    write_notices(site)
    write_bill_of_materials(site)
    csp = apply_csp(site)
    bind_pages(site)
    for unused in UNUSED:
        remove(site / unused)
    version = version_of(site)
    write_service_worker(site, version)
    with TemporaryDirectory(dir=expanded) as folder:
        generated.pop(Path(LOST), None)
        put_frames(Path(folder) / ON_DISK, generated, frame, version)
        write_disk_edition(site, Path(folder), csp, said)
    write_host_files(site, csp, said.address)


@dataclass(frozen=True)
class Frame:
    """What the frames of all pages share: the Markdown that the pages were made of, the kit's folder, the settings."""

    markdown: Path
    kit: str
    settings: Settings


def put_frames(folder: Path, generated: dict[Path, str], frame: Frame, disk: str = "") -> None:
    """Write each page, as it was generated, with its frame into a folder; `disk` is the version, on a disk."""
    for path, html in generated.items():
        if path.as_posix() == LOST:
            framed = lost_page(html, frame.kit, frame.settings)
        else:
            told, _ = parted((frame.markdown / path.with_suffix(".md")).read_text(encoding="utf-8"))
            place = Place(path.as_posix(), "../" * (len(path.parts) - 1), tuple(told.get("cautions", ())), disk)
            framed = with_frame(html, place, frame.kit, frame.settings)
        (folder / path).parent.mkdir(parents=True, exist_ok=True)
        (folder / path).write_text(framed, encoding="utf-8")


def lost_page(html: str, kit: str, said: Settings) -> str:
    """Return the page for unknown addresses with its frame: it leads from the root of the host.

    Without an address that root is not ours to name; the page then leads from its own folder.
    """
    if said.address:
        return with_frame(html, Place("", f"{urlsplit(said.address).path.rstrip('/')}/"), kit, said)
    return with_frame(with_links_from_its_own_folder(html), Place("", ""), kit, said)


def version_of(site: Path) -> str:
    """Return the name of this build, shown to readers: it changes with anything that is served."""
    seen = hashlib.sha256()
    for file in sorted(file for file in site.rglob("*") if file.is_file()):
        seen.update(file.relative_to(site).as_posix().encode() + file.read_bytes())
    return seen.hexdigest()[:8]


def remove(path: Path) -> None:
    """Remove a file or a folder with all that is in it."""
    if path.is_dir():
        shutil.rmtree(path)
    else:
        path.unlink(missing_ok=True)


def main() -> None:
    """Finish the folder that is named."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("site", type=Path, help="the folder that the generator made")
    finish(parser.parse_args().site)


if __name__ == "__main__":
    main()
