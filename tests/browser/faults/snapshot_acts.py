"""What befalls a memory snapshot, and readers with two tabs."""

import contextlib
import time
from collections.abc import Iterator

from playwright.sync_api import Error

from tests.browser.faults.acts import ORIGIN_QUOTA, Act
from tests.browser.faults.stage import PATIENCE, Stage
from tests.browser.faults.verdict import BROKEN, Verdict
from tests.browser.faults.versions import CASE
from tests.browser.offline.published import SUB_PATH
from tests.browser.test_snapshot import CHANGE, COPY, KEPT

NAME = f"snapshot {SUB_PATH}"
ASIDE = "aside"  # a copy of the snapshot that no script of the handbook knows
NAMES = "() => caches.keys()"
FLIP = """async ([name, part]) => {
  const store = await caches.open(name);
  const request = (await store.keys()).find(({ url }) => new URL(url).searchParams.has("memory"));
  const bytes = new Uint8Array(await (await store.match(request)).arrayBuffer());
  bytes[Math.floor(bytes.length * part)] ^= 1;
  await store.put(request, new Response(bytes));
}"""
# Memory of the rules of another version under the name of this one, as if nothing had told them apart.
RENAME = """async ([name, from, to]) => {
  const store = await caches.open(name);
  for (const request of await store.keys()) {
    await store.put(request.url.replace(from, to), await store.match(request));
    await store.delete(request);
  }
}"""


def with_snapshot(stage: Stage) -> None:
    """Begin with a saved handbook and a snapshot of its version."""
    stage.saved_reader()
    stage.goto("404.html")
    if ASIDE in stage.page.evaluate(NAMES) and stage.aside == stage.has_saved:
        stage.page.evaluate("name => caches.delete(name)", NAME)
        stage.page.evaluate("localStorage.clear()")
        return stage.page.evaluate(COPY, [ASIDE, NAME])
    stage.page.evaluate("name => caches.delete(name)", NAME)
    stage.page.evaluate("localStorage.clear()")
    stage.opened(CASE)
    wait_for_snapshot(stage)
    stage.page.evaluate("name => caches.delete(name)", ASIDE)
    stage.aside = stage.has_saved
    return stage.page.evaluate(COPY, [NAME, ASIDE])


def wait_for_snapshot(stage: Stage) -> None:
    end = time.monotonic() + PATIENCE
    while "checked" not in kept(stage) and time.monotonic() < end:
        stage.page.wait_for_timeout(100)
    assert "checked" in kept(stage), "no snapshot was made"


def kept(stage: Stage) -> list[str]:
    """Return which parts of a snapshot are kept."""
    found = stage.page.evaluate(KEPT)
    return [what.removeprefix("?").partition("=")[0] for what in found]


def changed(change: str) -> Act:
    """The snapshot is cut, damaged, of other files, or half lost."""
    return _spoilt(CHANGE, change)


def flipped(part: float) -> Act:
    """One bit of it is another."""
    return _spoilt(FLIP, part)


def _spoilt(script: str, how: object) -> Act:
    """A script spoils the snapshot that is kept, and the page is opened without a network."""

    def act(stage: Stage) -> Iterator[Verdict]:
        with_snapshot(stage)
        stage.page.evaluate(script, [NAME, how])
        stage.offline()
        yield stage.must_be_whole(stage.opened(CASE))

    return act


def of_the_version_before(stage: Stage) -> Iterator[Verdict]:
    """An update changes the rules; memory of the older ones is still kept and must not answer."""
    with_snapshot(stage)
    stage.update()
    yield stage.must_be_whole(stage.opened(CASE))
    yield stage.must_be_whole(stage.take_over())
    stage.offline()
    yield stage.must_be_whole(stage.opened(CASE))


def of_a_rollback(stage: Stage) -> Iterator[Verdict]:
    """The update is taken, a snapshot made of it, and the older version comes back."""
    with_snapshot(stage)
    stage.update()
    yield stage.must_be_whole(stage.take_over())
    wait_for_snapshot(stage)
    stage.update()
    yield stage.must_be_whole(stage.take_over())
    stage.offline()
    yield stage.must_be_whole(stage.opened(CASE))


def in_an_older_form(stage: Stage) -> Iterator[Verdict]:
    """It was kept by scripts that kept it in another form."""
    with_snapshot(stage)
    stage.page.evaluate(RENAME, [NAME, "format=", "format=0"])
    stage.offline()
    yield stage.must_be_whole(stage.opened(CASE))


def without_room(room: int) -> Act:
    """The device fills up while it is made."""

    def act(stage: Stage) -> Iterator[Verdict]:
        with_snapshot(stage)
        stage.page.evaluate("name => caches.delete(name)", NAME)
        device = stage.device()
        usage = stage.page.evaluate("async () => (await navigator.storage.estimate()).usage")
        device.send(ORIGIN_QUOTA, {"origin": stage.origin, "quotaSize": usage + room})
        stage.at_heal(lambda: device.send(ORIGIN_QUOTA, {"origin": stage.origin}))
        yield stage.must_be_whole(stage.opened(CASE))
        stage.page.wait_for_timeout(2_000)  # it is begun meanwhile
        stage.offline()
        yield stage.must_be_whole(stage.opened(CASE))

    return act


def killed_while_made(moment: int) -> Act:
    """The browser is killed so many milliseconds after the making began."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.lasting_reader()
        stage.save()
        with stage.page.expect_event("worker", lambda worker: worker.url.endswith("snapshot-worker.js")):
            stage.opened(CASE)
        stage.page.wait_for_timeout(moment)
        stage.kill_browser()
        stage.offline()
        yield stage.must_be_whole(stage.opened(CASE))

    return act


def two_tabs(what: str) -> Act:
    """Two pages are open; one does what the other must not suffer from."""

    def act(stage: Stage) -> Iterator[Verdict]:
        (stage.new_reader if what.startswith("save") else stage.saved_reader)()
        other = stage.context.new_page()
        first = stage.page
        first.goto(stage.server.address)
        other.goto(f"{stage.server.address}{CASE}", wait_until="commit")
        tabs = [first, other]
        if what == "save, and one is closed":
            first.close()
            stage.page = other
            tabs = [other]
        elif what == "save":
            pass
        elif what == "update":
            stage.update()
            stage.press("update")
        elif what == "update while the other asks":
            stage.update()
            stage.press("update")
            with contextlib.suppress(Error):
                other.goto(f"{stage.server.address}{CASE}", wait_until="commit")
        elif what == "remove":
            stage.press("ask")
            stage.press("reset")
            stage.has_saved = None
        elif what == "remove while the other saves":
            stage.publish_other()
            stage.ask_for_update()
            stage.press("ask")
            stage.press("reset")
            stage.has_saved = None
        for tab in tabs:
            stage.page = tab
            yield stage.look(asked=tab is other)
        yield same_version(stage, tabs)
        for tab in tabs[1:]:
            tab.close()
        stage.page = tabs[0]

    return act


def same_version(stage: Stage, tabs: list) -> Verdict:
    """Return whether the tabs show one version."""
    shown = set()
    for tab in tabs:
        stage.page = tab
        shown.add(stage.look(asked=False).version)
    return Verdict("whole", "") if len(shown) == 1 else Verdict(BROKEN, f"two tabs, two versions: {shown}")
