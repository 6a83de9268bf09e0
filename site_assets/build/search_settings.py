"""What the search is told of a page: how much it counts, the words people say for its subject, its sections."""

from __future__ import annotations

from calc.catalogue import CALCULATORS
from calc.editions import EDITIONS
from calc.rulebook import rule
from site_assets.build.glossary import terms_of
from site_assets.build.page_data import ROOMS, page_data

# A page that explains a thing comes before one that only computes with it, and lists of everything come last.
BOOSTS = {"parts": 3, "places": 2.5, "calculators": 1, "glossary": 1, "method": 0.1, "editions": 0.1}


def search_settings(page: str) -> dict:
    """Give the settings as the front matter of a page would; its own front matter comes before them."""
    room, _, slug = page.partition("/")
    own = terms_of(page)
    names = [name for each in own for name in each.also] + [each.spanish for each in own if each.spanish]
    about: tuple[str, ...] = ()
    if room in ROOMS:
        names += page_data(page).also_called
        about = page_data(page).about
    elif room == "calculators":
        calculator = CALCULATORS[slug]
        answer = calculator(**dict(calculator.example)).answer
        about = (answer.basis,) if answer and answer.basis else ()
    sections = [rule(key, edition).section for key in about for edition in EDITIONS]
    return {"search": {"boost": BOOSTS.get(room, 0.5)}, "tags": list(dict.fromkeys([*names, *sections]))}
