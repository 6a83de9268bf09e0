"""Every built page: safety text, links, own origin, sections of all editions, published anchors."""

from pathlib import Path
from urllib.parse import unquote, urlsplit

import pytest

from calc import CALCULATORS, EDITIONS
from calc.rulebook import rule, rule_keys
from site_assets.build.form_parts import asked_first, begins_unchosen
from site_assets.build.page_data import title_of
from tests.site.pages import SITE, Page, html_files, ids_of

ROOT = Path(__file__).parents[2]
PAGES = html_files()
SAFETY = (
    "de-energize",
    "lock out",
    "tag out",
    "test for absence of voltage",
    "before and again after",
    "qualified persons",
    "never open a grounding or bonding connection on an energized system",
    "adopted code",
    "local amendments",
    "authority having jurisdiction",
    "no substitute",
)


def name(path: Path) -> str:
    return path.relative_to(SITE).as_posix()


@pytest.mark.parametrize("path", PAGES, ids=name)
def test_every_page_carries_the_whole_safety_text(path):
    words = " ".join(Page(path).safety_text.lower().split())
    assert [each for each in SAFETY if each not in words] == []


@pytest.mark.parametrize("path", PAGES, ids=name)
def test_every_link_inside_the_handbook_leads_to_a_file_and_an_anchor(path):
    dead = []
    for tag, attributes in Page(path).elements:
        target = attributes.get("href") or attributes.get("src")
        if not target or tag == "base":
            continue
        parts = urlsplit(target)
        assert not parts.scheme and not parts.netloc, f"{target} leads outside"
        base = SITE if parts.path.startswith("/") else path.parent
        file = (base / unquote(parts.path.lstrip("/"))).resolve() if parts.path else path
        file = file / "index.html" if file.is_dir() else file
        if not file.is_file() or (parts.fragment and file.suffix == ".html" and parts.fragment not in ids_of(file)):
            dead.append(target)
    assert dead == []


@pytest.mark.parametrize("path", PAGES, ids=name)
def test_ids_are_not_given_twice(path):
    ids = [attributes["id"] for _, attributes in Page(path).elements if "id" in attributes]
    assert sorted(ids) == sorted(set(ids))


def test_the_menu_calls_a_calculator_by_the_title_of_its_page():
    menu = (ROOT / "mkdocs.yml").read_text(encoding="utf-8")
    for slug in CALCULATORS:
        title = title_of(f"calculators/{slug}")
        named = f'"{title}"' if ": " in title else title
        assert f"- {named}: calculators/{slug}.md\n" in menu, slug


def test_the_table_of_figures_names_every_rule_with_its_section_in_every_edition():
    page = Page(SITE / "method" / "figures.html")
    for key in rule_keys():
        assert key.replace("/", "-") in page.ids
        for edition in EDITIONS:
            assert rule(key, edition).section in page.text


def test_a_cited_section_stands_in_the_page_for_every_edition():
    words = (SITE / "parts" / "main-bonding-jumper.html").read_text(encoding="utf-8")
    assert 'data-edition="2017 2020"' in words and 'data-edition="2023"' in words and 'data-edition="2026"' in words


def test_the_drawing_has_a_title_a_description_and_a_text_twin():
    page = Page(SITE / "parts" / "main-bonding-jumper.html")
    assert {"main-bonding-jumper-drawing-title", "main-bonding-jumper-drawing-description"} <= page.ids
    assert "Without the jumper it stops here" in page.text
    assert [tag for tag, _ in page.elements].count("svg") > 0


def test_a_choice_without_a_default_or_asked_first_starts_with_none_made():
    for slug, calculator in CALCULATORS.items():
        first = asked_first(calculator)
        page = Page(SITE / "calculators" / f"{slug}.html")
        empty = [attributes for tag, attributes in page.elements if tag == "option" and attributes["value"] == ""]
        asked = [
            name
            for name, field in calculator.fields.items()
            if len(field.choices) > 3 and not field.several
            and (calculator.defaults.get(name) is None or begins_unchosen(calculator, name, first))
        ]
        assert len(empty) == len(asked) and all("selected" in attributes for attributes in empty)


def test_a_field_for_a_bare_number_brings_up_the_number_keys():
    for slug, calculator in CALCULATORS.items():
        page = Page(SITE / "calculators" / f"{slug}.html")
        keys = {each.get("name"): each.get("inputmode") for tag, each in page.elements if tag == "input"}
        assert all(keys[name] == "decimal" for name, asked in calculator.fields.items() if asked.number)
