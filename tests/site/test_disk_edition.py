"""The archive of the disk edition: the whole handbook, one source, and nothing that a disk cannot give."""

from __future__ import annotations

import base64
import hashlib
import json
import re
import zipfile
from urllib.parse import unquote

import pytest

from calc.registry import CALCULATORS
from site_assets.build.disk import FIRST, PAGES, UNPACKED, write_archive
from site_assets.build.disk_words import DISK_WORDS
from site_assets.build.precache import saved_paths
from site_assets.build.runtime import PYODIDE
from site_assets.build.runtime_list import FILE, FOLDER
from site_assets.build.settings import DISK_EDITION
from site_assets.render.text import text
from tests.browser.disk_edition import bytes_of, unpacked
from tests.site.pages import SITE, article, html_files

LINK = re.compile(r'<(?:a|link|script|img)\b[^>]*?\b(?:href|src)="?([^"\s>]*)')
MEGABYTES = range(7, 9)  # a page says "about 8"


@pytest.fixture(scope="module")
def disk(tmp_path_factory):
    """Return the unpacked archive."""
    return unpacked(SITE, tmp_path_factory.mktemp("disk"))


def pages(disk):
    return sorted(disk.rglob("*.html"))


def test_it_unpacks_into_one_folder_that_shows_what_to_open(disk):
    with zipfile.ZipFile(SITE / DISK_EDITION) as archive:
        assert {name.partition("/")[0] for name in archive.namelist()} == {UNPACKED}
    assert {path.name for path in disk.iterdir()} == {FIRST, PAGES}


def test_it_has_every_page_with_the_same_words_and_no_page_for_addresses_without_one(disk):
    on_disk = {path.relative_to(disk / PAGES).as_posix() for path in (disk / PAGES).rglob("*.html")}
    on_site = {path.relative_to(SITE).as_posix() for path in html_files()}
    assert on_disk == on_site - {"404.html"}
    for name in ("index.html", "parts/main-bonding-jumper.html", "places/pool.html", "method/figures.html"):
        assert article((disk / PAGES / name).read_text()) == article((SITE / name).read_text()), name


def test_every_link_and_every_file_that_a_page_loads_is_on_the_disk(disk):
    dead = []
    for path in pages(disk):
        targets = {
            target.partition("#")[0].partition("?")[0] for target in LINK.findall(path.read_text(encoding="utf-8"))
        }
        files = {target: path.parent / unquote(target) for target in targets - {""}}
        dead += [f"{path.name}: {target}" for target, file in files.items() if not file.is_file()]
    assert dead == []


def test_no_page_loads_a_module_fetches_or_speaks_of_a_signal_in_a_state(disk):
    for path in pages(disk):
        html = path.read_text(encoding="utf-8")
        assert not re.search(r'<script[^>]*type="?module', html), path.name
        policy = re.search(r'http-equiv="Content-Security-Policy" content="([^"]*)"', html)[1]
        directives = dict(each.split(" ", 1) for each in policy.split("; "))
        assert directives["default-src"] == directives["connect-src"] == directives["base-uri"] == "'none'"
        assert directives["worker-src"] == "blob:"
        allowed = {each for each in directives["script-src"].split() if not each.startswith("'sha256-")}
        assert allowed == {"'self'", "blob:", "'wasm-unsafe-eval'"}
        assert [str(words) for words, _ in DISK_WORDS if str(text(words)) in html] == [], path.name


def test_a_calculator_that_does_not_start_is_told_in_words_for_a_disk(disk):
    html = (disk / PAGES / "calculators/main-bonding-jumper.html").read_text(encoding="utf-8")
    assert [str(on_disk) for _, on_disk in DISK_WORDS if str(text(on_disk)) not in html] == []


def test_the_runtime_is_that_of_the_site_to_the_byte_with_a_classic_script_for_the_module(disk):
    listed = json.loads(bytes_of(disk / PAGES / FOLDER / f"{FILE}.js"))
    for name, file in listed["files"].items():
        content = bytes_of(disk / PAGES / FOLDER / f"{file['path']}.js")
        source = PYODIDE / "pyodide.js" if name == "pyodide.mjs" else SITE / FOLDER / file["path"]
        assert content == source.read_bytes()
        digest = base64.b64encode(hashlib.sha256(content).digest()).decode()
        assert (file["size"], file["integrity"]) == (len(content), f"sha256-{digest}")
        assert not (disk / PAGES / FOLDER / file["path"]).exists(), "it would be there twice"
    assert set(listed["pages"]) == {f"calculators/{slug}.html" for slug in CALCULATORS}
    for name, version in listed["pages"].items():
        assert f"&quot;version&quot;: &quot;{version}&quot;" in (disk / PAGES / name).read_text(encoding="utf-8")


def test_what_only_a_host_can_use_is_left_out(disk):
    names = {path.relative_to(disk / PAGES).as_posix() for path in (disk / PAGES).rglob("*") if path.is_file()}
    assert not {name for name in names if name.endswith((".map", ".gz", ".mjs", ".wasm", ".zip", ".webmanifest"))}
    assert not names & {"service-worker.js", "_headers", "404.html", "search/index.json"}
    assert "handbook.txt" in {name.rpartition("/")[2] for name in names}, "licences go along"


def test_it_is_as_large_as_the_pages_say_and_no_phone_saves_it():
    assert round((SITE / DISK_EDITION).stat().st_size / 1e6) in MEGABYTES
    assert DISK_EDITION not in saved_paths(SITE)
    assert (SITE / "index.html").read_text().count(f'href="{DISK_EDITION}" download') == 1


def test_the_archive_depends_on_nothing_but_its_files(tmp_path):
    for name in ("one", "other"):
        folder = tmp_path / name
        for path in ("b/c.txt", "a.txt") if name == "one" else ("a.txt", "b/c.txt"):
            (folder / path).parent.mkdir(parents=True, exist_ok=True)
            (folder / path).write_text(path)
        write_archive(tmp_path / f"{name}.zip", folder)
    assert (tmp_path / "one.zip").read_bytes() == (tmp_path / "other.zip").read_bytes()
