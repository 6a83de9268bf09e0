"""The frame of every page: bar, safety line, edition, menu, where the hand and the eye look for them."""

import re

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import PHONE, choose_edition, context_for_reading
from tests.browser.test_every_page import PATHS

PARTS = 16
FORM = "calculators/main-bonding-jumper.html"
PART = "parts/main-bonding-jumper.html"
MOST_TABS = 12
FIRST_VIEW = """() => {
  const box = (each) => each?.getBoundingClientRect();
  const [title, safety, caution, bar] = ["main h1", ".safety-line summary", ".page-caution", ".frame-bar"]
    .map((each) => box([...document.querySelectorAll(each)].find((one) => one.checkVisibility())));
  return { title: title.top, safety: safety.bottom, caution: caution?.bottom ?? 0, bar: bar.top };
}"""
# Where a drawing is pressed, its cases to start with are the first input.
FOCUS = """() => {
  const at = document.activeElement;
  const isField = at.matches("form.calculator :is(input, select, textarea), .presets a");
  return { field: isField, closed: !at.checkVisibility() };
}"""
EDITION = "document.documentElement.dataset.edition"
FROM = "document.documentElement.dataset.editionFrom"


def tabs_to_the_first_field(page) -> int:
    for count in range(1, 60):
        page.keyboard.press("Tab")
        focus = page.evaluate(FOCUS)
        assert not focus["closed"], "what is closed is not reached"
        if focus["field"]:
            return count
    return 60


@pytest.mark.slices(PARTS)
def test_title_safety_and_the_gravest_caution_are_in_the_first_view_of_every_page(browser, site, slice_number):
    context = context_for_reading(browser, viewport=PHONE)
    page = context.new_page()
    amiss = {}
    for path in PATHS[slice_number::PARTS]:
        page.goto(site + path)
        seen = page.evaluate(FIRST_VIEW)
        if not (seen["title"] < 100 and 0 < seen["safety"] <= 60 and seen["caution"] < seen["bar"] == 844 - 56):
            amiss[path] = seen
    context.close()
    assert amiss == {}


@pytest.mark.slices(PARTS)
@pytest.mark.parametrize("size", [(390, 844), (195, 422)], ids=["phone", "phone-at-200-percent"])
def test_the_first_field_is_within_twelve_tabs(browser, site, size, slice_number):
    context = context_for_reading(browser, viewport={"width": size[0], "height": size[1]})
    page = context.new_page()
    far = {}
    forms = [path for path in PATHS if path.startswith("calculators/")]
    for path in forms[slice_number::PARTS]:
        page.goto(site + path)
        if page.locator("form.calculator").count() and (tabs := tabs_to_the_first_field(page)) > MOST_TABS:
            far[path] = tabs
    context.close()
    assert far == {}


def test_the_menu_is_a_real_button_and_closed_it_is_not_there(page, site):
    page.goto(site + PART)
    menu, button = page.locator("#frame-menu"), page.get_by_role("button", name="Menu")
    expect(menu).to_be_hidden()
    button.focus()
    page.keyboard.press("Enter")
    expect(button).to_have_attribute("aria-expanded", "true")
    expect(menu.get_by_role("link", name="Main bonding jumper", exact=True)).to_be_visible()
    page.keyboard.press("Escape")
    expect(menu).to_be_hidden()
    expect(button).to_be_focused()
    button.click()
    menu.locator("summary", has_text="Places").click()
    menu.get_by_role("link", name="Solar array and storage").click()
    expect(page.locator("main h1")).to_contain_text("Solar")
    expect(page.locator("#frame-menu")).to_be_hidden()


@pytest.mark.parametrize(
    ("size", "place"),
    [
        ((390, 844), {"x": 0, "y": 788, "width": 390, "height": 56}),
        ((844, 390), {"x": 760, "y": 0, "width": 84, "height": 390}),
        ((1280, 800), {"x": 0, "y": 0, "width": 1280, "height": 60}),
    ],
    ids=["phone", "on its side", "desk"],
)
def test_the_bar_is_where_the_hand_is(browser, site, size, place):
    context = context_for_reading(browser, viewport={"width": size[0], "height": size[1]})
    page = context.new_page()
    page.goto(site + PART)
    assert page.locator(".frame-bar").bounding_box() == place
    for button in page.locator(".frame-bar > :is(a, button)").all():
        box = button.bounding_box()
        assert box["height"] >= 44 and box["width"] >= 44
    text = page.locator("main article").bounding_box()
    assert text["x"] + text["width"] <= (place["x"] or size[0])
    context.close()


def test_the_bar_gives_way_to_the_keyboard_of_a_phone_and_comes_back(browser, site):
    context = context_for_reading(browser, viewport=PHONE, is_mobile=True, has_touch=True)
    page = context.new_page()
    page.goto(site + FORM)
    bar = page.locator(".frame-bar")
    expect(bar).to_be_in_viewport()
    page.locator("[name=conductor]").focus()
    expect(bar).not_to_be_in_viewport()
    assert page.evaluate("getComputedStyle(document.body).getPropertyValue('--bar')") == "0px"
    page.keyboard.press("Escape")
    page.locator("[name=conductor]").blur()
    expect(bar).to_be_in_viewport()
    context.close()


def test_sun_is_one_tap_and_one_tap_back(page, site):
    page.goto(site + PART)
    paper = "getComputedStyle(document.body).getPropertyValue('--soft')"
    before = page.evaluate(paper)
    page.click(".bar-sun")
    expect(page.locator(".bar-sun")).to_have_attribute("aria-pressed", "true")
    assert page.evaluate(paper) == "#000000" != before
    page.reload()
    expect(page.locator(".bar-sun")).to_have_attribute("aria-pressed", "true")
    page.click(".bar-sun")
    expect(page.locator(".bar-sun")).to_have_attribute("aria-pressed", "false")
    assert page.evaluate(paper) == before


def test_until_an_edition_is_picked_the_bar_says_so_and_so_does_the_address(page, site):
    page.goto(site + PART)
    edition = page.locator(".edition")
    expect(edition).to_contain_text("Pick edition")
    expect(page).to_have_url(f"{site}{PART}?edition=2023&assumed=edition")
    edition.click()
    rows = page.locator("[data-choose-edition]")
    expect(rows).to_have_count(4)
    for row in rows.all():
        expect(row).to_contain_text(re.compile("verified"))
        assert row.bounding_box()["height"] >= 56
    rows.nth(1).click()
    expect(page.locator("#frame-editions")).to_be_hidden()
    expect(edition).to_be_focused()
    expect(edition).to_contain_text("NEC")
    expect(edition.locator("b")).to_have_text("2020", use_inner_text=True)
    expect(page).to_have_url(f"{site}{PART}?edition=2020")


def test_whoever_opens_an_address_where_nobody_picked_is_asked_to_pick(page, site):
    page.goto(f"{site}{PART}?edition=2023&assumed=edition")
    expect(page.locator(".edition")).to_contain_text("Pick edition")
    expect(page.locator(".edition-strip[data-when=link]")).to_be_hidden()


def test_an_edition_of_a_link_holds_for_the_visit_with_the_own_one_shown_and_one_tap_away(context_of_reader, site):
    page = context_of_reader.new_page()
    page.goto(site + PART)
    choose_edition(page, "2020")
    page.goto(f"{site}{PART}?edition=2017")
    strip = page.locator(".edition-strip[data-when=link]")
    expect(strip).to_contain_text("for this visit only")
    expect(strip).to_contain_text("Yours: 2020.")
    expect(page.locator(".edition")).to_contain_text("From link")
    page.goto(site + "parts/bonding.html")
    assert (page.evaluate(EDITION), page.evaluate(FROM)) == ("2017", "link")
    expect(page).to_have_url(re.compile(r"bonding\.html\?edition=2017$"))
    elsewhere = context_of_reader.new_page()
    elsewhere.goto(site + PART)
    assert elsewhere.evaluate(EDITION) == "2020", "another tab is another visit"
    strip.get_by_role("button", name="Back to 2020").click()
    expect(strip).to_be_hidden()
    expect(page).to_have_url(re.compile(r"bonding\.html\?edition=2020$"))
    page.goto(site + PART)
    assert (page.evaluate(EDITION), page.evaluate(FROM)) == ("2020", "memory")


def test_a_link_for_someone_who_picked_none_leads_to_picking(page, site):
    page.goto(f"{site}{PART}?edition=2017")
    page.get_by_role("button", name="Pick yours").click()
    expect(page.locator("#frame-editions")).to_be_visible()


def test_an_address_that_the_handbook_wrote_is_no_link_when_one_comes_back_to_it(page, site):
    page.goto(site + PART)
    choose_edition(page, "2017")
    page.goto(site + "parts/bonding.html")
    choose_edition(page, "2026")
    page.go_back()
    expect(page.locator("html")).to_have_attribute("data-edition", "2026")
    page.reload()
    assert (page.evaluate(EDITION), page.evaluate(FROM)) == ("2026", "memory")
    expect(page).to_have_url(f"{site}{PART}?edition=2026")


def test_on_a_linked_page_each_section_names_its_edition_and_on_ones_own_it_does_not(page, site):
    beside = "getComputedStyle(document.querySelector('.also-called .cited'), '::after').content"
    page.goto(f"{site}{PART}?edition=2017")
    assert page.evaluate(beside) == '" (2017)"'
    page.goto(site + PART)
    choose_edition(page, "2017")
    assert page.evaluate(beside) == "none"


def test_the_rest_of_the_safety_line_is_one_tap_away_and_not_on_paper_twice(page, site):
    page.goto(site + "places/solar.html")
    rest = page.locator(".safety-line", has_text="Work at height")
    expect(rest.get_by_text("Work at height")).to_be_hidden()
    page.locator(".safety-line summary").click()
    expect(rest.get_by_text("Work at height")).to_be_visible()
    page.emulate_media(media="print")
    for words in ("De-energize, lock out", "Sunlight keeps an array live", "Work at height"):
        assert page.locator("body").evaluate("(body, words) => body.innerText.includes(words)", words), words
    expect(page.locator(".frame-bar")).to_be_hidden()


def test_with_colors_that_the_device_forces_the_run_and_the_joints_are_still_drawn(browser, site):
    context = context_for_reading(browser, viewport=PHONE, forced_colors="active", color_scheme="dark")
    page = context.new_page()
    page.goto(site + PART)
    drawn = "(part) => getComputedStyle(document.querySelector('main article'), part).backgroundColor"
    paper = page.evaluate("getComputedStyle(document.body).backgroundColor")
    assert page.evaluate(drawn, "::before") not in ("rgba(0, 0, 0, 0)", paper)
    context.close()


def test_more_contrast_makes_every_ink_black(browser, site):
    context = context_for_reading(browser, viewport=PHONE, contrast="more")
    page = context.new_page()
    page.goto(site + PART)
    assert page.evaluate("getComputedStyle(document.body).getPropertyValue('--soft')") == "#000000"
    context.close()


def test_where_there_is_no_page_no_run_is_drawn(page, site):
    page.goto(site + "404.html")
    assert page.evaluate("getComputedStyle(document.querySelector('main article'), '::after').display") == "none"
    page.goto(site + PART)
    assert page.evaluate("getComputedStyle(document.querySelector('main article'), '::after').display") != "none"


@pytest.fixture
def context_of_reader(browser):
    """Yield the browser of one reader with several tabs."""
    context = context_for_reading(browser, viewport=PHONE)
    yield context
    context.close()
