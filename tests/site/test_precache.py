"""The service worker's list of files, as written into a small finished site."""

import base64
import hashlib
import json
import re

import pytest

from site_assets.build.precache import WORKER, saved_paths, write_service_worker
from tests.site.pages import SITE

FILES = {
    "index.html": "<h1>Start</h1>",
    "404.html": "<h1>No page here</h1>",
    "calculators/main-bonding-jumper.html": "<h1>Main bonding jumper</h1>",
    "kit/scripts/page.js": "export {};",
    "kit/runtime/calc.zip": "bytes of the bundle",
    "search/index.json": "{}",
}


@pytest.fixture
def site(tmp_path):
    for path, content in FILES.items():
        put(tmp_path, path, content)
    return tmp_path


def put(site, path, content=""):
    target = site / path
    target.parent.mkdir(parents=True, exist_ok=True)
    target.write_text(content, encoding="utf-8")


def groups(site):
    write_service_worker(site, "1.0")
    listed = re.search(r"^const GROUPS = (\{.*?\});$", worker(site), re.DOTALL | re.MULTILINE)
    return json.loads(listed[1])


def worker(site):
    return (site / WORKER).read_text(encoding="utf-8")


def test_every_file_is_in_one_group_and_only_the_runtime_is_calculating(site):
    listed = groups(site)
    assert set(listed["calculating"]) == {"kit/runtime/calc.zip"}
    assert set(listed["reading"]) == set(FILES) - {"kit/runtime/calc.zip"}


def test_a_page_about_a_runtime_is_read_and_not_calculated_with(site):
    put(site, "method/runtime.html")
    assert "method/runtime.html" in groups(site)["reading"]


def test_a_file_is_listed_with_its_hash_and_size(site):
    content = FILES["kit/scripts/page.js"].encode()
    hashed = base64.b64encode(hashlib.sha256(content).digest()).decode()
    assert groups(site)["reading"]["kit/scripts/page.js"] == [f"sha256-{hashed}", len(content)]


@pytest.mark.parametrize(
    "path",
    [
        WORKER,
        "sitemap.xml",
        "sitemap.xml.gz",
        "kit/scripts/page.js.map",
        "kit/scripts/page.js.br",
        "kit/scripts/page.js.gz",
        ".nojekyll",
        ".well-known/security.txt",
        "CNAME",
        "_headers",
        "_redirects",
        "schema/main-bonding-jumper.json",
    ],
)
def test_what_no_page_asks_for_is_left_out(site, path):
    put(site, path)
    assert {name for group in groups(site).values() for name in group} == set(FILES)


def test_a_file_with_a_compressed_twin_says_so(site):
    put(site, "runtime/1a/rules.zip", "the rules")
    put(site, "runtime/1a/rules.zip.gz", "the rules, compressed")
    listed = groups(site)["calculating"]
    assert listed["runtime/1a/rules.zip"][1:] == [len("the rules"), 1]
    assert "runtime/1a/rules.zip.gz" not in listed and len(listed["kit/runtime/calc.zip"]) == 2


def test_a_packed_file_without_its_plain_twin_is_kept(site):
    put(site, "kit/runtime/snapshot.gz")
    assert "kit/runtime/snapshot.gz" in groups(site)["calculating"]


def test_the_same_site_gives_the_same_bytes(site):
    write_service_worker(site, "1.0")
    first = (site / WORKER).read_bytes()
    write_service_worker(site, "1.0")
    assert (site / WORKER).read_bytes() == first


def test_a_changed_file_or_version_gives_another_worker(site):
    write_service_worker(site, "1.0")
    first = worker(site)
    write_service_worker(site, "1.1")
    assert worker(site) != first
    put(site, "index.html", "<h1>Start here</h1>")
    write_service_worker(site, "1.0")
    assert worker(site) != first


@pytest.mark.parametrize("name", ["index.html", "404.html"])
def test_a_site_without_a_page_that_the_worker_answers_with_is_refused(site, name):
    (site / name).unlink()
    with pytest.raises(FileNotFoundError, match=name):
        write_service_worker(site, "1.0")


def test_a_name_with_marks_of_its_own_arrives_whole(site):
    put(site, 'parts/a "b" ü (c).html')
    assert 'parts/a "b" ü (c).html' in groups(site)["reading"]


def test_the_room_that_a_page_states_is_what_saving_takes():
    files = {(SITE / path).read_bytes() for path in saved_paths(SITE)}  # equal files are kept once
    (megabytes,) = re.findall(r"Saving takes about (\d+) MB of room", (SITE / "index.html").read_text(encoding="utf-8"))
    assert int(megabytes) == pytest.approx(sum(map(len, files)) / 1e6, abs=5)
