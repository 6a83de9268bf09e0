"""What a finished page says, read from its HTML: title, headings, the words of its lead and of the rest."""

from __future__ import annotations

from dataclasses import dataclass, field
from html.parser import HTMLParser

# Elements within a word or a sentence; at any other a word ends.
_INLINE = {"a", "abbr", "b", "code", "em", "i", "mark", "span", "strong", "sub", "sup"}
_HEADINGS = {"h1", "h2", "h3", "h4"}
_NO_END = {"br", "hr", "img", "input", "link", "meta", "wbr", "source", "col"}
_NOT_READ = {"script", "style", "template"}
EXCLUDED = "data-search-exclude"


@dataclass
class PageText:
    """One page: `headings` are anchors with their words, `lead` what stands above the second of them, `rest` below."""

    title: str = ""
    headings: list[tuple[str, str]] = field(default_factory=list[tuple[str, str]])
    lead: str = ""
    rest: str = ""


def page_text(html: str) -> PageText:
    """Return what the article of a page says: menu, safety text and foot are the same on every page."""
    reader = _Reader()
    reader.feed(html[html.find("<article") : html.find("</article>")])
    reader.close()
    return reader.page


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.page = PageText()
        self._open: list[tuple[str, bool]] = []  # the elements around, and whether each is left out
        self._anchor = ""
        self._heading: list[str] | None = None
        self._lead: list[str] = []
        self._rest: list[str] = []

    def close(self) -> None:
        super().close()
        self.page.lead, self.page.rest = (" ".join("".join(words).split()) for words in (self._lead, self._rest))

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        if tag in _NO_END:
            self._add(" ")
            return
        left_out = tag in _NOT_READ or EXCLUDED in given or "headerlink" in (given.get("class") or "")
        self._open.append((tag, left_out or self._left_out()))
        if tag not in _INLINE:
            self._add(" ")
        if tag in _HEADINGS and not self._left_out():
            self._anchor, self._heading = given.get("id") or "", []

    def handle_endtag(self, tag: str) -> None:
        while self._open:
            ended, _ = self._open.pop()
            if ended == tag:
                break
        if tag in _HEADINGS and self._heading is not None:
            self._keep_heading(tag, " ".join("".join(self._heading).split()))
        if tag not in _INLINE:
            self._add(" ")

    def handle_data(self, data: str) -> None:
        if not self._left_out():
            self._add(data)

    def _left_out(self) -> bool:
        return bool(self._open) and self._open[-1][1]

    def _add(self, words: str) -> None:
        if self._heading is not None:
            self._heading.append(words)
        elif self.page.title:
            (self._rest if self.page.headings else self._lead).append(words)

    def _keep_heading(self, tag: str, words: str) -> None:
        if tag == "h1":
            self.page.title = words
        elif words:
            self.page.headings.append((self._anchor, words))
        self._heading = None
