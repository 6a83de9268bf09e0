"""At a glance: situations with their answers in the page, in each edition, before any script."""

import re
import tomllib

import pytest

from calc.editions import EDITIONS
from calc.registry import CALCULATORS
from site_assets.build.at_a_glance import MAX_SITUATIONS, Glance, Situation, at_a_glance_html, glance_of
from site_assets.build.page_data import DOCS, PageDataError
from tests.site.pages import SITE

SIZING = [
    "main-bonding-jumper",
    "system-bonding-jumper",
    "supply-side-bonding-jumper",
    "equipment-bonding-jumper",
    "equipment-grounding-conductor",
    "grounded-conductor",
    "grounding-electrode-conductor",
    "water-pipe-bonding",
    "structural-metal-bonding",
]
# Choices that a situation may name, in its words; all others stand at their default.
CHOICES = {
    "copper": "copper",
    "aluminum": "aluminum",
    "single": "one jumper for all",
    "water-pipe": "water pipe",
    "rod": "rod",
    "concrete-encased": "concrete-encased",
    "structural-metal": "structural metal",
    "other-metal": "Other metal piping",
}
COUNTED = {"sets": ("set of", "sets of", "sets in"), "raceways": ("raceway", "raceways")}
# By hand from the tables named in the tests of each size: 250.102(C)(1), 250.122, 250.66, 250.104.
# (page, words, edition): size of copper, unless another metal is named
BY_HAND = [
    # 250.102(C)(1), as in tests/cases/jumpers/main_bonding_jumper.toml: 2 x 167,800 = 335,600 cmil, row through 350: 2.
    ("main-bonding-jumper", "2 sets of 3/0 AWG copper", "2023", "2 AWG"),
    # 4/0 aluminum is in the row 4/0 or 250 aluminum: 4.
    ("main-bonding-jumper", "1 set of 4/0 AWG aluminum", "2017", "4 AWG"),
    # 3 x 400,000 x 0.125 = 150,000 cmil: next listed size 3/0 (167,800).
    ("main-bonding-jumper", "3 sets of 400 kcmil copper", "2020", "3/0 AWG"),
    # 4 x 500,000 x 0.125 = 250,000 cmil.
    ("main-bonding-jumper", "4 sets of 500 kcmil copper", "2026", "250 kcmil"),
    # 4 x 400,000 x 0.125 = 200,000 cmil: 4/0 (211,600).
    ("system-bonding-jumper", "4 sets of 400 kcmil copper", "2023", "4/0 AWG"),
    # One in each raceway, by the set in it: 500 kcmil is in the row through 600: 1/0.
    ("supply-side-bonding-jumper", "2 sets of 500 kcmil copper in 2 raceways", "2023", "1/0 AWG"),
    # One for all: 3 x 600,000 x 0.125 = 225,000 cmil: 250 kcmil.
    ("supply-side-bonding-jumper", "3 sets of 600 kcmil copper in 3 raceways, one jumper for all", "2023", "250 kcmil"),
    # 250.122: 70 A is above 60, through 100: 8 copper, 6 aluminum.
    ("equipment-bonding-jumper", "70 A, copper", "2023", "8 AWG"),
    ("equipment-bonding-jumper", "70 A, aluminum", "2023", "6 AWG"),
    # 250.122(B): 12 AWG from 12 to 8 AWG: 6,530 x 16,510 / 6,530 = 16,510 cmil: 8.
    ("equipment-grounding-conductor", "20 A, copper, 8 AWG hot wires instead of 12 AWG", "2023", "8 AWG"),
    # 125 A is above 100, through 200: 6 copper, 4 aluminum.
    ("equipment-grounding-conductor", "125 A, copper", "2017", "6 AWG"),
    ("equipment-grounding-conductor", "125 A, aluminum", "2017", "4 AWG"),
    # 250.24: not smaller than 250.102(C)(1) asks, and 310.10: nothing in parallel smaller than 1/0.
    ("grounded-conductor", "2 sets of 3/0 AWG copper in 2 raceways", "2023", "1/0 AWG"),
    # 250.66: 2/0 or 3/0 copper, 4/0 or 250 aluminum: 4; a rod alone: 6; concrete-encased: 4; over 1,100: 3/0.
    ("grounding-electrode-conductor", "1 set of 4/0 AWG aluminum, water pipe", "2023", "4 AWG"),
    ("grounding-electrode-conductor", "2 sets of 500 kcmil copper, rod", "2023", "6 AWG"),
    ("grounding-electrode-conductor", "2 sets of 3/0 AWG copper, concrete-encased", "2023", "4 AWG"),
    ("grounding-electrode-conductor", "4 sets of 600 kcmil copper, water pipe", "2023", "3/0 AWG"),
    # 250.104(A): 2 x 1,000,000 x 0.125 = 250,000 cmil in 2017; from 2020 on no more than 3/0.
    ("water-pipe-bonding", "4 sets of 500 kcmil copper", "2017", "250 kcmil"),
    ("water-pipe-bonding", "4 sets of 500 kcmil copper", "2023", "3/0 AWG"),
    # 250.104(B): by the device of the circuit, 250.122: 30 A is above 20, through 60: 10.
    ("water-pipe-bonding", "Other metal piping, 30 A circuit", "2023", "10 AWG"),
    # 2 x 211,600 = 423,200 cmil, row through 600: 1/0.
    ("structural-metal-bonding", "2 sets of 4/0 AWG copper", "2023", "1/0 AWG"),
]  # fmt: skip


def answers(slug: str, edition: str) -> dict[str, str]:
    """Return what the HTML of a page shows for each situation in an edition, by the situation's words."""
    shown = {}
    for row in re.findall(r"<tr data-case=.*?</tr>", at_a_glance_html(slug, "../")):
        words = re.sub("<[^>]+>", "", re.search(r"<a [^>]*>(.*?)</a>", row)[1])
        cell = re.search(r"<td>(.*)</td>", row)[1]
        parts = re.findall(r'<span data-edition="([^"]+)">(.*?)</b>', cell)
        own = next((part for editions, part in parts if edition in editions.split()), cell)
        shown[words] = re.sub("<[^>]+>", "", re.search(r"<b>(.*?)(?:</b>|$)", own)[1])
    return shown


@pytest.mark.parametrize(("slug", "words", "edition", "size"), BY_HAND)
def test_a_situation_is_answered_as_worked_out_by_hand(slug, words, edition, size):
    assert answers(slug, edition)[words] == size


@pytest.mark.parametrize("slug", SIZING)
def test_the_words_of_a_situation_say_all_that_it_is_answered_for_and_no_more(slug):
    calculator, glance = CALCULATORS[slug], glance_of(slug)
    assert len({each.words for each in glance.situations}) == len(glance.situations) <= MAX_SITUATIONS
    for each in glance.situations:
        told = each.words
        for name, value in each.inputs.items():
            field = calculator.fields[name]
            shown = str(field.shown(field.read(value)))
            if name in COUNTED:
                shown = next(f"{shown} {noun}" for noun in COUNTED[name] if f"{shown} {noun}" in told)
            elif field.choices:
                shown = CHOICES[value]
            assert shown in told, (told, name, value)
            told = told.replace(shown, "", 1)
        left = re.findall(r"\d[\d/,]*", re.sub(r"\b1 set\b", "", told))
        assert not left, (each.words, left)
        assert "aluminum" not in told, each.words


@pytest.mark.parametrize("slug", SIZING)
def test_every_situation_stands_in_the_built_page_and_opens_its_own_case(slug):
    page = (SITE / "calculators" / f"{slug}.html").read_text(encoding="utf-8")
    assert at_a_glance_html(slug, "../").count("<tr data-case=") == page.count("<tr data-case=") > 4
    for each in glance_of(slug).situations:
        result = CALCULATORS[slug](edition="2023", **each.inputs)
        assert result.outcome == "answer" and str(result.answer.headline) in page


def test_what_stands_beside_most_sizes_is_said_once_and_the_others_say_their_own():
    html = at_a_glance_html("equipment-grounding-conductor", "../")
    assert html.count("Unless its row says otherwise: copper wire or larger.") == 1
    aluminum = re.search(r">125 A, aluminum|whole\">125 A</span>, aluminum", html)
    assert aluminum and "aluminum wire or larger" in html[aluminum.end() : aluminum.end() + 200]
    assert html.count("copper wire or larger") == 1 + html.count("copper wire or larger, in each of 2 raceways")


def test_a_sizing_page_alone_has_situations():
    beside = {file.stem for file in (DOCS / "calculators").glob("*.toml")}
    assert beside == set(SIZING)
    for file in (DOCS / "calculators").glob("*.toml"):
        assert set(tomllib.loads(file.read_text(encoding="utf-8"))) == {"heading", "situation"}


def test_a_situation_without_an_answer_does_not_build():
    fed = Situation("in a feeder panel", {"conductor": "3/0", "place": "feeder-panel"})
    glance = Glance("main-bonding-jumper", "Hot conductors", (fed,))
    with pytest.raises(PageDataError, match="has no answer in 2023"):
        glance.results("2023")


def test_a_size_that_rests_on_what_nobody_verified_wears_the_ring_in_that_edition_only(marked):
    marked("jumpers/supply_side_size", "2026", "memory")
    row = re.search(r"<tr data-case=.*?</tr>", at_a_glance_html("main-bonding-jumper", "../"))[0]
    parts = re.findall(r'data-edition="([^"]+)">.*?</b>(.*?)(?=<span data-edition|</td>)', row)
    by_edition = {edition: 'data-mark="memory"' in part for editions, part in parts for edition in editions.split()}
    assert by_edition == {edition: edition == "2026" for edition in EDITIONS}
    assert "not verified: read the book" in at_a_glance_html("main-bonding-jumper", "../")
