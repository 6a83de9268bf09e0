"""The search page: its form, and where tests and other parts of the build find it."""

from __future__ import annotations

from site_assets.build.frame import PARTS
from site_assets.build.search_index import FILE

PAGE = "search.html"
LINK = f'a[href$="{PAGE}"]:visible'
FIELD = "form[data-search] input"
STATUS = "[data-search-status]"
FOUND = "[data-search-found] > li"
FIRST = "[data-search-first]"


def search_form() -> str:
    """Return the form of the search, the place for what it finds and, without it, where to look."""
    return PARTS.get_template("search.html").render(index=FILE)
