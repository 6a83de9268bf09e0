"""The frame around every page: editions, safety, where to look, the saved state, the print footer, scripts and styles.

The theme's templates only say where the parts go, `<!-- place: top -->`; what stands there is filled in here, in the
finished folder, whoever made it.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

import jinja2

from calc.data_file import Data
from calc.editions import DEFAULT_EDITION, EDITIONS
from calc.messages import message
from site_assets.build.cautions import CAUTIONS
from site_assets.build.page_head import headings_of, with_head
from site_assets.build.settings import DISK_EDITION, Settings
from site_assets.build.theme import (
    OPENED,
    PAGE_PARTS,
    PAGE_STREAM,
    SCHEMES,
    SEARCH_FIELD,
    SEARCH_INDEX,
    SEARCH_OPENER,
    with_our_icon,
    with_search_named,
)
from site_assets.build.unverified import unverified
from site_assets.build.web_manifest import FILE as MANIFEST
from site_assets.build.web_manifest import ICONS, TOUCH_ICON

ASSETS = Path(__file__).parent.parent
PARTS = jinja2.Environment(
    loader=jinja2.FileSystemLoader([ASSETS / "frame", ASSETS / "service_worker"]), undefined=jinja2.StrictUndefined
)


def _said(template: str, **values: object) -> str:
    return str(message(template, **values))


# The links of the menu: every page in order.
MENU_LINKS = "#frame-menu a[href]:not([href^='#'])"
SCHEME_WORDS = [
    ("device", message("As the device")),
    ("light", message("Light")),
    ("dark", message("Dark")),
    ("sun", message("Sun: most contrast")),
]

_known_to_parts: Data = PARTS.globals
_known_to_parts.update(
    message=_said,
    editions=EDITIONS,
    edition_shown=DEFAULT_EDITION,
    search_opener=SEARCH_OPENER,
    search_field=SEARCH_FIELD,
    search_index=SEARCH_INDEX,
    page_parts=", ".join((*PAGE_PARTS, "[data-bar]", ".search-elsewhere")),
    page_stream=PAGE_STREAM,
    opened=OPENED,
    schemes=SCHEMES,
    scheme_words=SCHEME_WORDS,
    disk_file=DISK_EDITION,
    web_manifest=MANIFEST,
    touch_icon=f"{ICONS}/{TOUCH_ICON[0]}",
)
_PLACE = re.compile(r"<!-- place: ([a-z-]+) -->")
# The safety text stands in two of them: no page goes out without.
ON_EVERY_PAGE = {"first-scripts", "styles", "scripts", "bar", "top", "foot"}


class FrameError(Exception):
    """A page leaves no place for a part of its frame; the message names the page and the places."""


@dataclass(frozen=True)
class Place:
    """Where a page stands: its path in the site, what leads from it to the top folder, and the cautions there."""

    path: str
    to_top: str
    cautions: tuple[str, ...] = ()
    disk: str = ""  # the version, where the page stands in the disk edition


def with_frame(html: str, place: Place, kit: str, settings: Settings) -> str:
    """Return a page of the site with every part of its frame; `kit` is the folder of the kit, "kit/1a2b".

    Raises: FrameError, when the theme's templates that it was made with leave a part no place.
    """
    if missing := ON_EVERY_PAGE - set(_PLACE.findall(html)):
        raise FrameError(f"{place.path or 'the page for unknown addresses'}: no place for {', '.join(sorted(missing))}")
    kit_url = f"{place.to_top}{kit}"
    cautions = [str(CAUTIONS[caution]) for caution in place.cautions]
    given: Data = {
        "kit": kit_url,
        "to_top": place.to_top,
        "path": place.path,
        "disk": place.disk,
        "cautions": cautions,
        "headings": headings_of(html),
        "unverified": unverified(),
        "settings": settings,
    }

    def part(match: re.Match[str]) -> str:
        return PARTS.get_template(f"{match[1]}.html").render(given)

    filled = _PLACE.sub(part, with_head(html, place.path, place.to_top, cautions, settings))
    named = with_search_named(filled, str(message("Search")), PARTS.get_template("search_elsewhere.html").render(given))
    return with_our_icon(named, kit_url)
