"""The handbook with the server gone, and its updates interrupted at every step."""

import base64
import hashlib
import re
import shutil
import time
from contextlib import contextmanager

import pytest
from playwright.sync_api import Error, expect

from site_assets.build.precache import WORKER, group_of, saved_paths, write_service_worker
from site_assets.build.serve import Server

SUB_PATH = "/bonding/handbook/"
POLICY = "Content Security Policy"

HASHES_IN_THE_PAGE = """async ([root, paths]) => {
  const hashes = {};
  for (const path of paths) {
    try {
      const content = await (await fetch(new URL(path, root))).arrayBuffer();
      const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
      hashes[path] = btoa(String.fromCharCode(...digest));
    } catch {
      hashes[path] = null;
    }
  }
  return hashes;
}"""
STORED = """async () => {
  const stored = [];
  for (const name of await caches.keys()) {
    for (const { url } of await (await caches.open(name)).keys()) stored.push(url);
  }
  return stored;
}"""
TELL = """async ([worker, kind]) => {
  (await navigator.serviceWorker.ready)[worker].postMessage({ kind });
}"""
STATUS = """async ([address, options]) => {
  try { return (await fetch(address, options)).status; } catch { return null; }
}"""


class Dying(list):
    """The paths asked for, on a server that answers only so many of them."""

    answers = 0

    def append(self, path):
        if len(self) >= self.answers:
            raise ConnectionAbortedError
        super().append(path)


class Slow(list):
    """The paths asked for, on a server that takes its time."""

    def append(self, path):
        time.sleep(0.05)
        super().append(path)


@pytest.fixture
def folder(site_folder, tmp_path):
    """A copy of the built site that a test may publish again or break."""
    copy = tmp_path / "site"
    shutil.copytree(site_folder, copy)
    write_service_worker(copy, "first")
    return copy


@pytest.fixture
def server(folder):
    with Server(folder, SUB_PATH) as running:
        yield running


@pytest.fixture
def context(browser):
    opened = browser.new_context()
    opened.set_default_timeout(60_000)
    yield opened
    opened.close()


@pytest.fixture
def page(context, server):
    opened = context.new_page()
    opened.goto(server.address)
    return opened


def hashes(folder):
    return {path: hash_of((folder / path).read_bytes()) for path in saved_paths(folder)}


def hash_of(content):
    return base64.b64encode(hashlib.sha256(content).digest()).decode()


def group(paths, name):
    return {path: paths[path] for path in paths if group_of(path) == name}


def served(page, server, paths):
    return page.evaluate(HASHES_IN_THE_PAGE, [server.address, list(paths)])


def wait_for(page, state):
    expect(page.locator("[data-offline]")).to_have_attribute("data-offline-state", state, timeout=60_000)


def press(page, what):
    page.locator(f'[data-offline-do="{what}"]').click()


def tell(page, worker, kind):
    page.evaluate(TELL, [worker, kind])


def save(page):
    press(page, "save")
    wait_for(page, "ready")


def status_line(page):
    return page.locator("[data-offline-status]")


def publish(folder, version, *, changed):
    """Put another version on the server: the changed files differ by their last line."""
    for path in changed:
        with (folder / path).open("ab") as file:
            file.write(b"\n<!-- %s -->" % version.encode())
    write_service_worker(folder, version)


def move_kit(folder):
    """Publish the same scripts, styles and runtime in a folder of another name."""
    kit = next((folder / "kit").iterdir())
    kit.rename(kit.with_name("moved"))
    for path in folder.rglob("*.html"):
        path.write_text(path.read_text().replace(f"kit/{kit.name}/", "kit/moved/"))
    write_service_worker(folder, "second")


def pages_of(folder):
    return [path for path in saved_paths(folder) if path.endswith(".html") and path != "404.html"]


def some_changes(folder):
    """The first page, another one and a file of the runtime."""
    return ["index.html", pages_of(folder)[0], runtime_file(folder)]


def runtime_file(folder):
    runtime = [path for path in saved_paths(folder) if group_of(path) == "calculating"]
    return min(runtime, key=lambda path: (folder / path).stat().st_size)


@contextmanager
def broken(folder, path):
    """The file arrives, but not as it was built."""
    whole = (folder / path).read_bytes()
    (folder / path).write_bytes(whole[:-1])
    yield
    (folder / path).write_bytes(whole)


def take_away_network(context, server):
    server.stop()
    context.set_offline(True)


def asked_for(server):
    """Files asked for; the browser's look at the service worker is no content."""
    return [path.removeprefix(SUB_PATH) for path in server.requested if path != SUB_PATH + WORKER]


def test_after_one_visit_everything_works_with_the_server_gone_and_within_the_content_policy(context, page, server, folder):
    complaints = []
    page.on("console", lambda line: complaints.append(line.text) if POLICY in line.text else None)
    wait_for(page, "ready")  # nothing was pressed
    take_away_network(context, server)
    for path in pages_of(folder):
        assert page.goto(server.address + path).status == 200, path
    assert served(page, server, hashes(folder)) == hashes(folder)
    assert complaints == []


def test_a_permalink_opens_the_saved_page_whatever_its_query(context, page, server, folder):
    save(page)
    take_away_network(context, server)
    path = pages_of(folder)[0]
    link = f"{server.address}{path}?edition=2023&conductor=3/0&said=4-copper#working"
    answer = page.goto(link)
    assert answer.status == 200
    assert hash_of(answer.body()) == hashes(folder)[path]
    assert page.url == link
    assert page.goto(f"{server.address}?edition=2020").status == 200


def test_a_calculator_answers_with_the_server_gone(context, page, server):
    save(page)
    take_away_network(context, server)
    inputs = "edition=2023&conductor=3/0&sets=1&conductor_metal=copper&metal=copper"
    page.goto(f"{server.address}calculators/main-bonding-jumper.html?{inputs}")
    # 3/0 copper stands in the row "over 1/0 through 3/0" of Table 250.102(C)(1): 4 AWG copper.
    expect(page.locator("[data-result]")).to_contain_text("4 AWG", timeout=60_000)


def test_the_search_finds_pages_with_the_server_gone(context, page, server):
    save(page)
    take_away_network(context, server)
    page.goto(server.address)
    search = page.locator(".md-search__input")
    search.click(force=True)
    search.press_sequentially("bonding", delay=50)
    expect(page.locator(".md-search-result__item").first).to_be_attached()


def test_an_unknown_address_shows_the_saved_page_for_that(context, page, server, folder):
    save(page)
    take_away_network(context, server)
    for path in ("nobody-wrote-this.html", "parts/nobody-wrote-this.html", "no/such/folder/"):
        answer = page.goto(server.address + path)
        assert answer.status == 404
        assert hash_of(answer.body()) == hashes(folder)["404.html"]
        wait_for(page, "ready")  # its scripts and the worker are found from any depth


def test_a_second_visit_asks_the_server_for_no_content(context, page, server, folder):
    save(page)
    page.close()
    server.requested.clear()
    again = context.new_page()
    again.goto(server.address)
    wait_for(again, "ready")
    again.goto(server.address + pages_of(folder)[-1])
    wait_for(again, "ready")
    assert served(again, server, hashes(folder)) == hashes(folder)
    assert asked_for(server) == []


def test_an_update_fetches_only_what_changed_and_each_file_once(page, server, folder):
    save(page)
    changed = some_changes(folder)
    publish(folder, "second", changed=changed)
    server.requested.clear()
    page.reload()
    wait_for(page, "update")
    assert sorted(asked_for(server)) == sorted(changed)


def test_a_file_that_only_moved_is_not_fetched_again_and_works_at_its_new_place(context, page, server, folder):
    save(page)
    move_kit(folder)
    server.requested.clear()
    page.reload()
    wait_for(page, "update")
    assert set(asked_for(server)) <= {"404.html", *pages_of(folder)}
    with page.expect_navigation():
        press(page, "update")
    take_away_network(context, server)
    page.reload()
    wait_for(page, "ready")  # the page's own scripts have moved and run
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_other_pages_under_the_same_version_name_are_an_update_too(context, page, server, folder):
    save(page)
    publish(folder, "first", changed=["index.html"])
    page.reload()
    wait_for(page, "update")
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    take_away_network(context, server)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_an_update_waits_until_it_is_pressed(page, server, folder):
    save(page)
    old = hashes(folder)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    page.reload()
    wait_for(page, "update")
    assert served(page, server, old) == old


def test_a_pressed_update_replaces_everything_and_leaves_nothing_of_the_old(context, page, server, folder):
    save(page)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    expect(status_line(page)).to_contain_text("second")
    take_away_network(context, server)
    page.reload()
    new = hashes(folder)
    assert served(page, server, new) == new
    marks_and_files = 2 + len(new)
    assert len(page.evaluate(STORED)) == marks_and_files


def test_an_update_takes_over_once_every_page_is_closed(context, page, server, folder):
    save(page)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    page.close()
    again = context.new_page()
    again.goto(server.address)
    wait_for(again, "ready")
    expect(status_line(again)).to_contain_text("second")
    assert served(again, server, hashes(folder)) == hashes(folder)


@pytest.mark.parametrize("kind", ["page", "runtime file"])
def test_an_update_with_one_broken_file_keeps_the_old_version_whole(context, page, server, folder, kind):
    save(page)
    old = hashes(folder)
    publish(folder, "second", changed=some_changes(folder))
    path = "index.html" if kind == "page" else runtime_file(folder)
    with broken(folder, path):
        page.reload()
        wait_for(page, "update-failed")
        expect(status_line(page)).to_contain_text(path)
        take_away_network(context, server)
        page.reload()
        wait_for(page, "ready")
        assert served(page, server, old) == old


def test_an_update_cut_off_half_way_keeps_the_old_version_whole(context, page, server, folder):
    save(page)
    old = hashes(folder)
    publish(folder, "second", changed=[*pages_of(folder), runtime_file(folder)])
    server.requested = Dying()
    server.requested.answers = 1 + len(pages_of(folder)) // 2
    page.reload()
    wait_for(page, "update-failed")
    take_away_network(context, server)
    page.reload()
    wait_for(page, "ready")
    assert served(page, server, old) == old


def test_an_update_cut_off_half_way_goes_on_where_it_stopped(page, server, folder):
    save(page)
    changed = [*pages_of(folder), runtime_file(folder)]
    publish(folder, "second", changed=changed)
    server.requested = Dying()
    server.requested.answers = 1 + len(changed) // 2
    page.reload()
    wait_for(page, "update-failed")
    arrived = set(asked_for(server))
    assert arrived and arrived < set(changed)
    server.requested = []
    press(page, "retry")
    wait_for(page, "update")
    assert sorted(asked_for(server)) == sorted(set(changed) - arrived)


def test_a_first_visit_that_fails_leaves_no_half_of_the_pages(context, page, server, folder):
    path = pages_of(folder)[-1]
    with broken(folder, path):
        press(page, "save")
        wait_for(page, "failed")
        expect(status_line(page)).to_contain_text(path)
        other = context.new_page()
        context.set_offline(True)
        with pytest.raises(Error, match="ERR_INTERNET_DISCONNECTED"):
            other.goto(server.address)
        context.set_offline(False)
    press(page, "retry")
    wait_for(page, "ready")
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_a_failure_among_the_calculators_leaves_the_pages_and_no_half_of_the_calculators(
    context, page, server, folder
):
    path = runtime_file(folder)
    with broken(folder, path):
        press(page, "save")
        wait_for(page, "failed")
        expect(status_line(page)).to_contain_text(path)
        context.set_offline(True)
        page.reload()
        reading, calculating = (group(hashes(folder), name) for name in ("reading", "calculating"))
        assert served(page, server, reading) == reading
        assert served(page, server, calculating) == dict.fromkeys(calculating)
        context.set_offline(False)
    page.reload()
    save(page)


def test_pages_of_one_version_never_get_calculators_of_another(page, server, folder):
    path = runtime_file(folder)
    with broken(folder, path):
        press(page, "save")
        wait_for(page, "failed")
    old = hashes(folder)
    publish(folder, "second", changed=[path])
    assert page.evaluate(STATUS, [server.address + path, {"cache": "reload"}]) is None
    page.reload()
    assert served(page, server, group(old, "reading")) == group(old, "reading")


def test_an_old_version_that_saves_again_leaves_the_waiting_one_whole(context, page, server, folder):
    save(page)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    tell(page, "active", "save")
    page.wait_for_timeout(1_000)
    with page.expect_navigation():
        press(page, "update")
    take_away_network(context, server)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_an_update_pressed_while_the_next_is_being_saved_harms_neither(context, page, server, folder):
    save(page)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    second = hashes(folder)
    publish(folder, "third", changed=[*pages_of(folder), runtime_file(folder)])
    server.requested = Slow()
    page.evaluate("navigator.serviceWorker.ready.then((registration) => { registration.update(); })")
    wait_for(page, "saving")
    with page.expect_navigation():
        tell(page, "waiting", "take-over")
    assert served(page, server, second) == second
    wait_for(page, "update")
    with page.expect_navigation():
        press(page, "update")
    take_away_network(context, server)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_two_open_pages_see_one_version(context, page, server, folder):
    save(page)
    old = hashes(folder)
    other = context.new_page()
    other.goto(server.address)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    for opened in (page, other):
        wait_for(opened, "update")
        assert served(opened, server, old) == old
    with other.expect_navigation(), page.expect_navigation():
        press(page, "update")
    for opened in (page, other):
        wait_for(opened, "ready")
        expect(status_line(opened)).to_contain_text("second")
        assert served(opened, server, hashes(folder)) == hashes(folder)
        assert opened.evaluate("document.lastChild.data") == " second "


def test_removing_asks_first_and_then_leaves_nothing(context, page, server):
    save(page)
    press(page, "ask")
    press(page, "keep")
    wait_for(page, "ready")
    press(page, "ask")
    press(page, "reset")
    wait_for(page, "none")
    assert page.evaluate(STORED) == []
    page.goto("about:blank")
    context.set_offline(True)
    with pytest.raises(Error, match="ERR_INTERNET_DISCONNECTED"):
        page.goto(server.address)


def test_after_removing_everything_can_be_saved_again(page, server, folder):
    save(page)
    press(page, "ask")
    press(page, "reset")
    wait_for(page, "none")
    save(page)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_saving_shows_how_far_it_is(page, server):
    server.requested = Slow()
    press(page, "save")
    wait_for(page, "saving")
    expect(page.locator("[data-offline-amount]")).to_have_text(re.compile(r"^[1-9]\d*\.\d of \d+\.\d MB$"))
    assert 0 < page.locator("[data-offline] progress").evaluate("bar => bar.value") <= 1
    wait_for(page, "ready")


def test_a_device_without_room_is_told_so_and_keeps_its_pages(context, page, server):
    room = {"origin": server.address.removesuffix(SUB_PATH), "quotaSize": 5_000_000}
    context.new_cdp_session(page).send("Storage.overrideQuotaForOrigin", room)
    press(page, "save")
    wait_for(page, "full")
    take_away_network(context, server)
    assert page.reload().status == 200


def test_a_browser_that_cannot_save_says_so(page):
    page.add_init_script("Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined })")
    page.reload()
    wait_for(page, "unsupported")


def test_saving_waits_while_a_calculator_starts(page):
    page.evaluate("document.dispatchEvent(new Event('calculator:starting'))")
    page.wait_for_timeout(8_000)
    wait_for(page, "none")
    page.evaluate("document.dispatchEvent(new Event('calculator:answered'))")
    wait_for(page, "ready")


def test_requests_that_are_not_plain_reading_go_to_the_network(context, page, server):
    save(page)
    assert page.evaluate(STATUS, [server.address, {}]) == 200
    take_away_network(context, server)
    assert page.evaluate(STATUS, [server.address, {}]) == 200
    assert page.evaluate(STATUS, [server.address, {"method": "POST"}]) is None
    assert page.evaluate(STATUS, [server.address, {"headers": {"Range": "bytes=0-9"}}]) is None


def test_a_button_that_goes_away_hands_its_focus_to_the_next(page):
    save(page)
    page.locator('[data-offline-do="ask"]').focus()
    page.keyboard.press("Enter")
    expect(page.locator('[data-offline-do="reset"]')).to_be_focused()
