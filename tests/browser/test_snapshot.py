"""The memory snapshot that a device makes for itself: used only whole, of these very files, with the same answers."""

import json
import re
from urllib.parse import urlencode

import pytest
from playwright.sync_api import expect

from calc.editions import EDITIONS
from calc.registry import CALCULATORS
from site_assets.render.page_response import answer_request
from tests.browser.conftest import PHONE
from tests.cases.read import FOLDER, cases

PAGE = "calculators/main-bonding-jumper.html?edition=2023&conductor=500kcmil&sets=2"
NOT_IN_MEMORY = (
    "calculators/raceway-as-grounding-path.html?edition=2023&raceway=liquidtight-flexible-metal-conduit&device=30"
    "&trade_size=1/2&length=3ft"
)
PATIENCE = 120_000  # ms on a loaded machine
SLICES = 12

KEPT = """async () => {
  const kept = [];
  for (const name of await caches.keys()) {
    if (!name.startsWith("snapshot ")) continue;
    for (const { url } of await (await caches.open(name)).keys()) kept.push(new URL(url).search);
  }
  return kept;
}"""
COPY = """async ([from, to]) => {
  const [source, target] = [await caches.open(from), await caches.open(to)];
  for (const request of await source.keys()) await target.put(request, await source.match(request));
}"""
CHANGE = """async ([name, change]) => {
  const store = await caches.open(name);
  const [memory, checked] = ["memory", "checked"].map((what) => async () =>
    (await store.keys()).find(({ url }) => new URL(url).searchParams.has(what)));
  const bytes = new Uint8Array(await (await store.match(await memory())).arrayBuffer());
  const put = async (what, content) => store.put(await what(), new Response(content));
  const hash = async (content) => {
    const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
    return `${content.length} ${[...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("")}`;
  };
  const changes = {
    "one bit": () => { bytes[bytes.length >> 1] ^= 1; return put(memory, bytes); },
    "cut short": () => put(memory, bytes.slice(0, bytes.length >> 1)),
    "memory lost": async () => store.delete(await memory()),
    "note lost": async () => store.delete(await checked()),
    "note of another": () => put(checked, `${bytes.length} ${"0".repeat(64)}`),
    "cut short, with a note that fits": async () => {
      const cut = bytes.slice(0, bytes.length >> 1);
      await put(memory, cut);
      await put(checked, await hash(cut));
    },
    "not a memory, with a note that fits": async () => {
      bytes.fill(7);
      await put(memory, bytes);
      await put(checked, await hash(bytes));
    },
  };
  await changes[change]();
}"""
ASK_ALL = """async (questions) => {
  const script = document.querySelector("script[src*='scripts/page.js']").src;
  const { ask } = await import(script.replace("page.js", "runtime.js"));
  const replies = [];
  for (const [slug, query] of questions) replies.push(await ask(slug, query));
  return replies;
}"""
DRAWN_TWICE = """async () => {
  const script = document.querySelector("script[src*='scripts/page.js']").src;
  const part = (name) => import(script.replace("page.js", name));
  const [{ loadPython, runtimeFor }, { readSnapshot }, { handbookScope, runtimeOf }] = await Promise.all(
    ["runtime-files.js", "snapshot-store.js", "runtime.js"].map(part));
  const runtime = await runtimeFor(runtimeOf(document.querySelector("form.calculator")));
  const target = { scope: handbookScope(), key: runtime.id };
  const drawn = [];
  for (let turn = 0; turn < 2; turn += 1) {
    const python = await loadPython(runtime, { snapshot: await readSnapshot(target) });
    drawn.push(python.runPython("import random; random.random()"));
  }
  return drawn;
}"""
LITTLE_ROOM = "navigator.storage.estimate = async () => ({ quota: 90e6, usage: 40e6 })"


@pytest.fixture(scope="module")
def context(browser):
    opened = browser.new_context(viewport=PHONE, service_workers="block")
    opened.set_default_timeout(PATIENCE)
    yield opened
    opened.close()


def workers_of(page):
    """Return a list that fills with the names of the workers that a page starts."""
    started = []
    page.on("worker", lambda worker: started.append(worker.url.rpartition("/")[2]))
    return started


def answer(page):
    shown = page.locator("[data-result] .answer-size")
    expect(shown).to_be_visible(timeout=PATIENCE)
    return shown


def kept(page):
    """Return what is kept of snapshots: "memory", "checked"."""
    return sorted(re.findall(r"[?&](memory|checked)=", " ".join(page.evaluate(KEPT))))


def wait_until_kept(*pages):
    for _ in range(PATIENCE // 250):
        if "checked" in kept(pages[0]):
            return
        pages[0].wait_for_timeout(250)
    raise AssertionError("no snapshot was made")


@pytest.fixture(scope="module")
def made(context, site):
    """A snapshot made by one of two tabs that answer at once, and set aside; what workers both started."""
    one, two = context.new_page(), context.new_page()
    started = [workers_of(one), workers_of(two)]
    for tab in (one, two):
        tab.goto(site + PAGE)
    for tab in (one, two):
        answer(tab)
    wait_until_kept(one, two)
    (name,) = [name for name in one.evaluate("caches.keys()") if name.startswith("snapshot ")]
    one.evaluate(COPY, [name, "aside"])
    for tab in (one, two):
        tab.close()
    return name, started


@pytest.fixture
def page(context, site, made):
    """A page of a reader who has a snapshot; no calculator runs in it yet."""
    page = context.new_page()
    page.goto(f"{site}404.html")
    page.evaluate("name => caches.delete(name)", made[0])
    page.evaluate("localStorage.clear()")
    page.evaluate(COPY, ["aside", made[0]])
    yield page
    page.close()


LIBRARY = "**/runtime/*/*.zip"


class Withheld(list):
    """What asks for the archives, and waits until they are released."""

    released = False

    def hold(self, route):
        if self.released:
            route.continue_()
        else:
            self.append(route)

    def release(self):
        self.released = True
        for route in self:
            route.continue_()


def withhold_library(page):
    """Have the archives asked for and not come; return what asks for them."""
    waiting = Withheld()
    page.route(LIBRARY, waiting.hold)
    return waiting


def test_of_two_tabs_that_answer_at_once_one_makes_the_snapshot(made):
    _, started = made
    assert sum(tab.count("snapshot-worker.js") for tab in started) == 1
    # One for each reader, and one that is started from the snapshot to see that it answers as before.
    assert sum(tab.count("calculator-worker.js") for tab in started) == 3


def test_a_start_from_the_snapshot_answers_without_the_library(page, site):
    waiting = withhold_library(page)
    page.goto(site + PAGE)
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    waiting.release()


def test_what_memory_lacks_is_answered_when_the_library_is_there(page, site):
    waiting = withhold_library(page)
    page.goto(site + NOT_IN_MEMORY)
    while not waiting:
        page.wait_for_timeout(50)
    expect(page.locator("[data-result] section")).to_have_count(0)
    waiting.release()
    expect(page.locator("[data-result] section").first).to_be_visible()
    slug, query = NOT_IN_MEMORY.removeprefix("calculators/").split(".html?")
    assert page.evaluate(ASK_ALL, [[slug, query]])[0]["html"] == json.loads(answer_request(slug, query))["html"]
    assert kept(page) == ["checked", "memory"], "nothing failed"


def examples(slugs):
    return [
        [slug, query]
        for slug in slugs
        for query in (urlencode(CALCULATORS[slug].example), "", "edition=never", "no-field=%E2%98%83")
    ]


def assert_answers_as_here(page, site, questions):
    page.goto(site + PAGE)
    answer(page)
    for (slug, query), shown in zip(questions, page.evaluate(ASK_ALL, questions), strict=True):
        assert shown == json.loads(answer_request(slug, query)), f"{slug}?{query}"
    assert kept(page) == ["checked", "memory"], "it was the restored worker that answered"


@pytest.mark.slices(SLICES)
def test_every_example_is_answered_from_the_snapshot_as_here(page, site, slice_number):
    assert_answers_as_here(page, site, examples(list(CALCULATORS)[slice_number::SLICES]))


@pytest.mark.long
def test_every_worked_case_and_every_example_in_every_edition_is_answered_from_the_snapshot_as_here(page, site):
    questions = [
        [file.stem.replace("_", "-"), urlencode({"edition": edition} | {k: str(v) for k, v in case["inputs"].items()})]
        for file in sorted(FOLDER.rglob("*.toml"))
        if file.stem.replace("_", "-") in CALCULATORS
        for edition, case in cases(file.relative_to(FOLDER).with_suffix("").as_posix())
    ]
    assert len(questions) > 500
    questions += [
        [slug, urlencode(dict(calculator.example) | {"edition": edition})]
        for slug, calculator in CALCULATORS.items()
        for edition in EDITIONS
    ]
    assert_answers_as_here(page, site, questions)


@pytest.mark.parametrize(
    "change", ["one bit", *(pytest.param(each, marks=pytest.mark.long) for each in ("cut short", "note of another"))]
)
def test_a_snapshot_that_is_not_whole_is_removed_and_the_answer_comes_from_the_files(page, site, made, change):
    page.evaluate(CHANGE, [made[0], change])
    waiting = withhold_library(page)
    page.goto(site + PAGE)
    while not waiting:
        page.wait_for_timeout(50)
    assert kept(page) == []
    waiting.release()
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")


@pytest.mark.long
@pytest.mark.parametrize("change", ["memory lost", "note lost"])
def test_half_of_a_snapshot_is_not_used(page, site, made, change):
    page.evaluate(CHANGE, [made[0], change])
    started = workers_of(page)
    page.goto(site + PAGE)
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    assert "checked" not in kept(page) or change == "memory lost"
    assert started.count("calculator-worker.js") == 1


@pytest.mark.long
@pytest.mark.parametrize("change", ["cut short, with a note that fits", "not a memory, with a note that fits"])
def test_memory_that_does_not_start_is_given_up_for_a_worker_started_from_the_files(page, site, made, change):
    page.evaluate(CHANGE, [made[0], change])
    started = workers_of(page)
    page.goto(site + PAGE)
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    assert started.count("calculator-worker.js") == 2
    assert kept(page) == []


def test_memory_made_of_other_rules_is_removed_and_never_answers(page, site):
    """As after an update of a figure that the page does not show: the page is the same, the list names other files."""

    def updated(route):
        listed = route.fetch().json()
        route.fulfill(json=listed | {"id": "otherrules"})

    page.route("**/runtime/files.json", updated)
    waiting = withhold_library(page)
    page.goto(site + PAGE)
    while not waiting:
        page.wait_for_timeout(50)
    assert kept(page) == []
    waiting.release()
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")


@pytest.mark.long
def test_two_starts_from_one_snapshot_draw_different_random_numbers(page, site):
    page.goto(site + PAGE)
    answer(page)
    one, other = page.evaluate(DRAWN_TWICE)
    assert one != other


@pytest.mark.long
def test_removing_the_saved_handbook_removes_the_snapshot(page, site):
    page.goto(site + PAGE)
    answer(page)
    page.evaluate("document.dispatchEvent(new CustomEvent('handbook:removed'))")
    while any(name.startswith("snapshot ") for name in page.evaluate("caches.keys()")):
        page.wait_for_timeout(50)


def new_reader(browser, init=""):
    context = browser.new_context(viewport=PHONE, service_workers="block")
    context.set_default_timeout(PATIENCE)
    page = context.new_page()
    if init:
        page.add_init_script(init)
    return context, page


def limit_storage(context, page, site, size):
    origin = re.match(r"\w+://[^/]+", site)[0]
    context.new_cdp_session(page).send("Storage.overrideQuotaForOrigin", {"origin": origin, "quotaSize": size})


@pytest.mark.long
def test_where_the_device_has_little_room_none_is_made(browser, site):
    """Chromium tells of 10 GB wherever it is, so what it tells is put in its mouth."""
    context, page = new_reader(browser, LITTLE_ROOM)
    started = workers_of(page)
    page.goto(site + PAGE)
    answer(page)
    page.wait_for_timeout(8_000)
    assert "snapshot-worker.js" not in started
    context.close()


@pytest.mark.long
def test_where_storage_fills_up_while_it_is_made_nothing_stays_and_the_reader_goes_on(browser, site):
    context, page = new_reader(browser)
    page.goto(f"{site}404.html")
    limit_storage(context, page, site, 10_000_000)
    with page.expect_event("worker", lambda worker: worker.url.endswith("snapshot-worker.js")) as maker:
        page.goto(site + PAGE)
        answer(page)
    with maker.value.expect_event("close"):
        pass
    page.click("[data-field=sets] [data-step='1']")
    expect(page.locator("[data-result] .answer-size")).to_have_text("4/0 AWG copper wire or larger")
    assert kept(page) == []
    assert page.evaluate("JSON.parse(localStorage.getItem('snapshot-failures')).count") == 1
    context.close()


@pytest.mark.long
def test_a_page_that_is_left_while_a_snapshot_is_made_keeps_none_and_the_next_one_makes_it(browser, site):
    context, page = new_reader(browser)
    with page.expect_event("worker", lambda worker: worker.url.endswith("snapshot-worker.js")):
        page.goto(site + PAGE)
        answer(page)
    page.goto(f"{site}404.html")
    assert "checked" not in kept(page)
    assert page.evaluate("localStorage.getItem('snapshot-failures')") is None
    page.goto(site + PAGE)
    answer(page)
    wait_until_kept(page)
    context.close()
