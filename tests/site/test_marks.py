"""Marks on pages: a ring for each, its words for whoever hears it, and one sentence that tells what the rings mean."""

import re

import pytest

from calc.editions import EDITIONS
from calc.rulebook import rule
from calc.trace import MARK_WORDS
from site_assets.build.by_edition import section
from site_assets.build.marks_key import with_marks_key
from site_assets.render.marks import key_html, mark_html
from tests.site.pages import SITE, article, html_files

RING = re.compile(r'<span class="mark" data-mark="(\w+)">(.*?)</span>')
TOLD = re.compile(r'<p class="(?:marks-key|answer-basis)">.*?</p>|<span class="marked">.*?</span>')
UNVERIFIED = mark_html("memory")


def test_the_key_stands_below_the_heading_of_the_section_with_the_first_ring():
    sections = f"## What\n\nA wire {UNVERIFIED}.\n\n## Then\n\n{UNVERIFIED}\n"
    page = with_marks_key(f"# Pool\n\nLead.\n\n## Why\n\nBecause.\n\n{sections}")
    assert page.count('class="marks-key"') == 1
    before, after = page.split('<p class="marks-key">')
    assert before.endswith("## What\n\n") and "A wire" in after and "not verified" in after


def test_a_ring_in_the_lead_has_its_key_before_the_first_heading_and_a_page_without_rings_has_none():
    page = with_marks_key(f"# Pool\n\nLead {UNVERIFIED}.\n\n## Why\n\nBecause.\n")
    assert page.index("Lead") < page.index("marks-key") < page.index("## Why")
    assert with_marks_key("# Pool\n\n## Why\n\nBecause.\n") == "# Pool\n\n## Why\n\nBecause.\n"


def test_only_the_editions_that_show_a_ring_are_told_of_it():
    by_edition = (
        f'<span class="by-edition"><span data-edition="2017 2020">A</span>'
        f'<span data-edition="2023 2026">B {UNVERIFIED}</span></span>'
    )
    page = with_marks_key(f"# Pool\n\n## Why\n\n{by_edition}\n")
    told = dict(re.findall(r'<div data-edition="([^"]+)">(.*?)</div>', page))
    assert list(told) == ["2023 2026"] and "not verified" in told["2023 2026"]


def test_words_beside_a_ring_need_no_key_and_an_example_tells_its_own():
    assert "marks-key" not in with_marks_key(f'## A\n\n<span class="marked">{UNVERIFIED} words</span>\n')
    assert "marks-key" not in with_marks_key(f'## A\n\n<div class="example">{UNVERIFIED}</div>\n')


def test_a_section_that_nobody_verified_wears_the_ring_in_its_edition_and_a_confirmed_one_none(marked):
    key = "jumpers/supply_side_size"
    marked(key, "2026", "memory")
    assert rule(key, "2023").mark == "confirmed", "else this proves nothing"
    html = section(key)
    parts = re.findall(r'data-edition="([^"]+)">(.*?)(?=<span data-edition|$)', html)
    assert [editions for editions, part in parts if 'data-mark="memory"' in part] == ["2026"]


@pytest.mark.parametrize("mark", MARK_WORDS)
def test_a_ring_is_heard_in_the_words_of_its_mark(mark):
    assert str(MARK_WORDS[mark]) in mark_html(mark)
    assert f'data-mark="{mark}"' in key_html([mark])


def test_every_ring_of_every_page_is_told_by_a_key_or_by_words_beside_it():
    kinds = 0
    for file in html_files():
        html = file.read_text(encoding="utf-8")
        body = article(html) if "<article" in html else ""
        told = "".join(TOLD.findall(body))
        for mark in {mark for mark, words in RING.findall(body) if words}:
            kinds += 1
            assert f'data-mark="{mark}"' in told, (file.name, mark)
    assert kinds > 30


def test_the_pool_page_has_its_rings_and_no_badge_words_in_sight():
    pool = article((SITE / "places" / "pool.html").read_text(encoding="utf-8"))
    rings = [words for mark, words in RING.findall(pool) if mark == "memory" and words]
    assert len(rings) > 30
    seen = re.sub(r'<span class="unseen">.*?</span>', "", pool)
    assert "unverified: read the book" not in seen
    assert 1 <= seen.count("not verified: read the book before you rely on it") <= len(EDITIONS)
