"""Pages of parts and places in use: found in two taps, followed step by step, noted, printed, bound."""

import io
import re
from unicodedata import normalize

import pytest
from playwright.sync_api import expect
from pypdf import PdfReader

from site_assets.build.book import write_book
from site_assets.build.page_data import page_data, pages
from tests.browser.conftest import PHONE, choose_edition, context_for_reading

PART = "parts/main-bonding-jumper.html"


@pytest.mark.parametrize(
    ("taps", "address", "words"),
    [
        (["What is it called"], "index.html#name-it", "What is it called"),
        (["By the part", "Main bonding jumper"], "parts/main-bonding-jumper.html", "green screw"),
        (["By the place", "Flexible raceway to a machine"], "places/flexible-raceway.html", "flexible"),
        (["By the place", "Pool, spa and fountain"], "places/pool.html", "niche"),
        (["Glossary"], "glossary.html", "puente de unión principal"),
    ],
)
def test_a_new_reader_gets_there_in_two_taps(page, site, taps, address, words):
    page.goto(f"{site}index.html")
    for tap in taps:
        page.locator("main article").get_by_text(tap, exact=len(taps) > 1).first.click()
    if len(taps) > 1 or address == "glossary.html":
        expect(page).to_have_url(re.compile(re.escape(f"{site}{address}?edition=")))
    expect(page.locator("main article")).to_contain_text(words)


def test_the_section_of_the_edition_in_force_is_shown_and_follows_the_switch(page, site):
    page.goto(f"{site}{PART}?edition=2020")
    sections = page.locator(".also-called", has_text="Sections")
    assert "250.24(B)" in sections.inner_text() and "250.24(C)" not in sections.inner_text()
    choose_edition(page, "2023")
    assert "250.24(C)" in sections.inner_text() and "250.24(B)" not in sections.inner_text()


def test_the_current_is_followed_step_by_step_there_and_back(page, site):
    page.goto(f"{site}{PART}")
    figure = page.locator("#drawing-main-bonding-jumper")
    on, back = (figure.locator(f"[data-step-by='{by}']") for by in (1, -1))
    expect(back).to_be_disabled()
    expect(on).to_have_text("Follow the current")
    on.click()
    on.click()
    expect(on).to_have_text("Next")
    expect(figure.locator(".drawing-steps p")).to_contain_text("2. ")
    assert figure.locator(".path-step.now").count() == 1 and figure.locator(".path-step.reached").count() == 2
    back.click()
    back.click()
    assert figure.locator(".path-step.reached").count() == 0
    for _ in range(figure.locator(".drawing-twin > li").count()):
        on.click()
    expect(on).to_be_disabled()


def test_a_drawing_with_steps_its_buttons_and_words_are_seen_together_on_a_wide_screen(browser, site):
    context = browser.new_context(viewport={"width": 1280, "height": 800}, service_workers="block")
    page = context.new_page()
    for name in ("parts/system-bonding-jumper.html", "parts/effective-ground-fault-current-path.html"):
        page.goto(f"{site}{name}")
        figure = page.locator("figure.drawing")
        figure.locator("[data-step-by='1']").click()
        picture, controls = figure.locator("svg").bounding_box(), figure.locator(".drawing-steps").bounding_box()
        assert picture["height"] < 0.7 * 800 and controls["x"] >= picture["x"] + picture["width"], name
        assert controls["y"] + controls["height"] < picture["y"] + picture["height"], name
    context.close()


def test_nothing_moves_for_a_reader_who_prefers_no_motion(browser, site):
    context = browser.new_context(viewport=PHONE, reduced_motion="reduce", service_workers="block")
    page = context.new_page()
    page.goto(f"{site}{PART}")
    page.locator("[data-step-by='1']").first.click()
    moving = page.evaluate("document.getAnimations().filter((each) => each.playState === 'running').length")
    context.close()
    assert moving == 0


def test_a_correction_note_is_copied_with_its_section_and_a_link_that_opens_the_check(browser, site):
    context = browser.new_context(
        viewport=PHONE, service_workers="block", permissions=["clipboard-read", "clipboard-write"]
    )
    page = context.new_page()
    page.goto(f"{site}{PART}?edition=2020")
    note = page.locator(".correction").first
    note.locator("summary").click()
    note.locator("[data-copy-note]").click()
    expect(note.locator("[data-copy-note]")).to_have_text("Note copied")
    *lines, link = page.evaluate("navigator.clipboard.readText()").strip().splitlines()
    said = "\n".join(lines)
    check = page_data("parts/main-bonding-jumper").checks[0]
    assert f"Observed: {check.observed}" in said and f"Required: {check.required}" in said
    assert "2020 edition: 250.24(B)" in said and "2023" not in said
    assert link == f"{site}{PART}?edition=2020#check-{check.id}"
    page.goto(link)
    expect(page.locator(f"#check-{check.id} dl")).to_be_visible()
    context.close()


def test_an_exercise_opens_in_the_edition_that_the_reader_chose(page, site):
    page.goto(f"{site}{PART}")
    choose_edition(page, "2020")
    page.locator(".exercise summary").click()
    page.locator(".exercise details a").click()
    expect(page.locator(".result .answer")).to_contain_text("4/0 AWG", timeout=60_000)
    expect(page).to_have_url(re.compile(r"main-bonding-jumper\.html\?edition=2020&.*said=4(/|%2F)0-copper"))


@pytest.mark.slices(3)
@pytest.mark.parametrize("room", ["parts", "places", "calculators"])
def test_every_page_of_a_room_prints_on_two_sheets_with_edition_date_link_and_safety(browser, site, room, slice_number):
    context = context_for_reading(browser)
    page = context.new_page()
    long = {}
    for name in pages(room)[slice_number::3]:
        page.goto(f"{site}{name}.html?edition=2020")
        printed = PdfReader(io.BytesIO(page.pdf(format="Letter")))
        # Print joins letters and breaks lines where it likes.
        text = normalize("NFKC", "".join(sheet.extract_text() for sheet in printed.pages))
        text = "".join(text.split())
        for words in ("2020 edition", "Printed", f"{name}.html?edition=2020", "lock out and tag out"):
            assert "".join(words.split()) in text, (name, words)
        if len(printed.pages) > 2:
            long[name] = len(printed.pages)
    context.close()
    assert long == {}


def test_on_paper_the_answers_of_the_exercises_come_after_every_question(browser, site):
    context = context_for_reading(browser)
    page = context.new_page()
    page.goto(f"{site}exercises.html?edition=2023")
    sheets = PdfReader(io.BytesIO(page.pdf(format="Letter"))).pages
    # Print joins letters and breaks lines where it likes.
    text = "".join(normalize("NFKC", "".join(sheet.extract_text() for sheet in sheets)).split())
    context.close()

    def printed(words: str) -> str:
        return "".join(words.split())

    asked = [page_data(name).exercise for name in pages() if page_data(name).exercise]
    last_question = max(text.index(printed(each.question[:60])) for each in asked)
    answers = [text.index(printed(each.answer[:40])) for each in asked]
    head, foot = text.index(printed("on the last pages")), text.index(printed("Worked answers"), last_question)
    assert head < last_question < foot < min(answers)
    assert all(text.count(printed(each.answer[:60])) == 1 for each in asked)


def test_the_whole_handbook_is_bound_in_the_order_of_its_menu(browser, site_folder, tmp_path):
    chosen = ("index.html", "parts/bonding.html", PART, "places/pool.html")
    book = PdfReader(write_book(site_folder, browser, "2017", only=chosen, target=tmp_path / "book.pdf"))
    assert [entry["/Title"] for entry in book.outline] == [
        "Start here",
        "Bonded and bonding",
        "Main bonding jumper",
        "Pool, spa and fountain",
    ]
    for sheet in book.pages:
        text = sheet.extract_text()
        assert "2017 edition" in text and "test for absence of voltage" in text
    led_to = [link.get_object()["/Dest"][0].get_object() for sheet in book.pages for link in sheet.get("/Annots", [])]
    starts = [book.get_destination_page_number(entry) for entry in book.outline]
    assert led_to and all(target in [book.pages[start] for start in starts] for target in led_to)


def test_a_lost_page_is_asked_for_in_the_handbook_alone(page, site):
    for lost, link in (("parts/main-bonding-jumper.html", f"{site}parts/main-bonding-jumper.html"), ("../../x", None)):
        page.goto(f"{site}404.html?lost={lost}")
        told = page.locator("[data-lost-page]")
        if link:
            expect(told).to_be_visible()
            assert told.locator("a").evaluate("link => link.href") == link
        else:
            expect(told).to_be_hidden()
