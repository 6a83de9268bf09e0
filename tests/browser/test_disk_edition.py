"""The disk edition, unpacked and opened without any network: it reads, searches, draws, calculates and prints."""

import gzip
import json
import shutil
from urllib.parse import urlencode, urlsplit

import pytest
from playwright.sync_api import expect

from calc.registry import CALCULATORS
from site_assets.build.disk import FIRST, PAGES, hand_over
from site_assets.build.search_page import FIELD, FOUND, LINK
from site_assets.render.page_response import answer_request
from tests.browser.conftest import PHONE, watch
from tests.browser.disk_edition import ASK_ALL, bytes_of, examples, unpacked
from tests.cases.read import FOLDER, cases

START = 120_000  # ms on a loaded machine: from a disk the browser compiles Python anew for each page
SLUG = "main-bonding-jumper"
# A folder as people name them: what an address writes otherwise must not matter.
PLACE = "USB stick #1 (50% full) à jour"
SLICES = 12
ANSWER = "[data-result] [data-outcome=answer]"


@pytest.fixture(scope="session")
def disk(site_folder, tmp_path_factory):
    """Return the unpacked disk edition."""
    return unpacked(site_folder, tmp_path_factory.mktemp("disk") / PLACE)


@pytest.fixture
def reader(browser):
    """Yield a page without a network; it fails the test on any error, and on a request that leaves the disk."""
    context = browser.new_context(viewport=PHONE, offline=True)
    page = context.new_page()
    faults = watch(page)
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    yield page
    context.close()
    assert faults == []
    assert {urlsplit(url).scheme for url in asked} <= {"file", "blob", "data"}


def address(disk, page):
    return (disk / PAGES / page).as_uri()


def test_the_first_page_leads_on_and_its_links_lead_through_the_handbook(reader, disk):
    reader.goto((disk / FIRST).as_uri())
    reader.wait_for_url("**/index.html*")
    expect(reader.locator("#state-panel")).to_contain_text("Everything is in this folder")
    expect(reader.locator(".to-save")).to_be_hidden()
    reader.locator("main article a[href='parts/main-bonding-jumper.html']").first.click()
    reader.wait_for_url("**/parts/main-bonding-jumper.html*")
    expect(reader.locator("figure.drawing svg").first).to_be_visible()
    reader.locator(".drawing-steps button").last.click()
    expect(reader.locator(".drawing-steps p").first).to_contain_text("1. ")
    assert reader.locator(".unanswered").count() == 0


def test_the_first_page_alone_says_to_unpack_the_archive(browser, disk, tmp_path):
    shutil.copyfile(disk / FIRST, tmp_path / FIRST)
    page = browser.new_page(offline=True)
    page.goto((tmp_path / FIRST).as_uri())
    expect(page.locator("body")).to_contain_text("Unpack the whole zip first")
    page.close()


def test_what_is_typed_is_answered_a_mistake_is_named_and_the_link_opens_on_the_same_numbers(reader, disk):
    reader.goto(address(disk, f"calculators/{SLUG}.html"))
    reader.fill("[name=conductor]", "500 kcmil")
    reader.fill("[name=sets]", "2")
    reader.click("form.calculator button[type=submit]")
    shown = reader.locator(ANSWER)
    expect(shown.locator(".answer-size")).to_have_text("2/0 AWG copper wire or larger", timeout=START)
    link = reader.url
    reader.fill("[name=conductor]", "500 bananas")
    reader.click("form.calculator button[type=submit]")
    expect(reader.locator("#error-conductor")).to_be_visible()
    expect(reader.locator("[data-result] [data-outcome=fix]")).to_be_visible()

    reader.goto("about:blank")
    reader.goto(link)
    expect(reader.locator("[name=conductor]")).to_have_value("500kcmil")
    expect(reader.locator("[name=sets]")).to_have_value("2")
    expect(shown.locator(".answer-size")).to_have_text("2/0 AWG copper wire or larger", timeout=START)
    reader.evaluate("dispatchEvent(new Event('beforeprint'))")
    reader.emulate_media(media="print")
    expect(shown.locator(".answer-size")).to_be_visible()
    expect(reader.locator("[data-print-link]")).to_contain_text("conductor=500kcmil&sets=2")
    assert reader.locator("main article details:not([open])").count() == 0
    assert reader.pdf().startswith(b"%PDF-")


def test_the_search_finds_a_page_and_opens_it(reader, disk):
    reader.goto(address(disk, "glossary.html"))
    reader.locator(LINK).first.click()
    reader.fill(FIELD, "main bonding jumper")
    reader.locator(FOUND, has_text="Main bonding jumper").first.locator("a").first.click()
    reader.wait_for_url("**/parts/main-bonding-jumper.html*")


def test_a_table_is_answered_and_can_be_kept(reader, disk):
    reader.goto(address(disk, f"calculators/{SLUG}.html"))
    reader.click("[data-many] > summary")
    reader.fill("#many-text", "conductor,sets\n3/0,1\n500 kcmil,2")
    reader.click("[data-many-run]")
    keep = reader.locator("[data-many-keep]")
    expect(keep).to_be_visible(timeout=START)
    with reader.expect_download() as download:
        keep.click()
    assert "2/0" in download.value.path().read_text(encoding="utf-8-sig")


@pytest.mark.slices(SLICES)
def test_it_answers_as_python_does_here(reader, disk, slice_number):
    reader.goto(address(disk, f"calculators/{SLUG}.html"))
    slugs = list(CALCULATORS)[slice_number::SLICES]
    questions = [*examples(slugs), *worked(slugs)]
    for (slug, query), shown in zip(questions, reader.evaluate(ASK_ALL, questions), strict=True):
        assert shown == json.loads(answer_request(slug, query)), f"{slug}?{query}"


def worked(slugs):
    """Return the first worked case of each of these calculators, in the first edition that it is for."""
    found = {}
    for file in sorted(FOLDER.rglob("*.toml")):
        slug = file.stem.replace("_", "-")
        if slug in slugs:
            edition, case = next(iter(cases(file.relative_to(FOLDER).with_suffix("").as_posix())))
            found[slug] = urlencode({"edition": edition} | {name: str(value) for name, value in case["inputs"].items()})
    return [list(each) for each in found.items()]


@pytest.mark.parametrize("harm", ["cut short", "changed in one figure", "of another version"])
def test_a_file_that_is_not_whole_is_told_in_words_for_a_disk(browser, disk, tmp_path, harm):
    folder = tmp_path / "harmed"
    shutil.copytree(disk, folder)
    (rules,) = folder.rglob("rules.zip.js")
    if harm == "cut short":
        rules.write_text(f'{rules.read_text()[: rules.stat().st_size // 2 // 4 * 4]}");\n')
    elif harm == "changed in one figure":
        content = bytes_of(rules)
        at = content.index(b"0.125")
        hand_over(rules.with_suffix(""), gzip.compress(content[:at] + b"0.126" + content[at + 5 :]))
    else:
        page = folder / PAGES / f"calculators/{SLUG}.html"
        html = page.read_text(encoding="utf-8")
        version = html.split("&quot;version&quot;: &quot;")[1][:12]
        page.write_text(html.replace(version, "0" * 12), encoding="utf-8")
    reader = browser.new_page(offline=True)
    reader.goto(address(folder, f"calculators/{SLUG}.html"))
    reader.fill("[name=conductor]", "3/0")
    reader.click("form.calculator button[type=submit]")
    state = reader.locator("form.calculator .runtime-state")
    expect(state).to_contain_text("Unpack the whole zip again into a new, empty folder", timeout=START)
    expect(reader.locator("[name=conductor]")).to_have_value("3/0")
    reader.close()
