"""Versions of the handbook that cannot be taken for one another: every part of each says which it is of.

Each is the built site with few pages. Its pages, scripts and styles are stamped with its name, and its rules hold a
figure of their own, so that even an answer tells of which version it is.
"""

import gzip
import hashlib
import json
import os
import re
import shutil
import zipfile
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from site_assets.build.assets import SHEET_END
from site_assets.build.precache import TWIN, WORKER, write_service_worker
from site_assets.build.runtime import described, hash_of, write_archive
from site_assets.build.runtime_list import FILE, FOLDER, write_list
from tests.browser.offline.published import hashes

CASE_PAGE = "calculators/main-bonding-jumper.html"
PAGES = ("index.html", "404.html", CASE_PAGE, "calculators/shock-limits.html", "parts/main-bonding-jumper.html")
CASE = f"{CASE_PAGE}?edition=2017&conductor=3/0&sets=1&conductor_metal=copper&metal=copper"
RULE = "calc/rules/jumpers/supply_side_size.toml"
ROW = 'through_copper = "3/0", through_aluminum = "250kcmil", copper = "4"'
# What each version answers to the case. "4" is right: 3/0 copper stands in the row "over 1/0 through 3/0" of Table
# 250.102(C)(1). The others are planted, and told from it.
FIGURES = {"first": "4", "second": "3", "older": "6"}


@dataclass(frozen=True)
class Version:
    """One published state of the handbook, in a folder."""

    name: str
    folder: Path
    answer: str

    @cached_property
    def hashes(self) -> dict[str, str]:
        """The hash of each file that is saved, by its path."""
        return hashes(self.folder)

    def paths(self, *, of_the_runtime: bool) -> list[str]:
        """The paths of the files that are saved, in a fixed order."""
        return [path for path in self.hashes if path.startswith("runtime/") == of_the_runtime]


def make_versions(site: Path, target: Path) -> dict[str, Version]:
    """Make every version out of a built site; nothing of the site is changed."""
    return {name: make_version(site, target / name, name, size) for name, size in FIGURES.items()}


def make_version(site: Path, folder: Path, name: str, size: str) -> Version:
    """Make one version, its files linked to those of the site where it does not differ."""
    shutil.copytree(site, folder, copy_function=os.link)
    for page in folder.rglob("*.html"):
        if page.relative_to(folder).as_posix() not in PAGES:
            page.unlink()
    texts = sorted((folder / "notices").glob("*.txt"))  # one is like another
    for useless in (*folder.rglob("*.map"), *texts[1:], folder / "handbook.pdf"):
        useless.unlink(missing_ok=True)
    stamp_kit(folder, name)
    give_figure(folder, size)
    (folder / WORKER).unlink()
    write_service_worker(folder, name)
    return Version(name, folder, f"{size} AWG")


def stamp_kit(folder: Path, name: str) -> None:
    """Have each script and style say when it runs of which version it is, in a kit of its own address."""
    (kit,) = (folder / "kit").iterdir()
    for script in (kit / "scripts").glob("*.js"):
        append(script, f'\n(globalThis.ran ??= {{}})["{script.name}"] = "{name}";\n')
    for style in (kit / "styles").glob("*.css"):
        stamp = f"\n:root {{ --{style.stem}-is-of: {name}; }}\n"
        replace(style, style.read_bytes().removesuffix(SHEET_END.encode()) + stamp.encode() + SHEET_END.encode())
    address = hashlib.sha256(f"{kit.name} {name}".encode()).hexdigest()[:12]
    kit.rename(kit.with_name(address))
    listed = json.loads((folder / FOLDER / FILE).read_text())
    versions = {}
    for page in folder.rglob("*.html"):
        path = page.relative_to(folder).as_posix()
        html = page.read_text().replace(f"kit/{kit.name}/", f"kit/{address}/")
        if path in listed["pages"]:
            versions[path] = hashlib.sha256(html.encode()).hexdigest()[:12]
            html = html.replace(listed["pages"][path], versions[path])
        replace(page, f"{html}\n<!-- {name} -->".encode())
    replace_list(folder, listed | {"pages": versions})


def give_figure(folder: Path, size: str) -> None:
    """Put a size of its own into the version's rules, at an address that says so."""
    listed = json.loads((folder / FOLDER / FILE).read_text())
    said = listed["files"]["rules.zip"]
    old = folder / FOLDER / said["path"]
    with zipfile.ZipFile(old) as archive:
        files = {entry: archive.read(entry) for entry in archive.namelist()}
    assert files[RULE].count(ROW.encode()) == 1
    files[RULE] = files[RULE].replace(ROW.encode(), re.sub(r'"4"$', f'"{size}"', ROW).encode())
    shutil.rmtree(old.parent)
    new = folder / FOLDER / "rules.zip"
    write_archive(new, files)
    home = folder / FOLDER / hash_of(new)
    home.mkdir()
    new = new.rename(home / new.name)
    new.with_name(f"{new.name}{TWIN}").write_bytes(gzip.compress(new.read_bytes(), 9, mtime=0))
    listed["files"]["rules.zip"] = said | described(new) | {"path": f"{home.name}/{new.name}"}
    told = {key: value for key, value in listed.items() if key not in ("id", "pages")}
    replace_list(folder, listed | {"id": hashlib.sha256(json.dumps(told).encode()).hexdigest()[:16]})


def replace_list(folder: Path, listed: dict) -> None:
    (folder / FOLDER / FILE).unlink()
    write_list(folder / FOLDER, listed)


def append(path: Path, words: str) -> None:
    replace(path, path.read_bytes() + words.encode())


def replace(path: Path, content: bytes) -> None:
    """Write a file anew: others may be linked to what it was."""
    path.unlink()
    path.write_bytes(content)
