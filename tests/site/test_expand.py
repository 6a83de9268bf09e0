"""The pages as the first stage gives them: plain Markdown, with nothing left for a generator to know of us."""

import re

import pytest

from site_assets.build.expand import EXPANDED, PAGES
from site_assets.build.finish import lost_page
from site_assets.build.first_mentions import with_first_mentions_explained
from site_assets.build.frame import FrameError, Place, with_frame
from site_assets.build.front_matter import joined, parted
from site_assets.build.page_data import DOCS, page_data, pages
from site_assets.build.settings import Settings, settings
from site_assets.setup.paths import ROOT

EXPANDED_PAGES = ROOT / EXPANDED / PAGES
PLACES = "".join(f"<!-- place: {name} -->" for name in ("first-scripts", "styles", "scripts", "bar", "top", "foot"))


def explained(markdown: str, page: str = "places/service") -> list[str]:
    return re.findall(r'<a class="term"[^>]*>([^<]*)</a>', with_first_mentions_explained(page, markdown))


@pytest.mark.parametrize(
    ("markdown", "words"),
    [
        ("A raceway, and the raceway again.", ["raceway"]),
        ("- **Raceways** in a row", ["Raceways"]),
        ("# Raceway\n\nA splice.", ["splice"]),
        ("[A raceway](raceway.md){ .button } with a splice", ["splice"]),
        ("`raceway` splice", ["splice"]),
        ("| raceway | it |\n|---|---|\n| splice | one |\n", ["splice"]),
        ("raceway\n:   a splice\n", ["splice"]),
        ('!!! danger "A raceway"\n\n    A splice.', ["raceway", "splice"]),
        ('<p class=also-called>raceway</p>\n\n<span title="raceway">splice</span>', ["splice"]),
        ("<div>raceway <p>splice</p></div>", ["splice"]),
        ("<div markdown>\n\nraceway\n\n</div>", ["raceway"]),
        ("<details><summary>raceway</summary><dl><dt>raceway</dt><dd>splice</dd></dl></details>", ["splice"]),
    ],
)
def test_running_text_leads_to_the_meaning_of_a_term_and_headings_links_and_code_do_not(markdown, words):
    assert explained(markdown) == words


def test_lists_of_words_explain_none_of_them():
    assert explained("A raceway.", "glossary") == []


def test_every_page_of_docs_is_expanded_and_holds_no_call():
    names = {file.relative_to(DOCS) for file in DOCS.rglob("*.md")}
    assert {file.relative_to(EXPANDED_PAGES) for file in EXPANDED_PAGES.rglob("*.md")} == names
    for name in names:
        assert not re.search(r"\{\{|\{%", (EXPANDED_PAGES / name).read_text(encoding="utf-8")), name


def test_what_an_author_wrote_at_the_head_of_a_page_is_kept():
    for file in DOCS.rglob("*.md"):
        own, _ = parted(file.read_text(encoding="utf-8"))
        told, _ = parted((EXPANDED_PAGES / file.relative_to(DOCS)).read_text(encoding="utf-8"))
        assert set(own.get("tags", ())) <= set(told["tags"])
        assert {name: said for name, said in own.items() if name != "tags"}.items() <= told.items()


def test_a_part_and_a_place_carry_their_cautions_to_the_last_stage():
    for page in pages():
        told, _ = parted((EXPANDED_PAGES / f"{page}.md").read_text(encoding="utf-8"))
        assert tuple(told["cautions"]) == page_data(page).cautions


def test_a_head_goes_on_and_comes_off_unchanged():
    told, page = {"tags": ["puente de unión", "a: b"], "cautions": []}, "# Title\n\n---\n\nText\n"
    assert parted(joined(told, page)) == (told, page)
    assert parted(page) == ({}, page)


def test_the_menu_names_every_page_once():
    menu = settings(ROOT).menu
    assert set(menu) == {file.relative_to(DOCS).with_suffix("").as_posix() for file in DOCS.rglob("*.md")}
    assert len(menu) == len(set(menu))


@pytest.mark.parametrize(
    ("address", "leads"),
    [("", "kit/1a/scripts/page.js"), ("https://host.example/field/book", "/field/book/kit/1a/scripts/page.js")],
)
def test_the_page_for_unknown_addresses_finds_its_scripts_from_any_folder(address, leads):
    html = f'<a href="/index.html">Start</a>{PLACES}'
    made = lost_page(html, "kit/1a", Settings("Handbook", address, ()))
    assert f'src="{leads}"' in made
    assert ('href="/index.html"' in made) == bool(address)


@pytest.mark.parametrize("place", ["bar", "top", "foot"])
def test_a_page_that_a_generator_gave_no_place_for_the_safety_text_does_not_go_out(place):
    said, whole = Settings("Handbook", "", ()), Place("parts/bonding.html", "../")
    assert 'data-safety="line"' in with_frame(PLACES, whole, "kit/1a", said)
    assert 'data-safety="full"' in with_frame(PLACES, whole, "kit/1a", said)
    with pytest.raises(FrameError, match=f"parts/bonding.html: no place for {place}"):
        with_frame(PLACES.replace(f"<!-- place: {place} -->", ""), whole, "kit/1a", said)
