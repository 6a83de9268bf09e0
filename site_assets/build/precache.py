"""Writes the service worker of a finished site: its code with the list of files to save."""

import base64
import hashlib
import json
from collections.abc import Iterable
from pathlib import Path

from site_assets.build.host_headers import OTHER_TYPE, TYPES
from site_assets.build.runtime_list import UNSET
from site_assets.build.settings import DISK_EDITION

SOURCES = Path(__file__).parent.parent / "service_worker"
PARTS = ("cache-store.js", "renamed-pages.js", "precache.js", "fetch-handler.js", "lifecycle.js")
# A module of the pages that the worker, a classic script, has too.
SHARED = SOURCES.parent / "scripts" / "packed.js"
WORKER = "service-worker.js"
TWIN = ".gz"

type Listed = tuple[str, int] | tuple[str, int, int]

# Pages the worker answers with by name.
REQUIRED = ("index.html", "404.html")

# Read by search engines or by the host, or fetched by those who print, and often not served at all;
# one file that a host does not serve would make saving fail for every reader.
NOT_FOR_READERS = {
    WORKER, "sitemap.xml", "sitemap.xml.gz", "CNAME", "_headers", "_redirects", "handbook.pdf", DISK_EDITION,
}  # fmt: skip
FOR_PROGRAMS = {"schema", "hosting"}  # folders that no page asks for; a phone at a panel need not keep them


def write_service_worker(site_dir: Path, version: str) -> None:
    """Write ``service-worker.js`` at the root of a finished site.

    Call it last: every file is listed by the hash it has now, and a page changed
    afterwards (also by a host that rewrites what it serves) can no longer be saved.

    Parameters
    ----------
    site_dir : folder of the built site
    version : shown to the reader as the saved version

    Raises
    ------
    FileNotFoundError : the site has no ``index.html`` or no ``404.html``
    """
    for name in REQUIRED:
        if not (site_dir / name).is_file():
            raise FileNotFoundError(site_dir / name)
    groups: dict[str, dict[str, Listed]] = {"reading": {}, "calculating": {}}
    for path in saved_paths(site_dir):
        groups[group_of(path)][path] = listed(site_dir / path)
    told = {"VERSION": json.dumps(version), "UNSET": json.dumps(UNSET), "GROUPS": listing(groups), **types()}
    manifest = "".join(f"const {name} = {value};\n" for name, value in told.items())
    parts = [(SOURCES / part).read_text(encoding="utf-8") for part in PARTS]
    shared = SHARED.read_text(encoding="utf-8").replace("export ", "")
    script = "\n".join(["'use strict';\n", manifest, shared, *parts])
    (site_dir / WORKER).write_text(script, encoding="utf-8", newline="\n")


def types() -> dict[str, str]:
    """The content type of each kind of file, which a saved file has whatever a host calls it."""
    by_ending = {ending.removeprefix("."): kind for ending, kind in TYPES.items()}
    return {"TYPES": json.dumps(by_ending), "OTHER_TYPE": json.dumps(OTHER_TYPE)}


def listing(groups: dict[str, dict[str, Listed]]) -> str:
    """The groups as JSON with one file a line, so that two versions can be compared."""
    return braced(f"{json.dumps(group)}: {braced(lines_of(files))}" for group, files in groups.items())


def lines_of(files: dict[str, Listed]) -> list[str]:
    return [f"{json.dumps(path)}: {json.dumps(entry)}" for path, entry in files.items()]


def braced(lines: Iterable[str]) -> str:
    return "{\n" + ",\n".join(lines) + "\n}"


def saved_paths(site_dir: Path) -> list[str]:
    """Paths of the files to save, relative to the site, in a fixed order."""
    paths = (path.relative_to(site_dir) for path in site_dir.rglob("*") if path.is_file())
    return sorted(path.as_posix() for path in paths if is_for_readers(site_dir, path))


def is_for_readers(site_dir: Path, path: Path) -> bool:
    """Whether a page can ask for this file."""
    if path.as_posix() in NOT_FOR_READERS or path.parts[0] in FOR_PROGRAMS or path.suffix == ".map":
        return False
    if any(part.startswith(".") for part in path.parts):
        return False
    compressed_twin = path.suffix in {".gz", ".br"} and (site_dir / path.with_suffix("")).is_file()
    return not compressed_twin


def group_of(path: str) -> str:
    """``calculating`` for the runtime, ``reading`` for everything else."""
    return "calculating" if "/runtime/" in f"/{path}" else "reading"


def listed(path: Path) -> Listed:
    """The hash as a browser's ``integrity`` option takes it, the size, and 1 where a compressed twin is beside it."""
    content = path.read_bytes()
    digest = base64.b64encode(hashlib.sha256(content).digest()).decode("ascii")
    entry = f"sha256-{digest}", len(content)
    return (*entry, 1) if path.with_name(f"{path.name}{TWIN}").is_file() else entry
