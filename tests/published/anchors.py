"""The anchors of the built pages that a reader may link to."""

from functools import cache

from site_assets.build.rule_values_page import anchor as rule_anchor
from tests.published.registry import document, rows
from tests.site.pages import SITE, Page, html_files

FIGURES = "method/figures.html"

# A heading, or an entry of a list; ids of drawings and of form fields serve scripts and style.
LINKED = {"h1", "h2", "h3", "h4", "li", "dt", "div", "section", "details"}
# Here smaller headings are entries too, and come and go with what the rules hold; a rule's own anchor stays.
LISTINGS = ("book-index.html", "editions/")
# Ids of the frame around a page, and of what a form shows.
FRAME = ("__", "frame-", "safety-name", "state-panel", "hint-", "error-", "field-", "list-")


@cache
def page(path: str) -> Page:
    """Return a built page, by its path in the site."""
    return Page(SITE / path)


def anchors_of(path: str) -> set[str]:
    """Return the anchors of a page, by its path in the site, that links may use for ever."""
    tags = LINKED - {"h3", "h4"} if path.startswith(LISTINGS) else LINKED
    named = {attributes["id"] for tag, attributes in page(path).elements if tag in tags and "id" in attributes}
    return {each for each in named if not each.startswith(FRAME)}


def stated_anchors() -> dict[str, set[str]]:
    """Return the anchors that the registry states, by page; a rule's key is its anchor too."""
    found: dict[str, set[str]] = {}
    for row in rows("page"):
        found.setdefault(row["path"], set()).update(row["anchors"])
    found[FIGURES] |= {rule_anchor(key) for key in document("rules")["keys"]}
    return found


def new_anchors() -> dict[str, set[str]]:
    """Return the anchors of built pages that the registry does not state yet, by page."""
    stated = stated_anchors()
    built = [file.relative_to(SITE).as_posix() for file in html_files()]
    found = {path: anchors_of(path) - stated.get(path, set()) for path in built}
    return {path: anchors for path, anchors in found.items() if anchors}
