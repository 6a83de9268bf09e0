"""What readers type finds the right page among the first three.

`python -m tests.browser.test_search SITE` prints the table.
"""

import os
import sys
import tomllib
from pathlib import Path

import pytest
from playwright.sync_api import expect, sync_playwright

from site_assets.build.serve import Server
from site_assets.build.theme import FOUND_MORE, FOUND_PAGE, FOUND_TAGS, FOUND_TEXT, SEARCH_STATUS
from site_assets.setup.browser import browser_variables

QUERIES = [
    query
    for file in sorted(Path(__file__).parent.glob("must_find*.toml"))
    for query in tomllib.loads(file.read_text(encoding="utf-8"))["query"]
]
FIRST = 3


def found(page, typed: str) -> list[str]:
    """Return the pages that a search finds, best first, without their ending."""
    meta = page.locator(SEARCH_STATUS)
    box = page.locator("input[name=query]")
    box.fill("")
    box.press("Backspace")  # the search listens to keys
    expect(meta).to_contain_text("start searching")
    box.fill(typed)
    box.press("End")
    expect(meta).not_to_contain_text("start searching")
    links = page.eval_on_selector_all(f"{FOUND_PAGE} > a", "links => links.map((link) => new URL(link.href).pathname)")
    return list(dict.fromkeys(link.partition("/handbook/here/")[2].removesuffix(".html") for link in links))


@pytest.fixture(scope="module")
def searching(browser, site):
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.goto(f"{site}index.html")
    page.click("input[name=query]")
    yield page
    context.close()


def test_the_queries_are_enough_and_half_of_them_come_from_an_outsider():
    by = [query["by"] for query in QUERIES]
    assert len(by) >= 60 and by.count("outsider") * 2 >= len(by)


@pytest.mark.parametrize("query", QUERIES, ids=lambda query: query["typed"])
def test_the_right_page_is_among_the_first_three(searching, query):
    first = found(searching, query["typed"])[:FIRST]
    assert set(first) & set(query["find"]), first


def test_a_search_that_finds_nothing_leads_on(searching):
    assert found(searching, "zzqqx") == []
    elsewhere = searching.locator(".search-elsewhere a")
    expect(elsewhere.first).to_be_visible()
    for link in elsewhere.all():
        assert searching.request.get(link.evaluate("link => link.href")).ok


def test_a_result_is_a_name_and_a_line_of_whole_words(searching):
    found(searching, "green screw")
    row = searching.locator(FOUND_PAGE).first
    expect(row.locator(FOUND_TAGS).first).to_be_hidden()
    assert row.locator(FOUND_TEXT).first.bounding_box()["height"] < 120
    assert "is there Look for Service de-energized" in row.locator(FOUND_MORE).text_content()


def main(folder: str) -> None:
    """Print each query with the place of its first right page."""
    with sync_playwright() as playwright, Server(Path(folder), base="/handbook/here/") as server:
        browser = playwright.chromium.launch(
            executable_path=os.environ["CHROMIUM"], args=os.environ.get("CHROMIUM_ARGS", "").split()
        )
        page = browser.new_page()
        page.goto(f"{server.address}index.html")
        page.click("input[name=query]")
        for query in QUERIES:
            pages = found(page, query["typed"])
            place = next((number for number, each in enumerate(pages, 1) if each in query["find"]), 0)
            print(f"{place or 'none':>4}  {query['typed']:40} {', '.join(pages[:FIRST])}")
        browser.close()


if __name__ == "__main__":
    os.environ.update(browser_variables())
    main(sys.argv[1])
