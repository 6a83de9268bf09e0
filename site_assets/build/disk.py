"""Writes the disk edition: the whole handbook in one archive, for a computer without a network.

Unpacked, it opens by a double-click, calculators and search with it. Everything comes from the finished site: the pages
in a frame of their own, the same scripts joined into classic ones, and what scripts fetch as scripts that hand it over.
"""

from __future__ import annotations

import base64
import gzip
import json
import re
import shutil
import zipfile
from pathlib import Path

from site_assets.build.classic_scripts import classic_script
from site_assets.build.csp import apply_disk_csp
from site_assets.build.disk_words import DISK_WORDS
from site_assets.build.frame import PARTS
from site_assets.build.precache import WORKER
from site_assets.build.runtime import MOMENT, PYODIDE, TWIN, described
from site_assets.build.runtime_list import FILE as RUNTIME_LIST
from site_assets.build.runtime_list import FOLDER as RUNTIME
from site_assets.build.runtime_list import bind_pages
from site_assets.build.search_index import FILE as SEARCH_INDEX
from site_assets.build.settings import DISK_EDITION, Settings
from site_assets.build.web_manifest import FILE as MANIFEST
from site_assets.build.web_manifest import ICONS
from site_assets.render.text import text

SCRIPTS = Path(__file__).parent.parent / "disk"
UNPACKED = "bonding-handbook"  # the one folder that the archive unpacks into
PAGES = "handbook"  # where the handbook stands in it, beside the page to open first
FIRST = "start-here.html"
# What hosts and installed pages ask for, and nobody who opens a page from a disk.
LEFT_OUT = {WORKER, "_headers", "hosting", MANIFEST, ICONS, SEARCH_INDEX}
# Pyodide's own classic script, in the place of its module: a worker from a disk imports none in WebKit.
CLASSIC = {"pyodide.mjs": PYODIDE / "pyodide.js"}
_LOADED = re.compile(r'/scripts/([\w-]+\.js)"')


def write_disk_edition(site: Path, folder: Path, csp: str, settings: Settings) -> None:
    """Write the archive into a finished site.

    `folder` is a place to make it in, where the framed pages stand in `PAGES`; `csp` is the policy of the site. Raises:
    ModuleError.
    """
    handbook = folder / PAGES
    copy_others(site, handbook)
    (kit,) = (handbook / "kit").iterdir()
    join_scripts(handbook, kit / "scripts")
    hand_over(handbook / SEARCH_INDEX, _packed((site / SEARCH_INDEX).read_bytes()))
    for page in handbook.rglob("*.html"):
        _write(page, with_words_for_disk(page.read_text(encoding="utf-8")))
    write_first_page(folder, settings)
    apply_disk_csp(folder, csp)
    bind_pages(handbook)
    hand_over_runtime(site, handbook)
    write_archive(site / DISK_EDITION, folder)


def copy_others(site: Path, handbook: Path) -> None:
    """Copy what stands on a disk as it stands on a host. A twin of a file is for hosts, a map for programmers."""
    for file in sorted(site.rglob("*")):
        path = file.relative_to(site)
        on_host_only = LEFT_OUT & {path.parts[0], path.as_posix()} or file.suffix in (".html", ".map", TWIN, ".zip")
        if file.is_file() and not on_host_only:
            (handbook / path).parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(file, handbook / path)


def join_scripts(handbook: Path, scripts: Path) -> None:
    """Put classic scripts in the place of the modules, the code of every worker in one of them."""
    page = classic_script(scripts / "page.js", address="document.currentScript.src")
    begin = (SCRIPTS / "worker-files.js").read_text(encoding="utf-8")
    workers = {"calculator-worker.js": classic_script(scripts / "calculator-worker.js", address="handbookAddress")}
    loaded = _LOADED.findall((handbook / "index.html").read_text(encoding="utf-8"))
    kept = {name: (scripts / name).read_text(encoding="utf-8") for name in loaded if (scripts / name).is_file()}
    shutil.rmtree(scripts)
    scripts.mkdir()
    kept |= {
        "page.js": page,
        "page-files.js": (SCRIPTS / "page-files.js").read_text(encoding="utf-8"),
        "workers.js": f"self.handbookWorkers = {json.dumps({name: begin + code for name, code in workers.items()})};\n",
    }
    for name, code in kept.items():
        _write(scripts / name, code)


def with_words_for_disk(html: str) -> str:
    """Return a page whose words for a start that fails speak of a disk, not of a signal or a server."""
    for words, on_disk in DISK_WORDS:
        html = html.replace(text(words), text(on_disk))
    return html


def write_first_page(folder: Path, settings: Settings) -> None:
    """Write the page to open first. Alone, as in an archive that nobody unpacked, it says what to do."""
    _write(folder / FIRST, PARTS.get_template(FIRST).render(settings=settings, pages=PAGES))
    _write(folder / PAGES / "open.js", f'location.replace("{PAGES}/index.html");\n')


def hand_over_runtime(site: Path, handbook: Path) -> None:
    """Put a script in the place of each file of the runtime, which hands over its bytes."""
    listed = json.loads((handbook / RUNTIME / RUNTIME_LIST).read_text(encoding="utf-8"))
    for name, file in listed["files"].items():
        source, twin = site / RUNTIME / file["path"], site / RUNTIME / f"{file['path']}{TWIN}"
        if name in CLASSIC:
            source = CLASSIC[name]
            file.update(described(source))
        file["packed"] = False  # unpacked before anyone asks
        packed = twin.read_bytes() if twin.exists() else _packed(source.read_bytes())
        hand_over(handbook / RUNTIME / file["path"], packed)
    hand_over(handbook / RUNTIME / RUNTIME_LIST, _packed(json.dumps(listed).encode()))


def hand_over(file: Path, packed: bytes) -> None:
    """Write the script that hands over a file, in its place; `packed` are its bytes, compressed."""
    file.unlink(missing_ok=True)
    file.parent.mkdir(parents=True, exist_ok=True)
    _write(file.with_name(f"{file.name}.js"), f'handbookFile("{base64.b64encode(packed).decode("ascii")}");\n')


def write_archive(target: Path, folder: Path) -> None:
    """Write everything below a folder into an archive that depends on nothing else."""
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
        for file in sorted(file for file in folder.rglob("*") if file.is_file()):
            entry = zipfile.ZipInfo(f"{UNPACKED}/{file.relative_to(folder).as_posix()}", MOMENT)
            # The same on every system, whichever made it.
            entry.create_system = 3
            entry.external_attr = 0o644 << 16
            entry.compress_type = zipfile.ZIP_DEFLATED
            archive.writestr(entry, file.read_bytes())


def _packed(data: bytes) -> bytes:
    return gzip.compress(data, 9, mtime=0)


def _write(file: Path, content: str) -> None:
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(content, encoding="utf-8", newline="\n")
