"""What readers type, dictate or paste finds the right page among the first three, and mostly as the first.

`python -m tests.browser.test_search SITE` prints the table.
"""

import os
import re
import sys
import tomllib
from pathlib import Path

import pytest
from playwright.sync_api import expect, sync_playwright

from site_assets.build.search_page import FIELD, FIRST, FOUND, LINK, PAGE, STATUS
from site_assets.build.serve import Server
from site_assets.setup.browser import browser_variables
from site_assets.setup.paths import NODE_MODULES
from tests.browser.conftest import PHONE, context_for_reading, watch

QUERIES = [
    query
    for file in sorted(Path(__file__).parent.glob("must_find*.toml"))
    for query in tomllib.loads(file.read_text(encoding="utf-8"))["query"]
]
SHOWN = 3
AXE = NODE_MODULES / "axe-core" / "axe.min.js"
# Runs the search's own module on every query at once.
FIND_ALL = """async (queries) => {
  const page = document.querySelector("script[src$='scripts/page.js']").src;
  const { find, prepared } = await import(new URL("search-ranking.js", page));
  const address = new URL(document.querySelector("form[data-search]").dataset.search, location.href);
  const index = prepared(await (await fetch(address)).json());
  return queries.map((query) => find(index, query).pages.map(({ at }) => at.replace(".html", "")));
}"""
WIDE = "document.documentElement.scrollWidth > innerWidth"


def found_by_all(page, queries: list[str]) -> list[list[str]]:
    """Return for each query the pages that it finds, best first, without their ending."""
    return [list(dict.fromkeys(pages)) for pages in page.evaluate(FIND_ALL, queries)]


def place_of(found: list[str], query) -> int:
    """Return the place of the first right page, from 1, or 0 where none was found."""
    return next((number for number, page in enumerate(found, 1) if page in query["find"]), 0)


@pytest.fixture(scope="module")
def found(browser, site):
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.goto(f"{site}{PAGE}")
    yield lambda queries: found_by_all(page, queries)
    context.close()


@pytest.fixture(scope="module")
def places(found):
    queries = [query["typed"] for query in QUERIES]
    answers = zip(QUERIES, found(queries), strict=True)
    return {query["typed"]: place_of(pages, query) for query, pages in answers}


@pytest.fixture
def searching(page, site):
    page.goto(f"{site}{PAGE}")
    return page


def shown(page, typed: str):
    """Put words into the field as dictation and paste do, without a key, and return the rows that are shown."""
    page.fill(FIELD, typed)
    expect(page.locator(STATUS)).not_to_be_empty()
    return page.locator(FOUND)


def test_the_queries_are_enough_and_half_of_them_come_from_an_outsider():
    by = [query["by"] for query in QUERIES]
    assert len(by) >= 120 and by.count("outsider") * 2 >= len(by)


@pytest.mark.parametrize("query", QUERIES, ids=lambda query: query["typed"])
def test_the_right_page_is_among_the_first_three(places, query):
    assert 1 <= places[query["typed"]] <= SHOWN


def test_the_right_page_is_the_first_for_most(places):
    assert list(places.values()).count(1) >= 0.85 * len(places)


def misspelt(typed: str) -> str:
    """Return a query with one letter left out in the middle of its longest word."""
    longest = max(typed.split(), key=len)
    middle = len(longest) // 2
    return typed.replace(longest, longest[:middle] + longest[middle + 1 :])


def test_one_letter_wrong_finds_as_well(found):
    long = [query for query in QUERIES if any(len(word) > 5 and word.isalpha() for word in query["typed"].split())]
    wrong = [misspelt(query["typed"]) for query in long]
    missed = [
        typed
        for typed, query, pages in zip(wrong, long, found(wrong), strict=True)
        if not 1 <= place_of(pages, query) <= SHOWN
    ]
    assert len(long) > 60 and len(missed) <= 0.1 * len(long), missed


def test_words_that_come_without_a_key_are_looked_up_and_stay_in_the_address(searching):
    rows = shown(searching, "dock")
    expect(rows.first).to_contain_text("Dock")
    expect(searching).to_have_url(re.compile(r"[?&]q=dock\b"))
    searching.reload()
    expect(searching.locator(FIELD)).to_have_value("dock")
    expect(rows.first).to_contain_text("Dock")


def test_what_is_typed_while_the_page_loads_stays_and_is_looked_up(page, site):
    held = []
    page.route("**/scripts/search-ranking.js", lambda route: held.append(route))
    page.goto(f"{site}{PAGE}", wait_until="commit")
    page.fill(FIELD, "dock")
    page.unroute("**/scripts/search-ranking.js")
    for request in held:
        request.continue_()
    expect(page.locator(FOUND).first).to_contain_text("Dock")


def test_a_mark_is_a_whole_word(searching):
    for typed in ("flex", "main", "ground"):
        shown(searching, typed)
        marks = searching.eval_on_selector_all(
            f"{FOUND} mark",
            """marks => marks.map((mark) => [mark.textContent, mark.previousSibling?.textContent ?? "",
                                              mark.nextSibling?.textContent ?? ""])""",
        )
        assert marks
        for word, before, after in marks:
            assert not before[-1:].isalnum() and not after[:1].isalnum(), (before, word, after)


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("ground it", ["Equipment grounding conductor", "Grounding electrode conductor"]),
        ("ground wire size 200 amp", ["Equipment grounding conductor", "Grounding electrode conductor"]),
        ("tornillo verde", ["Main bonding jumper", "Grounding screw"]),
        ("shock", ["Everyone out", "Nobody goes in to help", "People away", "Everyone away"]),
    ],
)
def test_a_name_with_two_senses_asks_which_and_answers_each(searching, typed, told):
    shown(searching, typed)
    senses = searching.locator(f"{FIRST} .found-sense")
    expect(senses).to_have_count(len(told))
    for sense, words in zip(senses.all(), told, strict=True):
        expect(sense).to_contain_text(words)
        assert searching.request.get(sense.evaluate("link => link.href")).ok


def test_a_breaker_in_the_query_gets_its_size_at_once(searching):
    shown(searching, "ground wire size 200 amp")
    # Table 250.122: not over 200 A, 6 AWG copper.
    expect(searching.locator(".found-size")).to_contain_text("6 AWG copper")
    sense = searching.locator(".found-sense", has=searching.locator(".found-size"))
    assert sense.get_attribute("href") == "calculators/equipment-grounding-conductor.html?device=200"


@pytest.mark.parametrize("typed", ["grounded conductor", "ground rod", "ground ring"])
def test_a_name_with_one_sense_asks_nothing(searching, typed):
    shown(searching, typed)
    expect(searching.locator(".found-sense")).to_have_count(0)


def test_what_is_not_covered_says_so_with_what_to_do_first(searching):
    for typed in ("rv pedestal", "hot skin", "casa rodante"):
        shown(searching, typed)
        told = searching.locator(f"{FIRST} .not-covered-found")
        expect(told).to_contain_text("Not covered here")
        expect(told.locator("li").first).to_contain_text("everyone away")


def test_a_search_that_finds_nothing_leads_on(searching):
    expect(shown(searching, "zzqqx")).to_have_count(0)
    expect(searching.locator(STATUS)).to_contain_text("zzqqx")
    elsewhere = searching.locator(".search-elsewhere a")
    for link in elsewhere.all():
        expect(link).to_be_visible()
        assert searching.request.get(link.evaluate("link => link.href")).ok
    shown(searching, "elctrod")
    searching.locator(".found-nearest button").first.click()
    expect(searching.locator(FOUND).first).to_be_visible()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_what_a_search_shows(browser, site, scheme):
    context = context_for_reading(browser, viewport=PHONE, color_scheme=scheme, bypass_csp=True)
    page = context.new_page()
    for typed in ("ground wire size 200 amp", "rv pedestal", "elctrod"):
        page.goto(f"{site}{PAGE}?q={typed}")
        expect(page.locator(f"{FIRST} h2")).to_be_visible()
        page.add_script_tag(path=AXE)
        report = page.evaluate("axe.run(document, { resultTypes: ['violations'] })")
        assert [(each["id"], node["target"]) for each in report["violations"] for node in each["nodes"]] == []
    context.close()


def test_an_older_link_with_words_to_search_for_leads_to_the_search(page, site):
    page.goto(f"{site}index.html?q=green%20screw")
    expect(page.locator(FOUND).first).to_contain_text("Main bonding jumper")


def test_the_search_is_one_press_away_and_fits_a_phone(browser, site):
    context = browser.new_context(viewport=PHONE, service_workers="block")
    page = context.new_page()
    faults = watch(page)
    page.goto(f"{site}parts/bonding.html")
    page.locator(LINK).first.click()
    expect(page.locator(FIELD)).to_be_focused()
    shown(page, "ground wire size 200 amp")
    assert not page.evaluate(WIDE)
    for press in page.locator(f"{FIRST} a, {FOUND} a").all():
        assert press.bounding_box()["height"] >= 48
    context.close()
    assert not faults


def main(folder: str) -> None:
    """Print each query with the place of its first right page."""
    with sync_playwright() as playwright, Server(Path(folder), base="/handbook/here/") as server:
        browser = playwright.chromium.launch(
            executable_path=os.environ["CHROMIUM"], args=os.environ.get("CHROMIUM_ARGS", "").split()
        )
        page = browser.new_page()
        page.goto(f"{server.address}{PAGE}")
        answers = found_by_all(page, [query["typed"] for query in QUERIES])
        for query, pages in zip(QUERIES, answers, strict=True):
            place = place_of(pages, query)
            print(f"{place or 'none':>4}  {query['typed']:40} {', '.join(pages[:SHOWN])}")
        browser.close()


if __name__ == "__main__":
    os.environ.update(browser_variables())
    main(sys.argv[1])
