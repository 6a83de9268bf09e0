"""Reads the built pages."""

from functools import cache
from html.parser import HTMLParser
from pathlib import Path

SITE = Path(__file__).parents[2] / "site"
# HTML elements that stand alone.
VOID = {"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"}


def html_files() -> list[Path]:
    """Return every built page."""
    pages = sorted(SITE.rglob("*.html"))
    assert pages, "build the site first: python3 -m site_assets build"
    return pages


def article(html: str) -> str:
    """Return the part of a page between its frame: what its own Markdown became."""
    return html[html.index("<article") : html.index("</article>")]


@cache
def ids_of(path: Path) -> frozenset[str]:
    """Return every id of a built page; many links lead to one page, and it is read once."""
    return frozenset(Page(path).ids)


class Page(HTMLParser):
    """One built page: its elements, ids and the text of chosen parts."""

    def __init__(self, path: Path):
        super().__init__()
        self.elements: list[tuple[str, dict[str, str]]] = []
        self.text = ""
        self.safety_text = ""
        self._open: list[tuple[str, bool]] = []
        self.feed(path.read_text(encoding="utf-8"))

    @property
    def ids(self) -> set[str]:
        """Every id of the page."""
        return {attributes["id"] for _, attributes in self.elements if "id" in attributes}

    def handle_starttag(self, tag, attrs):
        """Record an element."""
        attributes = {name: value or "" for name, value in attrs}
        self.elements.append((tag, attributes))
        if tag not in VOID:
            inside = bool(self._open) and self._open[-1][1]
            self._open.append((tag, inside or "data-safety" in attributes))

    def handle_endtag(self, tag):
        """Leave an element."""
        while self._open and self._open.pop()[0] != tag:
            pass

    def handle_data(self, data):
        """Collect text."""
        self.text += data
        if self._open and self._open[-1][1]:
            self.safety_text += data
