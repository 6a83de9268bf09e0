"""The files that make a host send headers, each read as its host reads it."""

from __future__ import annotations

import re

import pytest

from site_assets.build.host_files import write_host_files
from site_assets.build.serve import content_policy
from tests.site.hosts_read import HOSTS, plain_host
from tests.site.pages import SITE

CSP = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval' 'sha256-abc='"
CLOSED = f"{CSP}; frame-ancestors 'none'"
FOR_EVER = "public, max-age=31536000, immutable"
ASK_AGAIN = "no-cache"
# Types as they are registered: RFC 9239 (JavaScript), the WebAssembly web API, RFC 7231 for HTML, the Web App Manifest.
FILES = {
    "index.html": (CLOSED, ASK_AGAIN, "text/html; charset=utf-8"),
    "404.html": (CLOSED, ASK_AGAIN, "text/html; charset=utf-8"),
    "embed.html": (f"{CSP}; frame-ancestors *", ASK_AGAIN, "text/html; charset=utf-8"),
    "parts/bonding.html": (CLOSED, ASK_AGAIN, "text/html; charset=utf-8"),
    "parts/embedded.html": (CLOSED, ASK_AGAIN, "text/html; charset=utf-8"),
    "kit/f81942075415/scripts/page.js": (CLOSED, FOR_EVER, "text/javascript; charset=utf-8"),
    "kit/f81942075415/runtime/pyodide.mjs": (CLOSED, FOR_EVER, "text/javascript; charset=utf-8"),
    "kit/f81942075415/runtime/pyodide.asm.wasm": (CLOSED, FOR_EVER, "application/wasm"),
    "kit/f81942075415/styles/page.css": (CLOSED, FOR_EVER, "text/css; charset=utf-8"),
    "assets/javascripts/bundle.a5f9d56c.min.js": (CLOSED, FOR_EVER, "text/javascript; charset=utf-8"),
    "runtime/files.json": (CLOSED, ASK_AGAIN, "application/json"),
    "runtime/07639db7d19b/rules.zip": (CLOSED, FOR_EVER, "application/zip"),
    "runtime/07639db7d19b/rules.zip.gz": (CLOSED, FOR_EVER, "application/gzip"),
    "site.webmanifest": (CLOSED, ASK_AGAIN, "application/manifest+json"),
    "service-worker.js": (CLOSED, ASK_AGAIN, "text/javascript; charset=utf-8"),
}
# What every host knows by itself is not stated for a host of plain files.
STATED = (".wasm", ".mjs", ".zip", ".gz", ".webmanifest")


@pytest.fixture(scope="module")
def site(tmp_path_factory):
    """Return a small site with the files for hosts in it."""
    folder = tmp_path_factory.mktemp("site")
    for name in FILES:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text("content")
    write_host_files(folder, CSP)
    return folder


@pytest.mark.parametrize("host", HOSTS)
@pytest.mark.parametrize("path", FILES)
def test_a_host_sends_each_header_once_and_as_declared(site, host, path):
    policy, caching, kind = FILES[path]
    expected = {
        "Content-Security-Policy": [policy],
        "Cache-Control": [caching],
        "X-Content-Type-Options": ["nosniff"],
        "Referrer-Policy": ["no-referrer"],
    }
    if host != "_headers" or path.endswith(STATED):
        expected["Content-Type"] = [kind]
    assert HOSTS[host]((site / host).read_text(), path) == expected


@pytest.mark.parametrize("path", ["", "parts/bonding", "embed"])
def test_an_address_without_its_ending_has_the_headers_of_its_page(site, path):
    sent = plain_host((site / "_headers").read_text(), path)
    frames = "*" if path == "embed" else "'none'"
    assert sent["Content-Security-Policy"] == [f"{CSP}; frame-ancestors {frames}"]
    assert all(len(values) == 1 for values in sent.values())


def test_a_page_whose_name_ends_as_the_framed_one_does_stays_closed_on_a_host_of_plain_files(site):
    sent = plain_host((site / "_headers").read_text(), "parts/embed.html")
    assert sent["Content-Security-Policy"] == [CLOSED]


def test_the_files_name_the_path_that_the_site_will_stand_under(tmp_path):
    (tmp_path / "index.html").write_text("content")
    write_host_files(tmp_path, CSP, "https://handbook.example/field/")
    paths = re.findall(r"^/\S*", (tmp_path / "_headers").read_text(), re.MULTILINE)
    assert "/field/index.html" in paths
    assert all(path.startswith("/field/") for path in paths)


def test_every_file_of_the_built_site_has_its_headers_and_the_policy_of_its_pages():
    csp = content_policy(SITE / "index.html")
    texts = {host: (SITE / host).read_text(encoding="utf-8") for host in HOSTS}
    for file in SITE.rglob("*"):
        path = file.relative_to(SITE).as_posix()
        if file.is_dir() or path in ("_headers", "handbook.pdf"):
            continue  # the one is for the host itself, the other may be put there later
        for host, read in HOSTS.items():
            sent = read(texts[host], path)
            assert sent["Content-Security-Policy"] == [f"{csp}; frame-ancestors 'none'"], (host, path)
            assert len(sent["Cache-Control"]) == 1, (host, path)


def test_what_is_kept_for_ever_has_a_hash_in_its_address_and_no_page_is_kept():
    text = (SITE / "_headers").read_text(encoding="utf-8")
    kept = []
    for file in (each for each in SITE.rglob("*") if each.is_file()):
        path = file.relative_to(SITE).as_posix()
        if plain_host(text, path).get("Cache-Control") == [FOR_EVER]:
            assert re.search(r"(^|[/.])[0-9a-f]{8,}[/.]", path), path
            assert file.suffix != ".html", path
            kept.append(path)
    assert any(path.endswith(".wasm") for path in kept) and any(path.endswith(".css") for path in kept)


def test_the_rules_for_plain_hosts_stay_within_what_such_hosts_read():
    """As far as is known the narrowest reads 100 rules and 2,000 characters a line."""
    lines = (SITE / "_headers").read_text(encoding="utf-8").splitlines()
    assert sum(not line.startswith(" ") for line in lines) <= 100
    assert max(map(len, lines)) <= 2000
