"""A form in the hand: what waits, what is wrong and where, an answer that follows, and none unmarked beside others."""

import re

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import PHONE, watch

START = 60_000  # ms for the runtime on a loaded machine
PAGE = "calculators/main-bonding-jumper.html"
BAR, DOCK, SAFETY = 56, 68, 48  # what lies over a phone's page
# Whatever the worker says to a question reaches the page so much later.
DELAYED = """(() => {
  const { set } = Object.getOwnPropertyDescriptor(Worker.prototype, "onmessage");
  window.delay = 0;
  Object.defineProperty(Worker.prototype, "onmessage", { set(listener) {
    set.call(this, (event) => event.data.reply ? setTimeout(() => listener(event), window.delay) : listener(event));
  } });
})()"""
# In each frame, the answer shown and whether it is marked, beside the size that is entered.
WATCH = """() => {
  window.seen = [];
  const look = () => {
    const result = document.querySelector("[data-result]");
    const size = result.querySelector(".answer-size")?.textContent;
    const dock = document.querySelector("[data-dock]");
    seen.push({
      entered: document.querySelector("[name=conductor]").value,
      size, marked: "outdated" in result.dataset,
      dock: dock.dataset.state === "answered" ? dock.textContent : "",
    });
    requestAnimationFrame(look);
  };
  look();
}"""


def fill_all(page, conductor="3/0"):
    page.fill("[name=conductor]", conductor)
    page.click("[data-field=sets] [data-step='1']")
    for name, value in (("conductor_metal", "copper"), ("metal", "copper")):
        page.check(f"[name={name}][value={value}]")
    page.select_option("[name=form]", "wire")


def size_of(page):
    return page.locator("[data-result] .answer-size")


@pytest.fixture(scope="module")
def reader(browser):
    """Yield a page on a phone whose calculator, once started, serves all tests."""
    context = browser.new_context(viewport=PHONE, service_workers="block")
    page = context.new_page()
    page.add_init_script(DELAYED)
    faults = watch(page)
    yield page
    context.close()
    assert not faults


@pytest.fixture
def form(reader, site):
    """Yield the page of a form that nobody has filled."""
    if reader.url.partition("?")[0] == f"{site}{PAGE}":
        reader.evaluate("window.delay = 0")
        reader.click("form.calculator button[type=reset]")
    else:
        reader.goto(f"{site}{PAGE}")
    return reader


def test_the_answer_of_a_link_is_not_shown_twice_while_it_is_in_view(page, site):
    page.goto(f"{site}{PAGE}?edition=2023&conductor=3/0&sets=2")
    expect(page.locator("[data-result] .answer-size")).to_be_in_viewport(timeout=START)
    expect(page.locator("[data-dock]")).to_have_attribute("data-away", "")
    page.evaluate("scrollTo(0, 0)")
    expect(page.locator("[data-dock] .dock-head")).to_have_text("2 AWG")
    expect(page.locator("[data-dock]")).not_to_have_attribute("data-away", "")


def test_the_dock_says_what_is_missing_and_then_holds_the_answer(form):
    """Table 250.102(C)(1): 3/0 copper 4 AWG."""
    dock = form.locator("[data-dock]")
    expect(dock.locator(".dock-head")).to_have_text("5 to fill in")
    expect(dock.locator(".dock-line")).to_contain_text("Largest ungrounded (hot) conductor, Sets in parallel")
    fill_all(form)
    expect(dock.locator(".dock-head")).to_have_text("4 AWG", timeout=START)
    expect(dock.locator(".dock-line")).to_contain_text("copper wire or larger")
    form.click(".dock-face")
    expect(form.locator("[data-result] .answer")).to_be_focused()
    expect(form.locator("[data-dock]")).to_have_attribute("data-away", "")


def test_an_answer_follows_each_change_without_a_press_and_stands_in_the_address(form):
    fill_all(form)
    expect(size_of(form)).to_have_text("4 AWG copper wire or larger", timeout=START)
    form.click("[data-field=sets] [data-step='1']")
    expect(size_of(form)).to_have_text("2 AWG copper wire or larger")
    expect(form).to_have_url(re.compile("conductor=3/0&sets=2&.*said=2-copper"))


def test_a_choice_that_nobody_made_shows_the_safe_answer_and_one_question_as_a_button(form):
    """Table 250.102(C)(1): of 3/0 copper asks for 4 AWG, 3/0 aluminum for 6 AWG."""
    fill_all(form)
    expect(size_of(form)).to_have_text("4 AWG copper wire or larger", timeout=START)
    form.check("[name=conductor_metal][value=unknown]")
    expect(form.locator("[data-dock] .dock-line")).to_have_text("One more question: Hot conductor material")
    expect(form.locator("[data-dock] .dock-head")).to_have_text("4 AWG copper wire or larger")
    button = form.locator(".one-question a.button")
    assert button.bounding_box()["height"] >= 48
    button.click()
    expect(form.locator("[name=conductor_metal]:checked")).to_be_focused()


def test_no_answer_ever_stands_beside_other_entries_unmarked(form):
    """A worker that answers 3 s late; each frame is looked at."""
    fill_all(form)
    expect(size_of(form)).to_have_text("4 AWG copper wire or larger", timeout=START)
    form.evaluate("window.delay = 3000")
    form.evaluate(WATCH)
    for size in ("500 kcmil", "4/0"):
        form.fill("[name=conductor]", size)
        form.wait_for_timeout(700)
    expect(size_of(form)).to_have_text("2 AWG copper wire or larger", timeout=START)
    right = {"3/0": "4 AWG copper wire or larger", "500 kcmil": "1/0 AWG copper wire or larger",
             "4/0": "2 AWG copper wire or larger"}  # fmt: skip
    seen = form.evaluate("seen")
    assert len({each["entered"] for each in seen}) == 3
    for each in seen:
        assert each["marked"] or each["size"] == right[each["entered"]], each
        assert not each["dock"] or right[each["entered"]].split(" AWG")[0] in each["dock"], each


def test_what_is_wrong_is_said_in_place_when_the_field_is_left_and_what_was_typed_stays(form):
    fill_all(form)
    expect(size_of(form)).to_be_visible(timeout=START)
    box = form.locator("[name=conductor]")
    box.fill("")
    box.press_sequentially("3/00")
    expect(form.locator("#error-conductor")).to_be_hidden()
    box.press("Tab")
    expect(form.locator("#error-conductor")).to_contain_text("“3/00” does not fit here. Enter a size from")
    expect(form.locator("[data-field=conductor]")).to_have_attribute("data-state", "wrong")
    expect(form.locator("[data-dock] .dock-head")).to_have_text("1 to fix")
    expect(form.locator("[data-result]")).to_have_attribute("data-outdated", "")
    expect(box).to_have_value("3/00")
    box.fill("4/0")
    expect(form.locator("#error-conductor")).to_be_hidden()
    expect(size_of(form)).to_have_text("2 AWG copper wire or larger")


def test_sets_and_metal_written_beside_the_size_go_to_their_own_fields(form):
    """Table 250.102(C)(1): 2 x 3/0 aluminum is 335,600 cmil, over 250 to 500 kcmil: 2 AWG copper."""
    form.fill("[name=conductor]", "2-3/0 AL")
    form.check("[name=metal][value=copper]")
    form.select_option("[name=form]", "wire")
    expect(form.locator("[name=sets]")).to_have_value("2", timeout=START)
    expect(form.locator("[name=conductor]")).to_have_value("3/0")
    expect(form.locator("[name=conductor_metal][value=aluminum]")).to_be_checked()
    expect(size_of(form)).to_have_text("2 AWG copper wire or larger")


def test_fix_this_brings_the_field_into_view_between_what_lies_over_the_page(form, site):
    form.goto(f"{site}{PAGE}?edition=2023&conductor=3/0&sets=99&enclosures=9")
    form.locator("[data-result] .fix a").last.click(timeout=START)
    expect(form.locator("[name=enclosures]")).to_be_focused()
    place = form.locator("[data-field=enclosures]").bounding_box()
    assert place["y"] >= SAFETY and place["y"] + place["height"] <= PHONE["height"] - BAR - DOCK


def test_a_name_that_no_field_has_is_offered_as_the_nearest_and_all_else_is_kept(form, site):
    form.goto(f"{site}{PAGE}?edition=2023&conductor=3/0&set=2&conductor_metal=aluminum")
    fix = form.locator("[data-result] .fix")
    expect(fix).to_contain_text("There is no field with this name. The nearest is sets", timeout=START)
    expect(form.locator("[name=conductor]")).to_have_value("3/0")
    fix.locator("[data-rename]").click()
    expect(size_of(form)).to_have_text("2 AWG copper wire or larger")
    expect(form.locator("[name=sets]")).to_have_value("2")
    expect(form.locator("[name=conductor_metal][value=aluminum]")).to_be_checked()


def test_only_what_counts_visits_is_ignored_in_a_link_and_that_is_said(form, site):
    form.goto(f"{site}{PAGE}?utm_source=mail&fbclid=x")
    said = "Ignored in the link, as it only counts visits: utm_source, fbclid."
    expect(form.locator("form.calculator")).to_contain_text(said)
    expect(form.locator("[data-dock] .dock-head")).to_have_text("5 to fill in")
    form.goto(f"{site}{PAGE}?edition=2023&conductor=3/0&utm_source=mail")
    expect(size_of(form)).to_have_text("4 AWG copper wire or larger", timeout=START)
    expect(form.locator("form.calculator")).to_contain_text("utm_source")


def test_an_anchor_that_was_never_there_is_told_and_one_that_is_there_is_not(form, site):
    form.goto(f"{site}{PAGE}#no-such-part")
    expect(form.locator("[data-anchor-told]")).to_contain_text("no-such-part")
    form.goto(f"{site}{PAGE}#how-it-is-worked-out")
    expect(form.locator("[data-anchor-told]")).to_have_count(0)


def test_an_old_link_keeps_its_answer_and_shows_what_it_assumed(form, site):
    form.goto(f"{site}{PAGE}?conductor=3/0")
    expect(size_of(form)).to_have_text("4 AWG copper wire or larger", timeout=START)
    for name in ("conductor_metal", "metal"):
        expect(form.locator(f"[name={name}][value=copper]")).to_be_checked()
        expect(form.locator(f"[data-field={name}]")).to_have_attribute("data-state", "assumed")
    expect(form.locator("[name=sets]")).to_have_value("1")


def test_the_second_part_opens_by_itself_for_what_is_needed_there(form, site):
    """Of two sets the supply-side jumpers depend on the number of raceways: 250.102(C)(2)."""
    form.goto(f"{site}calculators/service-schedule.html")
    part = form.locator(".more-fields")
    expect(part).not_to_have_attribute("open", "")
    form.fill("[name=conductor]", "2-3/0 copper")
    form.check("[name=metal][value=copper]")
    form.check("[name=electrodes][value=rod]")
    line = form.locator("[data-dock] .dock-line")
    expect(line).to_have_text("Raceways or cables for the sets in parallel", timeout=START)
    expect(part).to_have_attribute("open", "")


def test_a_heavy_calculator_waits_for_the_button_and_marks_its_old_answer(form, site):
    form.goto(f"{site}calculators/surface-voltage.html?cover=18in&soil=resistivity&resistivity=100")
    expect(size_of(form)).to_be_visible(timeout=START)
    form.locator("[name=cover]").fill("24 in")
    expect(form.locator("[data-result]")).to_have_attribute("data-outdated", "")
    expect(form.locator("[data-dock] .dock-head")).to_have_text("Entries changed")
