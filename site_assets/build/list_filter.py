"""The box above a long list that filters it. Without scripts the box is not there, and the list is whole."""

from __future__ import annotations

from calc.messages import message
from site_assets.render.text import text

# The rows of each list, as the box selects them below itself.
ROWS = {
    "book-index": ".book-index > li",
    "glossary": ".glossary > section",
    "glossary-spanish": ".book-index > li",
    "checks": ".to-tick li",
    "exercises": ".exercise",
    "changes": ".changes > li",
    "editions/2017-to-2020": ".edition-change",
    "editions/2020-to-2023": ".edition-change",
    "editions/2023-to-2026": ".edition-change",
    "method/figures": "details.rule",
    "method/hazards": "details.rule",
}


def list_filter_html(page: str) -> str:
    """Return the box for the list of a page."""
    counted = {"count": "{count}", "shown": "{shown}"}
    words = {
        "rows": ROWS[page],
        "count-one": message("1 entry has that"),
        "count-more": message("{count} entries have that", **counted),
        "count-most": message("{count} entries have that, the first {shown} are here", **counted),
        "count-none": message("Nothing in this list has “{typed}”. The search looks in every page.", typed="{typed}"),
    }
    told = "".join(f' data-{name}="{text(said)}"' for name, said in words.items())
    return (
        f'<div class="list-filter" data-list-filter{told} hidden>'
        f'<label for="list-filter">{text(message("Show only entries with these words"))}</label>'
        '<input id="list-filter" type="search" autocomplete="off" autocapitalize="off" spellcheck="false">'
        '<p role="status"></p></div>'
    )
