"""A press is never silent: as a file, while the page loads, without its scripts, its worker or WebAssembly."""

import re
from threading import Event

import pytest
from playwright.sync_api import expect

from site_assets.build.search_page import FIELD
from site_assets.build.search_page import PAGE as SEARCH
from tests.browser.conftest import PHONE, choose_edition, watch
from tests.browser.faults.faulty_server import Fault, FaultyServer, half_until

PAGE = "calculators/main-bonding-jumper.html"
LOADED = 60_000  # ms for a page on a loaded machine
SUBMIT = "form.calculator button[type=submit]"


@pytest.fixture
def visitor(browser):
    """Yield a page whose faults a test expects."""
    context = browser.new_context(viewport=PHONE, service_workers="block")
    yield context.new_page()
    context.close()


def told(page, near):
    return page.locator(f"{near} .unanswered, {near} + .unanswered")


def test_opened_as_a_file_the_page_says_at_once_what_works_and_how_to_get_the_rest(visitor, site_folder):
    visitor.goto((site_folder / PAGE).as_uri())
    notice = told(visitor, "[data-unanswered-place]")
    expect(notice).to_contain_text("opened as a file")
    expect(notice).to_contain_text("python3 -m http.server")
    assert not visitor.evaluate("document.documentElement.scrollWidth > innerWidth")
    expect(visitor.locator(".example")).to_be_visible()


def test_opened_as_a_file_every_button_says_so_where_it_is_pressed_and_keeps_what_was_typed(visitor, site_folder):
    visitor.goto((site_folder / PAGE).as_uri())
    visitor.fill("[name=conductor]", "3/0")
    visitor.click("[data-step='1']")
    expect(told(visitor, ".stepper")).to_be_in_viewport()
    visitor.click(SUBMIT, no_wait_after=True)
    expect(told(visitor, "form.calculator .form-actions")).to_be_in_viewport()
    visitor.click("[data-many] > summary")
    visitor.click("[data-many-run]")
    expect(told(visitor, "[data-many] .form-actions")).to_be_in_viewport()
    expect(visitor.locator("[name=conductor]")).to_have_value("3/0")
    visitor.goto((site_folder / SEARCH).as_uri())
    visitor.fill(FIELD, "green screw")
    visitor.press(FIELD, "Enter", no_wait_after=True)
    expect(told(visitor, ".search-box")).to_be_in_viewport()
    visitor.goto((site_folder / "parts/main-bonding-jumper.html").as_uri())
    visitor.locator("[data-copy-note]").first.evaluate("each => { each.closest('details').open = true; each.click(); }")
    expect(told(visitor, "[data-copy-note]")).to_be_in_viewport()


def test_opened_as_a_file_a_link_shows_no_example_in_the_place_of_its_answer(visitor, site_folder):
    visitor.goto(f"{(site_folder / PAGE).as_uri()}?edition=2020&conductor=3/0")
    expect(told(visitor, "[data-result]")).to_contain_text("opened as a file")
    expect(visitor.locator(".example")).to_be_hidden()
    visitor.goto(f"{(site_folder / PAGE).as_uri()}?edition=2020")
    expect(visitor.locator(".example")).to_be_visible()


def test_opened_as_a_file_the_editions_switch_and_paper_is_whole(visitor, site_folder):
    visitor.goto((site_folder / "parts/main-bonding-jumper.html").as_uri())
    choose_edition(visitor, "2017")
    expect(visitor.locator("html")).to_have_attribute("data-edition", "2017")
    visitor.emulate_media(media="print")
    visitor.evaluate("dispatchEvent(new Event('beforeprint'))")
    expect(visitor.locator("[data-print-day]")).not_to_be_empty()
    assert visitor.locator("main article details:not([open])").count() == 0


def test_scripts_that_do_not_arrive_are_told_when_pressed_and_a_press_that_is_early_is_told_too(visitor, site):
    waiting = []
    visitor.route("**/runtime-state.js", lambda route: waiting.append(route))
    visitor.goto(f"{site}{PAGE}", wait_until="commit")
    visitor.click(SUBMIT, no_wait_after=True)
    expect(told(visitor, "form.calculator .form-actions")).to_contain_text("still loading")
    while not waiting:
        visitor.wait_for_timeout(20)
    waiting.pop().abort()
    expect(told(visitor, "[data-unanswered-place]")).to_contain_text("did not start", timeout=LOADED)
    visitor.click(SUBMIT, no_wait_after=True)
    expect(told(visitor, "form.calculator .form-actions")).to_contain_text("did not start")


def test_a_page_that_was_cut_on_its_way_says_so_beside_what_came(visitor, site):
    def half(route):
        html = route.fetch().text()
        route.fulfill(body=html[: len(html) // 2], content_type="text/html")

    visitor.route(f"**/{PAGE}", half)
    visitor.goto(f"{site}{PAGE}")
    notice = told(visitor, "[data-unanswered-place]")
    expect(notice).to_contain_text("did not load completely", timeout=LOADED)
    expect(notice).to_contain_text("warnings may be among them")


def test_a_page_that_stands_still_half_way_is_told_as_not_whole_until_the_rest_comes(visitor, site_folder):
    free = Event()
    notice = told(visitor, "[data-unanswered-place]")
    with FaultyServer(site_folder, "/sub/") as server:
        server.strike(Fault(half_until(free), lambda path, number: number == 1), since=PAGE)
        visitor.clock.install()
        visitor.goto(f"{server.address}{PAGE}", wait_until="commit")
        visitor.locator("[data-unanswered-place]").wait_for(state="attached")
        visitor.clock.run_for(21_000)
        expect(notice).to_contain_text("did not load completely")
        free.set()
        visitor.locator("form.calculator[data-started]").wait_for(timeout=LOADED)
        visitor.clock.run_for(10_000)
        expect(notice).to_have_count(0)


def test_a_style_that_does_not_come_is_told_and_the_calculator_still_starts(visitor, site):
    visitor.route("**/frame.css", lambda route: route.abort())
    visitor.goto(f"{site}{PAGE}")
    expect(told(visitor, "[data-unanswered-place]")).to_contain_text("may look or print wrong", timeout=LOADED)
    expect(visitor.locator("form.calculator[data-started]")).to_be_visible()


def test_with_scripts_running_nothing_of_this_is_shown(page, site):
    page.goto(f"{site}{PAGE}")
    expect(page.locator("form.calculator[data-started]")).to_be_visible()
    page.click("[data-step='1']")
    assert page.locator(".unanswered").count() == 0


@pytest.mark.parametrize(
    ("lacking", "words"),
    [
        ("delete globalThis.WebAssembly", "no WebAssembly"),
        ("globalThis.Worker = function () { throw new DOMException('no', 'SecurityError') }", "could not start"),
    ],
)
def test_a_browser_that_cannot_work_it_out_says_so_at_the_form_and_at_the_table(visitor, site, lacking, words):
    faults = watch(visitor)
    visitor.add_init_script(lacking)
    visitor.goto(f"{site}{PAGE}")
    visitor.fill("[name=conductor]", "3/0")
    visitor.click(SUBMIT)
    expect(visitor.locator(".runtime-state")).to_contain_text(words)
    visitor.click("[data-many] > summary")
    visitor.fill("#many-text", "conductor\n3/0")
    visitor.click("[data-many-run]")
    expect(visitor.locator(".many-state")).to_contain_text(words)
    expect(visitor.locator("#many-text")).to_have_value("conductor\n3/0")
    assert faults == []


def test_a_worker_that_is_gone_from_the_server_is_told_and_loading_again_keeps_what_was_typed(visitor, site):
    visitor.route("**/calculator-worker.js", lambda route: route.fulfill(status=404, body="gone"))
    visitor.goto(f"{site}{PAGE}")
    visitor.fill("[name=conductor]", "3/0")
    visitor.click(SUBMIT)
    state = visitor.locator(".runtime-state")
    expect(state).to_contain_text("no longer has the calculator for this page")
    visitor.unroute("**/calculator-worker.js")
    state.locator("button").click()
    expect(visitor).to_have_url(re.compile(r"[?&]conductor=3%2F0(&|$)"))
    expect(visitor.locator("[name=conductor]")).to_have_value("3/0")


@pytest.mark.parametrize("anchor", ["#100%", "#%", "#%E0%A4%A", '#"><img src=x>', "#no-such-anchor", "#\\"])
def test_an_address_with_a_hash_that_names_nothing_stops_nothing(page, site, anchor):
    page.goto(f"{site}{PAGE}{anchor}")
    expect(page.locator("form.calculator[data-started]")).to_be_visible()
    expect(page.locator("[data-offline][data-started]")).to_be_attached()
    page.evaluate("hash => { location.hash = hash; }", anchor)
    assert page.locator("img[src=x]").count() == 0


def test_one_part_that_fails_leaves_the_others_alive(visitor, site):
    faults = watch(visitor)
    visitor.add_init_script("Element.prototype.toggleAttribute = () => { throw new Error('broken') }")
    visitor.goto(f"{site}parts/main-bonding-jumper.html")
    expect(visitor.locator("[data-offline][data-started]")).to_be_attached()
    assert faults == ["script: broken"]
