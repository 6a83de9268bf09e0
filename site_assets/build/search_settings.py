"""What the search is told of a page: how much it counts, and the words people say for its subject."""

from __future__ import annotations

from site_assets.build.glossary import other_names
from site_assets.build.page_data import ROOMS, page_data

# A page that explains a thing comes before one that only computes with it, and lists of everything come last.
BOOSTS = {"parts": 3, "places": 2.5, "calculators": 1, "glossary": 1, "method": 0.1, "editions": 0.1}


def search_settings(page: str) -> dict:
    """Give the settings as the front matter of a page would; its own front matter comes before them."""
    room = page.partition("/")[0]
    settings: dict = {"search": {"boost": BOOSTS.get(room, 0.5)}}
    if room in ROOMS:
        english, spanish = other_names(page)
        settings["tags"] = list(dict.fromkeys([*page_data(page).also_called, *english, *spanish]))
    return settings
