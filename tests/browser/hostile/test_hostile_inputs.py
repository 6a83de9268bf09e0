"""Whatever is put into a page, nothing of it runs, nothing leaves, nothing hangs, and what was typed stays."""

from __future__ import annotations

import time

import pytest
from playwright.sync_api import Error, expect

from calc.registry import CALCULATORS
from site_assets.build.serve import Server
from tests.browser.hostile.inputs import ELSEWHERE, KINDS, RUNS, slice_of

SLICES = 13  # with about 40 inputs each: more than 500
HANGS = 20.0  # s, for an answer of a calculator that has started, or for anything else; a busy machine takes 2
START = 60_000  # ms
SLUGS = [slug for slug, each in CALCULATORS.items() if any(not field.choices for field in each.fields.values())]

# Counts what could run or load, over the whole page, as it is now.
LOOK = """() => {
  const dangerous = "script, iframe, frame, object, embed, base, meta, link, style, form, [srcdoc], [formaction]";
  const counts = {};
  for (const { localName } of document.querySelectorAll(dangerous)) counts[localName] = (counts[localName] ?? 0) + 1;
  const faults = [];
  for (const element of document.querySelectorAll("*")) {
    for (const { name, value } of element.attributes) {
      if (name.startsWith("on")) faults.push(`${element.localName} ${name}`);
      if (!["href", "src", "action", "xlink:href"].includes(name) || value.startsWith("#")) continue;
      const { protocol, origin } = new URL(value, location.href);
      const ours = origin === location.origin && ["http:", "blob:"].includes(protocol);
      const drawn = protocol === "data:" && element.localName !== "a";
      if (!ours && !drawn) faults.push(`${name}=${value}`);
    }
  }
  return { counts, faults, ran: self.ran ?? 0 };
}"""
ASK = """(query) => {
  document.querySelector("form.calculator").dispatchEvent(new CustomEvent("calculator:ask", { detail: { query } }));
}"""
# Longest time for which the page did nothing else.
BEAT = """() => {
  let last = performance.now();
  self.longest = 0;
  const beat = () => {
    const now = performance.now();
    self.longest = Math.max(self.longest, now - last);
    last = now;
    setTimeout(beat, 20);
  };
  beat();
}"""
PUT = """async ([stored, base]) => {
  const named = (text) => text.replaceAll("BASE", base);
  for (const [name, text] of Object.entries(stored.local)) localStorage.setItem(named(name), text);
  for (const [name, text] of Object.entries(stored.session)) sessionStorage.setItem(named(name), text);
  const cache = await caches.open(`offline ${base}/`);
  for (const [key, text] of Object.entries(stored.cache)) {
    await cache.put(named(key), new Response(text, { headers: { "content-type": "text/html" } }));
  }
  for (const [name, text] of Object.entries(stored.database)) {
    await new Promise((resolve) => {
      const opening = indexedDB.open(name);
      opening.onupgradeneeded = () => opening.result.createObjectStore("store").put(text, "key");
      opening.onsuccess = () => { opening.result.close(); resolve(); };
      opening.onerror = opening.onblocked = resolve;
    });
  }
}"""


class Watched:
    """A page with hostile inputs before it, and what is held against them."""

    def __init__(self, page, site):
        self.page = page
        self.site = site
        self.faults: list[str] = []
        self.clean: dict[str, dict[str, int]] = {}  # what each page has when its address says nothing
        page.on("dialog", self._dialog)
        page.on("pageerror", lambda error: self.faults.append(f"script: {error}"))
        page.on("popup", lambda popup: self.faults.append(f"popup: {popup.url}"))
        page.on("console", lambda said: "Content Security" in said.text and self.faults.append(said.text))
        page.context.on("request", lambda request: self._request(request.url))
        page.on("framenavigated", lambda frame: self._request(frame.url))

    def _dialog(self, dialog):
        self.faults.append(f"dialog: {dialog.message}")
        dialog.dismiss()

    def _request(self, url):
        if not url.startswith((self.site, "blob:", "data:", "about:")):
            self.faults.append(f"request: {url}")

    def opened(self, path):
        """Open a page of the site."""
        self.page.goto(f"{self.site}{path}")
        self.page.evaluate(BEAT)
        self.before = self.page.evaluate(LOOK)

    def looked_at(self, name):
        """Hold the page as it is now to what it was; return the longest time, s, for which it did nothing else."""
        now = self.page.evaluate(LOOK)
        assert now["counts"] == self.before["counts"], name
        assert now["faults"] == [], name
        assert now["ran"] == 0, name
        assert self.faults == [], name
        return self.page.evaluate("[self.longest, self.longest = 0][0]") / 1000

    def asked(self, act):
        """Do something that asks, wait for the answer, and return how long it took, s."""
        self.page.evaluate("""() => {
          self.answers = 0;
          document.addEventListener("calculator:answered", () => { self.answers += 1; }, { once: true });
        }""")
        began = time.monotonic()
        act()
        self.page.locator("body").evaluate("""async () => {
          while (!self.answers) await new Promise((resolve) => setTimeout(resolve, 5));
        }""")
        return time.monotonic() - began


@pytest.fixture(scope="module")
def host(site_folder):
    """Yield the site, at an address of its own."""
    with Server(site_folder, base="/handbook/here/") as server:
        yield server.address


@pytest.fixture(scope="module")
def stranger(tmp_path_factory):
    """Yield a host of someone else, with a page."""
    folder = tmp_path_factory.mktemp("stranger")
    (folder / "index.html").write_text("<!doctype html><title>Stranger</title><p>Stranger</p>")
    with Server(folder) as server:
        yield server.address


@pytest.mark.slices(SLICES)
def test_hostile_inputs_run_nothing_reach_nothing_and_lose_nothing(browser, host, stranger, slice_number):
    calculator = CALCULATORS[SLUGS[(slice_number * 5) % len(SLUGS)]]
    page_path = f"calculators/{calculator.slug}.html"
    inputs = slice_of(slice_number, calculator)
    context = browser.new_context(viewport={"width": 390, "height": 844}, service_workers="block")
    opener = context.new_page()
    opener.goto(stranger)
    watched = Watched(context.new_page(), host)
    slowest = {}
    try:
        for kind, act in ACTS.items():
            for each in (one for one in inputs if one.kind == kind):
                try:
                    took = act(watched, each.what, page_path)
                    took = max(took, watched.looked_at(each.name))
                    if took > HANGS:  # a busy machine is no hang: what hangs does so again
                        took = max(act(watched, each.what, page_path), watched.looked_at(each.name))
                except Error as error:
                    raise AssertionError(f"{each.name}: {each.what!r}"[:2000]) from error
                slowest[each.name] = took
        for each in (one for one in inputs if one.kind == "message"):
            told_by_a_stranger(opener, watched, each, page_path)
    finally:
        context.close()
    assert len(slowest) == sum(KINDS.values()) - KINDS["message"]
    assert {name: took for name, took in slowest.items() if took > HANGS} == {}


def linked(watched, query, page_path):
    """Ask as a link does: the first opens the page, the others fill its form."""
    if page_path not in watched.page.url:
        watched.opened(f"{page_path}?{query[1:]}")
        expect(watched.page.locator("form.calculator[data-started]")).to_be_attached(timeout=START)
        watched.page.evaluate(ASK, query)
        expect(watched.page.locator("[data-result] [data-outcome]")).to_be_visible(timeout=START)
        watched.page.evaluate("self.longest = 0")
        return 0
    return watched.asked(lambda: watched.page.evaluate(ASK, query))


def typed(watched, texts, page_path):
    """Type into the form and submit it; what was typed stays."""
    page = watched.page
    page.evaluate("() => document.querySelectorAll('form.calculator details').forEach((part) => { part.open = true; })")
    shown = {}
    for name, text in texts.items():
        field = page.locator(f"form.calculator [name='{name}']").first
        field.evaluate("""(field, text) => {
          field.value = text;
          field.dispatchEvent(new Event("input", { bubbles: true }));
        }""", text)
        shown[name] = field.input_value()
    submit = page.locator("form.calculator button[type=submit]").first
    took = watched.asked(lambda: submit.evaluate("(button) => button.click()"))
    for name, text in shown.items():
        assert page.locator(f"form.calculator [name='{name}']").first.input_value() == text, name
    return took


def pasted(watched, rows, page_path):
    """Answer a table; the rows stay."""
    page = watched.page
    page.evaluate("() => { document.querySelector('[data-many]').open = true; }")
    field = page.locator("[data-many] textarea")
    field.evaluate("(field, text) => { field.value = text; field.dispatchEvent(new Event('input')); }", rows)
    before = field.input_value()
    began = time.monotonic()
    page.locator("[data-many-run]").evaluate("(button) => button.click()")
    expect(page.locator("[data-many] .many-progress")).to_be_hidden(timeout=START)
    expect(page.locator("[data-many] .many-state")).not_to_have_text("", timeout=START)
    took = time.monotonic() - began
    assert field.input_value() == before
    return took


def remembered(watched, stored, page_path):
    """Load the page again over a hostile storage; what was typed in this tab is there again."""
    page = watched.page
    page.goto(f"{watched.site}{page_path}")
    base = "/" + watched.site.split("/", 3)[3].rstrip("/")
    page.evaluate(PUT, [stored, base])
    rows = "conductor\n<b>mine</b>"
    page.locator("[data-many] textarea").evaluate("(field, text) => { field.value = text; }", rows)
    began = time.monotonic()
    page.reload()
    page.wait_for_selector("form.calculator[data-started]", state="attached")
    took = time.monotonic() - began
    page.evaluate(BEAT)
    assert page.locator("[data-many] textarea").input_value() == rows
    assert page.locator("html").get_attribute("data-edition") in calculators_editions(page)
    page.evaluate("() => { localStorage.clear(); sessionStorage.clear(); }")
    return took


def calculators_editions(page):
    """Return the editions that the form of a page knows."""
    return page.locator("form.calculator").get_attribute("data-editions").split(" ")


def visited(watched, address, page_path):
    """Open a page that reads its own address."""
    began = time.monotonic()
    watched.opened(address)
    took = time.monotonic() - began
    counts, clean = watched.before["counts"], address.split("?")[0].split("#")[0]
    if clean not in watched.clean:
        watched.opened(clean)
        watched.clean[clean] = watched.before["counts"]
    assert counts == watched.clean[clean], address
    return took


ACTS = {"link": linked, "form": typed, "table": pasted, "stored": remembered, "address": visited}


def told_by_a_stranger(opener, watched, each, page_path):
    """Another window, which opened ours, sends it a message; what is typed there stays."""
    if len(opener.context.pages) < 3:
        with opener.context.expect_page() as opened:
            opener.evaluate("(address) => { self.ours = open(address); }", f"{watched.site}{page_path}")
        watched.page = opened.value
        watched.page.on("dialog", watched._dialog)
        watched.page.on("pageerror", lambda error: watched.faults.append(f"script: {error}"))
        watched.page.wait_for_selector("form.calculator[data-started]", state="attached")
        watched.page.evaluate(BEAT)
        watched.page.locator("[data-many] textarea").evaluate("(field) => { field.value = 'typed'; }")
        watched.before = watched.page.evaluate(LOOK)
    opener.evaluate("(message) => self.ours.postMessage(message, '*')", each.what)
    watched.page.evaluate("() => new Promise((resolve) => setTimeout(resolve, 20))")
    assert watched.looked_at(each.name) <= HANGS
    assert watched.page.locator("[data-many] textarea").input_value() == "typed"


def test_the_watch_notices_what_runs_and_what_is_put_into_a_page(browser, host):
    """The campaign can fail: the same watch over a page that takes text for HTML."""
    context = browser.new_context(service_workers="block", bypass_csp=True)
    watched = Watched(context.new_page(), host)
    watched.opened("index.html")
    watched.page.evaluate(f"document.querySelector('h1').innerHTML = '<img src=x onerror={RUNS}>'")
    watched.page.wait_for_function("() => self.ran > 0")
    with pytest.raises(AssertionError):
        watched.looked_at("an image")
    watched.opened("index.html")
    watched.page.evaluate(f"document.querySelector('h1').innerHTML = '<a href=\"{ELSEWHERE}\">away</a><form></form>'")
    with pytest.raises(AssertionError):
        watched.looked_at("a form")
    watched.opened("index.html")
    watched.page.evaluate(f"fetch('{ELSEWHERE}').catch(() => {{}})")
    watched.page.wait_for_timeout(100)
    with pytest.raises(AssertionError):
        watched.looked_at("a request")
    context.close()


def test_a_page_of_a_stranger_cannot_show_ours_in_a_frame(browser, host, stranger):
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.goto(stranger)
    page.evaluate("""(address) => new Promise((resolve) => {
      const frame = document.createElement("iframe");
      frame.src = address;
      frame.onload = resolve;
      document.body.append(frame);
    })""", f"{host}index.html")
    assert host not in [frame.url for frame in page.frames]
    assert all("Bonding" not in frame.content() for frame in page.frames[1:])
    context.close()
