"""What stands around the title of a page: where it is in the handbook, a neighbour of use, its gravest caution.

The first caution that a page names is the gravest; the others stand folded in the safety line, and all of them at the
foot of the page.
"""

from __future__ import annotations

import re

from calc.messages import Message, message
from site_assets.build.page_data import ROOMS, pages, title_of
from site_assets.build.settings import Settings
from site_assets.render.answer import text

NOTES = "write-it-up"  # the heading of the correction notes
_TITLE = re.compile(r"(<article\b[^>]*>.*?)(<h1\b.*?</h1>)", re.DOTALL)
_HEADING = re.compile(r'<h2\b[^>]*\bid="([^"]+)"[^>]*>(.*?)</h2>', re.DOTALL)
_LINK_TO_ITSELF = re.compile(r'<a\b[^>]*href="#[^"]*"[^>]*>[^<]*</a>')
_TAG = re.compile(r"<[^>]+>")


def with_head(html: str, path: str, to_top: str, cautions: list[str], settings: Settings) -> str:
    """Return a page with what belongs around its title; one without an article, or without a path, as it came."""
    where = where_line(html, path, to_top, settings) if path else ""
    caution = f'<p class="page-caution" data-safety="caution">{text(cautions[0])}</p>' if cautions else ""
    return _TITLE.sub(lambda found: f"{found[1]}{where}{found[2]}{caution}", html, count=1)


def headings_of(html: str) -> list[tuple[str, str]]:
    """Return the anchor and the words, as HTML, of each heading below the title."""
    found = _HEADING.findall(html)
    return [(anchor, _TAG.sub("", _LINK_TO_ITSELF.sub("", words)).strip()) for anchor, words in found]


def where_line(html: str, path: str, to_top: str, settings: Settings) -> str:
    """Return the line above the title; nothing where there is neither a heading in the menu nor a neighbour."""
    place = place_in_menu(path, settings)
    neighbour = _neighbour(html, path.removesuffix(".html"), to_top)
    if not place and not neighbour:
        return ""
    return f'<p class="where"><span>{text(place or "")}</span> {neighbour}</p>'


def place_in_menu(path: str, settings: Settings) -> Message | None:
    """Return what a page is: which of how many parts or places, or the heading in the menu that it stands below."""
    for entry in settings.entries:
        if path in entry.paths:
            place, count = entry.paths.index(path) + 1, len(entry.paths)
            match path.partition("/")[0]:
                case "parts":
                    return message("Part {place} of {count}", place=place, count=count)
                case "places":
                    return message("Place {place} of {count}", place=place, count=count)
                case _:
                    return message("{heading}", heading=entry.title)
    return None


def _neighbour(html: str, page: str, to_top: str) -> str:
    """Return the link to the notes of a part or a place, or from a calculator to the part or the place it is named for.

    "service-schedule" is named for the place "service"; a calculator that is named for none has no such link.
    """
    room, _, slug = page.partition("/")
    if room in ROOMS:
        if f'id="{NOTES}"' not in html:
            return ""
        return f'<a href="#{NOTES}">{text(message("Write it up"))}</a>'
    if room != "calculators":
        return ""
    named_for = [other for other in pages() if f"{slug}-".startswith(f"{other.partition('/')[2]}-")]
    if not named_for:
        return ""
    subject = max(named_for, key=len)
    words = message("What it is") if subject == f"parts/{slug}" else title_of(subject)
    return f'<a href="{to_top}{subject}.html">{text(words)}</a>'
