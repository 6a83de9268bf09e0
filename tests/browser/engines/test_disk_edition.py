"""The disk edition in each engine, opened from the disk: it reads, draws, searches, calculates and prints."""

from __future__ import annotations

import json

import pytest

from calc.registry import CALCULATORS
from site_assets.build.disk import FIRST, PAGES
from site_assets.build.search_page import FIELD, FOUND, PAGE
from site_assets.render.page_response import answer_request
from tests.browser.disk_edition import ASK_ALL, examples, unpacked
from tests.browser.engines.conftest import ENGINES
from tests.browser.engines.window import CHOOSE_REST

pytestmark = pytest.mark.slices(len(ENGINES))

FORM = "calculators/main-bonding-jumper.html"
SUBMIT = "form.calculator button[type=submit]"
STARTED = "return document.querySelector('form.calculator[data-started]')"
# 1,000,000 cmil of copper lies in the row "over 600 through 1100 kcmil" of Table 250.102(C)(1).
ANSWER = "2/0 AWG copper wire or larger"
OPENED = "return location.pathname.endsWith(arguments[0]) && document.querySelector('.page-foot')"
ON_PAPER = """
  dispatchEvent(new Event("beforeprint"));
  return [document.querySelector("[data-print-link]").textContent,
          document.querySelectorAll("main article details:not([open])").length];
"""


@pytest.fixture(scope="module")
def disk(site_folder, tmp_path_factory):
    """Return the unpacked disk edition."""
    return unpacked(site_folder, tmp_path_factory.mktemp("disk") / "USB stick #1")


@pytest.fixture
def window(window_of, engine):
    """Yield a window of the engine; the test fails on any page's error."""
    opened = window_of(engine)
    opened.faults()
    yield opened
    opened.go("about:blank")
    assert opened.faults() == []


def open_page(window, disk, page):
    window.open((disk / PAGES / page).as_uri())


def test_the_first_page_leads_to_the_start_and_a_drawing_is_followed(window, disk):
    window.go((disk / FIRST).as_uri())
    window.wait(OPENED, "/index.html")
    open_page(window, disk, "parts/main-bonding-jumper.html")
    assert window.run("return document.querySelector('figure.drawing svg').getBoundingClientRect().width") > 200
    window.wait("return !document.querySelector('.drawing-steps').hidden")
    window.click(".drawing-steps button:last-of-type")
    assert window.text(".drawing-steps p").startswith("1. ")


def test_what_is_typed_is_answered_a_mistake_is_named_and_a_link_opens_on_the_same_numbers(window, disk):
    open_page(window, disk, FORM)
    window.wait(STARTED)
    window.run(CHOOSE_REST, "2")
    window.type("[name=conductor]", "500 kcmil")
    window.click(SUBMIT)
    assert window.text("[data-result] .answer-size") == ANSWER
    link = window.wait("return location.search.includes('sets=2') && location.href")
    window.type("[name=conductor]", " bananas")
    window.click(SUBMIT)
    window.wait("return document.querySelector('[data-result] [data-outcome=fix]')")
    assert window.text("#error-conductor")

    window.open(link)
    assert window.text("[data-result] .answer-size") == ANSWER
    assert window.run("return document.querySelector('[name=conductor]').value") == "500kcmil"
    printed, closed = window.run(ON_PAPER)
    assert "sets=2" in printed
    assert closed == 0


def test_the_search_finds(window, disk):
    window.resize(390, 844)
    open_page(window, disk, PAGE)
    window.type(FIELD, "bonding screw")
    assert "main bonding jumper" in window.text(FOUND).lower()


def test_calculators_answer_as_python_does_here(window, disk, slice_number):
    open_page(window, disk, FORM)
    questions = examples(list(CALCULATORS)[slice_number :: len(ENGINES)])
    replies = window.run(f"return ({ASK_ALL})(arguments[0])", questions)
    for (slug, query), shown in zip(questions, replies, strict=True):
        assert shown == json.loads(answer_request(slug, query)), f"{slug}?{query}"
