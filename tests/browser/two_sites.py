"""What two generators made of the same page, compared as its reader meets it: text, headings, anchors."""

from __future__ import annotations

from difflib import unified_diff
from html.parser import HTMLParser

HEADINGS = {"h1", "h2", "h3", "h4"}
UNSEEN = {"script", "style", "template"}
# A theme's own anchors; no link of ours uses one.
OF_THE_THEME = "__"


class Read(HTMLParser):
    """One page as it is read: its words in order, its headings with level and anchor, all its anchors."""

    def __init__(self, html: str):
        super().__init__()
        self.text: list[str] = []
        self.headings: list[str] = []
        self.anchors: list[str] = []
        self._unseen = 0
        self._heading: list[str] | None = None
        self.feed(html)

    def handle_starttag(self, tag, attrs):
        """Note an anchor, and that a heading or something unseen begins."""
        anchor = dict(attrs).get("id") or ""
        if anchor and not anchor.startswith(OF_THE_THEME):
            self.anchors.append(anchor)
        self._unseen += tag in UNSEEN
        if tag in HEADINGS:
            self._heading = [f"{tag} #{anchor}"]

    def handle_endtag(self, tag):
        """Note that a heading or something unseen ends."""
        self._unseen -= tag in UNSEEN
        if tag in HEADINGS and self._heading:
            self.headings.append(" ".join(self._heading))
            self._heading = None

    def handle_data(self, data):
        """Collect the words."""
        if self._unseen:
            return
        self.text += data.split()
        if self._heading is not None:
            self._heading += data.split()


def differences(ours: str, theirs: str) -> list[str]:
    """Return what `theirs` lacks (-) and adds (+): words, headings, anchors; nothing when a reader sees the same."""
    one, other = Read(ours), Read(theirs)
    return [
        f"{kind}: {line}"
        for kind in ("headings", "anchors", "text")
        for line in unified_diff(getattr(one, kind), getattr(other, kind), lineterm="", n=0)
        if not line.startswith(("---", "+++", "@@"))
    ]
