"""Saved files that the browser has dropped: told truly, fetched again in the same version, never in another."""

import random
import shutil

import pytest
from playwright.sync_api import expect

from site_assets.build.precache import write_service_worker
from site_assets.build.serve import Server
from tests.browser.offline.published import (
    EVICT_ALL,
    EVICT_NOTES,
    STORED,
    SUB_PATH,
    asked_for,
    broken,
    damage,
    evict,
    hashes,
    press,
    publish,
    runtime_file,
    save,
    served,
    status_line,
    tell,
    wait_for,
)

PAGE = "parts/main-bonding-jumper.html"
SLICES = 30
ONLY_WHEN_TOLD = "Object.defineProperty(NetworkInformation.prototype, 'saveData', { get: () => true })"
UNREADABLE = "() => { caches.has = () => Promise.reject(new Error('unreadable')); }"
READABLE = "() => { delete caches.has; }"
# A page's own scripts did not start here, so nothing but the registration tells how far the newer version is.
NEWER_IS_WAITING = """async () => {
  while (!(await navigator.serviceWorker.getRegistration()).waiting) await new Promise((look) => setTimeout(look, 50));
}"""
NEWER_IS_IN_CHARGE = """async () => {
  const { waiting } = await navigator.serviceWorker.getRegistration();
  waiting.postMessage({ kind: "take-over" });
  while (waiting.state !== "activated") await new Promise((look) => setTimeout(look, 50));
}"""


@pytest.fixture(scope="module")
def folder(site_folder, tmp_path_factory):
    copy = tmp_path_factory.mktemp("lost") / "site"
    shutil.copytree(site_folder, copy)
    write_service_worker(copy, "first")
    return copy


@pytest.fixture(scope="module")
def server(folder):
    with Server(folder, SUB_PATH) as running:
        yield running


@pytest.fixture(scope="module")
def context(browser):
    opened = browser.new_context()
    opened.set_default_timeout(60_000)
    yield opened
    opened.close()


@pytest.fixture(scope="module")
def saved_page(context, server):
    """Saved once for all tests: each leaves the handbook whole."""
    page = context.new_page()
    page.add_init_script(ONLY_WHEN_TOLD)
    page.goto(server.address)
    save(page)
    return page


@pytest.fixture
def page(context, server, folder, saved_page):
    context.set_offline(False)
    saved_page.goto(f"{server.address}index.html")
    tell(saved_page, "active", "save")
    wait_for(saved_page, "ready")
    server.requested.clear()
    yield saved_page
    context.set_offline(False)


def kinds_of_files(folder):
    """One file of each kind that a page needs, the runtime's among them."""
    kit = next((folder / "kit").iterdir()).relative_to(folder).as_posix()
    runtime = [runtime_file(folder, name) for name in ("files.json", "rules.zip", "pyodide.asm.wasm")]
    pages = [PAGE, "index.html", "404.html", "search/index.json"]
    return [*pages, f"{kit}/scripts/calculator.js", f"{kit}/styles/form.css", *runtime]


def lost(folder, count):
    return f"Missing from the saved handbook: {count} of {len(hashes(folder))} files."


def test_a_lost_file_of_any_kind_is_fetched_whole_and_kept_again(context, page, server, folder):
    kinds = kinds_of_files(folder)
    evict(page, folder, *kinds)
    assert served(page, server, kinds) == {path: hashes(folder)[path] for path in kinds}
    assert asked_for(server) == kinds
    wait_for(page, "ready")
    context.set_offline(True)
    assert served(page, server, kinds) == {path: hashes(folder)[path] for path in kinds}


def test_a_file_whose_bytes_were_damaged_on_the_device_counts_as_lost(context, page, server, folder):
    kinds = kinds_of_files(folder)
    damage(page, folder, *kinds)
    assert served(page, server, kinds) == {path: hashes(folder)[path] for path in kinds}
    assert asked_for(server) == kinds
    wait_for(page, "ready")
    damage(page, folder, PAGE)
    context.set_offline(True)
    assert page.goto(f"{server.address}{PAGE}").status == 404
    wait_for(page, "incomplete")
    expect(status_line(page)).to_contain_text(lost(folder, 1))


def test_a_store_that_cannot_be_read_is_never_called_ready(context, page, server):
    (worker,) = context.service_workers
    worker.evaluate(UNREADABLE)
    page.goto(f"{server.address}glossary.html")
    wait_for(page, "none")
    worker.evaluate(READABLE)
    page.goto(f"{server.address}index.html")
    wait_for(page, "ready")


def test_a_lost_page_is_told_without_a_network_and_comes_back_with_it(context, page, server, folder):
    evict(page, folder, PAGE)
    context.set_offline(True)
    asked = f"{server.address}{PAGE}?edition=2020"
    assert page.goto(asked).status == 404
    expect(page.locator("[data-lost-page] h1")).to_be_visible()
    expect(page.locator("[data-no-page]")).to_be_hidden()
    wait_for(page, "incomplete")
    expect(status_line(page)).to_contain_text(lost(folder, 1))
    context.set_offline(False)
    page.locator("[data-lost-page] a").click()
    expect(page).to_have_url(asked)
    expect(page.locator("h1")).to_contain_text("Main bonding jumper")
    wait_for(page, "ready")


def test_what_is_missing_is_fetched_when_a_page_opens_though_none_asks_for_it(context, page, server, folder):
    evict(page, folder, PAGE, "glossary.html")
    page.evaluate(EVICT_NOTES)
    another = context.new_page()
    another.goto(server.address)
    wait_for(another, "ready")
    wait_for(page, "ready")  # nothing was pressed on either
    another.close()
    assert sorted(asked_for(server)) == ["glossary.html", PAGE]
    assert len([url for url in page.evaluate(STORED) if "whole=calculating" in url]) == 1


def test_a_lost_store_is_filled_again(context, page, server, folder):
    page.evaluate(EVICT_ALL)
    page.reload()
    wait_for(page, "incomplete")
    press(page, "fetch")
    wait_for(page, "ready")
    context.set_offline(True)
    assert served(page, server, hashes(folder)) == hashes(folder)


@pytest.mark.parametrize("fault", ["not there", "other bytes"])
def test_a_lost_file_that_the_server_has_not_whole_is_told_and_asked_for_no_more(page, server, folder, fault):
    missing = lost(folder, 1)
    evict(page, folder, PAGE)
    with broken(folder, PAGE):
        if fault == "not there":
            (folder / PAGE).unlink()
        assert page.goto(server.address + PAGE).status == 404
        expect(page.locator("[data-lost-page]")).to_be_visible()
        wait_for(page, "incomplete")
        press(page, "fetch")
        wait_for(page, "failed")
        expect(status_line(page)).to_contain_text(PAGE)
        expect(page.locator("[data-offline-missing]")).to_have_text(missing)
        page.wait_for_timeout(300)
        tries = 2  # each past the browser's own copy of a broken one too
        assert asked_for(server) == [PAGE] * 2 * tries
    press(page, "retry")
    wait_for(page, "ready")
    assert page.goto(server.address + PAGE).status == 200


def test_a_lost_page_and_the_page_that_says_so_lead_into_no_circle(page, server, folder):
    evict(page, folder, PAGE, "404.html")
    with broken(folder, PAGE), broken(folder, "404.html"):
        page.goto(server.address + PAGE)
        assert len(asked_for(server)) < 12
        page.goto(f"{server.address}index.html")


def test_a_lost_file_is_never_taken_from_another_version_and_the_update_brings_it(context, page, server, folder):
    old = hashes(folder)
    told_by = ("404.html", "index.html", "calculator.js")  # without these no page says anything
    kinds = [path for path in kinds_of_files(folder) if not path.endswith(told_by)]
    evict(page, folder, *kinds)
    publish(folder, "second", changed=kinds)
    assert page.goto(server.address + PAGE).status == 404
    expect(page.locator("[data-lost-page]")).to_be_visible()
    assert served(page, server, old) == old | dict.fromkeys(kinds)
    wait_for(page, "update")
    expect(page.locator("[data-offline-missing]")).to_have_text(lost(folder, len(kinds)))
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    context.set_offline(True)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_a_lost_script_that_the_server_has_no_more_is_told_and_the_update_brings_it(page, server, folder):
    script = next(path for path in kinds_of_files(folder) if path.endswith("calculator.js"))
    evict(page, folder, script)
    publish(folder, "third", changed=[script])
    page.goto(server.address + PAGE)
    expect(page.locator("[data-unanswered-place] + .unanswered")).to_contain_text("did not start")
    page.evaluate(NEWER_IS_WAITING)
    page.evaluate(NEWER_IS_IN_CHARGE)
    page.reload()
    wait_for(page, "ready")


def test_with_the_store_lost_and_another_version_on_the_server_its_pages_come_whole(page, server, folder):
    page.evaluate(EVICT_ALL)
    publish(folder, "fourth", changed=["index.html", PAGE])
    assert page.goto(server.address + PAGE).status == 200
    assert page.evaluate("document.lastChild.data") == " fourth "
    wait_for(page, "update")
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "reading")
    press(page, "save")
    wait_for(page, "ready")
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_a_lost_page_is_shown_though_the_device_has_no_room_to_keep_it(context, page, server, folder):
    evict(page, folder, PAGE)
    origin = {"origin": server.address.removesuffix(SUB_PATH)}
    device = context.new_cdp_session(page)
    device.send("Storage.overrideQuotaForOrigin", origin | {"quotaSize": 1})
    assert page.goto(server.address + PAGE).status == 200
    wait_for(page, "incomplete")
    press(page, "fetch")
    wait_for(page, "full")
    expect(page.locator("[data-offline-missing]")).to_have_text(lost(folder, 1))
    assert page.goto(f"{server.address}index.html").status == 200
    device.send("Storage.overrideQuotaForOrigin", origin)


@pytest.mark.slices(SLICES)
def test_any_file_lost_is_missed_told_and_mended(context, page, server, folder, slice_number):
    paths = sorted(hashes(folder))
    random.Random(1).shuffle(paths)
    for path in paths[slice_number::SLICES]:
        evict(page, folder, path)
        context.set_offline(True)
        assert served(page, server, [path]) == {path: None}, path
        expect(page.locator("[data-offline]")).to_contain_text(lost(folder, 1), use_inner_text=True)
        context.set_offline(False)
        assert served(page, server, [path]) == {path: hashes(folder)[path]}, path
        wait_for(page, "ready")
