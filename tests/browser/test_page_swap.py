"""From page to page without ending the calculator: as a change of pages reads, and where anything is amiss, one."""

import re

import pytest
from playwright.sync_api import expect

from site_assets.build.theme import PAGE_PARTS
from tests.browser.conftest import PHONE, choose_edition, fill_jumper_form, watch
from tests.browser.test_table import paste, rows

FIRST = "calculators/main-bonding-jumper.html"
SECOND = "calculators/system-bonding-jumper.html"
CASE = "?edition=2023&conductor=500kcmil&sets=2"
LIST = "**/runtime/files.json"
READING = "parts/main-bonding-jumper.html"
PATIENCE = 60_000  # ms on a loaded machine
expect.set_options(timeout=PATIENCE)
RARELY = ("not found", "other words", "without a part")
COUNT_LISTENERS = """(() => {
  window.listening = 0;
  const { addEventListener, removeEventListener } = EventTarget.prototype;
  const shared = (target) => [document, window, undefined, null].includes(target) || target === document.body;
  const known = new Map();
  EventTarget.prototype.addEventListener = function (type, listener, options) {
    if (shared(this) && listener) {
      const key = [this === document, type].join();
      const all = known.get(key) ?? known.set(key, new Set()).get(key);
      if (!all.has(listener)) {
        all.add(listener);
        window.listening += 1;
        const forget = () => { if (all.delete(listener)) window.listening -= 1; };
        if (options?.signal) addEventListener.call(options.signal, "abort", forget);
        if (options?.once) addEventListener.call(this, type, forget, { once: true });
      }
    }
    return addEventListener.call(this, type, listener, options);
  };
  EventTarget.prototype.removeEventListener = function (type, listener, options) {
    if (shared(this) && known.get([this === document, type].join())?.delete(listener)) window.listening -= 1;
    return removeEventListener.call(this, type, listener, options);
  };
})()"""

# However busy the machine is: no start counts as failed after 45 s, and no page as out of reach after 5 s.
WAITS_LONG = """(() => {
  AbortSignal.timeout = () => new AbortController().signal;
  const set = window.setTimeout;
  window.setTimeout = (run, wait, ...more) => (wait === 45_000 ? 0 : set(run, wait, ...more));
})()"""
HOLD_REPLIES = """() => {
  const ask = Worker.prototype.postMessage;
  const held = [];
  Worker.prototype.postMessage = function (...message) { held.push(() => ask.apply(this, message)); };
  window.letGo = () => { Worker.prototype.postMessage = ask; for (const each of held) each(); };
}"""


@pytest.fixture(scope="module")
def context(browser):
    opened = browser.new_context(viewport=PHONE, service_workers="block")
    opened.set_default_timeout(PATIENCE)
    opened.add_init_script(WAITS_LONG)
    yield opened
    opened.close()


@pytest.fixture
def page(context):
    page = context.new_page()
    faults = watch(page)
    yield page
    page.evaluate("localStorage.clear()")
    page.close()
    assert not faults


@pytest.fixture(scope="module")
def waiting(context, site):
    """A calculator's page whose worker runs but waits for a file: pages can be swapped, and nothing is computed."""
    page = context.new_page()
    page.route("**/pyodide.mjs", lambda route: None)
    yield page
    page.close()


@pytest.fixture
def starting(waiting, site):
    """The same page for many tests, loaded again only where one has left it."""
    if stayed(waiting) and FIRST not in waiting.url:
        go(waiting, FIRST)
    elif not stayed(waiting):
        waiting.goto(site + FIRST)
        waiting.focus("[name=conductor]")
        stay(waiting)
    yield waiting
    waiting.evaluate("localStorage.clear()")


@pytest.fixture(scope="module")
def calculating(context, site):
    """A page that has answered, with the names of the workers that it started."""
    page = context.new_page()
    workers, faults = [], watch(page)
    page.on("worker", lambda worker: workers.append(worker.url.rpartition("/")[2]))
    page.goto(site + FIRST + CASE)
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    stay(page)
    yield page, workers
    page.close()
    assert not faults


def stay(page):
    """Mark the page that the browser has loaded: a swap keeps the mark, an ordinary change of pages does not."""
    page.evaluate("window.stayed = true")


def stayed(page):
    return page.evaluate("window.stayed === true")


def press_link(page, path, query=""):
    """Press a link to a page, also one that hides in the menu of a phone."""
    page.evaluate(
        """([path, query]) => {
          const links = [...document.querySelectorAll("main a[href], nav a[href]")];
          const link = links.find(({ href }) => href.endsWith(path));
          if (query) link.search = query;
          link.click();
        }""",
        [path, query],
    )


def go(page, path, query=""):
    press_link(page, path, query)
    expect(page).to_have_url(re.compile(re.escape(path)))


def answer(page):
    shown = page.locator("[data-result] .answer-size")
    expect(shown).to_be_visible(timeout=PATIENCE)
    return shown


def heading(page):
    return page.locator("main h1")


def test_a_second_calculator_is_answered_by_the_worker_that_runs(calculating):
    page, workers = calculating
    go(page, SECOND)
    expect(page).to_have_title(re.compile("^Size the system bonding jumper"))
    expect(heading(page)).to_have_text(re.compile("Size the system bonding jumper"))
    expect(heading(page)).to_be_focused()
    expect(page.locator(".announcer")).to_have_text(page.title())
    assert page.evaluate("scrollY") == 0
    fill_jumper_form(page, "3/0")
    page.click("form.calculator button[type=submit]")
    expect(answer(page)).to_have_text("4 AWG copper wire or larger")
    assert stayed(page)
    assert workers.count("calculator-worker.js") == 1


def test_going_back_shows_the_last_answer_as_one_from_before_until_it_is_worked_out_again(calculating):
    page, _ = calculating
    go(page, READING)
    go(page, FIRST, CASE)
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    link = page.locator("[data-result] a", has_text="Compare editions")
    link.scroll_into_view_if_needed()
    link.focus()
    page.wait_for_timeout(300)
    before = link.bounding_box()["y"]
    go(page, READING)
    page.evaluate("scrollTo(0, 500)")
    page.evaluate(HOLD_REPLIES)
    page.go_back()
    told = page.locator("[data-result] .earlier")
    expect(told).to_contain_text("Calculated earlier in this tab")
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    expect(page.locator("[data-result]")).to_have_attribute("data-outdated", "")
    expect(link).to_be_focused()
    assert 0 <= link.bounding_box()["y"] - before < 200, "it stands lower by the line above the answer"
    page.evaluate("letGo()")
    expect(told).to_have_count(0)
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    expect(page.locator("[name=conductor]")).to_have_value("500kcmil")
    page.go_forward()
    expect(page).to_have_url(re.compile(re.escape(READING)))
    expect(heading(page)).to_have_text(re.compile("^Main bonding jumper"))
    assert page.evaluate("scrollY") == 500
    assert stayed(page)


@pytest.mark.parametrize("rules", ["the same", "other"])
def test_on_a_reload_the_last_answer_is_shown_if_the_same_rules_gave_it(page, site, rules):
    page.goto(site + FIRST + CASE)
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    if rules == "other":
        page.route(LIST, lambda route: route.fulfill(json=route.fetch().json() | {"id": "other"}))
    held, free = [], []
    # It is asked for once more, to be held to its hash.
    page.route("**/pyodide.mjs", lambda route: route.continue_() if free else held.append(route))
    page.reload()
    if rules == "other":
        expect(page.locator("[data-result] .awaiting")).to_be_visible()
        assert page.locator("[data-result] section").count() == 0
    else:
        expect(page.locator("[data-result] .earlier")).to_be_visible()
        expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")
    while not held:
        page.wait_for_timeout(50)
    free.append(True)
    for route in held:
        route.continue_()
    expect(page.locator("[data-result] .earlier, [data-result] .awaiting")).to_have_count(0)
    expect(answer(page)).to_have_text("2/0 AWG copper wire or larger")


def test_the_edition_is_read_anew_before_a_page_is_shown(starting, context, site):
    other = context.new_page()
    other.goto(site + READING)
    choose_edition(other, "2017")
    other.close()
    starting.evaluate(
        """() => new MutationObserver((changes, observer) => {
          observer.disconnect();
          window.editionSeen ??= document.documentElement.dataset.edition;
        }).observe(document.body, { childList: true, subtree: true })"""
    )
    go(starting, READING)
    expect(starting.locator("html")).to_have_attribute("data-edition", "2017")
    expect(starting.locator("[data-choose-edition='2017']")).to_have_attribute("aria-pressed", "true")
    assert starting.evaluate("editionSeen") == "2017"
    press_link(starting, FIRST, "?edition=2026")
    expect(starting.locator("html")).to_have_attribute("data-edition", "2026")
    go(starting, READING)
    expect(starting.locator("html")).to_have_attribute("data-edition", "2026"), "for this visit"
    choose_edition(starting, "2020")
    go(starting, FIRST)
    expect(starting.locator("html")).to_have_attribute("data-edition", "2020")
    assert stayed(starting)


def test_ten_pages_later_no_more_is_listened_to(context, site):
    page = context.new_page()
    page.add_init_script(COUNT_LISTENERS)
    page.route("**/pyodide.mjs", lambda route: None)
    page.goto(site + FIRST)
    page.focus("[name=conductor]")
    stay(page)
    counts = []
    for _ in range(5):
        for path in (SECOND, FIRST):
            go(page, path)
            expect(heading(page)).to_be_focused()
        counts.append(page.evaluate("listening"))
    assert stayed(page)
    assert counts[-1] <= counts[0], counts
    page.close()


def test_what_was_typed_is_there_on_going_back_and_not_on_a_page_opened_anew(starting):
    starting.fill("[name=conductor]", "500 kcmil")
    go(starting, SECOND)
    starting.go_back()
    expect(heading(starting)).to_have_text(re.compile("main bonding jumper"))
    expect(starting.locator("[name=conductor]")).to_have_value("500 kcmil")
    go(starting, SECOND)
    go(starting, FIRST)
    expect(starting.locator("[name=conductor]")).to_have_value("")
    assert stayed(starting)


def test_a_page_in_another_folder_finds_its_links_and_leads_on(starting, site):
    go(starting, "/index.html")
    expect(heading(starting)).to_be_focused()
    logo = starting.locator("header [title]").first
    assert logo.evaluate("each => each.href") == f"{site}index.html"
    go(starting, SECOND)
    expect(heading(starting)).to_have_text(re.compile("system bonding jumper"))
    assert stayed(starting)


def test_places_within_a_page_are_kept_too(starting):
    go(starting, READING)
    starting.evaluate("scrollTo(0, 700)")
    starting.wait_for_timeout(300)
    starting.evaluate("location.hash = 'safety'")
    starting.wait_for_timeout(300)
    at_safety = starting.evaluate("scrollY")
    assert at_safety > 700
    starting.go_back()
    starting.wait_for_timeout(300)
    assert starting.evaluate("scrollY") == 700
    starting.go_forward()
    starting.wait_for_timeout(300)
    assert abs(starting.evaluate("scrollY") - at_safety) < 2
    starting.go_back()
    starting.go_back()
    expect(heading(starting)).to_have_text(re.compile("main bonding jumper"))
    assert stayed(starting)


@pytest.mark.parametrize(
    "amiss",
    [
        "out of reach",
        "another version",
        "other rules",
        *(pytest.param(each, marks=pytest.mark.long) for each in RARELY),
    ],
)
def test_whatever_stands_in_the_way_makes_it_an_ordinary_change_of_pages(starting, amiss):
    changes = {
        "another version": (r"scripts/page\.js", "../other/page.js"),
        "other rules": (r'("id": ")\w+', r"\1other"),  # in the list: the page is the same in both versions
        "other words": (r"(&quot;version&quot;: &quot;)\w+", r"\1other"),
        "without a part": (PAGE_PARTS[1].strip("[]"), ""),
    }

    asked = LIST if amiss == "other rules" else re.compile(re.escape(SECOND))

    def once(route):
        starting.unroute(asked)
        if amiss == "out of reach":
            return route.abort()
        if amiss == "not found":
            return route.fulfill(status=404, body="gone", content_type="text/html")
        given = route.fetch()
        changed = re.sub(*changes[amiss], given.text())
        assert changed != given.text()
        return route.fulfill(body=changed, content_type=given.headers["content-type"])

    starting.route(asked, once)
    with starting.expect_navigation():
        press_link(starting, SECOND)
    expect(heading(starting)).to_have_text(re.compile("Size the system bonding jumper"))
    assert not stayed(starting)


@pytest.mark.long
def test_back_to_a_page_that_cannot_be_had_is_an_ordinary_change_of_pages(starting):
    go(starting, SECOND)
    expect(heading(starting)).to_be_focused()

    def once(route):
        starting.unroute(re.compile(re.escape(FIRST)))
        route.abort()

    starting.route(re.compile(re.escape(FIRST)), once)
    with starting.expect_navigation(url=re.compile(re.escape(FIRST)), wait_until="load"):
        starting.evaluate("history.back()")
        starting.wait_for_timeout(500)
    expect(heading(starting)).to_have_text(re.compile("Size the main bonding jumper"))
    assert not stayed(starting)


def test_clicks_that_are_not_plain_and_links_that_lead_elsewhere_stay_the_browsers(starting):
    heard = """([path, how, change]) => new Promise((resolve) => {
      const found = [...document.querySelectorAll("main a[href]")].find(({ href }) => href.endsWith(path));
      const link = Object.assign(found.cloneNode(true), change);
      found.after(link);
      const hear = (event) => { resolve(event.defaultPrevented); event.preventDefault(); };
      addEventListener("click", hear, { once: true });
      link.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true, view: window, ...how }));
    })"""
    for how in ({"ctrlKey": True}, {"metaKey": True}, {"shiftKey": True}, {"altKey": True}, {"button": 1}):
        assert starting.evaluate(heard, [SECOND, how, None]) is False, how
    elsewhere = ({"href": "https://example.invalid/a.html"}, {"href": "x.csv"}, {"href": "#safety"})
    for change in ({"download": "x"}, {"target": "_blank"}, *elsewhere):
        assert starting.evaluate(heard, [SECOND, {}, change]) is False, change
    assert starting.evaluate(heard, [SECOND, {}, None]) is True, "a plain one is taken"


def test_while_no_calculator_runs_every_link_is_an_ordinary_one(page, site):
    page.goto(site + READING)
    stay(page)
    with page.expect_navigation():
        press_link(page, "parts/system-bonding-jumper.html")
    assert not stayed(page)


@pytest.mark.long
def test_leaving_a_page_stops_its_table_and_closes_the_menu(page, site):
    page.goto(site + FIRST)
    page.click("[data-many] > summary")
    paste(page, rows(20_000))
    expect(page.locator(".many-progress span")).to_contain_text("Rows done", timeout=PATIENCE)
    stay(page)
    page.click(".bar-menu")
    expect(page.locator("#frame-menu")).to_be_visible()
    go(page, SECOND)
    expect(page.locator("#frame-menu")).to_be_hidden()
    fill_jumper_form(page, "3/0")
    page.click("form.calculator button[type=submit]")
    expect(answer(page)).to_have_text("4 AWG copper wire or larger")
    assert stayed(page)
