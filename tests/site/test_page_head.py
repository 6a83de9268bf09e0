"""Around a title stand the place in the menu, the neighbour one needs, and the gravest caution, before all else."""

import tomllib
from pathlib import Path

import pytest

from calc.editions import EDITIONS
from site_assets.build.cautions import CAUTIONS
from site_assets.build.page_head import headings_of, where_line, with_head
from site_assets.build.settings import settings
from site_assets.build.unverified import unverified
from site_assets.setup.paths import ROOT
from tests.site.pages import SITE

SETTINGS = settings(ROOT)
PAGE = "<article class=x><h1 id=a>Title</h1><p>Lead</p><h2 id=write-it-up>Write it up</h2></article>"


def test_the_gravest_caution_stands_right_below_the_title_and_the_others_do_not():
    told = with_head(PAGE, "places/pool.html", "../", ["Keep out of the water.", "Tie off."], SETTINGS)
    assert "</h1><p class=\"page-caution\" data-safety=\"caution\">Keep out of the water.</p><p>Lead" in told
    assert "Tie off." not in told


def test_a_page_without_a_caution_gets_none():
    assert "caution" not in with_head(PAGE, "parts/metal-raceways.html", "../", [], SETTINGS)


def test_a_page_that_has_no_address_gets_no_place():
    assert with_head(PAGE, "", "", [], SETTINGS) == PAGE


@pytest.mark.parametrize(
    ("path", "words"),
    [
        # Counted by hand in the menu of mkdocs.yml.
        ("parts/main-bonding-jumper.html", "Part 3 of 17"),
        ("places/pool.html", "Place 15 of 21"),
        ("calculators/main-bonding-jumper.html", "Size jumpers"),
        ("method/figures.html", "Method"),
    ],
)
def test_a_page_says_what_it_is(path, words):
    assert f"<span>{words}</span>" in where_line("", path, "../", SETTINGS)


def test_a_page_at_the_top_of_the_menu_has_no_such_line():
    assert where_line("", "glossary.html", "", SETTINGS) == ""


def test_write_it_up_is_offered_where_the_page_has_notes_and_nowhere_else():
    link = '<a href="#write-it-up">Write it up</a>'
    assert link in where_line('<h2 id="write-it-up">', "parts/bonding.html", "../", SETTINGS)
    assert "<a" not in where_line("<h2>", "parts/bonding.html", "../", SETTINGS)


def test_a_calculator_leads_to_what_it_sizes():
    line = where_line("", "calculators/main-bonding-jumper.html", "../", SETTINGS)
    assert '<a href="../parts/main-bonding-jumper.html">What it is</a>' in line
    plan = where_line("", "calculators/pool-bonding-plan.html", "../", SETTINGS)
    assert '<a href="../places/pool.html">Pool, spa and fountain</a>' in plan
    assert "<a" not in where_line("", "calculators/shock-limits.html", "../", SETTINGS)


def test_the_headings_of_a_page_are_named_without_their_own_links():
    html = '<h2 id="a">One <b>and</b> two<a class="x" href="#a" title="y">#</a></h2><h3 id="b">Below</h3>'
    assert headings_of(html) == [("a", "One and two")]


def test_every_page_with_a_caution_shows_the_first_of_its_own():
    shown = 0
    for file in [*SITE.glob("parts/*.html"), *SITE.glob("places/*.html")]:
        data = file.relative_to(SITE).with_suffix(".toml").as_posix()
        cautions = tomllib.loads((ROOT / "docs" / data).read_text(encoding="utf-8")).get("cautions", [])
        html = file.read_text(encoding="utf-8")
        assert html.count('data-safety="caution"') == bool(cautions), data
        if cautions:
            told = str(CAUTIONS[cautions[0]]).replace("'", "&#x27;")
            assert f'data-safety="caution">{told}</p>' in html, data
            shown += 1
    assert shown > 20


@pytest.mark.parametrize("edition", EDITIONS)
def test_what_is_not_verified_in_an_edition_is_counted_from_the_files_of_the_rules(edition):
    stated = [
        rule["editions"][edition]
        for file in Path(ROOT, "calc", "rules").rglob("*.toml")
        if "editions" in (rule := tomllib.loads(file.read_text(encoding="utf-8")))
        and isinstance(rule["editions"], dict)
    ]
    open_ones = sum(each["mark"] == "memory" for each in stated)
    told = str(unverified()[edition].count)
    assert told == (f"{open_ones} of {len(stated)} not verified" if open_ones else "all verified")
