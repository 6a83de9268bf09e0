"""Every built page in the browser: own origin only, content policy in force, printable, readable."""

from io import BytesIO
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import expect
from pypdf import PdfReader

from site_assets.build.search_page import FIELD, FOUND
from site_assets.build.search_page import LINK as SEARCH_LINK
from tests.browser.conftest import NEVER_IDLE, PHONE, context_for_reading, watch
from tests.site.pages import SITE, html_files

PATHS = [path.relative_to(SITE).as_posix() for path in html_files()]
# The search is the same on all pages; one from each depth of folders shows it.
SEARCHED_FROM = ("index.html", "parts/bonding.html", "404.html")
NARROW = (320, 390)
PARTS = 4  # of all pages
LINKED = (
    "calculators/main-bonding-jumper.html?edition=2026&conductor=600kcmil&sets=3&conductor_metal=aluminum&form=strap"
)


@pytest.mark.slices(PARTS)
def test_no_page_asks_any_other_host_for_anything(browser, site, slice_number):
    """All requests of the pages, with the search opened from each depth, the scheme changed and an answer computed."""
    context = browser.new_context(viewport=PHONE)
    context.add_init_script(NEVER_IDLE)  # else it is saved, and calculators start, on each page that is passed
    asked = set()
    context.on("request", lambda request: asked.add(request.url))
    page = context.new_page()
    faults = watch(page)
    for path in SEARCHED_FROM:
        page.goto(site + path)
        page.locator(SEARCH_LINK).first.click()
        page.locator(FIELD).press_sequentially("250.28")
        expect(page.locator(FOUND).first).to_be_visible()
    for path in [*PATHS[slice_number::PARTS], LINKED]:
        page.goto(site + path)
        page.click(".bar-sun")
    expect(page.locator("[data-result] .answer")).to_be_visible(timeout=60_000)
    context.close()
    assert {urlsplit(address).netloc for address in asked if not address.startswith(("data:", "blob:"))} == {
        urlsplit(site).netloc
    }
    assert faults == []


def test_the_content_policy_blocks_what_a_page_might_be_made_to_do(browser, site):
    context = browser.new_context()
    page = context.new_page()
    page.goto(site + "index.html")
    page.evaluate("""() => {
      window.blocked = [];
      document.addEventListener("securitypolicyviolation", (event) => blocked.push(event.effectiveDirective));
      const script = document.createElement("script");
      script.textContent = "window.ran = true";
      document.head.append(script);
      document.body.insertAdjacentHTML("beforeend", "<p style='color: red' id='styled'>x</p>");
      fetch("https://example.invalid/").catch(() => {});
    }""")
    page.wait_for_timeout(300)
    assert set(page.evaluate("blocked")) == {"connect-src", "script-src-elem", "style-src-attr"}
    assert page.evaluate("window.ran") is None
    context.close()


@pytest.mark.slices(PARTS)
@pytest.mark.parametrize("width", NARROW)
def test_no_page_scrolls_sideways(browser, site, width, slice_number):
    """Each run opens half of the pages, half of these on the narrower phone."""
    context = context_for_reading(browser, viewport={"width": width, "height": 700})
    page = context.new_page()
    wide = []
    for path in [*PATHS, LINKED][(slice_number + 2 * NARROW.index(width)) % PARTS :: PARTS]:
        page.goto(site + path)
        if path == LINKED:
            expect(page.locator("[data-result] .answer")).to_be_visible(timeout=60_000)
        if page.evaluate("document.documentElement.scrollWidth > innerWidth"):
            wide.append(path)
    context.close()
    assert wide == []


@pytest.mark.slices(PARTS)
def test_every_page_reads_without_scripts(browser, site, slice_number):
    context = browser.new_context(java_script_enabled=False, viewport=PHONE)
    page = context.new_page()
    for path in PATHS[slice_number::PARTS]:
        page.goto(site + path)
        expect(page.locator("h1:visible")).to_have_count(1)
        expect(page.locator("[data-safety=full]")).to_contain_text("qualified persons")
    page.goto(site + "parts/main-bonding-jumper.html")
    expect(page.locator("main article").first).to_contain_text("2017, 2020: 250.24(B)")
    page.goto(site + "calculators/main-bonding-jumper.html")
    expect(page.locator(".example .answer-size").first).to_contain_text("2/0 AWG")
    expect(page.locator(".at-a-glance tr", has_text="2 sets of 3/0 AWG copper")).to_contain_text("2 AWG")
    expect(page.get_by_text("Scripts are turned off in this browser")).to_be_visible()
    context.close()


def test_what_stands_at_a_glance_is_that_of_the_edition_and_each_row_is_wide_enough_for_a_glove(page, site):
    row = page.locator(".at-a-glance tr", has_text="4 sets of 500 kcmil copper").locator("td")
    for edition, size in (("2017", "250 kcmil"), ("2023", "3/0 AWG")):
        page.goto(f"{site}calculators/water-pipe-bonding.html?edition={edition}")
        expect(row.locator("b:visible")).to_have_text(size)
    links = page.locator(".at-a-glance a").evaluate_all("links => links.map((a) => a.getBoundingClientRect().height)")
    assert len(links) > 4 and min(links) >= 48


def test_the_printed_answer_has_inputs_answer_working_safety_edition_date_and_link(page, site):
    page.goto(site + "calculators/main-bonding-jumper.html?edition=2020&conductor=500kcmil&sets=2")
    expect(page.locator("[data-result] .answer")).to_be_visible(timeout=60_000)
    page.emulate_media(media="print")
    page.evaluate("dispatchEvent(new Event('beforeprint'))")
    for words in ("2/0 AWG", "2 × 500,000 = 1,000,000 cmil", "250.24(B)", "lock out and tag out", "2020 edition"):
        assert page.locator("body").evaluate("(body, words) => body.innerText.includes(words)", words), words
    footer = page.locator(".print-footer")
    expect(footer).to_be_visible()
    expect(footer).to_contain_text("edition=2020&conductor=500kcmil&sets=2")
    expect(footer).to_contain_text("20")
    expect(page.locator(".answer-actions").first).to_be_hidden()
    expect(page.locator(".frame-bar")).to_be_hidden()
    assert page.locator("[data-print-day]").first.get_attribute("datetime")
    assert len(PdfReader(BytesIO(page.pdf(format="Letter"))).pages) <= 2


@pytest.mark.parametrize("target", ["button", "input", "select", "summary", ".choice"])
def test_what_is_tapped_is_at_least_48_pixels_high(page, site, target):
    page.goto(site + "calculators/main-bonding-jumper.html")
    page.locator(".more-fields summary").click()
    small = page.evaluate(
        """(target) => [...document.querySelectorAll(`form.calculator ${target}, .frame-bar ${target}`)]
             .filter((each) => each.type !== "radio" && each.offsetParent && each.getBoundingClientRect().height < 48)
             .map((each) => each.outerHTML.slice(0, 80))""",
        target,
    )
    assert small == []
