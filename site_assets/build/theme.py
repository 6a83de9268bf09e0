"""All that Python, tests among it, knows of the theme's own pages; the only place to mend when another takes over.

Styles know the theme in `styles/theme.css` alone; scripts are told, and name none of its parts.
"""

from __future__ import annotations

import re

# What the theme and its generator bring and no page asks for.
UNUSED = ("assets/javascripts/lunr", "assets/images/favicon.png", "sitemap.xml", "sitemap.xml.gz")

SEARCH_OPENER = 'label[for="__search"]'
SEARCH_BUTTON = ".bar-search"  # ours, which presses the theme's
SEARCH_FIELD = ".md-search__input"
SEARCH_INDEX = "search/search_index.json"
# Opened from a disk the theme runs this script instead, which leaves the index under a name.
SEARCH_INDEX_ON_DISK = ("search/search_index.js", "var __index = {index};\n")
SEARCH_WORKERS = "assets/javascripts/workers/search.*.min.js"
SEARCH_STATUS = ".md-search-result__meta"
FOUND_PAGE = ".md-search-result__item"
FOUND_TEXT = ".md-search-result__article"
FOUND_MORE = ".md-search-result__more"
FOUND_TAGS = ".md-tags"
# What one page has and another has otherwise; what tells the theme of a new page; what lies open over it.
PAGE_PARTS = (
    '[data-md-component="container"]',
    '[data-md-component="skip"]',
    '[data-md-component="header-topic"]',
    '.md-header [data-md-component="logo"]',
)
PAGE_STREAM = "document$"
OPENED = "[data-md-toggle]:checked"
SCHEME_MEMORY = ".__palette"  # after the path of the site, in the storage
# What is pressed for each set of colors: the places in the theme's own row of choices, as mkdocs.yml lists them.
SCHEMES = {name: f"#__palette_{place}" for place, name in enumerate(("device", "light", "sun", "dark"))}
_ICON = re.compile(r'href="[^"]*assets/images/favicon\.png"')
_SEARCH = 'class="md-search"'
_FOUND = '<ol class="md-search-result__list" role="presentation"></ol>\n        </div>'


def with_search_named(html: str, name: str, elsewhere: str) -> str:
    """Return a page whose search has a name and, below what it finds, a way on: the theme leaves both out."""
    return html.replace(_SEARCH, f'{_SEARCH} aria-label="{name}"').replace(_FOUND, f"{_FOUND}{elsewhere}")


def with_our_icon(html: str, kit: str) -> str:
    """Return a page with our icon in place of the theme's; `kit` leads to the kit."""
    return _ICON.sub(f'href="{kit}/icons/mark.svg"', html)


def with_links_from_its_own_folder(html: str) -> str:
    """Return the page for unknown addresses so that it leads from its own folder, not from the root of the host."""
    return html.replace('="/', '="').replace('"base": "/"', '"base": "."').replace('"search": "/', '"search": "')
