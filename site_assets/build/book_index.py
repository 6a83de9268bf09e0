"""The index at the end of the book: every word and every section, and the pages that have it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from functools import cache
from itertools import groupby
from typing import Any
from unicodedata import normalize

import jinja2
from jinja2 import nodes

from calc.messages import message
from calc.rulebook import rule, rule_keys
from site_assets.build.by_edition import by_edition
from site_assets.build.glossary import terms
from site_assets.build.page_data import DOCS, ROOMS, page_data, pages, title_of
from site_assets.render.marks import mark_html
from site_assets.render.text import text

ROOMS_WITH_CITATIONS = (*ROOMS, "calculators")
LEFT_OUT = "\n## What this page doesn't cover"
LONGEST = 250
# Sorted after every article of the code.
CHAPTER = 1_000
OTHER_TEXTS = 10_000
# The calls of a page that cite rules: their arguments that are written out as "room/rule".
CITING = {"section", "figure", "figure_with_section"}


def cited_in(markdown: str) -> list[str]:
    """Return the keys of the rules that the calls of a page's Markdown cite, in order."""
    calls = (each for each in jinja2.Environment().parse(markdown).find_all(nodes.Call))
    written = [call.args for call in calls if isinstance(call.node, nodes.Name) and call.node.name in CITING]
    texts = [each.value for arguments in written for each in arguments if isinstance(each, nodes.Const)]
    return [text for text in texts if "/" in str(text)]


@cache
def citing_pages() -> dict[str, list[str]]:
    """Return for every rule that a page cites the pages that cite it, in their text or in their checks."""
    cited: dict[str, list[str]] = {}
    for page in pages(*ROOMS_WITH_CITATIONS):
        keys = cited_in((DOCS / f"{page}.md").read_text(encoding="utf-8"))
        if page.partition("/")[0] in ROOMS:
            data = page_data(page)
            keys += [*data.about, *(key for check in data.checks for key in check.sections)]
        for key in dict.fromkeys(keys):
            cited.setdefault(key, []).append(page)
    return cited


@cache
def left_out_everywhere() -> frozenset[str]:
    """Return the rules that most calculators cite as what they leave out; the index does not list them one by one."""
    leaving = [
        (DOCS / f"{page}.md").read_text(encoding="utf-8").partition(LEFT_OUT)[2] for page in pages("calculators")
    ]
    keys = [set(cited_in(words)) for words in leaving]
    every = {key for cited in keys for key in cited}
    return frozenset(key for key in every if sum(key in cited for cited in keys) * 2 > len(keys))


def index_of_words() -> str:
    """Return every term, what people say instead, its Spanish and every page of a part or a place, by the alphabet."""
    leads: dict[str, list[str]] = {}
    for each in terms():
        page = f"{each.page}.html" if each.page else f"glossary.html#{each.anchor}"
        title = title_of(each.page) if each.page else str(message("glossary"))
        for words in (each.term, *each.also, *filter(None, [each.spanish])):
            leads.setdefault(words, []).append(_link(page, title))
    for page in pages():
        for words in (title_of(page), *page_data(page).also_called):
            leads.setdefault(words, []).append(_link(f"{page}.html", title_of(page)))
    return _grouped(leads, _plain, lambda words: (_letter(words), f"words-{_letter(words).lower()}"))


def index_of_spanish() -> str:
    """Return every Spanish word with the English that the glossary has for it, those not seen in print marked."""
    leads: dict[str, list[str]] = {}
    for each in terms():
        mark = "" if each.spanish_seen else f" {mark_html('memory')}"
        for words in filter(None, each.spanish.split("; ")):
            english = f'<span lang="en">{_link(f"glossary.html#{each.anchor}", each.term)}{mark}</span>'
            leads.setdefault(words, []).append(english)
    listed = _grouped(leads, _plain, lambda words: (_letter(words), f"spanish-{_letter(words).lower()}"))
    return f'<div lang="es">{listed}</div>'


def index_of_sections() -> str:
    """Return every section of each edition that a page cites, in the order of the book, and the pages."""

    def listed(edition: str) -> str:
        places: dict[str, list[str]] = {}
        for key in rule_keys():
            links = places.setdefault(rule(key, edition).section, []) if key in citing_pages() else []
            for page in citing_pages().get(key, ()):
                if key in left_out_everywhere() and page.startswith("calculators/"):
                    links.append(text(message("the calculators, under “What this page doesn't cover”")))
                else:
                    links.append(_link(f"{page}.html", title_of(page)))

        def group(place: str) -> tuple[str, str]:
            name = _article(place)
            return name, f"{edition}-{re.sub(r'[^a-z0-9]+', '-', name.lower())}"

        return _grouped(places, _in_order, group)

    return by_edition(listed, element="div")


def _grouped(leads: dict[str, list[str]], order: Callable[..., Any], group: Callable[[str], tuple[str, str]]) -> str:
    """Return the rows in their order under the names of their groups, and links to these names first."""
    groups = [(named, list(rows)) for named, rows in groupby(sorted(leads, key=order), key=group)]
    jump = " ".join(f'<a href="#{anchor}">{text(name)}</a>' for (name, anchor), _ in groups)
    listed = "".join(
        f'<h3 id="{anchor}">{text(name)}</h3><ul class="book-index">{_rows(leads, rows)}</ul>'
        for (name, anchor), rows in groups
    )
    return f'<p class="letters">{jump}</p>{listed}'


def _rows(leads: dict[str, list[str]], rows: Iterable[str]) -> str:
    return "".join(f"<li>{text(words)}: {', '.join(dict.fromkeys(leads[words]))}</li>" for words in rows)


def _link(address: str, words: str) -> str:
    return f'<a href="{address}">{text(words)}</a>'


def _plain(words: str) -> str:
    """Return words as the alphabet sorts them: no accents, no capitals."""
    return "".join(letter for letter in normalize("NFKD", words.lower()) if letter.isalnum() or letter == " ")


def _letter(words: str) -> str:
    first = _plain(words)[:1].upper()
    return first if first.isalpha() else "0-9"


def _article(place: str) -> str:
    """Return the article, or the chapter of tables, that a section belongs to; of the longest article ten sections."""
    number, *rest = (part for part, _ in _in_order(place))
    if number == OTHER_TEXTS:
        return str(message("Other texts"))
    if number >= CHAPTER:
        return str(message("Chapter {number}", number=number - CHAPTER))
    if number != LONGEST or len(rest) < 2 or rest[1] == OTHER_TEXTS:
        return str(number)
    ten = rest[1] // 10 * 10
    return f"{number}.{max(1, ten)}–{ten + 9}"


def _in_order(place: str) -> list[tuple[int, str]]:
    """Sort 250.4 before 250.24, tables and articles by their number, chapters and other texts after them."""
    chapter, bare = place.startswith("Chapter "), re.sub(r"^(?:Table|Article|Chapter)\s+", "", place)
    parts = [(int(part), "") if part.isdigit() else (OTHER_TEXTS, part) for part in re.findall(r"\d+|\D+", bare)]
    return [(parts[0][0] + CHAPTER, ""), *parts[1:]] if chapter else parts
