"""The index at the end of the book: every word and every section, and the pages that have it."""

from __future__ import annotations

import re
from functools import cache

from calc.rulebook import rule, rule_keys
from calc.words import say
from site_assets.build.by_edition import by_edition
from site_assets.build.glossary import terms
from site_assets.build.page_data import DOCS, ROOMS, page_data, pages, title_of
from site_assets.render.answer import text

PLACES_WITH_CITATIONS = (*ROOMS, "calculators", "lessons")
_CITED_IN_MARKDOWN = re.compile(r"""(?:section|figure)\(\s*["']([a-z0-9_]+/[a-z0-9_]+)["']""")


@cache
def citing_pages() -> dict[str, list[str]]:
    """Give for every rule that a page cites the pages that cite it, in their text or in their checks."""
    cited: dict[str, list[str]] = {}
    for page in pages(*PLACES_WITH_CITATIONS):
        keys = _CITED_IN_MARKDOWN.findall((DOCS / f"{page}.md").read_text(encoding="utf-8"))
        if page.partition("/")[0] in ROOMS:
            data = page_data(page)
            keys += [*data.about, *(key for check in data.checks for key in check.sections)]
        for key in dict.fromkeys(keys):
            cited.setdefault(key, []).append(page)
    return cited


def index_of_words() -> str:
    """Give every term, what people say instead, its Spanish and every page of a part or a place, by the alphabet."""
    leads: dict[str, list[str]] = {}
    for each in terms():
        page = f"{each.page}.html" if each.page else f"glossary.html#{each.anchor}"
        title = title_of(each.page) if each.page else str(say("glossary"))
        for words in (each.term, *each.also, *filter(None, [each.spanish])):
            leads.setdefault(words, []).append(_link(page, title))
    for page in pages():
        for words in (title_of(page), *page_data(page).also_called):
            leads.setdefault(words, []).append(_link(f"{page}.html", title_of(page)))
    rows = "".join(
        f"<li>{text(words)}: {', '.join(dict.fromkeys(leads[words]))}</li>" for words in sorted(leads, key=str.lower)
    )
    return f'<ul class="book-index">{rows}</ul>'


def index_of_sections() -> str:
    """Give every section of each edition that a page cites, in the order of the book, and the pages."""

    def listed(edition: str) -> str:
        places: dict[str, list[str]] = {}
        for key in rule_keys():
            for page in citing_pages().get(key, ()):
                places.setdefault(rule(key, edition).section, []).append(_link(f"{page}.html", title_of(page)))
        rows = "".join(
            f"<li>{text(place)}: {', '.join(dict.fromkeys(places[place]))}</li>" for place in sorted(places, key=_in_order)
        )
        return f'<ul class="book-index">{rows}</ul>'

    return by_edition(listed, element="div")


def _link(address: str, words: str) -> str:
    return f'<a href="{address}">{text(words)}</a>'


def _in_order(place: str) -> list[tuple[int, str]]:
    """Sort 250.4 before 250.24, tables and articles by their number, other texts after the code."""
    bare = re.sub(r"^(?:Table|Article|Chapter)\s+", "", place)
    return [(int(part), "") if part.isdigit() else (10_000, part) for part in re.findall(r"\d+|\D+", bare)]
