"""What the search is told of a page: how much it counts, the words people say for its subject."""

from __future__ import annotations

from calc.data_file import Data
from site_assets.build.glossary import terms_of
from site_assets.build.page_data import ROOMS, page_data

# A page that explains a thing comes before one that only computes with it, and lists of everything come last.
BOOSTS = {"parts": 1.3, "places": 1.25, "calculators": 1.1, "glossary": 0.8, "method": 0.4, "editions": 0.5}
LISTS_EVERYTHING = 0.8


def search_settings(page: str, own: Data) -> Data:
    """Return the front matter of a page with what the search needs; `own` is what its author wrote there."""
    room = page.partition("/")[0]
    boost = LISTS_EVERYTHING if page.endswith("-schedule") else BOOSTS.get(room, 1)
    named = [name for term in terms_of(page) for name in (term.term, *term.also, term.spanish) if name]
    called = page_data(page).also_called if room in ROOMS else ()
    tags = [*own.get("tags", ()), *named, *called]
    return {"search": {"boost": boost}} | own | {"tags": list(dict.fromkeys(tags))}
