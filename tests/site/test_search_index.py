"""The index of the search: how it takes texts apart, what people say, and how large it may be."""

import gzip
import json
import re

import pytest

from site_assets.build.page_data import DOCS, PageDataError
from site_assets.build.search_index import FILE, KINDS
from site_assets.build.search_text import page_text
from site_assets.build.search_words import words_of
from site_assets.build.spoken import FILE as SPOKEN
from site_assets.build.spoken import read_spoken
from tests.site.pages import SITE

# What a phone on a bad signal fetches when the search opens; the theme's took 330 kB.
PACKED_AT_MOST = 160_000
# Table 250.122, 2017 and 2023 editions: the smallest copper equipment grounding conductor, AWG or kcmil.
COPPER = {
    15: "14 AWG", 20: "12 AWG", 30: "10 AWG", 60: "10 AWG", 70: "8 AWG", 100: "8 AWG", 110: "6 AWG", 200: "6 AWG",
    225: "4 AWG", 300: "4 AWG", 400: "3 AWG", 500: "2 AWG", 600: "1 AWG", 800: "1/0 AWG", 1000: "2/0 AWG",
    1200: "3/0 AWG", 1600: "4/0 AWG", 2000: "250 kcmil", 2500: "350 kcmil", 3000: "400 kcmil", 4000: "500 kcmil",
    5000: "700 kcmil", 6000: "800 kcmil",
}  # fmt: skip


@pytest.fixture(scope="module")
def index():
    return json.loads((SITE / FILE).read_text(encoding="utf-8"))


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("250.102(C)(1).", ["250.102(c)(1)"]),
        ("(208Y/120 V)", ["208y/120", "v"]),
        ("1/0 and/or 3-pole", ["1/0", "and", "or", "3", "pole"]),
        ("Puente de unión; don’t", ["puente", "de", "union", "dont"]),
    ],
)
def test_a_text_is_taken_apart_where_its_words_end(text, words):
    assert words_of(text) == words


def test_a_page_is_read_with_cells_apart_and_marked_words_whole():
    html = (
        "<nav>menu</nav><article><h1 id=a>Bar<a class=headerlink>#</a></h1><p>The <b>ground</b>ing bar.</p>"
        "<h2 id=b>Size<small>it</small></h2><table><tr><td>one</td><td>two</td></tr></table>"
        "<div data-search-exclude><p>hidden</p></div></article><footer>foot</footer>"
    )
    read = page_text(html)
    assert (read.title, read.lead, read.rest) == ("Bar", "The grounding bar.", "one two")
    assert read.headings == [("b", "Size it")]


def test_every_page_but_the_search_and_its_lists_can_be_found(index):
    found = {page["at"] for page in index["pages"]}
    built = {path.relative_to(SITE).as_posix() for path in SITE.rglob("*.html")} - {"404.html"}
    assert found == {path for path in built if not path.startswith("schema/")}
    assert {page["kind"] for page in index["pages"] if "kind" in page} == {str(words) for words in KINDS.values()}


def test_every_sense_leads_to_an_anchor_that_is_there(index):
    places = [sense["at"] for slang in index["slang"] for sense in slang["senses"]]
    places += [each["at"] for each in index["notCovered"]]
    for place in places:
        path, _, anchor = place.partition("#")
        html = (SITE / path).read_text(encoding="utf-8")
        assert not anchor or f'id="{anchor}"' in html, place


def test_a_breaker_gets_the_size_of_the_table_and_nothing_else(index):
    (sizes,) = [sense["sizes"] for slang in index["slang"] for sense in slang["senses"] if "sizes" in sense]
    for amps, size in COPPER.items():
        said, address = sizes[str(amps)]
        assert said == f"{amps} A breaker or fuse: {size} copper wire or larger."
        assert address == f"calculators/equipment-grounding-conductor.html?device={amps}"


def test_who_feels_a_shock_is_told_to_get_away_before_anything_else(index):
    (shock,) = [slang for slang in index["slang"] if ["tingle"] in slang["said"]]
    assert shock["asks"].startswith("Get everyone away first.")
    (vehicle,) = [each for each in index["notCovered"] if ["hot", "skin"] in each["said"]]
    assert "everyone away" in vehicle["steps"][0]


def test_the_index_stays_small(index):
    assert len(gzip.compress((SITE / FILE).read_bytes(), 9)) < PACKED_AT_MOST


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ('page = "places/panel"', 'page = "places/panels"', "there is no page 'places/panels'"),
        ('page = "places/panel"', 'page = "places/panel"\nsaying = "x"', "a sense knows no 'saying'"),
        ('\n[[slang.sense]]\nname = "For rain, on the roof"', '\n[[unread]]\nname = "For rain"', "one sense"),
        ('title = "Arc flash"', "", "'title'"),
    ],
)
def test_what_people_say_is_refused_where_it_leads_nowhere(old, new, told):
    written = (DOCS / SPOKEN).read_text(encoding="utf-8")
    assert read_spoken(written).slang and written.count(old) >= 1
    with pytest.raises(PageDataError, match=re.escape(told)):
        read_spoken(written.replace(old, new))
