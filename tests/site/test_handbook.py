"""The pages of parts and places: one order, drawings, checks, notes, exercises, links both ways, nothing uncited."""

import re
from pathlib import Path

import pytest

from calc.editions import EDITIONS
from calc.rulebook import rule, rule_keys
from site_assets.build.book_index import cited_in, citing_pages
from site_assets.build.glossary import Term, terms
from site_assets.build.page_data import DOCS, PageDataError, check_at, linked_pages, page_data, pages
from site_assets.build.runtime import is_computed_with
from site_assets.diagrams import drawing, drawing_slugs
from tests.site.pages import SITE, Page

ROOT = Path(__file__).parents[2]
ORDER_OF_A_PART = [
    "Why it is there",
    "Where it starts and lands",
    "Drawing",
    "Size it",
    "Prove it",
    "Check it",
    "Write it up",
    "Often confused with",
    "Try it",
]
ORDER_OF_A_PLACE = [
    "Why it matters",
    "What goes where",
    "Check it",
    "Write it up",
    "Try it",
    "What this page doesn't cover",
]
FULL_PLACES = (
    "service meter-and-wireway panel transformer generator separate-building feeder-and-branch-raceways "
    "flexible-raceway buried-elbow knockouts boxes-and-receptacles water-gas-and-steel"
).split()
# The cautions that belong to a place, by words of theirs that its safety text must hold.
CAUTIONS = {
    "places/pool": "keep everyone out",
    "places/dock": "swimmer",
    "places/generator": "start by itself",
    "places/service": "Only the utility can make them dead",
    "places/farm": "Animals feel",
    "places/solar": "Sunlight",
    "places/hazardous-location": "spark",
    "places/patient-care": "Patients",
    "calculators/pool-bonding-plan": "keep everyone out",
    "calculators/deck-voltage": "keep everyone out",
    "calculators/livestock-equipotential-plane": "Animals feel",
    "calculators/waterside-equipotential-plane": "swimmer",
    "calculators/generator-schedule": "start by itself",
    "parts/main-bonding-jumper": "Only the utility can make them dead",
}


def headings(page: str) -> list[str]:
    return re.findall(r"^## ([^{\n]+?)\s*(?:\{.*\})?$", (DOCS / f"{page}.md").read_text(encoding="utf-8"), re.MULTILINE)


def built(page: str) -> str:
    return (SITE / f"{page}.html").read_text(encoding="utf-8")


def in_order(wanted: list[str], found: list[str]) -> bool:
    return [each for each in found if each in wanted] == wanted


@pytest.mark.parametrize("page", pages("parts"))
def test_every_part_is_told_in_the_same_order(page):
    assert in_order(ORDER_OF_A_PART, headings(page))


@pytest.mark.parametrize("page", pages("places"))
def test_every_place_gives_its_reason_first_and_last_what_it_leaves_out(page):
    found = headings(page)
    assert in_order(ORDER_OF_A_PLACE, found)
    assert found[0] == "Why it matters" and found[-1] == "What this page doesn't cover"


@pytest.mark.parametrize("page", [*pages("parts"), *(f"places/{slug}" for slug in FULL_PLACES)])
def test_every_part_and_every_place_told_in_full_has_its_drawing(page):
    slug = page.partition("/")[2]
    read = Page(SITE / f"{page}.html")
    assert {f"drawing-{slug}", f"{slug}-drawing-title", f"{slug}-drawing-description"} <= read.ids
    assert 'class="drawing-twin"' in built(page) or "class=drawing-twin" in built(page)


@pytest.mark.parametrize("slug", [slug for slug in drawing_slugs() if slug != "take-a-bond-away"])
def test_a_drawing_is_told_in_words_and_its_steps_have_a_stretch_and_a_number_each(slug):
    figure = drawing(slug)
    told = len(re.findall("<li>", figure))
    stretches = len(re.findall('class="path-step"', figure))
    assert told >= 3
    assert stretches in (0, told) and len(re.findall('class="step-mark"', figure)) in (0, told)
    assert "style=" not in figure and 'role="img"' in figure


@pytest.mark.parametrize("page", pages())
def test_every_page_has_checks_with_their_anchors_and_an_exercise(page):
    data = page_data(page)
    assert len(data.checks) >= 3 and data.exercise
    assert {f"check-{check.id}" for check in data.checks} <= Page(SITE / f"{page}.html").ids


@pytest.mark.parametrize("page", pages())
def test_every_check_says_what_to_look_for_why_and_how_to_make_it_right(page):
    for check in page_data(page).checks:
        told = (
            check.name,
            check.look_for,
            check.pass_when,
            check.why,
            check.make_right,
            check.observed,
            check.required,
        )
        assert all(told), check.address
        assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", check.id)


@pytest.mark.parametrize("page", pages())
def test_a_note_names_the_sections_of_every_edition(page):
    text = Page(SITE / f"{page}.html").text
    for check in page_data(page).checks:
        for edition in EDITIONS:
            places = "; ".join(dict.fromkeys(rule(key, edition).section for key in check.sections))
            assert f"{edition} edition: {places}." in text, check.address


def test_the_main_bonding_jumper_comes_first_wherever_its_check_applies():
    shown = [page for page in pages() if page_data(page).first_checks]
    assert len(shown) >= 8
    for page in shown:
        first = page_data(page).first_checks[0]
        if any(address.startswith("parts/main-bonding-jumper#") for address in page_data(page).first_checks):
            assert first.startswith("parts/main-bonding-jumper#"), page


def test_a_check_that_is_not_there_is_refused_by_name():
    with pytest.raises(PageDataError, match="parts/main-bonding-jumper#lost: there is no such check"):
        check_at("parts/main-bonding-jumper#lost")


def test_see_also_leads_both_ways():
    linked = linked_pages()
    for page in pages():
        assert linked[page], page
        for other in linked[page]:
            assert page in linked[other], (page, other)
            assert f"{other}.html" in built(page).replace('href="', 'href="../').replace("../../", "") or (
                other.partition("/")[2] in built(page)
            )


@pytest.mark.parametrize(("page", "words"), CAUTIONS.items())
def test_a_place_carries_its_own_cautions_at_its_top_and_in_its_safety_text(page, words):
    assert Page(SITE / f"{page}.html").safety_text.count(words) >= 2


def test_every_rule_is_cited_by_a_page_or_computed_with():
    code = b"\n".join(file.read_bytes() for file in (ROOT / "calc").rglob("*.py"))
    unused = [key for key in rule_keys() if key not in citing_pages() and not is_computed_with(key, code)]
    assert unused == []


def test_the_index_counts_every_rule_that_a_call_of_a_page_cites():
    several = 'See {{ section("places/one", "places/two") }}, {{ figure("raceways/three", "inches", kind="a/b") }}.'
    assert cited_in(f"{several} In words: section(\"places/four\").") == ["places/one", "places/two", "raceways/three"]
    assert "places/boxes-and-receptacles" in citing_pages()["places/box_dedicated_screw"]


def test_every_glossary_term_stands_on_its_page_with_its_spanish():
    page = Page(SITE / "glossary.html")
    for each in terms():
        assert each.anchor in page.ids and each.meaning in page.text and each.spanish in page.text
    assert len({each.anchor for each in terms()}) == len(terms())


def test_a_term_that_is_called_otherwise_keeps_its_anchor():
    assert Term("raceway", "A channel for wires.").anchor == "raceway"
    assert Term("wiring channel", "A channel for wires.", id="raceway").anchor == "raceway"


def test_the_names_of_the_parts_are_words_of_the_glossary():
    explained = {each.page for each in terms()}
    assert set(pages("parts")) <= explained


def test_first_mentions_lead_to_the_glossary_and_never_more_than_once():
    for page in pages():
        led_to = re.findall(r'class="?term"? href="?[^"> ]*#([a-z0-9-]+)', built(page))
        assert led_to and len(led_to) == len(set(led_to)), page


def test_the_index_names_every_cited_section_of_every_edition():
    text = Page(SITE / "book-index.html").text
    for key in citing_pages():
        for edition in EDITIONS:
            assert f"{rule(key, edition).section}: " in text
