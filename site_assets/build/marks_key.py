"""The one sentence that tells what the rings of a page mean, above the section where the first of them stands."""

from __future__ import annotations

import re
from html.parser import HTMLParser

from calc.editions import EDITIONS
from site_assets.build.by_edition import by_edition
from site_assets.render.marks import key_html

RING = '<span class="mark" data-mark='
HEADING = re.compile(r"^## .*$", re.MULTILINE)
OWN_KEY = ("example", "at-a-glance")  # what tells its rings itself
VOID = {"area", "br", "col", "hr", "img", "input", "source", "wbr"}


def with_marks_key(markdown: str) -> str:
    """Return a page's Markdown with the sentence on its rings; each edition has those that it shows."""
    marks = _Marks(markdown)
    if not any(marks.of_edition.values()):
        return markdown
    key = by_edition(lambda edition: key_html(marks.of_edition[edition]), element="div")
    before = [heading.end() for heading in HEADING.finditer(markdown) if heading.end() < marks.first]
    headings = [heading.start() for heading in HEADING.finditer(markdown)]
    # Before the first heading it follows the lead, so that the page begins with what it is about.
    place = before[-1] if before else headings[0] if headings else len(markdown)
    return f"{markdown[:place].rstrip()}\n\n{key}\n\n{markdown[place:].lstrip()}"


class _Marks(HTMLParser):
    """Collects the marks of a page by edition, and where the first stands: its offset."""

    def __init__(self, markdown: str):
        super().__init__()
        self.of_edition: dict[str, set[str]] = {edition: set() for edition in EDITIONS}
        self.first = len(markdown)
        self._open: list[tuple[str, dict[str, str | None]]] = []
        self._lines = [0, *(end.end() for end in re.finditer("\n", markdown))]
        self.feed(markdown)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note a ring with the editions that show it."""
        told = dict(attrs)
        if tag in VOID:
            return
        self._open.append((tag, told))
        mark = told.get("data-mark")
        within = [each for _, each in self._open]
        if not mark or any(each.get("class") in (*OWN_KEY, "marked") for each in within):
            return
        editions = set(EDITIONS)
        for each in within:
            if named := each.get("data-edition"):
                editions &= set(named.split())
        for edition in editions:
            self.of_edition[edition].add(mark)
        line, column = self.getpos()
        self.first = min(self.first, self._lines[line - 1] + column)

    def handle_endtag(self, tag: str) -> None:
        """Close an element, and what was left open in it."""
        names = [name for name, _ in self._open]
        if tag in names:
            del self._open[len(names) - 1 - names[::-1].index(tag) :]
