"""An answer that comes in parts: shown, stopped, given up and finished; no part of it can be taken for the whole."""

import time

import pytest
from playwright.sync_api import expect

from calc import CALCULATORS, permalink
from site_assets.render.answer import result_html
from tests.browser.conftest import PHONE, watch
from tests.browser.test_page_swap import WAITS_LONG

PAGE = "calculators/deck-voltage.html"
PATIENCE = 60_000  # ms on a loaded machine
expect.set_options(timeout=PATIENCE)
LACKING = "not calculated yet"
# What the worker says to the latest question waits for the test, one by one, from the first part of an answer on.
HOLD_PARTS = """(() => {
  const { set } = Object.getOwnPropertyDescriptor(Worker.prototype, "onmessage");
  window.held = [];
  window.posted = [];
  window.stopped = []; // the questions that the worker gave up
  window.latestId = () => posted.findLast(({ query }) => query)?.id;
  window.letAllGo = () => held.splice(0).forEach(({ go }) => go());
  Object.defineProperty(Worker.prototype, "onmessage", { set(listener) {
    set.call(this, (event) => {
      const { id, part, reply } = event.data;
      if (part?.html) window.growing = id;
      if (reply?.stopped) stopped.push(id);
      if (part?.html && window.stopAtOnce) {
        listener(event);
        document.querySelector("[data-action=stop]")?.click();
        return;
      }
      const isHeld = id === latestId() && id === window.growing && (part ?? reply)?.html;
      if (isHeld) held.push({ id, go: () => listener(event) });
      else listener(event);
    });
  } });
  const { postMessage } = Worker.prototype;
  Worker.prototype.postMessage = function (message, ...more) {
    posted.push(message);
    return postMessage.call(this, message, ...more);
  };
})()"""
# What is held of a question before goes too, and changes nothing.
LET_ONE_GO = """() => {
  while (held[0].id !== latestId()) held.shift().go();
  held.shift().go();
}"""
ROWS = "[data-result] table.list tbody tr"


@pytest.fixture(scope="module")
def page(browser, site):
    """Yield a page of deck-voltage whose calculator runs, for all tests: each asks of a pool of its own length."""
    context = browser.new_context(viewport=PHONE, service_workers="block")
    context.set_default_timeout(PATIENCE)
    page = context.new_page()
    page.add_init_script(HOLD_PARTS)
    page.add_init_script(WAITS_LONG)
    faults = watch(page)
    page.goto(f"{site}{PAGE}")
    page.click("form.calculator button[type=submit]")  # an empty form: a field to fix, and Python runs
    expect(page.locator("[data-result] .fix")).to_be_visible(timeout=PATIENCE)
    yield page
    context.close()
    assert not faults


def ask(page, length):
    """Ask of a pool so long."""
    page.evaluate("letAllGo()")
    page.evaluate("sessionStorage.clear()")
    page.fill("[name=rise]", "120 V")
    page.select_option("[name=arrangement]", "ring")
    page.fill("[name=pool_width]", "16 ft")
    page.fill("[name=pool_length]", f"{length} ft")
    page.click("form.calculator button[type=submit]")


def wait_until(page, holds):
    """Wait until an expression holds; Playwright's own way needs more than the content policy permits."""
    deadline = time.monotonic() + PATIENCE / 1000
    while not page.evaluate(holds):
        assert time.monotonic() < deadline, holds
        page.wait_for_timeout(10)


def next_part(page):
    wait_until(page, "held.some(({ id }) => id === latestId())")
    page.evaluate(LET_ONE_GO)


def lacking(page):
    return page.locator(ROWS).filter(has_text=LACKING).count()


def whole(query):
    return result_html(CALCULATORS["deck-voltage"].run(permalink.read(query)))


def shows(page, html):
    """Tell whether the words of the answer shown are those of `html`, to the letter."""
    return page.evaluate(
        """(html) => {
             const tree = document.createElement("template");
             tree.innerHTML = html;
             return document.querySelector("[data-result]").textContent === tree.content.textContent;
           }""",
        html,
    )


def test_the_first_part_says_that_it_is_not_finished_and_the_last_is_what_cpython_says(page):
    ask(page, 20)
    unfinished = page.locator("[data-result] [data-unfinished]")
    next_part(page)
    expect(page.locator("[data-result] .size")).to_contain_text("from hand to deck")
    expect(unfinished).to_contain_text("This answer is not finished. Compared so far: 2 of 4 decks.")
    assert unfinished.locator("progress").evaluate("each => each.position") == 0.5
    assert lacking(page) == 2
    assert page.evaluate("sessionStorage.getItem('kept-answers')") is None
    next_part(page)
    expect(unfinished).to_contain_text("Compared so far: 3 of 4 decks.")
    assert lacking(page) == 1
    next_part(page)
    expect(unfinished).to_have_count(0)
    assert lacking(page) == 0
    said = page.evaluate("new URLSearchParams(location.search).get('said')")
    query = page.evaluate("location.search.slice(1)")
    assert said.endswith("-volt") and shows(page, whole(query))
    assert page.evaluate("sessionStorage.getItem('kept-answers')") is not None


def test_what_is_opened_and_what_has_the_focus_stays_while_the_answer_grows(page):
    ask(page, 21)
    next_part(page)
    page.click("[data-result] details.citations > summary")
    page.evaluate("window.section = document.querySelector('[data-result] section')")
    page.focus("[data-action=stop]")
    next_part(page)
    expect(page.locator("[data-unfinished]")).to_contain_text("3 of 4")
    expect(page.locator("[data-action=stop]")).to_be_focused()
    next_part(page)
    expect(page.locator("[data-unfinished]")).to_have_count(0)
    assert page.evaluate("document.querySelector('[data-result] section') === window.section")
    assert page.evaluate("document.activeElement === window.section")  # the button that had it is gone
    expect(page.locator("[data-result] details.citations")).to_have_attribute("open", "")


def test_an_answer_that_is_stopped_says_so_and_goes_on_when_asked(page):
    ask(page, 22)
    next_part(page)
    page.click("[data-action=stop]")
    stopped = page.locator("[data-unfinished]")
    expect(stopped).to_contain_text("Stopped. This answer is not finished. Compared so far: 2 of 4 decks.")
    expect(stopped.locator("progress")).to_be_hidden()
    assert page.evaluate("posted.at(-1)") == {"id": page.evaluate("latestId()"), "stop": True}
    page.evaluate("letAllGo()")  # what was on its way changes nothing
    expect(stopped).to_contain_text("Compared so far: 2 of 4 decks.")
    assert lacking(page) == 2
    assert "not finished" in page.evaluate("document.querySelector('[data-answer-note]').textContent")
    page.emulate_media(media="print")
    expect(stopped).to_be_visible()
    expect(stopped.locator("[data-action=finish]")).to_be_hidden()
    page.emulate_media(media="screen")
    page.click("[data-action=finish]")
    for _ in range(3):
        next_part(page)
    expect(stopped).to_have_count(0)
    assert shows(page, whole(page.evaluate("location.search.slice(1)")))


def test_the_worker_ends_what_is_given_up_before_it_has_solved_the_rest(page):
    page.evaluate("window.stopAtOnce = true")
    ask(page, 26)
    wait_until(page, "stopped.includes(latestId())")
    page.evaluate("window.stopAtOnce = false")
    expect(page.locator("[data-unfinished]")).to_contain_text("Compared so far: 2 of 4 decks.")


def test_an_entry_that_changes_gives_the_rest_up(page):
    ask(page, 23)
    next_part(page)
    asked = page.evaluate("latestId()")
    page.fill("[name=pool_length]", "24 ft")
    assert page.evaluate("posted.at(-1)") == {"id": asked, "stop": True}
    expect(page.locator("[data-unfinished]")).to_contain_text("Stopped.")
    expect(page.locator("[data-result]")).to_have_attribute("data-outdated", "")
    page.keyboard.press("Tab")  # the change is there, and the form asks
    wait_until(page, f"latestId() > {asked}")
    for _ in range(3):
        next_part(page)
    assert shows(page, whole(page.evaluate("location.search.slice(1)")))


def test_a_page_that_is_left_gives_the_rest_up(page):
    ask(page, 25)
    next_part(page)
    asked = page.evaluate("latestId()")
    page.evaluate("[...document.links].find(({ href }) => href.endsWith('/shock-limits.html')).click()")
    expect(page.locator("form[data-calculator=shock-limits]")).to_be_visible()
    assert page.evaluate("posted.filter(({ stop }) => stop).at(-1)") == {"id": asked, "stop": True}
    page.evaluate("letAllGo()")
    assert page.locator("[data-result] section").count() == 0
