"""What every reader needs, in each engine: reading, answers, search, tables, saving, pages, paper."""

from __future__ import annotations

import json
import threading
from collections.abc import Generator
from contextlib import contextmanager

import pytest

from site_assets.build.theme import FOUND_PAGE, SEARCH_BUTTON, SEARCH_FIELD
from site_assets.render.page_response import answer_request
from tests.browser.engines.conftest import ENGINES, SUB_PATH
from tests.browser.engines.window import CHOOSE_REST, ENTER
from tests.browser.test_table import command_line

pytestmark = pytest.mark.slices(len(ENGINES))

SLUG = "main-bonding-jumper"
FORM = f"calculators/{SLUG}.html"
PART = "parts/main-bonding-jumper.html"
CASE = "?edition=2023&conductor=500kcmil&sets=2"
# 1,000,000 cmil of copper lies in the row "over 600 through 1100 kcmil" of Table 250.102(C)(1).
ANSWER = "2/0 AWG copper wire or larger"
FIELD = "[name=conductor]"
SUBMIT = "form.calculator button[type=submit]"
SHOWN = "[data-result] .answer-size"
HELD = "runtime-state.js"  # page.js needs it, so no part of a page starts without it

STARTED = "return document.querySelector('form.calculator[data-started]')"
ASSUMED = "return new URL(location.href).searchParams.get('assumed')"  # the address follows the answer
VISIBLE = """
  const element = document.querySelector(arguments[0]);
  const { top, bottom } = element.getBoundingClientRect();
  return element.checkVisibility() && bottom > 0 && top < innerHeight;
"""
CHOOSE = """
  const list = document.querySelector(arguments[0]);
  list.value = arguments[1];
  list.dispatchEvent(new Event("change", { bubbles: true }));
"""
# The words of an answer's HTML, and those that are shown.
READS_AS = """
  const expected = document.createElement("div");
  expected.innerHTML = arguments[0];
  return [expected.textContent, document.querySelector("[data-result]").textContent];
"""
KEEP_WHAT_IS_MADE = """
  const make = URL.createObjectURL;
  URL.createObjectURL = (made) => { window.made = made; return make.call(URL, made); };
"""
BYTES_MADE = "return window.made && [...new Uint8Array(await made.arrayBuffer())]"
SAVE = """
  const panel = document.querySelector("[data-offline]");
  if (panel.dataset.offlineState === "none") panel.querySelector("[data-offline-do=save]").click();
  return panel.dataset.offlineState === "ready";
"""
# No engine but Chromium can be told to show a page as on paper, so the rules for paper are made to hold on the screen.
AS_ON_PAPER = """
  const groups = (rules) => [...rules].filter(({ media }) => media)
    .flatMap((rule) => [rule, ...groups(rule.cssRules ?? [])]);
  for (const sheet of document.styleSheets) {
    for (const { media } of groups(sheet.cssRules)) {
      if (/^print$/.test(media.mediaText)) media.mediaText = "all";
      else if (/^screen/.test(media.mediaText)) media.mediaText = "not all";
    }
  }
  dispatchEvent(new Event("beforeprint"));
"""


class Withheld(list):
    """The paths asked for, on a server that keeps one file back until it is released."""

    def __init__(self, name: str):
        super().__init__()
        self.name = name
        self.released = threading.Event()

    def append(self, path: str) -> None:
        super().append(path)
        if path.endswith(self.name):
            self.released.wait(60)


@contextmanager
def withheld(reader, name: str) -> Generator[None]:
    """Keep a file of the site back until the block ends."""
    reader.server.requested = Withheld(name)
    try:
        yield
    finally:
        reader.server.requested.released.set()


def open_form(reader, query: str = "") -> None:
    reader.open(FORM + query)
    reader.window.wait(STARTED)


def outcome(window, kind: str) -> str:
    return window.text(f"[data-result] [data-outcome={kind}]")


def test_a_page_reads_with_its_drawing_and_its_safety_line(reader):
    reader.open(PART)
    window = reader.window
    assert window.text("main h1").startswith("Main bonding jumper")
    assert "De-energize, lock out, test for absence of voltage" in window.text(".safety-line")
    assert window.run(VISIBLE, ".safety-line")
    assert window.run("return document.querySelector('figure svg').getBoundingClientRect().height") > 100
    assert window.run("return document.documentElement.scrollWidth <= innerWidth")


@pytest.mark.long
def test_a_calculator_answers_in_the_words_of_cpython(reader):
    open_form(reader)
    reader.window.run(CHOOSE_REST, "2")
    reader.window.type(FIELD, "500 kcmil")
    reader.window.click(SUBMIT)
    assert reader.window.text(SHOWN) == ANSWER
    open_form(reader, CASE)
    assert reader.window.text(SHOWN) == ANSWER
    reply = json.loads(answer_request(SLUG, CASE.removeprefix("?")))
    expected, shown = reader.window.run(READS_AS, reply["html"])
    assert shown == expected


@pytest.mark.turns(4)
def test_enter_in_a_field_before_the_scripts_have_run_is_kept_and_answered(reader):
    """WebKit gives the key to the list of suggestions that the typed size opens; no form hears of it there."""
    window = reader.window
    with withheld(reader, HELD):
        reader.open(FORM)
        window.run(CHOOSE_REST, "1")
        window.type(FIELD, f"3/0{ENTER}")
        assert "Your press is kept" in window.text("form.calculator .form-actions + .unanswered")
        assert window.run(STARTED) is None
    assert window.text(SHOWN) == "4 AWG copper wire or larger"
    assert window.run("return document.querySelectorAll('.unanswered').length") == 0
    assumed = window.wait(ASSUMED).split(",")
    assert "conductor" not in assumed and "sets" not in assumed and "place" in assumed


@pytest.mark.long
def test_enter_in_a_field_submits(reader):
    open_form(reader)
    reader.window.run(CHOOSE_REST, "1")
    reader.window.type(FIELD, f"3/0{ENTER}")
    assert reader.window.text(SHOWN) == "4 AWG copper wire or larger"


@pytest.mark.long
def test_a_number_stepped_three_times_before_the_scripts_have_run_is_three(reader):
    with withheld(reader, HELD):
        reader.open(FORM)
        reader.window.run(CHOOSE_REST, "")
        reader.window.type(FIELD, "3/0")
        for button in (*3 * ["[data-field=sets] [data-step='1']"], SUBMIT, SUBMIT):
            reader.window.click(button)
    # Three sets of 167,800 cmil each: the row "over 350 through 600 kcmil".
    assert reader.window.text(SHOWN) == "1/0 AWG copper wire or larger"
    assert "sets" not in reader.window.wait(ASSUMED).split(",")


@pytest.mark.long
def test_what_is_entered_before_the_scripts_have_run_stands_beside_a_links_other_inputs(reader):
    with withheld(reader, HELD):
        reader.open(FORM + CASE)
        reader.window.click("label:has([name=metal][value=aluminum])")
        reader.window.click(SUBMIT)
    assert reader.window.text(SHOWN).startswith("4/0 AWG aluminum")
    assert reader.window.run("return document.querySelector(arguments[0]).value", FIELD) == "500kcmil"


@pytest.mark.long
def test_the_three_other_ends_are_shown_with_what_to_do(reader):
    open_form(reader)
    window = reader.window
    window.run(CHOOSE_REST, "1")
    window.type(FIELD, f"5/0{ENTER}")
    assert "Enter a" in outcome(window, "fix")
    assert "Enter a" in window.text("#error-conductor")
    window.run("document.querySelector(arguments[0]).value = ''", FIELD)
    window.type(FIELD, f"3/0{ENTER}")
    assert window.text(SHOWN) == "4 AWG copper wire or larger"
    window.run(CHOOSE, "[name=place]", "feeder-panel")
    assert "equipment grounding conductor (250.122)" in outcome(window, "not_covered")
    open_form(reader, "?edition=2023&conductor=500kcmil&conductor_metal=unknown")
    assert "1/0 AWG copper wire or larger" in outcome(window, "depends")


@pytest.mark.long
def test_an_edition_that_is_chosen_stays_and_a_link_wins_for_its_visit_alone(reader):
    edition = "return document.documentElement.dataset.edition"
    reader.open(PART)
    reader.window.click(".frame-bar > .edition")
    reader.window.click("[data-choose-edition='2017']")
    assert reader.window.run(edition) == "2017"
    reader.open(f"{PART}?edition=2026")
    assert reader.window.run(edition) == "2026"
    reader.open(PART)
    assert reader.window.run(edition) == "2026"
    reader.window.click("[data-back-to='2017']")
    assert reader.window.run(edition) == "2017"
    reader.open(PART)
    assert reader.window.run(edition) == "2017"
    assert reader.window.text(".frame-bar > .edition b").endswith("2017")


@pytest.mark.turns(4)
def test_the_search_finds_a_part_by_a_name_that_people_say(reader):
    reader.open("index.html")
    reader.window.wait("return window.document$ !== undefined && document.readyState === 'complete'")
    if not reader.window.run(f"return document.querySelector('{SEARCH_FIELD}').checkVisibility()"):
        reader.window.click(SEARCH_BUTTON)
    reader.window.click(SEARCH_FIELD)
    reader.window.type(SEARCH_FIELD, "green screw")
    assert "Main bonding jumper" in reader.window.text(f"{FOUND_PAGE} > a")


@pytest.mark.long
def test_a_table_that_is_typed_comes_back_as_cpython_writes_it(reader):
    table = "label,conductor,sets\nPanel 1,3/0,1\nPanel 2,500kcmil,2\nPanel 3,5/0,1"
    open_form(reader)
    window = reader.window
    window.run(KEEP_WHAT_IS_MADE)
    window.run("document.querySelector('[data-many]').open = true")
    window.type("#many-text", table.replace("\n", " ")[:5])  # keys reach the field
    window.run("document.querySelector('#many-text').value = arguments[0]", table)
    window.click("[data-many-run]")
    assert "Answered: 2. To fix: 1." in window.text("[data-many-result]")
    # What is pasted counts as a file that a spreadsheet saved, with the mark of UTF-8.
    assert bytes(window.wait(BYTES_MADE)) == command_line(SLUG, table.encode("utf-8-sig"))
    assert window.run("return document.querySelector('[data-many-keep]').download").endswith("-answers.csv")


@pytest.mark.turns(4)
def test_saved_it_answers_with_the_server_gone(reader):
    window = reader.window
    open_form(reader)
    window.wait(SAVE)
    reader.server.stop()
    reader.open(PART)
    assert window.text("main h1").startswith("Main bonding jumper")
    open_form(reader, CASE)
    assert window.text(SHOWN) == ANSWER


@pytest.mark.turns(4)
def test_a_link_changes_pages_in_place_and_back_shows_the_answer_again(reader):
    window = reader.window
    open_form(reader, CASE)
    assert window.text(SHOWN) == ANSWER
    window.run("window.stayed = true")
    # WebKit's Back passes over a page that a script alone went on from, so the link is really pressed.
    window.click(f"main article a[href$='{PART}']")
    window.wait("return document.title.startsWith('Main bonding jumper')")
    assert window.run("return document.activeElement.matches('main h1')")
    window.back()
    assert window.text(SHOWN) == ANSWER
    assert window.run("return document.querySelector(arguments[0]).value", FIELD) == "500kcmil"
    assert window.run("return window.stayed && location.pathname").startswith(SUB_PATH)


@pytest.mark.long
def test_on_paper_an_answer_stands_with_its_inputs_edition_day_and_link(reader):
    window = reader.window
    open_form(reader, "?edition=2020&conductor=500kcmil&sets=2")
    assert window.text(SHOWN) == ANSWER
    window.run(AS_ON_PAPER)
    words = window.run("return document.body.innerText")
    for each in ("2/0 AWG", "2 × 500,000 = 1,000,000 cmil", "250.24(B)", "lock out and tag out", "2020 edition"):
        assert each in words
    foot = window.run("return document.querySelector('.print-footer').innerText")
    assert "edition=2020&conductor=500kcmil&sets=2" in foot
    hidden = "return !document.querySelector(arguments[0]).checkVisibility()"
    assert window.run(hidden, ".frame-bar") and window.run(hidden, ".answer-actions")
