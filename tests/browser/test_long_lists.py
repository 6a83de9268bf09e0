"""The box above each long list: it filters as one types, it is fast, and without scripts the list is whole."""

import pytest
from playwright.sync_api import expect

from site_assets.build.list_filter import ROWS
from site_assets.setup.paths import NODE_MODULES
from tests.browser.conftest import PHONE, context_for_reading

BOX = "#list-filter"
SAID = "[data-list-filter] [role=status]"
AXE = NODE_MODULES / "axe-core" / "axe.min.js"
MANY = 10_000
# Rows are copied into the last list until there are enough of them.
GROW = """([rows, many]) => {
  const given = [...document.querySelectorAll(rows)];
  for (let row = given.length; row < many; row += 1) given.at(-1).after(given[row % given.length].cloneNode(true));
}"""
# From a letter to rows that are laid out, in ms; the first reads the rows too.
TYPE = """(texts) => {
  const box = document.querySelector("#list-filter");
  return texts.map((text) => {
    const began = performance.now();
    box.value = text;
    box.dispatchEvent(new Event("input", { bubbles: true }));
    document.body.getBoundingClientRect();
    return performance.now() - began;
  });
}"""


@pytest.fixture(scope="module")
def reader(browser):
    context = context_for_reading(browser, viewport=PHONE, bypass_csp=True)
    yield context.new_page()
    context.close()


def shown(page, path):
    return page.locator(ROWS[path]).locator("visible=true")


@pytest.mark.parametrize("path", ROWS)
def test_a_word_leaves_the_rows_that_have_it_and_no_word_leaves_all(reader, site, path):
    reader.goto(f"{site}{path}.html")
    before = shown(reader, path).count()
    word = shown(reader, path).last.text_content().split()[0].strip(":,.")
    reader.fill(BOX, word.upper())
    kept = shown(reader, path)
    assert 1 <= kept.count() <= before
    assert all(word.lower() in " ".join(words.split()).lower() for words in kept.all_text_contents())
    expect(reader.locator(SAID)).to_contain_text(str(kept.count()))
    reader.fill(BOX, "zzqqx")
    expect(shown(reader, path)).to_have_count(0)
    expect(reader.locator(SAID)).to_contain_text("zzqqx")
    reader.fill(BOX, "")
    expect(shown(reader, path)).to_have_count(before)


def test_headings_without_rows_go_and_come_back(reader, site):
    reader.goto(f"{site}checks.html")
    headings = reader.locator("article h2").locator("visible=true")
    before = headings.count()
    reader.fill(BOX, "shore equipment")
    expect(headings).to_have_count(1)
    expect(headings).to_contain_text("Dock")
    reader.fill(BOX, "")
    expect(headings).to_have_count(before)


def test_an_accent_or_a_capital_more_or_less_finds_too(reader, site):
    reader.goto(f"{site}glossary-spanish.html")
    reader.fill(BOX, "UNION PRINCIPAL")
    expect(shown(reader, "glossary-spanish").first).to_contain_text("puente de unión principal")


def test_a_list_of_ten_thousand_rows_costs_a_letter_no_more_than_its_rows(reader, site):
    reader.goto(f"{site}book-index.html")
    rows = reader.locator(ROWS["book-index"]).count()
    few = sum(sorted(reader.evaluate(TYPE, ["r", "ro", "rod", "ro", "r", "", "rod"]))[1:-1])
    reader.reload()
    reader.evaluate(GROW, [ROWS["book-index"], MANY])
    many = sum(sorted(reader.evaluate(TYPE, ["r", "ro", "rod", "ro", "r", "", "rod"]))[1:-1])
    assert many / few < 3 * MANY / rows  # if each row cost the others something, 18


@pytest.mark.parametrize("path", ["glossary", "editions/2017-to-2020"])
def test_axe_finds_nothing_while_a_list_is_filtered(reader, site, path):
    reader.goto(f"{site}{path}.html")
    reader.fill(BOX, "copper")
    reader.add_script_tag(path=AXE)
    report = reader.evaluate("axe.run(document, { resultTypes: ['violations'] })")
    assert [(each["id"], node["target"]) for each in report["violations"] for node in each["nodes"]] == []


def test_without_scripts_the_list_is_whole_and_has_no_box(browser, site):
    context = browser.new_context(java_script_enabled=False, service_workers="block")
    page = context.new_page()
    page.goto(f"{site}glossary.html")
    expect(page.locator(BOX)).to_be_hidden()
    assert shown(page, "glossary").count() > 100
    context.close()
