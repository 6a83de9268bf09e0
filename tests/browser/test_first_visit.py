"""What a first visit fetches: in the order a slow link needs, in the shortest form the host has, nothing too early."""

import gzip
import json
from threading import Event

import pytest
from playwright.sync_api import expect

from site_assets.build import serve
from site_assets.build.precache import TWIN, WORKER
from site_assets.build.search_index import FILE as SEARCH_INDEX
from site_assets.build.search_page import FIELD, FOUND
from site_assets.build.search_page import LINK as SEARCH_LINK
from site_assets.build.serve import Server
from tests.browser.conftest import PHONE
from tests.browser.faults.faulty_server import Fault, FaultyServer, give, half_until

BASE = "/handbook/first/"
LINK = "calculators/main-bonding-jumper.html?edition=2023&conductor=3/0&sets=1&conductor_metal=copper&metal=copper"
PACKED = ("pyodide.asm.wasm", "library.zip", "calculators.zip", "rules.zip")


@pytest.fixture
def host(site_folder):
    with Server(site_folder, BASE) as running:
        yield running


@pytest.fixture
def visitor(browser):
    context = browser.new_context(viewport=PHONE)
    yield context.new_page()
    context.close()


def names(host):
    return [path.removeprefix(BASE).rpartition("/")[2] for path in host.requested]


def answered(page, host):
    page.goto(host.address + LINK)
    # 3/0 copper stands in the row "over 1/0 through 3/0" of Table 250.102(C)(1): 4 AWG copper.
    expect(page.locator("[data-result] .size")).to_have_text("4 AWG", timeout=60_000)
    return names(host)


def test_a_link_is_answered_before_anything_is_fetched_that_the_answer_does_not_need(visitor, host):
    answered(visitor, host)
    expect(visitor.locator("[data-offline]")).to_have_attribute("data-offline-state", "saving", timeout=30_000)
    asked = names(host)
    asked = asked[: asked.index(WORKER)]  # what follows is saved, all the handbook
    assert asked[0] == "main-bonding-jumper.html"
    began = [asked.index(name) for name in ("form.css", "page.js", "calculator-worker.js", "files.json")]
    assert began == sorted(began)
    runtime = [asked.index(name) for name in ("pyodide.mjs", "pyodide.asm.js", *PACKED)]
    assert min(runtime) > began[-1]
    assert "later.zip" not in asked[: max(runtime)]
    assert SEARCH_INDEX.rpartition("/")[2] not in asked


def test_however_long_a_first_answer_takes_nothing_is_saved_beside_it(visitor, site_folder):
    free = Event()

    def send_late(answer, reply):
        free.wait(120)
        give(answer, reply)

    with FaultyServer(site_folder, BASE) as host:
        host.strike(Fault(send_late, lambda path, number: path.endswith((PACKED[0], PACKED[0] + TWIN))))
        visitor.clock.install()
        visitor.goto(host.address + LINK)
        while not any(PACKED[0] in path for path in host.requested):
            visitor.clock.run_for(100)
        visitor.clock.run_for(40_000)
        visitor.evaluate("dispatchEvent(new Event('online'))")
        visitor.wait_for_timeout(500)
        expect(visitor.locator("[data-offline]")).to_have_attribute("data-offline-state", "none")
        assert WORKER not in names(host)
        free.set()
        expect(visitor.locator("[data-result] .size")).to_have_text("4 AWG", timeout=60_000)
        expect(visitor.locator("[data-offline]")).to_have_attribute("data-offline-state", "saving", timeout=30_000)


def test_a_compressed_file_that_comes_slowly_is_told_as_it_comes(visitor, site_folder):
    runtime = json.loads((site_folder / "runtime" / "files.json").read_text())
    sizes = {name: runtime["files"][name]["size"] for name in (PACKED[0], *runtime["first"])}
    others = 100 * (1 - sizes[PACKED[0]] / sum(sizes.values()))  # percent
    free = Event()

    with FaultyServer(site_folder, BASE) as host:
        host.strike(Fault(half_until(free), lambda path, number: path.endswith(PACKED[0] + TWIN)))
        visitor.goto(host.address + LINK)
        shown = "least => Number(document.querySelector('.runtime-state').innerText.match(/[0-9]+/)?.[0]) > least"
        visitor.wait_for_function(shown, arg=others + 5)
        free.set()
        expect(visitor.locator("[data-result] .size")).to_have_text("4 AWG", timeout=60_000)


def test_the_index_of_the_search_is_fetched_when_the_search_is_opened(visitor, host):
    visitor.goto(f"{host.address}index.html")
    visitor.wait_for_load_state("networkidle")
    assert host.requested.count(f"{BASE}{SEARCH_INDEX}") == 0
    visitor.locator(SEARCH_LINK).first.click()
    visitor.locator(FIELD).press_sequentially("250.28")
    expect(visitor.locator(FOUND).first).to_be_visible(timeout=30_000)
    assert host.requested.count(f"{BASE}{SEARCH_INDEX}") == 1


def test_a_host_that_compresses_nothing_sends_what_the_build_compressed(visitor, host):
    asked = answered(visitor, host)
    assert {f"{name}{TWIN}" for name in PACKED} <= set(asked)
    assert all(asked.count(name) == 1 for name in PACKED)  # asked for, and left when it came uncompressed


def test_a_host_that_compresses_by_itself_is_asked_for_nothing_twice(visitor, host, monkeypatch):
    send_header, send = serve.FileRequest.send_header, serve.FileRequest.send

    def compressed(self, status, kind, body, *others, **more):
        self.compresses = True
        send(self, status, kind, gzip.compress(body, 1), *others, **more)

    def with_its_name(self, name, value):
        send_header(self, name, value)
        if name == "Content-Type" and self.compresses:
            send_header(self, "Content-Encoding", "gzip")

    monkeypatch.setattr(serve.FileRequest, "send", compressed)
    monkeypatch.setattr(serve.FileRequest, "send_header", with_its_name)
    asked = answered(visitor, host)
    assert not [name for name in asked if name.endswith(TWIN)]
    assert all(asked.count(name) == 1 for name in PACKED)


@pytest.mark.parametrize("fault", ["cut", "other bytes", "not there", "a browser that cannot unpack"])
def test_where_what_was_compressed_cannot_be_used_the_file_itself_is(visitor, host, fault):
    def spoiled(route):
        if fault == "not there":
            return route.fulfill(status=404)
        bytes_ = route.fetch().body()
        return route.fulfill(body=bytes_[:-100] if fault == "cut" else gzip.compress(gzip.decompress(bytes_)[:-1]))

    def without_unpacking(route):
        script = route.fetch().text()
        assert '"DecompressionStream" in globalThis' in script
        other = script.replace('"DecompressionStream" in globalThis', "false")
        route.fulfill(body=other, content_type="text/javascript")

    if fault == "a browser that cannot unpack":
        visitor.route("**/packed.js", without_unpacking)
    else:
        visitor.route(f"**/rules.zip{TWIN}", spoiled)
    answered(visitor, host)


def test_a_page_of_another_version_than_the_files_starts_nothing_and_says_so(visitor, host, site_folder):
    listed = json.loads((site_folder / "runtime" / "files.json").read_text())
    page = LINK.partition("?")[0]
    other = json.dumps(listed | {"pages": listed["pages"] | {page: "another"}})
    visitor.route("**/runtime/files.json", lambda route: route.fulfill(body=other, content_type="application/json"))
    visitor.goto(host.address + LINK)
    state = visitor.locator(".runtime-state")
    expect(state).to_have_attribute("data-state", "gone")
    visitor.unroute("**/runtime/files.json")
    state.locator("button").click()
    expect(visitor.locator("[data-result] .size")).to_have_text("4 AWG", timeout=60_000)
    assert names(host).count("pyodide.mjs") == 1
